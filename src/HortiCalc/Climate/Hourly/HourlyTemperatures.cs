using System.Diagnostics.CodeAnalysis;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Climate;

/// <summary>One reading of the air temperature an hour over a run of hours, with the gaps known.</summary>
/// <remarks>
/// Immutable; equal when the hours and their temperatures are, whatever unit they were given in. Nothing is ever taken for zero. A
/// slice shares the memory of the series it is cut from. The clock is one that never jumps: keep readings in the standard time of
/// the place, not in summer time, or an hour is missing in spring and one is there twice in autumn. A reading belongs to the date
/// of its own hour: the one of 00:00 to the day that begins.
/// </remarks>
/// <example><code>
/// HourlyTemperatures night = HourlyTemperatures.Create(
///     new DateTime(2024, 12, 31, 22, 0, 0), [5.1, 4.4, double.NaN, 3.2], TemperatureUnit.DegreeCelsius);
/// Console.WriteLine(night.Missing[0]); // midnight
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record HourlyTemperatures : IFormattable, IDisplayable
{
    private readonly ReadOnlyMemory<double> celsius;
    private ValueList<DateTime>? missing;

    private HourlyTemperatures(DateTime start, ReadOnlyMemory<double> celsius)
    {
        Start = start;
        this.celsius = celsius;
        foreach (double hourCelsius in celsius.Span)
            MissingCount += double.IsNaN(hourCelsius) ? 1 : 0;
    }

    /// <summary>The first hour.</summary>
    public DateTime Start { get; }

    /// <summary>The last hour.</summary>
    public DateTime End => Start.AddHours(Count - 1);

    /// <summary>How many hours there are from the first to the last, missing ones included.</summary>
    public int Count => celsius.Length;

    /// <summary>How many of the hours are missing.</summary>
    public int MissingCount { get; }

    /// <summary>The missing hours, in order.</summary>
    public IReadOnlyList<DateTime> Missing => missing ??= HourRange.Missing(Start, Celsius, MissingCount);

    internal ReadOnlySpan<double> Celsius => celsius.Span;

    /// <summary>The temperature of an hour.</summary>
    /// <param name="hour">An hour of the series.</param>
    /// <returns>The temperature, or <see langword="null"/> where it is missing.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The hour is not a full one, is before the first or after the last.</exception>
    public Temperature? this[DateTime hour] => At(HourRange.IndexOf(hour, Start, End, nameof(hour)));

    /// <summary>Makes a series of consecutive hours.</summary>
    /// <param name="start">
    /// The first hour, a full one, in the standard time of the place; its <see cref="DateTime.Kind"/> is set aside.
    /// </param>
    /// <param name="values">The temperature of each hour, in <paramref name="unit"/>; not a number where it is missing.</param>
    /// <param name="unit">The unit.</param>
    /// <returns>The series. The span is copied.</returns>
    /// <exception cref="ArgumentException">There is no hour, or the last is beyond the calendar.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A temperature is infinite, below -90 °C or above 60 °C, the start is not a full hour, or the unit is none.
    /// </exception>
    public static HourlyTemperatures Create(DateTime start, ReadOnlySpan<double> values, TemperatureUnit unit)
    {
        Guard.Defined(unit);
        DateTime first = HourRange.Full(start, nameof(start));
        if (values.IsEmpty)
            throw new ArgumentException("values held no hours; allowed: 1 or more.", nameof(values));
        if (values.Length - 1 > (DateTime.MaxValue - first).TotalHours)
        {
            throw new ArgumentException(
                $"values held {Guard.Number(values.Length)} hours; allowed: up to the end of the calendar.", nameof(values));
        }

        DateOnly day = DateOnly.FromDateTime(first);
        double[] hoursCelsius = new double[values.Length];
        for (int hour = 0; hour < values.Length; hour++)
            hoursCelsius[hour] = AirTemperature.Celsius(values[hour], unit, day, (first.Hour + hour) / 24, nameof(values));
        return new HourlyTemperatures(first, hoursCelsius);
    }

    /// <summary>Cuts out a run of hours, without copying.</summary>
    /// <param name="first">The first hour of the run; an hour of this series.</param>
    /// <param name="last">The last hour of the run; an hour of this series, not before <paramref name="first"/>.</param>
    /// <returns>The hours from the first to the last, both included.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An hour is not in the series, or the last is before the first.</exception>
    public HourlyTemperatures Between(DateTime first, DateTime last)
    {
        int from = HourRange.IndexOf(first, Start, End, nameof(first));
        int to = HourRange.IndexOf(last, Start, End, nameof(last));
        if (to < from)
        {
            throw new ArgumentOutOfRangeException(
                nameof(last), $"last was {HourRange.Text(last)}; allowed: not before first, {HourRange.Text(first)}.");
        }

        int count = to - from + 1;
        return count == Count ? this : new HourlyTemperatures(Start.AddHours(from), celsius.Slice(from, count));
    }

    /// <summary>Cuts out one season, without copying: all hours of its days.</summary>
    /// <param name="first">The first day of the season.</param>
    /// <param name="last">The last day; in the next year where it comes before <paramref name="first"/> in the calendar.</param>
    /// <param name="year">The year in which the season begins.</param>
    /// <returns>The hours from 00:00 of the first day to 23:00 of the last.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The season is not wholly within the series.</exception>
    public HourlyTemperatures Season(MonthDay first, MonthDay last, int year)
    {
        (DateOnly from, DateOnly to) = SeasonDates.Of(first, last, year);
        return Between(from.ToDateTime(TimeOnly.MinValue), to.ToDateTime(new TimeOnly(23, 0)));
    }

    /// <summary>Looks up an hour.</summary>
    /// <param name="hour">Any time.</param>
    /// <param name="temperature">The temperature, where it is known.</param>
    /// <returns><see langword="false"/> where the hour is missing, outside the series, or not a full one.</returns>
    public bool TryGet(DateTime hour, [NotNullWhen(true)] out Temperature? temperature)
    {
        bool isThere = hour >= Start && hour <= End && hour.Ticks % TimeSpan.TicksPerHour == 0;
        temperature = isThere ? At((int)((hour - Start).Ticks / TimeSpan.TicksPerHour)) : null;
        return temperature is not null;
    }

    /// <summary>Whether another series has the same hours and the same temperatures, missing ones included.</summary>
    /// <param name="other">Another series.</param>
    /// <returns><see langword="true"/> where both are the same.</returns>
    public bool Equals(HourlyTemperatures? other) => other is not null && Start == other.Start && Celsius.SequenceEqual(other.Celsius);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        HashCode hash = default;
        hash.Add(Start);
        foreach (double hourCelsius in Celsius)
            hash.Add(hourCelsius);
        return hash.ToHashCode();
    }

    /// <summary>The series in metric units and invariant culture.</summary>
    /// <returns>One line: first and last hour, number of hours and of missing ones, lowest and highest temperature.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The series as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: first and last hour, number of hours and of missing ones, lowest and highest temperature.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new("Hourly temperatures")
    {
        Rows =
        [
            new DisplayRow("first hour", HourRange.Text(Start)),
            new DisplayRow("last hour", HourRange.Text(End)),
            new DisplayRow("hours", QuantityText.Of(Count, style)),
            new DisplayRow("missing", QuantityText.Of(MissingCount, style)),
            new DisplayRow("temperatures", Extremes(style)),
        ],
    };

    internal static HourlyTemperatures OfCelsius(DateTime start, double[] celsius) => new(start, celsius);

    private string ToString(TextStyle style) =>
        $"{HourRange.Text(Start)} to {HourRange.Text(End)}: {QuantityText.Of(Count, style)} {(Count == 1 ? "hour" : "hours")}, "
        + $"{QuantityText.Of(MissingCount, style)} missing, {Extremes(style)}";

    private string Extremes(TextStyle style)
    {
        if (MissingCount == Count)
            return "no temperature known";
        double lowestCelsius = double.PositiveInfinity;
        double highestCelsius = double.NegativeInfinity;
        foreach (double hourCelsius in Celsius)
        {
            // A comparison with a missing hour is false.
            lowestCelsius = hourCelsius < lowestCelsius ? hourCelsius : lowestCelsius;
            highestCelsius = hourCelsius > highestCelsius ? hourCelsius : highestCelsius;
        }

        string lowest = QuantityText.Of(Temperature.FromDegreesCelsius(lowestCelsius), style);
        string highest = QuantityText.Of(Temperature.FromDegreesCelsius(highestCelsius), style);
        return $"{lowest} to {highest}";
    }

    private Temperature? At(int index) => double.IsNaN(Celsius[index]) ? null : Temperature.FromDegreesCelsius(Celsius[index]);
}
