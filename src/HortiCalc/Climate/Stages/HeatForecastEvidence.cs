using System.Globalization;
using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>The methods, sources and cautions of forecasts from past years.</summary>
internal static class HeatForecastEvidence
{
    /// <summary>Fewest whole past seasons, as for any other spread of yearly values here.</summary>
    public const int FewestYears = FreezeEvidence.FewestValues;

    /// <summary>With these the levels 10 % and 90 % are ranks of their own.</summary>
    public const int YearsForTenPercent = 9;

    /// <summary>The share of missing days that the degree days accept.</summary>
    public const double MostMissingShare = 0.05;

    public static readonly Method PastYears = new(
        "heat-forecast.past-years",
        "this season so far, continued with the weather of each past year",
        new Source(
            "day-1985",
            "Extended Streamflow Forecasting Using NWSRFS",
            "Journal of Water Resources Planning and Management 111(2), American Society of Civil Engineers",
            1985,
            "https://www.scilit.net/publications/f1464a9c7332bddfb9ddbe90c777ab18"),
        new Domain("past weather of the site is like the weather to come; 5 whole past seasons or more"));

    public static readonly Method Ranks = new(
        "heat-forecast.ranks",
        "quantiles at the ranks k / (n + 1), straight between them",
        new Source(
            "hyndman-fan-1996",
            "Sample Quantiles in Statistical Packages",
            "The American Statistician 50(4), 361-365",
            1996,
            "https://numerics.net/documentation/latest/reference/numerics.net.dataanalysis.quantiletype"),
        new Domain("levels from 1/(n + 1) to n/(n + 1) for n past seasons"));

    public static readonly Caution WeatherChanges = new(
        "heat-forecast.weather-changes",
        CautionLevel.Care,
        "Every past season counts as equally likely: a climate that grows warmer, or a garden unlike the place of the record, moves the dates.",
        PastYears.Source);

    public static readonly Caution Stages = new(
        "heat-forecast.requirement-exact",
        CautionLevel.Note,
        "The range is that of the weather alone: the variety and the stand need more or less heat than published. Look at the crop.",
        Source.CommonPractice("heat-forecast-crop", "the crop decides, the forecast only plans"));

    public static readonly Caution NotEveryYear = new(
        "heat-forecast.not-every-year",
        CautionLevel.Care,
        "In some of the past seasons the requirement is not met before the season ends.",
        PastYears.Source);

    public static Caution FewYears(int years) => new(
        "heat-forecast.few-years",
        CautionLevel.Care,
        string.Create(
            CultureInfo.InvariantCulture,
            $"{years} past seasons are too few for a level of 10 % or 90 %: the earliest and the latest stand in their place, at the level that they support."),
        Ranks.Source);
}
