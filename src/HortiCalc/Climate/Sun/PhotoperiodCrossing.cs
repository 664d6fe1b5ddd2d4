namespace HortiCalc.Climate;

/// <summary>A date on which the length of the day passes a given length.</summary>
/// <remarks>Immutable; equal when both members are equal.</remarks>
public sealed record PhotoperiodCrossing
{
    /// <summary>Describes a crossing.</summary>
    /// <param name="date">The first day on the other side.</param>
    /// <param name="isRising">Whether days from this date on are at least as long; otherwise they are shorter.</param>
    public PhotoperiodCrossing(DateOnly date, bool isRising)
    {
        Date = date;
        IsRising = isRising;
    }

    /// <summary>The first day on the other side.</summary>
    public DateOnly Date { get; }

    /// <summary>Whether days from this date on are at least as long; otherwise they are shorter.</summary>
    public bool IsRising { get; }

    /// <summary>The date and the direction.</summary>
    /// <returns>For instance <c>2025-04-10, rising</c>.</returns>
    public override string ToString() => $"{AirTemperature.Text(Date)}, {(IsRising ? "rising" : "falling")}";
}
