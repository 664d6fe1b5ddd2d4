using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>The components of a batch of mix, and what to take care of when mixing it.</summary>
/// <remarks>Immutable; equal when recipe, volume and loss are equal.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record MediumBatch : IFormattable, IDisplayable
{
    /// <summary>Works out the components of a batch.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="volume">The volume of the finished mix; zero or more.</param>
    /// <param name="mixingLoss">The share of the components' summed volume that is gone after mixing; zero or more, below 100
    /// %.</param>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative, or the loss is outside its range.</exception>
    public MediumBatch(MediumRecipe recipe, Volume volume, Ratio mixingLoss)
    {
        Recipe = Guard.NotNull(recipe);
        Guard.NotNegative(Boundary.Litres(volume), "L", nameof(volume));
        Loss(mixingLoss);
        Volume = HouseUnits.Normalise(volume);
        MixingLoss = HouseUnits.Normalise(mixingLoss);
        double litresPerPart = Boundary.Litres(Volume) / (1 - Boundary.Fraction(MixingLoss)) / recipe.AllParts;
        Portions = ValueList<MediumPortion>.Of(
            recipe.Components.Select(component => new MediumPortion(component.Material, Volume.FromLiters(litresPerPart * component.Parts))));
    }

    /// <summary>The recipe.</summary>
    public MediumRecipe Recipe { get; }

    /// <summary>The volume of the finished mix.</summary>
    public Volume Volume { get; }

    /// <summary>The share of the components' summed volume that is gone after mixing.</summary>
    public Ratio MixingLoss { get; }

    /// <summary>The loose volume of each component, in the order of the recipe.</summary>
    public IReadOnlyList<MediumPortion> Portions { get; }

    /// <summary>What to take care of.</summary>
    public IReadOnlyList<Caution> Cautions { get; } = PottingMedium.Cautions;

    /// <summary>The loose volume of one component.</summary>
    /// <param name="material">The component.</param>
    /// <returns>Its volume.</returns>
    /// <exception cref="ArgumentException">The recipe has no such component; the message lists those it has.</exception>
    public Volume VolumeOf(string material)
    {
        Guard.NotBlank(material);
        return Portions.FirstOrDefault(portion => portion.Material == material)?.Volume
            ?? throw new ArgumentException(
                $"material was '{material}'; allowed: {string.Join(", ", Portions.Select(portion => portion.Material))}.", nameof(material));
    }

    /// <summary>The batch in metric units and invariant culture.</summary>
    /// <returns>For instance <c>120 L of John Innes potting: 70 L loam, 30 L peat, 20 L sand; 1 caution</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The batch as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The volume, the components and the number of cautions.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"{QuantityText.Of(Volume, style)} of {Recipe.Name}")
    {
        Rows =
        [
            .. Portions.Select(portion => new DisplayRow(portion.Material, QuantityText.Of(portion.Volume, style))),
            new DisplayRow("lost in mixing", QuantityText.Of(MixingLoss, style)),
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
            new DisplayRow("source", Recipe.Source.ToString()),
        ],
    };

    internal static double Loss(Ratio mixingLoss)
    {
        double percent = Boundary.Fraction(mixingLoss) * 100;
        return percent is >= 0 and < 100
            ? percent / 100
            : throw Guard.Refused(nameof(mixingLoss), percent, "%", "0 % or more, below 100 %");
    }

    private string ToString(TextStyle style) =>
        $"{QuantityText.Of(Volume, style)} of {Recipe.Name}: "
        + string.Join(", ", Portions.Select(portion => portion.ToString(style)))
        + $"; {Cautions.Count} {(Cautions.Count == 1 ? "caution" : "cautions")}";
}
