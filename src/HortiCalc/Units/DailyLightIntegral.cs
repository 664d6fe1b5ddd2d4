using System.Diagnostics.CodeAnalysis;
using System.Numerics;

namespace HortiCalc.Units;

/// <summary>How much light that plants can use falls on a place in a whole day: photons of 400 to 700 nm, DLI in print.</summary>
/// <remarks>A sunny summer day has 50 to 60 mol/(m²·d), a winter greenhouse 1 to 10. The default value is zero.</remarks>
/// <example><code>
/// DailyLightIntegral needed = DailyLightIntegral.FromMolesPerSquareMetreDay(12);
/// </code></example>
public readonly record struct DailyLightIntegral :
    IComparable<DailyLightIntegral>,
    IComparisonOperators<DailyLightIntegral, DailyLightIntegral, bool>,
    IAdditionOperators<DailyLightIntegral, DailyLightIntegral, DailyLightIntegral>,
    IFormattable,
    ISpanParsable<DailyLightIntegral>
{
    private const string Unit = "mol/(m²·d)";

    private DailyLightIntegral(double molesPerSquareMetreDay) => MolesPerSquareMetreDay = molesPerSquareMetreDay;

    /// <summary>No light.</summary>
    public static DailyLightIntegral Zero => default;

    /// <summary>The light in moles of photons a square metre and day.</summary>
    public double MolesPerSquareMetreDay { get; }

    internal static QuantityNotation<DailyLightIntegral> Notation { get; } = new(
        "daily light integral", 2, new NotedUnit<DailyLightIntegral>(Unit, light => light.MolesPerSquareMetreDay, FromMolesPerSquareMetreDay));

    /// <summary>Light in moles of photons a square metre and day.</summary>
    /// <param name="value">0 or more.</param>
    /// <returns>The light.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static DailyLightIntegral FromMolesPerSquareMetreDay(double value) => new(Guard.NotNegative(value, Unit));

    /// <summary>Adds the light of two sources that shine on the same place.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The total.</returns>
    /// <exception cref="OverflowException">The total is too large for a number.</exception>
    public static DailyLightIntegral operator +(DailyLightIntegral left, DailyLightIntegral right)
    {
        double total = left.MolesPerSquareMetreDay + right.MolesPerSquareMetreDay;
        return double.IsFinite(total) ? new DailyLightIntegral(total) : throw new OverflowException("A daily light integral is too large for a number.");
    }

    /// <inheritdoc cref="op_Addition"/>
    public static DailyLightIntegral Add(DailyLightIntegral left, DailyLightIntegral right) => left + right;

    /// <inheritdoc/>
    public static bool operator <(DailyLightIntegral left, DailyLightIntegral right) => left.MolesPerSquareMetreDay < right.MolesPerSquareMetreDay;

    /// <inheritdoc/>
    public static bool operator >(DailyLightIntegral left, DailyLightIntegral right) => left.MolesPerSquareMetreDay > right.MolesPerSquareMetreDay;

    /// <inheritdoc/>
    public static bool operator <=(DailyLightIntegral left, DailyLightIntegral right) => left.MolesPerSquareMetreDay <= right.MolesPerSquareMetreDay;

    /// <inheritdoc/>
    public static bool operator >=(DailyLightIntegral left, DailyLightIntegral right) => left.MolesPerSquareMetreDay >= right.MolesPerSquareMetreDay;

    /// <inheritdoc/>
    public int CompareTo(DailyLightIntegral other) => MolesPerSquareMetreDay.CompareTo(other.MolesPerSquareMetreDay);

    /// <summary>The light in mol/(m²·d), in invariant culture.</summary>
    /// <returns>For instance <c>12 mol/(m²·d)</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The light as text; the unit is the same in every country.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing for a rounded number; <c>R</c> for every digit.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The number and the unit.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => Notation.Format(this, format, formatProvider);

    /// <summary>Reads light in mol/(m²·d) (or mol/(m2.d)).</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">The culture, or <see langword="null"/> for the invariant one; never that of the machine.</param>
    /// <returns>The light.</returns>
    /// <exception cref="FormatException">The number or the unit cannot be read; the message says which.</exception>
    public static DailyLightIntegral Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => Notation.Parse(s, provider);

    /// <inheritdoc cref="Parse(ReadOnlySpan{char}, IFormatProvider?)"/>
    /// <exception cref="ArgumentNullException">The text is <see langword="null"/>.</exception>
    public static DailyLightIntegral Parse(string s, IFormatProvider? provider) => Notation.Parse(Guard.NotNull(s), provider);

    /// <summary>Reads light in mol/(m²·d), where the text is that.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">The culture, or <see langword="null"/> for the invariant one; never that of the machine.</param>
    /// <param name="result">The light.</param>
    /// <returns>Whether the text is an amount of light.</returns>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out DailyLightIntegral result) =>
        Notation.TryParse(s, provider, out result);

    /// <inheritdoc cref="TryParse(ReadOnlySpan{char}, IFormatProvider?, out DailyLightIntegral)"/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out DailyLightIntegral result) =>
        Notation.TryParse(s, provider, out result);
}
