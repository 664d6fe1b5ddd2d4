using HortiCalc.Climate;
using HortiCalc.Evidence;

namespace HortiCalc.Season;

/// <summary>When a crop planted on one day of the year would have been ready in each past year that the record tells.</summary>
internal sealed class PastHarvests
{
    private const double MostMissingShare = 0.05;
    private const int DaysOfASeason = 365;

    // Days from planting out; int.MaxValue where it was not ready before the cold, or within a year.
    private readonly List<int> daysToReady = [];

    public PastHarvests(SeasonClimate climate, DateOnly plantOut, HeatToMaturity need, ColdNights nights)
    {
        DailyTemperatures days = climate.Days;
        for (int year = days.Start.Year; year <= days.End.Year; year++)
        {
            int shift = year - plantOut.Year;
            DateOnly first = plantOut.AddYears(shift);
            if (first < days.Start || first > days.End)
                continue;
            (bool isKnown, DateOnly? night) = nights.FirstInSeason(climate.Calendar.WinterAfter.Year + shift);
            DateOnly last = night?.AddDays(-1) ?? first.AddDays(DaysOfASeason - 1);
            if (!isKnown || last < first)
            {
                if (isKnown)
                    daysToReady.Add(int.MaxValue);
                continue;
            }

            DailyTemperatures season = days.Between(first, last < days.End ? last : days.End);
            if (season.MissingCount > MostMissingShare * season.Count)
                continue;
            DegreeDaySeries heat = DegreeDays.Accumulate(
                season, need.Thresholds, need.Counting, need.Cutoff, missingDays: MissingDays.Interpolated);
            if (heat.DateReached(need.Sum) is DateOnly ready)
                daysToReady.Add(ready.DayNumber - first.DayNumber);
            else if (last <= days.End)
                daysToReady.Add(int.MaxValue);
            else
                continue;
            Cautions = [.. Cautions.Concat(heat.Cautions).Distinct()];
        }

        daysToReady.Sort();
    }

    /// <summary>How many years were counted.</summary>
    public int Years => daysToReady.Count;

    /// <summary>In how many of them it was not ready.</summary>
    public int TimesNotReady => daysToReady.Count(days => days == int.MaxValue);

    public IReadOnlyList<Caution> Cautions { get; private set; } = [];

    /// <summary>The days by which all but a share of the years were ready; none where more than that share were not.</summary>
    public int? DaysWithShareLater(double share)
    {
        int ready = (int)Math.Ceiling((1 - share) * Years * (1 - 1e-12));
        int days = daysToReady[Math.Clamp(ready, 1, Years) - 1];
        return days == int.MaxValue ? null : days;
    }
}
