using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Exact arithmetic of a tank that is not empty: correct it, fill it up, blend two liquids, dilute in steps, rinse it out.</summary>
/// <remarks>
/// What is kept is the ingredient: C·V before is C·V after, and volumes are taken to add up. Strengths must count the same
/// ingredient on the same basis; one by mass needs its density.
/// </remarks>
/// <example><code>
/// Strength now = Strength.PerVolume(MassConcentration.FromMilligramsPerLiter(800));
/// Strength wanted = Strength.PerVolume(MassConcentration.FromMilligramsPerLiter(500));
/// Strength bottle = Strength.PerVolume(MassConcentration.FromGramsPerLiter(50));
/// MixBlend mended = TankMix.Correct(Volume.FromLiters(10), now, wanted, bottle);   // 6 L of water are added
/// </code></example>
public static class TankMix
{
    /// <summary>What to add to a tank of the wrong strength: water where it is too strong, concentrate where it is too weak.</summary>
    /// <param name="tank">The volume there is; more than 0.</param>
    /// <param name="now">Its strength.</param>
    /// <param name="target">The strength wanted; more than 0, below that of the concentrate.</param>
    /// <param name="concentrate">The strength of the concentrate.</param>
    /// <returns>The addition; nothing of either where the tank is as wanted.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0, or the target is 0 or not below the concentrate.</exception>
    /// <exception cref="ArgumentException">The strengths cannot be compared.</exception>
    public static MixBlend Correct(Volume tank, Strength now, Strength target, Strength concentrate)
    {
        double litres = Guard.Positive(Boundary.Litres(tank), "L", nameof(tank));
        double wanted = Target(target, concentrate);
        double present = StrengthFigure.Comparable(Guard.NotNull(now), target, nameof(now));
        double strong = StrengthFigure.Comparable(concentrate, target, nameof(concentrate));
        double waterLitres = Math.Max(0, litres * ((present / wanted) - 1));
        double addedLitres = present < wanted ? litres * (wanted - present) / (strong - wanted) : 0;
        return new MixBlend(tank, Volume.FromLiters(addedLitres), Volume.FromLiters(waterLitres), target);
    }

    /// <summary>What to add so that a tank that still holds some mix is full and of the wanted strength.</summary>
    /// <param name="left">The volume left in the tank; 0 or more.</param>
    /// <param name="leftStrength">The strength of what is left.</param>
    /// <param name="full">The volume of the full tank; more than what is left.</param>
    /// <param name="target">The strength wanted; more than 0, below that of the concentrate.</param>
    /// <param name="concentrate">The strength of the concentrate.</param>
    /// <returns>Concentrate and water to add.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A volume is outside what is allowed, or what is left holds more than the full tank shall, or too little for the concentrate to make up.
    /// </exception>
    /// <exception cref="ArgumentException">The strengths cannot be compared.</exception>
    public static MixBlend FillUp(Volume left, Strength leftStrength, Volume full, Strength target, Strength concentrate)
    {
        double leftLitres = Guard.NotNegative(Boundary.Litres(left), "L", nameof(left));
        double fullLitres = Guard.Positive(Boundary.Litres(full), "L", nameof(full));
        Guard.AtLeast(fullLitres, leftLitres, "L", nameof(full));
        double wanted = Target(target, concentrate);
        double present = StrengthFigure.Comparable(Guard.NotNull(leftStrength), target, nameof(leftStrength));
        double strong = StrengthFigure.Comparable(concentrate, target, nameof(concentrate));
        double missing = (fullLitres * wanted) - (leftLitres * present);
        double roomLitres = fullLitres - leftLitres;
        double concentrateLitres = missing / strong;
        if (!(concentrateLitres >= -1e-12 * fullLitres && concentrateLitres <= roomLitres * (1 + 1e-12)))
        {
            throw new ArgumentOutOfRangeException(
                nameof(leftStrength),
                $"leftStrength was {leftStrength} in {Guard.Number(leftLitres)} L; allowed: what {Guard.Number(roomLitres)} L of water or concentrate "
                + $"can still bring to {target} in {Guard.Number(fullLitres)} L.");
        }

        double added = Math.Clamp(concentrateLitres, 0, roomLitres);
        return new MixBlend(left, Volume.FromLiters(added), Volume.FromLiters(roomLitres - added), target);
    }

    /// <summary>What two liquids make when one is poured into the other.</summary>
    /// <param name="first">The volume of the first; 0 or more.</param>
    /// <param name="firstStrength">Its strength.</param>
    /// <param name="second">The volume of the second; 0 or more, not both 0.</param>
    /// <param name="secondStrength">Its strength.</param>
    /// <returns>The blend; its <see cref="MixBlend.Concentrate"/> is the second liquid.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A volume is negative, or both are 0.</exception>
    /// <exception cref="ArgumentException">The strengths cannot be compared.</exception>
    public static MixBlend Blend(Volume first, Strength firstStrength, Volume second, Strength secondStrength)
    {
        double firstLitres = Guard.NotNegative(Boundary.Litres(first), "L", nameof(first));
        double secondLitres = Guard.NotNegative(Boundary.Litres(second), "L", nameof(second));
        double totalLitres = Guard.Positive(firstLitres + secondLitres, "L in all", nameof(second));
        double one = StrengthFigure.Of(Guard.NotNull(firstStrength), nameof(firstStrength));
        double other = StrengthFigure.Comparable(Guard.NotNull(secondStrength), firstStrength, nameof(secondStrength));
        double whole = ((firstLitres * one) + (secondLitres * other)) / totalLitres;
        return new MixBlend(first, second, Volume.Zero, StrengthFigure.Like(firstStrength, whole));
    }

    /// <summary>How much of each of two liquids makes a wanted strength: the rule of the cross.</summary>
    /// <param name="total">The volume wanted; more than 0.</param>
    /// <param name="first">The strength of one liquid.</param>
    /// <param name="second">The strength of the other; not the same.</param>
    /// <param name="target">The strength wanted, between the two.</param>
    /// <returns>The blend; its <see cref="MixBlend.Concentrate"/> is the second liquid.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0, or the target is not between the two.</exception>
    /// <exception cref="ArgumentException">The strengths cannot be compared.</exception>
    public static MixBlend BlendTo(Volume total, Strength first, Strength second, Strength target)
    {
        double totalLitres = Guard.Positive(Boundary.Litres(total), "L", nameof(total));
        double wanted = StrengthFigure.Of(Guard.NotNull(target), nameof(target));
        double one = StrengthFigure.Comparable(Guard.NotNull(first), target, nameof(first));
        double other = StrengthFigure.Comparable(Guard.NotNull(second), target, nameof(second));
        if (one == other || !(wanted >= Math.Min(one, other) && wanted <= Math.Max(one, other)))
        {
            throw new ArgumentOutOfRangeException(
                nameof(target), $"target was {target}; allowed: from {first} to {second}, which must differ.");
        }

        double secondLitres = totalLitres * (wanted - one) / (other - one);
        return new MixBlend(Volume.FromLiters(totalLitres - secondLitres), Volume.FromLiters(secondLitres), Volume.Zero, target);
    }

    /// <summary>A chain of dilutions: each step takes what it needs from the mix before.</summary>
    /// <param name="total">The volume wanted of the last mix; more than 0.</param>
    /// <param name="stock">The strength of the concentrate.</param>
    /// <param name="steps">How each mix is diluted, first to last; at least one.</param>
    /// <returns>A batch for each step, first to last, so that each but the last is used up by the next.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0.</exception>
    /// <exception cref="ArgumentException">There is no step, or the strength is by mass without a density.</exception>
    /// <example><code>
    /// IReadOnlyList&lt;MixBatch&gt; chain = TankMix.InSteps(
    ///     Volume.FromLiters(1), Strength.ByVolume(VolumeConcentration.FromPercent(100)), MixRatio.OneIn(10), MixRatio.OneIn(10));
    /// Console.WriteLine(chain[0].Concentrate.Milliliters);   // 10: a litre of one in a hundred holds 10 mL
    /// </code></example>
    public static IReadOnlyList<MixBatch> InSteps(Volume total, Strength stock, params IReadOnlyList<MixRatio> steps)
    {
        Guard.NotNull(stock);
        if (Guard.NotNull(steps).Count == 0)
            throw new ArgumentException("steps was empty; allowed: at least one ratio.", nameof(steps));
        Volume[] volumes = new Volume[steps.Count];
        Volume wanted = total;
        for (int step = steps.Count - 1; step >= 0; step--)
        {
            volumes[step] = wanted;
            wanted = Dilution.MakeUpTo(wanted, steps[step]).Concentrate;
        }

        List<MixBatch> batches = [];
        Strength before = stock;
        for (int step = 0; step < steps.Count; step++)
        {
            MixBatch batch = Dilution.MakeUpTo(volumes[step], steps[step], before);
            batches.Add(batch);
            before = batch.Strength!;
        }

        return ValueList<MixBatch>.Of(batches);
    }

    /// <summary>What is left of a strength in a sprayer that keeps a residue, after filling it with water and emptying it.</summary>
    /// <param name="strength">The strength of the residue.</param>
    /// <param name="residue">The volume that stays in tank, pump and hoses each time; more than 0.</param>
    /// <param name="rinseWater">The clean water of each rinse; 0 or more.</param>
    /// <param name="rinses">How many times; 0 or more.</param>
    /// <returns>The strength of the residue after the last rinse, well mixed each time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A volume or the count is outside what is allowed.</exception>
    /// <exception cref="ArgumentException">The strength is by mass without a density.</exception>
    public static Strength AfterRinsing(Strength strength, Volume residue, Volume rinseWater, int rinses)
    {
        double figure = StrengthFigure.Of(Guard.NotNull(strength), nameof(strength));
        double share = ShareKept(residue, rinseWater);
        return StrengthFigure.Like(strength, figure * Math.Pow(share, Guard.AtLeast(rinses, 0)));
    }

    /// <summary>How many rinses bring what stays in a sprayer down to a strength.</summary>
    /// <param name="strength">The strength of the residue.</param>
    /// <param name="target">The strength that may stay; more than 0.</param>
    /// <param name="residue">The volume that stays in tank, pump and hoses each time; more than 0.</param>
    /// <param name="rinseWater">The clean water of each rinse; more than 0.</param>
    /// <returns>The least number of rinses; 0 where the residue is weak enough already.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A volume or the target is outside what is allowed.</exception>
    /// <exception cref="ArgumentException">The strengths cannot be compared.</exception>
    public static int RinsesTo(Strength strength, Strength target, Volume residue, Volume rinseWater)
    {
        double wanted = Guard.Positive(StrengthFigure.Of(Guard.NotNull(target), nameof(target)), "", nameof(target));
        double figure = StrengthFigure.Comparable(Guard.NotNull(strength), target, nameof(strength));
        Guard.Positive(Boundary.Litres(rinseWater), "L", nameof(rinseWater));
        double share = ShareKept(residue, rinseWater);
        int rinses = 0;
        while (figure > wanted * (1 + 1e-12))
        {
            figure *= share;
            rinses++;
        }

        return rinses;
    }

    private static double ShareKept(Volume residue, Volume rinseWater)
    {
        double residueLitres = Guard.Positive(Boundary.Litres(residue), "L", nameof(residue));
        double rinseLitres = Guard.NotNegative(Boundary.Litres(rinseWater), "L", nameof(rinseWater));
        Guard.AtLeast(residueLitres, rinseLitres * 1e-6, "L", nameof(residue));
        return residueLitres / (residueLitres + rinseLitres);
    }

    private static double Target(Strength target, Strength concentrate)
    {
        double wanted = StrengthFigure.Of(Guard.NotNull(target), nameof(target));
        double strong = StrengthFigure.Comparable(Guard.NotNull(concentrate), target, nameof(concentrate));
        return wanted > 0 && wanted < strong
            ? wanted
            : throw new ArgumentOutOfRangeException(
                nameof(target), $"target was {target}; allowed: above 0 and below the concentrate, {concentrate}.");
    }
}
