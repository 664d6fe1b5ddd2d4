using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A liming material as it is sold: with its fineness, its moisture and its price.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
/// <example><code>
/// LimingProduct quarry = new(
///     new LimingMaterial("quarry lime", Ratio.FromPercent(92)), SieveAnalysis.OfMeshes((4, 100), (8, 90), (60, 55)), MassFraction.FromPercent(2), pricePerTonne: 30);
/// Console.WriteLine(quarry.EffectiveEquivalent(FinenessScheme.Iowa));   // 63.1 %
/// Console.WriteLine(quarry.PricePerEffectiveTonne(FinenessScheme.Iowa));
/// </code></example>
public sealed record LimingProduct
{
    /// <summary>Describes a product.</summary>
    /// <param name="material">The material, with its calcium carbonate equivalent when dry.</param>
    /// <param name="sieves">The sieve analysis.</param>
    /// <param name="moisture">The water in it; from 0 to below 100 %.</param>
    /// <param name="pricePerTonne">The price of a tonne as it is sold, in any currency, or <see langword="null"/> where it is not known.</param>
    /// <exception cref="ArgumentNullException">The material or the analysis is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The moisture is not from 0 to below 100 %, or the price is negative.</exception>
    public LimingProduct(LimingMaterial material, SieveAnalysis sieves, MassFraction moisture = default, decimal? pricePerTonne = null)
    {
        Material = Guard.NotNull(material);
        Sieves = Guard.NotNull(sieves);
        double percent = Boundary.MassFraction(moisture) * 100;
        if (!(percent >= 0 && percent < 100))
            throw Guard.Refused(nameof(moisture), percent, "%", "from 0 to below 100 %");
        Moisture = HouseUnits.Normalise(moisture);
        if (pricePerTonne < 0)
            throw Guard.Refused(nameof(pricePerTonne), (double)pricePerTonne.Value, "per tonne", "0 or more");
        PricePerTonne = pricePerTonne;
    }

    /// <summary>The material, with its calcium carbonate equivalent when dry.</summary>
    public LimingMaterial Material { get; }

    /// <summary>The sieve analysis.</summary>
    public SieveAnalysis Sieves { get; }

    /// <summary>The water in it.</summary>
    public MassFraction Moisture { get; }

    /// <summary>The price of a tonne as it is sold, or <see langword="null"/> where it is not known.</summary>
    public decimal? PricePerTonne { get; }

    /// <summary>The effective calcium carbonate equivalent: equivalent × fineness × dry share.</summary>
    /// <param name="scheme">How fineness is judged.</param>
    /// <returns>The pure calcium carbonate that acts as much as the product, per mass of product as it is sold.</returns>
    /// <exception cref="ArgumentNullException">The scheme is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The analysis lacks a sieve of the scheme.</exception>
    public Estimate<Ratio> EffectiveEquivalent(FinenessScheme scheme)
    {
        Guard.NotNull(scheme);
        return new Estimate<Ratio>(Ratio.FromPercent(100 * EffectiveFraction(scheme)), scheme.Evidence);
    }

    /// <summary>
    /// The product as a material by its effective equivalent, to bring a rate to it that assumes fully effective lime: of score 100, or of 100 %
    /// effective equivalent. A rate of ground limestone assumes its fineness already; bring that to <see cref="Material"/>.
    /// </summary>
    /// <param name="scheme">How fineness is judged.</param>
    /// <returns>The material.</returns>
    /// <exception cref="ArgumentNullException">The scheme is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The analysis lacks a sieve of the scheme, or nothing of the product acts.</exception>
    public LimingMaterial AsEffectiveMaterial(FinenessScheme scheme)
    {
        Guard.NotNull(scheme);
        return new LimingMaterial($"{Material.Name}, effective", Ratio.FromPercent(100 * EffectiveFraction(scheme)), Material.Form, Material.Magnesium, scheme.Evidence.Source);
    }

    /// <summary>What a tonne of effective calcium carbonate costs in this product.</summary>
    /// <param name="scheme">How fineness is judged.</param>
    /// <returns>The price, or <see langword="null"/> where the product's is not known or nothing of it acts.</returns>
    /// <exception cref="ArgumentNullException">The scheme is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The analysis lacks a sieve of the scheme.</exception>
    public decimal? PricePerEffectiveTonne(FinenessScheme scheme)
    {
        double effective = EffectiveFraction(Guard.NotNull(scheme));
        return PricePerTonne is { } price && effective > 0 ? price / (decimal)effective : null;
    }

    /// <summary>Products from the cheapest to the dearest effective lime; those without a price last, in the order given.</summary>
    /// <param name="products">The products.</param>
    /// <param name="scheme">How fineness is judged; the same for all.</param>
    /// <returns>The products in order.</returns>
    /// <exception cref="ArgumentNullException">The products or the scheme are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">An analysis lacks a sieve of the scheme.</exception>
    public static IReadOnlyList<LimingProduct> ByCost(IReadOnlyList<LimingProduct> products, FinenessScheme scheme)
    {
        Guard.NotNull(scheme);
        return ValueList<LimingProduct>.Of(
            Guard.NotNull(products).OrderBy(product => product.PricePerEffectiveTonne(scheme) ?? decimal.MaxValue));
    }

    /// <summary>The material and its fineness.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => $"{Material}; {Sieves}";

    private double EffectiveFraction(FinenessScheme scheme) =>
        Material.Fraction * scheme.Fraction(Sieves) * (1 - Boundary.MassFraction(Moisture));
}
