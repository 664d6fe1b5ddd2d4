using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>What is poured to what: the liquid there is, the concentrate and the water that are added, and what they make.</summary>
/// <remarks>Volumes are taken to add up, as in <see cref="MixBatch"/>. Immutable; equal when all members are equal.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record MixBlend : IFormattable, IDisplayable
{
    /// <summary>Describes a blend.</summary>
    /// <param name="present">The liquid that is there already, or the first of two; 0 or more.</param>
    /// <param name="concentrate">The concentrate that is added, or the second of two; 0 or more.</param>
    /// <param name="water">The water that is added; 0 or more.</param>
    /// <param name="strength">The strength of the whole.</param>
    /// <exception cref="ArgumentOutOfRangeException">A volume is negative, or all are 0.</exception>
    public MixBlend(Volume present, Volume concentrate, Volume water, Strength strength)
    {
        double presentLitres = Guard.NotNegative(Boundary.Litres(present), "L", nameof(present));
        double concentrateLitres = Guard.NotNegative(Boundary.Litres(concentrate), "L", nameof(concentrate));
        double waterLitres = Guard.NotNegative(Boundary.Litres(water), "L", nameof(water));
        Guard.Positive(presentLitres + concentrateLitres + waterLitres, "L in all", nameof(water));
        Present = HouseUnits.Normalise(present);
        Concentrate = HouseUnits.Normalise(concentrate);
        Water = HouseUnits.Normalise(water);
        Strength = Guard.NotNull(strength);
    }

    /// <summary>The liquid that is there already, or the first of two.</summary>
    public Volume Present { get; }

    /// <summary>The concentrate that is added, or the second of two.</summary>
    public Volume Concentrate { get; }

    /// <summary>The water that is added.</summary>
    public Volume Water { get; }

    /// <summary>The strength of the whole.</summary>
    public Strength Strength { get; }

    /// <summary>The volume of the whole.</summary>
    [JsonIgnore]
    public Volume Total => Volume.FromLiters(Boundary.Litres(Present) + Boundary.Litres(Concentrate) + Boundary.Litres(Water));

    /// <summary>The blend in metric units and invariant culture.</summary>
    /// <returns>One line: what is there, what is added, total, strength.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The blend as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: what is there, what is added, total, strength.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        string[] added =
        [
            .. Boundary.Litres(Concentrate) > 0 ? (string[])[$"{QuantityText.Of(Concentrate, style)} of concentrate"] : [],
            .. Boundary.Litres(Water) > 0 ? (string[])[$"{QuantityText.Of(Water, style)} of water"] : [],
        ];
        string with = added.Length == 0 ? "nothing" : string.Join(" and ", added);
        return $"{QuantityText.Of(Present, style)} with {with} make {QuantityText.Of(Total, style)}; {Strength.ToString(style.Format, style.Culture)}";
    }

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"{QuantityText.Of(Total, style)} of mix")
    {
        Rows =
        [
            new DisplayRow("there already", QuantityText.Of(Present, style)),
            new DisplayRow("add concentrate", QuantityText.Of(Concentrate, style)),
            new DisplayRow("add water", QuantityText.Of(Water, style)),
            new DisplayRow("strength", Strength.ToString(style.Format, style.Culture)),
        ],
    };
}
