using System.Globalization;
using UnitsNet;

namespace HortiCalc.Units;

/// <summary>A sum of degree-days: a temperature difference times a time.</summary>
/// <remarks>
/// It is an interval, so that one Celsius-day is 1.8 Fahrenheit-days, without the offset of the thermometer's zero.
/// May be negative as a difference of two sums. The default value is zero.
/// </remarks>
public readonly record struct ThermalTime : IComparable<ThermalTime>, IFormattable
{
    private ThermalTime(double celsiusDays) => CelsiusDays = celsiusDays;

    /// <summary>No degree-days.</summary>
    public static ThermalTime Zero => default;

    /// <summary>The sum in degrees Celsius times days.</summary>
    public double CelsiusDays { get; }

    /// <summary>The sum in degrees Fahrenheit times days.</summary>
    public double FahrenheitDays => CelsiusDays * Boundary.FahrenheitPerCelsius;

    /// <summary>A sum of Celsius-days.</summary>
    /// <param name="value">A finite number.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static ThermalTime FromCelsiusDays(double value) => new(Finite(value, "°C·d"));

    /// <summary>A sum of Fahrenheit-days.</summary>
    /// <param name="value">A finite number.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static ThermalTime FromFahrenheitDays(double value) => new(Finite(value, "°F·d") / Boundary.FahrenheitPerCelsius);

    /// <summary>A temperature difference held for a time.</summary>
    /// <param name="difference">The difference.</param>
    /// <param name="time">The time.</param>
    /// <returns>Their product.</returns>
    public static ThermalTime From(TemperatureDelta difference, Duration time) =>
        new(Boundary.CelsiusDegrees(difference) * Boundary.Days(time));

    /// <summary>Adds two sums.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The total.</returns>
    public static ThermalTime operator +(ThermalTime left, ThermalTime right) => new(left.CelsiusDays + right.CelsiusDays);

    /// <summary>Takes one sum from another.</summary>
    /// <param name="left">The sum to subtract from.</param>
    /// <param name="right">The sum to subtract.</param>
    /// <returns>The difference; may be negative.</returns>
    public static ThermalTime operator -(ThermalTime left, ThermalTime right) => new(left.CelsiusDays - right.CelsiusDays);

    /// <summary>Scales a sum.</summary>
    /// <param name="sum">The sum.</param>
    /// <param name="factor">A finite number.</param>
    /// <returns>The scaled sum.</returns>
    public static ThermalTime operator *(ThermalTime sum, double factor) => FromCelsiusDays(sum.CelsiusDays * factor);

    /// <summary>How many times one sum goes into another.</summary>
    /// <param name="left">The sum to divide.</param>
    /// <param name="right">The sum to divide by; not zero.</param>
    /// <returns>A plain number.</returns>
    /// <exception cref="DivideByZeroException">The divisor is zero.</exception>
    public static double operator /(ThermalTime left, ThermalTime right) => right.CelsiusDays != 0
        ? left.CelsiusDays / right.CelsiusDays
        : throw new DivideByZeroException("A sum of degree-days was divided by zero.");

    /// <summary>Adds two sums.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The total.</returns>
    public static ThermalTime Add(ThermalTime left, ThermalTime right) => left + right;

    /// <summary>Takes one sum from another.</summary>
    /// <param name="left">The sum to subtract from.</param>
    /// <param name="right">The sum to subtract.</param>
    /// <returns>The difference; may be negative.</returns>
    public static ThermalTime Subtract(ThermalTime left, ThermalTime right) => left - right;

    /// <summary>Scales a sum.</summary>
    /// <param name="sum">The sum.</param>
    /// <param name="factor">A finite number.</param>
    /// <returns>The scaled sum.</returns>
    public static ThermalTime Multiply(ThermalTime sum, double factor) => sum * factor;

    /// <summary>How many times one sum goes into another.</summary>
    /// <param name="left">The sum to divide.</param>
    /// <param name="right">The sum to divide by; not zero.</param>
    /// <returns>A plain number.</returns>
    /// <exception cref="DivideByZeroException">The divisor is zero.</exception>
    public static double Divide(ThermalTime left, ThermalTime right) => left / right;

    /// <summary>Whether one sum is smaller than the other.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The comparison of the numbers.</returns>
    public static bool operator <(ThermalTime left, ThermalTime right) => left.CelsiusDays < right.CelsiusDays;

    /// <summary>Whether one sum is larger than the other.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The comparison of the numbers.</returns>
    public static bool operator >(ThermalTime left, ThermalTime right) => left.CelsiusDays > right.CelsiusDays;

    /// <summary>Whether one sum is at most the other.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The comparison of the numbers.</returns>
    public static bool operator <=(ThermalTime left, ThermalTime right) => left.CelsiusDays <= right.CelsiusDays;

    /// <summary>Whether one sum is at least the other.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The comparison of the numbers.</returns>
    public static bool operator >=(ThermalTime left, ThermalTime right) => left.CelsiusDays >= right.CelsiusDays;

    /// <inheritdoc/>
    public int CompareTo(ThermalTime other) => CelsiusDays.CompareTo(other.CelsiusDays);

    /// <summary>The sum in Celsius-days and invariant culture.</summary>
    /// <returns>For instance <c>812.5 °C·d</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The sum as text, rounded to one decimal.</summary>
    /// <param name="format"><c>M</c> or nothing for Celsius-days, <c>U</c> for Fahrenheit-days.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The number and the unit.</returns>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        IFormatProvider culture = formatProvider ?? CultureInfo.InvariantCulture;
        return format is "U" or "u"
            ? FahrenheitDays.ToString("0.#", culture) + " °F·d"
            : CelsiusDays.ToString("0.#", culture) + " °C·d";
    }

    private static double Finite(double value, string unit) =>
        double.IsFinite(value) ? value : throw Guard.Refused(nameof(value), value, unit, "a finite number");
}
