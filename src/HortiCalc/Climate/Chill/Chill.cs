using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Climate;

/// <summary>Counts the cold of a winter, which buds need before they can grow again.</summary>
public static class Chill
{
    /// <summary>Counts and sums the chill of hourly temperatures from an hour on.</summary>
    /// <param name="hours">The hourly temperatures: readings, or hours drawn by <see cref="DiurnalCourse"/>.</param>
    /// <param name="model">The model that the requirement was measured with.</param>
    /// <param name="from">
    /// The first hour to count; <see langword="null"/> for the first of the record. <see cref="ChillModel.SeasonStart"/> says when a
    /// model is commonly begun. The state of the dynamic model is empty then.
    /// </param>
    /// <param name="maximumMissing">
    /// The largest share of missing hours that is accepted, from 0 to 100 %; <see langword="null"/> for 5 %.
    /// </param>
    /// <returns>
    /// What each hour adds and the running sum, to the last hour of the record. Missing hours add nothing and are counted.
    /// </returns>
    /// <exception cref="ArgumentNullException">The hours or the model are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The first hour is not in the record, or the share is no share.</exception>
    /// <exception cref="ArgumentException">More hours are missing than accepted, or none is known.</exception>
    /// <example><code>
    /// double[] mild = [.. Enumerable.Range(0, 90 * 24).Select(hour => 6 - 3 * Math.Cos(hour * Math.PI / 12))];
    /// HourlyTemperatures winter = HourlyTemperatures.Create(new DateTime(2024, 11, 1), mild, TemperatureUnit.DegreeCelsius);
    /// HourlyAccumulation chill = Chill.Accumulate(winter, ChillModel.Dynamic);
    /// ChillRequirement peach = ChillRequirements.Named("uc-fruit-and-nut-portions", "Peach", "Redhaven");
    /// DateTime? enough = peach.FulfilledBy(chill).Reached;
    /// </code></example>
    public static HourlyAccumulation Accumulate(
        HourlyTemperatures hours, ChillModel model, DateTime? from = null, Ratio? maximumMissing = null)
    {
        ArgumentNullException.ThrowIfNull(model);
        return HourlyCounting.Accumulate(hours, model.Counter, model.Evidence, model.Unit, from, maximumMissing);
    }

    /// <summary>Counts the chill of many stations at once, without allocating.</summary>
    /// <param name="temperatures">
    /// Hours by stations: the temperature of each station at the first hour, then of each at the second, and so on; not a number
    /// where it is missing.
    /// </param>
    /// <param name="stations">How many stations there are.</param>
    /// <param name="unit">The unit of the temperatures: Celsius, Fahrenheit or Kelvin.</param>
    /// <param name="model">The model.</param>
    /// <param name="totals">Receives the total of each station.</param>
    /// <param name="missingHours">
    /// Receives how many hours of each station were missing, and so left out. It is the caller who judges whether that is too many.
    /// </param>
    /// <param name="firstHour">
    /// The hour of the day of the first row, from 0 to 23: a day ends after its hour 23. It matters to daily models alone.
    /// </param>
    /// <remarks>
    /// Stations stand side by side because the dynamic model goes from hour to hour and cannot be split along time. Temperatures
    /// are not checked: check them with <see cref="HourlyTemperatures.Create"/>. Processors with wider vectors may differ in the
    /// last digits of the dynamic model, below 1e-9 portions over a season. Spans may be split by stations in any way, and run side
    /// by side.
    /// </remarks>
    /// <exception cref="ArgumentNullException">The model is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// There are no stations, the unit is another, or the hour is not from 0 to 23.
    /// </exception>
    /// <exception cref="ArgumentException">
    /// The temperatures are no whole number of hours, or a result has no room for the stations.
    /// </exception>
    public static void Totals(
        ReadOnlySpan<double> temperatures,
        int stations,
        TemperatureUnit unit,
        ChillModel model,
        Span<double> totals,
        Span<int> missingHours,
        int firstHour = 0)
    {
        ArgumentNullException.ThrowIfNull(model);
        HourlyCounting.Totals(temperatures, stations, unit, model.Counter, totals, missingHours, firstHour);
    }
}
