using System.Globalization;

namespace HortiCalc.Units;

/// <summary>Exchangeable charge per mass of soil: cation exchange capacity, exchangeable acidity, exchangeable bases.</summary>
/// <remarks>One centimole of charge per kilogram is one milliequivalent per 100 grams. Never negative. The default value is zero.</remarks>
public readonly record struct ExchangeableCharge : IComparable<ExchangeableCharge>, IFormattable
{
    private ExchangeableCharge(double centimolesPerKilogram) => CentimolesPerKilogram = centimolesPerKilogram;

    /// <summary>Centimoles of charge per kilogram of soil, the same number as milliequivalents per 100 grams.</summary>
    public double CentimolesPerKilogram { get; }

    /// <summary>Milliequivalents per 100 grams of soil, the same number as centimoles of charge per kilogram.</summary>
    public double MilliequivalentsPer100Grams => CentimolesPerKilogram;

    /// <summary>Makes a charge from centimoles per kilogram.</summary>
    /// <param name="value">Zero or more.</param>
    /// <returns>The charge.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static ExchangeableCharge FromCentimolesPerKilogram(double value) => new(Guard.NotNegative(value, "cmol(c)/kg"));

    /// <summary>Makes a charge from milliequivalents per 100 grams.</summary>
    /// <param name="value">Zero or more.</param>
    /// <returns>The charge.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static ExchangeableCharge FromMilliequivalentsPer100Grams(double value) => new(Guard.NotNegative(value, "meq/100 g"));

    /// <inheritdoc/>
    public int CompareTo(ExchangeableCharge other) => CentimolesPerKilogram.CompareTo(other.CentimolesPerKilogram);

    /// <summary>The charge in invariant culture.</summary>
    /// <returns>For instance <c>5.2 cmol(c)/kg</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The charge as text.</summary>
    /// <param name="format"><c>M</c> or nothing for cmol(c)/kg, <c>U</c> for meq/100 g.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The number and the unit.</returns>
    public string ToString(string? format, IFormatProvider? formatProvider) =>
        CentimolesPerKilogram.ToString("R", formatProvider ?? CultureInfo.InvariantCulture)
        + (format is "U" or "u" ? " meq/100 g" : " cmol(c)/kg");

    /// <summary>Whether one charge is smaller than the other.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The comparison of the numbers.</returns>
    public static bool operator <(ExchangeableCharge left, ExchangeableCharge right) => left.CompareTo(right) < 0;

    /// <summary>Whether one charge is larger than the other.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The comparison of the numbers.</returns>
    public static bool operator >(ExchangeableCharge left, ExchangeableCharge right) => left.CompareTo(right) > 0;

    /// <summary>Whether one charge is at most the other.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The comparison of the numbers.</returns>
    public static bool operator <=(ExchangeableCharge left, ExchangeableCharge right) => left.CompareTo(right) <= 0;

    /// <summary>Whether one charge is at least the other.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The comparison of the numbers.</returns>
    public static bool operator >=(ExchangeableCharge left, ExchangeableCharge right) => left.CompareTo(right) >= 0;
}
