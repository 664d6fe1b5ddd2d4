using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>A class of a hardiness scheme, and the temperatures it spans.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record HardinessClass : IFormattable
{
    /// <summary>Describes a class.</summary>
    /// <param name="name">Its name, such as <c>7b</c> or <c>H4</c>.</param>
    /// <param name="from">Its lower bound, which belongs to it; <see langword="null"/> where it has none.</param>
    /// <param name="to">Its upper bound, which belongs to the next class; <see langword="null"/> where it has none.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The upper bound is not above the lower one.</exception>
    public HardinessClass(string name, Temperature? from, Temperature? to)
    {
        Name = Guard.NotBlank(name);
        From = from is Temperature low ? HouseUnits.Normalise(low) : null;
        To = to is Temperature high ? HouseUnits.Normalise(high) : null;
        if (From is Temperature lower && To is Temperature upper && !(Boundary.Celsius(upper) > Boundary.Celsius(lower)))
            throw Guard.Refused(nameof(to), Boundary.Celsius(upper), "°C", $"above {Guard.Number(Boundary.Celsius(lower))} °C");
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Its lower bound, which belongs to it.</summary>
    public Temperature? From { get; }

    /// <summary>Its upper bound, which belongs to the next class.</summary>
    public Temperature? To { get; }

    /// <summary>The class in metric units and invariant culture.</summary>
    /// <returns>For instance <c>7b: -15 °C to -12.2 °C</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The class as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The name and the bounds.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style) => (From, To) switch
    {
        ({ } low, { } high) => $"{Name}: {QuantityText.Of(low, style)} to {QuantityText.Of(high, style)}",
        ({ } low, null) => $"{Name}: {QuantityText.Of(low, style)} or warmer",
        (null, { } high) => $"{Name}: below {QuantityText.Of(high, style)}",
        _ => Name,
    };
}
