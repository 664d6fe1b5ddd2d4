using System.Globalization;
using System.Text.Json.Serialization;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>The dates of the seasons with a freeze as they are, ranked.</summary>
/// <remarks>
/// Dates are counted in a year of 365 days from the cut. Seasons without a freeze rank behind all others, so that a chance over all
/// seasons is a rank among all of them. A chance rarer than that of the outermost date has that date for its bound.
/// </remarks>
public sealed record RankedFreezeDates : FreezeDates
{
    private readonly RankedDays ranks;

    /// <summary>Takes the dates of seasons.</summary>
    /// <param name="seasonStart">The first day of the cold season.</param>
    /// <param name="daysFromStart">The date of each season with a freeze, as days after the first day, from 0 to 364, in any order; at least one.</param>
    /// <param name="position">The plotting position.</param>
    /// <exception cref="ArgumentException">There is no date.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A day is not from 0 to 364.</exception>
    public RankedFreezeDates(MonthDay seasonStart, IReadOnlyList<int> daysFromStart, PlottingPosition position)
    {
        SeasonStart = seasonStart;
        Position = Guard.NotNull(position);
        if (Guard.NotNull(daysFromStart).Count == 0)
            throw new ArgumentException("daysFromStart held no dates; allowed: 1 or more.", nameof(daysFromStart));
        foreach (int day in daysFromStart)
            Guard.Within(day, 0, MonthDay.DaysOfYear - 1, "days", nameof(daysFromStart));
        int[] ascending = [.. daysFromStart.Order()];
        DaysFromStart = ValueList<int>.Of(ascending);
        ranks = new RankedDays(seasonStart, ascending, position);
    }

    /// <summary>The first day of the cold season.</summary>
    public MonthDay SeasonStart { get; }

    /// <summary>The dates as days after the first day of the season, in ascending order.</summary>
    public IReadOnlyList<int> DaysFromStart { get; }

    /// <summary>The plotting position.</summary>
    public PlottingPosition Position { get; }

    /// <inheritdoc/>
    [JsonIgnore]
    public override MonthDay MiddleDate => ranks.Middle;

    internal override Method MethodOverAllSeasons => FreezeEvidence.Ranked;

    internal override Method MethodGivenAFreeze => FreezeEvidence.RankedGivenAFreeze;

    /// <summary>Whether another has the same dates, cut and plotting position.</summary>
    /// <param name="other">Others.</param>
    /// <returns><see langword="true"/> where both are the same.</returns>
    public bool Equals(RankedFreezeDates? other) =>
        other is not null && SeasonStart == other.SeasonStart && DaysFromStart.Equals(other.DaysFromStart) && Position == other.Position;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(SeasonStart, DaysFromStart, Position);

    /// <summary>The number of dates and the plotting position.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{DaysFromStart.Count} ranked dates about {MiddleDate}, {Position}");

    internal int CountBeyond(MonthDay date, FreezeSide side) => ranks.CountBeyond(date, side);

    internal override double ChanceBeyond(MonthDay date, FreezeSide side, double share) => ranks.ChanceBeyond(date, side, share);

    internal override double? DayOfChance(double chance, FreezeSide side, double share) => ranks.DayOfChance(chance, side, share);

    internal override bool IsBeyondRecord(double chance, FreezeSide side, double share) => ranks.IsBeyond(chance, share);

    internal override bool IsBeyondRecord(MonthDay date, FreezeSide side) => ranks.CountBeyond(date, side) == 0;
}
