using UnitsNet;

namespace HortiCalc.Units;

/// <summary>
/// Volume per area as a depth, of water or of material, as static factories and read-outs of <see cref="Length"/>: a litre on a
/// square metre stands one millimetre deep.
/// </summary>
/// <remarks>
/// Plain ratios of exact units (NIST Special Publication 811, 2008, https://www.nist.gov/pml/special-publication-811). An acre-inch
/// per acre is an inch, which <see cref="Length.FromInches"/> makes.
/// </remarks>
/// <example><code>
/// Length watering = Length.FromUsGallonsPerSquareFoot(0.5);   // 20.4 mm
/// double mulch = Length.FromInches(2).CubicYardsPerThousandSquareFeet;   // 6.17
/// </code></example>
public static class LengthTradeUnits
{
    private const double MillimetresPerMetre = 1000;
    private const double PerUsGallonPerSquareFoot = Boundary.LitresPerUsGallon / Boundary.SquareMetresPerSquareFoot;
    private const double PerCubicYardPerThousandSquareFeet = 27 * Boundary.MetresPerFoot;

    /// <summary>Factories and read-outs.</summary>
    /// <param name="depth">The depth that is read.</param>
    extension(Length depth)
    {
        /// <summary>Makes a depth from litres per square metre.</summary>
        /// <param name="value">A finite number.</param>
        /// <returns>The depth; 1 L/m² is 1 mm.</returns>
        /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
        public static Length FromLitersPerSquareMeter(double value) => FromMillimetres(Guard.Finite(value, "L/m²"));

        /// <summary>Makes a depth from US gallons per square foot.</summary>
        /// <param name="value">A finite number.</param>
        /// <returns>The depth; 1 gal/sq ft is about 40.7 mm.</returns>
        /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
        public static Length FromUsGallonsPerSquareFoot(double value) =>
            FromMillimetres(Guard.Finite(value, "gal/sq ft") * PerUsGallonPerSquareFoot);

        /// <summary>Makes a depth from cubic yards per 1000 square feet.</summary>
        /// <param name="value">A finite number.</param>
        /// <returns>The depth; 1 cu yd/1000 sq ft is about 8.2 mm, a third of an inch.</returns>
        /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
        public static Length FromCubicYardsPerThousandSquareFeet(double value) =>
            FromMillimetres(Guard.Finite(value, "cu yd/1000 sq ft") * PerCubicYardPerThousandSquareFeet);

        /// <summary>Makes a depth from cubic metres per hectare.</summary>
        /// <param name="value">A finite number.</param>
        /// <returns>The depth; 10 m³/ha is 1 mm.</returns>
        /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
        public static Length FromCubicMetersPerHectare(double value) => FromMillimetres(Guard.Finite(value, "m³/ha") / 10);

        /// <summary>The depth in litres per square metre.</summary>
        public double LitersPerSquareMeter => Millimetres(depth);

        /// <summary>The depth in US gallons per square foot.</summary>
        public double UsGallonsPerSquareFoot => Millimetres(depth) / PerUsGallonPerSquareFoot;

        /// <summary>The depth in cubic yards per 1000 square feet.</summary>
        public double CubicYardsPerThousandSquareFeet => Millimetres(depth) / PerCubicYardPerThousandSquareFeet;

        /// <summary>The depth in cubic metres per hectare.</summary>
        public double CubicMetersPerHectare => Millimetres(depth) * 10;
    }

    private static Length FromMillimetres(double millimetres) => Length.FromMillimeters(millimetres);

    private static double Millimetres(Length depth) => Boundary.Metres(depth) * MillimetresPerMetre;
}
