using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>One end of a cold season that a record has too many gaps for, and why it was left out.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record LeftOutSeason
{
    /// <summary>Describes an end of a season that was left out.</summary>
    /// <param name="start">The first day of the season.</param>
    /// <param name="side">The end that was left out.</param>
    /// <param name="missingDays">How many days that could hide a freeze are missing before a freeze is met, counted from that end; all such days of the season where none is met.</param>
    /// <param name="reason">The reason in a sentence.</param>
    public LeftOutSeason(DateOnly start, FreezeSide side, int missingDays, string reason)
    {
        Start = start;
        Side = Guard.Defined(side);
        MissingDays = Guard.AtLeast(missingDays, 1);
        Reason = Guard.NotBlank(reason);
    }

    /// <summary>The first day of the season.</summary>
    public DateOnly Start { get; }

    /// <summary>The end that was left out. The other may still count.</summary>
    public FreezeSide Side { get; }

    /// <summary>How many days that could hide a freeze are missing before a freeze is met, counted from that end.</summary>
    public int MissingDays { get; }

    /// <summary>The reason in a sentence.</summary>
    public string Reason { get; }

    /// <summary>The season, its end and the reason.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => $"{Side.ToString().ToLowerInvariant()} of the season from {AirTemperature.Text(Start)}: {Reason}";
}
