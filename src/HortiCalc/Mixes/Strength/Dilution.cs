using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Exact arithmetic of dilution: how much of each for a batch, what results, and rates brought to any batch.</summary>
/// <remarks>
/// <para>
/// Three questions have three names. <c>MakeUpTo</c>: the finished mix fills the volume given, concentrate included.
/// <c>AddTo</c>: the volume given is the water, and the mix is larger. <c>UseUp</c>: the volume given is the concentrate.
/// </para>
/// <para>
/// Volumes are taken to add up (see <see cref="MixBatch"/>). A powder is taken to add no volume; make the solution up to
/// its mark. From one strength to another the rule is C1·V1 = C2·V2, where V2 is the finished volume.
/// </para>
/// </remarks>
public static class Dilution
{
    /// <summary>A batch that fills the volume given, concentrate included.</summary>
    /// <param name="total">The volume of the finished mix; more than 0.</param>
    /// <param name="ratio">The ratio of the mix.</param>
    /// <returns>Concentrate and water; no strength, since that of the concentrate is not given.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0.</exception>
    /// <example><code>
    /// MixBatch bucket = Dilution.MakeUpTo(Volume.FromLiters(10), MixRatio.PartsToParts(1, 9));
    /// Console.WriteLine(bucket.Concentrate);   // 1 L, and 9 L of water
    /// </code></example>
    public static MixBatch MakeUpTo(Volume total, MixRatio ratio) => FilledTo(total, ratio, null);

    /// <summary>A batch that fills the volume given, concentrate included.</summary>
    /// <param name="total">The volume of the finished mix; more than 0.</param>
    /// <param name="ratio">The ratio of the mix.</param>
    /// <param name="stock">The strength of the concentrate.</param>
    /// <returns>Concentrate, water and the strength that results.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0.</exception>
    /// <exception cref="ArgumentException">The strength is by mass without a density.</exception>
    /// <exception cref="ArgumentNullException">The strength is <see langword="null"/>.</exception>
    public static MixBatch MakeUpTo(Volume total, MixRatio ratio, Strength stock) => FilledTo(total, ratio, Guard.NotNull(stock));

    /// <summary>A batch of a wanted strength that fills the volume given, concentrate included.</summary>
    /// <param name="total">The volume of the finished mix; more than 0.</param>
    /// <param name="stock">The strength of the concentrate.</param>
    /// <param name="target">The strength wanted, of the same ingredient; not above that of the concentrate.</param>
    /// <returns>Concentrate, water and the strength.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0, or the target is 0 or above the concentrate.</exception>
    /// <exception cref="ArgumentException">The strengths count different ingredients, or cannot be compared without a density.</exception>
    public static MixBatch MakeUpTo(Volume total, Strength stock, Strength target) =>
        MakeUpTo(total, RatioFor(stock, target), stock);

    /// <summary>A batch in which the volume given is the water; the finished mix is larger by the concentrate.</summary>
    /// <param name="water">The volume of water or another diluent; more than 0.</param>
    /// <param name="ratio">The ratio of the mix; not undiluted.</param>
    /// <returns>Concentrate and water; no strength, since that of the concentrate is not given.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0, or the ratio has no diluent.</exception>
    public static MixBatch AddTo(Volume water, MixRatio ratio) => AddedTo(water, ratio, null);

    /// <summary>A batch in which the volume given is the water; the finished mix is larger by the concentrate.</summary>
    /// <param name="water">The volume of water or another diluent; more than 0.</param>
    /// <param name="ratio">The ratio of the mix; not undiluted.</param>
    /// <param name="stock">The strength of the concentrate.</param>
    /// <returns>Concentrate, water and the strength that results.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0, or the ratio has no diluent.</exception>
    /// <exception cref="ArgumentException">The strength is by mass without a density.</exception>
    /// <exception cref="ArgumentNullException">The strength is <see langword="null"/>.</exception>
    public static MixBatch AddTo(Volume water, MixRatio ratio, Strength stock) => AddedTo(water, ratio, Guard.NotNull(stock));

    /// <summary>A batch of a wanted strength in which the volume given is the water.</summary>
    /// <param name="water">The volume of water or another diluent; more than 0.</param>
    /// <param name="stock">The strength of the concentrate.</param>
    /// <param name="target">The strength wanted, of the same ingredient; below that of the concentrate.</param>
    /// <returns>Concentrate, water and the strength.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The volume is not above 0, or the target is 0 or not below the concentrate.
    /// </exception>
    /// <exception cref="ArgumentException">The strengths count different ingredients, or cannot be compared without a density.</exception>
    public static MixBatch AddTo(Volume water, Strength stock, Strength target) =>
        AddTo(water, RatioFor(stock, target), stock);

    /// <summary>The batch that uses up the concentrate there is.</summary>
    /// <param name="concentrate">The volume of concentrate; more than 0.</param>
    /// <param name="ratio">The ratio of the mix.</param>
    /// <returns>Concentrate and water; no strength, since that of the concentrate is not given.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0.</exception>
    public static MixBatch UseUp(Volume concentrate, MixRatio ratio) => UsingUp(concentrate, ratio, null);

    /// <summary>The batch that uses up the concentrate there is.</summary>
    /// <param name="concentrate">The volume of concentrate; more than 0.</param>
    /// <param name="ratio">The ratio of the mix.</param>
    /// <param name="stock">The strength of the concentrate.</param>
    /// <returns>Concentrate, water and the strength that results.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0.</exception>
    /// <exception cref="ArgumentException">The strength is by mass without a density.</exception>
    /// <exception cref="ArgumentNullException">The strength is <see langword="null"/>.</exception>
    public static MixBatch UseUp(Volume concentrate, MixRatio ratio, Strength stock) => UsingUp(concentrate, ratio, Guard.NotNull(stock));

    /// <summary>The batch of a wanted strength that uses up the concentrate there is.</summary>
    /// <param name="concentrate">The volume of concentrate; more than 0.</param>
    /// <param name="stock">The strength of the concentrate.</param>
    /// <param name="target">The strength wanted, of the same ingredient; not above that of the concentrate.</param>
    /// <returns>Concentrate, water and the strength.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0, or the target is 0 or above the concentrate.</exception>
    /// <exception cref="ArgumentException">The strengths count different ingredients, or cannot be compared without a density.</exception>
    public static MixBatch UseUp(Volume concentrate, Strength stock, Strength target) =>
        UseUp(concentrate, RatioFor(stock, target), stock);

    /// <summary>What results when these amounts are put together.</summary>
    /// <param name="concentrate">The volume of concentrate; more than 0.</param>
    /// <param name="water">The volume of water or another diluent; 0 or more.</param>
    /// <param name="stock">The strength of the concentrate.</param>
    /// <returns>The batch with its strength.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A volume is not finite, or is outside what is allowed.</exception>
    /// <exception cref="ArgumentException">The strength is by mass without a density.</exception>
    public static MixBatch Combine(Volume concentrate, Volume water, Strength stock)
    {
        double concentrateLitres = Guard.Positive(Boundary.Litres(concentrate), "L", nameof(concentrate));
        double waterLitres = Guard.NotNegative(Boundary.Litres(water), "L", nameof(water));
        return Batch(concentrateLitres, waterLitres, MixRatio.PartsToParts(concentrateLitres, waterLitres), Guard.NotNull(stock));
    }

    /// <summary>The ratio that brings a concentrate to a wanted strength: C1 over C2 is the factor.</summary>
    /// <param name="stock">The strength of the concentrate.</param>
    /// <param name="target">The strength wanted, of the same ingredient; more than 0, not above that of the concentrate.</param>
    /// <returns>The ratio. 5 % to 0.1 % is one part to 49.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The target is 0 or above the concentrate.</exception>
    /// <exception cref="ArgumentException">The strengths count different ingredients, or cannot be compared without a density.</exception>
    public static MixRatio RatioFor(Strength stock, Strength target)
    {
        Guard.NotNull(stock);
        Guard.NotNull(target);
        double from = StrengthFigure.Of(stock, nameof(stock));
        double to = StrengthFigure.Comparable(target, stock, nameof(target));
        if (!(to > 0 && to <= from))
        {
            throw new ArgumentOutOfRangeException(
                nameof(target), $"target was {target}; allowed: above 0 and not above the concentrate, {stock}.");
        }

        return MixRatio.OneIn(from / to);
    }

    /// <summary>The strength of a mix.</summary>
    /// <param name="ratio">The ratio of the mix.</param>
    /// <param name="stock">The strength of the concentrate.</param>
    /// <returns>By volume where the concentrate is by volume; else mass per volume.</returns>
    /// <exception cref="ArgumentException">The strength is by mass without a density.</exception>
    public static Strength StrengthOf(MixRatio ratio, Strength stock)
    {
        StrengthFigure.Of(Guard.NotNull(stock), nameof(stock));
        return stock.Diluted(ratio);
    }

    /// <summary>The strength that a stock must have so that the mix is as wanted, as for an injector.</summary>
    /// <param name="target">The strength wanted in the finished mix, as mass per volume.</param>
    /// <param name="ratio">How the stock is diluted. An injector of 1:100 delivers one in 100 of the finished water.</param>
    /// <returns>The target times the factor. Whether so much dissolves is another question.</returns>
    public static StrengthPerVolume StockFor(StrengthPerVolume target, MixRatio ratio)
    {
        Guard.NotNull(target);
        double milligramsPerLitre = Boundary.MilligramsPerLitre(target.Concentration) * ratio.Factor;
        return new StrengthPerVolume(MassConcentration.FromMilligramsPerLiter(milligramsPerLitre), target.Ingredient);
    }

    /// <summary>The powder that brings a volume of solution to a wanted strength.</summary>
    /// <param name="total">The volume of the finished solution; more than 0.</param>
    /// <param name="powder">The share of the ingredient in the powder; more than 0. A density is not needed.</param>
    /// <param name="target">The strength wanted, of the same ingredient, as mass per volume.</param>
    /// <returns>The mass of powder.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0, or the powder holds none of the ingredient.</exception>
    /// <exception cref="ArgumentException">The strengths count different ingredients.</exception>
    /// <example><code>
    /// Mass powder = Dilution.PowderFor(
    ///     Volume.FromLiters(1),
    ///     Strength.ByMass(MassFraction.FromPercent(35), ingredient: "available chlorine"),
    ///     Strength.PerVolume(MassConcentration.FromGramsPerLiter(5), "available chlorine"));   // 14.3 g
    /// </code></example>
    public static Mass PowderFor(Volume total, StrengthByMass powder, StrengthPerVolume target)
    {
        double totalLitres = Guard.Positive(Boundary.Litres(total), "L", nameof(total));
        double share = Guard.Positive(Boundary.MassFraction(Guard.NotNull(powder).Share), "", nameof(powder));
        StrengthFigure.RequireSameIngredient(Guard.NotNull(target), powder, nameof(target));
        return Mass.FromGrams(totalLitres * Boundary.MilligramsPerLitre(target.Concentration) / 1000 / share);
    }

    /// <summary>The strength of a solution made from a powder.</summary>
    /// <param name="powderAmount">The mass of powder; 0 or more.</param>
    /// <param name="powder">The share of the ingredient in the powder.</param>
    /// <param name="total">The volume of the finished solution; more than 0.</param>
    /// <returns>The mass of the ingredient per volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0, or the mass is negative.</exception>
    public static StrengthPerVolume StrengthOfPowder(Mass powderAmount, StrengthByMass powder, Volume total)
    {
        double grams = Guard.NotNegative(Boundary.Kilograms(powderAmount) * 1000, "g", nameof(powderAmount));
        double totalLitres = Guard.Positive(Boundary.Litres(total), "L", nameof(total));
        double milligramsPerLitre = grams * 1000 * Boundary.MassFraction(Guard.NotNull(powder).Share) / totalLitres;
        return new StrengthPerVolume(MassConcentration.FromMilligramsPerLiter(milligramsPerLitre), powder.Ingredient);
    }

    /// <summary>A rate as the trade prints it, "so much powder per so much water or spray".</summary>
    /// <param name="product">The mass of product; 0 or more.</param>
    /// <param name="per">The volume it is printed for; more than 0.</param>
    /// <returns>
    /// The rate. It is per water or per finished spray, whichever the print says; <see cref="ProductFor(MassConcentration,
    /// Volume)"/> keeps that.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is not finite, or is outside what is allowed.</exception>
    public static MassConcentration RateOf(Mass product, Volume per)
    {
        double kilograms = Guard.NotNegative(Boundary.Kilograms(product), "kg", nameof(product));
        return MassConcentration.FromMilligramsPerLiter(kilograms * 1e6 / Guard.Positive(Boundary.Litres(per), "L", nameof(per)));
    }

    /// <summary>A rate as the trade prints it, "so much liquid per so much water or spray".</summary>
    /// <param name="product">The volume of product; 0 or more.</param>
    /// <param name="per">The volume it is printed for; more than 0.</param>
    /// <returns>
    /// The rate. It is per water or per finished spray, whichever the print says; <see cref="ProductFor(VolumeConcentration,
    /// Volume)"/> keeps that.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is not finite, or is outside what is allowed.</exception>
    public static VolumeConcentration RateOf(Volume product, Volume per)
    {
        double litres = Guard.NotNegative(Boundary.Litres(product), "L", nameof(product));
        return VolumeConcentration.FromPercent(litres * 100 / Guard.Positive(Boundary.Litres(per), "L", nameof(per)));
    }

    /// <summary>A rate of powder brought to a batch.</summary>
    /// <param name="rate">The rate; 0 or more.</param>
    /// <param name="batch">The batch, of water if the rate is per water and of finished spray if it is per spray; more than 0.</param>
    /// <returns>The mass of product.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is not finite, or is outside what is allowed.</exception>
    /// <example><code>
    /// MassConcentration label = Dilution.RateOf(Mass.FromPounds(1), per: Volume.FromUsGallons(100));
    /// Mass dose = Dilution.ProductFor(label, Volume.FromLiters(5));   // 6 g
    /// </code></example>
    public static Mass ProductFor(MassConcentration rate, Volume batch)
    {
        double milligramsPerLitre = Guard.NotNegative(Boundary.MilligramsPerLitre(rate), "mg/L", nameof(rate));
        return Mass.FromGrams(milligramsPerLitre / 1000 * Guard.Positive(Boundary.Litres(batch), "L", nameof(batch)));
    }

    /// <summary>A rate of liquid brought to a batch.</summary>
    /// <param name="rate">The rate; 0 or more.</param>
    /// <param name="batch">The batch, of water if the rate is per water and of finished spray if it is per spray; more than 0.</param>
    /// <returns>The volume of product.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is not finite, or is outside what is allowed.</exception>
    public static Volume ProductFor(VolumeConcentration rate, Volume batch)
    {
        double fraction = Guard.NotNegative(Boundary.VolumeFraction(rate), "L/L", nameof(rate));
        return Volume.FromLiters(fraction * Guard.Positive(Boundary.Litres(batch), "L", nameof(batch)));
    }

    /// <summary>The volume of a liquid product that holds a mass of its active ingredient.</summary>
    /// <param name="active">The mass of active ingredient; 0 or more.</param>
    /// <param name="product">The strength of the product: pounds a gallon, g/L; more than 0.</param>
    /// <returns>The volume of product.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is not finite, or is outside what is allowed.</exception>
    public static Volume ProductHolding(Mass active, StrengthPerVolume product)
    {
        double kilograms = Guard.NotNegative(Boundary.Kilograms(active), "kg", nameof(active));
        double milligramsPerLitre = Guard.Positive(
            Boundary.MilligramsPerLitre(Guard.NotNull(product).Concentration), "mg/L", nameof(product));
        return Volume.FromLiters(kilograms * 1e6 / milligramsPerLitre);
    }

    /// <summary>The mass of a powder, dust or granule that holds a mass of its active ingredient.</summary>
    /// <param name="active">The mass of active ingredient; 0 or more.</param>
    /// <param name="product">The share of the active ingredient in the product; more than 0.</param>
    /// <returns>The mass of product.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is not finite, or is outside what is allowed.</exception>
    public static Mass ProductHolding(Mass active, StrengthByMass product)
    {
        double kilograms = Guard.NotNegative(Boundary.Kilograms(active), "kg", nameof(active));
        double share = Guard.Positive(Boundary.MassFraction(Guard.NotNull(product).Share), "", nameof(product));
        return Mass.FromKilograms(kilograms / share);
    }

    private static MixBatch FilledTo(Volume total, MixRatio ratio, Strength? stock)
    {
        double totalLitres = Guard.Positive(Boundary.Litres(total), "L", nameof(total));
        double concentrateLitres = totalLitres / ratio.Factor;
        return Batch(concentrateLitres, totalLitres - concentrateLitres, ratio, stock);
    }

    private static MixBatch AddedTo(Volume water, MixRatio ratio, Strength? stock)
    {
        double waterLitres = Guard.Positive(Boundary.Litres(water), "L", nameof(water));
        double partsOfDiluent = Guard.Positive(ratio.PartsOfDiluent, "parts of diluent", nameof(ratio));
        return Batch(waterLitres / partsOfDiluent, waterLitres, ratio, stock);
    }

    private static MixBatch UsingUp(Volume concentrate, MixRatio ratio, Strength? stock)
    {
        double concentrateLitres = Guard.Positive(Boundary.Litres(concentrate), "L", nameof(concentrate));
        return Batch(concentrateLitres, concentrateLitres * ratio.PartsOfDiluent, ratio, stock);
    }

    private static MixBatch Batch(double concentrateLitres, double waterLitres, MixRatio ratio, Strength? stock) => new(
        Volume.FromLiters(concentrateLitres),
        Volume.FromLiters(waterLitres),
        stock is null ? null : StrengthOf(ratio, stock));
}
