using System.Text.Json.Serialization;
using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>
/// How the dates of a season's freeze are spread over the seasons that had one. With the share of such seasons it makes a
/// <see cref="LastSpringFreeze"/> or a <see cref="FirstAutumnFreeze"/>.
/// </summary>
/// <remarks>Immutable; equal when all members are equal. The kinds are a closed set.</remarks>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(NormalFreezeDates), "normal")]
[JsonDerivedType(typeof(RankedFreezeDates), "ranked")]
[JsonDerivedType(typeof(ResampledFreezeDates), "resampled")]
public abstract record FreezeDates
{
    private protected FreezeDates()
    {
    }

    /// <summary>The middle of the dates.</summary>
    [JsonIgnore]
    public abstract MonthDay MiddleDate { get; }

    internal abstract Method MethodOverAllSeasons { get; }

    internal abstract Method MethodGivenAFreeze { get; }

    /// <summary>
    /// The chance of a freeze that lies on a day or to its rare side: on it or later in spring, on it or earlier in autumn.
    /// </summary>
    /// <param name="date">The day.</param>
    /// <param name="side">Which freeze of the season the dates are of.</param>
    /// <param name="share">The share of all seasons that have one; 1 for the chance given a freeze.</param>
    internal abstract double ChanceBeyond(MonthDay date, FreezeSide side, double share);

    /// <summary>The inverse: the day of a chance above 0 and below the share, as a day of the year with its fraction; none beyond half a year of the middle.</summary>
    internal abstract double? DayOfChance(double chance, FreezeSide side, double share);

    /// <summary>Whether a chance is rarer than the dates can tell, so that its day is only the outermost one.</summary>
    internal virtual bool IsBeyondRecord(double chance, FreezeSide side, double share) => false;

    /// <summary>Whether a day lies beyond all dates on their rare side, so that its chance is only a bound.</summary>
    internal virtual bool IsBeyondRecord(MonthDay date, FreezeSide side) => false;
}
