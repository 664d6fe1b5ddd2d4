using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>
/// A strength as mass of the ingredient per mass of the liquid or powder, with the density of the whole where it is known.
/// </summary>
public sealed record StrengthByMass : Strength
{
    /// <summary>States a strength by mass.</summary>
    /// <param name="share">From 0 to 100 % by mass.</param>
    /// <param name="density">The density of the liquid as a whole, or <see langword="null"/> where it is not known.</param>
    /// <param name="ingredient">What is counted; empty for the concentrate itself.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0 to 100 %, or the density is not above 0.</exception>
    public StrengthByMass(MassFraction share, Density? density = null, string ingredient = "")
        : base(ingredient)
    {
        Guard.Within(Boundary.MassFraction(share) * 100, 0, 100, "% by mass", nameof(share));
        Share = HouseUnits.Normalise(share);
        if (density is Density known)
        {
            Guard.Positive(Boundary.KilogramsPerCubicMetre(known), "kg/m³", nameof(density));
            Density = HouseUnits.Normalise(known);
        }
    }

    /// <summary>The mass of the ingredient per mass of the whole.</summary>
    public MassFraction Share { get; }

    /// <summary>The density of the liquid as a whole, or <see langword="null"/> where it is not known.</summary>
    public Density? Density { get; }

    /// <summary>The same strength with a density.</summary>
    /// <param name="density">The density of the liquid as a whole; more than 0.</param>
    /// <returns>The strength, which can now be turned into mass per volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The density is not above 0.</exception>
    public StrengthByMass WithDensity(Density density) => new(Share, density, Ingredient);

    /// <summary>The same strength as mass per volume.</summary>
    /// <returns>The share times the density.</returns>
    /// <exception cref="InvalidOperationException">The density is not known.</exception>
    public StrengthPerVolume ToMassPerVolume() => ScaledFigure is double milligramsPerLitre
        ? new StrengthPerVolume(MassConcentration.FromMilligramsPerLiter(milligramsPerLitre), Ingredient)
        : throw new InvalidOperationException(DensityMissing);

    internal override double? ScaledFigure => Density is Density known
        ? Boundary.MassFraction(Share) * Boundary.KilogramsPerCubicMetre(known) * 1000
        : null;

    internal override bool IsByVolume => false;

    private protected override string Figure(TextStyle style) => QuantityText.Of(Share, style);
}
