using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>A day that comes round every year: a month and a day, without a year.</summary>
/// <remarks>
/// Immutable. The default value is 1 January. 29 February exists; where days are counted it stands for 28 February, so that
/// every other day has the same number in every year. Sorted by the calendar from 1 January to 31 December, although the
/// cold season of the north passes New Year: compare dates of a season by their chances, not by <c>&lt;</c>.
/// </remarks>
/// <example><code>
/// MonthDay day = new(month: 4, day: 22);
/// DateOnly thisYear = day.InYear(2027);
/// </code></example>
public readonly record struct MonthDay : IComparable<MonthDay>, IFormattable
{
    internal const int DaysOfYear = 365;

    // Counted from zero, so that the default value is a day that exists.
    private readonly byte monthIndex;
    private readonly byte dayIndex;

    /// <summary>Makes a day of the year.</summary>
    /// <param name="month">From 1 to 12.</param>
    /// <param name="day">From 1 to the last day of the month; 29 in February.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such month, or the month has no such day.</exception>
    public MonthDay(int month, int day)
    {
        Guard.Within(month, 1, 12, "");
        Guard.Within(day, 1, DateTime.DaysInMonth(LeapYear, month), "");
        monthIndex = (byte)(month - 1);
        dayIndex = (byte)(day - 1);
    }

    /// <summary>The month, from 1 to 12.</summary>
    public int Month => monthIndex + 1;

    /// <summary>The day of the month, from 1.</summary>
    public int Day => dayIndex + 1;

    private const int LeapYear = 2000;

    private const int CommonYear = 2001;

    /// <summary>The day's number in a year of 365 days, from 1; 29 February has the number of 28 February.</summary>
    internal int DayOfYear => InYear(CommonYear).DayOfYear;

    /// <summary>The month and day of a date.</summary>
    /// <param name="date">The date.</param>
    /// <returns>The date without its year.</returns>
    public static MonthDay From(DateOnly date) => new(date.Month, date.Day);

    /// <summary>Reads a month and a day written as two digits each, <c>04-22</c>.</summary>
    /// <param name="text">The month, a hyphen and the day.</param>
    /// <returns>The day.</returns>
    /// <exception cref="FormatException">The text is not such a day.</exception>
    public static MonthDay Parse(string text) => TryParse(text, out MonthDay day)
        ? day
        : throw new FormatException($"'{text}' is not a day of the year; expected the month and the day as in 04-22.");

    /// <summary>Reads a month and a day written as two digits each, <c>04-22</c>.</summary>
    /// <param name="text">The month, a hyphen and the day.</param>
    /// <param name="day">The day, or 1 January where the text is not one.</param>
    /// <returns>Whether the text is a day of the year.</returns>
    public static bool TryParse([NotNullWhen(true)] string? text, out MonthDay day)
    {
        // In a leap year, so that 29 February is read.
        bool known = DateOnly.TryParseExact(
            "2000-" + text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date);
        day = known ? From(date) : default;
        return known;
    }

    /// <summary>The date of this day in a year.</summary>
    /// <param name="year">From 1 to 9999.</param>
    /// <returns>The date; 28 February for 29 February in a year that lacks it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The year is not from 1 to 9999.</exception>
    public DateOnly InYear(int year)
    {
        Guard.Within(year, 1, 9999, "");
        return new DateOnly(year, Month, Math.Min(Day, DateTime.DaysInMonth(year, Month)));
    }

    /// <inheritdoc/>
    public int CompareTo(MonthDay other) => (Month, Day).CompareTo((other.Month, other.Day));

    /// <summary>Whether one comes before the other in the calendar year.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The comparison from 1 January on.</returns>
    public static bool operator <(MonthDay left, MonthDay right) => left.CompareTo(right) < 0;

    /// <summary>Whether one comes after the other in the calendar year.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The comparison from 1 January on.</returns>
    public static bool operator >(MonthDay left, MonthDay right) => left.CompareTo(right) > 0;

    /// <summary>Whether one is the other or comes before it in the calendar year.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The comparison from 1 January on.</returns>
    public static bool operator <=(MonthDay left, MonthDay right) => left.CompareTo(right) <= 0;

    /// <summary>Whether one is the other or comes after it in the calendar year.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The comparison from 1 January on.</returns>
    public static bool operator >=(MonthDay left, MonthDay right) => left.CompareTo(right) >= 0;

    /// <summary>The day in invariant culture.</summary>
    /// <returns>For instance <c>22 Apr</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The day as text.</summary>
    /// <param name="format"><c>M</c> or nothing for the day first, <c>U</c> for the month first, <c>O</c> for the two numbers, <c>04-22</c>.</param>
    /// <param name="formatProvider">The culture of the month's name, or <see langword="null"/> for the invariant one.</param>
    /// <returns>For instance <c>22 Apr</c>.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        string pattern = format switch
        {
            null or "" or "G" or "g" or "M" or "m" => "d MMM",
            "U" or "u" => "MMM d",
            "O" or "o" => "MM-dd",
            _ => throw new FormatException($"'{format}' is not a format; allowed: M (day first), U (month first), O (numbers)."),
        };
        return InYear(LeapYear).ToString(pattern, formatProvider ?? CultureInfo.InvariantCulture);
    }

    /// <summary>The day nearest to a number of days since 31 December, round the year of 365 days.</summary>
    internal static MonthDay Nearest(double dayOfYear)
    {
        int index = (int)Wrapped(Math.Round(dayOfYear, MidpointRounding.AwayFromZero) - 1);
        return From(new DateOnly(CommonYear, 1, 1).AddDays(index));
    }

    /// <summary>A number of days brought into a year: from 0 up to, not including, 365.</summary>
    internal static double Wrapped(double days)
    {
        double within = days - DaysOfYear * Math.Floor(days / DaysOfYear);
        return within < DaysOfYear ? within : 0; // A hair below zero rounds up to the whole year.
    }
}
