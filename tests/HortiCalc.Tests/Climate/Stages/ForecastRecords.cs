using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

/// <summary>Records whose dates can be worked out by hand: in each season, every day is as warm as the next.</summary>
internal static class ForecastRecords
{
    public static readonly Source Page = new("page", "A page", "A publisher", 1982, null);

    public static HeatRequirement Needs(double celsiusDays) => new(
        ThermalTime.FromCelsiusDays(celsiusDays),
        new DegreeDayThresholds(Temperature.FromDegreesCelsius(0)),
        DegreeDayMethod.SimpleAverage,
        UpperCutoff.None,
        Page);

    /// <summary>A record from a first day on, each year from that day of a temperature of its own.</summary>
    public static DailyTemperatures Constant(DateOnly first, params IReadOnlyList<double> yearsCelsius) =>
        Daily(first, first.AddYears(yearsCelsius.Count).AddDays(-1), date =>
        {
            int year = date.Year - first.Year;
            return yearsCelsius[date < first.AddYears(year) ? year - 1 : year];
        });

    public static DailyTemperatures Daily(DateOnly first, DateOnly last, Func<DateOnly, double> celsius)
    {
        double[] means = [.. Enumerable.Range(0, last.DayNumber - first.DayNumber + 1).Select(day => celsius(first.AddDays(day)))];
        return DailyTemperatures.Create(
            first, means.Select(mean => mean - 2).ToArray(), means.Select(mean => mean + 2).ToArray(), TemperatureUnit.DegreeCelsius);
    }

    /// <summary>The season so far: some days as warm as each other, from the first.</summary>
    public static DailyTemperatures SoFar(DateOnly first, int days, double celsius) => Daily(first, first.AddDays(days - 1), _ => celsius);
}
