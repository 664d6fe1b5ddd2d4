using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>The nights at and below one temperature: their chances where the record is long enough, and the record itself.</summary>
internal sealed class ColdNights
{
    private readonly FreezeClimate? climate;
    private readonly IReadOnlyList<FreezeSeason> seasons;
    private readonly SeasonCalendar calendar;

    public ColdNights(DailyTemperatures days, Temperature threshold, SeasonCalendar calendar)
    {
        Threshold = threshold;
        this.calendar = calendar;
        FreezeClimateOptions options = new(hemisphere: calendar.Hemisphere);
        (seasons, _) = FreezeRecord.Cut(days.Start, days.MinimaCelsius, Boundary.Celsius(threshold), calendar.Cut, options.MissingDaysThatDrop);
        if (Math.Min(SpringSeasons, AutumnSeasons) >= SeasonEvidence.FewestYears)
            climate = FreezeClimate.FromDaily(days, threshold, options);
    }

    public Temperature Threshold { get; }

    /// <summary>How many springs, and autumns, the record tells.</summary>
    public int SpringSeasons => seasons.Count(season => season.IsSpringKnown);

    public int AutumnSeasons => seasons.Count(season => season.IsAutumnKnown);

    /// <summary>The cautions of the freeze climate, or that the record is too short for one.</summary>
    public IEnumerable<Caution> Cautions => climate is null ? [SeasonEvidence.ShortRecord] : climate.LastInSpring.Cautions.Concat(climate.FirstInAutumn.Cautions).Distinct();

    /// <summary>The first day in spring that is safe enough; no day where none is needed.</summary>
    public (DateOnly? Day, DateReason Reason, Method Method) SafeFrom(Ratio accepted)
    {
        if (SpringSeasons == 0)
            return (null, new DateNotKnown("the record holds no whole spring"), SeasonEvidence.CountNights);
        if (IsAccepted(climate?.LastInSpring, accepted) is ColdNightsRare rare)
            return (null, rare, FreezeEvidence.MixedNormal);
        if (climate?.LastInSpring is LastSpringFreeze { GivenAFreeze: NormalFreezeDates } spring)
        {
            return spring.EarliestSafePlanting(accepted) is Estimate<MonthDay> date
                ? (calendar.Spring(date.Value), new ColdNightChance(Threshold, accepted, SpringSeasons), date.Method)
                : (null, NoDate, FreezeEvidence.MixedNormal);
        }

        // The latest in the year, whatever the year.
        DateOnly[] latest = [.. seasons.Where(season => season.IsSpringKnown && season.LastFreeze is not null)
            .Select(season => calendar.Spring(MonthDay.From(season.LastFreeze!.Value)))];
        return latest.Length == 0
            ? (null, new ColdNightsRare(Threshold, Ratio.Zero, SpringSeasons), SeasonEvidence.CountNights)
            : (latest.Max().AddDays(1), new ColdNightOnRecord(Threshold, SpringSeasons), SeasonEvidence.CountNights);
    }

    /// <summary>The day of autumn by which cold has come in the accepted share of seasons; no day where it comes in fewer.</summary>
    public (DateOnly? Day, DateReason Reason, Method Method) ColdBy(Ratio accepted, int? weeksBefore = null, int? weeksBeforeUntil = null)
    {
        if (AutumnSeasons == 0)
            return (null, new DateNotKnown("the record holds no whole autumn"), SeasonEvidence.CountNights);
        if (IsAccepted(climate?.FirstInAutumn, accepted) is ColdNightsRare rare)
            return (null, rare, FreezeEvidence.MixedNormal);
        if (climate?.FirstInAutumn is FirstAutumnFreeze { GivenAFreeze: NormalFreezeDates } autumn)
        {
            return autumn.DateWithChanceOfEarlierFreeze(accepted) is Estimate<MonthDay> date
                ? (calendar.Autumn(date.Value), new ColdNightChance(Threshold, accepted, AutumnSeasons, weeksBefore, weeksBeforeUntil), date.Method)
                : (null, NoDate, FreezeEvidence.MixedNormal);
        }

        DateOnly[] earliest = [.. seasons.Where(season => season.IsAutumnKnown && season.FirstFreeze is not null)
            .Select(season => calendar.Autumn(MonthDay.From(season.FirstFreeze!.Value)))];
        return earliest.Length == 0
            ? (null, new ColdNightsRare(Threshold, Ratio.Zero, AutumnSeasons), SeasonEvidence.CountNights)
            : (earliest.Min(), new ColdNightOnRecord(Threshold, AutumnSeasons), SeasonEvidence.CountNights);
    }

    /// <summary>The chance of such a night in spring on a day or later; none where there are too few to tell.</summary>
    public Estimate<Ratio>? ChanceAfter(DateOnly day) => climate?.LastInSpring is LastSpringFreeze spring && (spring.HasDates || spring.Share == 0)
        ? spring.ChanceOfFreezeAfter(MonthDay.From(day))
        : null;

    /// <summary>The chance of such a night in autumn on a day or earlier; none where there are too few to tell.</summary>
    public Estimate<Ratio>? ChanceBefore(DateOnly day) => climate?.FirstInAutumn is FirstAutumnFreeze autumn && (autumn.HasDates || autumn.Share == 0)
        ? autumn.ChanceOfFreezeBefore(MonthDay.From(day))
        : null;

    /// <summary>In how many of the springs on record such a night came on a day or later.</summary>
    public (int Times, int Seasons) CountAfter(DateOnly day) => (
        seasons.Count(season => season.IsSpringKnown && season.LastFreeze is DateOnly last && calendar.Spring(MonthDay.From(last)) >= day),
        SpringSeasons);

    /// <summary>In how many of the autumns on record such a night came on a day or earlier.</summary>
    public (int Times, int Seasons) CountBefore(DateOnly day) => (
        seasons.Count(season => season.IsAutumnKnown && season.FirstFreeze is DateOnly first && calendar.Autumn(MonthDay.From(first)) <= day),
        AutumnSeasons);

    /// <summary>The first such night of the cold season that begins in a year; no night where there was none or it is not known.</summary>
    public (bool IsKnown, DateOnly? Night) FirstInSeason(int startYear)
    {
        FreezeSeason? season = seasons.FirstOrDefault(season => season.Start.Year == startYear);
        return season is null ? (false, null) : (season.IsAutumnKnown, season.FirstFreeze);
    }

    // The distribution gives no date further than half a year from its middle.
    private static DateNotKnown NoDate => new("cold nights are spread over the whole year");

    /// <summary>The reason why no date is needed, where so few seasons have such a night.</summary>
    private ColdNightsRare? IsAccepted(FreezeDateDistribution? side, Ratio accepted) =>
        side is not null && side.Share <= Boundary.Fraction(accepted)
            ? new ColdNightsRare(Threshold, side.ShareOfSeasonsWithFreeze, side.Seasons ?? 1)
            : null;
}
