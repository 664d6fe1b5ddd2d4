using HortiCalc.Beds;
using HortiCalc.Containers;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>Finds what each bed, each lot of pots and each mix needs.</summary>
internal static class SupplyPlanner
{
    public static (IReadOnlyList<SupplyLine> Supplies, IReadOnlyList<Caution> Cautions) ForBed(BedPlan bed, Garden garden)
    {
        Crop crop = garden.CropNamed(bed.Crop);
        List<Caution> cautions = [];
        List<SupplyLine> supplies = [LimePlanner.ForBed(bed, crop, garden, cautions)];
        foreach (AmendmentPlan amendment in bed.Amendments)
        {
            Volume volume = amendment.Layer.VolumeOver(bed.Shape.Area);
            BagPurchase? bags = amendment.Bag is Volume bag ? Bags.ToBuy(volume, bag) : null;
            supplies.Add(new AmendmentSupply(bed.Name, amendment.Material, volume, amendment.Layer, Evidence(amendment), bags));
            cautions.AddRange([BedCautions.Dust, BedCautions.Salts]);
        }

        supplies.Add(Plants(bed.Name, crop, PlantGrid.Count(bed.Shape, crop.Spacing), crop.Spacing, garden));
        return (supplies, cautions);
    }

    public static (IReadOnlyList<SupplyLine> Supplies, IReadOnlyList<Caution> Cautions) ForPots(PotPlan pots, Garden garden)
    {
        Volume perPot = pots.Container.FillVolume(pots.Headspace);
        Volume volume = PottingMedium.ForPots(perPot, pots.Count, pots.CompactionAllowance);
        BagPurchase? bags = pots.Bag is Volume bag ? Bags.ToBuy(volume, bag) : null;
        return (
            [
                new MediumSupply(pots.Name, pots.Medium, volume, pots.Count, perPot, pots.CompactionAllowance, [SeasonEvidence.Volumes], bags),
                Plants(pots.Name, garden.CropNamed(pots.Crop), pots.Count, null, garden),
            ],
            PottingMedium.Cautions);
    }

    public static MixSupply ForMix(MixPlan mix) => new(
        mix.Name, mix.Known.MakeUpTo(mix.Batch), [new Method(mix.Known.Key, mix.Known.Name, mix.Known.Source, new Domain(""))]);

    /// <summary>The custom for new beds stands behind a layer that keeps to it; any other is the grower's own.</summary>
    private static IReadOnlyList<Method> Evidence(AmendmentPlan amendment) => IsForNewBed(amendment.Layer)
        ? [SeasonEvidence.Volumes, SeasonEvidence.NewBedLayer]
        : [SeasonEvidence.Volumes];

    private static bool IsForNewBed(AmendmentLayer layer) =>
        (layer.LooseDepth, layer.MixedDepth).Equals((AmendmentPlan.NewBedLayer.LooseDepth, AmendmentPlan.NewBedLayer.MixedDepth));

    private static PlantSupply Plants(string place, Crop crop, int plants, Spacing? spacing, Garden garden)
    {
        List<Method> evidence = [SeasonEvidence.PlantGrid, .. SeasonEvidence.NeedsOf(crop)];
        if (crop.Raising is not Raising raising)
            return new PlantSupply(place, crop.Name, plants, evidence, spacing);
        Ratio tooFew = (garden.Chances ?? AcceptedChances.Usual).TooFewPlants;
        int starts = StartsNeeded.For(plants, Boundary.Fraction(raising.Success), Boundary.Fraction(tooFew));
        return new PlantSupply(place, crop.Name, plants, [SeasonEvidence.Starts, .. evidence], spacing, raising.From, starts, raising.Success, tooFew);
    }
}
