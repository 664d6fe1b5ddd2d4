namespace HortiCalc.Climate;

/// <summary>The dates of a season that comes round every year, and may pass New Year.</summary>
internal static class SeasonDates
{
    /// <summary>29 February is 28 February in a year that lacks it.</summary>
    public static (DateOnly First, DateOnly Last) Of(MonthDay first, MonthDay last, int year) =>
        (first.InYear(year), last.InYear(last < first ? year + 1 : year));
}
