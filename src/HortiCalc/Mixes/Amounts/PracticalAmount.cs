using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>An amount brought to measures that people own, with the error that this causes.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record PracticalAmount : IFormattable, IDisplayable
{
    /// <summary>Describes an amount.</summary>
    /// <param name="wanted">The volume that was wanted; more than 0.</param>
    /// <param name="measures">What to measure; at least one.</param>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0.</exception>
    /// <exception cref="ArgumentException">There is nothing to measure.</exception>
    public PracticalAmount(Volume wanted, IReadOnlyList<MeasureCount> measures)
    {
        Guard.Positive(Boundary.Litres(wanted) * 1000, "mL", nameof(wanted));
        Wanted = HouseUnits.Normalise(wanted);
        Measures = ValueList<MeasureCount>.Of(Guard.NotNull(measures));
        if (Measures.Count == 0)
            throw new ArgumentException("measures was empty; allowed: at least one.", nameof(measures));
    }

    /// <summary>The volume that was wanted.</summary>
    public Volume Wanted { get; }

    /// <summary>What to measure, the largest first.</summary>
    public IReadOnlyList<MeasureCount> Measures { get; }

    /// <summary>The volume that these measures hold.</summary>
    [JsonIgnore]
    public Volume Measured => Volume.FromLiters(Measures.Sum(part => Boundary.Litres(part.Volume)));

    /// <summary>How much too much this is, as a share of what was wanted; negative where it is too little.</summary>
    [JsonIgnore]
    public Ratio Error => Ratio.FromPercent(100 * ((Boundary.Litres(Measured) / Boundary.Litres(Wanted)) - 1));

    /// <summary>The amount in metric units and invariant culture.</summary>
    /// <returns>For instance <c>1 US fluid ounce (29.6 mL for 30 mL, 1.42 % too little)</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The amount as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The measures, what they hold, what was wanted and the error.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        return $"{MeasuresText} ({QuantityText.Of(Measured, style)} for {QuantityText.Of(Wanted, style)}, {ErrorText(style)})";
    }

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(MeasuresText)
    {
        Rows =
        [
            new DisplayRow("holds", QuantityText.Of(Measured, style)),
            new DisplayRow("wanted", QuantityText.Of(Wanted, style)),
            new DisplayRow("error", ErrorText(style)),
        ],
    };

    private string MeasuresText => string.Join(" and ", Measures);

    private string ErrorText(TextStyle style)
    {
        double percent = Boundary.Fraction(Error) * 100;
        return Math.Abs(percent) < 0.005
            ? "exact"
            : $"{QuantityText.Number(Math.Abs(percent), style)} % too {(percent > 0 ? "much" : "little")}";
    }
}
