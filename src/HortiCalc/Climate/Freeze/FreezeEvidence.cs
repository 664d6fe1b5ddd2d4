using System.Globalization;
using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>The methods, sources and cautions that answers about freezes carry.</summary>
internal static class FreezeEvidence
{
    /// <summary>
    /// Fewest seasons that a record must give: averages are defined over periods of at least ten years in the technical
    /// regulations quoted by <see cref="PeriodAverages"/>.
    /// </summary>
    public const int FewestSeasons = 10;

    /// <summary>Seasons of a standard normal, by the same regulations; fewer carry a caution.</summary>
    public const int SeasonsOfANormal = 30;

    /// <summary>
    /// Fewest yearly values that a spread is taken from. Common practice: with five the standard deviation is known to about
    /// 35 % (one over the root of twice the degrees of freedom), and with fewer a date is no more than a guess.
    /// </summary>
    public const int FewestValues = 5;

    /// <summary>Missing days before a freeze is met that drop a season, by <see cref="MissingDays"/>.</summary>
    public const int MissingDaysThatDrop = 10;

    public static readonly Source MixedDistribution = new(
        "ncdc-freeze-probability",
        "Last freeze/frost probability (description of the data set)",
        "NOAA National Climatic Data Center",
        null,
        "http://wdcosf.fh-potsdam.de/resources/gcmd-22b3623a-66c6-4616-8a6a-139ce119f672/");

    public static readonly Source ConditionalNormals = new(
        "noaa-normals-1981-2010-freeze",
        "U.S. Climate Normals 1981-2010, technical reports in the Normals Calculation Methodology",
        "NOAA National Centers for Environmental Information",
        2020,
        "https://github.com/josephbcasey/NOAA-normals-data");

    public static readonly Source MissingDays = new(
        "utah-freeze-tables",
        "Freeze dates: help page",
        "Utah Climate Center, Utah State University",
        null,
        "https://climate.usu.edu/help/freezeTable.php");

    public static readonly Source PeriodAverages = new(
        "wmo-normals",
        "Climatological normals: definitions of the Technical Regulations",
        "World Meteorological Organization",
        null,
        "http://www.wmo.int/pages/prog/wcp/wcdmp/GCDS_1.php");

    public static readonly Source PlottingPosition = new(
        "makkonen-2006",
        "Plotting Positions in Extreme Value Analysis",
        "Journal of Applied Meteorology and Climatology 45",
        2006,
        "https://journals.ametsoc.org/view/journals/apme/45/2/jam2349.1.xml");

    public static readonly Source SensorHeight = new(
        "hershfield-1974",
        "The Frequency of Freeze-Thaw Cycles",
        "Journal of Applied Meteorology 13(3)",
        1974,
        "https://journals.ametsoc.org/view/journals/apme/13/3/1520-0450_1974_013_0348_tfoftc_2_0_co_2.xml");

    public static readonly Source Binomial = new(
        "clopper-pearson-1934",
        "The use of confidence or fiducial limits illustrated in the case of the binomial",
        "Biometrika 26, 404-413, as quoted in the reference of the package PropCIs",
        1934,
        "https://rdrr.io/cran/PropCIs/man/exactci.html");

    public static readonly Source Bootstrap = new(
        "hesterberg-2015",
        "What Teachers Should Know About the Bootstrap: Resampling in the Undergraduate Statistics Curriculum",
        "The American Statistician 69, 371-386",
        2015,
        "https://research.google/pubs/pub44859/");

    public static readonly Source TrendTest = new(
        "mann-kendall-test",
        "mk.test: Mann-Kendall Trend Test (with Sen, 1968, for the slope)",
        "reference of the package trend",
        null,
        "https://search.r-project.org/CRAN/refmans/trend/html/mk.test.html");

    public static readonly Source RiskOverYears = new(
        "fao-frost-risk",
        "Frost Protection: fundamentals, practice and economics, volume 2, chapter 1: Frost probability and risk of damage",
        "Food and Agriculture Organization of the United Nations",
        2005,
        "https://www.fao.org/4/y7231e/y7231e03.htm");

    public static readonly Method MixedNormal = new(
        "freeze.mixed-normal",
        "mixed normal distribution, chance over all seasons",
        MixedDistribution,
        new Domain("one date a season, seasons alike and independent of one another"));

    public static readonly Method NormalGivenAFreeze = new(
        "freeze.normal-given-a-freeze",
        "normal distribution, chance given that the season has a freeze",
        ConditionalNormals,
        new Domain("one date a season, seasons alike and independent of one another, seasons without a freeze set aside"));

    public static readonly Method Ranked = new(
        "freeze.ranked",
        "ranked dates, chance over all seasons",
        PlottingPosition,
        new Domain("chances from that of the outermost date on, 1/(n + 1) for n seasons; seasons alike and independent of one another"));

    public static readonly Method RankedGivenAFreeze = new(
        "freeze.ranked-given-a-freeze",
        "ranked dates, chance given that the season has a freeze",
        PlottingPosition,
        new Domain("chances from that of the outermost date on, 1/(n + 1) for n seasons with a freeze"));

    public static readonly Method Resampled = new(
        "freeze.resampled",
        "years resampled from months of the record, chance over all seasons",
        ConditionalNormals,
        new Domain("records of which each month is whole in ten years and more"));

    public static readonly Method ResampledGivenAFreeze = new(
        "freeze.resampled-given-a-freeze",
        "years resampled from months of the record, chance given that the season has a freeze",
        ConditionalNormals,
        new Domain("records of which each month is whole in ten years and more"));

    public static readonly Method ResampledLength = new(
        "freeze.length-resampled",
        "longest run without freeze of resampled years, chance over all years",
        ConditionalNormals,
        new Domain("records of which each month is whole in ten years and more"));

    public static readonly Method ResampledLengthGivenAFreeze = new(
        "freeze.length-resampled-given-a-freeze",
        "longest run without freeze of resampled years, chance given that the year has a freeze",
        ConditionalNormals,
        new Domain("records of which each month is whole in ten years and more"));

    public static readonly Method CountedYears = new(
        "freeze.counted-years",
        "share of the years with a freeze between the dates",
        Binomial,
        new Domain("years alike and independent of one another"));

    public static readonly Method OverYears = new(
        "freeze.over-years",
        "chance of one or more in n years, 1 - (1 - p)^n",
        RiskOverYears,
        new Domain("years alike and independent of one another"));

    public static readonly Method BeforeFreeze = new(
        "freeze.days-before",
        "counted back from a freeze date",
        Source.CommonPractice("freeze-count-back", "days are counted back from the date of an accepted chance"),
        new Domain("any number of days"));

    public static readonly Method EmpiricalLength = new(
        "freeze.length-ranked",
        "ranked yearly lengths, chance over all years",
        PlottingPosition,
        new Domain("chances from 1/(n + 1) to n/(n + 1) for n yearly lengths"));

    public static readonly Method EmpiricalLengthGivenAFreeze = new(
        "freeze.length-ranked-given-a-freeze",
        "ranked yearly lengths, chance given a freeze at both ends",
        PlottingPosition,
        new Domain("chances from 1/(n + 1) to n/(n + 1) for the n yearly lengths with a freeze at both ends"));

    public static readonly Caution ForecastFirst = new(
        "freeze.forecast-first",
        CautionLevel.Care,
        "Chances of past seasons do not know this week's weather: follow the local forecast before planting out or covering.",
        Source.CommonPractice("freeze-forecast", "the forecast decides, the record only plans"));

    public static readonly Caution SensorAboveGround = new(
        "freeze.sheltered-sensor",
        CautionLevel.Care,
        "Records come from a sheltered sensor about 1.5 to 2 m up; near the ground clear calm nights are colder and freezes more frequent.",
        SensorHeight);

    public static readonly Caution YourGroundDiffers = new(
        "freeze.site-differs",
        CautionLevel.Care,
        "Hollows, slopes, walls and water make your ground freeze earlier or later than the place of the record: compare them for some nights.",
        Source.CommonPractice("freeze-site", "a garden is not the weather station"));

    public static readonly Caution AssumedShare = new(
        "freeze.share-assumed",
        CautionLevel.Note,
        "The table does not tell how many seasons have a freeze; every season is taken to have one.",
        MixedDistribution);

    public static readonly Caution EveryMonth = new(
        "freeze.every-month",
        CautionLevel.Care,
        "The record has freezes in every month of the year: spring and autumn can meet where the seasons are cut, and dates near the cut come from it.",
        Source.CommonPractice("freeze-every-month", "a season without an end has no last freeze"));

    public static readonly Caution LongestSeason = new(
        "freeze.whole-year",
        CautionLevel.Note,
        "Years without a freeze on one side count as 365 days, the longest length there is.",
        ConditionalNormals);

    public static readonly IReadOnlyList<Caution> Always = [ForecastFirst, SensorAboveGround, YourGroundDiffers];

    public static Caution Seasons(FreezeSide side, int used, int leftOut) => new(
        "freeze.seasons",
        CautionLevel.Note,
        string.Create(
            CultureInfo.InvariantCulture,
            $"Rests on {used} seasons{(used < SeasonsOfANormal ? ", fewer than the 30 of a standard normal" : "")}; {leftOut} left out for missing days in {side.ToString().ToLowerInvariant()}."),
        PeriodAverages);

    /// <summary>Why the rule of missing days does not fall on all seasons alike.</summary>
    public static readonly Caution LeftOutSeasons = new(
        "freeze.left-out-bias",
        CautionLevel.Note,
        "A season with an early freeze is kept in spite of later gaps, one without a freeze is not: where some seasons have none, left-out seasons make freezes look more frequent than they are.",
        Source.CommonPractice("freeze-left-out", "what is missing is seldom missing at random"));

    public static readonly Caution HemisphereFromData = new(
        "freeze.hemisphere-from-data",
        CautionLevel.Note,
        "The hemisphere was taken from the record: its colder half-year decides.",
        Source.CommonPractice("freeze-hemisphere", "winter is the colder half-year"));

    public static readonly Caution BeyondRecord = new(
        "freeze.beyond-record",
        CautionLevel.Care,
        "Rarer than the record can tell: the outermost date on record stands for it, and its own chance is only a bound.",
        PlottingPosition);

    public static readonly Caution FewFreezes = new(
        "freeze.few-freezes",
        CautionLevel.Care,
        "Fewer than five seasons had a freeze: the dates are ranked as they are, and the range of a chance tells how little is known.",
        Binomial);

    public static readonly Caution ResampledRecord = new(
        "freeze.resampled-record",
        CautionLevel.Note,
        "Resampled years fill in between the seasons of the record; they know no colder weather than it and make it no longer.",
        ConditionalNormals);

    public static readonly Caution TrendInRecord = new(
        "freeze.trend",
        CautionLevel.Care,
        "The dates have moved over the record, by more than chance explains: compare the recent years alone.",
        TrendTest);

    public static readonly Caution AlreadyFrozen = new(
        "freeze.no-days-left",
        CautionLevel.Note,
        "The date of the accepted chance is past: no days are left at this chance.",
        Source.CommonPractice("freeze-days-left", "days are counted to the date of an accepted chance"));

    public static Caution TableFit(int dates, double largestMissDays) => new(
        "freeze.table-fit",
        CautionLevel.Note,
        string.Create(
            CultureInfo.InvariantCulture,
            $"Fitted to {dates} printed dates by least squares; the largest miss is {Math.Round(largestMissDays, 1, MidpointRounding.AwayFromZero)} days."),
        MixedDistribution);
}
