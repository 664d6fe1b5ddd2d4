using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>A published formula for the mean pressure of the air by altitude.</summary>
/// <remarks>They differ by 0.03 kPa at sea level and by 0.5 kPa at 4000 m. The weather moves the barometer by some kPa either way.</remarks>
public sealed record AirPressureMethod
{
    private readonly Func<double, double> kilopascals;

    private AirPressureMethod(string key, string name, Source source, Domain domain, Func<double, double> kilopascals)
    {
        Evidence = new Method(key, name, source, domain);
        this.kilopascals = kilopascals;
    }

    /// <summary>
    /// The standard atmosphere by the ASHRAE handbook, equation 3: 101.325 (1 − 2.25577·10⁻⁵ z)^5.2559 kPa from −5000 to 11 000 m. The default,
    /// because it is printed for every height that anything grows at.
    /// </summary>
    public static AirPressureMethod StandardAtmosphere { get; } = new(
        "air-pressure.standard-atmosphere",
        "standard atmosphere",
        HumiditySources.Ashrae2017,
        new Domain("mean of the year, 15 °C at sea level", new DomainLimit("altitude", -5000, 11_000, "m")),
        metres => 101.325 * Math.Pow(1 - 2.25577e-5 * metres, 5.2559));

    /// <summary>
    /// FAO Irrigation and Drainage Paper 56, equation 7: 101.3 ((293 − 0.0065 z)/293)^5.26 kPa, air of 20 °C at sea level. For agreement with crop
    /// water rules. The source prints no limits; its table runs from 0 to 4000 m.
    /// </summary>
    public static AirPressureMethod Fao { get; } = new(
        "air-pressure.fao",
        "air pressure by FAO-56",
        HumiditySources.Fao56,
        new Domain("20 °C at sea level; no limits printed, table from 0 to 4000 m"),
        metres => 101.3 * Math.Pow((293 - 0.0065 * metres) / 293, 5.26));

    /// <summary>Every method there is.</summary>
    public static IReadOnlyList<AirPressureMethod> All { get; } = ValueList<AirPressureMethod>.Of([StandardAtmosphere, Fao]);

    /// <summary>The method's key, name and source.</summary>
    public Method Evidence { get; }

    /// <summary>Finds a method by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>, for instance <c>air-pressure.fao</c>.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentException">There is no such method, or the key is empty.</exception>
    public static AirPressureMethod FromKey(string key) => Keyed.Find(All, method => method.Evidence.Key, key);

    /// <summary>The method's name.</summary>
    /// <returns>For instance <c>standard atmosphere</c>.</returns>
    public override string ToString() => Evidence.Name;

    internal double Kilopascals(double altitudeMetres) => kilopascals(altitudeMetres);
}
