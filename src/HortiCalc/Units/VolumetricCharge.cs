using System.Diagnostics.CodeAnalysis;
using System.Numerics;
using UnitsNet;

namespace HortiCalc.Units;

/// <summary>
/// Charge per volume: exchangeable charge of soil as laboratories that scoop their samples report it, and ions or alkalinity in water.
/// </summary>
/// <remarks>
/// One centimole of charge per litre is one milliequivalent per 100 cubic centimetres, and ten milliequivalents per litre. Never negative. The
/// default value is zero.
/// </remarks>
/// <example><code>
/// VolumetricCharge acidity = VolumetricCharge.FromMilliequivalentsPer100CubicCentimetres(1.2);
/// ExchangeableCharge byMass = acidity / Density.FromGramsPerCubicCentimeter(1.2);   // 1 cmol(c)/kg
/// </code></example>
public readonly record struct VolumetricCharge :
    IComparable<VolumetricCharge>,
    IComparisonOperators<VolumetricCharge, VolumetricCharge, bool>,
    IAdditionOperators<VolumetricCharge, VolumetricCharge, VolumetricCharge>,
    ISubtractionOperators<VolumetricCharge, VolumetricCharge, VolumetricCharge>,
    IMultiplyOperators<VolumetricCharge, double, VolumetricCharge>,
    IDivisionOperators<VolumetricCharge, VolumetricCharge, double>,
    IFormattable,
    ISpanParsable<VolumetricCharge>
{
    private const string MetricUnit = "cmol(c)/L";
    private const string UsUnit = "meq/100 cm³";

    private VolumetricCharge(double centimolesPerLitre) => CentimolesPerLitre = centimolesPerLitre;

    /// <summary>Centimoles of charge per litre of soil, the same number as milliequivalents per 100 cubic centimetres.</summary>
    public double CentimolesPerLitre { get; }

    /// <summary>Milliequivalents per 100 cubic centimetres of soil, the same number as centimoles of charge per litre.</summary>
    public double MilliequivalentsPer100CubicCentimetres => CentimolesPerLitre;

    /// <summary>Milliequivalents per litre, as water analyses report ions and alkalinity.</summary>
    public double MilliequivalentsPerLitre => CentimolesPerLitre * 10;

    internal static QuantityNotation<VolumetricCharge> Notation { get; } = new(
        "charge per volume",
        3,
        new NotedUnit<VolumetricCharge>(MetricUnit, charge => charge.CentimolesPerLitre, FromCentimolesPerLitre),
        new NotedUnit<VolumetricCharge>(UsUnit, charge => charge.CentimolesPerLitre, FromMilliequivalentsPer100CubicCentimetres));

    /// <summary>Makes a charge from centimoles per litre.</summary>
    /// <param name="value">Zero or more.</param>
    /// <returns>The charge.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static VolumetricCharge FromCentimolesPerLitre(double value) => new(Guard.NotNegative(value, MetricUnit));

    /// <summary>Makes a charge from milliequivalents per 100 cubic centimetres.</summary>
    /// <param name="value">Zero or more.</param>
    /// <returns>The charge.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static VolumetricCharge FromMilliequivalentsPer100CubicCentimetres(double value) => new(Guard.NotNegative(value, UsUnit));

    /// <summary>Makes a charge from milliequivalents per litre.</summary>
    /// <param name="value">Zero or more.</param>
    /// <returns>The charge.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static VolumetricCharge FromMilliequivalentsPerLitre(double value) => new(Guard.NotNegative(value, "meq/L") / 10);

    /// <summary>Adds two charges of the same soil, as the bases to the acidity.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The total.</returns>
    public static VolumetricCharge operator +(VolumetricCharge left, VolumetricCharge right) =>
        FromCentimolesPerLitre(left.CentimolesPerLitre + right.CentimolesPerLitre);

    /// <summary>Takes one charge from another, as the bases from the whole.</summary>
    /// <param name="left">The charge to subtract from.</param>
    /// <param name="right">The charge to subtract; not larger.</param>
    /// <returns>The difference.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The charge to subtract is the larger one: a charge is never negative.</exception>
    public static VolumetricCharge operator -(VolumetricCharge left, VolumetricCharge right) =>
        new(left.CentimolesPerLitre - Guard.Within(right.CentimolesPerLitre, 0, left.CentimolesPerLitre, MetricUnit, nameof(right)));

    /// <summary>Scales a charge, as by a share of saturation.</summary>
    /// <param name="charge">The charge.</param>
    /// <param name="factor">Zero or more.</param>
    /// <returns>The scaled charge.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The factor is negative or not finite.</exception>
    public static VolumetricCharge operator *(VolumetricCharge charge, double factor) =>
        FromCentimolesPerLitre(charge.CentimolesPerLitre * Guard.NotNegative(factor, ""));

    /// <summary>What share one charge is of another, as base saturation.</summary>
    /// <param name="left">The charge to divide.</param>
    /// <param name="right">The charge to divide by; not zero.</param>
    /// <returns>A plain number.</returns>
    /// <exception cref="DivideByZeroException">The divisor is zero.</exception>
    public static double operator /(VolumetricCharge left, VolumetricCharge right) => right.CentimolesPerLitre > 0
        ? left.CentimolesPerLitre / right.CentimolesPerLitre
        : throw new DivideByZeroException("A charge was divided by zero cmol(c)/L.");

    /// <summary>The charge per mass of a soil of known bulk density.</summary>
    /// <param name="charge">The charge per volume.</param>
    /// <param name="bulkDensity">The mass of dry soil in a volume; greater than zero.</param>
    /// <returns>The charge per mass of dry soil: centimoles per litre over kilograms per litre.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The bulk density is zero or negative.</exception>
    public static ExchangeableCharge operator /(VolumetricCharge charge, Density bulkDensity) =>
        ExchangeableCharge.FromCentimolesPerKilogram(charge.CentimolesPerLitre * Boundary.LitresPerCubicMetre
        / Guard.Positive(Boundary.KilogramsPerCubicMetre(bulkDensity), "kg/m³", nameof(bulkDensity)));

    /// <inheritdoc cref="op_Addition"/>
    public static VolumetricCharge Add(VolumetricCharge left, VolumetricCharge right) => left + right;

    /// <inheritdoc cref="op_Subtraction"/>
    public static VolumetricCharge Subtract(VolumetricCharge left, VolumetricCharge right) => left - right;

    /// <inheritdoc/>
    public static bool operator <(VolumetricCharge left, VolumetricCharge right) => left.CentimolesPerLitre < right.CentimolesPerLitre;

    /// <inheritdoc/>
    public static bool operator >(VolumetricCharge left, VolumetricCharge right) => left.CentimolesPerLitre > right.CentimolesPerLitre;

    /// <inheritdoc/>
    public static bool operator <=(VolumetricCharge left, VolumetricCharge right) => left.CentimolesPerLitre <= right.CentimolesPerLitre;

    /// <inheritdoc/>
    public static bool operator >=(VolumetricCharge left, VolumetricCharge right) => left.CentimolesPerLitre >= right.CentimolesPerLitre;

    /// <inheritdoc/>
    public int CompareTo(VolumetricCharge other) => CentimolesPerLitre.CompareTo(other.CentimolesPerLitre);

    /// <summary>The charge in cmol(c)/L, to three decimals, in invariant culture.</summary>
    /// <returns>For instance <c>5.2 cmol(c)/L</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The charge as text.</summary>
    /// <param name="format">
    /// <c>M</c> or nothing for cmol(c)/L and <c>U</c> for meq/100 cm³, to three decimals; <c>R</c> for cmol(c)/L with every digit.
    /// </param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The number and the unit.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => Notation.Format(this, format, formatProvider);

    /// <summary>Reads a charge in cmol(c)/L or meq/100 cm³.</summary>
    /// <param name="s">The text, for instance <c>5.2 cmol(c)/L</c>.</param>
    /// <param name="provider">The culture, or <see langword="null"/> for the invariant one; never that of the machine.</param>
    /// <returns>The charge.</returns>
    /// <exception cref="FormatException">The number or the unit cannot be read, or the charge is negative; the message says which.</exception>
    public static VolumetricCharge Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => Notation.Parse(s, provider);

    /// <inheritdoc cref="Parse(ReadOnlySpan{char}, IFormatProvider?)"/>
    /// <exception cref="ArgumentNullException">The text is <see langword="null"/>.</exception>
    public static VolumetricCharge Parse(string s, IFormatProvider? provider) => Notation.Parse(Guard.NotNull(s), provider);

    /// <summary>Reads a charge in cmol(c)/L or meq/100 cm³, where the text is one.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">The culture, or <see langword="null"/> for the invariant one; never that of the machine.</param>
    /// <param name="result">The charge.</param>
    /// <returns>Whether the text is a charge.</returns>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out VolumetricCharge result) =>
        Notation.TryParse(s, provider, out result);

    /// <inheritdoc cref="TryParse(ReadOnlySpan{char}, IFormatProvider?, out VolumetricCharge)"/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out VolumetricCharge result) =>
        Notation.TryParse(s, provider, out result);
}
