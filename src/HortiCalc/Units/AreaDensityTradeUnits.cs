using UnitsNet;

namespace HortiCalc.Units;

/// <summary>The trade's units of mass per area, as static factories and read-outs of <see cref="AreaDensity"/>.</summary>
/// <remarks>
/// Plain ratios of exact units (NIST Special Publication 811, 2008, https://www.nist.gov/pml/special-publication-811). A ton per acre
/// in print from the United States is the short ton of 2000 lb; the tonne is 1000 kg.
/// </remarks>
/// <example><code>
/// AreaDensity rate = AreaDensity.FromPoundsPerHundredSquareFeet(5);
/// double metric = rate.KilogramsPerHectare;   // 2441
/// </code></example>
public static class AreaDensityTradeUnits
{
    private const double GramsPerPound = 1000 * Boundary.KilogramsPerPound;
    private const double GramsPerKilogram = 1000;
    private const double GramsPerTonne = 1_000_000;
    private const double SquareMetresPerHectare = 10_000;

    private const double PerKilogramPerHectare = GramsPerKilogram / SquareMetresPerHectare;
    private const double PerTonnePerHectare = GramsPerTonne / SquareMetresPerHectare;
    private const double PerPoundPerHundredSquareFeet = GramsPerPound / (100 * Boundary.SquareMetresPerSquareFoot);
    private const double PerPoundPerThousandSquareFeet = GramsPerPound / (1000 * Boundary.SquareMetresPerSquareFoot);
    private const double PerPoundPerAcre = GramsPerPound / Boundary.SquareMetresPerAcre;
    private const double PerShortTonPerAcre = 2000 * PerPoundPerAcre;
    private const double PerOuncePerSquareYard = GramsPerPound / 16 / Boundary.SquareMetresPerSquareYard;

    /// <summary>Factories and read-outs.</summary>
    /// <param name="rate">The rate that is read.</param>
    extension(AreaDensity rate)
    {
        /// <summary>Makes a rate from kilograms per hectare.</summary>
        /// <param name="value">A finite number.</param>
        /// <returns>The rate; 10 kg/ha is 1 g/m².</returns>
        /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
        public static AreaDensity FromKilogramsPerHectare(double value) => From(value, PerKilogramPerHectare, "kg/ha");

        /// <summary>Makes a rate from tonnes (1000 kg) per hectare.</summary>
        /// <param name="value">A finite number.</param>
        /// <returns>The rate; 1 t/ha is 100 g/m².</returns>
        /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
        public static AreaDensity FromTonnesPerHectare(double value) => From(value, PerTonnePerHectare, "t/ha");

        /// <summary>Makes a rate from pounds per 100 square feet.</summary>
        /// <param name="value">A finite number.</param>
        /// <returns>The rate; 1 lb/100 sq ft is about 48.8 g/m².</returns>
        /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
        public static AreaDensity FromPoundsPerHundredSquareFeet(double value) =>
            From(value, PerPoundPerHundredSquareFeet, "lb/100 sq ft");

        /// <summary>Makes a rate from pounds per 1000 square feet.</summary>
        /// <param name="value">A finite number.</param>
        /// <returns>The rate; 1 lb/1000 sq ft is about 4.88 g/m².</returns>
        /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
        public static AreaDensity FromPoundsPerThousandSquareFeet(double value) =>
            From(value, PerPoundPerThousandSquareFeet, "lb/1000 sq ft");

        /// <summary>Makes a rate from pounds per acre.</summary>
        /// <param name="value">A finite number.</param>
        /// <returns>The rate; 1 lb/acre is about 1.12 kg/ha.</returns>
        /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
        public static AreaDensity FromPoundsPerAcre(double value) => From(value, PerPoundPerAcre, "lb/acre");

        /// <summary>Makes a rate from short tons (2000 lb) per acre.</summary>
        /// <param name="value">A finite number.</param>
        /// <returns>The rate; 1 US ton/acre is about 2.24 t/ha.</returns>
        /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
        public static AreaDensity FromShortTonsPerAcre(double value) => From(value, PerShortTonPerAcre, "US tons/acre");

        /// <summary>Makes a rate from ounces (avoirdupois) per square yard.</summary>
        /// <param name="value">A finite number.</param>
        /// <returns>The rate; 1 oz/sq yd is about 33.9 g/m².</returns>
        /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
        public static AreaDensity FromOuncesPerSquareYard(double value) => From(value, PerOuncePerSquareYard, "oz/sq yd");

        /// <summary>The rate in kilograms per hectare.</summary>
        public double KilogramsPerHectare => Boundary.GramsPerSquareMetre(rate) / PerKilogramPerHectare;

        /// <summary>The rate in tonnes (1000 kg) per hectare.</summary>
        public double TonnesPerHectare => Boundary.GramsPerSquareMetre(rate) / PerTonnePerHectare;

        /// <summary>The rate in pounds per 100 square feet.</summary>
        public double PoundsPerHundredSquareFeet => Boundary.GramsPerSquareMetre(rate) / PerPoundPerHundredSquareFeet;

        /// <summary>The rate in pounds per 1000 square feet.</summary>
        public double PoundsPerThousandSquareFeet => Boundary.GramsPerSquareMetre(rate) / PerPoundPerThousandSquareFeet;

        /// <summary>The rate in pounds per acre.</summary>
        public double PoundsPerAcre => Boundary.GramsPerSquareMetre(rate) / PerPoundPerAcre;

        /// <summary>The rate in short tons (2000 lb) per acre.</summary>
        public double ShortTonsPerAcre => Boundary.GramsPerSquareMetre(rate) / PerShortTonPerAcre;

        /// <summary>The rate in ounces (avoirdupois) per square yard.</summary>
        public double OuncesPerSquareYard => Boundary.GramsPerSquareMetre(rate) / PerOuncePerSquareYard;
    }

    private static AreaDensity From(double value, double gramsPerSquareMetre, string unit) =>
        AreaDensity.FromGramsPerSquareMeter(Guard.Finite(value, unit) * gramsPerSquareMetre);
}
