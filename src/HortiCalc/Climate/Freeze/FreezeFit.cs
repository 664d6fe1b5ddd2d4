using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Turns the dates of the seasons with a freeze into their spread: one place for the estimate and for its resamples.</summary>
internal static class FreezeFit
{
    /// <summary>The spread of dates, given as days from the cut; none where there are none.</summary>
    public static FreezeDates? Of(IReadOnlyList<int> daysFromCut, MonthDay seasonStart, FreezeDateMethod method) => (daysFromCut.Count, method) switch
    {
        (0, _) => null,
        (_, RankedDatesMethod ranked) => new RankedFreezeDates(seasonStart, daysFromCut, ranked.Position),

        // Too few for a standard deviation: ranked as they are, with the position that is right for any distribution.
        ( < FreezeEvidence.FewestValues, _) => new RankedFreezeDates(seasonStart, daysFromCut, PlottingPosition.Weibull),
        (_, MixedNormalMethod) => NormalFit(daysFromCut, seasonStart),
        _ => new RankedFreezeDates(seasonStart, daysFromCut, PlottingPosition.Weibull),
    };

    /// <summary>A date as days from the first day of the cold season, in a year of 365 days.</summary>
    public static int DaysFromCut(DateOnly date, MonthDay seasonStart) =>
        (int)MonthDay.Wrapped(MonthDay.From(date).DayOfYear - seasonStart.DayOfYear);

    /// <summary>The mean and the sample standard deviation (n - 1) of the dates, counted from the cut so that they pass New Year.</summary>
    internal static NormalFreezeDates NormalFit(IReadOnlyList<int> daysFromCut, MonthDay seasonStart)
    {
        double sum = 0;
        foreach (int day in daysFromCut)
            sum += day;
        double mean = sum / daysFromCut.Count;
        double squares = 0;
        foreach (int day in daysFromCut)
            squares += (day - mean) * (day - mean);
        double deviation = daysFromCut.Count > 1 ? Math.Sqrt(squares / (daysFromCut.Count - 1)) : 0;
        return new NormalFreezeDates(seasonStart.DayOfYear + mean, Duration.FromDays(Math.Min(deviation, MonthDay.DaysOfYear / 2.0)));
    }
}
