using HortiCalc.Evidence;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>Finds the lime that a bed needs for its crop, or why none is planned.</summary>
internal static class LimePlanner
{
    private const double UsualTarget = 6.5;

    // A laboratory's own acidity first, because it measures what the lime must neutralise; then the garden tables.
    private static readonly IReadOnlyList<LimingMethod> InOrder =
    [
        LimingMethod.NorthCarolina(),
        LimingMethod.PennStateAgronomic,
        LimingMethod.PennStateTurf,
        LimingMethod.UkGardenTexture,
        LimingMethod.UsGardenTexture,
        LimingMethod.AustralianGardenTexture,
    ];

    public static SupplyLine ForBed(BedPlan bed, Crop crop, Garden garden, List<Caution> cautions)
    {
        List<Method> evidence = [SeasonEvidence.TargetPh, .. SeasonEvidence.NeedsOf(crop)];
        NoLime None(NoLimeReason reason) =>
            new(bed.Name, crop.Name, reason, crop.LowestPh, crop.HighestPh, evidence, garden.Site.Soil?.PhInWater);

        if (garden.Site.Soil is not { PhInWater: Ph current } soil)
        {
            cautions.Add(SeasonEvidence.NoSoilReport);
            return None(NoLimeReason.NotTested);
        }

        if (current > crop.HighestPh)
        {
            cautions.Add(SeasonEvidence.PhAboveRange);
            return None(NoLimeReason.SoilAboveRange);
        }

        if (current >= crop.LowestPh)
            return None(NoLimeReason.SoilSuits);

        Ph target = TargetFor(crop);
        List<LimingMethod> methods = [.. InOrder.Where(method => method.CanUse(soil, target, out _))];
        if (methods.Count == 0)
        {
            cautions.Add(SeasonEvidence.NoLimeMethod);
            return None(NoLimeReason.NoMethod);
        }

        LimingMaterial material = garden.Lime?.Material ?? LimingMaterial.GroundLimestone;
        Estimate<Mass> Dose(LimingMethod method) => Liming.Requirement(soil, target, method).As(material).Over(bed.Shape.Area);

        LimeSplit split = LimeSplit.PennStateGarden;
        Estimate<Mass> dose = Dose(methods[0]);
        int applications = Liming.Requirement(soil, target, methods[0]).As(material).Split(split).Count;
        cautions.AddRange(dose.Cautions);
        evidence.InsertRange(0, [dose.Method, .. dose.Adjustments]);
        if (applications > 1)
            evidence.Add(split.Method);
        evidence.AddRange(methods.Skip(1).Select(method => method.Method));
        return new LimeSupply(
            bed.Name,
            dose,
            material,
            current,
            target,
            applications,
            split.FewestMonths,
            [.. methods.Skip(1).Select(Dose)],
            evidence,
            garden.Lime?.Bag);
    }

    /// <summary>pH 6.5 where the crop's range holds it, because most tables aim there; else the middle of the range.</summary>
    private static Ph TargetFor(Crop crop) => crop.LowestPh.Value <= UsualTarget && UsualTarget <= crop.HighestPh.Value
        ? new Ph(UsualTarget)
        : new Ph((crop.LowestPh.Value + crop.HighestPh.Value) / 2);
}
