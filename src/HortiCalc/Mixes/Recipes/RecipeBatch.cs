using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>The amounts of a recipe for one batch, with all that the recipe says.</summary>
/// <remarks>Immutable; equal when all members are equal. Ranges are those that the recipe's source prints.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record RecipeBatch : IFormattable, IDisplayable
{
    /// <summary>Describes a batch.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="amounts">The ingredients apart from water.</param>
    /// <param name="water">The water.</param>
    /// <param name="totalLow">The volume of the finished mix at the low doses; more than 0.</param>
    /// <param name="totalHigh">The volume of the finished mix at the high doses; the same where there is no range.</param>
    /// <exception cref="ArgumentOutOfRangeException">A volume is outside what is allowed.</exception>
    public RecipeBatch(MixRecipe recipe, IReadOnlyList<MixAmount> amounts, VolumeAmount water, Volume totalLow, Volume totalHigh)
    {
        Recipe = Guard.NotNull(recipe);
        Amounts = ValueList<MixAmount>.Of(Guard.NotNull(amounts));
        Water = Guard.NotNull(water);
        double lowLitres = Guard.Positive(Boundary.Litres(totalLow), "L", nameof(totalLow));
        Guard.AtLeast(Boundary.Litres(totalHigh), lowLitres, "L", nameof(totalHigh));
        TotalLow = HouseUnits.Normalise(totalLow);
        TotalHigh = HouseUnits.Normalise(totalHigh);
    }

    /// <summary>The recipe, with its source, uses, contact time and rinse.</summary>
    public MixRecipe Recipe { get; }

    /// <summary>The ingredients apart from water.</summary>
    public IReadOnlyList<MixAmount> Amounts { get; }

    /// <summary>The water: as much as fills the volume asked for, or what was given.</summary>
    public VolumeAmount Water { get; }

    /// <summary>The volume of the finished mix at the low doses.</summary>
    public Volume TotalLow { get; }

    /// <summary>The volume of the finished mix at the high doses; the same where there is no range.</summary>
    public Volume TotalHigh { get; }

    /// <summary>The least time that surfaces must stay wet or under, or <see langword="null"/> where the source prints none.</summary>
    [JsonIgnore]
    public Duration? ContactTime => Recipe.ContactTime;

    /// <summary>What to take care of.</summary>
    [JsonIgnore]
    public IReadOnlyList<Caution> Cautions => Recipe.Cautions;

    /// <summary>The batch in metric units and invariant culture.</summary>
    /// <returns>One line: amounts, water, total, contact time, source, number of cautions.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The batch as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: amounts, water, total, contact time, source, number of cautions.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        string amounts = string.Join(", ", Amounts.Select(amount => amount.ToString(style.Format, style.Culture)));
        string water = IsUndiluted ? "" : $" and {Water.ToString(style.Format, style.Culture)}";
        string contact = ContactTime is Duration time ? $"; leave for at least {QuantityText.Of(time, style)}" : "";
        string cautions = Cautions.Count == 1 ? "1 caution" : $"{Cautions.Count} cautions";
        return $"{amounts}{water} make {Total(style)}{contact}; {Recipe}; {cautions}";
    }

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"{Recipe.Name}: {Total(style)}")
    {
        Rows =
        [
            .. Cautions.Where(caution => caution.Level == CautionLevel.Danger).Select(Row),
            .. Amounts.Select(amount => new DisplayRow(amount.Ingredient.Name, amount.Span(style))),
            .. IsUndiluted ? (DisplayRow[])[] : [new DisplayRow(Water.Ingredient.Name, Water.Span(style))],
            .. ContactTime is Duration time ? [new DisplayRow("leave for at least", QuantityText.Of(time, style))] : (DisplayRow[])[],
            .. Recipe.Rinse switch
            {
                RinseAdvice.Rinse => [new DisplayRow("afterwards", "rinse with clean water")],
                RinseAdvice.RinseMetal => [new DisplayRow("afterwards", "rinse metal with clean water")],
                RinseAdvice.DoNotRinse => [new DisplayRow("afterwards", "let it dry, do not rinse")],
                _ => (DisplayRow[])[],
            },
            .. Cautions.Where(caution => caution.Level != CautionLevel.Danger).Select(Row),
            new DisplayRow("source", Recipe.Source.ToString()),
        ],
    };

    internal bool IsUndiluted => Boundary.Litres(Water.High) == 0;

    private static DisplayRow Row(Caution caution) => new(caution.LevelWord, caution.Sentence);

    private string Total(TextStyle style)
    {
        string low = QuantityText.Of(TotalLow, style);
        string high = QuantityText.Of(TotalHigh, style);
        return low == high ? low : $"{low} to {high}";
    }
}
