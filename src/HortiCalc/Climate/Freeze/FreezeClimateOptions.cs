using System.Globalization;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>How a record is cut into cold seasons and turned into chances.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record FreezeClimateOptions
{
    /// <summary>Chooses how a record is cut and turned into chances; every choice has a default.</summary>
    /// <param name="hemisphere">The hemisphere, or <see langword="null"/> to take it from the record.</param>
    /// <param name="seasonStart">
    /// The first day of the cold season, which parts spring from autumn; <see langword="null"/> for 1 August in the north and
    /// 1 February in the south, where the national normals of the United States cut.
    /// </param>
    /// <param name="missingDaysThatDrop">How many missing days before a freeze is met leave a season out; 1 for the strictest rule.</param>
    /// <param name="method">How dates are turned into chances; <see langword="null"/> for <see cref="FreezeDateMethod.MixedNormal"/>.</param>
    /// <param name="recentYears">
    /// To use only so many years up to the last day of the record, 11 or more, where older ones no longer tell of today's climate (<see cref="FreezeTrend"/>);
    /// <see langword="null"/> for all. A record that is no longer than that is used whole.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The missing days are fewer than 1, the recent years fewer than 11, or the hemisphere is not a defined one.
    /// </exception>
    public FreezeClimateOptions(
        Hemisphere? hemisphere = null,
        MonthDay? seasonStart = null,
        int missingDaysThatDrop = FreezeEvidence.MissingDaysThatDrop,
        FreezeDateMethod? method = null,
        int? recentYears = null)
    {
        Hemisphere = hemisphere is Hemisphere half ? Guard.Defined(half, nameof(hemisphere)) : null;
        SeasonStart = seasonStart;
        MissingDaysThatDrop = Guard.AtLeast(missingDaysThatDrop, 1);
        Method = method ?? FreezeDateMethod.MixedNormal;
        RecentYears = recentYears is int years ? Guard.AtLeast(years, FreezeEvidence.FewestSeasons + 1, nameof(recentYears)) : null;
    }

    /// <summary>The hemisphere, or <see langword="null"/> to take it from the record.</summary>
    public Hemisphere? Hemisphere { get; }

    /// <summary>The first day of the cold season, or <see langword="null"/> for the usual one of the hemisphere.</summary>
    public MonthDay? SeasonStart { get; }

    /// <summary>How many missing days before a freeze is met leave a season out.</summary>
    public int MissingDaysThatDrop { get; }

    /// <summary>How dates are turned into chances.</summary>
    public FreezeDateMethod Method { get; }

    /// <summary>How many years up to the last day of the record are used, or <see langword="null"/> for all.</summary>
    public int? RecentYears { get; }

    /// <summary>The choices in one line.</summary>
    /// <returns>Hemisphere, first day of the season, missing days, method and years.</returns>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Hemisphere?.ToString().ToLowerInvariant() ?? "hemisphere from the record"}, seasons from {SeasonStart?.ToString() ?? "midsummer"}, left out at {MissingDaysThatDrop} missing days, {Method}{(RecentYears is int years ? $", the last {years} years" : "")}");
}
