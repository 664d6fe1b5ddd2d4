using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>One batch of a mix: how much concentrate, how much water, and what they make.</summary>
/// <remarks>
/// Volumes are taken to add up, which holds for dilute mixes in water. Strong alcohol and water shrink by a few per cent
/// when they meet; make such a mix up to its mark instead of adding the water printed here. Immutable; equal when all
/// members are equal.
/// </remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record MixBatch : IFormattable, IDisplayable
{
    /// <summary>Describes a batch.</summary>
    /// <param name="concentrate">The volume of concentrate; more than 0.</param>
    /// <param name="water">The volume of water or another diluent; 0 or more.</param>
    /// <param name="strength">
    /// The strength of the finished mix, or <see langword="null"/> where that of the concentrate was not given.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">A volume is not finite, or is outside what is allowed.</exception>
    public MixBatch(Volume concentrate, Volume water, Strength? strength = null)
    {
        Guard.Positive(Boundary.Litres(concentrate), "L", nameof(concentrate));
        Guard.NotNegative(Boundary.Litres(water), "L", nameof(water));
        Concentrate = HouseUnits.Normalise(concentrate);
        Water = HouseUnits.Normalise(water);
        Strength = strength;
    }

    /// <summary>The volume of concentrate.</summary>
    public Volume Concentrate { get; }

    /// <summary>The volume of water or another diluent.</summary>
    public Volume Water { get; }

    /// <summary>The strength of the finished mix, or <see langword="null"/> where that of the concentrate was not given.</summary>
    public Strength? Strength { get; }

    /// <summary>The volume of the finished mix: concentrate and water together.</summary>
    [JsonIgnore]
    public Volume Total => Volume.FromLiters(Boundary.Litres(Concentrate) + Boundary.Litres(Water));

    /// <summary>The ratio of the mix.</summary>
    [JsonIgnore]
    public MixRatio Ratio => MixRatio.PartsToParts(Boundary.Litres(Concentrate), Boundary.Litres(Water));

    /// <summary>The batch in metric units and invariant culture.</summary>
    /// <returns>One line: concentrate, water, total, ratio, strength.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The batch as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: concentrate, water, total, ratio, strength.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        string strength = Strength is null ? "" : $"; {Strength.ToString(style.Format, style.Culture)}";
        return $"{QuantityText.Of(Concentrate, style)} of concentrate and {QuantityText.Of(Water, style)} of water make "
            + $"{QuantityText.Of(Total, style)} ({Ratio.ToString(null, style.Culture)}){strength}";
    }

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"{QuantityText.Of(Total, style)} of mix")
    {
        Rows =
        [
            new DisplayRow("concentrate", QuantityText.Of(Concentrate, style)),
            new DisplayRow("water", QuantityText.Of(Water, style)),
            new DisplayRow("ratio", Ratio.ToString(null, style.Culture)),
            .. Strength is null ? (DisplayRow[])[] : [new DisplayRow("strength", Strength.ToString(style.Format, style.Culture))],
        ],
    };
}
