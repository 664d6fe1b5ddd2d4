using UnitsNet;

namespace HortiCalc.Units;

/// <summary>The foot-candle of light meters and old bulletins, as a static factory and a read-out of <see cref="Illuminance"/>.</summary>
/// <remarks>
/// A lumen on a square foot, so exactly 1/0.09290304 lux (NIST Special Publication 811, 2008,
/// https://www.nist.gov/pml/special-publication-811).
/// </remarks>
/// <example><code>
/// Illuminance seedlings = Illuminance.FromFootcandles(750);   // 8073 lx
/// </code></example>
public static class IlluminanceTradeUnits
{
    /// <summary>Factory and read-out.</summary>
    /// <param name="light">The light that is read.</param>
    extension(Illuminance light)
    {
        /// <summary>Makes an illuminance from foot-candles.</summary>
        /// <param name="value">A finite number.</param>
        /// <returns>The illuminance; 1 foot-candle is about 10.76 lx.</returns>
        /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
        public static Illuminance FromFootcandles(double value) =>
            Illuminance.FromLux(Guard.Finite(value, "fc") / Boundary.SquareMetresPerSquareFoot);

        /// <summary>The illuminance in foot-candles.</summary>
        public double Footcandles => Boundary.Lux(light) * Boundary.SquareMetresPerSquareFoot;
    }
}
