using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>How strong a liquid is, with the basis that the figure rests on.</summary>
/// <remarks>
/// "5 %" is by volume, by mass, or mass per volume, and these differ by densities. The basis is the type:
/// <see cref="StrengthByVolume"/>, <see cref="StrengthByMass"/> and <see cref="StrengthPerVolume"/>. One turns into
/// another only through a density that is given; the two customs of the trade that leave it out have names of their own
/// (<see cref="PartsPerMillionInDiluteWater"/>, <see cref="PercentAsWeightPerVolume"/>).
/// </remarks>
/// <example><code>
/// Strength alcohol = Strength.ByVolume(VolumeConcentration.FromPercent(91), "isopropyl alcohol");
/// Strength target = Strength.ByVolume(VolumeConcentration.FromPercent(70), "isopropyl alcohol");
/// MixBatch batch = Dilution.MakeUpTo(Volume.FromMilliliters(50), alcohol, target);   // 38.5 mL of it
/// </code></example>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(StrengthByVolume), "byVolume")]
[JsonDerivedType(typeof(StrengthByMass), "byMass")]
[JsonDerivedType(typeof(StrengthPerVolume), "massPerVolume")]
public abstract record Strength : IFormattable
{
    private protected Strength(string ingredient) => Ingredient = Guard.NotNull(ingredient);

    /// <summary>What is counted: "available chlorine", "nitrogen"; empty for the concentrate itself.</summary>
    public string Ingredient { get; }

    /// <summary>Volume of the ingredient per volume of the liquid.</summary>
    /// <param name="share">From 0 to 100 % by volume.</param>
    /// <param name="ingredient">What is counted; empty for the concentrate itself.</param>
    /// <returns>The strength.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0 to 100 %.</exception>
    public static StrengthByVolume ByVolume(VolumeConcentration share, string ingredient = "") => new(share, ingredient);

    /// <summary>Mass of the ingredient per mass of the liquid or powder.</summary>
    /// <param name="share">From 0 to 100 % by mass.</param>
    /// <param name="density">
    /// The density of the liquid as a whole, or <see langword="null"/> where it is not known: the strength is then refused
    /// wherever a volume is asked for.
    /// </param>
    /// <param name="ingredient">What is counted; empty for the concentrate itself.</param>
    /// <returns>The strength.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0 to 100 %, or the density is not above 0.</exception>
    public static StrengthByMass ByMass(MassFraction share, Density? density = null, string ingredient = "") =>
        new(share, density, ingredient);

    /// <summary>Mass of the ingredient per volume of the liquid: mg/L, g/L, pounds a gallon.</summary>
    /// <param name="concentration">0 or more.</param>
    /// <param name="ingredient">What is counted; empty for the concentrate itself.</param>
    /// <returns>The strength.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The concentration is negative.</exception>
    public static StrengthPerVolume PerVolume(MassConcentration concentration, string ingredient = "") => new(concentration, ingredient);

    /// <summary>The custom that 1 ppm is 1 mg/L, which holds in dilute water, where a litre weighs a kilogram.</summary>
    /// <param name="share">From 0 to 10,000 ppm by mass. The limit is ours: above 1 % the liquid is no longer as dense as water.</param>
    /// <param name="ingredient">What is counted; empty for the concentrate itself.</param>
    /// <returns>The strength as mass per volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0 to 10,000 ppm.</exception>
    public static StrengthPerVolume PartsPerMillionInDiluteWater(MassFraction share, string ingredient = "")
    {
        double partsPerMillion = Guard.Within(Boundary.MassFraction(share) * 1e6, 0, 10_000, "ppm", nameof(share));
        return new StrengthPerVolume(MassConcentration.FromMilligramsPerLiter(partsPerMillion), ingredient);
    }

    /// <summary>
    /// The custom of many charts that a per cent by weight is ten grams a litre, as though the liquid were as dense as water. A
    /// 10 % liquid of density 1.1 kg/L really holds 110 g/L, so the custom is low by a tenth.
    /// </summary>
    /// <param name="percent">From 0 to 100 % as the label prints it.</param>
    /// <param name="ingredient">What is counted; empty for the concentrate itself.</param>
    /// <returns>The strength as mass per volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0 to 100 %.</exception>
    public static StrengthPerVolume PercentAsWeightPerVolume(MassFraction percent, string ingredient = "")
    {
        double shown = Guard.Within(Boundary.MassFraction(percent) * 100, 0, 100, "%", nameof(percent));
        return new StrengthPerVolume(MassConcentration.FromMilligramsPerLiter(shown * 10_000), ingredient);
    }

    /// <summary>The strength in invariant culture.</summary>
    /// <returns>For instance <c>52.5 g/L of available chlorine</c>.</returns>
    public sealed override string ToString() => ToString(null, null);

    /// <summary>The strength as text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The figure, its basis and what is counted.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        return Ingredient.Length == 0 ? Figure(style) : $"{Figure(style)} of {Ingredient}";
    }

    /// <summary>The figure that dilution by volume scales, or <see langword="null"/> where a density is missing.</summary>
    internal abstract double? ScaledFigure { get; }

    /// <summary>Whether the figure is by volume; else it is mass per volume.</summary>
    internal abstract bool IsByVolume { get; }

    private protected abstract string Figure(TextStyle style);

    /// <summary>What is left of the strength when the liquid is diluted by volume.</summary>
    internal Strength Diluted(MixRatio ratio)
    {
        double figure = ScaledFigure ?? throw new InvalidOperationException(DensityMissing);
        return IsByVolume
            ? new StrengthByVolume(VolumeConcentration.FromPercent(figure * 100 / ratio.Factor), Ingredient)
            : new StrengthPerVolume(MassConcentration.FromMilligramsPerLiter(figure / ratio.Factor), Ingredient);
    }

    internal const string DensityMissing =
        "A strength by mass says nothing about volumes without the density of the liquid; give it to Strength.ByMass.";
}
