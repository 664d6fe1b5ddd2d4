using HortiCalc.Climate;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

/// <summary>Invented records whose freezes are known because they were put there.</summary>
internal static class FreezeRecords
{
    public const double Mild = 8;
    public const double Freezing = -3;

    /// <summary>A record whose minima are given day by day; not a number where the day is missing.</summary>
    public static DailyTemperatures Of(DateOnly first, DateOnly last, Func<DateOnly, double> minimumCelsius)
    {
        double[] minima = [.. Enumerable.Range(0, last.DayNumber - first.DayNumber + 1).Select(day => minimumCelsius(first.AddDays(day)))];
        return DailyTemperatures.Create(first, minima, [.. minima.Select(minimum => minimum + 10)], TemperatureUnit.DegreeCelsius);
    }

    /// <summary>Mild days from 1 January of one year to 31 December of another, with freezes on the dates given.</summary>
    public static DailyTemperatures WithFreezesOn(int firstYear, int lastYear, params IEnumerable<DateOnly> freezes) =>
        WithFreezesAndGaps(firstYear, lastYear, freezes, []);

    public static DailyTemperatures WithFreezesAndGaps(int firstYear, int lastYear, IEnumerable<DateOnly> freezes, IEnumerable<DateOnly> gaps)
    {
        HashSet<DateOnly> cold = [.. freezes];
        HashSet<DateOnly> missing = [.. gaps];
        return Of(
            new DateOnly(firstYear, 1, 1),
            new DateOnly(lastYear, 12, 31),
            date => missing.Contains(date) ? double.NaN : cold.Contains(date) ? Freezing : Mild);
    }

    /// <summary>The same month and day in every year.</summary>
    public static IEnumerable<DateOnly> EveryYear(int firstYear, int lastYear, int month, int day) =>
        Enumerable.Range(firstYear, lastYear - firstYear + 1).Select(year => new MonthDay(month, day).InYear(year));

    public static IEnumerable<DateOnly> Days(DateOnly first, int count) => Enumerable.Range(0, count).Select(day => first.AddDays(day));
}
