using HortiCalc.Climate;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Reference;

internal static class HumidityCalculations
{
    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["saturation-vapour-pressure"] = inputs => In(inputs, Saturation(inputs)),
        ["saturation-slope"] = inputs => Formula(inputs).OverWaterPerCelsius(Degrees(inputs, "t")).Kilopascals,
        ["dew-point"] = inputs => Degrees(inputs, "t", Given(inputs).DewPoint()),
        ["frost-point"] = inputs => Degrees(inputs, "t", Given(inputs).FrostPoint()!.Value),
        ["wet-bulb"] = inputs => Degrees(inputs, "t", Given(inputs).WetBulb(Bulb(inputs))),
        ["ice-bulb"] = inputs => Degrees(inputs, "t", Given(inputs).IceBulb(Bulb(inputs))!.Value),
        ["wet-bulb-fit"] = inputs => Degrees(inputs, "t", Humidity.FittedWetBulbAt(Degrees(inputs, "t"), Share(inputs)).Value),
        ["vapour-pressure"] = inputs => Given(inputs).VapourPressure.Kilopascals,
        ["vapour-pressure-deficit"] = inputs => Given(inputs).VapourPressureDeficit().Kilopascals,
        ["absolute-humidity"] = inputs => Given(inputs).AbsoluteHumidity.GramsPerCubicMeter,
        ["absolute-humidity-of-saturation"] = inputs => Saturated(inputs).AbsoluteHumidity.GramsPerCubicMeter,
        ["mixing-ratio-of-saturation"] = inputs => Saturated(inputs).MixingRatio.DecimalFractions,
        ["relative-humidity-from-dew-point"] = inputs => FromDewPoint(inputs).RelativeHumidity().Percent,
        ["wet-bulb-from-dew-point"] = inputs => FromDewPoint(inputs).WetBulb(Bulb(inputs)).DegreesCelsius,
        ["relative-humidity-from-wet-bulb"] = inputs => Over(inputs) == "ice"
            ? Read(inputs).RelativeHumidityOverIce().Percent
            : Read(inputs).RelativeHumidity().Percent,
        ["vapour-pressure-from-wet-bulb"] = inputs => Read(inputs).VapourPressure.Kilopascals,
        ["dew-point-from-wet-bulb"] = inputs => Read(inputs).DewPoint().DegreesCelsius,
        ["mixing-ratio-from-wet-bulb"] = inputs => Read(inputs).MixingRatio.DecimalFractions,
        ["frost-point-from-ice-bulb"] = inputs => Degrees(inputs, "dry", Read(inputs, "ice").FrostPoint()!.Value),
        ["relative-humidity-from-mixing-ratio"] = inputs => MoistAir
            .FromMixingRatio(Degrees(inputs, "t"), Ratio.FromDecimalFractions(inputs.Number("ratio_kg_kg")), Barometer(inputs), Formula(inputs))
            .RelativeHumidity().Percent,
        ["specific-humidity-from-mixing-ratio"] = inputs => MoistAir
            .FromMixingRatio(
                Temperature.FromDegreesCelsius(20), Ratio.FromDecimalFractions(inputs.Number("ratio_kg_kg")), Pressure.FromKilopascals(101.325))
            .SpecificHumidity.DecimalFractions,
        ["air-pressure"] = inputs => In(inputs, Barometer(inputs, "method")),
        ["psychrometric-constant"] = PsychrometricConstant,
    };

    private static SaturationVapourPressure Formula(Inputs inputs) => SaturationVapourPressure.FromKey(inputs["method"]);

    private static Psychrometer Bulb(Inputs inputs) => Psychrometer.FromKey(inputs["psychrometer"]);

    private static string Over(Inputs inputs) => inputs.Has("over") ? inputs["over"] : "water";

    private static RelativeHumidity Share(Inputs inputs) => RelativeHumidity.FromPercent(inputs.Number("rh_pct"));

    private static Temperature Degrees(Inputs inputs, string name) => inputs.Has(name + "_F")
        ? Temperature.FromDegreesFahrenheit(inputs.Number(name + "_F"))
        : Temperature.FromDegreesCelsius(inputs.Number(name + "_C"));

    /// <summary>A result in the unit of an input.</summary>
    private static double Degrees(Inputs inputs, string name, Temperature result) =>
        inputs.Has(name + "_F") ? result.DegreesFahrenheit : result.DegreesCelsius;

    private static Pressure Saturation(Inputs inputs) => Over(inputs) == "ice"
        ? Formula(inputs).OverIce(Degrees(inputs, "t"))
        : Formula(inputs).OverWater(Degrees(inputs, "t"));

    private static MoistAir Saturated(Inputs inputs) => new(Degrees(inputs, "t"), Saturation(inputs), Barometer(inputs), Formula(inputs));

    private static MoistAir Given(Inputs inputs) => Over(inputs) == "ice"
        ? MoistAir.FromRelativeHumidityOverIce(Degrees(inputs, "t"), Share(inputs), Barometer(inputs), Formula(inputs))
        : MoistAir.FromRelativeHumidity(Degrees(inputs, "t"), Share(inputs), Barometer(inputs), Formula(inputs));

    private static MoistAir FromDewPoint(Inputs inputs) =>
        MoistAir.FromDewPoint(Degrees(inputs, "t"), Degrees(inputs, "dew"), Barometer(inputs), Formula(inputs));

    /// <summary>What a psychrometer reads: the wet bulb, or how far it is below the dry one.</summary>
    private static MoistAir Read(Inputs inputs, string? over = null)
    {
        Temperature dry = Degrees(inputs, "dry");
        Temperature wet = inputs.Has("depression_F")
            ? Temperature.FromDegreesFahrenheit(inputs.Number("dry_F") - inputs.Number("depression_F"))
            : inputs.Has("depression_C")
            ? Temperature.FromDegreesCelsius(inputs.Number("dry_C") - inputs.Number("depression_C"))
            : Degrees(inputs, "wet");
        return (over ?? Over(inputs)) == "ice"
            ? MoistAir.FromIceBulb(dry, wet, Barometer(inputs, "pressure_method"), Bulb(inputs), Formula(inputs))
            : MoistAir.FromWetBulb(dry, wet, Barometer(inputs, "pressure_method"), Bulb(inputs), Formula(inputs));
    }

    /// <summary>By how much the vapour pressure falls for one degree between the bulbs.</summary>
    private static Computed PsychrometricConstant(Inputs inputs)
    {
        Temperature wet = Temperature.FromDegreesCelsius(20);
        MoistAir air = MoistAir.FromWetBulb(
            Temperature.FromDegreesCelsius(21), wet, Barometer(inputs, "method"), Bulb(inputs), SaturationVapourPressure.Fao);
        return SaturationVapourPressure.Fao.OverWater(wet).Kilopascals - air.VapourPressure.Kilopascals;
    }

    /// <summary>The barometer as given, by altitude, or at sea level where the result does not depend on it.</summary>
    private static Pressure Barometer(Inputs inputs, string method = "pressure_method") =>
        inputs.Has("altitude_m") ? AirPressure.AtAltitude(Length.FromMeters(inputs.Number("altitude_m")), AirPressureMethod.FromKey(inputs[method])).Value
        : inputs.Has("altitude_ft") ? AirPressure.AtAltitude(Length.FromFeet(inputs.Number("altitude_ft")), AirPressureMethod.FromKey(inputs[method])).Value
        : inputs.Has("p_mmHg") ? Pressure.FromMillimetersOfMercury(inputs.Number("p_mmHg"))
        : inputs.Has("p_inHg") ? Pressure.FromInchesOfMercury(inputs.Number("p_inHg"))
        : inputs.Has("p_hPa") ? Pressure.FromHectopascals(inputs.Number("p_hPa"))
        : inputs.Has("p_kPa") ? Pressure.FromKilopascals(inputs.Number("p_kPa"))
        : Pressure.FromKilopascals(101.325);

    private static double In(Inputs inputs, Pressure pressure) => pressure.As(inputs["in"] switch
    {
        "kPa" => PressureUnit.Kilopascal,
        "hPa" or "mbar" => PressureUnit.Hectopascal,
        "Pa" => PressureUnit.Pascal,
        "mmHg" => PressureUnit.MillimeterOfMercury,
        "inHg" => PressureUnit.InchOfMercury,
        "psi" => PressureUnit.PoundForcePerSquareInch,
        string other => throw new FormatException($"No unit of pressure '{other}'."),
    });
}
