using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Plants;

/// <summary>The temperatures that bound and shape the rate of germination: base, optimum and ceiling.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. They are fitted: the base is where the rate comes to nothing, which lies below the lowest
/// temperature that a seed bag would call a minimum.
/// </remarks>
public sealed record CardinalTemperatures : IFormattable
{
    /// <summary>Holds the temperatures.</summary>
    /// <param name="base">The temperature at and below which nothing happens, from -60 to 90 °C.</param>
    /// <param name="lowerOptimum">Where germination is fastest, or where the fastest span begins; <see langword="null"/> where not known.</param>
    /// <param name="upperOptimum">
    /// Where the fastest span ends; <see langword="null"/> for the same as <paramref name="lowerOptimum"/>, which is no span.
    /// </param>
    /// <param name="ceiling">The temperature at and above which nothing happens; <see langword="null"/> where not known.</param>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is not above the one before it.</exception>
    /// <exception cref="ArgumentException">There is an upper optimum without a lower one.</exception>
    public CardinalTemperatures(Temperature @base, Temperature? lowerOptimum = null, Temperature? upperOptimum = null, Temperature? ceiling = null)
    {
        Base = HouseUnits.Normalise(@base);
        BaseCelsius = SeedbedTemperature.Celsius(Base, nameof(@base));
        if (upperOptimum is not null && lowerOptimum is null)
            throw new ArgumentException("upperOptimum was given without a lower one; allowed: both, the lower alone, or none.", nameof(upperOptimum));
        LowerOptimum = Kept(lowerOptimum, BaseCelsius, nameof(lowerOptimum));
        LowerOptimumCelsius = Celsius(LowerOptimum);
        UpperOptimum = upperOptimum is null ? LowerOptimum : NotBelow(upperOptimum.Value, LowerOptimumCelsius!.Value);
        UpperOptimumCelsius = Celsius(UpperOptimum);
        Ceiling = Kept(ceiling, UpperOptimumCelsius ?? BaseCelsius, nameof(ceiling));
        CeilingCelsius = Celsius(Ceiling);
    }

    /// <summary>The temperature at and below which nothing happens.</summary>
    public Temperature Base { get; }

    /// <summary>Where germination is fastest, or where the fastest span begins; <see langword="null"/> where not known.</summary>
    public Temperature? LowerOptimum { get; }

    /// <summary>Where the fastest span ends; the same as <see cref="LowerOptimum"/> where there is no span.</summary>
    public Temperature? UpperOptimum { get; }

    /// <summary>The temperature at and above which nothing happens; <see langword="null"/> where not known.</summary>
    public Temperature? Ceiling { get; }

    internal double BaseCelsius { get; }

    internal double? LowerOptimumCelsius { get; }

    internal double? UpperOptimumCelsius { get; }

    internal double? CeilingCelsius { get; }

    /// <summary>The temperatures in °C and invariant culture.</summary>
    /// <returns>For instance <c>base 5 °C, optimum 12.5 °C to 25 °C, ceiling 40.1 °C</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The temperatures as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for °C, <c>U</c> for °F.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>Base, optimum and ceiling, as far as they are known.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    internal string ToString(TextStyle style)
    {
        string optimum = LowerOptimum is not Temperature low ? ""
            : LowerOptimumCelsius == UpperOptimumCelsius ? $", optimum {QuantityText.Of(low, style)}"
            : $", optimum {QuantityText.Of(low, style)} to {QuantityText.Of(UpperOptimum!, style)}";
        string ceiling = Ceiling is Temperature high ? $", ceiling {QuantityText.Of(high, style)}" : "";
        return $"base {QuantityText.Of(Base, style)}{optimum}{ceiling}";
    }

    private static double? Celsius(Temperature? value) => value is Temperature temperature ? Boundary.Celsius(temperature) : null;

    private static Temperature? Kept(Temperature? value, double aboveCelsius, string parameter)
    {
        if (value is not Temperature given)
            return null;
        Temperature kept = HouseUnits.Normalise(given);
        double celsius = SeedbedTemperature.Celsius(kept, parameter);
        return celsius > aboveCelsius ? kept : throw Guard.Refused(parameter, celsius, "°C", $"above {Guard.Number(aboveCelsius)} °C");
    }

    private static Temperature NotBelow(Temperature upperOptimum, double lowerCelsius)
    {
        Temperature kept = HouseUnits.Normalise(upperOptimum);
        Guard.AtLeast(SeedbedTemperature.Celsius(kept, nameof(upperOptimum)), lowerCelsius, "°C", nameof(upperOptimum));
        return kept;
    }
}
