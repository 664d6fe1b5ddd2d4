using HortiCalc.Display;
using HortiCalc.Units;

namespace HortiCalc.Containers;

/// <summary>A parameter that was fitted, with its standard error.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record FittedParameter
{
    /// <summary>Holds a parameter.</summary>
    /// <param name="name">Its name, with its unit where it has one; shares are of the volume, from 0 to 1.</param>
    /// <param name="value">Its value.</param>
    /// <param name="standardError">Its standard error, in the same unit; zero or more.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite, or the error is negative.</exception>
    public FittedParameter(string name, double value, double standardError)
    {
        Name = Guard.NotBlank(name);
        Value = Guard.Finite(value, "");
        StandardError = Guard.NotNegative(standardError, "");
    }

    /// <summary>Its name, with its unit where it has one.</summary>
    public string Name { get; }

    /// <summary>Its value.</summary>
    public double Value { get; }

    /// <summary>Its standard error, in the same unit.</summary>
    public double StandardError { get; }

    /// <summary>The parameter in invariant culture.</summary>
    /// <returns>For instance <c>n: 1.8 ± 0.1</c>.</returns>
    public override string ToString() => $"{Name}: {QuantityText.Number(Value, TextStyle.Default)} ± {QuantityText.Number(StandardError, TextStyle.Default)}";
}
