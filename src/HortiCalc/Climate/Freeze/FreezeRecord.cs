using System.Globalization;

namespace HortiCalc.Climate;

/// <summary>Cuts daily minima into cold seasons and finds the freezes at their two ends.</summary>
internal static class FreezeRecord
{
    /// <summary>
    /// Half of the tenth of a degree that records are kept to. A day counts as at or below the threshold when it rounds to it:
    /// -2.2 °C is 28 °F, although 28 °F is -2.222 °C.
    /// </summary>
    public const double HalfATenthCelsius = 0.05;

    // Ten years of the 31 days around a day.
    private const int KnownDaysThatTell = 310;

    public static (IReadOnlyList<FreezeSeason> Seasons, IReadOnlyList<LeftOutSeason> LeftOut) Cut(
        DateOnly recordStart, ReadOnlySpan<double> minimaCelsius, double thresholdCelsius, MonthDay seasonStart, int missingDaysThatDrop)
    {
        List<FreezeSeason> seasons = [];
        List<LeftOutSeason> leftOut = [];
        bool[] gapsCount = DaysWhoseGapsCount(recordStart, minimaCelsius, thresholdCelsius, seasonStart);
        DateOnly recordEnd = recordStart.AddDays(minimaCelsius.Length - 1);
        for (int year = recordStart.Year - 1; year <= recordEnd.Year; year++)
        {
            // The calendar of .NET has no day before the year 1 or after 9999.
            if (year < 1 || year + 1 > 9999)
                continue;
            DateOnly start = seasonStart.InYear(year);
            DateOnly end = seasonStart.InYear(year + 1).AddDays(-1);
            if (end < recordStart || start > recordEnd)
                continue;
            seasons.Add(Season(start, end, recordStart, minimaCelsius, thresholdCelsius, gapsCount, missingDaysThatDrop, leftOut));
        }

        return (seasons, leftOut);
    }

    /// <summary>The hemisphere of a record by its colder half-year, or <see langword="null"/> where the two hardly differ.</summary>
    public static Hemisphere? HemisphereOf(DateOnly recordStart, ReadOnlySpan<double> minimaCelsius)
    {
        double aroundJanuary = 0;
        double aroundJuly = 0;
        int daysAroundJanuary = 0;
        int daysAroundJuly = 0;
        for (int index = 0; index < minimaCelsius.Length; index++)
        {
            if (double.IsNaN(minimaCelsius[index]))
                continue;
            switch (recordStart.AddDays(index).Month)
            {
                case 12 or 1 or 2:
                    aroundJanuary += minimaCelsius[index];
                    daysAroundJanuary++;
                    break;
                case 6 or 7 or 8:
                    aroundJuly += minimaCelsius[index];
                    daysAroundJuly++;
                    break;
                default:
                    break;
            }
        }

        if (daysAroundJanuary == 0 || daysAroundJuly == 0)
            return null;
        double julyMinusJanuary = aroundJuly / daysAroundJuly - aroundJanuary / daysAroundJanuary;
        return Math.Abs(julyMinusJanuary) < 1 ? null : julyMinusJanuary > 0 ? Hemisphere.Northern : Hemisphere.Southern;
    }

    /// <summary>Whether every month of the calendar has a day at or below the threshold.</summary>
    public static bool HasFreezeInEveryMonth(DateOnly recordStart, ReadOnlySpan<double> minimaCelsius, double thresholdCelsius)
    {
        int months = 0;
        for (int index = 0; index < minimaCelsius.Length; index++)
        {
            if (IsFreeze(minimaCelsius[index], thresholdCelsius))
                months |= 1 << recordStart.AddDays(index).Month;
        }

        return months == 0b1_1111_1111_1110;
    }

    /// <summary>Whether any known day is at or below the threshold.</summary>
    public static bool HasFreeze(ReadOnlySpan<double> minimaCelsius, double thresholdCelsius)
    {
        foreach (double minimumCelsius in minimaCelsius)
        {
            if (IsFreeze(minimumCelsius, thresholdCelsius))
                return true;
        }

        return false;
    }

    private static FreezeSeason Season(
        DateOnly start,
        DateOnly end,
        DateOnly recordStart,
        ReadOnlySpan<double> minimaCelsius,
        double thresholdCelsius,
        bool[] gapsCount,
        int missingDaysThatDrop,
        List<LeftOutSeason> leftOut)
    {
        int first = start.DayNumber - recordStart.DayNumber;
        int last = end.DayNumber - recordStart.DayNumber;
        (int? autumnIndex, int missingBeforeFirst) = Search(recordStart, minimaCelsius, first, last, thresholdCelsius, gapsCount, step: 1);
        (int? springIndex, int missingAfterLast) = Search(recordStart, minimaCelsius, last, first, thresholdCelsius, gapsCount, step: -1);
        bool isAutumnKnown = missingBeforeFirst < missingDaysThatDrop;
        bool isSpringKnown = missingAfterLast < missingDaysThatDrop;
        if (!isAutumnKnown)
            leftOut.Add(new LeftOutSeason(start, FreezeSide.Autumn, missingBeforeFirst, Reason(FreezeSide.Autumn, missingBeforeFirst, autumnIndex is not null, missingDaysThatDrop)));
        if (!isSpringKnown)
            leftOut.Add(new LeftOutSeason(start, FreezeSide.Spring, missingAfterLast, Reason(FreezeSide.Spring, missingAfterLast, springIndex is not null, missingDaysThatDrop)));

        int missing = 0;
        for (int index = first; index <= last; index++)
            missing += IsKnown(minimaCelsius, index) ? 0 : 1;
        return new FreezeSeason(
            start,
            end,
            isAutumnKnown,
            isAutumnKnown && autumnIndex is int autumn ? recordStart.AddDays(autumn) : null,
            isSpringKnown,
            isSpringKnown && springIndex is int spring ? recordStart.AddDays(spring) : null,
            missing);
    }

    /// <summary>The first freeze from one end of the season, and how many missing days that could hide one come before it.</summary>
    private static (int? Index, int Missing) Search(
        DateOnly recordStart, ReadOnlySpan<double> minimaCelsius, int from, int to, double thresholdCelsius, bool[] gapsCount, int step)
    {
        int missing = 0;
        for (int index = from; index != to + step; index += step)
        {
            if (!IsKnown(minimaCelsius, index))
                missing += gapsCount[DayIndex(recordStart.AddDays(index))] ? 1 : 0;
            else if (IsFreeze(minimaCelsius[index], thresholdCelsius))
                return (index, missing);
        }

        return (null, missing);
    }

    /// <summary>
    /// Which days of the year a gap counts on. Not in the warm half of the year where the record never froze within half a
    /// month of that day: gaps in July cannot hide the last freeze of a place whose latest one in all years was in April.
    /// </summary>
    private static bool[] DaysWhoseGapsCount(DateOnly recordStart, ReadOnlySpan<double> minimaCelsius, double thresholdCelsius, MonthDay seasonStart)
    {
        const int half = 15;
        const int quarterOfYear = MonthDay.DaysOfYear / 4;
        int[] known = new int[MonthDay.DaysOfYear];
        int[] frozen = new int[MonthDay.DaysOfYear];
        for (int index = 0; index < minimaCelsius.Length; index++)
        {
            int day = DayIndex(recordStart.AddDays(index));
            known[day] += double.IsNaN(minimaCelsius[index]) ? 0 : 1;
            frozen[day] += IsFreeze(minimaCelsius[index], thresholdCelsius) ? 1 : 0;
        }

        bool[] counts = new bool[MonthDay.DaysOfYear];
        for (int day = 0; day < counts.Length; day++)
        {
            int knownAround = 0;
            int frozenAround = 0;
            for (int offset = -half; offset <= half; offset++)
            {
                int other = (day + offset + MonthDay.DaysOfYear) % MonthDay.DaysOfYear;
                knownAround += known[other];
                frozenAround += frozen[other];
            }

            double fromCut = MonthDay.Wrapped(day + 1 - seasonStart.DayOfYear);
            bool isWarmHalf = fromCut < quarterOfYear || fromCut >= MonthDay.DaysOfYear - quarterOfYear;
            counts[day] = !isWarmHalf || frozenAround > 0 || knownAround < KnownDaysThatTell;
        }

        return counts;
    }

    private static int DayIndex(DateOnly date) => MonthDay.From(date).DayOfYear - 1;

    private static bool IsKnown(ReadOnlySpan<double> minimaCelsius, int index) =>
        index >= 0 && index < minimaCelsius.Length && !double.IsNaN(minimaCelsius[index]);

    /// <summary>Not a number is never a freeze.</summary>
    private static bool IsFreeze(double minimumCelsius, double thresholdCelsius) => minimumCelsius < thresholdCelsius + HalfATenthCelsius;

    private static string Reason(FreezeSide side, int missing, bool hasFreeze, int missingDaysThatDrop) => string.Create(
        CultureInfo.InvariantCulture,
        $"{missing} days that could hide a freeze are missing {(hasFreeze ? side == FreezeSide.Autumn ? "before the first known freeze" : "after the last known freeze" : "and no freeze is known")}; {missingDaysThatDrop} leave it out");
}
