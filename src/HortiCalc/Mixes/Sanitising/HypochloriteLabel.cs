using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>What a bottle of bleach says of its strength, and what that means in available chlorine.</summary>
/// <remarks>
/// Four bases are in use and differ by up to 15 % at pool strength, so the basis is part of the label. Those by mass need
/// the density of the bleach; <see cref="HypochloriteDensities"/> holds some that were seen in print. Definitions: Product
/// Profile: Sodium Hypochlorite, Strengths of Solutions, after Handbook of Chlorination, 1972,
/// https://user-mjooq7g.cld.bz/Industrial-Literature/57.
/// </remarks>
/// <example><code>
/// HypochloriteLabel household = HypochloriteLabel.SodiumHypochlorite(
///     MassFraction.FromPercent(6), HypochloriteDensities.SixPercent);
/// Console.WriteLine(household.AvailableChlorine.GramsPerLiter);   // 61.7
/// </code></example>
public sealed record HypochloriteLabel : IFormattable
{
    /// <summary>Describes a label.</summary>
    /// <param name="basis">What the per cent means.</param>
    /// <param name="percent">The per cent as printed; more than 0, at most 100 %.</param>
    /// <param name="density">The density of the bleach; needed where the basis is by mass.</param>
    /// <exception cref="ArgumentOutOfRangeException">The per cent or the density is outside what is allowed.</exception>
    /// <exception cref="ArgumentNullException">The basis is by mass and there is no density.</exception>
    public HypochloriteLabel(HypochloriteBasis basis, Ratio percent, Density? density = null)
    {
        Basis = Guard.Defined(basis);
        double shown = Guard.Positive(Boundary.Fraction(percent) * 100, "%", nameof(percent));
        Guard.Within(shown, 0, 100, "%", nameof(percent));
        Percent = HouseUnits.Normalise(percent);
        if (density is Density known)
        {
            Guard.Positive(Boundary.KilogramsPerCubicMetre(known), "kg/m³", nameof(density));
            Density = HouseUnits.Normalise(known);
        }
        else if (basis is HypochloriteBasis.SodiumHypochloriteByMass or HypochloriteBasis.AvailableChlorineByMass)
        {
            throw new ArgumentNullException(
                nameof(density), "A label by mass says nothing about litres without the density of the bleach.");
        }
    }

    /// <summary>What the per cent means.</summary>
    public HypochloriteBasis Basis { get; }

    /// <summary>The per cent as printed.</summary>
    public Ratio Percent { get; }

    /// <summary>The density of the bleach, or <see langword="null"/> where it is not needed and not given.</summary>
    public Density? Density { get; }

    /// <summary>The available chlorine per volume of bleach.</summary>
    [JsonIgnore]
    public MassConcentration AvailableChlorine => MassConcentration.FromMilligramsPerLiter(Basis switch
    {
        HypochloriteBasis.SodiumHypochloriteByMass => Fraction * Hypochlorite.ChlorinePerHypochlorite * MilligramsPerLitre,
        HypochloriteBasis.AvailableChlorineByMass => Fraction * MilligramsPerLitre,
        _ => Fraction * MilligramsPerLitreOfWater,
    });

    /// <summary>The available chlorine per mass of bleach, or <see langword="null"/> where the density is not given.</summary>
    [JsonIgnore]
    public MassFraction? AvailableChlorineByMass => Basis switch
    {
        HypochloriteBasis.SodiumHypochloriteByMass => MassFraction.FromPercent(Fraction * 100 * Hypochlorite.ChlorinePerHypochlorite),
        HypochloriteBasis.AvailableChlorineByMass => MassFraction.FromPercent(Fraction * 100),
        _ when Density is not null => MassFraction.FromPercent(100 * Boundary.MilligramsPerLitre(AvailableChlorine) / MilligramsPerLitre),
        _ => null,
    };

    /// <summary>The trade per cent: grams of available chlorine per 100 mL.</summary>
    [JsonIgnore]
    public Ratio TradePercentage => Ratio.FromPercent(Boundary.MilligramsPerLitre(AvailableChlorine) / 10_000);

    /// <summary>The bleach as a concentrate for <see cref="Dilution"/>, counted in available chlorine.</summary>
    [JsonIgnore]
    public Strength Strength => new StrengthPerVolume(AvailableChlorine, Hypochlorite.Ingredient);

    /// <summary>A label in per cent of sodium hypochlorite by mass, as on household bleach.</summary>
    /// <param name="share">The per cent as printed; more than 0.</param>
    /// <param name="density">The density of the bleach.</param>
    /// <returns>The label.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share or the density is outside what is allowed.</exception>
    public static HypochloriteLabel SodiumHypochlorite(MassFraction share, Density density) =>
        new(HypochloriteBasis.SodiumHypochloriteByMass, Ratio.FromDecimalFractions(Boundary.MassFraction(share)), density);

    /// <summary>A label in per cent of available chlorine by mass.</summary>
    /// <param name="share">The per cent as printed; more than 0.</param>
    /// <param name="density">The density of the bleach.</param>
    /// <returns>The label.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share or the density is outside what is allowed.</exception>
    public static HypochloriteLabel ChlorineByMass(MassFraction share, Density density) =>
        new(HypochloriteBasis.AvailableChlorineByMass, Ratio.FromDecimalFractions(Boundary.MassFraction(share)), density);

    /// <summary>A label in trade per cent, grams of available chlorine per 100 mL, as on pool bleach.</summary>
    /// <param name="percent">The per cent as printed; more than 0.</param>
    /// <param name="density">The density of the bleach, where the per cent by mass is wanted too.</param>
    /// <returns>The label.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The per cent or the density is outside what is allowed.</exception>
    public static HypochloriteLabel Trade(Ratio percent, Density? density = null) =>
        new(HypochloriteBasis.TradePercent, percent, density);

    /// <summary>A label in French chlorometric degrees, litres of chlorine gas that a litre of bleach gives off.</summary>
    /// <remarks>
    /// On bottles in France until 2001, and still in use elsewhere, as degrees chlorum too. Order of 23 July 1968, after Union des professeurs de
    /// physique et de chimie: a litre of chlorine gas weighs 3.17 g.
    /// </remarks>
    /// <param name="degrees">The degrees as printed, such as 9, 12, 36 or 48; a plain number from above 0 to 100.</param>
    /// <returns>The label, as trade per cent: 12 degrees are 38 g/L.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside what is allowed.</exception>
    public static HypochloriteLabel ChlorometricDegrees(double degrees)
    {
        Guard.Within(Guard.Positive(degrees, "degrees"), 0, 100, "degrees", nameof(degrees));
        return new HypochloriteLabel(HypochloriteBasis.TradePercent, Ratio.FromPercent(degrees * GramsOfChlorinePerLitreAndDegree / 10));
    }

    /// <summary>The custom of many charts: the label's per cent taken as grams of chlorine per 100 mL.</summary>
    /// <remarks>
    /// It leaves out both the density, about 1.08, and the factor 1.05 from hypochlorite to chlorine; for household bleach the
    /// two nearly cancel. Use it to follow such a chart; use a basis by mass to know the strength.
    /// </remarks>
    /// <param name="percent">The per cent as printed; more than 0.</param>
    /// <returns>The label.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The per cent is outside what is allowed.</exception>
    public static HypochloriteLabel PercentAsWeightPerVolume(MassFraction percent) =>
        new(HypochloriteBasis.PercentAsWeightPerVolume, Ratio.FromDecimalFractions(Boundary.MassFraction(percent)));

    /// <summary>The label and its available chlorine, in metric units and invariant culture.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The label and its available chlorine.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line of text.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        string basis = Basis switch
        {
            HypochloriteBasis.SodiumHypochloriteByMass => "sodium hypochlorite by mass",
            HypochloriteBasis.AvailableChlorineByMass => "available chlorine by mass",
            HypochloriteBasis.TradePercent => "trade per cent",
            _ => "label per cent taken as weight per volume",
        };
        return $"{QuantityText.Of(Percent, style)} {basis}: {QuantityText.Of(AvailableChlorine, style)} of available chlorine";
    }

    private const double MilligramsPerLitreOfWater = 1_000_000;

    // SanitisingSources.ChlorometricDegrees.
    private const double GramsOfChlorinePerLitreAndDegree = 3.17;

    private double Fraction => Boundary.Fraction(Percent);

    private double MilligramsPerLitre => Boundary.KilogramsPerCubicMetre(Density!.Value) * 1000;
}
