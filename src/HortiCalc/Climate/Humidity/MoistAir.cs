using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;
using AirHumidity = UnitsNet.RelativeHumidity;

namespace HortiCalc.Climate;

/// <summary>Air with its water vapour: whatever was measured of it, everything else follows.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. Everything is exact arithmetic once a formula of saturation is chosen, and of the
/// psychrometer for wet bulbs; both carry their sources. Dew point and wet bulb are over water, supercooled below 0 °C, and frost point and
/// ice bulb over ice. Going from one measure to another and back gives the same within a billionth. The air is a mixture of perfect
/// gases: saturated air really holds up to 0.5 % more vapour at sea level.
/// </remarks>
/// <example><code>
/// MoistAir glasshouse = MoistAir.FromRelativeHumidity(
///     Temperature.FromDegreesCelsius(24), RelativeHumidity.FromPercent(65), Pressure.FromKilopascals(101.3));
/// Console.WriteLine($"{glasshouse.VapourPressureDeficit().Kilopascals:F2} kPa"); // 1.04 kPa
/// Console.WriteLine($"{glasshouse.DewPoint().DegreesCelsius:F1} °C");             // 17.0 °C
/// Console.WriteLine($"{glasshouse.WetBulb().DegreesCelsius:F1} °C");              // 19.3 °C
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed partial record MoistAir : IFormattable, IDisplayable
{
    // Beyond any barometer on land, and near enough to it that hectopascals taken for kilopascals are refused.
    private const double LowestAirKilopascals = 10;
    private const double HighestAirKilopascals = 120;

    // What a vapour pressure may lie above saturation after conversions.
    private const double Hair = 1e-9;

    private readonly double celsius;
    private readonly double vapourKilopascals;
    private readonly double airKilopascals;

    /// <summary>Describes moist air by its vapour pressure.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <param name="vapourPressure">The pressure of its vapour: above 0, at most that of saturation over water.</param>
    /// <param name="airPressure">The pressure that a barometer shows there, from 10 to 120 kPa; see <see cref="AirPressure"/>.</param>
    /// <param name="saturation">The formula of saturation.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range, or the formula was not published for the temperature.</exception>
    /// <exception cref="ArgumentNullException">The formula is <see langword="null"/>.</exception>
    public MoistAir(Temperature temperature, Pressure vapourPressure, Pressure airPressure, SaturationVapourPressure saturation)
        : this(Given.Of(temperature, airPressure, saturation), Boundary.Kilopascals(vapourPressure), nameof(vapourPressure))
    {
    }

    private MoistAir(Given given, double vapourKilopascals, string parameter)
    {
        Saturation = given.Saturation;
        celsius = given.Celsius;
        airKilopascals = given.AirKilopascals;
        this.vapourKilopascals = vapourKilopascals > 0 && vapourKilopascals <= given.SaturationKilopascals * (1 + Hair) && vapourKilopascals < airKilopascals
            ? vapourKilopascals
            : throw Guard.Refused(
                parameter,
                vapourKilopascals,
                "kPa of vapour",
                $"above 0 kPa, up to {Guard.Number(Math.Min(given.SaturationKilopascals, airKilopascals))} kPa, saturated at {Guard.Number(celsius)} °C");
        Temperature = given.Temperature;
        AirPressure = given.AirPressure;
        VapourPressure = Pressure.FromKilopascals(vapourKilopascals);
    }

    /// <summary>The temperature.</summary>
    public Temperature Temperature { get; }

    /// <summary>The pressure of the vapour in it.</summary>
    public Pressure VapourPressure { get; }

    /// <summary>The pressure that a barometer shows there.</summary>
    public Pressure AirPressure { get; }

    /// <summary>The formula of saturation.</summary>
    public SaturationVapourPressure Saturation { get; }

    /// <summary>The mass of water for a mass of dry air: 0.0075 is 7.5 g/kg.</summary>
    [JsonIgnore]
    public Ratio MixingRatio => Ratio.FromDecimalFractions(MoistAirKernels.MixingRatio(vapourKilopascals, airKilopascals));

    /// <summary>The mass of water in a mass of moist air.</summary>
    [JsonIgnore]
    public MassFraction SpecificHumidity
    {
        get
        {
            double mixingRatio = MoistAirKernels.MixingRatio(vapourKilopascals, airKilopascals);
            return MassFraction.FromDecimalFractions(mixingRatio / (1 + mixingRatio));
        }
    }

    /// <summary>The mass of water in a volume of air. One g/m³ is one mg/L.</summary>
    [JsonIgnore]
    public MassConcentration AbsoluteHumidity =>
        MassConcentration.FromGramsPerCubicMeter(MoistAirKernels.GramsPerCubicMetre(vapourKilopascals, celsius));

    /// <summary>The share of saturation over water, as weather services report it at all temperatures.</summary>
    /// <returns>Above 0, up to 100 %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The formula over water was not published for the temperature.</exception>
    public AirHumidity RelativeHumidity() => AirHumidity.FromPercent(Percent(Saturation.Water));

    /// <summary>The share of saturation over ice, as engineers reckon it below freezing.</summary>
    /// <returns>Above 0; above 100 % where hoar frost grows.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is above 0 °C, or the formula over ice was not published for it.</exception>
    /// <exception cref="NotSupportedException">The source has no formula over ice.</exception>
    public AirHumidity RelativeHumidityOverIce() => AirHumidity.FromPercent(Percent(Saturation.RequireIce()));

    /// <summary>The temperature down to which the air cools before dew forms.</summary>
    /// <returns>At most the temperature of the air. Over water, supercooled below 0 °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The formula over water was not published for the dew point; the message says from where to where.</exception>
    public Temperature DewPoint() => Saturation.DewPoint(VapourPressure);

    /// <summary>The temperature down to which the air cools before hoar frost forms.</summary>
    /// <returns>
    /// The temperature at which it is saturated over ice, at most 0 °C; <see langword="null"/> where dew forms above freezing instead.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">The formula over ice was not published for the frost point.</exception>
    /// <exception cref="NotSupportedException">The source has no formula over ice.</exception>
    public Temperature? FrostPoint()
    {
        SaturationCurve ice = Saturation.RequireIce();
        return vapourKilopascals > ice.Kilopascals(ice.HighestCelsius) * (1 + Hair) ? null : Saturation.FrostPoint(VapourPressure);
    }

    /// <summary>The temperature that a wet thermometer comes to, by the psychrometric equation.</summary>
    /// <param name="psychrometer">
    /// How the thermometer is aired; <see cref="Psychrometer.Ventilated"/> where it is <see langword="null"/>.
    /// </param>
    /// <returns>From the dew point to the temperature of the air. Water on the bulb, supercooled below 0 °C; see <see cref="IceBulb"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The formula over water was not published for the temperature or the wet bulb.</exception>
    public Temperature WetBulb(Psychrometer? psychrometer = null)
    {
        SaturationCurve water = Saturation.Water;
        double high = water.Require(celsius, "temperature");
        double low = Math.Min(high, Math.Max(water.LowestCelsius, water.Celsius(vapourKilopascals)));
        Psychrometer aired = psychrometer ?? Psychrometer.Ventilated;
        double wet = Wet(water, aired, overIce: false, low, high);
        if (wet <= water.LowestCelsius && aired.Kilopascals(water.Kilopascals(wet), celsius, wet, airKilopascals) > vapourKilopascals * (1 + Hair))
        {
            throw Guard.Refused(
                "wetBulb",
                water.LowestCelsius,
                "°C or less",
                $"from {Guard.Number(water.LowestCelsius)} °C, from where on '{water.Evidence.Name}' was published");
        }

        return Temperature.FromDegreesCelsius(wet);
    }

    /// <summary>The temperature that a thermometer under a film of ice comes to, by the psychrometric equation.</summary>
    /// <param name="psychrometer">
    /// How the thermometer is aired; <see cref="Psychrometer.Ventilated"/> where it is <see langword="null"/>.
    /// </param>
    /// <returns>
    /// From the frost point to the temperature of the air, at most 0 °C; <see langword="null"/> where the ice would melt, or would grow because
    /// the air is beyond saturation over ice.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">The formula over ice was not published for the ice bulb.</exception>
    /// <exception cref="NotSupportedException">The source of the psychrometer or of the saturation has no formula for ice.</exception>
    public Temperature? IceBulb(Psychrometer? psychrometer = null)
    {
        SaturationCurve ice = Saturation.RequireIce();
        Psychrometer aired = psychrometer ?? Psychrometer.Ventilated;
        aired.RequireIce();
        double high = Math.Min(celsius, ice.HighestCelsius);
        double atHigh = aired.KilopascalsOverIce(ice.Kilopascals(high), celsius, high, airKilopascals);
        if (atHigh < vapourKilopascals * (1 - Hair))
            return null;
        double low = Math.Min(high, ice.RequireCelsius(vapourKilopascals, "vapourPressure"));
        return Temperature.FromDegreesCelsius(Wet(ice, aired, overIce: true, low, high));
    }

    /// <summary>How much vapour the air lacks to saturation over water.</summary>
    /// <returns>0 in saturated air, else above.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The formula over water was not published for the temperature.</exception>
    public Pressure VapourPressureDeficit() =>
        Pressure.FromKilopascals(Math.Max(0, Saturation.Water.Kilopascals(Saturation.Water.Require(celsius, "temperature")) - vapourKilopascals));

    /// <summary>How much vapour the air lacks to saturation at the temperature of a leaf, which is what the leaf loses water by.</summary>
    /// <param name="leafTemperature">The temperature of the leaf.</param>
    /// <returns>Below 0 where the leaf is below the dew point, so that dew forms on it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The formula over water was not published for the leaf's temperature.</exception>
    public Pressure VapourPressureDeficitOfLeaf(Temperature leafTemperature)
    {
        double leafCelsius = Saturation.Water.Require(Boundary.Celsius(leafTemperature), nameof(leafTemperature));
        return Pressure.FromKilopascals(Saturation.Water.Kilopascals(leafCelsius) - vapourKilopascals);
    }

    /// <summary>The air in metric units and invariant culture.</summary>
    /// <returns>One line: temperature, humidity, air pressure, formula.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The air as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: temperature, humidity, air pressure, formula.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"air at {QuantityText.Of(Temperature, style)}, {HumidityText(style)}")
    {
        Rows =
        [
            new DisplayRow("vapour pressure", QuantityText.Of(VapourPressure, style)),
            .. Saturation.Water.Holds(celsius)
                ? (DisplayRow[])[new DisplayRow("vapour pressure deficit", QuantityText.Of(VapourPressureDeficit(), style))]
                : [],
            .. Saturation.Water.Holds(Saturation.Water.Celsius(vapourKilopascals))
                ? (DisplayRow[])[new DisplayRow("dew point", QuantityText.Of(DewPoint(), style))]
                : [],
            new DisplayRow("water", $"{QuantityText.Number(MixingRatio.PartsPerThousand, style)} g/kg of dry air"),
            new DisplayRow("air pressure", BarometerText(style)),
            new DisplayRow("saturation", Saturation.Evidence.Name),
            new DisplayRow("source", Saturation.Evidence.Source.ToString()),
        ],
    };

    private string ToString(TextStyle style) =>
        $"{QuantityText.Of(Temperature, style)}, {HumidityText(style)}, air pressure {BarometerText(style)}; {Saturation.Evidence}";

    private string HumidityText(TextStyle style) => Saturation.Water.Holds(celsius)
        ? $"relative humidity {QuantityText.Of(RelativeHumidity(), style)}"
        : $"relative humidity over ice {QuantityText.Of(RelativeHumidityOverIce(), style)}";

    /// <summary>US barometers show inches of mercury.</summary>
    private string BarometerText(TextStyle style) => style.Units == MeasurementSystem.UsCustomary
        ? $"{QuantityText.Number(airKilopascals / Boundary.KilopascalsPerInchOfMercury, style)} inHg"
        : QuantityText.Of(AirPressure, style);

    private double Percent(SaturationCurve curve) => 100 * vapourKilopascals / curve.Kilopascals(curve.Require(celsius, "temperature"));

    private double Wet(SaturationCurve curve, Psychrometer psychrometer, bool overIce, double low, double high) =>
        MoistAirKernels.WetCelsius(curve, psychrometer, overIce, celsius, vapourKilopascals, airKilopascals, low, high);
}
