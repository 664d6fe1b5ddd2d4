using System.Globalization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>How long the season without freeze is, from the lengths of single years.</summary>
/// <remarks>
/// <para>
/// Never from the difference of two dates of the same chance: a late spring and an early autumn seldom meet in one year, so
/// that such a difference is too short or too long but at the medians.
/// </para>
/// <para>
/// Ranked lengths (the chance that a year is shorter than the m-th of n ordered lengths is m/(n + 1)), and not a normal
/// distribution, because years without a freeze on one side all count 365 days. Nothing is said beyond the shortest and the
/// longest year. Immutable; equal when all members are equal.
/// </para>
/// </remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record FreezeFreeSeason : IFormattable, IDisplayable
{
    private readonly double[] sortedDays;
    private readonly double[] sortedDaysWithBothEnds;

    /// <summary>Takes the years of a record.</summary>
    /// <param name="years">The years whose both ends are known, in any order; there may be none.</param>
    /// <param name="cautions">What to take care of; <see langword="null"/> for the usual cautions.</param>
    /// <param name="resampledYearsByLength">
    /// Where the record was resampled, how many of those years have their longest run without freeze of each length from 0 to 365 days:
    /// answers come from them and not from <paramref name="years"/>.
    /// </param>
    /// <exception cref="ArgumentNullException">The years are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">There are resampled years, but not 366 counts of them, or fewer than five years.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A count is negative.</exception>
    public FreezeFreeSeason(
        IReadOnlyList<FreezeFreePeriod> years, IReadOnlyList<Caution>? cautions = null, IReadOnlyList<int>? resampledYearsByLength = null)
    {
        Years = ValueList<FreezeFreePeriod>.Of(Guard.NotNull(years));
        Cautions = ValueList<Caution>.Of(cautions ?? FreezeEvidence.Always);
        if (resampledYearsByLength is not null)
        {
            ResampledYearsByLength = Checked(resampledYearsByLength);
            sortedDays = [.. ResampledYearsByLength.SelectMany((count, days) => Enumerable.Repeat((double)days, count))];
            sortedDaysWithBothEnds = [.. sortedDays.Where(days => days < MonthDay.DaysOfYear)];
            return;
        }

        sortedDays = [.. Years.Select(year => (double)year.Days).Order()];
        sortedDaysWithBothEnds = [.. Years.Where(year => year.HasBothEnds).Select(year => (double)year.Days).Order()];
    }

    /// <summary>The years.</summary>
    public IReadOnlyList<FreezeFreePeriod> Years { get; }

    /// <summary>How many resampled years have each length from 0 to 365 days; <see langword="null"/> where the record was not resampled.</summary>
    public IReadOnlyList<int>? ResampledYearsByLength { get; }

    /// <summary>What to take care of; every answer carries these.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The length that a season has, or exceeds, in a given share of all years. Years without a freeze count 365 days.</summary>
    /// <param name="chance">The chance of that length or a longer one: 90 % gives a length to rely on, 10 % one to hope for. From 1/(n + 1) to n/(n + 1) for n years.</param>
    /// <returns>The length, between two lengths of the record in proportion.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The chance is beyond the shortest or the longest year.</exception>
    /// <exception cref="InvalidOperationException">There are fewer than five years.</exception>
    public Estimate<Duration> LengthWithChanceOfLongerSeason(Ratio chance) =>
        Length(sortedDays, chance, LengthMethod, sortedDays.Length > 0 && sortedDays[^1] >= MonthDay.DaysOfYear);

    /// <summary>The length that a season has, or exceeds, in a given share of the years with a freeze at both ends.</summary>
    /// <param name="chance">The chance of that length or a longer one. From 1/(n + 1) to n/(n + 1) for n years with a freeze at both ends.</param>
    /// <returns>The length, between two lengths of the record in proportion.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The chance is beyond the shortest or the longest year.</exception>
    /// <exception cref="InvalidOperationException">There are fewer than five such years.</exception>
    public Estimate<Duration> LengthWithChanceOfLongerSeasonGivenAFreeze(Ratio chance) =>
        Length(
        sortedDaysWithBothEnds,
        chance,
        ResampledYearsByLength is null ? FreezeEvidence.EmpiricalLengthGivenAFreeze : FreezeEvidence.ResampledLengthGivenAFreeze,
        hasWholeYears: false);

    /// <summary>The chance that a season is a given length or longer, over all years. Years without a freeze count 365 days.</summary>
    /// <param name="length">From 0 to 365 days.</param>
    /// <returns>
    /// The inverse of <see cref="LengthWithChanceOfLongerSeason"/>: n/(n + 1) for lengths up to the shortest year and
    /// 1/(n + 1) for lengths above the longest, the most and the least that n years can tell.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is not from 0 to 365 days.</exception>
    /// <exception cref="InvalidOperationException">There are fewer than five years.</exception>
    public Estimate<Ratio> ChanceOfSeasonOfAtLeast(Duration length)
    {
        double days = Guard.Within(Boundary.Days(length), 0, MonthDay.DaysOfYear, "days", nameof(length));
        RequireYears(sortedDays);
        int count = sortedDays.Length;

        double rank = RankOf(sortedDays, days);
        return new Estimate<Ratio>(
            Ratio.FromPercent(100 * (1 - rank / (count + 1))), LengthMethod, cautions: Cautions);
    }

    /// <summary>The season in metric units and invariant culture.</summary>
    /// <returns>One line: the shortest, the middle and the longest year, and how many there are.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The season as one line of text.</summary>
    /// <param name="format"><c>M</c> or <c>U</c> or nothing: days are days in both.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: the shortest, the middle and the longest year, and how many there are.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => Title(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(Title(style))
    {
        Rows =
        [
            .. Years.Count < FreezeEvidence.FewestSeasons
                ? []
                : FreezeDisplay.Rows("chance of at least", chance => (Estimate<Duration>?)LengthWithChanceOfLongerSeason(chance), style),
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
            new DisplayRow("source", LengthMethod.Source.ToString()),
        ],
    };

    /// <summary>The length of a rank from 1 to the number of years, between two lengths in proportion; the outermost beyond.</summary>
    internal static double DaysOfRank(ReadOnlySpan<double> sorted, double rank)
    {
        int below = Math.Clamp((int)Math.Floor(rank), 1, sorted.Length);
        double next = sorted[Math.Min(below, sorted.Length - 1)];
        return sorted[below - 1] + Math.Clamp(rank - below, 0, 1) * (next - sorted[below - 1]);
    }

    /// <summary>The lowest rank whose length is at least this; below it, in proportion between two lengths.</summary>
    internal static double RankOf(ReadOnlySpan<double> sorted, double days)
    {
        int above = 0;
        while (above < sorted.Length && sorted[above] < days)
            above++;
        return above == sorted.Length ? sorted.Length
            : above == 0 ? 1
            : above + (days - sorted[above - 1]) / (sorted[above] - sorted[above - 1]);
    }

    private Method LengthMethod => ResampledYearsByLength is null ? FreezeEvidence.EmpiricalLength : FreezeEvidence.ResampledLength;

    private static ValueList<int> Checked(IReadOnlyList<int> resampledYearsByLength)
    {
        if (resampledYearsByLength.Count != MonthDay.DaysOfYear + 1)
        {
            throw new ArgumentException(
                $"resampledYearsByLength held {Guard.Number(resampledYearsByLength.Count)} counts; allowed: {Guard.Number(MonthDay.DaysOfYear + 1)}, one a length.",
                nameof(resampledYearsByLength));
        }

        foreach (int count in resampledYearsByLength)
            Guard.AtLeast(count, 0, nameof(resampledYearsByLength));
        return resampledYearsByLength.Sum() >= FreezeEvidence.FewestValues
            ? ValueList<int>.Of(resampledYearsByLength)
            : throw new ArgumentException(
                $"resampledYearsByLength held fewer than {FreezeEvidence.FewestValues} years; allowed: {FreezeEvidence.FewestValues} or more.", nameof(resampledYearsByLength));
    }

    private static void RequireYears(double[] sorted)
    {
        if (sorted.Length < FreezeEvidence.FewestValues)
        {
            throw new InvalidOperationException(string.Create(
                CultureInfo.InvariantCulture,
                $"The record gives {sorted.Length} such years; {FreezeEvidence.FewestValues} are needed to rank their lengths."));
        }
    }

    private Estimate<Duration> Length(double[] sorted, Ratio chance, Method method, bool hasWholeYears)
    {
        double percent = Guard.Between(Boundary.Fraction(chance) * 100, 0, 100, "%", nameof(chance));
        RequireYears(sorted);
        int count = sorted.Length;
        double rank = (1 - percent / 100) * (count + 1);

        // A hair is allowed: 1/(n + 1) is seldom exact in binary fractions.
        const double hair = 1e-9;
        if (rank < 1 - hair || rank > count + hair)
        {
            throw Guard.Refused(
                nameof(chance), percent, "%", $"from {Guard.Number(100.0 / (count + 1))} to {Guard.Number(100.0 * count / (count + 1))} %, which is what {Guard.Number(count)} years can tell");
        }

        double days = DaysOfRank(sorted, rank);
        return new Estimate<Duration>(
            Duration.FromDays(days), method, cautions: hasWholeYears ? [.. Cautions, FreezeEvidence.LongestSeason] : Cautions);
    }

    private string Title(TextStyle style) => sortedDays.Length == 0
        ? "season without freeze: no years"
        : $"season without freeze: {QuantityText.Of((int)sortedDays[0], style)} to {QuantityText.Of((int)sortedDays[^1], style)} days, half of the years {QuantityText.Of(MedianDays, style)} days or more; {QuantityText.Of(Years.Count, style)} years{(ResampledYearsByLength is null ? "" : ", resampled")}";

    private double MedianDays => (sortedDays[(sortedDays.Length - 1) / 2] + sortedDays[sortedDays.Length / 2]) / 2;

    /// <summary>Whether another has the same years, resampled years and cautions.</summary>
    /// <param name="other">Another season.</param>
    /// <returns><see langword="true"/> where both are the same.</returns>
    public bool Equals(FreezeFreeSeason? other) => other is not null && Years.Equals(other.Years) && Cautions.Equals(other.Cautions)
        && Equals(ResampledYearsByLength, other.ResampledYearsByLength);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Years, Cautions, ResampledYearsByLength);
}
