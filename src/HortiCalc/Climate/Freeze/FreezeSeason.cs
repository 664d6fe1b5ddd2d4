using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>One cold season of a record: from midsummer to midsummer, with its first and its last freeze.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. A season with a single freeze has it as its first and as its last. The first
/// may come after New Year and the last before it.
/// </remarks>
public sealed record FreezeSeason
{
    /// <summary>Describes a cold season.</summary>
    /// <param name="start">The first day.</param>
    /// <param name="end">The last day.</param>
    /// <param name="isAutumnKnown">Whether the record tells the first freeze, or that there was none.</param>
    /// <param name="firstFreeze">The first freeze; <see langword="null"/> where there was none or it is not known.</param>
    /// <param name="isSpringKnown">Whether the record tells the last freeze, or that there was none.</param>
    /// <param name="lastFreeze">The last freeze; <see langword="null"/> where there was none or it is not known.</param>
    /// <param name="missingDays">How many days of the season the record lacks.</param>
    /// <exception cref="ArgumentOutOfRangeException">The end or a freeze is outside the season, or there are fewer than 0 missing days.</exception>
    /// <exception cref="ArgumentException">A freeze is given at an end that is not known.</exception>
    public FreezeSeason(
        DateOnly start,
        DateOnly end,
        bool isAutumnKnown,
        DateOnly? firstFreeze,
        bool isSpringKnown,
        DateOnly? lastFreeze,
        int missingDays)
    {
        if (end < start)
            throw new ArgumentOutOfRangeException(nameof(end), $"end was {AirTemperature.Text(end)}; allowed: from {AirTemperature.Text(start)} on.");
        Start = start;
        End = end;
        IsAutumnKnown = isAutumnKnown;
        FirstFreeze = Inside(firstFreeze, isAutumnKnown, nameof(firstFreeze));
        IsSpringKnown = isSpringKnown;
        LastFreeze = Inside(lastFreeze, isSpringKnown, nameof(lastFreeze));
        MissingDays = Guard.AtLeast(missingDays, 0);
    }

    /// <summary>The first day.</summary>
    public DateOnly Start { get; }

    /// <summary>The last day.</summary>
    public DateOnly End { get; }

    /// <summary>Whether the record tells the first freeze, or that there was none.</summary>
    public bool IsAutumnKnown { get; }

    /// <summary>The first freeze; <see langword="null"/> where there was none or it is not known.</summary>
    public DateOnly? FirstFreeze { get; }

    /// <summary>Whether the record tells the last freeze, or that there was none.</summary>
    public bool IsSpringKnown { get; }

    /// <summary>The last freeze; <see langword="null"/> where there was none or it is not known.</summary>
    public DateOnly? LastFreeze { get; }

    /// <summary>How many days of the season the record lacks, those before its first and after its last day included.</summary>
    public int MissingDays { get; }

    /// <summary>The season in one line.</summary>
    /// <returns>First and last day, first and last freeze.</returns>
    public override string ToString() =>
        $"{AirTemperature.Text(Start)} to {AirTemperature.Text(End)}: first freeze {Text(IsAutumnKnown, FirstFreeze)}, last {Text(IsSpringKnown, LastFreeze)}";

    private static string Text(bool isKnown, DateOnly? date) => date is DateOnly day ? AirTemperature.Text(day) : isKnown ? "none" : "not known";

    private DateOnly? Inside(DateOnly? date, bool isKnown, string parameter)
    {
        if (date is null)
            return null;
        if (!isKnown)
            throw new ArgumentException($"{parameter} was {AirTemperature.Text(date.Value)}; allowed: none at an end that is not known.", parameter);
        return date >= Start && date <= End
            ? date
            : throw new ArgumentOutOfRangeException(
                parameter, $"{parameter} was {AirTemperature.Text(date.Value)}; allowed: from {AirTemperature.Text(Start)} to {AirTemperature.Text(End)}.");
    }
}
