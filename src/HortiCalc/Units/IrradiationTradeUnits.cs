using UnitsNet;

namespace HortiCalc.Units;

/// <summary>The megajoule a square metre of weather stations and bulletins, as a static factory and a read-out of <see cref="Irradiation"/>.</summary>
/// <remarks>Plain powers of ten.</remarks>
/// <example><code>
/// Irradiation day = Irradiation.FromMegajoulesPerSquareMeter(18.5);   // 1850 J/cm²
/// </code></example>
public static class IrradiationTradeUnits
{
    /// <summary>Factory and read-out.</summary>
    /// <param name="radiation">The radiation that is read.</param>
    extension(Irradiation radiation)
    {
        /// <summary>Makes a radiation from megajoules a square metre.</summary>
        /// <param name="value">A finite number.</param>
        /// <returns>The radiation.</returns>
        /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
        public static Irradiation FromMegajoulesPerSquareMeter(double value) =>
            Irradiation.FromKilojoulesPerSquareMeter(Guard.Finite(value, "MJ/m²") * 1000);

        /// <summary>The radiation in megajoules a square metre.</summary>
        public double MegajoulesPerSquareMeter => Boundary.MegajoulesPerSquareMetre(radiation);
    }
}
