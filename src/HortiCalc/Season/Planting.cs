namespace HortiCalc.Season;

/// <summary>One crop in one place.</summary>
internal sealed record Planting(string Place, Crop Crop, bool InPots, bool WintersIndoors)
{
    /// <summary>Every bed and every lot of pots with its crop, in the order given.</summary>
    public static IEnumerable<Planting> Of(Garden garden) =>
    [
        .. garden.Beds.Select(bed => new Planting(bed.Name, garden.CropNamed(bed.Crop), false, false)),
        .. garden.Pots.Select(pots => new Planting(pots.Name, garden.CropNamed(pots.Crop), true, pots.WintersIndoors)),
    ];

    /// <summary>The job by which the crop comes to stand outside.</summary>
    public PlanStep OutStep => (InPots, Crop.Raising) switch
    {
        (_, { From: Propagule.Seed, WeeksToPlantOut: 0 }) => PlanStep.Sow,
        (true, _) => PlanStep.SetOutside,
        _ => PlanStep.PlantOut,
    };

    /// <summary>The job by which raising it begins.</summary>
    public PlanStep StartStep => Crop.Raising?.From == Propagule.Cutting ? PlanStep.TakeCuttings : PlanStep.Sow;
}
