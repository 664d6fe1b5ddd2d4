namespace HortiCalc.Climate;

/// <summary>The degree days of one whole past season, its days named by the calendar of the present one.</summary>
internal sealed class PastSeason
{
    private readonly DateOnly first;
    private readonly int yearsToPresent;
    private readonly int firstToCome;

    private PastSeason(DateOnly first, int yearsToPresent, DegreeDaySeries heat, int firstToCome)
    {
        this.first = first;
        this.yearsToPresent = yearsToPresent;
        Heat = heat;
        this.firstToCome = firstToCome;
    }

    public int Year => first.Year;

    public DegreeDaySeries Heat { get; }

    /// <summary>Counts the season that began in a year; none where the record does not hold all of it, or too little of it.</summary>
    /// <param name="past">The record.</param>
    /// <param name="need">How to count.</param>
    /// <param name="year">The year in which the past season began.</param>
    /// <param name="present">The first day of the present season.</param>
    /// <param name="next">The first day of it that is still to come.</param>
    /// <param name="last">The last day of it.</param>
    /// <param name="isWhole">Whether the record reaches over all of the season.</param>
    public static PastSeason? Of(
        DailyTemperatures past,
        HeatRequirement need,
        int year,
        DateOnly present,
        DateOnly next,
        DateOnly last,
        out bool isWhole)
    {
        DateOnly first = MonthDay.From(present).InYear(year);
        DateOnly end = MonthDay.From(last).InYear(year + last.Year - present.Year);
        isWhole = first >= past.Start && end <= past.End && first < present;
        if (!isWhole)
            return null;
        DailyTemperatures days = past.Between(first, end);
        if (days.MissingCount > HeatForecastEvidence.MostMissingShare * days.Count)
            return null;
        DegreeDaySeries heat = DegreeDays.Accumulate(
            days, need.Thresholds, need.CountingMethod, need.Cutoff, missingDays: MissingDays.Interpolated);
        DateOnly toCome = MonthDay.From(next).InYear(year + next.Year - present.Year);
        return new PastSeason(first, present.Year - year, heat, toCome.DayNumber - first.DayNumber);
    }

    /// <summary>What the season had brought when it was as old as the present one is.</summary>
    public double CelsiusDaysSoFar()
    {
        double sum = 0;
        foreach (double day in Heat.DailyCelsiusDays[..firstToCome])
            sum += double.IsNaN(day) ? 0 : day;
        return sum;
    }

    /// <summary>The day number, in the present season, on which the season's own sum met a need.</summary>
    public int OwnDay(double celsiusDays) => DayFrom(0, celsiusDays);

    /// <summary>The day number, in the present season, on which the days still to come have brought what remains.</summary>
    public int DayToCome(double remainingCelsiusDays) => DayFrom(firstToCome, remainingCelsiusDays);

    private int DayFrom(int start, double celsiusDays)
    {
        double sum = 0;
        ReadOnlySpan<double> daily = Heat.DailyCelsiusDays;
        for (int day = start; day < daily.Length; day++)
        {
            sum += double.IsNaN(daily[day]) ? 0 : daily[day];
            if (sum >= celsiusDays - DegreeDaySeries.RoundingCelsiusDays)
                return InPresent(first.AddDays(day)).DayNumber;
        }

        return RankedDates.Never;
    }

    // By the calendar, so that a leap day falls to 28 February where the present season has none.
    private DateOnly InPresent(DateOnly date) => MonthDay.From(date).InYear(date.Year + yearsToPresent);
}
