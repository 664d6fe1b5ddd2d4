using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>When a requirement of heat will be met, and how sure that is: this season so far, continued with the weather of each past year.</summary>
/// <remarks>
/// <para>
/// Each past year gives one date. Their quantiles stand at the ranks k / (n + 1), so that n years support the levels from 1/(n + 1) to
/// n/(n + 1) and no others: a date at 10 % needs nine years. A year in which the season ends before is a date later than all others, and not left out;
/// a level beyond the years that come in time is not reached. With fewer than five whole past seasons there is no forecast.
/// </para>
/// <para>
/// Years are laid over one another by the calendar: a past 29 February falls to the 28th where this season has none. A weather forecast
/// of the next days may be part of the season so far: its days then count as known. Gaps of up to 5 % are filled in from the days around.
/// Immutable; equal when all members are equal.
/// </para>
/// </remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record HeatForecast : IFormattable, IDisplayable
{
    private readonly int[] sortedDays;
    private readonly int[] sortedUsualDays;

    /// <summary>Holds a forecast; <see cref="For"/> makes one.</summary>
    /// <param name="requirement">What is to be met.</param>
    /// <param name="start">The first day of the season.</param>
    /// <param name="lastKnown">The last day of the season that is known.</param>
    /// <param name="lastDay">The last day of the season.</param>
    /// <param name="soFar">The degree days up to the last day that is known.</param>
    /// <param name="reachedOn">The day on which the requirement was met; <see langword="null"/> where it is still to come.</param>
    /// <param name="years">What each past year says; at least five where the requirement is still to come.</param>
    /// <param name="leftOutYears">The past seasons with too many missing days.</param>
    /// <param name="skill">How well such forecasts would have done in the past; <see langword="null"/> where that cannot be told.</param>
    /// <param name="cautions">What to take care of.</param>
    /// <exception cref="ArgumentNullException">The requirement or the years are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The dates are not in order.</exception>
    /// <exception cref="ArgumentException">There are fewer than five years.</exception>
    public HeatForecast(
        HeatRequirement requirement,
        DateOnly start,
        DateOnly lastKnown,
        DateOnly lastDay,
        ThermalTime soFar,
        DateOnly? reachedOn,
        IReadOnlyList<ForecastYear> years,
        IReadOnlyList<int>? leftOutYears = null,
        ForecastSkill? skill = null,
        IReadOnlyList<Caution>? cautions = null)
    {
        Requirement = Guard.NotNull(requirement);
        RequireDay(lastKnown, start, lastDay, nameof(lastKnown));
        if (reachedOn is DateOnly reached)
            RequireDay(reached, start, lastKnown, nameof(reachedOn));
        Start = start;
        LastKnown = lastKnown;
        LastDay = lastDay;
        SoFar = soFar;
        ReachedOn = reachedOn;
        Years = ValueList<ForecastYear>.Of(Guard.NotNull(years));
        LeftOutYears = ValueList<int>.Of(leftOutYears ?? []);
        Skill = skill;
        Cautions = ValueList<Caution>.Of(cautions ?? []);
        if (reachedOn is null && years.Count < HeatForecastEvidence.FewestYears)
        {
            throw new ArgumentException(
                $"years held {Guard.Number(years.Count)}; allowed: {Guard.Number(HeatForecastEvidence.FewestYears)} or more.", nameof(years));
        }

        sortedDays = Sorted(years.Select(year => year.Date));
        sortedUsualDays = Sorted(years.Select(year => year.UsualDate));
    }

    /// <summary>What is to be met.</summary>
    public HeatRequirement Requirement { get; }

    /// <summary>The first day of the season: sowing, or another day on which counting begins.</summary>
    public DateOnly Start { get; }

    /// <summary>The last day of the season that is known.</summary>
    public DateOnly LastKnown { get; }

    /// <summary>The last day of the season: what is not met by then is not reached.</summary>
    public DateOnly LastDay { get; }

    /// <summary>The degree days up to the last day that is known.</summary>
    public ThermalTime SoFar { get; }

    /// <summary>The day on which the requirement was met, which is then the one date there is; <see langword="null"/> where it is still to come.</summary>
    public DateOnly? ReachedOn { get; }

    /// <summary>What each past year says, in order.</summary>
    public IReadOnlyList<ForecastYear> Years { get; }

    /// <summary>The past seasons that were left out because more than 5 % of their days are missing.</summary>
    public IReadOnlyList<int> LeftOutYears { get; }

    /// <summary>How well such forecasts would have done in the past; <see langword="null"/> with fewer than six past years, or five dates to compare.</summary>
    public ForecastSkill? Skill { get; }

    /// <summary>What to take care of.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The method, with its source and what it holds for.</summary>
    [JsonIgnore]
    public Method Method { get; } = HeatForecastEvidence.PastYears;

    /// <summary>The share of the past years with which the season ends before the requirement is met.</summary>
    [JsonIgnore]
    public Ratio NeverShare => Ratio.FromPercent(Years.Count == 0 ? 0 : 100.0 * Years.Count(year => year.Date is null) / Years.Count);

    /// <summary>The lowest level that the years support; 0 % where the requirement is met already.</summary>
    [JsonIgnore]
    public Ratio LowestLevel => Ratio.FromPercent(ReachedOn is null ? 100 * RankedDates.Lowest(Years.Count) : 0);

    /// <summary>The highest level that the years support; 100 % where the requirement is met already.</summary>
    [JsonIgnore]
    public Ratio HighestLevel => Ratio.FromPercent(ReachedOn is null ? 100 * RankedDates.Highest(Years.Count) : 100);

    /// <summary>The date at 10 %, or the earliest at the level that it supports where there are fewer than nine years.</summary>
    [JsonIgnore]
    public ForecastDate Early => Nearest(0.1);

    /// <summary>The date at 50 %: as many years come later as come earlier.</summary>
    [JsonIgnore]
    public ForecastDate Middle => Nearest(0.5);

    /// <summary>The date at 90 %, or the latest at the level that it supports where there are fewer than nine years.</summary>
    [JsonIgnore]
    public ForecastDate Late => Nearest(0.9);

    /// <summary>Forecasts the date on which a requirement is met.</summary>
    /// <param name="requirement">What is to be met, with how it is counted.</param>
    /// <param name="season">
    /// This season so far, from sowing or whatever day counting begins on to the last day that is known; a weather forecast of the next days may
    /// be its end.
    /// </param>
    /// <param name="past">The site's record. Its whole seasons that began before this one are used; what it holds of later ones is not.</param>
    /// <param name="lastDay">The last day of the season, up to a year after its first; <see langword="null"/> for a whole year.</param>
    /// <returns>The forecast.</returns>
    /// <exception cref="ArgumentNullException">The requirement or a record is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The season so far does not end before the last day, or that is more than a year after its first.</exception>
    /// <exception cref="ArgumentException">
    /// More than 5 % of the days so far are missing, or the requirement is still to come and the record holds fewer than five whole past seasons.
    /// </exception>
    /// <example><code>
    /// double[] minima = [.. Enumerable.Repeat(8.0, 3800)];
    /// double[] maxima = [.. Enumerable.Repeat(18.0, 3800)];
    /// DailyTemperatures record = DailyTemperatures.Create(new DateOnly(2015, 1, 1), minima, maxima, TemperatureUnit.DegreeCelsius);
    /// HeatRequirement ripe = new(
    ///     ThermalTime.FromCelsiusDays(600),
    ///     new DegreeDayThresholds(Temperature.FromDegreesCelsius(5)),
    ///     DegreeDayMethod.SingleSine,
    ///     UpperCutoff.None,
    ///     Source.CommonPractice("ripe", "ripe after 600 degree days"));
    /// HeatForecast forecast = HeatForecast.For(ripe, record.Between(new DateOnly(2025, 4, 1), new DateOnly(2025, 5, 10)), record);
    /// Console.WriteLine(forecast.Middle); // 50 %: 2025-06-14
    /// </code></example>
    public static HeatForecast For(HeatRequirement requirement, DailyTemperatures season, DailyTemperatures past, DateOnly? lastDay = null)
    {
        Guard.NotNull(requirement);
        Guard.NotNull(season);
        Guard.NotNull(past);
        DateOnly last = lastDay ?? season.Start.AddYears(1).AddDays(-1);
        DateOnly next = season.End.AddDays(1);
        RequireDay(last, next, season.Start.AddYears(1).AddDays(-1), nameof(lastDay));
        DegreeDaySeries heat = DegreeDays.Accumulate(
            season, requirement.Thresholds, requirement.CountingMethod, requirement.Cutoff, missingDays: MissingDays.Interpolated);
        DateOnly? reached = heat.DateReached(requirement.Sum);

        List<PastSeason> seasons = [];
        List<int> leftOut = [];
        for (int year = Math.Max(past.Start.Year, 2); reached is null && year < season.Start.Year; year++)
        {
            PastSeason? one = PastSeason.Of(past, requirement, year, season.Start, next, last, out bool isWhole);
            if (one is not null)
                seasons.Add(one);
            else if (isWhole)
                leftOut.Add(year);
        }

        if (reached is null && seasons.Count < HeatForecastEvidence.FewestYears)
        {
            throw new ArgumentException(
                $"past held {Guard.Number(seasons.Count)} whole past seasons like that from {AirTemperature.Text(season.Start)} to {AirTemperature.Text(last)}; "
                + $"allowed: {Guard.Number(HeatForecastEvidence.FewestYears)} or more, with up to 5 % of the days missing.",
                nameof(past));
        }

        double needCelsiusDays = requirement.Sum.CelsiusDays;
        double remainingCelsiusDays = needCelsiusDays - heat.Total.CelsiusDays;
        ForecastYear[] years =
        [
            .. seasons.Select(one => new ForecastYear(one.Year, Day(one.DayToCome(remainingCelsiusDays)), Day(one.OwnDay(needCelsiusDays)))),
        ];
        IEnumerable<Caution> cautions =
        [
            .. requirement.CautionsFor(heat),
            .. seasons.Select(one => one.Heat).Prepend(heat).SelectMany(series => series.Cautions),
            .. reached is null ? Warnings(years) : [],
            HeatForecastEvidence.Stages,
        ];
        return new HeatForecast(
            requirement, season.Start, season.End, last, heat.Total, reached, years, leftOut,
            ForecastTrial.Of(seasons, needCelsiusDays, next), [.. cautions.Distinct()]);
    }

    /// <summary>The date by which the requirement is met with some chance.</summary>
    /// <param name="level">The chance; from <see cref="LowestLevel"/> to <see cref="HighestLevel"/>.</param>
    /// <returns>The date; <see langword="null"/> where the season ends before in too many of the years.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The years do not support the level.</exception>
    public Estimate<DateOnly>? DateAt(Ratio level)
    {
        double fraction = Boundary.Fraction(level);
        DateOnly? date = ReachedOn;
        if (date is null)
        {
            RequireLevel(fraction);
            date = Day(RankedDates.At(sortedDays, fraction));
        }
        else
        {
            Guard.Within(fraction * 100, 0, 100, "%", nameof(level));
        }

        return date is DateOnly day
            ? new Estimate<DateOnly>(day, Method, adjustments: [HeatForecastEvidence.Ranks], cautions: Cautions)
            : null;
    }

    /// <summary>The date that one who knows nothing of this season would give: the same quantile over the past years' own seasons.</summary>
    /// <param name="level">The chance; from <see cref="LowestLevel"/> to <see cref="HighestLevel"/>.</param>
    /// <returns>The date; <see langword="null"/> where the season ends before in too many of the years.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The years do not support the level.</exception>
    /// <exception cref="InvalidOperationException">The requirement is met already, and no years were counted.</exception>
    public Estimate<DateOnly>? UsualDateAt(Ratio level)
    {
        if (Years.Count == 0)
            throw new InvalidOperationException("No past years were counted, because the requirement is met already; ReachedOn tells before.");
        RequireLevel(Boundary.Fraction(level));
        return Day(RankedDates.At(sortedUsualDays, Boundary.Fraction(level))) is DateOnly day
            ? new Estimate<DateOnly>(day, HeatForecastEvidence.Ranks, cautions: Cautions)
            : null;
    }

    /// <summary>Whether another forecast is the same.</summary>
    /// <param name="other">Another forecast.</param>
    /// <returns><see langword="true"/> where all members are equal.</returns>
    public bool Equals(HeatForecast? other) => other is not null
        && (Start, LastKnown, LastDay, SoFar, ReachedOn) == (other.Start, other.LastKnown, other.LastDay, other.SoFar, other.ReachedOn)
        && Requirement == other.Requirement && Years.Equals(other.Years) && LeftOutYears.Equals(other.LeftOutYears)
        && Skill == other.Skill && Cautions.Equals(other.Cautions);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Requirement, Start, LastKnown, LastDay, SoFar, ReachedOn, Years);

    /// <summary>The forecast in metric units and invariant culture.</summary>
    /// <returns>One line: the dates with their levels, the share not reached, the years, the source.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The forecast as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: the dates with their levels, the share not reached, the years, the source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(Title(style))
    {
        Rows =
        [
            new DisplayRow("so far", $"{QuantityText.Of(SoFar, style)} from {AirTemperature.Text(Start)} to {AirTemperature.Text(LastKnown)}"),
            .. ReachedOn is not null ? [] : (DisplayRow[])
            [
                .. new[] { Early, Middle, Late }.Select(date => new DisplayRow(QuantityText.Of(date.Level, style), HeatForecastText.Of(date.Date, style))),
                new DisplayRow("not reached", QuantityText.Of(NeverShare, style)),
                new DisplayRow("past years", QuantityText.Of(Years.Count, style)),
            ],
            .. Skill is ForecastSkill skill ? [new DisplayRow("in the past", skill.ToString(style))] : (DisplayRow[])[],
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
            new DisplayRow("source", Method.Source.ToString()),
        ],
    };

    private static IEnumerable<Caution> Warnings(ForecastYear[] years)
    {
        yield return HeatForecastEvidence.WeatherChanges;
        if (years.Length < HeatForecastEvidence.YearsForTenPercent)
            yield return HeatForecastEvidence.FewYears(years.Length);
        if (years.Any(year => year.Date is null))
            yield return HeatForecastEvidence.NotEveryYear;
    }

    private static int[] Sorted(IEnumerable<DateOnly?> dates) => [.. dates.Select(date => date?.DayNumber ?? RankedDates.Never).Order()];

    private static DateOnly? Day(int dayNumber) => dayNumber == RankedDates.Never ? null : DateOnly.FromDayNumber(dayNumber);

    private static void RequireDay(DateOnly day, DateOnly first, DateOnly last, string parameter)
    {
        if (day < first || day > last)
        {
            throw new ArgumentOutOfRangeException(
                parameter, $"{parameter} was {AirTemperature.Text(day)}; allowed: {AirTemperature.Text(first)} to {AirTemperature.Text(last)}.");
        }
    }

    private void RequireLevel(double level)
    {
        if (!RankedDates.Supports(Years.Count, level))
        {
            throw Guard.Refused(
                nameof(level),
                level * 100,
                "%",
                $"{Guard.Number(100 * RankedDates.Lowest(Years.Count))} to {Guard.Number(100 * RankedDates.Highest(Years.Count))} % for {Guard.Number(Years.Count)} years");
        }
    }

    private ForecastDate Nearest(double level)
    {
        if (ReachedOn is not null)
            return new ForecastDate(Ratio.FromPercent(100 * level), ReachedOn);
        double supported = RankedDates.Supported(Years.Count, level);
        return new ForecastDate(Ratio.FromPercent(100 * supported), Day(RankedDates.At(sortedDays, supported)));
    }

    private string Title(TextStyle style) => ReachedOn is DateOnly day
        ? $"{QuantityText.Of(Requirement.Sum, style)} met on {AirTemperature.Text(day)}"
        : $"{QuantityText.Of(Requirement.Sum, style)} about {HeatForecastText.Of(Middle.Date, style)}";

    private string ToString(TextStyle style) => ReachedOn is not null
        ? $"{Title(style)} [{Requirement.Source}]"
        : $"{QuantityText.Of(Requirement.Sum, style)}: {Early.ToString(style)}, {Middle.ToString(style)}, {Late.ToString(style)}; "
            + $"not reached in {QuantityText.Of(NeverShare, style)} of {QuantityText.Of(Years.Count, style)} years [{Method.Source}]; "
            + (Cautions.Count == 1 ? "1 caution" : $"{QuantityText.Of(Cautions.Count, style)} cautions");
}
