using HortiCalc.Evidence;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Climate;

/// <summary>Counts the warmth that opens buds once their need of cold is met.</summary>
public static class GrowingDegreeHours
{
    private static readonly HourlyCounter<GrowingDegreeHourRule> Counter = new(default, flooredByDay: false);

    /// <summary>
    /// Nothing at 4 °C and below, 21 an hour at the optimum of 25 °C, nothing from 36 °C up; along half a cosine below the optimum
    /// and a quarter of one above it. Anderson, Richardson and Kesner, 1986.
    /// </summary>
    public static Method Evidence { get; } = new(
        "growing-degree-hours",
        "growing degree hours, asymmetric curve",
        new Source(
            "anderson-1986",
            "Validation of chill unit and flower bud phenology models for 'Montmorency' sour cherry",
            "Acta Horticulturae 184:71-78",
            1986,
            null,
            SourceKind.FromMemory),
        new Domain("hourly temperatures; base 4, optimum 25, critical 36 °C"));

    /// <summary>Counts and sums growing degree hours from an hour on.</summary>
    /// <param name="hours">The hourly temperatures: readings, or hours drawn by <see cref="DiurnalCourse"/>.</param>
    /// <param name="from">
    /// The first hour to count, commonly the one at which the chill requirement is met; <see langword="null"/> for the first of the
    /// record.
    /// </param>
    /// <param name="maximumMissing">
    /// The largest share of missing hours that is accepted, from 0 to 100 %; <see langword="null"/> for 5 %.
    /// </param>
    /// <returns>
    /// What each hour adds and the running sum, to the last hour of the record. Missing hours add nothing and are counted.
    /// </returns>
    /// <exception cref="ArgumentNullException">The hours are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The first hour is not in the record, or the share is no share.</exception>
    /// <exception cref="ArgumentException">More hours are missing than accepted, or none is known.</exception>
    /// <example><code>
    /// HourlyTemperatures hours = HourlyTemperatures.Create(
    ///     new DateTime(2025, 3, 1, 12, 0, 0), [14.5, 25, 36], TemperatureUnit.DegreeCelsius);
    /// Console.WriteLine(GrowingDegreeHours.Accumulate(hours).Total); // 10.5 + 21 + 0
    /// </code></example>
    public static HourlyAccumulation Accumulate(HourlyTemperatures hours, DateTime? from = null, Ratio? maximumMissing = null) =>
        HourlyCounting.Accumulate(hours, Counter, Evidence, AccumulationUnit.GrowingDegreeHours, from, maximumMissing);

    /// <summary>Counts the growing degree hours of many stations at once, without allocating.</summary>
    /// <param name="temperatures">Hours by stations, as <see cref="Chill.Totals"/> takes them.</param>
    /// <param name="stations">How many stations there are.</param>
    /// <param name="unit">The unit of the temperatures: Celsius, Fahrenheit or Kelvin.</param>
    /// <param name="totals">Receives the total of each station.</param>
    /// <param name="missingHours">Receives how many hours of each station were missing, and so left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are no stations, or the unit is another.</exception>
    /// <exception cref="ArgumentException">
    /// The temperatures are no whole number of hours, or a result has no room for the stations.
    /// </exception>
    public static void Totals(
        ReadOnlySpan<double> temperatures, int stations, TemperatureUnit unit, Span<double> totals, Span<int> missingHours) =>
        HourlyCounting.Totals(temperatures, stations, unit, Counter, totals, missingHours, 0);
}
