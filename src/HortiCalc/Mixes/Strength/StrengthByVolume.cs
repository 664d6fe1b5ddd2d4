using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>A strength as volume of the ingredient per volume of the liquid: per cent by volume.</summary>
public sealed record StrengthByVolume : Strength
{
    /// <summary>States a strength by volume.</summary>
    /// <param name="share">From 0 to 100 % by volume.</param>
    /// <param name="ingredient">What is counted; empty for the concentrate itself.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0 to 100 %.</exception>
    public StrengthByVolume(VolumeConcentration share, string ingredient = "")
        : base(ingredient)
    {
        Guard.Within(Boundary.VolumeFraction(share) * 100, 0, 100, "% by volume", nameof(share));
        Share = HouseUnits.Normalise(share);
    }

    /// <summary>The volume of the ingredient per volume of the liquid.</summary>
    public VolumeConcentration Share { get; }

    /// <summary>The same strength as mass per volume.</summary>
    /// <param name="density">The density of the pure ingredient; more than 0.</param>
    /// <returns>The share times the density.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The density is not above 0.</exception>
    public StrengthPerVolume ToMassPerVolume(Density density)
    {
        double gramsPerLitre = Guard.Positive(Boundary.KilogramsPerCubicMetre(density), "kg/m³", nameof(density));
        double milligramsPerLitre = Boundary.VolumeFraction(Share) * gramsPerLitre * 1000;
        return new StrengthPerVolume(MassConcentration.FromMilligramsPerLiter(milligramsPerLitre), Ingredient);
    }

    internal override double? ScaledFigure => Boundary.VolumeFraction(Share);

    internal override bool IsByVolume => true;

    private protected override string Figure(TextStyle style) => QuantityText.Of(Share, style);
}
