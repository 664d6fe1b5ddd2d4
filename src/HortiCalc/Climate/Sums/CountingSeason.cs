using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>The part of every year over which a sum is counted, as its source prints it: from one day of the year to another.</summary>
/// <remarks>Immutable; equal when both days are. A season whose last day comes before its first in the calendar passes New Year.</remarks>
/// <example><code>
/// CountingSeason southern = new(new MonthDay(10, 1), new MonthDay(4, 30));
/// DateSpan vintage = southern.StartingIn(2026); // 1 October 2026 to 30 April 2027
/// </code></example>
public sealed record CountingSeason
{
    /// <summary>Describes a season.</summary>
    /// <param name="first">The first day counted.</param>
    /// <param name="last">The last day counted.</param>
    public CountingSeason(MonthDay first, MonthDay last)
    {
        First = first;
        Last = last;
    }

    /// <summary>The first day counted.</summary>
    public MonthDay First { get; }

    /// <summary>The last day counted.</summary>
    public MonthDay Last { get; }

    /// <summary>The season of a year.</summary>
    /// <param name="year">The year in which the season starts; where it passes New Year it ends in the next.</param>
    /// <returns>Its first and its last day.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The year, or the one in which the season ends, is not from 1 to 9999.</exception>
    public DateSpan StartingIn(int year)
    {
        Guard.Within(year, 1, Last < First ? 9998 : 9999, "");
        return new DateSpan(First.InYear(year), Last.InYear(Last < First ? year + 1 : year));
    }

    /// <summary>The season in words.</summary>
    /// <returns>For instance <c>1 Apr to 31 Oct</c>.</returns>
    public override string ToString() => $"{First} to {Last}";
}
