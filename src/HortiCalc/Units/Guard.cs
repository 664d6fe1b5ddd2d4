using System.Diagnostics;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Runtime.CompilerServices;

namespace HortiCalc.Units;

/// <summary>
/// The argument checks of every public function. Each returns the value it was given, so that a check and a
/// conversion read as one line, and each message names the parameter, the value with its unit and the allowed range.
/// </summary>
[StackTraceHidden]
internal static class Guard
{
    public static double Finite(double value, string unit, [CallerArgumentExpression(nameof(value))] string parameter = "") =>
        double.IsFinite(value) ? value : throw Refused(parameter, value, unit, "a finite number");

    public static double Positive(double value, string unit, [CallerArgumentExpression(nameof(value))] string parameter = "") =>
        value > 0 && double.IsFinite(value) ? value : throw Refused(parameter, value, unit, "greater than 0" + Suffix(unit));

    public static double NotNegative(double value, string unit, [CallerArgumentExpression(nameof(value))] string parameter = "") =>
        value >= 0 && double.IsFinite(value) ? value : throw Refused(parameter, value, unit, "0" + Suffix(unit) + " or more");

    public static double AtLeast(double value, double low, string unit, [CallerArgumentExpression(nameof(value))] string parameter = "") =>
        value >= low && double.IsFinite(value) ? value : throw Refused(parameter, value, unit, Number(low) + Suffix(unit) + " or more");

    /// <summary>Both ends are allowed.</summary>
    public static double Within(
        double value, double low, double high, string unit, [CallerArgumentExpression(nameof(value))] string parameter = "") =>
        value >= low && value <= high
            ? value
            : throw Refused(parameter, value, unit, $"from {Number(low)} to {Number(high)}{Suffix(unit)}");

    /// <summary>Neither end is allowed.</summary>
    public static double Between(
        double value, double low, double high, string unit, [CallerArgumentExpression(nameof(value))] string parameter = "") =>
        value > low && value < high
            ? value
            : throw Refused(parameter, value, unit, $"above {Number(low)} and below {Number(high)}{Suffix(unit)}");

    public static int AtLeast(int value, int low, [CallerArgumentExpression(nameof(value))] string parameter = "") =>
        value >= low ? value : throw Refused(parameter, value, "", Number(low) + " or more");

    public static TEnum Defined<TEnum>(TEnum value, [CallerArgumentExpression(nameof(value))] string parameter = "")
        where TEnum : struct, Enum =>
        Enum.IsDefined(value)
            ? value
            : throw new ArgumentOutOfRangeException(
                parameter, $"{parameter} was {value:D}; allowed: {string.Join(", ", Enum.GetNames<TEnum>())}.");

    public static string NotBlank([NotNull] string? value, [CallerArgumentExpression(nameof(value))] string parameter = "")
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(value, parameter);
        return value;
    }

    public static T NotNull<T>([NotNull] T? value, [CallerArgumentExpression(nameof(value))] string parameter = "")
        where T : class
    {
        ArgumentNullException.ThrowIfNull(value, parameter);
        return value;
    }

    /// <summary>The exception for a value outside what is allowed; for checks that the methods above do not cover.</summary>
    public static ArgumentOutOfRangeException Refused(string parameter, double value, string unit, string allowed) =>
        new(parameter, $"{parameter} was {Number(value)}{Suffix(unit)}; allowed: {allowed}.");

    /// <summary>The sentence of a refusal, without the parameter's name that the runtime puts behind it and the value in a second line.</summary>
    public static string Sentence(ArgumentException refusal) =>
        refusal.Message.ReplaceLineEndings("\n").Split('\n')[0].Replace($" (Parameter '{refusal.ParamName}')", "", StringComparison.Ordinal);

    public static string Number(double value) => value.ToString("G10", CultureInfo.InvariantCulture);

    private static string Suffix(string unit) => unit.Length == 0 ? "" : " " + unit;
}
