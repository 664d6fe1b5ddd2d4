using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Physiological days, by which the development of the potato and the risk of early blight are reckoned.</summary>
/// <remarks>
/// A day gives from 0 to 10. They are counted from emergence, so the span is an input and has no default. Sums have been published for
/// the maturity of varieties (800 for Norland, 1000 for Russet Burbank on the Prairies) and 300 for the first risk of early blight.
/// </remarks>
public static class PhysiologicalDays
{
    private const string Unit = "physiological days";

    /// <summary>The response to one temperature.</summary>
    /// <param name="temperature">A temperature of the air, from -90 to 60 °C.</param>
    /// <param name="method">The response.</param>
    /// <returns>From 0, at or below the minimum and at or above the maximum, to 10 at the optimum.</returns>
    /// <exception cref="ArgumentNullException">The method is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is out of range.</exception>
    public static double Response(Temperature temperature, PhysiologicalDayMethod method) => Guard.NotNull(method).Response(Guard.Within(
        Boundary.Celsius(temperature), AirTemperature.LowestCelsius, AirTemperature.HighestCelsius, "°C", nameof(temperature)));

    /// <summary>The physiological days of one day.</summary>
    /// <param name="minimum">The day's lowest temperature, from -90 to 60 °C.</param>
    /// <param name="maximum">The day's highest temperature, not below the lowest, up to 60 °C.</param>
    /// <param name="method">The response.</param>
    /// <returns>From 0 to 10.</returns>
    /// <exception cref="ArgumentNullException">The method is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is out of range, or the maximum is below the minimum.</exception>
    /// <example><code>
    /// double day = PhysiologicalDays.OfDay(
    ///     Temperature.FromDegreesFahrenheit(55), Temperature.FromDegreesFahrenheit(82), PhysiologicalDayMethod.Fahrenheit);
    /// </code></example>
    public static double OfDay(Temperature minimum, Temperature maximum, PhysiologicalDayMethod method)
    {
        Guard.NotNull(method);
        (double minimumCelsius, double maximumCelsius) = DayTemperatures.Celsius(minimum, maximum);
        return method.Days(minimumCelsius, maximumCelsius);
    }

    /// <summary>The physiological days of a run of days.</summary>
    /// <param name="days">The daily temperatures.</param>
    /// <param name="span">The days to count, from emergence on.</param>
    /// <param name="method">The response.</param>
    /// <param name="missingDays">What is done about missing days; a day of the span outside the record is missing too.</param>
    /// <param name="maximumMissing">The largest share of missing days that is accepted, from 0 to 100 %; <see langword="null"/> for 5 %.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="ArgumentNullException">The days or the method are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">More days are missing than accepted, or none is known.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The share is no share.</exception>
    public static ClimateSum<double> Sum(
        DailyTemperatures days,
        DateSpan span,
        PhysiologicalDayMethod method,
        MissingDays missingDays = MissingDays.LeftOut,
        Ratio? maximumMissing = null)
    {
        Guard.NotNull(method);
        CountedDays counted = CountedDays.Of(days, span, missingDays, maximumMissing);
        return counted.Result(counted.Sum((minimum, maximum, _) => method.Days(minimum, maximum)), Unit, method.Evidence);
    }

    /// <summary>The sum up to the day on which it reaches a requirement.</summary>
    /// <param name="days">The daily temperatures.</param>
    /// <param name="from">The day of emergence: a day of the record.</param>
    /// <param name="requirement">The physiological days to reach, 0 or more.</param>
    /// <param name="method">The response.</param>
    /// <returns>
    /// The sum, whose <see cref="ClimateSum{T}.To"/> is the first day at whose end it is reached; <see langword="null"/> where the record ends
    /// before. Missing days are left out, so that the day may be too late.
    /// </returns>
    /// <exception cref="ArgumentNullException">The days or the method are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The first day is not in the record, or the requirement is negative.</exception>
    /// <exception cref="ArgumentException">More than 5 % of the days to the day it is reached are missing, or of the record where it is not.</exception>
    public static ClimateSum<double>? UntilReached(DailyTemperatures days, DateOnly from, double requirement, PhysiologicalDayMethod method)
    {
        Guard.NotNull(method);
        return Requirement.Until(
            days, from, requirement, (minimum, maximum, _) => method.Days(minimum, maximum), to => Sum(days, new DateSpan(from, to), method));
    }
}
