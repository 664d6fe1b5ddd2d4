using System.Globalization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>When the sun rises, stands highest and sets on a date, by the clock.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. Rounded to the second. A sunrise that does not happen is <see langword="null"/>: on a
/// polar day and in a polar night neither is there, and <see cref="DayLength"/> is 24 h or none; on the last day before either, one is.
/// Where the clock is far from the sun, or the day is long, sunrise can fall on the date before and sunset on the date after.
/// </remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record SunTimes : IFormattable, IDisplayable
{
    /// <summary>Describes a day of the sun.</summary>
    /// <param name="date">The date on which the sun stands highest, by the clock.</param>
    /// <param name="solarNoon">When it stands highest.</param>
    /// <param name="sunrise">When it rises, or <see langword="null"/> where it does not.</param>
    /// <param name="sunset">When it sets, or <see langword="null"/> where it does not.</param>
    /// <param name="dayLength">How long it is up, from 0 to 24 h.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is no part of a day, or the times are out of order.</exception>
    public SunTimes(DateOnly date, DateTimeOffset solarNoon, DateTimeOffset? sunrise, DateTimeOffset? sunset, Duration dayLength)
    {
        Guard.Within(Boundary.Days(dayLength) * 24, 0, 24, "h", nameof(dayLength));
        if (sunrise > solarNoon)
            throw OutOfOrder(nameof(sunrise), sunrise.Value, "not after", solarNoon);
        if (sunset < solarNoon)
            throw OutOfOrder(nameof(sunset), sunset.Value, "not before", solarNoon);
        Date = date;
        SolarNoon = solarNoon;
        Sunrise = sunrise;
        Sunset = sunset;
        DayLength = HouseUnits.Normalise(dayLength);
    }

    /// <summary>The date on which the sun stands highest, by the clock.</summary>
    public DateOnly Date { get; }

    /// <summary>When the sun stands highest.</summary>
    public DateTimeOffset SolarNoon { get; }

    /// <summary>When it rises, or <see langword="null"/> where it does not.</summary>
    public DateTimeOffset? Sunrise { get; }

    /// <summary>When it sets, or <see langword="null"/> where it does not.</summary>
    public DateTimeOffset? Sunset { get; }

    /// <summary>How long it is up, from 0 to 24 h.</summary>
    public Duration DayLength { get; }

    /// <summary>The times in invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The times as one line of text.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing: hours are the same in every country.</param>
    /// <param name="formatProvider">The culture of the numbers, or <see langword="null"/> for the invariant one.</param>
    /// <returns>For instance <c>2025-06-21: 04:44 to 21:30, 16.8 h, solar noon 13:07 (UTC+01:00)</c>.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(AirTemperature.Text(Date))
    {
        Rows =
        [
            new DisplayRow("sunrise", Clock(Sunrise)),
            new DisplayRow("solar noon", Clock(SolarNoon)),
            new DisplayRow("sunset", Clock(Sunset)),
            new DisplayRow("day length", QuantityText.Of(DayLength, style)),
            new DisplayRow("clock", Offset),
        ],
    };

    private string Offset => "UTC" + SolarNoon.ToString("zzz", CultureInfo.InvariantCulture);

    private static string Clock(DateTimeOffset? time) => time?.ToString("HH:mm", CultureInfo.InvariantCulture) ?? "none";

    private static ArgumentOutOfRangeException OutOfOrder(string parameter, DateTimeOffset time, string order, DateTimeOffset noon) => new(
        parameter,
        $"{parameter} was {time.ToString("O", CultureInfo.InvariantCulture)}; allowed: {order} solar noon, {noon.ToString("O", CultureInfo.InvariantCulture)}.");

    private string ToString(TextStyle style)
    {
        string span = (Sunrise, Sunset) switch
        {
            (null, null) when Boundary.Days(DayLength) > 0 => "the sun does not set",
            (null, null) => "the sun does not rise",
            (null, _) => $"up until {Clock(Sunset)}",
            (_, null) => $"up from {Clock(Sunrise)}",
            _ => $"{Clock(Sunrise)} to {Clock(Sunset)}",
        };
        return $"{AirTemperature.Text(Date)}: {span}, {QuantityText.Of(DayLength, style)}, solar noon {Clock(SolarNoon)} ({Offset})";
    }
}
