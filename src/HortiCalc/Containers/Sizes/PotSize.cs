using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>The volume that a source gives for pots of a certain name.</summary>
/// <remarks>
/// A name is not geometry: "15 L" pots have been measured to hold 20 L brimful, and a "5 gallon" trade pot holds less than four
/// gallons. Immutable; equal when all members are equal.
/// </remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record PotSize : IFormattable, IDisplayable
{
    /// <summary>Describes a size.</summary>
    /// <param name="name">What such pots are called.</param>
    /// <param name="volume">The volume the source gives; greater than zero.</param>
    /// <param name="source">Where it comes from.</param>
    /// <param name="shape">The inside dimensions, where the source prints them; else <see langword="null"/>.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not greater than zero.</exception>
    public PotSize(string name, Volume volume, Source source, Container? shape = null)
    {
        Name = Guard.NotBlank(name);
        Guard.Positive(Boundary.Litres(volume), "L", nameof(volume));
        Volume = HouseUnits.Normalise(volume);
        Source = Guard.NotNull(source);
        Shape = shape;
    }

    /// <summary>What such pots are called.</summary>
    public string Name { get; }

    /// <summary>The volume the source gives.</summary>
    public Volume Volume { get; }

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }

    /// <summary>The inside dimensions, where the source prints them; else <see langword="null"/>.</summary>
    public Container? Shape { get; }

    /// <summary>The volume with its evidence.</summary>
    /// <returns>The estimate; no range, since no source prints one.</returns>
    public Estimate<Volume> ToEstimate() => new(
        Volume,
        new Method("pot-size." + Source.Key, $"volume given for {Name} pots", Source, new Domain("pots of that trade and time")));

    /// <summary>The size in metric units and invariant culture.</summary>
    /// <returns>For instance <c>#1: 2.8 L [source]</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The size as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>Name, volume and source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"{Name}: {QuantityText.Of(Volume, style)}")
    {
        Rows =
        [
            .. Shape is null ? (DisplayRow[])[] : [new DisplayRow("shape", QuantityText.Of(Shape, style))],
            new DisplayRow("source", Source.ToString()),
        ],
    };

    private string ToString(TextStyle style) => $"{Name}: {QuantityText.Of(Volume, style)} [{Source}]";
}
