using System.Diagnostics.CodeAnalysis;
using System.Numerics;
using UnitsNet;

namespace HortiCalc.Units;

/// <summary>Exchangeable charge per mass of soil: cation exchange capacity, exchangeable acidity, exchangeable bases.</summary>
/// <remarks>One centimole of charge per kilogram is one milliequivalent per 100 grams. Never negative. The default value is zero.</remarks>
/// <example><code>
/// ExchangeableCharge capacity = ExchangeableCharge.FromCentimolesPerKilogram(12);
/// ExchangeableCharge acidity = ExchangeableCharge.Parse("3 meq/100 g", CultureInfo.InvariantCulture);
/// double baseSaturation = (capacity - acidity) / capacity;   // 0.75
/// </code></example>
public readonly record struct ExchangeableCharge :
    IComparable<ExchangeableCharge>,
    IComparisonOperators<ExchangeableCharge, ExchangeableCharge, bool>,
    IAdditionOperators<ExchangeableCharge, ExchangeableCharge, ExchangeableCharge>,
    ISubtractionOperators<ExchangeableCharge, ExchangeableCharge, ExchangeableCharge>,
    IMultiplyOperators<ExchangeableCharge, double, ExchangeableCharge>,
    IDivisionOperators<ExchangeableCharge, ExchangeableCharge, double>,
    IFormattable,
    ISpanParsable<ExchangeableCharge>
{
    private const string MetricUnit = "cmol(c)/kg";
    private const string UsUnit = "meq/100 g";

    private ExchangeableCharge(double centimolesPerKilogram) => CentimolesPerKilogram = centimolesPerKilogram;

    /// <summary>Centimoles of charge per kilogram of soil, the same number as milliequivalents per 100 grams.</summary>
    public double CentimolesPerKilogram { get; }

    /// <summary>Milliequivalents per 100 grams of soil, the same number as centimoles of charge per kilogram.</summary>
    public double MilliequivalentsPer100Grams => CentimolesPerKilogram;

    internal static QuantityNotation<ExchangeableCharge> Notation { get; } = new(
        "exchangeable charge",
        3,
        new NotedUnit<ExchangeableCharge>(MetricUnit, charge => charge.CentimolesPerKilogram, FromCentimolesPerKilogram),
        new NotedUnit<ExchangeableCharge>(UsUnit, charge => charge.MilliequivalentsPer100Grams, FromMilliequivalentsPer100Grams));

    /// <summary>Makes a charge from centimoles per kilogram.</summary>
    /// <param name="value">Zero or more.</param>
    /// <returns>The charge.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static ExchangeableCharge FromCentimolesPerKilogram(double value) => new(Guard.NotNegative(value, MetricUnit));

    /// <summary>Makes a charge from milliequivalents per 100 grams.</summary>
    /// <param name="value">Zero or more.</param>
    /// <returns>The charge.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static ExchangeableCharge FromMilliequivalentsPer100Grams(double value) => new(Guard.NotNegative(value, UsUnit));

    /// <summary>Adds two charges of the same soil, as the bases to the acidity.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The total.</returns>
    public static ExchangeableCharge operator +(ExchangeableCharge left, ExchangeableCharge right) =>
        FromCentimolesPerKilogram(left.CentimolesPerKilogram + right.CentimolesPerKilogram);

    /// <summary>Takes one charge from another, as the bases from the whole.</summary>
    /// <param name="left">The charge to subtract from.</param>
    /// <param name="right">The charge to subtract; not larger.</param>
    /// <returns>The difference.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The charge to subtract is the larger one: a charge is never negative.</exception>
    public static ExchangeableCharge operator -(ExchangeableCharge left, ExchangeableCharge right) =>
        new(left.CentimolesPerKilogram
            - Guard.Within(right.CentimolesPerKilogram, 0, left.CentimolesPerKilogram, MetricUnit, nameof(right)));

    /// <summary>Scales a charge, as by a share of saturation.</summary>
    /// <param name="charge">The charge.</param>
    /// <param name="factor">Zero or more.</param>
    /// <returns>The scaled charge.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The factor is negative or not finite.</exception>
    public static ExchangeableCharge operator *(ExchangeableCharge charge, double factor) =>
        FromCentimolesPerKilogram(charge.CentimolesPerKilogram * Guard.NotNegative(factor, ""));

    /// <summary>What share one charge is of another, as base saturation.</summary>
    /// <param name="left">The charge to divide.</param>
    /// <param name="right">The charge to divide by; not zero.</param>
    /// <returns>A plain number.</returns>
    /// <exception cref="DivideByZeroException">The divisor is zero.</exception>
    public static double operator /(ExchangeableCharge left, ExchangeableCharge right) => right.CentimolesPerKilogram > 0
        ? left.CentimolesPerKilogram / right.CentimolesPerKilogram
        : throw new DivideByZeroException("A charge was divided by zero cmol(c)/kg.");

    /// <summary>The charge per volume of a soil of known bulk density.</summary>
    /// <param name="charge">The charge per mass of dry soil.</param>
    /// <param name="bulkDensity">The mass of dry soil in a volume; greater than zero.</param>
    /// <returns>The charge per volume: centimoles per kilogram times kilograms per litre.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The bulk density is zero or negative.</exception>
    public static VolumetricCharge operator *(ExchangeableCharge charge, Density bulkDensity) => VolumetricCharge.FromCentimolesPerLitre(
        charge.CentimolesPerKilogram
        * Guard.Positive(Boundary.KilogramsPerCubicMetre(bulkDensity), "kg/m³", nameof(bulkDensity)) / Boundary.LitresPerCubicMetre);

    /// <inheritdoc cref="op_Addition"/>
    public static ExchangeableCharge Add(ExchangeableCharge left, ExchangeableCharge right) => left + right;

    /// <inheritdoc cref="op_Subtraction"/>
    public static ExchangeableCharge Subtract(ExchangeableCharge left, ExchangeableCharge right) => left - right;

    /// <inheritdoc/>
    public static bool operator <(ExchangeableCharge left, ExchangeableCharge right) =>
        left.CentimolesPerKilogram < right.CentimolesPerKilogram;

    /// <inheritdoc/>
    public static bool operator >(ExchangeableCharge left, ExchangeableCharge right) =>
        left.CentimolesPerKilogram > right.CentimolesPerKilogram;

    /// <inheritdoc/>
    public static bool operator <=(ExchangeableCharge left, ExchangeableCharge right) =>
        left.CentimolesPerKilogram <= right.CentimolesPerKilogram;

    /// <inheritdoc/>
    public static bool operator >=(ExchangeableCharge left, ExchangeableCharge right) =>
        left.CentimolesPerKilogram >= right.CentimolesPerKilogram;

    /// <inheritdoc/>
    public int CompareTo(ExchangeableCharge other) => CentimolesPerKilogram.CompareTo(other.CentimolesPerKilogram);

    /// <summary>The charge in cmol(c)/kg, to three decimals, in invariant culture.</summary>
    /// <returns>For instance <c>5.2 cmol(c)/kg</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The charge as text.</summary>
    /// <param name="format">
    /// <c>M</c> or nothing for cmol(c)/kg and <c>U</c> for meq/100 g, to three decimals; <c>R</c> for cmol(c)/kg with every digit.
    /// </param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The number and the unit.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => Notation.Format(this, format, formatProvider);

    /// <summary>Reads a charge in cmol(c)/kg or meq/100 g.</summary>
    /// <param name="s">The text, for instance <c>5.2 cmol(c)/kg</c>.</param>
    /// <param name="provider">The culture, or <see langword="null"/> for the invariant one; never that of the machine.</param>
    /// <returns>The charge.</returns>
    /// <exception cref="FormatException">The number or the unit cannot be read, or the charge is negative; the message says which.</exception>
    public static ExchangeableCharge Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => Notation.Parse(s, provider);

    /// <inheritdoc cref="Parse(ReadOnlySpan{char}, IFormatProvider?)"/>
    /// <exception cref="ArgumentNullException">The text is <see langword="null"/>.</exception>
    public static ExchangeableCharge Parse(string s, IFormatProvider? provider) => Notation.Parse(Guard.NotNull(s), provider);

    /// <summary>Reads a charge in cmol(c)/kg or meq/100 g, where the text is one.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">The culture, or <see langword="null"/> for the invariant one; never that of the machine.</param>
    /// <param name="result">The charge.</param>
    /// <returns>Whether the text is a charge.</returns>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out ExchangeableCharge result) =>
        Notation.TryParse(s, provider, out result);

    /// <inheritdoc cref="TryParse(ReadOnlySpan{char}, IFormatProvider?, out ExchangeableCharge)"/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out ExchangeableCharge result) =>
        Notation.TryParse(s, provider, out result);
}
