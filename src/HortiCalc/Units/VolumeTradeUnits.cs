using UnitsNet;

namespace HortiCalc.Units;

/// <summary>The trade's units of volume that UnitsNet lacks, as static factories and read-outs of <see cref="Volume"/>.</summary>
/// <remarks>
/// <para>
/// US dry measure is not US liquid measure: a dry quart holds 16 % more than a liquid one. Potting mix is sold by the dry quart,
/// nursery pots are often named by the liquid one. An imperial bushel is 8 imperial gallons, 3 % more than a US one.
/// </para>
/// <para>
/// Exact by definition: the US bushel is 2150.42 cubic inches, and holds 4 pecks, 32 dry quarts or 64 dry pints; the imperial gallon is
/// 4.54609 L (NIST Handbook 44, Appendix C; NIST Special Publication 811, 2008, https://www.nist.gov/pml/special-publication-811).
/// </para>
/// <para>
/// UnitsNet has the rest from teaspoon to gallon: <see cref="Volume.FromUsTeaspoons"/> 4.93 mL, <see cref="Volume.FromUsTablespoons"/>
/// 14.8 mL, <see cref="Volume.FromUsCustomaryCups"/> 237 mL, <see cref="Volume.FromMetricTeaspoons"/> 5 mL,
/// <see cref="Volume.FromMetricCups"/> 250 mL, <see cref="Volume.FromUsOunces"/>, <see cref="Volume.FromImperialOunces"/> and on to the
/// pints, quarts and gallons. An imperial spoon is not among them: no standard settles its size, and British spoons are now metric.
/// </para>
/// </remarks>
/// <example><code>
/// Volume bag = Volume.FromUsDryQuarts(25);       // 27.5 L
/// double pots = bag / Volume.FromUsQuarts(1);    // 29.1 liquid quarts
/// </code></example>
public static class VolumeTradeUnits
{
    private const double PerUsPeck = Boundary.LitresPerUsBushel / 4;
    private const double PerUsDryQuart = Boundary.LitresPerUsBushel / 32;
    private const double PerUsDryPint = Boundary.LitresPerUsBushel / 64;
    private const double PerImperialBushel = 8 * Boundary.LitresPerImperialGallon;
    private const double PerMetricTablespoon = 0.015;

    /// <summary>Factories and read-outs.</summary>
    /// <param name="volume">The volume that is read.</param>
    extension(Volume volume)
    {
        /// <summary>Makes a volume from US bushels, struck measure.</summary>
        /// <param name="value">A finite number.</param>
        /// <returns>The volume; 1 US bushel is about 35.24 L.</returns>
        /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
        public static Volume FromUsBushels(double value) => From(value, Boundary.LitresPerUsBushel, "bu (US)");

        /// <summary>Makes a volume from US pecks, dry measure.</summary>
        /// <param name="value">A finite number.</param>
        /// <returns>The volume; 1 US peck is about 8.81 L.</returns>
        /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
        public static Volume FromUsPecks(double value) => From(value, PerUsPeck, "pk (US)");

        /// <summary>Makes a volume from US dry quarts.</summary>
        /// <param name="value">A finite number.</param>
        /// <returns>The volume; 1 US dry quart is about 1.101 L.</returns>
        /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
        public static Volume FromUsDryQuarts(double value) => From(value, PerUsDryQuart, "dry qt (US)");

        /// <summary>Makes a volume from US dry pints.</summary>
        /// <param name="value">A finite number.</param>
        /// <returns>The volume; 1 US dry pint is about 0.551 L.</returns>
        /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
        public static Volume FromUsDryPints(double value) => From(value, PerUsDryPint, "dry pt (US)");

        /// <summary>Makes a volume from imperial bushels of 8 imperial gallons.</summary>
        /// <param name="value">A finite number.</param>
        /// <returns>The volume; 1 imperial bushel is about 36.37 L.</returns>
        /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
        public static Volume FromImperialBushels(double value) => From(value, PerImperialBushel, "bu (imp.)");

        /// <summary>Makes a volume from metric tablespoons of 15 mL; the Australian tablespoon is 20 mL.</summary>
        /// <param name="value">A finite number.</param>
        /// <returns>The volume; 1 metric tablespoon is 15 mL.</returns>
        /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
        public static Volume FromMetricTablespoons(double value) => From(value, PerMetricTablespoon, "metric tbsp");

        /// <summary>Makes a volume from acre-inches: the water that stands an inch deep on an acre.</summary>
        /// <param name="value">A finite number.</param>
        /// <returns>The volume; 1 acre-inch is about 102.8 m³.</returns>
        /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
        public static Volume FromAcreInches(double value) => From(value, Boundary.LitresPerAcreInch, "acre-inches");

        /// <summary>The volume in US bushels, struck measure.</summary>
        public double UsBushels => Boundary.Litres(volume) / Boundary.LitresPerUsBushel;

        /// <summary>The volume in US pecks, dry measure.</summary>
        public double UsPecks => Boundary.Litres(volume) / PerUsPeck;

        /// <summary>The volume in US dry quarts.</summary>
        public double UsDryQuarts => Boundary.Litres(volume) / PerUsDryQuart;

        /// <summary>The volume in US dry pints.</summary>
        public double UsDryPints => Boundary.Litres(volume) / PerUsDryPint;

        /// <summary>The volume in imperial bushels of 8 imperial gallons.</summary>
        public double ImperialBushels => Boundary.Litres(volume) / PerImperialBushel;

        /// <summary>The volume in metric tablespoons of 15 mL.</summary>
        public double MetricTablespoons => Boundary.Litres(volume) / PerMetricTablespoon;

        /// <summary>The volume in acre-inches.</summary>
        public double AcreInches => Boundary.Litres(volume) / Boundary.LitresPerAcreInch;
    }

    private static Volume From(double value, double litres, string unit) => Volume.FromLiters(Guard.Finite(value, unit) * litres);
}
