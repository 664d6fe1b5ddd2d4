using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>A dose measured by volume.</summary>
public sealed record VolumeDose : RecipeDose
{
    /// <summary>Describes a dose.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="low">The lowest dose printed, per volume of the recipe's basis; more than 0.</param>
    /// <param name="high">The highest dose printed; the same where the source prints one.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dose is not above 0, or the low one is above the high one.</exception>
    public VolumeDose(MixIngredient ingredient, VolumeConcentration low, VolumeConcentration high)
        : base(ingredient)
    {
        double lowPercent = Guard.Positive(Boundary.VolumeFraction(low) * 100, "% by volume", nameof(low));
        Guard.AtLeast(Boundary.VolumeFraction(high) * 100, lowPercent, "% by volume", nameof(high));
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
    }

    /// <summary>The lowest dose printed.</summary>
    public VolumeConcentration Low { get; }

    /// <summary>The highest dose printed.</summary>
    public VolumeConcentration High { get; }

    internal override (double Low, double High) LitresPerLitre => (Boundary.VolumeFraction(Low), Boundary.VolumeFraction(High));

    internal override MixAmount For(Volume lowBasis, Volume highBasis) =>
        new VolumeAmount(Ingredient, Dilution.ProductFor(Low, lowBasis), Dilution.ProductFor(High, highBasis));

    private protected override string RateText(TextStyle style) => MixAmount.Span(Low, High, style);
}
