using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Brings an amount to what people can measure with what they own, and says how far off that is.</summary>
/// <remarks>
/// A single measure is taken where one is near enough, the largest that is filled at least once before a part of a larger one; else two. Where
/// even that is further off than the limit the amount is refused, with the best that could be done: make a larger batch, own a smaller spoon, or
/// weigh. A powder is measured by a level spoon only with its bulk density, which differs between powders several fold (<see cref="PowderMeasures"/>).
/// </remarks>
/// <example><code>
/// PracticalAmount spoon = Measuring.Nearest(Volume.FromMilliliters(30), KitchenMeasures.Us, limit: Ratio.FromPercent(5));
/// Console.WriteLine(spoon);   // 1 US fluid ounce (29.6 mL for 30 mL, 1.42 % too little)
/// </code></example>
public static class Measuring
{
    /// <summary>The nearest practical measure of a liquid.</summary>
    /// <param name="amount">The volume wanted; more than 0.</param>
    /// <param name="measures">What is at hand; at least one.</param>
    /// <param name="limit">The largest error allowed, either way; from 0 to 100 %, 100 % excepted.</param>
    /// <returns>What to measure and the error, which is within the limit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what is allowed, or nothing at hand is near enough.</exception>
    /// <exception cref="ArgumentException">There are no measures.</exception>
    public static PracticalAmount Nearest(Volume amount, IReadOnlyList<KitchenMeasure> measures, Ratio limit)
    {
        double litres = Guard.Positive(Boundary.Litres(amount) * 1000, "mL", nameof(amount)) / 1000;
        double allowed = Boundary.Fraction(limit);
        if (!(allowed >= 0 && allowed < 1))
            throw Guard.Refused(nameof(limit), allowed * 100, "%", "from 0 to below 100 %");
        KitchenMeasure[] largestFirst = [.. Guard.NotNull(measures).OrderByDescending(measure => Boundary.Litres(measure.Volume))];
        if (largestFirst.Length == 0)
            throw new ArgumentException("measures was empty; allowed: at least one.", nameof(measures));

        List<PracticalAmount> singles = [.. largestFirst.Select(measure => Single(amount, litres, measure)).OfType<PracticalAmount>()];
        PracticalAmount[] near = [.. singles.Where(found => Off(found) <= allowed)];
        PracticalAmount? single = near.FirstOrDefault(found => found.Measures[0].Count >= found.Measures[0].Measure.Parts) ?? near.FirstOrDefault();
        if (single is not null)
            return single;

        List<PracticalAmount> pairs = [];
        for (int large = 0; large < largestFirst.Length; large++)
        {
            double one = Boundary.Litres(largestFirst[large].Volume);
            int whole = (int)Math.Min(Math.Floor(litres / one), largestFirst[large].Most);
            double rest = litres - (whole * one);
            if (whole == 0 || rest <= 0)
                continue;
            foreach (KitchenMeasure small in largestFirst.Skip(large + 1))
            {
                if (Single(Volume.FromLiters(rest), rest, small) is PracticalAmount remainder)
                {
                    pairs.Add(new PracticalAmount(
                        amount, [new MeasureCount(largestFirst[large], whole * largestFirst[large].Parts), remainder.Measures[0]]));
                }
            }
        }

        PracticalAmount? best = singles.Concat(pairs).MinBy(Off);
        return pairs.FirstOrDefault(found => Off(found) <= allowed) ?? throw Guard.Refused(
            nameof(amount),
            litres * 1000,
            "mL",
            $"what the measures at hand hold within {Guard.Number(allowed * 100)} %; "
            + (best is null ? "it is more than they can count or less than a part of the smallest" : $"nearest is {best}"));
    }

    /// <summary>The nearest level measure of a powder.</summary>
    /// <param name="amount">The mass wanted; more than 0.</param>
    /// <param name="bulkDensity">What a litre of the loose powder weighs; more than 0.</param>
    /// <param name="measures">What is at hand; at least one.</param>
    /// <param name="limit">The largest error allowed, either way, apart from that of the bulk density.</param>
    /// <returns>What to measure and the error of the measure. Bulk densities of powders vary by a fifth and more: weigh where it matters.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what is allowed, or nothing at hand is near enough.</exception>
    /// <exception cref="ArgumentException">There are no measures.</exception>
    public static PracticalAmount Nearest(Mass amount, Density bulkDensity, IReadOnlyList<KitchenMeasure> measures, Ratio limit)
    {
        double grams = Guard.Positive(Boundary.Kilograms(amount) * 1000, "g", nameof(amount));
        double gramsPerLitre = Guard.Positive(Boundary.KilogramsPerCubicMetre(bulkDensity), "kg/m³", nameof(bulkDensity));
        return Nearest(Volume.FromLiters(grams / gramsPerLitre), measures, limit);
    }

    /// <summary>What a level measure of a powder weighs.</summary>
    /// <param name="volume">The volume of the measure; more than 0.</param>
    /// <param name="bulkDensity">What a litre of the loose powder weighs; more than 0.</param>
    /// <returns>The mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is not above 0.</exception>
    public static Mass LevelMeasure(Volume volume, Density bulkDensity)
    {
        double litres = Guard.Positive(Boundary.Litres(volume), "L", nameof(volume));
        return Mass.FromGrams(litres * Guard.Positive(Boundary.KilogramsPerCubicMetre(bulkDensity), "kg/m³", nameof(bulkDensity)));
    }

    /// <summary>The nearest reading of a scale.</summary>
    /// <param name="amount">The mass wanted; more than 0.</param>
    /// <param name="division">The smallest step the scale shows; more than 0.</param>
    /// <param name="limit">The largest error allowed, either way; 0 or more.</param>
    /// <returns>The whole number of steps nearest to the amount.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what is allowed, or the scale is too coarse.</exception>
    public static Mass OnScale(Mass amount, Mass division, Ratio limit)
    {
        double grams = Guard.Positive(Boundary.Kilograms(amount) * 1000, "g", nameof(amount));
        double step = Guard.Positive(Boundary.Kilograms(division) * 1000, "g", nameof(division));
        double allowed = Guard.NotNegative(Boundary.Fraction(limit) * 100, "%", nameof(limit)) / 100;
        double shown = Math.Round(grams / step, MidpointRounding.AwayFromZero) * step;
        return Math.Abs(shown - grams) <= (allowed + 1e-12) * grams
            ? Mass.FromGrams(shown)
            : throw Guard.Refused(
                nameof(amount), grams, "g", $"what a scale of {Guard.Number(step)} g shows within {Guard.Number(allowed * 100)} %");
    }

    // Within the hair that binary fractions leave, an error at the limit is allowed.
    private static double Off(PracticalAmount amount) => Math.Abs(Boundary.Fraction(amount.Error)) - 1e-12;

    private static PracticalAmount? Single(Volume wanted, double litres, KitchenMeasure measure)
    {
        double count = Math.Round(litres * measure.Parts / Boundary.Litres(measure.Volume), MidpointRounding.AwayFromZero);
        return count >= 1 && count <= (double)measure.Most * measure.Parts
            ? new PracticalAmount(wanted, [new MeasureCount(measure, (int)count)])
            : null;
    }
}
