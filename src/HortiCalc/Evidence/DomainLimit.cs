using System.Text.Json.Serialization;
using HortiCalc.Units;

namespace HortiCalc.Evidence;

/// <summary>The values of one input that a method was published for, both ends included.</summary>
public sealed record DomainLimit
{
    /// <summary>Describes the values of one input that a method was published for.</summary>
    /// <param name="parameter">The input, by the name of the parameter that takes it.</param>
    /// <param name="low">The lowest value, or negative infinity where there is none.</param>
    /// <param name="high">The highest value, or positive infinity where there is none.</param>
    /// <param name="unit">The unit of both, as the trade writes it; empty for a plain number.</param>
    /// <exception cref="ArgumentOutOfRangeException">An end is not a number, or the low end is above the high one.</exception>
    public DomainLimit(string parameter, double low, double high, string unit)
    {
        Parameter = Guard.NotBlank(parameter);
        Unit = Guard.NotNull(unit);
        if (double.IsNaN(low) || !(low <= high))
            throw Guard.Refused(nameof(low), low, unit, $"not above the high end, {Guard.Number(high)}");
        Low = low;
        High = high;
    }

    /// <summary>The input, by the name of the parameter that takes it.</summary>
    public string Parameter { get; }

    /// <summary>The lowest value, in <see cref="Unit"/>.</summary>
    [JsonNumberHandling(JsonNumberHandling.AllowNamedFloatingPointLiterals)]
    public double Low { get; }

    /// <summary>The highest value, in <see cref="Unit"/>.</summary>
    [JsonNumberHandling(JsonNumberHandling.AllowNamedFloatingPointLiterals)]
    public double High { get; }

    /// <summary>The unit of both ends; empty for a plain number.</summary>
    public string Unit { get; }

    /// <summary>Whether the method was published for this value.</summary>
    /// <param name="value">The value, in <see cref="Unit"/>.</param>
    /// <returns><see langword="true"/> from <see cref="Low"/> to <see cref="High"/>, both included.</returns>
    public bool Contains(double value) => value >= Low && value <= High;

    /// <summary>The limit in words.</summary>
    /// <returns>For instance <c>current from 5 to 6.5 pH</c>.</returns>
    public override string ToString() => $"{Parameter} {Span}";

    internal string Span
    {
        get
        {
            string unit = Unit.Length == 0 ? "" : " " + Unit;
            return (double.IsInfinity(Low), double.IsInfinity(High)) switch
            {
                (true, true) => "without limit",
                (true, false) => $"up to {Guard.Number(High)}{unit}",
                (false, true) => $"from {Guard.Number(Low)}{unit}",
                _ => $"from {Guard.Number(Low)} to {Guard.Number(High)}{unit}",
            };
        }
    }
}
