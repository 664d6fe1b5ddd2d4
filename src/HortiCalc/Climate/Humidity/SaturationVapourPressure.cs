using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>A published formula for the pressure of water vapour in saturated air, over water and over ice.</summary>
/// <remarks>
/// Below 0 °C air can be saturated over supercooled water or over ice, and holds a tenth less over ice at −10 °C: every function says
/// which it means. Weather services report relative humidity over water at all temperatures. The formulas differ by 0.3 % at most from
/// 0 to 50 °C, which is less than hygrometers do.
/// </remarks>
public sealed record SaturationVapourPressure
{
    private SaturationVapourPressure(SaturationCurve water, SaturationCurve? ice)
    {
        Water = water;
        Ice = ice;
    }

    /// <summary>
    /// WMO-No. 8: e = 6.112 exp(17.62 t/(243.12 + t)) hPa over water from −45 to 60 °C, 6.112 exp(22.46 t/(272.62 + t)) over ice from −65 to
    /// 0 °C. The default of <see cref="MoistAir"/>, because it is what weather services use, and it alone covers water and ice from a hard
    /// frost to the hottest glasshouse. The limits of temperature are from memory.
    /// </summary>
    public static SaturationVapourPressure Wmo { get; } = new(
        Curve("saturation.wmo", "saturation over water by WMO", HumiditySources.Wmo8, "over water, also below freezing", -45, 60, new MagnusFormula(0.6112, 17.62, 243.12, 0)),
        Curve("saturation.wmo.ice", "saturation over ice by WMO", HumiditySources.Wmo8, "over ice", -65, 0, WmoIce));

    /// <summary>
    /// FAO Irrigation and Drainage Paper 56, equation 11, after Tetens: e = 0.6108 exp(17.27 t/(t + 237.3)) kPa over water, also below
    /// freezing. For agreement with crop water rules. It has no twin over ice. The source prints no limits; its table runs from 1 to 48.5 °C.
    /// </summary>
    public static SaturationVapourPressure Fao { get; } = new(
        new SaturationCurve<MagnusFormula>(
            new Method(
                "saturation.fao",
                "saturation over water by FAO-56",
                HumiditySources.Fao56,
                new Domain("over water, also below freezing; no limits printed, table from 1 to 48.5 °C")),
            new MagnusFormula(0.6108, 17.27, 237.3, 0)),
        ice: null);

    /// <summary>
    /// Buck 1996: e = 6.1121 exp((18.678 − t/234.5) t/(257.14 + t)) hPa over water above freezing,
    /// 6.1115 exp((23.036 − t/333.7) t/(279.82 + t)) hPa over ice below; fitted from −80 to 50 °C.
    /// </summary>
    public static SaturationVapourPressure Buck { get; } = new(
        Curve("saturation.buck", "saturation over water by Buck", HumiditySources.Buck1996, "over water", 0, 50, new MagnusFormula(0.61121, 18.678, 257.14, 1 / 234.5)),
        Curve("saturation.buck.ice", "saturation over ice by Buck", HumiditySources.Buck1996, "over ice", -80, 0, new MagnusFormula(0.61115, 23.036, 279.82, 1 / 333.7)));

    /// <summary>
    /// Hyland and Wexler 1983, the equations of the ASHRAE handbook: over water from 0 to 200 °C, over ice from −100 to 0 °C. The most exact
    /// of these, within 0.03 % of the handbook's table.
    /// </summary>
    public static SaturationVapourPressure HylandWexler { get; } = new(
        Curve(
            "saturation.hyland-wexler",
            "saturation over water by Hyland and Wexler",
            HumiditySources.HylandWexler1983,
            "over water",
            0,
            200,
            new HylandWexlerFormula(
                -5.8002206e3, 1.3914993, -4.8640239e-2, 4.1764768e-5, -1.4452093e-8, 0, 6.5459673, new MagnusFormula(0.6112, 17.62, 243.12, 0))),
        Curve(
            "saturation.hyland-wexler.ice",
            "saturation over ice by Hyland and Wexler",
            HumiditySources.HylandWexler1983,
            "over ice",
            -100,
            0,
            new HylandWexlerFormula(-5.6745359e3, 6.3925247, -9.677843e-3, 6.2215701e-7, 2.0747825e-9, -9.484024e-13, 4.1635019, WmoIce)));

    /// <summary>Every formula there is.</summary>
    public static IReadOnlyList<SaturationVapourPressure> All { get; } =
        ValueList<SaturationVapourPressure>.Of([Wmo, Fao, Buck, HylandWexler]);

    /// <summary>The formula over water: its key, name, source and the temperatures it was published for.</summary>
    public Method Evidence => Water.Evidence;

    /// <summary>The formula over ice; <see langword="null"/> where the source has none.</summary>
    public Method? IceEvidence => Ice?.Evidence;

    internal SaturationCurve Water { get; }

    internal SaturationCurve? Ice { get; }

    private static MagnusFormula WmoIce => new(0.6112, 22.46, 272.62, 0);

    /// <summary>Finds a formula by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>, for instance <c>saturation.wmo</c>.</param>
    /// <returns>The formula.</returns>
    /// <exception cref="ArgumentException">There is no such formula, or the key is empty.</exception>
    public static SaturationVapourPressure FromKey(string key) => Keyed.Find(All, formula => formula.Evidence.Key, key);

    /// <summary>The vapour pressure of air saturated over water, supercooled below 0 °C.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <returns>The pressure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The formula was not published for the temperature.</exception>
    /// <example><code>
    /// Pressure saturated = SaturationVapourPressure.Fao.OverWater(Temperature.FromDegreesCelsius(24.5));
    /// Console.WriteLine($"{saturated.Kilopascals:F3} kPa"); // 3.075 kPa
    /// </code></example>
    public Pressure OverWater(Temperature temperature) =>
        Pressure.FromKilopascals(Water.Kilopascals(Water.Require(Boundary.Celsius(temperature), nameof(temperature))));

    /// <summary>The vapour pressure of air saturated over ice.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <returns>The pressure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The formula was not published for the temperature.</exception>
    /// <exception cref="NotSupportedException">The source has no formula over ice.</exception>
    public Pressure OverIce(Temperature temperature)
    {
        SaturationCurve ice = RequireIce();
        return Pressure.FromKilopascals(ice.Kilopascals(ice.Require(Boundary.Celsius(temperature), nameof(temperature))));
    }

    /// <summary>By how much the saturation vapour pressure over water rises with one °C: the slope of the curve.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <returns>The pressure for one °C, as crop water rules use it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The formula was not published for the temperature.</exception>
    public Pressure OverWaterPerCelsius(Temperature temperature) =>
        Pressure.FromKilopascals(Water.SlopeKilopascalsPerCelsius(Water.Require(Boundary.Celsius(temperature), nameof(temperature))));

    /// <summary>The temperature down to which air of a vapour pressure cools before dew forms.</summary>
    /// <param name="vapourPressure">The vapour pressure.</param>
    /// <returns>The temperature at which it is saturated over water; below 0 °C the water is supercooled.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The vapour pressure is not above 0, or the formula was not published for the dew point.</exception>
    public Temperature DewPoint(Pressure vapourPressure) => Temperature.FromDegreesCelsius(
        Water.RequireCelsius(Guard.Positive(Boundary.Kilopascals(vapourPressure), "kPa", nameof(vapourPressure)), nameof(vapourPressure)));

    /// <summary>The temperature down to which air of a vapour pressure cools before hoar frost forms.</summary>
    /// <param name="vapourPressure">The vapour pressure.</param>
    /// <returns>The temperature at which it is saturated over ice, at most 0 °C: higher than the dew point below 0 °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The vapour pressure is not above 0, is above that of ice at 0 °C, or the formula was not published for the frost point.
    /// </exception>
    /// <exception cref="NotSupportedException">The source has no formula over ice.</exception>
    public Temperature FrostPoint(Pressure vapourPressure)
    {
        SaturationCurve ice = RequireIce();
        return Temperature.FromDegreesCelsius(
            ice.RequireCelsius(Guard.Positive(Boundary.Kilopascals(vapourPressure), "kPa", nameof(vapourPressure)), nameof(vapourPressure)));
    }

    /// <summary>The formula's name.</summary>
    /// <returns>For instance <c>saturation over water by WMO</c>.</returns>
    public override string ToString() => Evidence.Name;

    internal SaturationCurve RequireIce() => Ice
        ?? throw new NotSupportedException(
            $"'{Evidence.Name}' has no formula over ice; these have: {string.Join(", ", All.Where(one => one.Ice is not null).Select(one => one.Evidence.Key))}.");

    private static SaturationCurve<TFormula> Curve<TFormula>(
        string key, string name, Source source, string conditions, double lowest, double highest, TFormula formula)
        where TFormula : struct, ISaturationFormula =>
        new(new Method(key, name, source, new Domain(conditions, new DomainLimit("temperature", lowest, highest, "°C"))), formula);
}
