using HortiCalc.Evidence;
using HortiCalc.Plants;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Reference;

internal static class GerminationCalculations
{
    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        // Thermal time.
        ["germination-days"] = inputs => Time(inputs).Days,
        ["germination-hours"] = inputs => Time(inputs).Hours,
        ["germination-thermal-time"] = inputs =>
        {
            GerminationNeed need = GerminationNeeds.Of(inputs["crop"]).Single(one => one.Source.Key == inputs["table"]);
            ThermalTime sum = !inputs.Has("end") ? need.Middle : inputs["end"] == "low" ? need.Low : need.High;
            return inputs["unit"] == "F" ? sum.FahrenheitDays : sum.CelsiusDays;
        },
        ["cardinal-temperature"] = CardinalTemperature,

        // Tables of emergence.
        ["emergence-days"] = inputs => Reading(inputs).Days!.Value.Days,
        ["emergence-days-low"] = inputs => Reading(inputs).Days!.Range!.Low.Days,
        ["emergence-days-high"] = inputs => Reading(inputs).Days!.Range!.High.Days,
        ["emergence-finding"] = inputs => Reading(inputs).Finding switch
        {
            EmergenceFinding.NoGermination => "NG",
            EmergenceFinding.NotTested => "nt",
            EmergenceFinding other => other.ToString(),
        },
        ["normal-seedlings"] = inputs => Share(inputs)!.Value.Percent,
        ["normal-seedlings-words"] = inputs => Share(inputs) is null ? "missing" : "known",

        // Ranges.
        ["germination-range"] = RangeTemperature,
    };

    private static Duration Time(Inputs inputs) => Germination.Time(
        Temperature.FromDegreesCelsius(inputs.Number("soil_C")),
        inputs["need"] switch
        {
            "onion" => GerminationNeeds.Onion,
            "lentil" => GerminationNeeds.Lentil,
            "fennel-hamedan" => GerminationNeeds.FennelHamedan,
            "fennel-malayer" => GerminationNeeds.FennelMalayer,
            "fennel-isfahan" => GerminationNeeds.FennelIsfahan,
            string other => throw new FormatException($"No need '{other}'."),
        })!.Value;

    private static EmergenceReading Reading(Inputs inputs) => Emergence.At(
        Temperature.FromDegreesFahrenheit(inputs.Number("soil_F")), EmergenceTables.Named(inputs["table"], inputs["crop"]));

    private static Estimate<Ratio>? Share(Inputs inputs) => NormalSeedlings.At(
        Temperature.FromDegreesFahrenheit(inputs.Number("soil_F")), NormalSeedlings.Of(inputs["crop"]));

    private static Computed CardinalTemperature(Inputs inputs)
    {
        CardinalTemperatures temperatures = CardinalTemperatureRecords.Of(inputs["crop"])
            .Single(record => record.Source.Key == inputs["table"] && record.Condition == inputs["condition"]).Temperatures;
        return (inputs["which"] switch
        {
            "base" => temperatures.Base,
            "lower-optimum" => temperatures.LowerOptimum!.Value,
            "upper-optimum" => temperatures.UpperOptimum!.Value,
            "ceiling" => temperatures.Ceiling!.Value,
            string other => throw new FormatException($"No cardinal temperature '{other}'."),
        }).DegreesCelsius;
    }

    private static Computed RangeTemperature(Inputs inputs)
    {
        GerminationRange range = GerminationRanges.Named(inputs["table"], inputs["crop"]);
        Temperature value = (inputs["which"] switch
        {
            "minimum" => range.Minimum,
            "optimum-low" => range.OptimumLow,
            "optimum-high" => range.OptimumHigh,
            "optimum" => range.Optimum,
            "maximum" => range.Maximum,
            string other => throw new FormatException($"No temperature '{other}'."),
        })!.Value;
        return inputs["unit"] == "F" ? value.DegreesFahrenheit : value.DegreesCelsius;
    }
}
