using System.Runtime.CompilerServices;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Finds the day on which a sum meets a requirement.</summary>
internal static class Requirement
{
    public static ClimateSum<T>? Until<T>(
        DailyTemperatures days,
        DateOnly from,
        double requirement,
        CountedDays.Daily daily,
        Func<DateOnly, ClimateSum<T>> sumTo,
        [CallerArgumentExpression(nameof(requirement))] string parameter = "")
        where T : notnull
    {
        Guard.NotNull(days);
        Guard.NotNegative(requirement, "", parameter);
        DayRange.IndexOf(from, days.Start, days.End, nameof(from));
        CountedDays counted = CountedDays.Of(days, new DateSpan(from, days.End), MissingDays.LeftOut, Ratio.FromPercent(100));
        DateOnly? reached = counted.Reached(requirement, daily);

        // Not reached: the sum of the whole record is made all the same, because it refuses a record with too many gaps.
        ClimateSum<T> sum = sumTo(reached ?? days.End);
        return reached is null ? null : sum;
    }
}
