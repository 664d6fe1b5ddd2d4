using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>
/// When the freeze at one end of the cold season comes: in which share of the seasons there is one, and how its date is
/// spread over the seasons that have one. A mixed distribution, of freeze or no freeze and of dates.
/// </summary>
/// <remarks>
/// <para>
/// Every chance is one of two, and the names tell which. Over all seasons, those without a freeze included: what a grower
/// means by "one year in ten", and what the older national tables print. Or given that the season has a freeze: what the
/// 1981-2010 normals of the United States print. Where every season has a freeze the two are the same; where half of them
/// have one, they lie weeks apart.
/// </para>
/// <para>
/// Two kinds, because the directions differ: <see cref="LastSpringFreeze"/> asks what comes later,
/// <see cref="FirstAutumnFreeze"/> what came earlier. Immutable; equal when all members are equal.
/// </para>
/// </remarks>
public abstract record FreezeDateDistribution : IFormattable, IDisplayable
{
    // A share estimated from a table, and a chance in per cent, are not exact in binary fractions.
    private const double Hair = 1e-6;

    private protected FreezeDateDistribution(
        Ratio shareOfSeasonsWithFreeze, FreezeDates? givenAFreeze, int? seasons, Duration? fitError, IReadOnlyList<Caution>? cautions)
    {
        Share = Guard.Within(Boundary.Fraction(shareOfSeasonsWithFreeze) * 100, 0, 100, "%", nameof(shareOfSeasonsWithFreeze)) / 100;
        ShareOfSeasonsWithFreeze = HouseUnits.Normalise(shareOfSeasonsWithFreeze);
        GivenAFreeze = Share > 0 || givenAFreeze is null
            ? givenAFreeze
            : throw new ArgumentException("givenAFreeze held dates; allowed: none where no season has a freeze.", nameof(givenAFreeze));
        Seasons = seasons is int count ? Guard.AtLeast(count, 1, nameof(seasons)) : null;
        FitError = fitError is Duration error
            ? Duration.FromDays(Guard.NotNegative(Boundary.Days(error), "days", nameof(fitError)))
            : null;
        Cautions = ValueList<Caution>.Of(cautions ?? FreezeEvidence.Always);
    }

    /// <summary>The share of the seasons that have a freeze.</summary>
    public Ratio ShareOfSeasonsWithFreeze { get; }

    /// <summary>The dates of the seasons with a freeze; <see langword="null"/> where there were too few of them to tell.</summary>
    public FreezeDates? GivenAFreeze { get; }

    /// <summary>How many seasons it rests on; <see langword="null"/> where that is not known.</summary>
    public int? Seasons { get; }

    /// <summary>The root mean square difference to the dates of a printed table; <see langword="null"/> where it was not fitted to one.</summary>
    public Duration? FitError { get; }

    /// <summary>What to take care of; every answer carries these.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>
    /// Whether dates can be given: not where no season had a freeze, nor where it was put together without dates. Then only
    /// <see cref="ShareOfSeasonsWithFreeze"/> is known.
    /// </summary>
    [JsonIgnore]
    public bool HasDates => GivenAFreeze is not null;

    internal double Share { get; }

    /// <summary>What the distribution is of: the title of its display.</summary>
    private protected abstract string Subject { get; }

    /// <summary>The distribution in metric units and invariant culture.</summary>
    /// <returns>One line: the freeze, the dates, the share of seasons, the number of seasons.</returns>
    public sealed override string ToString() => ToString(TextStyle.Default);

    /// <summary>The distribution as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for the day first, <c>U</c> for the month first.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: the freeze, the dates, the share of seasons, the number of seasons.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"{Subject}: {Dates(style)}")
    {
        Rows =
        [
            .. ChanceRows(style),
            new DisplayRow("seasons with a freeze", QuantityText.Of(ShareOfSeasonsWithFreeze, style)),
            .. Seasons is int count ? [new DisplayRow("seasons", QuantityText.Of(count, style))] : (DisplayRow[])[],
            .. FitError is Duration error ? [new DisplayRow("fit to the table", $"{QuantityText.Of(error, style)} root mean square")] : (DisplayRow[])[],
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
            new DisplayRow("source", (GivenAFreeze?.MethodOverAllSeasons ?? FreezeEvidence.MixedNormal).Source.ToString()),
        ],
    };

    private protected abstract IEnumerable<DisplayRow> ChanceRows(TextStyle style);

    private protected static double Percent(Ratio chance) => Guard.Between(Boundary.Fraction(chance) * 100, 0, 100, "%", nameof(chance));

    /// <summary>Which freeze of the season it is of; in spring the rare side is the later one, in autumn the earlier.</summary>
    private protected abstract FreezeSide Side { get; }

    /// <summary>Whether a chance over all seasons is not reached at all, because so many seasons have no freeze.</summary>
    internal bool IsNeverReached(double fraction) => fraction >= Share - Hair;

    private protected Estimate<MonthDay>? DateOverAllSeasons(Ratio chance)
    {
        double fraction = Percent(chance) / 100;
        return IsNeverReached(fraction) ? null : Date(fraction, Share, RequireDates().MethodOverAllSeasons);
    }

    private protected Estimate<MonthDay>? DateGivenAFreeze(Ratio chance)
    {
        double fraction = Percent(chance) / 100;
        return Share == 0 ? null : Date(fraction, 1, RequireDates().MethodGivenAFreeze);
    }

    private protected Estimate<Ratio> ChanceOverAllSeasons(MonthDay date) => Share == 0
        ? new Estimate<Ratio>(Ratio.Zero, FreezeEvidence.MixedNormal, Bound(0, Seasons, 0), cautions: Cautions)
        : Chance(date, Share, RequireDates().MethodOverAllSeasons, Seasons);

    private protected Estimate<Ratio>? ChanceGivenAFreeze(MonthDay date) => Share == 0
        ? null
        : Chance(date, 1, RequireDates().MethodGivenAFreeze, (GivenAFreeze as RankedFreezeDates)?.DaysFromStart.Count);

    private protected Estimate<Ratio> OverYears(MonthDay date, int years) =>
        YearlyChance.AtLeastOnceIn(years, ChanceOverAllSeasons(date));

    /// <summary>A number of days before the date of a chance over all seasons.</summary>
    private protected Estimate<MonthDay>? DaysBefore(Ratio chance, int days) => DateOverAllSeasons(chance)?.AdjustedBy(
        FreezeEvidence.BeforeFreeze, date => MonthDay.Nearest(date.DayOfYear - days));

    private Estimate<MonthDay>? Date(double fraction, double share, Method method) =>
        RequireDates().DayOfChance(fraction, Side, share) is double day
            ? new Estimate<MonthDay>(
                MonthDay.Nearest(day), method, cautions: RequireDates().IsBeyondRecord(fraction, Side, share) ? [.. Cautions, FreezeEvidence.BeyondRecord] : Cautions)
            : null;

    private Estimate<Ratio> Chance(MonthDay date, double share, Method method, int? seasons)
    {
        FreezeDates dates = RequireDates();
        double chance = dates.ChanceBeyond(date, Side, share);
        return new Estimate<Ratio>(
            Ratio.FromPercent(100 * chance),
            method,
            dates is RankedFreezeDates ranked ? Bound(ranked.CountBeyond(date, Side), seasons, chance) : null,
            cautions: dates.IsBeyondRecord(date, Side) ? [.. Cautions, FreezeEvidence.BeyondRecord] : Cautions);
    }

    // The interval is of a count of years; a chance read between two ranked dates can lie a little outside it, and is held too.
    private static EstimateRange<Ratio>? Bound(int times, int? seasons, double chance) => seasons is int count && count >= times
        ? BinomialBounds.Range(times, count) is var counted && Boundary.Fraction(counted.Low) <= chance && Boundary.Fraction(counted.High) >= chance
            ? counted
            : new EstimateRange<Ratio>(
                Ratio.FromPercent(100 * Math.Min(chance, Boundary.Fraction(counted.Low))),
                Ratio.FromPercent(100 * Math.Max(chance, Boundary.Fraction(counted.High))),
                counted.Meaning)
        : null;

    private FreezeDates RequireDates() => GivenAFreeze ?? throw new InvalidOperationException(
        $"The distribution holds no dates, only that {QuantityText.Of(ShareOfSeasonsWithFreeze, TextStyle.Default)} of {Seasons?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "the"} seasons have a freeze; {nameof(HasDates)} tells before.");

    private string Dates(TextStyle style) => (GivenAFreeze, Share) switch
    {
        ({ } dates, _) => $"about {QuantityText.Of(dates.MiddleDate, style)}",
        (null, 0) => "no freeze",
        _ => "dates not known",
    };

    private string ToString(TextStyle style)
    {
        string seasons = Seasons is int count ? $" of {QuantityText.Of(count, style)} seasons" : " of the seasons";
        string cautions = Cautions.Count == 1 ? "1 caution" : $"{QuantityText.Of(Cautions.Count, style)} cautions";
        return $"{Subject}: {Dates(style)}; a freeze in {QuantityText.Of(ShareOfSeasonsWithFreeze, style)}{seasons}; {cautions}";
    }
}
