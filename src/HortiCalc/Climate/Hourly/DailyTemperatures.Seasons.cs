using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

public sealed partial record DailyTemperatures
{
    /// <summary>Takes the lowest and highest reading of each day.</summary>
    /// <param name="readings">Hourly readings.</param>
    /// <param name="fewestReadings">
    /// How many readings a day must have, from 1 to 24; a day with fewer is missing. All 24 unless told otherwise: where the afternoon is
    /// a gap, the highest reading left says nothing about the maximum.
    /// </param>
    /// <returns>The days from that of the first reading to that of the last, missing ones among them.</returns>
    /// <remarks>The extremes of full hours lie within those of a thermometer that records them all the time, by a few tenths of a degree.</remarks>
    /// <exception cref="ArgumentNullException">The readings are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The fewest readings are not from 1 to 24.</exception>
    /// <example><code>
    /// double[] readings = [.. Enumerable.Range(0, 48).Select(hour => 10 - 5 * Math.Cos(hour * Math.PI / 12))];
    /// HourlyTemperatures hours = HourlyTemperatures.Create(new DateTime(2024, 2, 28), readings, TemperatureUnit.DegreeCelsius);
    /// DailyTemperatures days = DailyTemperatures.FromHourly(hours); // 28 and 29 February, each from 5 to 15 °C
    /// </code></example>
    public static DailyTemperatures FromHourly(HourlyTemperatures readings, int fewestReadings = 24)
    {
        Guard.NotNull(readings);
        Guard.Within(fewestReadings, 1, 24, "readings");
        int firstHour = readings.Start.Hour;
        ReadOnlySpan<double> hoursCelsius = readings.Celsius;
        int days = (firstHour + hoursCelsius.Length + 23) / 24;
        double[] lowsCelsius = new double[days];
        double[] highsCelsius = new double[days];
        for (int day = 0; day < days; day++)
        {
            int from = Math.Max(0, day * 24 - firstHour);
            int to = Math.Min(hoursCelsius.Length, day * 24 + 24 - firstHour);
            (lowsCelsius[day], highsCelsius[day]) = Extremes(hoursCelsius[from..to], fewestReadings);
        }

        return new DailyTemperatures(DateOnly.FromDateTime(readings.Start), lowsCelsius, highsCelsius);
    }

    /// <summary>Cuts out one season, without copying.</summary>
    /// <param name="first">The first day of the season.</param>
    /// <param name="last">The last day; in the next year where it comes before <paramref name="first"/> in the calendar.</param>
    /// <param name="year">The year in which the season begins.</param>
    /// <returns>The days from the first to the last. A season to 28 February ends there in a leap year too; one to the 29th ends on the 28th in a common one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The season is not wholly within the series.</exception>
    public DailyTemperatures Season(MonthDay first, MonthDay last, int year)
    {
        (DateOnly from, DateOnly to) = SeasonDates.Of(first, last, year);
        return Between(from, to);
    }

    /// <summary>Cuts the record into all seasons that lie wholly within it, without copying.</summary>
    /// <param name="first">The first day of the season.</param>
    /// <param name="last">The last day; in the next year where it comes before <paramref name="first"/> in the calendar.</param>
    /// <returns>The seasons in order; none where the record is too short.</returns>
    public IReadOnlyList<DailyTemperatures> Seasons(MonthDay first, MonthDay last) => ValueList<DailyTemperatures>.Of(
        Enumerable.Range(Start.Year, End.Year - Start.Year + 1)
            .Where(year => !(last < first && year == DateOnly.MaxValue.Year))
            .Select(year => SeasonDates.Of(first, last, year))
            .Where(season => season.First >= Start && season.Last <= End)
            .Select(season => Between(season.First, season.Last)));

    private static (double LowCelsius, double HighCelsius) Extremes(ReadOnlySpan<double> hoursCelsius, int fewestReadings)
    {
        int known = 0;
        double lowCelsius = double.PositiveInfinity;
        double highCelsius = double.NegativeInfinity;
        foreach (double hourCelsius in hoursCelsius)
        {
            if (double.IsNaN(hourCelsius))
                continue;
            known++;
            lowCelsius = Math.Min(lowCelsius, hourCelsius);
            highCelsius = Math.Max(highCelsius, hourCelsius);
        }

        return known >= fewestReadings ? (lowCelsius, highCelsius) : (double.NaN, double.NaN);
    }
}
