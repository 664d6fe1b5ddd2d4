using HortiCalc.Climate;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Reference;

internal static class HeatCalculations
{
    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["degree-days-of-day"] = inputs => In(inputs, DegreeDays.OfDay(
            Temperature(inputs, "minimum"), Temperature(inputs, "maximum"), Thresholds(inputs), Method(inputs), Cutoff(inputs))),
        ["degree-days-total"] = inputs => In(inputs, DegreeDays.Accumulate(
            Days(inputs.Numbers($"minima_{Unit(inputs)}"), inputs.Numbers($"maxima_{Unit(inputs)}"), TemperatureUnitOf(inputs)),
            Thresholds(inputs),
            Method(inputs),
            Cutoff(inputs)).Total),
        ["thermal-time-in-celsius"] = inputs => ThermalTime.FromFahrenheitDays(inputs.Number("thermal_time_Fd")).CelsiusDays,
        ["thermal-time-sum"] = inputs => inputs.Has("parts_Fd")
            ? inputs.Numbers("parts_Fd").Select(ThermalTime.FromFahrenheitDays).Aggregate(ThermalTime.Zero, (sum, part) => sum + part).FahrenheitDays
            : inputs.Numbers("parts_Cd").Select(ThermalTime.FromCelsiusDays).Aggregate(ThermalTime.Zero, (sum, part) => sum + part).CelsiusDays,
        ["days-to-reach"] = DaysToReach,
        ["threshold-in-celsius"] = inputs =>
            new DegreeDayThresholds(UnitsNet.Temperature.FromDegreesFahrenheit(inputs.Number("threshold_F"))).Lower.DegreesCelsius,
    };

    /// <summary>The number of days of one constant temperature, at the end of the last of which a requirement is met.</summary>
    private static Computed DaysToReach(Inputs inputs)
    {
        double[] constant = [.. Enumerable.Repeat(inputs.Number("temperature_C"), 365)];
        DegreeDaySeries series = DegreeDays.Accumulate(
            Days(constant, constant, TemperatureUnit.DegreeCelsius), Thresholds(inputs), DegreeDayMethod.SimpleAverage, UpperCutoff.None);
        DateOnly reached = series.DateReached(ThermalTime.FromCelsiusDays(inputs.Number("requirement_Cd")))
            ?? throw new InvalidOperationException($"Not reached within a year: {inputs}");
        return reached.DayNumber - series.Start.DayNumber + 1;
    }

    private static DailyTemperatures Days(double[] minima, double[] maxima, TemperatureUnit unit) =>
        DailyTemperatures.Create(new DateOnly(2001, 1, 1), minima, maxima, unit);

    private static string Unit(Inputs inputs) => inputs.Has("lower_F") ? "F" : "C";

    private static TemperatureUnit TemperatureUnitOf(Inputs inputs) =>
        Unit(inputs) == "F" ? TemperatureUnit.DegreeFahrenheit : TemperatureUnit.DegreeCelsius;

    private static Temperature Temperature(Inputs inputs, string name) => new(inputs.Number($"{name}_{Unit(inputs)}"), TemperatureUnitOf(inputs));

    private static DegreeDayThresholds Thresholds(Inputs inputs) => new(
        Temperature(inputs, "lower"), inputs.Has($"upper_{Unit(inputs)}") ? Temperature(inputs, "upper") : null);

    private static DegreeDayMethod Method(Inputs inputs) => DegreeDayMethod.FromKey(inputs["method"]);

    private static UpperCutoff Cutoff(Inputs inputs) => Enum.Parse<UpperCutoff>(inputs["cutoff"], ignoreCase: true);

    private static double In(Inputs inputs, ThermalTime sum) => Unit(inputs) == "F" ? sum.FahrenheitDays : sum.CelsiusDays;
}
