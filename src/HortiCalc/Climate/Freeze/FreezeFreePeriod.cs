using System.Globalization;
using System.Text.Json.Serialization;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The days without freeze of one year: from the last freeze before midsummer to the first one after.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. The length is the plain difference of the two dates, as the national weather
/// service of Canada counts its frost-free period; the days strictly between them are one fewer. At most 365 days: a year
/// without a freeze on one side has no end there. The 1981-2010 normals of the United States take the longest run within
/// single simulated years instead, and print shorter lengths where only some seasons freeze.
/// </remarks>
public sealed record FreezeFreePeriod
{
    /// <summary>Describes the days without freeze of a year.</summary>
    /// <param name="midsummer">The day on which the cold seasons are cut: the first day of the season that begins.</param>
    /// <param name="lastFreeze">The last freeze before; <see langword="null"/> where the season before had none.</param>
    /// <param name="firstFreeze">The first freeze on that day or after; <see langword="null"/> where the season had none.</param>
    /// <exception cref="ArgumentOutOfRangeException">A freeze is on the wrong side of midsummer, or more than a year from it.</exception>
    public FreezeFreePeriod(DateOnly midsummer, DateOnly? lastFreeze, DateOnly? firstFreeze)
    {
        if (lastFreeze is DateOnly last && (last >= midsummer || midsummer.DayNumber - last.DayNumber > LongestYear))
        {
            throw new ArgumentOutOfRangeException(
                nameof(lastFreeze), $"lastFreeze was {AirTemperature.Text(last)}; allowed: within a year before {AirTemperature.Text(midsummer)}.");
        }

        if (firstFreeze is DateOnly first && (first < midsummer || first.DayNumber - midsummer.DayNumber >= LongestYear))
        {
            throw new ArgumentOutOfRangeException(
                nameof(firstFreeze), $"firstFreeze was {AirTemperature.Text(first)}; allowed: within a year from {AirTemperature.Text(midsummer)} on.");
        }

        Midsummer = midsummer;
        LastFreeze = lastFreeze;
        FirstFreeze = firstFreeze;
    }

    private const int LongestYear = 366;

    /// <summary>The day on which the cold seasons are cut. Its year is the year of the period; a southern one began in the year before.</summary>
    public DateOnly Midsummer { get; }

    /// <summary>The last freeze before midsummer; <see langword="null"/> where the season before had none.</summary>
    public DateOnly? LastFreeze { get; }

    /// <summary>The first freeze from midsummer on; <see langword="null"/> where the season had none.</summary>
    public DateOnly? FirstFreeze { get; }

    /// <summary>The length: the difference of the two dates, at most 365 days; 365 days where there is no freeze on a side.</summary>
    [JsonIgnore]
    public Duration Length => Duration.FromDays(Days);

    /// <summary>Whether it has a freeze at both ends and is shorter than a year.</summary>
    [JsonIgnore]
    public bool HasBothEnds => LastFreeze is not null && FirstFreeze is not null && Days < MonthDay.DaysOfYear;

    /// <summary>The period in one line.</summary>
    /// <returns>The length and the two freezes.</returns>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Days} days: last freeze {(LastFreeze is DateOnly last ? AirTemperature.Text(last) : "none")}, first {(FirstFreeze is DateOnly first ? AirTemperature.Text(first) : "none")}");

    internal int Days => LastFreeze is DateOnly last && FirstFreeze is DateOnly first
        ? Math.Min(first.DayNumber - last.DayNumber, MonthDay.DaysOfYear)
        : MonthDay.DaysOfYear;
}
