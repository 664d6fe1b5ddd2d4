using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>Finds the dates of one planting, and the risks that go with them.</summary>
internal sealed class DatePlanner
{
    private const double SmallestChance = 0.005;

    private static readonly Temperature Freezing = Temperature.FromDegreesCelsius(0);

    private readonly Planting planting;
    private readonly SeasonClimate climate;
    private readonly AcceptedChances chances;
    private readonly ColdNights nights;
    private readonly Method record;
    private readonly IReadOnlyList<Method> needs;
    private readonly List<DateLine> dates = [];
    private readonly List<RiskLine> risks = [];
    private readonly List<Caution> cautions = [];

    private DatePlanner(Planting planting, SeasonClimate climate, Garden garden)
    {
        this.planting = planting;
        this.climate = climate;
        chances = garden.Chances ?? AcceptedChances.Usual;
        nights = climate.NightsAt(planting.Crop.HurtAt);
        record = SeasonEvidence.RecordOf(garden.Site);
        needs = [.. SeasonEvidence.NeedsOf(planting.Crop)];
    }

    public static (IReadOnlyList<DateLine> Dates, IReadOnlyList<RiskLine> Risks, IReadOnlyList<Caution> Cautions) Plan(
        Planting planting, SeasonClimate climate, Garden garden)
    {
        DatePlanner planner = new(planting, climate, garden);
        planner.PlanAll();
        return (planner.dates, planner.risks, [.. planner.cautions.Distinct()]);
    }

    private void PlanAll()
    {
        cautions.AddRange(nights.Cautions);
        DateLine outside = PlanOut();
        DateOnly? plantOut = outside.Date;
        PlanRaising(plantOut);
        dates.Add(outside);
        PlanHarvest(plantOut);
        if (planting.Crop.PrunedBeforeAutumn)
            PlanLastPruning();
        if (planting.WintersIndoors)
            PlanIndoors();
    }

    /// <summary>Safe enough from cold nights, and warm enough: the later of the two.</summary>
    private DateLine PlanOut()
    {
        (DateOnly? day, DateReason reason, Method method) = nights.SafeFrom(chances.ColdAfterPlantingOut);
        List<Method> evidence = [method];
        if (planting.Crop.WarmEnoughAt is not null && !climate.Warmth.IsWholeYear)
            (day, reason) = (null, new DateNotKnown("the record does not hold every day of the year, so its warmth cannot be told"));
        else if (planting.Crop.WarmEnoughAt is Temperature mean && reason is not DateNotKnown)
        {
            int? wait = climate.Warmth.DaysUntilAsWarmAs(Boundary.Celsius(mean));
            DateOnly? warm = wait is int offset ? climate.Calendar.Spring(climate.Warmth.ColdestDay).AddDays(offset) : null;
            if (warm is null)
                (day, reason) = (null, new WarmthNotReached(mean));
            else if (wait > 0 && (day is null || warm > day))
                (day, reason) = (warm, new WarmthReached(mean, nights.Threshold, nights.ChanceAfter(warm.Value)?.Value));
            evidence.Insert(0, SeasonEvidence.MeanWarmth);
        }

        if (day is DateOnly from)
        {
            (int times, int seasons) = nights.CountAfter(from);
            AddRisk(PlanRisk.ColdAfterPlantingOut, nights.ChanceAfter(from), times, seasons, from);
        }

        return new DateLine(planting.Place, planting.Crop.Name, planting.OutStep, reason, [.. evidence, record, .. needs], day);
    }

    private void PlanRaising(DateOnly? plantOut)
    {
        if (planting.Crop.Raising is not { WeeksToPlantOut: > 0 } raising)
            return;
        int days = raising.WeeksToPlantOut * 7;
        DateOnly? start = plantOut?.AddDays(-days);
        AddDate(planting.StartStep, new CountedFromStep(planting.OutStep, -days), [SeasonEvidence.CountDays, .. needs], start);
        if (raising.WeeksToPotOn is int weeks)
            AddDate(PlanStep.PotOn, new CountedFromStep(planting.StartStep, weeks * 7), [SeasonEvidence.CountDays, .. needs], start?.AddDays(weeks * 7));
        cautions.Add(SeasonEvidence.Hardening);
    }

    private void PlanHarvest(DateOnly? plantOut)
    {
        switch (planting.Crop.Maturity)
        {
            case DaysToMaturity need:
                DateOnly? harvest = plantOut?.AddDays(need.Days);
                AddDate(PlanStep.Harvest, new CountedFromStep(planting.OutStep, need.Days), [SeasonEvidence.CountDays, .. needs], harvest);
                if (harvest is DateOnly ready)
                {
                    (int times, int seasons) = nights.CountBefore(ready);
                    Estimate<Ratio>? chance = nights.ChanceBefore(ready);

                    // A harvest in the height of summer has no such risk worth a line.
                    if (times > 0 || chance is null || Boundary.Fraction(chance.Value) >= SmallestChance)
                        AddRisk(PlanRisk.ColdBeforeHarvest, chance, times, seasons, ready);
                }

                break;
            case HeatToMaturity need when plantOut is DateOnly from:
                PlanHarvestByHeat(need, from);
                break;
            case HeatToMaturity need:
                AddDate(PlanStep.Harvest, new DateNotKnown("counted from planting out, which has no date"), [need.Counting.Evidence, .. needs], null);
                break;
            default:
                break;
        }
    }

    private void PlanHarvestByHeat(HeatToMaturity need, DateOnly plantOut)
    {
        PastHarvests past = new(climate, plantOut, need, nights);
        Method[] evidence = [need.Counting.Evidence, SeasonEvidence.RankYears, record, .. needs];
        if (past.Years == 0)
        {
            AddDate(PlanStep.Harvest, new DateNotKnown("the record holds no whole season"), evidence, null);
            return;
        }

        bool isEnough = past.Years >= SeasonEvidence.FewestYears;
        double accepted = isEnough ? Boundary.Fraction(chances.LaterHarvest) : 0;
        DateReason reason = new HeatReached(need.Sum, past.Years, isEnough ? chances.LaterHarvest : null);
        AddDate(
            PlanStep.Harvest,
            past.DaysWithShareLater(accepted) is null ? new DateNotKnown("too few past years were warm enough before the cold") : reason,
            evidence,
            past.DaysWithShareLater(accepted) is int days ? plantOut.AddDays(days) : null);
        risks.Add(new RiskLine(
            planting.Place, planting.Crop.Name, PlanRisk.TooLittleHeat, nights.Threshold, evidence, null, past.TimesNotReady, past.Years));
        cautions.AddRange(past.Cautions);
    }

    private void PlanLastPruning()
    {
        (DateOnly? freeze, DateReason reason, Method method) = climate.NightsAt(Freezing).ColdBy(
            chances.FreezeBeforePruningHeals, SeasonEvidence.PruningWeeksBefore, SeasonEvidence.PruningWeeksBeforeUntil);
        AddDate(
            PlanStep.LastPruning,
            reason,
            [SeasonEvidence.LastPruning, method, record],
            freeze?.AddDays(-7 * SeasonEvidence.PruningWeeksBefore),
            freeze?.AddDays(-7 * SeasonEvidence.PruningWeeksBeforeUntil));
    }

    private void PlanIndoors()
    {
        (DateOnly? cold, DateReason reason, Method method) = nights.ColdBy(chances.ColdBeforeIndoors);
        DateOnly? day = cold?.AddDays(-1);
        AddDate(PlanStep.BringIndoors, reason, [SeasonEvidence.BringIndoors, method, record, .. needs], day);
        if (day is DateOnly last)
        {
            (int times, int seasons) = nights.CountBefore(last);
            AddRisk(PlanRisk.ColdBeforeIndoors, nights.ChanceBefore(last), times, seasons, last);
        }
    }

    private void AddDate(PlanStep step, DateReason reason, IReadOnlyList<Method> evidence, DateOnly? date, DateOnly? until = null) =>
        dates.Add(new DateLine(planting.Place, planting.Crop.Name, step, reason, evidence, date, until));

    private void AddRisk(PlanRisk risk, Estimate<Ratio>? chance, int times, int seasons, DateOnly date) => risks.Add(new RiskLine(
        planting.Place,
        planting.Crop.Name,
        risk,
        nights.Threshold,
        [chance?.Method ?? SeasonEvidence.CountNights, record],
        chance?.Value,
        times,
        seasons,
        date));
}
