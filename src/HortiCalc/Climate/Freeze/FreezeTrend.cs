using System.Globalization;
using HortiCalc.Evidence;
using HortiCalc.Units;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>How yearly dates or lengths move over a record, and how likely that is chance alone.</summary>
/// <remarks>
/// The slope is the median of the slopes between all pairs of years (Theil and Sen), which single odd years do not sway. The
/// p-value is that of the Mann-Kendall test with two sides, with its corrections for ties and for continuity. Immutable; equal
/// when all members are equal.
/// </remarks>
public sealed record FreezeTrend
{
    /// <summary>The p-value below which a record is said to have a trend, by custom.</summary>
    internal const double Significant = 0.05;

    /// <summary>Describes a trend.</summary>
    /// <param name="changePerDecade">How far dates move in ten years, later or longer where it is positive.</param>
    /// <param name="pValue">How likely so strong a trend, or a stronger one, is by chance: from 0 to 1.</param>
    /// <param name="years">How many years it rests on, 3 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The change is not finite, the p-value is not from 0 to 1, or the years are fewer than 3.</exception>
    public FreezeTrend(Duration changePerDecade, double pValue, int years)
    {
        ChangePerDecade = Duration.FromDays(Guard.Finite(Boundary.Days(changePerDecade), "days", nameof(changePerDecade)));
        PValue = Guard.Within(pValue, 0, 1, "");
        Years = Guard.AtLeast(years, 3);
    }

    /// <summary>How far dates move in ten years, later where it is positive; lengths grow.</summary>
    public Duration ChangePerDecade { get; }

    /// <summary>How likely so strong a trend, or a stronger one, is where years differ by chance alone.</summary>
    public double PValue { get; }

    /// <summary>How many years it rests on.</summary>
    public int Years { get; }

    /// <summary>The trend in one line.</summary>
    /// <returns>For instance <c>2.1 days earlier per decade, p 0.013, 60 years</c>.</returns>
    public override string ToString() => ToString("later", "earlier");

    internal static Method Evidence { get; } = new(
        "freeze.trend",
        "Theil-Sen slope with the Mann-Kendall test",
        FreezeEvidence.TrendTest,
        new Domain("ten years and more, independent of one another"));

    internal string ToString(string up, string down)
    {
        double days = Boundary.Days(ChangePerDecade);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{Math.Round(Math.Abs(days), 1, MidpointRounding.AwayFromZero)} days {(days < 0 ? down : up)} per decade, p {Math.Round(PValue, 3, MidpointRounding.AwayFromZero)}, {Years} years");
    }

    /// <summary>The trend of values by year, in order; none where there are fewer than ten.</summary>
    internal static FreezeTrend? Of(IReadOnlyList<(int Year, double Days)> values)
    {
        int count = values.Count;
        if (count < FreezeEvidence.FewestSeasons)
            return null;
        double[] slopes = new double[count * (count - 1) / 2];
        int pair = 0;
        int score = 0;
        for (int later = 1; later < count; later++)
        {
            for (int earlier = 0; earlier < later; earlier++)
            {
                double change = values[later].Days - values[earlier].Days;
                slopes[pair++] = change / (values[later].Year - values[earlier].Year);
                score += Math.Sign(change);
            }
        }

        Array.Sort(slopes);
        double slope = (slopes[(slopes.Length - 1) / 2] + slopes[slopes.Length / 2]) / 2;
        double ties = values.GroupBy(value => value.Days).Select(group => (double)group.Count()).Sum(tied => tied * (tied - 1) * (2 * tied + 5));
        double variance = ((double)count * (count - 1) * (2 * count + 5) - ties) / 18;
        double deviations = score == 0 || variance <= 0 ? 0 : (Math.Abs(score) - 1) / Math.Sqrt(variance);
        return new FreezeTrend(Duration.FromDays(10 * slope), Math.Min(1, 2 * Normal.CDF(0, 1, -deviations)), count);
    }
}
