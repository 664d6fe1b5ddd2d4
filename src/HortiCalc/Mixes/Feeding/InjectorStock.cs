using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>What to weigh into the tank of an injector, for a feed of a given strength.</summary>
/// <remarks>Immutable; equal by value.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record InjectorStock : IFormattable, IDisplayable
{
    /// <summary>Describes the tank of an injector.</summary>
    /// <param name="product">What to weigh; 0 or more.</param>
    /// <param name="stock">The volume of the tank; more than 0.</param>
    /// <param name="injector">How much the injector dilutes it.</param>
    /// <param name="feed">What the feed holds.</param>
    /// <param name="solubility">How much of the product a litre of its solution holds, or <see langword="null"/> where it is not known.</param>
    /// <exception cref="ArgumentOutOfRangeException">A volume or mass is outside what is allowed.</exception>
    public InjectorStock(Mass product, Volume stock, MixRatio injector, FeedStrength feed, MassConcentration? solubility = null)
    {
        Guard.NotNegative(Boundary.Kilograms(product), "kg", nameof(product));
        Guard.Positive(Boundary.Litres(stock), "L", nameof(stock));
        Product = HouseUnits.Normalise(product);
        Stock = HouseUnits.Normalise(stock);
        Injector = injector;
        Feed = Guard.NotNull(feed);
        if (solubility is MassConcentration most)
        {
            Guard.Positive(Boundary.MilligramsPerLitre(most) / 1000, "g/L", nameof(solubility));
            Solubility = HouseUnits.Normalise(most);
        }
    }

    /// <summary>What to weigh.</summary>
    public Mass Product { get; }

    /// <summary>The volume of the tank.</summary>
    public Volume Stock { get; }

    /// <summary>How much the injector dilutes it.</summary>
    public MixRatio Injector { get; }

    /// <summary>What the feed holds.</summary>
    public FeedStrength Feed { get; }

    /// <summary>How much of the product a litre of its solution holds, or <see langword="null"/> where it is not known.</summary>
    public MassConcentration? Solubility { get; }

    /// <summary>The mass of the product per volume of the tank.</summary>
    [JsonIgnore]
    public MassConcentration Strength =>
        MassConcentration.FromMilligramsPerLiter(Boundary.Kilograms(Product) * 1_000_000 / Boundary.Litres(Stock));

    /// <summary>Whether it dissolves, or <see langword="null"/> where the solubility is not known.</summary>
    [JsonIgnore]
    public bool? Dissolves => Solubility is MassConcentration most
        ? Boundary.MilligramsPerLitre(Strength) <= Boundary.MilligramsPerLitre(most)
        : null;

    /// <summary>What to take care of.</summary>
    [JsonIgnore]
    public IReadOnlyList<Caution> Cautions => ValueList<Caution>.Of(
        [.. Dissolves == false ? [FeedingCautions.TooStrong] : (Caution[])[], FeedingCautions.LabelDecides, FeedingCautions.MeterFirst]);

    /// <summary>The tank in metric units and invariant culture.</summary>
    /// <returns>One line: mass, tank, ratio, feed.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The tank as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: mass, tank, ratio, feed.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        return $"{QuantityText.Of(Product, style)} in {QuantityText.Of(Stock, style)}, one in {Injector.Factor.ToString("G6", style.Culture)} of the feed; "
            + Feed.ToString(style.Format, style.Culture) + (Dissolves == false ? "; too strong to dissolve" : "");
    }

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"{QuantityText.Of(Product, style)} in {QuantityText.Of(Stock, style)} of stock")
    {
        Rows =
        [
            new DisplayRow("injector", Injector.ToString(null, style.Culture)),
            new DisplayRow("feed", Feed.ToString(style.Format, style.Culture)),
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
        ],
    };
}
