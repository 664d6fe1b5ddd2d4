using HortiCalc.Evidence;

namespace HortiCalc.Season;

/// <summary>The rules that this room adds to those of the others, each with its source, and the cautions that go with them.</summary>
internal static class SeasonEvidence
{
    /// <summary>Fewest past years for a chance: as few as the freeze climate takes.</summary>
    public const int FewestYears = Climate.FreezeEvidence.FewestSeasons;

    /// <summary>The needs of a crop, and the daily record: named once in a written plan, and not again on every line.</summary>
    public const string CropNeedsKey = "season.crop-needs";
    public const string RecordKey = "season.record";

    public const int PruningWeeksBefore = 6;
    public const int PruningWeeksBeforeUntil = 4;

    /// <summary>What follows from the caller's figures without a rule of the trade.</summary>
    public static readonly Source Given = new("season.given", "exact arithmetic on the figures given", "the garden", null, null, SourceKind.Given);

    public static readonly Method Volumes = new("season.volumes", "areas, volumes and whole bags", Given, new Domain(""));

    public static readonly Method PlantGrid = new("season.plant-grid", "whole plants, in rows along the bed or across it", Given, new Domain(""));

    public static readonly Method Starts = new(
        "season.starts", "binomial distribution: each seed or cutting succeeds by itself", Given, new Domain(""));

    public static readonly Method CountDays = new("season.count-days", "weeks and days counted on the calendar", Given, new Domain(""));

    public static readonly Method NewBedLayer = Rule(
        "season.new-bed-layer",
        "a layer of 10 cm (4 inches), worked in to 15 to 20 cm (6 to 8 inches)",
        "a 4-inch layer of organic matter worked into 6 to 8 inches");

    public static readonly Method TargetPh = Rule(
        "season.target-ph",
        "lime where the soil is below the crop's range: to pH 6.5, or to the middle of the range where it lies elsewhere",
        "aim for the middle of pH 6.0 to 7.0");

    public static readonly Method CountNights = Rule(
        "season.count-nights", "cold nights counted in the daily record", "the past is counted where it is too short for a chance");

    public static readonly Method MeanWarmth = Rule(
        "season.mean-warmth", "mean of each day of the year over the record, smoothed over 15 days", "tender crops wait until the days are warm enough");

    public static readonly Method RankYears = Rule(
        "season.rank-years", "past years ranked by the day they were ready", "plan for the share of past years that the grower accepts");

    public static readonly Method LastPruning = Rule(
        "season.last-pruning", "last pruning 4 to 6 weeks before the first freeze of autumn", "last pruning 4 to 6 weeks before the first frost");

    public static readonly Method BringIndoors = Rule(
        "season.bring-indoors", "tender plants come indoors the day before the night that would hurt them", "a tender shrub comes indoors before the cold does");

    public static readonly Caution PhAboveRange = new(
        "season.ph-above-range",
        CautionLevel.Care,
        "The soil's pH is above the range that suits the crop; lime would make it worse, and lowering pH is slow and not planned here.",
        TargetPh.Source);

    public static readonly Caution NoLimeMethod = new(
        "season.no-lime-method",
        CautionLevel.Care,
        "The soil is more acid than suits the crop, but no published method here covers this soil and target: ask a soil laboratory.",
        TargetPh.Source);

    public static readonly Caution NoSoilReport = new(
        "season.no-soil-report",
        CautionLevel.Care,
        "Without a soil test no lime is planned: lime only what a test asks for.",
        Source.CommonPractice("season.test-first", "test before liming"));

    public static readonly Caution ShortRecord = new(
        "season.short-record",
        CautionLevel.Care,
        "The weather record is too short for chances: dates keep clear of what it has seen, and a year it has not seen can be worse.",
        CountNights.Source);

    public static readonly Caution Hardening = new(
        "season.hardening",
        CautionLevel.Care,
        "Harden plants raised indoors over one to two weeks before they stay out.",
        Source.CommonPractice("season.hardening", "harden plants off before planting out"));

    /// <summary>The needs of a crop are the caller's; each source of them is named.</summary>
    public static IEnumerable<Method> NeedsOf(Crop crop) =>
        crop.Sources.Select(source => new Method(CropNeedsKey, "needs of the crop as given", source, new Domain("")));

    /// <summary>The daily record is the caller's.</summary>
    public static Method RecordOf(Site site) => new(RecordKey, "the daily temperatures given", site.WeatherSource, new Domain(""));

    private static Method Rule(string key, string name, string custom) => new(key, name, Source.CommonPractice(key, custom), new Domain(""));
}
