using HortiCalc.Climate;
using UnitsNet;

namespace HortiCalc.Reference;

/// <summary>Tables of stages, of base temperatures and of how long stages last, brought back to the unit of print.</summary>
internal static class StageCalculations
{
    public static IReadOnlyDictionary<string, Func<Inputs, Computed>> All { get; } = new Dictionary<string, Func<Inputs, Computed>>
    {
        ["stage-low"] = inputs => StageTables.FromKey(inputs["table"]).Stage(inputs["stage"]).Low.FahrenheitDays,
        ["stage-high"] = inputs => StageTables.FromKey(inputs["table"]).Stage(inputs["stage"]).High!.Value.FahrenheitDays,
        ["development-time"] = inputs => inputs["unit"] == "Fd" ? Time(inputs).Sum.FahrenheitDays : Time(inputs).Sum.CelsiusDays,
        ["development-threshold"] = inputs => Time(inputs).Thresholds.Lower.DegreesCelsius,
        ["base-temperature"] = inputs => InUnit(Base(inputs).Thresholds.Lower, inputs),
        ["upper-temperature"] = inputs => InUnit(Base(inputs).Thresholds.Upper!.Value, inputs),
    };

    private static HeatRequirement Time(Inputs inputs) => DevelopmentTimes.Of(inputs["subject"])
        .Single(time => time.Stage == inputs["stage"] && time.Requirement.Source.Key == inputs["source"])
        .Requirement;

    private static BaseTemperature Base(Inputs inputs) => BaseTemperatures.Of(inputs["subject"])
        .Single(row => row.Subject == inputs["subject"] && row.Source.Key == inputs["source"]);

    private static double InUnit(Temperature temperature, Inputs inputs) =>
        inputs["unit"] == "F" ? temperature.DegreesFahrenheit : temperature.DegreesCelsius;
}
