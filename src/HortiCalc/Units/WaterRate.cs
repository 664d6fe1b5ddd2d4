using System.Diagnostics.CodeAnalysis;
using System.Numerics;
using UnitsNet;

namespace HortiCalc.Units;

/// <summary>A depth of water per time: what rain brings, a sprinkler gives, a soil lets in or conducts, a crop uses.</summary>
/// <remarks>One millimetre is a litre on a square metre. The default value is zero.</remarks>
/// <example><code>
/// WaterRate sprinkler = WaterRate.FromInchesPerHour(0.5);
/// Length anHourAndAHalf = sprinkler.Over(Duration.FromMinutes(90)); // 0.75 in
/// </code></example>
public readonly record struct WaterRate :
    IComparable<WaterRate>,
    IComparisonOperators<WaterRate, WaterRate, bool>,
    IFormattable,
    ISpanParsable<WaterRate>
{
    private const string MillimetresPerHourUnit = "mm/h";
    private const string InchesPerHourUnit = "in/h";
    private const double MillimetresPerInch = Boundary.MetresPerInch * 1000;

    private WaterRate(double millimetresPerHour) => MillimetresPerHour = millimetresPerHour;

    /// <summary>The rate in millimetres an hour.</summary>
    public double MillimetresPerHour { get; }

    /// <summary>The rate in centimetres an hour.</summary>
    public double CentimetresPerHour => MillimetresPerHour / 10;

    /// <summary>The rate in centimetres a day.</summary>
    public double CentimetresPerDay => MillimetresPerHour * 2.4;

    /// <summary>The rate in millimetres a day.</summary>
    public double MillimetresPerDay => MillimetresPerHour * 24;

    /// <summary>The rate in inches an hour.</summary>
    public double InchesPerHour => MillimetresPerHour / MillimetresPerInch;

    internal static QuantityNotation<WaterRate> Notation { get; } = new(
        "water rate",
        3,
        new NotedUnit<WaterRate>(MillimetresPerHourUnit, value => value.MillimetresPerHour, FromMillimetresPerHour),
        new NotedUnit<WaterRate>(InchesPerHourUnit, value => value.InchesPerHour, FromInchesPerHour));

    /// <summary>A rate in millimetres an hour.</summary>
    /// <param name="value">0 or more.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static WaterRate FromMillimetresPerHour(double value) => new(Guard.NotNegative(value, MillimetresPerHourUnit));

    /// <summary>A rate in centimetres an hour.</summary>
    /// <param name="value">0 or more.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static WaterRate FromCentimetresPerHour(double value) => new(Guard.NotNegative(value, "cm/h") * 10);

    /// <summary>A rate in centimetres a day.</summary>
    /// <param name="value">0 or more.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static WaterRate FromCentimetresPerDay(double value) => new(Guard.NotNegative(value, "cm/d") / 2.4);

    /// <summary>A rate in millimetres a day.</summary>
    /// <param name="value">0 or more.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static WaterRate FromMillimetresPerDay(double value) => new(Guard.NotNegative(value, "mm/d") / 24);

    /// <summary>A rate in inches an hour.</summary>
    /// <param name="value">0 or more.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static WaterRate FromInchesPerHour(double value) => new(Guard.NotNegative(value, InchesPerHourUnit) * MillimetresPerInch);

    /// <summary>The depth of water that a time brings.</summary>
    /// <param name="time">The time, 0 or more.</param>
    /// <returns>The depth.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative or not finite.</exception>
    public Length Over(Duration time) =>
        Length.FromMeters(MillimetresPerHour * Guard.NotNegative(Boundary.Days(time), "days", nameof(time)) * 24 / 1000);

    /// <inheritdoc/>
    public static bool operator <(WaterRate left, WaterRate right) => left.CompareTo(right) < 0;

    /// <inheritdoc/>
    public static bool operator >(WaterRate left, WaterRate right) => left.CompareTo(right) > 0;

    /// <inheritdoc/>
    public static bool operator <=(WaterRate left, WaterRate right) => left.CompareTo(right) <= 0;

    /// <inheritdoc/>
    public static bool operator >=(WaterRate left, WaterRate right) => left.CompareTo(right) >= 0;

    /// <inheritdoc/>
    public int CompareTo(WaterRate other) => MillimetresPerHour.CompareTo(other.MillimetresPerHour);

    /// <summary>The rate in millimetres an hour, in invariant culture.</summary>
    /// <returns>For instance <c>12.5 mm/h</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The rate as text.</summary>
    /// <param name="format"><c>M</c> or nothing for mm/h and <c>U</c> for in/h, to three decimals; <c>R</c> for mm/h with every digit.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The number and the unit.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => Notation.Format(this, format, formatProvider);

    /// <summary>Reads a rate in mm/h or in/h.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">The culture, or <see langword="null"/> for the invariant one; never that of the machine.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="FormatException">The number or the unit cannot be read; the message says which.</exception>
    public static WaterRate Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => Notation.Parse(s, provider);

    /// <inheritdoc cref="Parse(ReadOnlySpan{char}, IFormatProvider?)"/>
    /// <exception cref="ArgumentNullException">The text is <see langword="null"/>.</exception>
    public static WaterRate Parse(string s, IFormatProvider? provider) => Notation.Parse(Guard.NotNull(s), provider);

    /// <summary>Reads a rate in mm/h or in/h, where the text is one.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">The culture, or <see langword="null"/> for the invariant one; never that of the machine.</param>
    /// <param name="result">The rate.</param>
    /// <returns>Whether the text is a rate.</returns>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out WaterRate result) => Notation.TryParse(s, provider, out result);

    /// <inheritdoc cref="TryParse(ReadOnlySpan{char}, IFormatProvider?, out WaterRate)"/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out WaterRate result) =>
        Notation.TryParse(s, provider, out result);
}
