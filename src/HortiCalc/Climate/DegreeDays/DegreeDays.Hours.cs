using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Climate;

/// <content>From readings of each hour, which know the course of the day.</content>
public static partial class DegreeDays
{
    private const int HoursOfDay = 24;

    /// <summary>Counts the degree days of a day, or of any time, from temperatures measured at even hours.</summary>
    /// <param name="temperatures">One temperature an hour, in <paramref name="unit"/>; none missing.</param>
    /// <param name="unit">°C, °F or K.</param>
    /// <param name="thresholds">The temperatures between which development is counted.</param>
    /// <param name="cutoff">What happens above the upper threshold, in each hour.</param>
    /// <returns>A 24th of the sum over the hours; negative only where the cutoff is <see cref="UpperCutoff.IntermediateBelowZero"/>.</returns>
    /// <exception cref="ArgumentNullException">The thresholds are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is not a number or out of range, or the unit is another one.</exception>
    /// <exception cref="ArgumentException">The cutoff lacks its upper threshold.</exception>
    /// <remarks>
    /// Degree hours over 24, as in the Glossary of Meteorology of the American Meteorological Society. With
    /// <see cref="UpperCutoff.Intermediate"/> it is the whole time, and not the hour, that counts no less than nothing, as for the other methods.
    /// </remarks>
    public static ThermalTime OfHours(
        ReadOnlySpan<double> temperatures, TemperatureUnit unit, DegreeDayThresholds thresholds, UpperCutoff cutoff)
    {
        DegreeDayMethod.MeasuredHours.Require(Guard.NotNull(thresholds), cutoff);
        DegreeDayUnit scale = DegreeDayUnit.Of(unit);
        for (int hour = 0; hour < temperatures.Length; hour++)
            Guard.Within(temperatures[hour], scale.Lowest, scale.Highest, scale.Symbol, $"temperatures[{Guard.Number(hour)}]");
        double upper = cutoff == UpperCutoff.None ? double.PositiveInfinity : scale.Threshold(thresholds.UpperCelsius);
        double degreeDays = CountHours(temperatures, scale.Threshold(thresholds.LowerCelsius), upper, cutoff);
        return unit == TemperatureUnit.DegreeFahrenheit ? ThermalTime.FromFahrenheitDays(degreeDays) : ThermalTime.FromCelsiusDays(degreeDays);
    }

    /// <summary>Counts and sums the degree days of hourly readings from a day on: each day is a 24th of the sum over its hours.</summary>
    /// <param name="hours">
    /// The readings; cut them with <see cref="HourlyTemperatures.Between"/> to end earlier. A day without all of its 24 readings is missing,
    /// also where the record begins or ends within it.
    /// </param>
    /// <param name="thresholds">The temperatures between which development is counted.</param>
    /// <param name="cutoff">What happens above the upper threshold, in each hour.</param>
    /// <param name="from">The first day to count; <see langword="null"/> for that of the first reading.</param>
    /// <param name="maximumMissing">The largest share of missing days that is accepted, from 0 to 100 %; <see langword="null"/> for 5 %.</param>
    /// <returns>
    /// The degree days of each day and their running sum, to the day of the last reading, by <see cref="DegreeDayMethod.MeasuredHours"/>. Missing
    /// days are left out and reported: an hour that nobody measured is never guessed.
    /// </returns>
    /// <remarks>
    /// Of all ways to count it supposes least about the course of the day. It is not therefore the one to compare with a requirement: most were
    /// published for daily extremes, and <see cref="HeatRequirement.CautionsFor"/> says where the two differ. For those, take the extremes by
    /// <see cref="DailyTemperatures.FromHourly"/>.
    /// </remarks>
    /// <exception cref="ArgumentNullException">The hours or the thresholds are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The first day is not in the record, or the share is no share.</exception>
    /// <exception cref="ArgumentException">More days are missing than accepted, none is known, or the cutoff lacks its upper threshold.</exception>
    /// <example><code>
    /// double[] readings = [.. Enumerable.Range(0, 48).Select(hour => 15 - 8 * Math.Cos(hour * Math.PI / 12))];
    /// HourlyTemperatures hours = HourlyTemperatures.Create(new DateTime(2024, 5, 1), readings, TemperatureUnit.DegreeCelsius);
    /// DegreeDayThresholds maize = new(Temperature.FromDegreesCelsius(10), Temperature.FromDegreesCelsius(30));
    /// DegreeDaySeries heat = DegreeDays.AccumulateHours(hours, maize, UpperCutoff.Horizontal);
    /// </code></example>
    public static DegreeDaySeries AccumulateHours(
        HourlyTemperatures hours,
        DegreeDayThresholds thresholds,
        UpperCutoff cutoff,
        DateOnly? from = null,
        Ratio? maximumMissing = null)
    {
        Guard.NotNull(hours);
        DegreeDayMethod.MeasuredHours.Require(Guard.NotNull(thresholds), cutoff);
        double maximumMissingPercent = AcceptedPercent(maximumMissing);
        DateOnly start = DateOnly.FromDateTime(hours.Start);
        DateOnly end = DateOnly.FromDateTime(hours.End);
        int skipped = from is DateOnly first ? DayRange.IndexOf(first, start, end, nameof(from)) : 0;

        double[] celsiusDays = new double[end.DayNumber - start.DayNumber + 1 - skipped];
        List<DateOnly> missing = [];
        for (int day = 0; day < celsiusDays.Length; day++)
        {
            ReadOnlySpan<double> ofDay = HoursOf(hours, day + skipped);
            celsiusDays[day] = ofDay.Length == HoursOfDay
                ? CountHours(ofDay, thresholds.LowerCelsius, thresholds.UpperCelsius, cutoff)
                : double.NaN;
            if (double.IsNaN(celsiusDays[day]))
                missing.Add(start.AddDays(day + skipped));
        }

        if (100.0 * missing.Count / celsiusDays.Length > maximumMissingPercent || missing.Count == celsiusDays.Length)
        {
            throw new ArgumentException(
                $"hours had {Guard.Number(missing.Count)} of {Guard.Number(celsiusDays.Length)} days without all 24 readings "
                + $"from {AirTemperature.Text(start.AddDays(skipped))} to {AirTemperature.Text(end)}; "
                + $"allowed: up to {Guard.Number(maximumMissingPercent)} % (maximumMissing sets this), and one whole day.",
                nameof(hours));
        }

        return new DegreeDaySeries(
            start.AddDays(skipped), thresholds, DegreeDayMethod.MeasuredHours, cutoff, MissingDays.LeftOut, missing, celsiusDays);
    }

    /// <summary>The readings of a day, counted from that of the first reading; fewer than 24 where the record begins or ends within it.</summary>
    private static ReadOnlySpan<double> HoursOf(HourlyTemperatures hours, int day)
    {
        int first = day * HoursOfDay - hours.Start.Hour;
        return hours.Celsius[Math.Max(0, first)..Math.Min(hours.Count, first + HoursOfDay)];
    }

    /// <summary>A 24th of the sum over the hours, in the unit of the temperatures; not a number where one is missing.</summary>
    private static double CountHours(ReadOnlySpan<double> temperatures, double lower, double upper, UpperCutoff cutoff)
    {
        double sum = 0;
        foreach (double temperature in temperatures)
        {
            // Math.Max hands a missing hour on.
            double above = Math.Max(0, temperature - upper);
            double rate = Math.Max(0, temperature - lower);
            sum += cutoff switch
            {
                UpperCutoff.Horizontal => rate - above,
                UpperCutoff.Intermediate or UpperCutoff.IntermediateBelowZero => rate - 2 * above,
                UpperCutoff.Vertical => above > 0 ? 0 : rate,
                _ => rate,
            };
        }

        double degreeDays = sum / HoursOfDay;
        return cutoff == UpperCutoff.Intermediate ? Math.Max(0, degreeDays) : degreeDays;
    }
}
