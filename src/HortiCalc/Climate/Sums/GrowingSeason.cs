using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The part of a year that is warm enough for plants to grow, by runs of days above and below 5 °C.</summary>
/// <remarks>Immutable; equal when all members are equal. <see cref="GrowingSeasonMethod"/> settles every edge.</remarks>
/// <example><code>
/// double[] minima = [.. Enumerable.Range(0, 365).Select(day =&gt; 5 - 12 * Math.Cos(day / 58.1))];
/// double[] maxima = [.. minima.Select(minimum =&gt; minimum + 8)];
/// DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2023, 1, 1), minima, maxima, TemperatureUnit.DegreeCelsius);
/// GrowingSeason season = GrowingSeason.Of(days, 2023, Hemisphere.Northern, GrowingSeasonMethod.Etccdi);
/// Console.WriteLine($"{season.First} to {season.Last}: {season.Length.Value} days");
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record GrowingSeason : IFormattable, IDisplayable
{
    private const double BaseCelsius = 5;

    // Half the sum of two tenths may miss 5 by a few units of the last place.
    private const double RoundingCelsius = 1e-9;

    private static readonly Caution MildWinter = new(
        "growing-season.no-cold-run",
        CautionLevel.Note,
        "No run of cold days ended the season: its length is that to the end of the year, and says more about the calendar than about plants.",
        GrowingSeasonMethod.Etccdi.Evidence.Source);

    /// <summary>Describes a growing season.</summary>
    /// <param name="length">Its number of days; the days it covers are those of the year that was searched.</param>
    /// <param name="first">The first day, or <see langword="null"/> where it never began.</param>
    /// <param name="last">The last day, or <see langword="null"/> where it never began.</param>
    /// <param name="ending">How it ended.</param>
    /// <exception cref="ArgumentNullException">The length is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The days, the length and the ending contradict one another.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The ending is not one of the defined ones.</exception>
    public GrowingSeason(ClimateSum<int> length, DateOnly? first, DateOnly? last, GrowingSeasonEnding ending)
    {
        Length = Guard.NotNull(length);
        First = first;
        Last = last;
        Ending = Guard.Defined(ending);
        bool isNone = first is null && last is null && length.Value == 0 && ending == GrowingSeasonEnding.NeverBegan;
        bool isSome = first >= length.From && last <= length.To && last.Value.DayNumber - first.Value.DayNumber + 1 == length.Value
            && ending != GrowingSeasonEnding.NeverBegan;
        if (!isNone && !isSome)
        {
            throw new ArgumentException(
                $"length was {Guard.Number(length.Value)} days; allowed: those from first to last within the year, or 0 with neither.", nameof(length));
        }
    }

    /// <summary>The number of days, the year that was searched, and the definition.</summary>
    public ClimateSum<int> Length { get; }

    /// <summary>The first day, or <see langword="null"/> where it never began.</summary>
    public DateOnly? First { get; }

    /// <summary>The last day, before a cold run or at the end of the year, or <see langword="null"/> where it never began.</summary>
    public DateOnly? Last { get; }

    /// <summary>How it ended.</summary>
    public GrowingSeasonEnding Ending { get; }

    /// <summary>Finds the growing season of a year.</summary>
    /// <param name="days">The daily temperatures; the mean of a day is half the sum of minimum and maximum.</param>
    /// <param name="year">The year; in the south the one in whose July the year of twelve months begins.</param>
    /// <param name="hemisphere">Which half of the earth the place lies on.</param>
    /// <param name="method">The definition.</param>
    /// <param name="missingDays">What is done about missing days; a day of the year outside the record is missing too.</param>
    /// <param name="maximumMissing">The largest share of missing days that is accepted, from 0 to 100 %; <see langword="null"/> for 5 %.</param>
    /// <returns>The season.</returns>
    /// <exception cref="ArgumentNullException">The days or the method are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">More days are missing than accepted, or none is known.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The year is outside the calendar, the hemisphere is unknown, or the share is no share.</exception>
    public static GrowingSeason Of(
        DailyTemperatures days,
        int year,
        Hemisphere hemisphere,
        GrowingSeasonMethod method,
        MissingDays missingDays = MissingDays.LeftOut,
        Ratio? maximumMissing = null)
    {
        Guard.NotNull(method);
        bool isNorthern = Guard.Defined(hemisphere) == Hemisphere.Northern;
        Guard.Within(year, 1, isNorthern ? 9999 : 9998, "");
        DateSpan span = isNorthern
            ? new DateSpan(new DateOnly(year, 1, 1), new DateOnly(year, 12, 31))
            : new DateSpan(new DateOnly(year, 7, 1), new DateOnly(year + 1, 6, 30));
        DateOnly middle = isNorthern ? new DateOnly(year, 7, 1) : new DateOnly(year + 1, 1, 1);

        CountedDays counted = CountedDays.Of(days, span, missingDays, maximumMissing);
        int? start = FirstRun(counted, 0, method.RunDays, isWarm: true);
        if (start is not int first)
            return new GrowingSeason(counted.Result(0, "days", method.Evidence), null, null, GrowingSeasonEnding.NeverBegan);
        int afterMiddle = middle.DayNumber - span.From.DayNumber + 1;
        int? end = FirstRun(counted, Math.Max(first, afterMiddle), method.RunDays, isWarm: false);
        int last = (end ?? span.Count) - 1;
        return new GrowingSeason(
            counted.Result(last - first + 1, "days", method.Evidence, end is null ? [MildWinter] : (Caution[])[]),
            span.From.AddDays(first),
            span.From.AddDays(last),
            end is null ? GrowingSeasonEnding.EndOfYear : GrowingSeasonEnding.ColdRun);
    }

    /// <summary>The season in one line of invariant culture.</summary>
    /// <returns>Length, first and last day, definition.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The season as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones; the season has neither.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>Length, first and last day, definition.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"{QuantityText.Of(Length.Value, style)} days")
    {
        Rows = [new DisplayRow("season", DaysWords), .. ((IDisplayable)Length).ToDisplay(style).Rows.Skip(1)],
    };

    private string DaysWords => Ending switch
    {
        GrowingSeasonEnding.NeverBegan => "never began",
        GrowingSeasonEnding.EndOfYear => $"{AirTemperature.Text(First!.Value)} to the end of the year, {AirTemperature.Text(Last!.Value)}",
        _ => $"{AirTemperature.Text(First!.Value)} to {AirTemperature.Text(Last!.Value)}",
    };

    private string ToString(TextStyle style) => $"{QuantityText.Of(Length.Value, style)} days, {DaysWords}; {Length.Method}";

    /// <summary>The first day of the first run of days on one side of the base.</summary>
    private static int? FirstRun(CountedDays counted, int from, int runDays, bool isWarm)
    {
        int run = 0;
        for (int index = from; index < counted.Span.Count; index++)
        {
            // Not a number is on neither side.
            double aboveBaseCelsius = (counted.MinimaCelsius[index] + counted.MaximaCelsius[index]) / 2 - BaseCelsius;
            run = (isWarm ? aboveBaseCelsius > RoundingCelsius : aboveBaseCelsius < -RoundingCelsius) ? run + 1 : 0;
            if (run == runDays)
                return index - runDays + 1;
        }

        return null;
    }
}
