using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The pressure of the air where nobody reads a barometer.</summary>
public static class AirPressure
{
    // The troposphere, to which both formulas belong.
    private const double LowestMetres = -5000;
    private const double HighestMetres = 11_000;

    /// <summary>The mean pressure of the air at an altitude.</summary>
    /// <param name="altitude">The height above the sea, from −5000 to 11 000 m; negative below it.</param>
    /// <param name="method">The formula; <see cref="AirPressureMethod.StandardAtmosphere"/> where it is <see langword="null"/>.</param>
    /// <returns>The pressure that a barometer there shows on average; not reduced to sea level.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The altitude is outside the range.</exception>
    /// <example><code>
    /// Estimate&lt;Pressure&gt; denver = AirPressure.AtAltitude(Length.FromFeet(5280));
    /// Console.WriteLine($"{denver.Value.Kilopascals:F1} kPa"); // 83.4 kPa
    /// </code></example>
    public static Estimate<Pressure> AtAltitude(Length altitude, AirPressureMethod? method = null)
    {
        AirPressureMethod chosen = method ?? AirPressureMethod.StandardAtmosphere;
        double metres = Guard.Within(Boundary.Metres(altitude), LowestMetres, HighestMetres, "m", nameof(altitude));
        return new Estimate<Pressure>(Pressure.FromKilopascals(chosen.Kilopascals(metres)), chosen.Evidence);
    }
}
