using System.Globalization;
using System.Text.Json.Serialization;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>The dates of many years put together from months of a record, counted by day.</summary>
public sealed record ResampledFreezeDates : FreezeDates
{
    private readonly RankedDays ranks;

    /// <summary>Takes the counts.</summary>
    /// <param name="seasonStart">The first day of the cold season.</param>
    /// <param name="yearsByDay">How many years have their freeze on each of the 365 days from that day on; one year at least.</param>
    /// <exception cref="ArgumentException">There are not 365 counts, or no year.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A count is negative.</exception>
    public ResampledFreezeDates(MonthDay seasonStart, IReadOnlyList<int> yearsByDay)
    {
        SeasonStart = seasonStart;
        YearsByDay = ValueList<int>.Of(Guard.NotNull(yearsByDay));
        if (YearsByDay.Count != MonthDay.DaysOfYear)
        {
            throw new ArgumentException(
                $"yearsByDay held {Guard.Number(YearsByDay.Count)} counts; allowed: {Guard.Number(MonthDay.DaysOfYear)}, one a day.", nameof(yearsByDay));
        }

        foreach (int count in YearsByDay)
            Guard.AtLeast(count, 0, nameof(yearsByDay));
        int[] ascending = [.. YearsByDay.SelectMany((count, day) => Enumerable.Repeat(day, count))];
        if (ascending.Length == 0)
            throw new ArgumentException("yearsByDay held no year with a freeze; allowed: 1 or more.", nameof(yearsByDay));
        ranks = new RankedDays(seasonStart, ascending, PlottingPosition.Weibull);
    }

    /// <summary>The first day of the cold season.</summary>
    public MonthDay SeasonStart { get; }

    /// <summary>How many years have their freeze on each day, from the first day of the season on.</summary>
    public IReadOnlyList<int> YearsByDay { get; }

    /// <inheritdoc/>
    [JsonIgnore]
    public override MonthDay MiddleDate => ranks.Middle;

    internal override Method MethodOverAllSeasons => FreezeEvidence.Resampled;

    internal override Method MethodGivenAFreeze => FreezeEvidence.ResampledGivenAFreeze;

    /// <summary>Whether another has the same counts from the same day on.</summary>
    /// <param name="other">Others.</param>
    /// <returns><see langword="true"/> where both are the same.</returns>
    public bool Equals(ResampledFreezeDates? other) => other is not null && SeasonStart == other.SeasonStart && YearsByDay.Equals(other.YearsByDay);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(SeasonStart, YearsByDay);

    /// <summary>The number of years and their middle.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{YearsByDay.Sum()} resampled years about {MiddleDate}");

    internal override double ChanceBeyond(MonthDay date, FreezeSide side, double share) => ranks.ChanceBeyond(date, side, share);

    internal override double? DayOfChance(double chance, FreezeSide side, double share) => ranks.DayOfChance(chance, side, share);

    internal override bool IsBeyondRecord(double chance, FreezeSide side, double share) => ranks.IsBeyond(chance, share);

    internal override bool IsBeyondRecord(MonthDay date, FreezeSide side) => ranks.CountBeyond(date, side) == 0;
}
