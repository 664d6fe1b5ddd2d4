using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>How a wet thermometer is aired, which decides how far it cools below the air: e = e(wet) − A·P·(dry − wet).</summary>
/// <remarks>
/// The same reading means drier air under a psychrometer that is aired less: at sea level, 25.6 °C dry and 19.5 °C wet are 57 % ventilated and 46 %
/// indoors without a draught. Use the one that matches the instrument.
/// </remarks>
public sealed record Psychrometer
{
    private readonly double perCelsius;
    private readonly double risePerCelsius;
    private readonly double icePerCelsius;

    private Psychrometer(Method evidence, double perCelsius, double risePerCelsius = 0, Method? iceEvidence = null, double icePerCelsius = 0)
    {
        Evidence = evidence;
        IceEvidence = iceEvidence;
        this.perCelsius = perCelsius;
        this.risePerCelsius = risePerCelsius;
        this.icePerCelsius = icePerCelsius;
    }

    /// <summary>
    /// Ventilated (Assmann, sling or fan), air at 2 to 10 m/s: A = 0.000662 per °C, 0.000594 with ice on the bulb. The default of
    /// <see cref="MoistAir"/>, because it is what thermometers read that are aired as instructed, and what wet surfaces in wind come to.
    /// </summary>
    public static Psychrometer Ventilated { get; } = new(
        new Method("psychrometer.ventilated", "ventilated psychrometer", HumiditySources.Fao56, new Domain("air moved past the bulbs at about 5 m/s")),
        0.000662,
        iceEvidence: new Method(
            "psychrometer.ventilated.ice",
            "ventilated psychrometer with ice on the bulb",
            HumiditySources.Asce2005,
            new Domain("air moved past the bulbs at 2 to 10 m/s, wet bulb below freezing")),
        icePerCelsius: 0.000594);

    /// <summary>In a louvred screen outdoors, air at about 1 m/s: A = 0.000800 per °C.</summary>
    public static Psychrometer NaturallyVentilated { get; } = new(
        new Method(
            "psychrometer.natural", "naturally ventilated psychrometer", HumiditySources.Fao56, new Domain("air moves past the bulbs at about 1 m/s")),
        0.000800);

    /// <summary>Indoors without a draught: A = 0.001200 per °C.</summary>
    public static Psychrometer Unventilated { get; } = new(
        new Method("psychrometer.unventilated", "unventilated psychrometer indoors", HumiditySources.Fao56, new Domain("indoors, air at rest")),
        0.001200);

    /// <summary>
    /// The formula of the older tables of the U.S. weather service: A = 0.00066 (1 + 0.00115 wet) per °C. Its tables use it over ice too.
    /// </summary>
    public static Psychrometer WeatherBureau { get; } = new(
        new Method("psychrometer.weather-bureau", "psychrometer by the weather service's formula", HumiditySources.AmsGlossary, new Domain("sling or fan psychrometer")),
        0.00066,
        0.00115,
        new Method(
            "psychrometer.weather-bureau.ice",
            "psychrometer by the weather service's tables, ice on the bulb",
            HumiditySources.WeatherBureau1071,
            new Domain("sling or fan psychrometer, wet bulb below freezing; the table prints no formula, this one meets it within 1.3 %")),
        0.00066);

    /// <summary>The psychrometric constant of crop water rules, at a latent heat of 2.45 MJ/kg: A = 0.000665 per °C.</summary>
    public static Psychrometer ConstantLatentHeat { get; } = new(
        new Method(
            "psychrometer.constant-latent-heat",
            "psychrometric constant of FAO-56",
            HumiditySources.Fao56,
            new Domain("saturation at constant energy, latent heat as at 20 °C")),
        0.000665);

    /// <summary>
    /// The thermodynamic wet bulb of the ASHRAE handbook, equations 33 and 35: air that is saturated by water, or by ice, at the temperature
    /// it ends at. No instrument, but what charts of moist air show.
    /// </summary>
    public static Psychrometer AdiabaticSaturation { get; } = new(
        new Method("psychrometer.adiabatic", "thermodynamic wet bulb", HumiditySources.Ashrae2017, new Domain("adiabatic saturation by water")),
        double.NaN,
        iceEvidence: new Method(
            "psychrometer.adiabatic.ice", "thermodynamic ice bulb", HumiditySources.Ashrae2017, new Domain("adiabatic saturation by ice")),
        icePerCelsius: double.NaN);

    /// <summary>Every psychrometer there is.</summary>
    public static IReadOnlyList<Psychrometer> All { get; } = ValueList<Psychrometer>.Of(
        [Ventilated, NaturallyVentilated, Unventilated, WeatherBureau, ConstantLatentHeat, AdiabaticSaturation]);

    /// <summary>The formula with water on the bulb: its key, name, source and conditions.</summary>
    public Method Evidence { get; }

    /// <summary>The formula with ice on the bulb; <see langword="null"/> where the source has none.</summary>
    public Method? IceEvidence { get; }

    /// <summary>Finds a psychrometer by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>, for instance <c>psychrometer.ventilated</c>.</param>
    /// <returns>The psychrometer.</returns>
    /// <exception cref="ArgumentException">There is no such psychrometer, or the key is empty.</exception>
    public static Psychrometer FromKey(string key) => Keyed.Find(All, psychrometer => psychrometer.Evidence.Key, key);

    /// <summary>The psychrometer's name.</summary>
    /// <returns>For instance <c>ventilated psychrometer</c>.</returns>
    public override string ToString() => Evidence.Name;

    /// <summary>The vapour pressure of the air from that of saturation at the wet bulb. Rises with the wet bulb.</summary>
    internal double Kilopascals(double saturationKilopascals, double dryCelsius, double wetCelsius, double airKilopascals)
    {
        if (double.IsNaN(perCelsius))
            return Adiabatic(saturationKilopascals, dryCelsius, airKilopascals, 2501 - 2.326 * wetCelsius, 2501 + 1.86 * dryCelsius - 4.186 * wetCelsius, wetCelsius);
        return saturationKilopascals - perCelsius * (1 + risePerCelsius * wetCelsius) * airKilopascals * (dryCelsius - wetCelsius);
    }

    /// <summary>As <see cref="Kilopascals"/>, with ice on the bulb.</summary>
    internal double KilopascalsOverIce(double saturationKilopascals, double dryCelsius, double wetCelsius, double airKilopascals)
    {
        // The heat of sublimation is from memory; the reference grid over ice confirms it.
        if (double.IsNaN(icePerCelsius))
            return Adiabatic(saturationKilopascals, dryCelsius, airKilopascals, 2830 - 0.24 * wetCelsius, 2830 + 1.86 * dryCelsius - 2.1 * wetCelsius, wetCelsius);
        return saturationKilopascals - icePerCelsius * (1 + risePerCelsius * wetCelsius) * airKilopascals * (dryCelsius - wetCelsius);
    }

    internal void RequireIce()
    {
        if (IceEvidence is null)
        {
            throw new NotSupportedException(
                $"'{Evidence.Name}' has no formula with ice on the bulb; these have: "
                + $"{string.Join(", ", All.Where(one => one.IceEvidence is not null).Select(one => one.Evidence.Key))}.");
        }
    }

    private static double Adiabatic(
        double saturationKilopascals, double dryCelsius, double airKilopascals, double taken, double given, double wetCelsius)
    {
        // Water that hot would boil: nothing but vapour is left of the air.
        if (saturationKilopascals >= airKilopascals)
            return airKilopascals;
        double saturated = MoistAirKernels.MixingRatio(saturationKilopascals, airKilopascals);
        double mixingRatio = (taken * saturated - 1.006 * (dryCelsius - wetCelsius)) / given;
        return MoistAirKernels.VapourKilopascals(mixingRatio, airKilopascals);
    }
}
