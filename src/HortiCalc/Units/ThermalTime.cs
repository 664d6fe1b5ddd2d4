using System.Diagnostics.CodeAnalysis;
using System.Numerics;
using UnitsNet;

namespace HortiCalc.Units;

/// <summary>A sum of degree-days: a temperature difference times a time.</summary>
/// <remarks>
/// It is an interval, so that one Celsius-day is 1.8 Fahrenheit-days, without the offset of the thermometer's zero.
/// May be negative as a difference of two sums. The default value is zero.
/// </remarks>
/// <example><code>
/// ThermalTime needed = ThermalTime.FromFahrenheitDays(2700);      // 1500 °C·d
/// Duration time = needed / TemperatureDelta.FromDegreesCelsius(12);   // 125 days at 12 °C above the base
/// </code></example>
public readonly record struct ThermalTime :
    IComparable<ThermalTime>,
    IComparisonOperators<ThermalTime, ThermalTime, bool>,
    IAdditionOperators<ThermalTime, ThermalTime, ThermalTime>,
    ISubtractionOperators<ThermalTime, ThermalTime, ThermalTime>,
    IMultiplyOperators<ThermalTime, double, ThermalTime>,
    IDivisionOperators<ThermalTime, ThermalTime, double>,
    IFormattable,
    ISpanParsable<ThermalTime>
{
    private const string CelsiusDayUnit = "°C·d";
    private const string FahrenheitDayUnit = "°F·d";

    private ThermalTime(double celsiusDays) => CelsiusDays = celsiusDays;

    /// <summary>No degree-days.</summary>
    public static ThermalTime Zero => default;

    /// <summary>The sum in degrees Celsius times days.</summary>
    public double CelsiusDays { get; }

    /// <summary>The sum in degrees Fahrenheit times days.</summary>
    public double FahrenheitDays => CelsiusDays * Boundary.FahrenheitPerCelsius;

    internal static QuantityNotation<ThermalTime> Notation { get; } = new(
        "degree-days",
        1,
        new NotedUnit<ThermalTime>(CelsiusDayUnit, sum => sum.CelsiusDays, FromCelsiusDays),
        new NotedUnit<ThermalTime>(FahrenheitDayUnit, sum => sum.FahrenheitDays, FromFahrenheitDays));

    /// <summary>A sum of Celsius-days.</summary>
    /// <param name="value">A finite number.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static ThermalTime FromCelsiusDays(double value) => new(Guard.Finite(value, CelsiusDayUnit));

    /// <summary>A sum of Fahrenheit-days.</summary>
    /// <param name="value">A finite number.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static ThermalTime FromFahrenheitDays(double value) =>
        new(Guard.Finite(value, FahrenheitDayUnit) / Boundary.FahrenheitPerCelsius);

    /// <summary>A temperature difference held for a time.</summary>
    /// <param name="difference">The difference.</param>
    /// <param name="time">The time.</param>
    /// <returns>Their product.</returns>
    public static ThermalTime From(TemperatureDelta difference, Duration time) =>
        Made(Boundary.CelsiusDegrees(difference) * Boundary.Days(time));

    /// <summary>Adds two sums.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The total.</returns>
    public static ThermalTime operator +(ThermalTime left, ThermalTime right) => Made(left.CelsiusDays + right.CelsiusDays);

    /// <summary>Takes one sum from another.</summary>
    /// <param name="left">The sum to subtract from.</param>
    /// <param name="right">The sum to subtract.</param>
    /// <returns>The difference; may be negative.</returns>
    public static ThermalTime operator -(ThermalTime left, ThermalTime right) => Made(left.CelsiusDays - right.CelsiusDays);

    /// <summary>Scales a sum.</summary>
    /// <param name="sum">The sum.</param>
    /// <param name="factor">A finite number.</param>
    /// <returns>The scaled sum.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The factor is not finite.</exception>
    public static ThermalTime operator *(ThermalTime sum, double factor) => Made(sum.CelsiusDays * Guard.Finite(factor, ""));

    /// <summary>How many times one sum goes into another.</summary>
    /// <param name="left">The sum to divide.</param>
    /// <param name="right">The sum to divide by; not zero.</param>
    /// <returns>A plain number.</returns>
    /// <exception cref="DivideByZeroException">The divisor is zero.</exception>
    public static double operator /(ThermalTime left, ThermalTime right) =>
        left.CelsiusDays / NotZero(right.CelsiusDays, "zero degree-days");

    /// <summary>How long a sum takes at a steady temperature difference.</summary>
    /// <param name="sum">The sum.</param>
    /// <param name="difference">The difference from the base temperature; not zero.</param>
    /// <returns>The time.</returns>
    /// <exception cref="DivideByZeroException">The difference is zero.</exception>
    public static Duration operator /(ThermalTime sum, TemperatureDelta difference) =>
        Duration.FromDays(sum.CelsiusDays / NotZero(Boundary.CelsiusDegrees(difference), "a temperature difference of zero"));

    /// <summary>The mean temperature difference that gives a sum over a time.</summary>
    /// <param name="sum">The sum.</param>
    /// <param name="time">The time; not zero.</param>
    /// <returns>The difference from the base temperature.</returns>
    /// <exception cref="DivideByZeroException">The time is zero.</exception>
    public static TemperatureDelta operator /(ThermalTime sum, Duration time) =>
        TemperatureDelta.FromDegreesCelsius(sum.CelsiusDays / NotZero(Boundary.Days(time), "no time"));

    /// <inheritdoc cref="op_Addition"/>
    public static ThermalTime Add(ThermalTime left, ThermalTime right) => left + right;

    /// <inheritdoc cref="op_Subtraction"/>
    public static ThermalTime Subtract(ThermalTime left, ThermalTime right) => left - right;

    /// <inheritdoc cref="op_Multiply"/>
    public static ThermalTime Multiply(ThermalTime sum, double factor) => sum * factor;

    /// <inheritdoc cref="op_Division(ThermalTime, ThermalTime)"/>
    public static double Divide(ThermalTime left, ThermalTime right) => left / right;

    /// <inheritdoc/>
    public static bool operator <(ThermalTime left, ThermalTime right) => left.CelsiusDays < right.CelsiusDays;

    /// <inheritdoc/>
    public static bool operator >(ThermalTime left, ThermalTime right) => left.CelsiusDays > right.CelsiusDays;

    /// <inheritdoc/>
    public static bool operator <=(ThermalTime left, ThermalTime right) => left.CelsiusDays <= right.CelsiusDays;

    /// <inheritdoc/>
    public static bool operator >=(ThermalTime left, ThermalTime right) => left.CelsiusDays >= right.CelsiusDays;

    /// <inheritdoc/>
    public int CompareTo(ThermalTime other) => CelsiusDays.CompareTo(other.CelsiusDays);

    /// <summary>The sum in Celsius-days, to one decimal, in invariant culture.</summary>
    /// <returns>For instance <c>812.5 °C·d</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The sum as text.</summary>
    /// <param name="format">
    /// <c>M</c> or nothing for Celsius-days and <c>U</c> for Fahrenheit-days, to one decimal; <c>R</c> for Celsius-days with every digit.
    /// </param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The number and the unit.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => Notation.Format(this, format, formatProvider);

    /// <summary>Reads a sum of degree-days in °C·d or °F·d (or degC.d, degF.d).</summary>
    /// <param name="s">The text, for instance <c>812.5 °C·d</c>.</param>
    /// <param name="provider">The culture, or <see langword="null"/> for the invariant one; never that of the machine.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="FormatException">The number or the unit cannot be read; the message says which.</exception>
    public static ThermalTime Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => Notation.Parse(s, provider);

    /// <inheritdoc cref="Parse(ReadOnlySpan{char}, IFormatProvider?)"/>
    /// <exception cref="ArgumentNullException">The text is <see langword="null"/>.</exception>
    public static ThermalTime Parse(string s, IFormatProvider? provider) => Notation.Parse(Guard.NotNull(s), provider);

    /// <summary>Reads a sum of degree-days in °C·d or °F·d, where the text is one.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">The culture, or <see langword="null"/> for the invariant one; never that of the machine.</param>
    /// <param name="result">The sum.</param>
    /// <returns>Whether the text is a sum of degree-days.</returns>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out ThermalTime result) =>
        Notation.TryParse(s, provider, out result);

    /// <inheritdoc cref="TryParse(ReadOnlySpan{char}, IFormatProvider?, out ThermalTime)"/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out ThermalTime result) =>
        Notation.TryParse(s, provider, out result);

    /// <summary>The result of arithmetic, which can overflow.</summary>
    private static ThermalTime Made(double celsiusDays) => double.IsFinite(celsiusDays)
        ? new ThermalTime(celsiusDays)
        : throw new OverflowException("A sum of degree-days is too large for a number.");

    private static double NotZero(double divisor, string what) =>
        divisor != 0 ? divisor : throw new DivideByZeroException($"A sum of degree-days was divided by {what}.");
}
