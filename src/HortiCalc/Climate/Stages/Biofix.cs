using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>What the counting of degree days starts from: a day of the calendar, something seen, or what the source does not say.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. Days of the calendar are as printed for the northern hemisphere.
/// </remarks>
/// <example><code>
/// DateOnly north = Biofix.On(new MonthDay(month: 3, day: 1)).StartIn(2027, Hemisphere.Northern); // 1 March
/// DateOnly south = Biofix.On(new MonthDay(month: 3, day: 1)).StartIn(2027, Hemisphere.Southern); // 1 September
/// </code></example>
public sealed record Biofix
{
    private const int HalfYearMonths = 6;

    /// <summary>Describes a start.</summary>
    /// <param name="date">The day of the calendar in the northern hemisphere, or <see langword="null"/>.</param>
    /// <param name="observed">What is to be seen, or <see langword="null"/>; not together with a day.</param>
    /// <exception cref="ArgumentException">Both are given, or the text is empty.</exception>
    public Biofix(MonthDay? date, string? observed)
    {
        if (date is not null && observed is not null)
            throw new ArgumentException($"observed was '{observed}' beside the date {date}; allowed: one of the two.", nameof(observed));
        Date = date;
        Observed = observed is null ? null : Guard.NotBlank(observed);
    }

    /// <summary>The source does not say from when it counts.</summary>
    public static Biofix NotStated { get; } = new(null, null);

    /// <summary>The day of the calendar in the northern hemisphere, or <see langword="null"/>.</summary>
    public MonthDay? Date { get; }

    /// <summary>What is to be seen, or <see langword="null"/>.</summary>
    public string? Observed { get; }

    /// <summary>Counting starts on a day of the calendar, as printed for the northern hemisphere.</summary>
    /// <param name="date">The day.</param>
    /// <returns>The start.</returns>
    public static Biofix On(MonthDay date) => new(date, null);

    /// <summary>Counting starts when something is seen.</summary>
    /// <param name="what">What is to be seen.</param>
    /// <returns>The start.</returns>
    /// <exception cref="ArgumentException">The text is empty.</exception>
    public static Biofix When(string what) => new(null, Guard.NotBlank(what));

    /// <summary>The day of the calendar on which counting starts.</summary>
    /// <param name="year">The calendar year of the start.</param>
    /// <param name="hemisphere">
    /// Where it is: in the south the day is six months later, which no source prints, so that <see cref="StageTable.Follow(DegreeDaySeries)"/>
    /// has a caution for it.
    /// </param>
    /// <returns>The date.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The year is not from 1 to 9999, or the hemisphere is none of the defined ones.</exception>
    /// <exception cref="InvalidOperationException">The start is not a day of the calendar: observe it.</exception>
    public DateOnly StartIn(int year, Hemisphere hemisphere)
    {
        if (Date is not MonthDay date)
            throw new InvalidOperationException($"The start is no day of the calendar: {this}. Give the date on which it was seen.");
        return (Guard.Defined(hemisphere) == Hemisphere.Southern ? HalfAYearOn(date) : date).InYear(year);
    }

    /// <summary>The start in words.</summary>
    /// <returns>For instance <c>1 Mar (north)</c>.</returns>
    public override string ToString() => Date is MonthDay date ? $"{date} (north)" : Observed ?? "not stated";

    internal static MonthDay HalfAYearOn(MonthDay date)
    {
        int month = (date.Month - 1 + HalfYearMonths) % 12 + 1;
        return new MonthDay(month, Math.Min(date.Day, DateTime.DaysInMonth(2001, month)));
    }
}
