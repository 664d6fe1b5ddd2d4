using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>
/// When freezes come at a place: the last in spring, the first in autumn and the season between, from the daily minima of
/// ten years and more, for one threshold.
/// </summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
/// <example><code>
/// // Thirty invented years; a real record is read from a file.
/// double[] minima = [.. Enumerable.Range(0, 30 * 365).Select(day => 5 - 9 * Math.Cos(day * Math.Tau / 365) + day * 7919 % 11 - 5)];
/// DailyTemperatures days = DailyTemperatures.Create(
///     new DateOnly(1991, 1, 1), minima, [.. minima.Select(minimum => minimum + 10)], TemperatureUnit.DegreeCelsius);
///
/// FreezeClimate freeze = FreezeClimate.FromDaily(
///     days, threshold: Temperature.FromDegreesCelsius(0), new FreezeClimateOptions(Hemisphere.Northern));
/// Estimate&lt;MonthDay&gt;? plantOut = freeze.LastInSpring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(10));
/// Estimate&lt;Ratio&gt; risk = freeze.FirstInAutumn.ChanceOfFreezeBefore(new MonthDay(10, 1));
/// Estimate&lt;Duration&gt; season = freeze.SeasonWithoutFreeze.LengthWithChanceOfLongerSeason(Ratio.FromPercent(90));
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record FreezeClimate : IFormattable, IDisplayable
{
    /// <summary>Puts a freeze climate together from its parts, as stored; <see cref="FromDaily"/> makes one from a record.</summary>
    /// <param name="threshold">The temperature at or below which a day counts.</param>
    /// <param name="hemisphere">The hemisphere.</param>
    /// <param name="seasonStart">The first day of the cold season.</param>
    /// <param name="method">How dates were turned into chances.</param>
    /// <param name="seasons">The cold seasons of the record, in order.</param>
    /// <param name="leftOut">The ends of seasons that were left out, and why.</param>
    /// <param name="lastInSpring">The last freeze in spring.</param>
    /// <param name="firstInAutumn">The first freeze in autumn.</param>
    /// <param name="seasonWithoutFreeze">The season between.</param>
    public FreezeClimate(
        Temperature threshold,
        Hemisphere hemisphere,
        MonthDay seasonStart,
        FreezeDateMethod method,
        IReadOnlyList<FreezeSeason> seasons,
        IReadOnlyList<LeftOutSeason> leftOut,
        LastSpringFreeze lastInSpring,
        FirstAutumnFreeze firstInAutumn,
        FreezeFreeSeason seasonWithoutFreeze)
    {
        Threshold = HouseUnits.Normalise(threshold);
        Hemisphere = Guard.Defined(hemisphere);
        SeasonStart = seasonStart;
        Method = Guard.NotNull(method);
        Seasons = ValueList<FreezeSeason>.Of(Guard.NotNull(seasons));
        LeftOut = ValueList<LeftOutSeason>.Of(Guard.NotNull(leftOut));
        LastInSpring = Guard.NotNull(lastInSpring);
        FirstInAutumn = Guard.NotNull(firstInAutumn);
        SeasonWithoutFreeze = Guard.NotNull(seasonWithoutFreeze);
    }

    /// <summary>The temperature at or below which a day counts.</summary>
    public Temperature Threshold { get; }

    /// <summary>The hemisphere, given or found in the record.</summary>
    public Hemisphere Hemisphere { get; }

    /// <summary>The first day of the cold season.</summary>
    public MonthDay SeasonStart { get; }

    /// <summary>How dates were turned into chances.</summary>
    public FreezeDateMethod Method { get; }

    /// <summary>The cold seasons that the record touches, in order; the first and last are often not whole.</summary>
    public IReadOnlyList<FreezeSeason> Seasons { get; }

    /// <summary>The ends of seasons that were left out for missing days, and why.</summary>
    public IReadOnlyList<LeftOutSeason> LeftOut { get; }

    /// <summary>The last freeze in spring.</summary>
    public LastSpringFreeze LastInSpring { get; }

    /// <summary>The first freeze in autumn.</summary>
    public FirstAutumnFreeze FirstInAutumn { get; }

    /// <summary>The season without freeze between them.</summary>
    public FreezeFreeSeason SeasonWithoutFreeze { get; }

    /// <summary>How the last freezes of spring move over the record; <see langword="null"/> with fewer than ten of them. Seasons without a freeze have no date and do not count.</summary>
    [JsonIgnore]
    public FreezeTrend? TrendOfLastInSpring => FreezeTrend.Of([.. Seasons.Where(season => season.LastFreeze is not null)
        .Select(season => (season.Start.Year, (double)FreezeFit.DaysFromCut(season.LastFreeze!.Value, SeasonStart)))]);

    /// <summary>How the first freezes of autumn move over the record; <see langword="null"/> with fewer than ten of them. Seasons without a freeze have no date and do not count.</summary>
    [JsonIgnore]
    public FreezeTrend? TrendOfFirstInAutumn => FreezeTrend.Of([.. Seasons.Where(season => season.FirstFreeze is not null)
        .Select(season => (season.Start.Year, (double)FreezeFit.DaysFromCut(season.FirstFreeze!.Value, SeasonStart)))]);

    /// <summary>How the season without freeze lengthens over the record; <see langword="null"/> with fewer than ten years. Years without a freeze on one side count 365 days.</summary>
    [JsonIgnore]
    public FreezeTrend? TrendOfSeasonWithoutFreeze => FreezeTrend.Of(
        [.. SeasonWithoutFreeze.Years.Select(year => (year.Midsummer.Year, (double)year.Days))]);

    /// <summary>Finds when freezes come from a record of daily temperatures.</summary>
    /// <remarks>
    /// <para>
    /// The record is cut into cold seasons at midsummer. The first day of a season at or below the threshold is its first
    /// freeze, the last such day its last; both may lie on either side of New Year, and a single one is both, where the
    /// description of the older US normals calls a season with one freeze a season without.
    /// </para>
    /// <para>
    /// A day counts when its minimum is at or below the threshold, and records are compared as they are kept, to a tenth of
    /// a degree: with 28 °F (-2.222 °C) a day of -2.2 °C counts, and with 0 °C a day of 0.04 °C does, 0.1 °C does not. Where
    /// only days below 0.0 °C are to count, the way the United Kingdom defines an air frost, give -0.1 °C.
    /// </para>
    /// <para>
    /// An end of a season is left out when ten or more days (<see cref="FreezeClimateOptions.MissingDaysThatDrop"/>) are
    /// missing before a freeze is met, counted from that end; days outside the record are missing. This is the published
    /// rule of the Utah Climate Center. It keeps far more seasons than asking for whole ones, which at a warm station drops
    /// years and shifts all dates. One thing is added to it: in the warm half of the year a missing day does not count
    /// where ten years of the record have no freeze within 15 days of that day of the year, because a gap in July hides no
    /// last freeze of a place whose latest was in April. Only minima are read: a day without a maximum is not missing here. What is left out is listed in
    /// <see cref="LeftOut"/>.
    /// </para>
    /// </remarks>
    /// <param name="days">The record, which may hold minima alone (<see cref="DailyTemperatures.FromMinima"/>): at least ten autumns and ten springs that are not left out, 30 for a standard normal.</param>
    /// <param name="threshold">The temperature at or below which a day counts, from -60 °C to 30 °C.</param>
    /// <param name="options">How to cut and to fit; <see langword="null"/> for the defaults.</param>
    /// <returns>The freezes at both ends of the season, its length, and what was left out.</returns>
    /// <exception cref="ArgumentNullException">The days are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The threshold is not from -60 °C to 30 °C.</exception>
    /// <exception cref="ArgumentException">
    /// Fewer than ten seasons are usable at one end, no hemisphere is given and the record does not tell it (its
    /// December to February and June to August differ by less than 1 °C, or one of them is not there), or years are to be
    /// resampled and a month is whole in fewer than ten years.
    /// </exception>
    public static FreezeClimate FromDaily(DailyTemperatures days, Temperature threshold, FreezeClimateOptions? options = null)
    {
        Guard.NotNull(days);
        options ??= new FreezeClimateOptions();
        if (options.RecentYears is int recent && recent < days.End.Year && days.End.AddYears(-recent) >= days.Start)
            days = days.Between(days.End.AddYears(-recent).AddDays(1), days.End);
        double thresholdCelsius = Guard.Within(Boundary.Celsius(threshold), -60, 30, "°C", nameof(threshold));
        Hemisphere hemisphere = options.Hemisphere ?? FreezeRecord.HemisphereOf(days.Start, days.MinimaCelsius) ?? throw new ArgumentException(
            "days did not tell the hemisphere; allowed: a record whose December to February and June to August differ by 1 °C or more, or give a hemisphere.",
            nameof(days));
        MonthDay seasonStart = options.SeasonStart ?? (hemisphere == Hemisphere.Northern ? new MonthDay(8, 1) : new MonthDay(2, 1));

        (IReadOnlyList<FreezeSeason> seasons, IReadOnlyList<LeftOutSeason> leftOut) =
            FreezeRecord.Cut(days.Start, days.MinimaCelsius, thresholdCelsius, seasonStart, options.MissingDaysThatDrop);
        List<FreezeSeason> autumns = [.. seasons.Where(season => season.IsAutumnKnown)];
        List<FreezeSeason> springs = [.. seasons.Where(season => season.IsSpringKnown)];
        RequireSeasons(days, autumns.Count, FreezeSide.Autumn);
        RequireSeasons(days, springs.Count, FreezeSide.Spring);

        List<FreezeFreePeriod> periods = [];
        for (int i = 1; i < seasons.Count; i++)
        {
            if (seasons[i - 1].IsSpringKnown && seasons[i].IsAutumnKnown)
                periods.Add(new FreezeFreePeriod(seasons[i].Start, seasons[i - 1].LastFreeze, seasons[i].FirstFreeze));
        }

        List<Caution> common = [.. FreezeEvidence.Always];
        if (FreezeRecord.HasFreezeInEveryMonth(days.Start, days.MinimaCelsius, thresholdCelsius))
            common.Add(FreezeEvidence.EveryMonth);
        if (options.Hemisphere is null)
            common.Add(FreezeEvidence.HemisphereFromData);

        ResampledYears? resampled = null;
        if (options.Method is ResampledYearsMethod resampling)
        {
            resampled = ResampledYears.Of(days.Start, days.MinimaCelsius, thresholdCelsius, seasonStart, hemisphere, resampling)
                ?? throw new ArgumentException(
                    $"days, {days}, held a month that is whole in fewer than {FreezeEvidence.FewestSeasons} years; allowed: {FreezeEvidence.FewestSeasons} or more for years to be resampled from.",
                    nameof(days));
            common.Add(FreezeEvidence.ResampledRecord);
        }

        (Ratio springShare, FreezeDates? springDates, IReadOnlyList<Caution> springCautions) = Spread(
            springs.Select(season => season.LastFreeze), springs.Count, FreezeSide.Spring, leftOut, seasonStart, options.Method, resampled, common);
        (Ratio autumnShare, FreezeDates? autumnDates, IReadOnlyList<Caution> autumnCautions) = Spread(
            autumns.Select(season => season.FirstFreeze), autumns.Count, FreezeSide.Autumn, leftOut, seasonStart, options.Method, resampled, common);
        FreezeClimate climate = new(
            threshold,
            hemisphere,
            seasonStart,
            options.Method,
            seasons,
            leftOut,
            new LastSpringFreeze(springShare, springDates, springs.Count, cautions: springCautions),
            new FirstAutumnFreeze(autumnShare, autumnDates, autumns.Count, cautions: autumnCautions),
            new FreezeFreeSeason(periods, common, resampled?.YearsByLength));
        return climate.WithTrendCautions();
    }

    /// <summary>The climate in metric units and invariant culture.</summary>
    /// <returns>One line: the threshold, the last and the first freeze, the seasons used and left out.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The climate as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: the threshold, the last and the first freeze, the seasons used and left out.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"freezes at {QuantityText.Of(Threshold, style)} or below")
    {
        Rows =
        [
            new DisplayRow("spring", LastInSpring.ToString(style.Format, style.Culture)),
            new DisplayRow("autumn", FirstInAutumn.ToString(style.Format, style.Culture)),
            new DisplayRow("between", SeasonWithoutFreeze.ToString(style.Format, style.Culture)),
            .. Trend("trend in spring", TrendOfLastInSpring, "later", "earlier"),
            .. Trend("trend in autumn", TrendOfFirstInAutumn, "later", "earlier"),
            .. Trend("trend between", TrendOfSeasonWithoutFreeze, "longer", "shorter"),
            new DisplayRow("hemisphere", $"{Hemisphere.ToString().ToLowerInvariant()}, seasons from {QuantityText.Of(SeasonStart, style)}"),
            .. LeftOut.Select(season => new DisplayRow("left out", season.ToString())),
            .. LastInSpring.Cautions.Concat(FirstInAutumn.Cautions).Distinct().Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
            new DisplayRow("method", Method.ToString()),
            new DisplayRow("source", (LastInSpring.GivenAFreeze?.MethodOverAllSeasons ?? FreezeEvidence.MixedNormal).Source.ToString()),
        ],
    };

    private static DisplayRow[] Trend(string label, FreezeTrend? trend, string up, string down) =>
        trend is null ? [] : [new DisplayRow(label, trend.ToString(up, down))];

    private static void RequireSeasons(DailyTemperatures days, int count, FreezeSide side)
    {
        if (count < FreezeEvidence.FewestSeasons)
        {
            throw new ArgumentException(
                $"days, {days}, held {Guard.Number(count)} usable {(count == 1 ? "season" : "seasons")} in {side.ToString().ToLowerInvariant()}; allowed: {FreezeEvidence.FewestSeasons} or more ({FreezeEvidence.PeriodAverages}).",
                nameof(days));
        }
    }

    private static (Ratio Share, FreezeDates? Dates, IReadOnlyList<Caution> Cautions) Spread(
        IEnumerable<DateOnly?> freezes,
        int seasons,
        FreezeSide side,
        IReadOnlyList<LeftOutSeason> leftOut,
        MonthDay seasonStart,
        FreezeDateMethod method,
        ResampledYears? resampled,
        IReadOnlyList<Caution> common)
    {
        int[] daysFromCut = [.. freezes.OfType<DateOnly>().Select(date => FreezeFit.DaysFromCut(date, seasonStart))];
        int left = leftOut.Count(season => season.Side == side);
        List<Caution> cautions = [FreezeEvidence.Seasons(side, seasons, left), .. common];
        if (left > 0 && daysFromCut.Length > 0 && daysFromCut.Length < seasons)
            cautions.Add(FreezeEvidence.LeftOutSeasons);
        if (daysFromCut.Length is > 0 and < FreezeEvidence.FewestValues)
            cautions.Add(FreezeEvidence.FewFreezes);
        if (resampled is not null && method is ResampledYearsMethod resampling)
        {
            return (
                Ratio.FromPercent(100.0 * resampled.YearsWithFreeze / resampling.Years),
                resampled.YearsWithFreeze == 0
                    ? null
                    : new ResampledFreezeDates(seasonStart, side == FreezeSide.Spring ? resampled.LastByDay : resampled.FirstByDay),
                cautions);
        }

        return (Ratio.FromPercent(100.0 * daysFromCut.Length / seasons), FreezeFit.Of(daysFromCut, seasonStart, method), cautions);
    }

    private FreezeClimate WithTrendCautions() => new(
        Threshold,
        Hemisphere,
        SeasonStart,
        Method,
        Seasons,
        LeftOut,
        TrendOfLastInSpring is { PValue: < FreezeTrend.Significant }
            ? new LastSpringFreeze(
                LastInSpring.ShareOfSeasonsWithFreeze, LastInSpring.GivenAFreeze, LastInSpring.Seasons, cautions: [.. LastInSpring.Cautions, FreezeEvidence.TrendInRecord])
            : LastInSpring,
        TrendOfFirstInAutumn is { PValue: < FreezeTrend.Significant }
            ? new FirstAutumnFreeze(
                FirstInAutumn.ShareOfSeasonsWithFreeze, FirstInAutumn.GivenAFreeze, FirstInAutumn.Seasons, cautions: [.. FirstInAutumn.Cautions, FreezeEvidence.TrendInRecord])
            : FirstInAutumn,
        TrendOfSeasonWithoutFreeze is { PValue: < FreezeTrend.Significant }
            ? new FreezeFreeSeason(SeasonWithoutFreeze.Years, [.. SeasonWithoutFreeze.Cautions, FreezeEvidence.TrendInRecord], SeasonWithoutFreeze.ResampledYearsByLength)
            : SeasonWithoutFreeze);

    private string ToString(TextStyle style) =>
        $"freezes at {QuantityText.Of(Threshold, style)} or below: {LastInSpring.ToString(style.Format, style.Culture)}; {FirstInAutumn.ToString(style.Format, style.Culture)}; {LeftOut.Count} left out";
}
