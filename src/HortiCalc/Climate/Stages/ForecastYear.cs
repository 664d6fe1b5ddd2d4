using HortiCalc.Display;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>What one past year says of the date: this season continued with that year's weather, and that year's own season.</summary>
/// <remarks>Immutable; equal when all members are equal. Both dates are written in the present season, so that they compare.</remarks>
public sealed record ForecastYear : IFormattable
{
    /// <summary>Holds what a year says.</summary>
    /// <param name="year">The calendar year in which the past season began.</param>
    /// <param name="date">The date with this season so far and that year's weather from here on; <see langword="null"/> where the season ends before.</param>
    /// <param name="usualDate">The date of that year's own season; <see langword="null"/> where it ended before.</param>
    /// <exception cref="ArgumentOutOfRangeException">The year is not from 1 to 9999.</exception>
    public ForecastYear(int year, DateOnly? date, DateOnly? usualDate)
    {
        Guard.Within(year, 1, 9999, "");
        Year = year;
        Date = date;
        UsualDate = usualDate;
    }

    /// <summary>The calendar year in which the past season began.</summary>
    public int Year { get; }

    /// <summary>The date with this season so far and that year's weather from here on; <see langword="null"/> where the season ends before.</summary>
    public DateOnly? Date { get; }

    /// <summary>The date of that year's own season; <see langword="null"/> where it ended before.</summary>
    public DateOnly? UsualDate { get; }

    /// <summary>The year and its dates in invariant culture.</summary>
    /// <returns>For instance <c>2003: 2026-07-14; its own season 2026-07-10</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The year and its dates as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones; there is no difference here.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The year and both dates.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style) =>
        $"{Guard.Number(Year)}: {HeatForecastText.Of(Date, style)}; its own season {HeatForecastText.Of(UsualDate, style)}";
}
