using HortiCalc.Climate;
using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Reference;

internal static class FrostNightCalculations
{
    private static readonly DateTime Sunset = new(2027, 4, 20, 18, 0, 0);

    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        // The regression on the evening, fitted to nights.
        ["night-minimum"] = inputs => Model(inputs).Minimum(Celsius(inputs, "evening_C"), Celsius(inputs, "dew_point_C")).Value.DegreesCelsius,
        ["night-minimum.per-evening"] = inputs => Model(inputs).PerEveningTemperature,
        ["night-minimum.per-dew-point"] = inputs => Model(inputs).PerDewPoint,
        ["night-minimum.intercept"] = inputs => Model(inputs).Intercept.DegreesCelsius,

        // The cooling of a night, in either scale.
        ["night-cooling"] = NightCoolingAt,

        ["frost-rule.grass-minimum"] = inputs => FrostRules
            .GrassMinimum(Celsius(inputs, "afternoon_C"), Celsius(inputs, "dew_point_C"), (int)inputs.Number("month")).Value.DegreesCelsius,
        ["frost-rule.outlook"] = inputs => FrostRules.Outlook(Celsius(inputs, "dew_point_C")).Value.ToString(),
        ["frost-type"] = inputs => FrostTypes.Of(
            Speed.FromMilesPerHour(inputs.Number("wind_mph")), inputs["clear"] == "yes", inputs["inversion"] == "yes").Value.ToString(),

        ["frost-definition.covers"] = inputs => FrostDefinitions.All
            .Single(definition => definition.Term == inputs["term"]).Covers(Air(inputs, "minimum")) ? "yes" : "no",

        // Lines of tables, in the degrees printed.
        ["critical-temperature.low"] = inputs => Printed(inputs, Line(inputs).LowestCritical),
        ["critical-temperature.high"] = inputs => Printed(inputs, Line(inputs).HighestCritical),
        ["critical-temperature.ten-percent"] = inputs => Printed(inputs, Line(inputs).TenPercentKill),
        ["critical-temperature.ninety-percent"] = inputs => Printed(inputs, Line(inputs).NinetyPercentKill),
        ["critical-temperature.bud-need-low"] = inputs => Need(inputs).Low.Percent,
        ["critical-temperature.bud-need-high"] = inputs => Need(inputs).High!.Value.Percent,

        ["sprinkler-start"] = inputs => Printed(inputs, Sprinkling.StartTemperature(
            Air(inputs, "dew_point"), Temperature.FromDegreesCelsius(inputs.Number("critical_C"))).Value),
        ["sprinkler-start.table"] = inputs => Printed(inputs, Sprinkling.StartTemperature(
            Air(inputs, "dew_point"), Temperature.FromDegreesCelsius(0), method: SprinklerStartMethod.FromKey(inputs["method"])).Value),
        ["sprinkling.depth-low"] = inputs => Water(inputs).Low.CubicInches / (inputs.Number("area_ft2") * 144),
        ["sprinkling.depth-high"] = inputs => Water(inputs).High.CubicInches / (inputs.Number("area_ft2") * 144),

        ["row-cover.low"] = inputs => RowCover.FromKey(inputs["cover"]).Gain.Range!.Low.DegreesFahrenheit,
        ["row-cover.high"] = inputs => RowCover.FromKey(inputs["cover"]).Gain.Range!.High.DegreesFahrenheit,
    };

    private static NightMinimumModel Model(Inputs inputs)
    {
        double[] evenings = inputs.Numbers("evenings_C");
        double[] dewPoints = inputs.Numbers("dew_points_C");
        double[] minima = inputs.Numbers("minima_C");
        return new NightMinimumModel(
            NightMinimumFitting.FromKey(inputs["fitting"]),
            [.. minima.Select((minimum, night) => new PastNight(
                Temperature.FromDegreesCelsius(evenings[night]),
                Temperature.FromDegreesCelsius(dewPoints[night]),
                Temperature.FromDegreesCelsius(minimum)))]);
    }

    private static Computed NightCoolingAt(Inputs inputs)
    {
        NightCooling night = new(Sunset, Sunset.AddHours(inputs.Number("night_h")), Air(inputs, "evening"), Air(inputs, "minimum"));
        return Printed(inputs, night.At(Sunset.AddHours(inputs.Number("after_sunset_h"))));
    }

    private static CriticalTemperature Line(Inputs inputs) => CriticalTemperatures.All.Single(line =>
        line.Source.Key == inputs["table"]
        && line.Crop == inputs["crop"]
        && line.Stage == inputs["stage"]
        && (!inputs.Has("variety") || line.Variety == inputs["variety"]));

    private static CropBudNeed Need(Inputs inputs) => CriticalTemperatures.BudNeeds.Single(need => need.Crop == inputs["crop"]);

    private static EstimateRange<Volume> Water(Inputs inputs) => Sprinkling.WaterNeeded(
        Area.FromSquareFeet(inputs.Number("area_ft2")), Duration.FromHours(inputs.Number("run_h"))).Range!;

    private static Temperature Celsius(Inputs inputs, string name) => Temperature.FromDegreesCelsius(inputs.Number(name));

    private static Temperature Air(Inputs inputs, string name) => inputs.Has(name + "_F")
        ? Temperature.FromDegreesFahrenheit(inputs.Number(name + "_F"))
        : Temperature.FromDegreesCelsius(inputs.Number(name + "_C"));

    /// <summary>In the scale that the source prints.</summary>
    private static Computed Printed(Inputs inputs, Temperature? value) =>
        inputs["scale"] == "F" ? value!.Value.DegreesFahrenheit : value!.Value.DegreesCelsius;
}
