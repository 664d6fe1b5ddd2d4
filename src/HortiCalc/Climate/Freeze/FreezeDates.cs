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

    /// <summary>The day that a share of the dates, above 0 and below 1, comes before; <see langword="null"/> beyond half a year of the middle.</summary>
    internal abstract MonthDay? DayWithShareBefore(double share);

    /// <summary>The share of the dates that comes before a day. The day is taken in the year around the middle date.</summary>
    internal abstract double ShareBefore(MonthDay date);
}
