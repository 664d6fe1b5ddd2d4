using System.Diagnostics.CodeAnalysis;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Climate;

/// <summary>The lowest and highest air temperature of each day over a run of days, with the gaps known.</summary>
/// <remarks>
/// Immutable; equal when the days and their temperatures are, whatever unit they were given in. A day is missing when either
/// of its two temperatures is; the other is kept, for what needs one alone: freezes need no maximum. Nothing is ever taken
/// for zero. A slice shares the memory of the series it is cut from.
/// </remarks>
/// <example><code>
/// DailyTemperatures week = DailyTemperatures.Create(
///     new DateOnly(2024, 2, 26), [2.1, 0.4, double.NaN, 1.8], [9.0, 7.7, 8.1, 11.2], TemperatureUnit.DegreeCelsius);
/// Console.WriteLine(week.Missing[0]); // the 28th
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record DailyTemperatures : IFormattable, IDisplayable
{
    // NaN marks a missing temperature.
    private readonly ReadOnlyMemory<double> minimaCelsius;
    private readonly ReadOnlyMemory<double> maximaCelsius;
    private ValueList<DateOnly>? missing;

    private DailyTemperatures(DateOnly start, ReadOnlyMemory<double> minimaCelsius, ReadOnlyMemory<double> maximaCelsius)
    {
        Start = start;
        this.minimaCelsius = minimaCelsius;
        this.maximaCelsius = maximaCelsius;
        for (int index = 0; index < Count; index++)
        {
            bool lacksMinimum = double.IsNaN(MinimaCelsius[index]);
            bool lacksMaximum = double.IsNaN(MaximaCelsius[index]);
            MissingCount += lacksMinimum || lacksMaximum ? 1 : 0;
            MissingMinimaCount += lacksMinimum ? 1 : 0;
            MissingMaximaCount += lacksMaximum ? 1 : 0;
        }
    }

    /// <summary>The first day.</summary>
    public DateOnly Start { get; }

    /// <summary>The last day.</summary>
    public DateOnly End => Start.AddDays(Count - 1);

    /// <summary>How many days there are from the first to the last, missing ones included.</summary>
    public int Count => minimaCelsius.Length;

    /// <summary>How many of the days are missing: they lack a temperature or both.</summary>
    public int MissingCount { get; }

    /// <summary>How many of the days lack their lowest temperature.</summary>
    public int MissingMinimaCount { get; }

    /// <summary>How many of the days lack their highest temperature.</summary>
    public int MissingMaximaCount { get; }

    /// <summary>The missing days, those that lack one temperature included, in order.</summary>
    public IReadOnlyList<DateOnly> Missing => missing ??= FindMissing();

    internal ReadOnlySpan<double> MinimaCelsius => minimaCelsius.Span;

    internal ReadOnlySpan<double> MaximaCelsius => maximaCelsius.Span;

    /// <summary>The temperatures of a day.</summary>
    /// <param name="date">A day of the series.</param>
    /// <returns>The day, or <see langword="null"/> where it is missing.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The date is before the first day or after the last.</exception>
    public DailyTemperature? this[DateOnly date] => At(IndexOf(date, nameof(date)));

    /// <summary>Makes a series of consecutive days.</summary>
    /// <param name="start">The first day.</param>
    /// <param name="minima">The lowest temperature of each day, in <paramref name="unit"/>; not a number where it is missing.</param>
    /// <param name="maxima">The highest temperature of each day, in <paramref name="unit"/>; as many as <paramref name="minima"/>.</param>
    /// <param name="unit">The unit of both.</param>
    /// <returns>The series. The spans are copied.</returns>
    /// <exception cref="ArgumentException">There is no day, the two are not as many, or the last day is beyond the calendar.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A temperature is infinite, below -90 °C or above 60 °C, a maximum is below the minimum of its day, or the unit is none.
    /// </exception>
    public static DailyTemperatures Create(DateOnly start, ReadOnlySpan<double> minima, ReadOnlySpan<double> maxima, TemperatureUnit unit)
    {
        Guard.Defined(unit);
        if (minima.IsEmpty)
            throw new ArgumentException("minima held no days; allowed: 1 or more.", nameof(minima));
        if (maxima.Length != minima.Length)
        {
            throw new ArgumentException(
                $"maxima held {Guard.Number(maxima.Length)} days; allowed: {Guard.Number(minima.Length)}, as many as minima.", nameof(maxima));
        }

        if (minima.Length - 1 > DateOnly.MaxValue.DayNumber - start.DayNumber)
        {
            throw new ArgumentException(
                $"minima held {Guard.Number(minima.Length)} days; allowed: up to the end of the calendar.", nameof(minima));
        }

        double[] lowsCelsius = new double[minima.Length];
        double[] highsCelsius = new double[minima.Length];
        for (int day = 0; day < minima.Length; day++)
        {
            double lowCelsius = AirTemperature.Celsius(minima[day], unit, start, day, nameof(minima));
            double highCelsius = AirTemperature.Celsius(maxima[day], unit, start, day, nameof(maxima));
            if (highCelsius < lowCelsius)
                throw AirTemperature.BelowMinimum(minima[day], maxima[day], unit, start.AddDays(day), nameof(maxima));
            lowsCelsius[day] = lowCelsius;
            highsCelsius[day] = highCelsius;
        }

        return new DailyTemperatures(start, lowsCelsius, highsCelsius);
    }

    /// <summary>Makes a series of consecutive days from a thermometer that keeps only the lowest temperature: enough for freezes.</summary>
    /// <param name="start">The first day.</param>
    /// <param name="minima">The lowest temperature of each day, in <paramref name="unit"/>; not a number where it is missing.</param>
    /// <param name="unit">Their unit.</param>
    /// <returns>The series, without any highest temperature. The span is copied.</returns>
    /// <exception cref="ArgumentException">There is no day, or the last day is beyond the calendar.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is infinite, below -90 °C or above 60 °C, or the unit is none.</exception>
    /// <example><code>
    /// DailyTemperatures nights = DailyTemperatures.FromMinima(
    ///     new DateOnly(2024, 2, 26), [2.1, -0.4, double.NaN], TemperatureUnit.DegreeCelsius);
    /// Console.WriteLine(nights.MinimumOn(new DateOnly(2024, 2, 27))); // -0.4 °C
    /// </code></example>
    public static DailyTemperatures FromMinima(DateOnly start, ReadOnlySpan<double> minima, TemperatureUnit unit)
    {
        double[] none = new double[minima.Length];
        none.AsSpan().Fill(double.NaN);
        return Create(start, minima, none, unit);
    }

    /// <summary>Makes a series of dated days, in any order; the days between them that are not given are missing.</summary>
    /// <param name="days">The days, from one to many; no date twice.</param>
    /// <returns>The series from the earliest to the latest day.</returns>
    /// <exception cref="ArgumentNullException">The days, or one of them, is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">There is no day, or a date is there twice.</exception>
    public static DailyTemperatures FromDays(IEnumerable<DailyTemperature> days)
    {
        DailyTemperature[] sorted = [.. Guard.NotNull(days)];
        if (sorted.Length == 0)
            throw new ArgumentException("days held no days; allowed: 1 or more.", nameof(days));
        foreach (DailyTemperature day in sorted)
            Guard.NotNull(day, nameof(days));
        Array.Sort(sorted, (left, right) => left.Date.CompareTo(right.Date));

        DateOnly start = sorted[0].Date;
        double[] lowsCelsius = new double[sorted[^1].Date.DayNumber - start.DayNumber + 1];
        double[] highsCelsius = new double[lowsCelsius.Length];
        lowsCelsius.AsSpan().Fill(double.NaN);
        highsCelsius.AsSpan().Fill(double.NaN);
        foreach (DailyTemperature day in sorted)
        {
            int index = day.Date.DayNumber - start.DayNumber;
            if (!double.IsNaN(lowsCelsius[index]))
                throw new ArgumentException($"days held {AirTemperature.Text(day.Date)} twice; allowed: each date once.", nameof(days));
            lowsCelsius[index] = Boundary.Celsius(day.Minimum);
            highsCelsius[index] = Boundary.Celsius(day.Maximum);
        }

        return new DailyTemperatures(start, lowsCelsius, highsCelsius);
    }

    /// <summary>Takes the lowest and highest reading of each day.</summary>
    /// <param name="readings">Hourly readings.</param>
    /// <param name="fewestReadings">
    /// How many readings a day must have, from 1 to 24; a day with fewer is missing. All 24 unless told otherwise: where the afternoon is
    /// a gap, the highest reading left says nothing about the maximum.
    /// </param>
    /// <returns>The days from that of the first reading to that of the last, missing ones among them.</returns>
    /// <remarks>The extremes of full hours lie within those of a thermometer that records them all the time, by a few tenths of a degree.</remarks>
    /// <exception cref="ArgumentNullException">The readings are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The fewest readings are not from 1 to 24.</exception>
    /// <example><code>
    /// double[] readings = [.. Enumerable.Range(0, 48).Select(hour => 10 - 5 * Math.Cos(hour * Math.PI / 12))];
    /// HourlyTemperatures hours = HourlyTemperatures.Create(new DateTime(2024, 2, 28), readings, TemperatureUnit.DegreeCelsius);
    /// DailyTemperatures days = DailyTemperatures.FromHourly(hours); // 28 and 29 February, each from 5 to 15 °C
    /// </code></example>
    public static DailyTemperatures FromHourly(HourlyTemperatures readings, int fewestReadings = 24)
    {
        Guard.NotNull(readings);
        Guard.Within(fewestReadings, 1, 24, "readings");
        int firstHour = readings.Start.Hour;
        ReadOnlySpan<double> hoursCelsius = readings.Celsius;
        int days = (firstHour + hoursCelsius.Length + 23) / 24;
        double[] lowsCelsius = new double[days];
        double[] highsCelsius = new double[days];
        for (int day = 0; day < days; day++)
        {
            int from = Math.Max(0, day * 24 - firstHour);
            int to = Math.Min(hoursCelsius.Length, day * 24 + 24 - firstHour);
            (lowsCelsius[day], highsCelsius[day]) = Extremes(hoursCelsius[from..to], fewestReadings);
        }

        return new DailyTemperatures(DateOnly.FromDateTime(readings.Start), lowsCelsius, highsCelsius);
    }

    /// <summary>Cuts out a run of days, without copying.</summary>
    /// <param name="first">The first day of the run; a day of this series.</param>
    /// <param name="last">The last day of the run; a day of this series, not before <paramref name="first"/>.</param>
    /// <returns>The days from the first to the last, both included.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A date is not in the series, or the last is before the first.</exception>
    public DailyTemperatures Between(DateOnly first, DateOnly last)
    {
        int from = IndexOf(first, nameof(first));
        int to = IndexOf(last, nameof(last));
        if (to < from)
        {
            throw new ArgumentOutOfRangeException(
                nameof(last), $"last was {AirTemperature.Text(last)}; allowed: not before first, {AirTemperature.Text(first)}.");
        }

        int count = to - from + 1;
        return count == Count ? this : new DailyTemperatures(first, minimaCelsius.Slice(from, count), maximaCelsius.Slice(from, count));
    }

    /// <summary>The lowest temperature of a day.</summary>
    /// <param name="date">A day of the series.</param>
    /// <returns>The temperature, also where the highest is missing; <see langword="null"/> where it is missing itself.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The date is before the first day or after the last.</exception>
    public Temperature? MinimumOn(DateOnly date) => Known(MinimaCelsius[IndexOf(date, nameof(date))]);

    /// <summary>The highest temperature of a day.</summary>
    /// <param name="date">A day of the series.</param>
    /// <returns>The temperature, also where the lowest is missing; <see langword="null"/> where it is missing itself.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The date is before the first day or after the last.</exception>
    public Temperature? MaximumOn(DateOnly date) => Known(MaximaCelsius[IndexOf(date, nameof(date))]);

    /// <summary>Cuts out one season, without copying.</summary>
    /// <param name="first">The first day of the season.</param>
    /// <param name="last">The last day; in the next year where it comes before <paramref name="first"/> in the calendar.</param>
    /// <param name="year">The year in which the season begins.</param>
    /// <returns>The days from the first to the last. A season to 28 February ends there in a leap year too; one to the 29th ends on the 28th in a common one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The season is not wholly within the series.</exception>
    public DailyTemperatures Season(MonthDay first, MonthDay last, int year)
    {
        (DateOnly from, DateOnly to) = SeasonDates.Of(first, last, year);
        return Between(from, to);
    }

    /// <summary>Cuts the record into all seasons that lie wholly within it, without copying.</summary>
    /// <param name="first">The first day of the season.</param>
    /// <param name="last">The last day; in the next year where it comes before <paramref name="first"/> in the calendar.</param>
    /// <returns>The seasons in order; none where the record is too short.</returns>
    public IReadOnlyList<DailyTemperatures> Seasons(MonthDay first, MonthDay last) => ValueList<DailyTemperatures>.Of(
        Enumerable.Range(Start.Year, End.Year - Start.Year + 1)
            .Where(year => !(last < first && year == DateOnly.MaxValue.Year))
            .Select(year => SeasonDates.Of(first, last, year))
            .Where(season => season.First >= Start && season.Last <= End)
            .Select(season => Between(season.First, season.Last)));

    /// <summary>Looks up a day.</summary>
    /// <param name="date">Any date.</param>
    /// <param name="day">The day's temperatures, where they are known.</param>
    /// <returns><see langword="false"/> where the day is missing or outside the series.</returns>
    public bool TryGet(DateOnly date, [NotNullWhen(true)] out DailyTemperature? day)
    {
        day = date < Start || date > End ? null : At(date.DayNumber - Start.DayNumber);
        return day is not null;
    }

    /// <summary>The days that are not missing, in order.</summary>
    /// <returns>From no days to <see cref="Count"/>.</returns>
    public IEnumerable<DailyTemperature> KnownDays()
    {
        for (int index = 0; index < Count; index++)
        {
            if (At(index) is DailyTemperature day)
                yield return day;
        }
    }

    /// <summary>Whether another series has the same days and the same temperatures, missing ones included.</summary>
    /// <param name="other">Another series.</param>
    /// <returns><see langword="true"/> where both are the same.</returns>
    public bool Equals(DailyTemperatures? other) => other is not null && Start == other.Start
        && MinimaCelsius.SequenceEqual(other.MinimaCelsius) && MaximaCelsius.SequenceEqual(other.MaximaCelsius);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        HashCode hash = default;
        hash.Add(Start);
        foreach (double minimumCelsius in MinimaCelsius)
            hash.Add(minimumCelsius);
        foreach (double maximumCelsius in MaximaCelsius)
            hash.Add(maximumCelsius);
        return hash.ToHashCode();
    }

    /// <summary>The series in metric units and invariant culture.</summary>
    /// <returns>One line: first and last day, number of days and of missing ones, lowest and highest temperature.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The series as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: first and last day, number of days and of missing ones, lowest and highest temperature.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new("Daily temperatures")
    {
        Rows =
        [
            new DisplayRow("first day", AirTemperature.Text(Start)),
            new DisplayRow("last day", AirTemperature.Text(End)),
            new DisplayRow("days", QuantityText.Of(Count, style)),
            new DisplayRow("missing", QuantityText.Of(MissingCount, style) + PartialDays(style)),
            new DisplayRow("temperatures", Extremes(style)),
        ],
    };

    private string ToString(TextStyle style) =>
        $"{AirTemperature.Text(Start)} to {AirTemperature.Text(End)}: {QuantityText.Of(Count, style)} {(Count == 1 ? "day" : "days")}, "
        + $"{QuantityText.Of(MissingCount, style)} missing{PartialDays(style)}, {Extremes(style)}";

    /// <summary>What the missing days lack, where some lack one temperature alone.</summary>
    private string PartialDays(TextStyle style) => MissingMinimaCount == MissingCount && MissingMaximaCount == MissingCount
        ? ""
        : $" ({QuantityText.Of(MissingMinimaCount, style)} minima, {QuantityText.Of(MissingMaximaCount, style)} maxima)";

    private string Extremes(TextStyle style)
    {
        double lowestCelsius = double.NaN;
        double highestCelsius = double.NaN;
        for (int index = 0; index < Count; index++)
        {
            // These pass over a missing temperature.
            lowestCelsius = double.MinNumber(lowestCelsius, MinimaCelsius[index]);
            highestCelsius = double.MaxNumber(highestCelsius, MaximaCelsius[index]);
        }

        // Only one of the two may be known.
        Temperature? lowest = Known(lowestCelsius);
        Temperature? highest = Known(highestCelsius);
        return (lowest, highest) switch
        {
            ({ } low, { } high) => $"{QuantityText.Of(low, style)} to {QuantityText.Of(high, style)}",
            ({ } low, null) => $"lowest {QuantityText.Of(low, style)}",
            (null, { } high) => $"highest {QuantityText.Of(high, style)}",
            _ => "no temperature known",
        };
    }

    private static (double LowCelsius, double HighCelsius) Extremes(ReadOnlySpan<double> hoursCelsius, int fewestReadings)
    {
        int known = 0;
        double lowCelsius = double.PositiveInfinity;
        double highCelsius = double.NegativeInfinity;
        foreach (double hourCelsius in hoursCelsius)
        {
            if (double.IsNaN(hourCelsius))
                continue;
            known++;
            lowCelsius = Math.Min(lowCelsius, hourCelsius);
            highCelsius = Math.Max(highCelsius, hourCelsius);
        }

        return known >= fewestReadings ? (lowCelsius, highCelsius) : (double.NaN, double.NaN);
    }

    private ValueList<DateOnly> FindMissing()
    {
        List<DateOnly> dates = new(MissingCount);
        for (int index = 0; index < Count && dates.Count < MissingCount; index++)
        {
            if (IsMissing(index))
                dates.Add(Start.AddDays(index));
        }

        return ValueList<DateOnly>.Of(dates);
    }

    private static Temperature? Known(double celsius) => double.IsNaN(celsius) ? null : Temperature.FromDegreesCelsius(celsius);

    private bool IsMissing(int index) => double.IsNaN(MinimaCelsius[index]) || double.IsNaN(MaximaCelsius[index]);

    private DailyTemperature? At(int index) => IsMissing(index)
        ? null
        : new DailyTemperature(
            Start.AddDays(index), Temperature.FromDegreesCelsius(MinimaCelsius[index]), Temperature.FromDegreesCelsius(MaximaCelsius[index]));

    private int IndexOf(DateOnly date, string parameter) => DayRange.IndexOf(date, Start, End, parameter);
}
