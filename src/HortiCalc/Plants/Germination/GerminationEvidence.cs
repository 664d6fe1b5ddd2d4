using HortiCalc.Evidence;

namespace HortiCalc.Plants;

/// <summary>What to take care of with times of germination.</summary>
internal static class GerminationEvidence
{
    public static readonly Caution MoistSeedbed = new(
        "germination.moist-seedbed",
        CautionLevel.Note,
        "The time supposes live seed, moist soil and sowing no deeper than in the trial: dry, crusted or deep seedbeds take longer.",
        Source.CommonPractice("moist-seedbed", "germination trials keep the seed moist"));

    public static readonly Caution ShareNotStated = new(
        "germination.share-not-stated",
        CautionLevel.Note,
        "The source does not say what share of the seed has come by then.",
        Source.CommonPractice("share-of-seed", "a time of germination belongs to a share of the seed"));

    public static readonly Caution AirTemperature = new(
        "germination.air-temperature",
        CautionLevel.Note,
        "The source counts air temperature by a method of its own: soil temperatures give another date.",
        GerminationSources.WisconsinMaize);

    public static readonly Caution HalfInchDeep = new(
        "emergence.half-inch-deep",
        CautionLevel.Note,
        "The days hold for seed half an inch (13 mm) deep in moist soil of constant temperature: deeper seed takes longer.",
        GerminationSources.Knott);

    public static readonly Caution NormalSeedlings = new(
        "emergence.normal-seedlings",
        CautionLevel.Note,
        "The share is that of good seed in a trial: old seed and field soil give fewer.",
        GerminationSources.Harrington);
}
