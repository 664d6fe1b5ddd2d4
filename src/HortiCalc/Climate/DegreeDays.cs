using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Counts degree days: how far, and for how long, temperature is above a base.</summary>
/// <remarks>
/// A sum of degree days is exact arithmetic on the recorded extremes by a rule with a name, hence a quantity and not an estimate. What is
/// uncertain is whether the rule fits the plant or insect: a requirement holds for the method it was published with.
/// </remarks>
public static class DegreeDays
{
    private const double MaximumMissingPercent = 5;

    /// <summary>Counts the degree days of one day.</summary>
    /// <param name="minimum">The day's lowest temperature, from -90 to 60 °C.</param>
    /// <param name="maximum">The day's highest temperature, not below the lowest, up to 60 °C.</param>
    /// <param name="thresholds">The temperatures between which development is counted.</param>
    /// <param name="method">The method that the requirement was published with.</param>
    /// <param name="cutoff">What happens above the upper threshold.</param>
    /// <returns>The degree days; never negative.</returns>
    /// <exception cref="ArgumentNullException">The thresholds or the method are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is out of range, or the maximum is below the minimum.</exception>
    /// <exception cref="ArgumentException">The method is not defined for the cutoff, or the cutoff lacks its upper threshold.</exception>
    /// <example><code>
    /// DegreeDayThresholds maize = new(Temperature.FromDegreesFahrenheit(50), Temperature.FromDegreesFahrenheit(86));
    /// ThermalTime day = DegreeDays.OfDay(
    ///     Temperature.FromDegreesFahrenheit(65), Temperature.FromDegreesFahrenheit(90), maize,
    ///     DegreeDayMethod.ClampedAverage, UpperCutoff.Horizontal);
    /// Console.WriteLine(day.ToString("U", null)); // 25.5 °F·d
    /// </code></example>
    public static ThermalTime OfDay(
        Temperature minimum, Temperature maximum, DegreeDayThresholds thresholds, DegreeDayMethod method, UpperCutoff cutoff)
    {
        double minimumCelsius = Guard.Within(
            Boundary.Celsius(minimum), AirTemperature.LowestCelsius, AirTemperature.HighestCelsius, "°C", nameof(minimum));
        double maximumCelsius = Guard.Within(
            Boundary.Celsius(maximum), minimumCelsius, AirTemperature.HighestCelsius, "°C", nameof(maximum));
        Guard.NotNull(method).Require(Guard.NotNull(thresholds), cutoff);
        double celsiusDays = 0;
        method.Count(new(in minimumCelsius), new(in maximumCelsius), thresholds, cutoff, new(ref celsiusDays));
        return ThermalTime.FromCelsiusDays(celsiusDays);
    }

    /// <summary>Counts and sums the degree days of a record from a day on.</summary>
    /// <param name="days">
    /// The daily temperatures, where a day without its minimum or its maximum is missing; cut them with
    /// <see cref="DailyTemperatures.Between"/> to end earlier.
    /// </param>
    /// <param name="thresholds">The temperatures between which development is counted.</param>
    /// <param name="method">The method that the requirement was published with.</param>
    /// <param name="cutoff">What happens above the upper threshold.</param>
    /// <param name="from">The first day to count, at any time of the year; <see langword="null"/> for the first of the record.</param>
    /// <param name="missingDays">What is done about missing days.</param>
    /// <param name="maximumMissing">The largest share of missing days that is accepted, from 0 to 100 %; <see langword="null"/> for 5 %.</param>
    /// <returns>The degree days of each day and their running sum, to the last day of the record.</returns>
    /// <exception cref="ArgumentNullException">The days, thresholds or method are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The first day is not in the record, or the share is no share.</exception>
    /// <exception cref="ArgumentException">
    /// More days are missing than accepted, none is known, the method is not defined for the cutoff, or the cutoff lacks its upper threshold.
    /// </exception>
    /// <remarks>
    /// The limit of 5 % is our choice: left out, a twentieth of the days takes about a twentieth of the sum, which is less than the choice of
    /// the method does.
    /// </remarks>
    /// <example><code>
    /// DailyTemperatures days = DailyTemperatures.Create(
    ///     new DateOnly(2024, 2, 28), [8, 9, 11, 12], [15, 18, 19, 21], TemperatureUnit.DegreeCelsius);
    /// DegreeDaySeries heat = DegreeDays.Accumulate(
    ///     days, new DegreeDayThresholds(Temperature.FromDegreesCelsius(10)), DegreeDayMethod.SingleSine, UpperCutoff.None,
    ///     from: new DateOnly(2024, 2, 29));
    /// DateOnly? hatch = heat.DateReached(ThermalTime.FromCelsiusDays(8)); // 1 March
    /// </code></example>
    public static DegreeDaySeries Accumulate(
        DailyTemperatures days,
        DegreeDayThresholds thresholds,
        DegreeDayMethod method,
        UpperCutoff cutoff,
        DateOnly? from = null,
        MissingDays missingDays = MissingDays.LeftOut,
        Ratio? maximumMissing = null)
    {
        Guard.NotNull(days);
        Guard.NotNull(method).Require(Guard.NotNull(thresholds), cutoff);
        Guard.Defined(missingDays);
        double maximumMissingPercent = maximumMissing is Ratio share
            ? Guard.Within(Boundary.Fraction(share) * 100, 0, 100, "%", nameof(maximumMissing))
            : MaximumMissingPercent;
        DailyTemperatures counted = from is DateOnly first ? From(days, first) : days;
        RequireKnown(counted, maximumMissingPercent);

        double[] celsiusDays = new double[counted.Count];
        if (counted.MissingCount == 0)
        {
            method.Count(counted.MinimaCelsius, counted.MaximaCelsius, thresholds, cutoff, celsiusDays);
        }
        else
        {
            double[] minimaCelsius = counted.MinimaCelsius.ToArray();
            double[] maximaCelsius = counted.MaximaCelsius.ToArray();
            Gaps.DropPartialDays(minimaCelsius, maximaCelsius);
            if (missingDays == MissingDays.Interpolated)
            {
                Gaps.Interpolate(minimaCelsius);
                Gaps.Interpolate(maximaCelsius);
            }

            method.Count(minimaCelsius, maximaCelsius, thresholds, cutoff, celsiusDays);
        }

        return new DegreeDaySeries(counted.Start, thresholds, method, cutoff, missingDays, counted.Missing, celsiusDays);
    }

    private static DailyTemperatures From(DailyTemperatures days, DateOnly from)
    {
        DayRange.IndexOf(from, days.Start, days.End, nameof(from));
        return days.Between(from, days.End);
    }

    private static void RequireKnown(DailyTemperatures days, double maximumMissingPercent)
    {
        double missingPercent = 100.0 * days.MissingCount / days.Count;
        if (missingPercent <= maximumMissingPercent && days.MissingCount < days.Count)
            return;
        throw new ArgumentException(
            $"days had {Guard.Number(days.MissingCount)} of {Guard.Number(days.Count)} missing "
            + $"from {AirTemperature.Text(days.Start)} to {AirTemperature.Text(days.End)}; "
            + $"allowed: up to {Guard.Number(maximumMissingPercent)} % (maximumMissing sets this), and one day with its minimum and its maximum.",
            nameof(days));
    }
}
