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
        NoSupply None(bool isKnown, string why) => new(bed.Name, "lime", isKnown, why, evidence);

        if (garden.Site.Soil is not { PhInWater: Ph current } soil)
        {
            cautions.Add(SeasonEvidence.NoSoilReport);
            return None(false, "the soil was not tested");
        }

        string range = $"{Guard.Number(crop.LowestPh.Value)} to {Guard.Number(crop.HighestPh.Value)}";
        if (current > crop.HighestPh)
        {
            cautions.Add(SeasonEvidence.PhAboveRange);
            return None(true, $"the soil, pH {Guard.Number(current.Value)}, is above what suits {crop.Name}, {range}");
        }

        if (current >= crop.LowestPh)
            return None(true, $"the soil, pH {Guard.Number(current.Value)}, suits {crop.Name}, {range}");

        Ph target = TargetFor(crop);
        List<LimingMethod> methods = [.. InOrder.Where(method => method.CanUse(soil, target, out _))];
        if (methods.Count == 0)
        {
            cautions.Add(SeasonEvidence.NoLimeMethod);
            return None(false, $"no published method here takes this soil from pH {Guard.Number(current.Value)} to {Guard.Number(target.Value)}");
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
