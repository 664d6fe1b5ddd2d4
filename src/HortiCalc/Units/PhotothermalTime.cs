using System.Diagnostics.CodeAnalysis;
using System.Numerics;
using UnitsNet;

namespace HortiCalc.Units;

/// <summary>A sum of degree-days, each day's multiplied by hours of that day: of day length, or of bright sunshine.</summary>
/// <remarks>An interval, as <see cref="ThermalTime"/> is: one Celsius-day-hour is 1.8 Fahrenheit-day-hours. The default value is zero.</remarks>
/// <example><code>
/// PhotothermalTime day = PhotothermalTime.From(ThermalTime.FromCelsiusDays(12), Duration.FromHours(15.5)); // 186 °C·d·h
/// </code></example>
public readonly record struct PhotothermalTime :
    IComparable<PhotothermalTime>,
    IComparisonOperators<PhotothermalTime, PhotothermalTime, bool>,
    IAdditionOperators<PhotothermalTime, PhotothermalTime, PhotothermalTime>,
    IFormattable,
    ISpanParsable<PhotothermalTime>
{
    private const string CelsiusUnit = "°C·d·h";
    private const string FahrenheitUnit = "°F·d·h";

    private PhotothermalTime(double celsiusDayHours) => CelsiusDayHours = celsiusDayHours;

    /// <summary>Nothing.</summary>
    public static PhotothermalTime Zero => default;

    /// <summary>The sum in degrees Celsius times days times hours a day.</summary>
    public double CelsiusDayHours { get; }

    /// <summary>The sum in degrees Fahrenheit times days times hours a day.</summary>
    public double FahrenheitDayHours => CelsiusDayHours * Boundary.FahrenheitPerCelsius;

    internal static QuantityNotation<PhotothermalTime> Notation { get; } = new(
        "photothermal time",
        0,
        new NotedUnit<PhotothermalTime>(CelsiusUnit, sum => sum.CelsiusDayHours, FromCelsiusDayHours),
        new NotedUnit<PhotothermalTime>(FahrenheitUnit, sum => sum.FahrenheitDayHours, FromFahrenheitDayHours));

    /// <summary>A sum of Celsius-day-hours.</summary>
    /// <param name="value">A finite number.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static PhotothermalTime FromCelsiusDayHours(double value) => new(Guard.Finite(value, CelsiusUnit));

    /// <summary>A sum of Fahrenheit-day-hours.</summary>
    /// <param name="value">A finite number.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static PhotothermalTime FromFahrenheitDayHours(double value) =>
        new(Guard.Finite(value, FahrenheitUnit) / Boundary.FahrenheitPerCelsius);

    /// <summary>The degree-days of a day times hours of that day.</summary>
    /// <param name="heat">The degree-days of one day.</param>
    /// <param name="hours">The day length or the sunshine of that day.</param>
    /// <returns>Their product.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The product is not finite.</exception>
    public static PhotothermalTime From(ThermalTime heat, Duration hours) =>
        FromCelsiusDayHours(heat.CelsiusDays * Boundary.Days(hours) * 24);

    /// <summary>Adds two sums.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The total.</returns>
    /// <exception cref="OverflowException">The total is too large for a number.</exception>
    public static PhotothermalTime operator +(PhotothermalTime left, PhotothermalTime right)
    {
        double total = left.CelsiusDayHours + right.CelsiusDayHours;
        return double.IsFinite(total) ? new PhotothermalTime(total) : throw new OverflowException("A photothermal time is too large for a number.");
    }

    /// <inheritdoc cref="op_Addition"/>
    public static PhotothermalTime Add(PhotothermalTime left, PhotothermalTime right) => left + right;

    /// <inheritdoc/>
    public static bool operator <(PhotothermalTime left, PhotothermalTime right) => left.CelsiusDayHours < right.CelsiusDayHours;

    /// <inheritdoc/>
    public static bool operator >(PhotothermalTime left, PhotothermalTime right) => left.CelsiusDayHours > right.CelsiusDayHours;

    /// <inheritdoc/>
    public static bool operator <=(PhotothermalTime left, PhotothermalTime right) => left.CelsiusDayHours <= right.CelsiusDayHours;

    /// <inheritdoc/>
    public static bool operator >=(PhotothermalTime left, PhotothermalTime right) => left.CelsiusDayHours >= right.CelsiusDayHours;

    /// <inheritdoc/>
    public int CompareTo(PhotothermalTime other) => CelsiusDayHours.CompareTo(other.CelsiusDayHours);

    /// <summary>The sum in Celsius-day-hours, rounded to whole ones, in invariant culture.</summary>
    /// <returns>For instance <c>18600 °C·d·h</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The sum as text.</summary>
    /// <param name="format">
    /// <c>M</c> or nothing for Celsius-day-hours and <c>U</c> for Fahrenheit-day-hours, whole; <c>R</c> for Celsius-day-hours with every digit.
    /// </param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The number and the unit.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => Notation.Format(this, format, formatProvider);

    /// <summary>Reads a sum in °C·d·h or °F·d·h (or degC.d.h, degF.d.h).</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">The culture, or <see langword="null"/> for the invariant one; never that of the machine.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="FormatException">The number or the unit cannot be read; the message says which.</exception>
    public static PhotothermalTime Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => Notation.Parse(s, provider);

    /// <inheritdoc cref="Parse(ReadOnlySpan{char}, IFormatProvider?)"/>
    /// <exception cref="ArgumentNullException">The text is <see langword="null"/>.</exception>
    public static PhotothermalTime Parse(string s, IFormatProvider? provider) => Notation.Parse(Guard.NotNull(s), provider);

    /// <summary>Reads a sum in °C·d·h or °F·d·h, where the text is one.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">The culture, or <see langword="null"/> for the invariant one; never that of the machine.</param>
    /// <param name="result">The sum.</param>
    /// <returns>Whether the text is such a sum.</returns>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out PhotothermalTime result) =>
        Notation.TryParse(s, provider, out result);

    /// <inheritdoc cref="TryParse(ReadOnlySpan{char}, IFormatProvider?, out PhotothermalTime)"/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out PhotothermalTime result) =>
        Notation.TryParse(s, provider, out result);
}
