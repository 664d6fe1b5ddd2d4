using HortiCalc.Climate;
using UnitsNet;

namespace HortiCalc.Reference;

internal static class HardinessCalculations
{
    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["hardiness-class"] = inputs => HardinessScheme.FromKey(inputs["scheme"]).ClassOf(TemperatureOf(inputs)).Value.Name,
        ["hardiness-bound-low-C"] = inputs => Class(inputs).From!.Value.DegreesCelsius,
        ["hardiness-bound-high-C"] = inputs => Class(inputs).To!.Value.DegreesCelsius,
        ["hardiness-bound-low-F"] = inputs => Class(inputs).From!.Value.DegreesFahrenheit,
        ["hardiness-bound-high-F"] = inputs => Class(inputs).To!.Value.DegreesFahrenheit,
        ["heat-zone"] = inputs => HeatZone.Of(inputs.Number("hot_days")).Value,
        ["canadian-hardiness-zone"] = inputs => CanadianHardiness.ZoneOf(inputs.Number("index")).Value,
        ["frost-tolerance-class"] = inputs => Tolerances(inputs).Single(statement => statement.Class.ToString() == inputs["among"]).Class!.Value.ToString(),
        ["frost-tolerance-withstands-F"] = inputs => Tolerances(inputs).Single().Withstands!.Value.DegreesFahrenheit,
        ["frost-tolerance-withstands-C"] = inputs => Tolerances(inputs).Single().Withstands!.Value.DegreesCelsius,
        ["frost-tolerance-killed-F"] = inputs => Tolerances(inputs).Single().KilledAt!.Value.DegreesFahrenheit,
        ["frost-tolerance-killed-C"] = inputs => Tolerances(inputs).Single().KilledAt!.Value.DegreesCelsius,
        ["root-killing-F"] = inputs =>
        {
            RootKilling roots = RootHardiness.For(inputs["plant"]).Single(statement => statement.Age == Enum.Parse<RootAge>(inputs["age"]));
            return (inputs["end"] == "low" ? roots.Lowest : roots.Highest).DegreesFahrenheit;
        },
    };

    private static HardinessClass Class(Inputs inputs) =>
        HardinessScheme.FromKey(inputs["scheme"]).Classes.Single(one => one.Name == inputs["class"]);

    private static Temperature TemperatureOf(Inputs inputs) => inputs.Has("temperature_F")
        ? Temperature.FromDegreesFahrenheit(inputs.Number("temperature_F"))
        : Temperature.FromDegreesCelsius(inputs.Number("temperature_C"));

    private static IEnumerable<FrostTolerance> Tolerances(Inputs inputs) => FrostTolerances.For(inputs["crop"])
        .Where(statement => statement.Crop == inputs["crop"] && statement.Source.Key == inputs["source"]);
}
