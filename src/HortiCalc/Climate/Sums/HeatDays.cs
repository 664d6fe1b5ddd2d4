using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Counts hot days by their maximum. The name says whether a day exactly at the threshold counts, because that decides.</summary>
/// <remarks>
/// At Seattle in 2012 to 2015 the days above 30 °C and those at or above 30 °C differ by a fifth: records are kept to a tenth of a degree, and
/// thermometers are read at round figures. A threshold given in Fahrenheit is met by the same record in Celsius: a billionth of a degree is
/// allowed. A day whose minimum alone is missing counts.
/// </remarks>
public static class HeatDays
{
    private const string Unit = "days";
    private const double RoundingCelsius = 1e-9;

    private static readonly Method AboveThreshold = new(
        "heat-days.above",
        "days whose maximum is above the threshold",
        new Source(
            "etccdi-core-indices",
            "Climate change indices: definitions of the 27 core indices",
            "Expert Team on Climate Change Detection and Indices",
            null,
            "http://etccdi.pacificclimate.org/list_27_indices.shtml"),
        new Domain("printed as summer days, with 25 °C"));

    private static readonly Method AtOrAboveThreshold = new(
        "heat-days.at-or-above",
        "days whose maximum is at or above the threshold",
        Source.CommonPractice("heat-days-at-or-above", "a day that reaches the threshold counts"),
        new Domain("any threshold"));

    /// <summary>Counts the days whose maximum is above a threshold; a day exactly at it does not count.</summary>
    /// <param name="days">The daily temperatures.</param>
    /// <param name="span">The days to count.</param>
    /// <param name="threshold">The threshold, from -90 to 60 °C.</param>
    /// <param name="missingDays">What is done about missing days; a day of the span outside the record is missing too.</param>
    /// <param name="maximumMissing">The largest share of missing days that is accepted, from 0 to 100 %; <see langword="null"/> for 5 %.</param>
    /// <returns>The number of days.</returns>
    /// <exception cref="ArgumentNullException">The days are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">More days are missing than accepted, or none is known.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The threshold is no temperature of the air, or the share is no share.</exception>
    /// <example><code>
    /// DailyTemperatures days = DailyTemperatures.Create(
    ///     new DateOnly(2024, 7, 1), [15, 17, 14], [30, 32, 27], TemperatureUnit.DegreeCelsius);
    /// ClimateSum&lt;int&gt; hot = HeatDays.Above(days, new DateSpan(days.Start, days.End), Temperature.FromDegreesCelsius(30)); // 1
    /// </code></example>
    public static ClimateSum<int> Above(
        DailyTemperatures days,
        DateSpan span,
        Temperature threshold,
        MissingDays missingDays = MissingDays.LeftOut,
        Ratio? maximumMissing = null)
    {
        double thresholdCelsius = Celsius(threshold, nameof(threshold));
        CountedDays counted = CountedDays.Of(days, span, missingDays, maximumMissing, maximaAlone: true);
        return Count(counted, thresholdCelsius + RoundingCelsius, AboveThreshold);
    }

    /// <summary>Counts the days whose maximum is at or above a threshold; a day exactly at it counts.</summary>
    /// <param name="days">The daily temperatures.</param>
    /// <param name="span">The days to count.</param>
    /// <param name="threshold">The threshold, from -90 to 60 °C.</param>
    /// <param name="missingDays">What is done about missing days; a day of the span outside the record is missing too.</param>
    /// <param name="maximumMissing">The largest share of missing days that is accepted, from 0 to 100 %; <see langword="null"/> for 5 %.</param>
    /// <returns>The number of days.</returns>
    /// <exception cref="ArgumentNullException">The days are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">More days are missing than accepted, or none is known.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The threshold is no temperature of the air, or the share is no share.</exception>
    public static ClimateSum<int> AtOrAbove(
        DailyTemperatures days,
        DateSpan span,
        Temperature threshold,
        MissingDays missingDays = MissingDays.LeftOut,
        Ratio? maximumMissing = null)
    {
        double thresholdCelsius = Celsius(threshold, nameof(threshold));
        CountedDays counted = CountedDays.Of(days, span, missingDays, maximumMissing, maximaAlone: true);
        return Count(counted, thresholdCelsius - RoundingCelsius, AtOrAboveThreshold);
    }

    private static double Celsius(Temperature threshold, string parameter) => Guard.Within(
        Boundary.Celsius(threshold), AirTemperature.LowestCelsius, AirTemperature.HighestCelsius, "°C", parameter);

    private static ClimateSum<int> Count(CountedDays counted, double aboveCelsius, Method method) =>
        counted.Result((int)counted.Sum((_, maximum, _) => maximum > aboveCelsius ? 1 : 0), Unit, method);
}
