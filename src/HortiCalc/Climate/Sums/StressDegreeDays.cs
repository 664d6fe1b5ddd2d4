using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Stress degree-days: how far each day's maximum is above the temperature from which heat and drought hold a crop back.</summary>
public static class StressDegreeDays
{
    private static readonly Method Iowa = new(
        "stress-degree-days",
        "maximum less the threshold, a day below taken for zero",
        new Source(
            "iowa-stress-degree-days",
            "Agronomy 541, lesson 4a: stress degree days",
            "Iowa State University",
            null,
            "http://agron-www.agron.iastate.edu/courses/Agron541/classes/541/lesson04a/4a.2.html"),
        new Domain("maize without irrigation in the Midwest of the United States, 86 °F"));

    private static readonly Caution MostlyWater = new(
        "stress-degree-days.water",
        CautionLevel.Note,
        "What the sum tells is mostly a lack of water brought on by heat: a crop with enough of it stands much more.",
        Iowa.Source);

    /// <summary>The threshold it was published with: 86 °F, 30 °C.</summary>
    public static Temperature PublishedThreshold { get; } = Temperature.FromDegreesCelsius(30);

    /// <summary>Sums how far the maxima are above a threshold.</summary>
    /// <param name="days">The daily temperatures.</param>
    /// <param name="span">The days to count.</param>
    /// <param name="threshold">The threshold, from -90 to 60 °C; <see langword="null"/> for <see cref="PublishedThreshold"/>.</param>
    /// <param name="missingDays">What is done about missing days; a day of the span outside the record is missing too.</param>
    /// <param name="maximumMissing">The largest share of missing days that is accepted, from 0 to 100 %; <see langword="null"/> for 5 %.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="ArgumentNullException">The days are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">More days are missing than accepted, or none is known.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The threshold is no temperature of the air, or the share is no share.</exception>
    /// <example><code>
    /// DailyTemperatures days = DailyTemperatures.Create(
    ///     new DateOnly(2024, 7, 1), [70, 71], [100, 84], TemperatureUnit.DegreeFahrenheit);
    /// ClimateSum&lt;ThermalTime&gt; stress = StressDegreeDays.Sum(days, new DateSpan(days.Start, days.End)); // 14 °F·d
    /// </code></example>
    public static ClimateSum<ThermalTime> Sum(
        DailyTemperatures days,
        DateSpan span,
        Temperature? threshold = null,
        MissingDays missingDays = MissingDays.LeftOut,
        Ratio? maximumMissing = null)
    {
        double thresholdCelsius = Guard.Within(
            Boundary.Celsius(threshold ?? PublishedThreshold), AirTemperature.LowestCelsius, AirTemperature.HighestCelsius, "°C", nameof(threshold));
        CountedDays counted = CountedDays.Of(days, span, missingDays, maximumMissing);
        double celsiusDays = counted.Sum((_, maximum, _) => Math.Max(0, maximum - thresholdCelsius));
        return counted.Result(ThermalTime.FromCelsiusDays(celsiusDays), "", Iowa, MostlyWater);
    }
}
