using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Climate;

/// <summary>How the air cools through a clear, calm night: with the square root of the time, from two hours after sunset to sunrise.</summary>
/// <remarks>
/// <para>
/// T = T₂ + (minimum − T₂) √(τ/N), where T₂ is the temperature two hours after sunset, τ the time since then and N that until sunrise. Within the
/// curve everything is exact. It ends at sunrise, where the cold does not.
/// </para>
/// <para>Immutable; equal when all members are equal. Times are of one clock that does not jump in the night; their kind is set aside.</para>
/// </remarks>
/// <example><code>
/// NightCooling night = new(
///     sunset: new DateTime(2027, 4, 20, 19, 0, 0),
///     sunrise: new DateTime(2027, 4, 21, 6, 0, 0),
///     twoHoursAfterSunset: Temperature.FromDegreesCelsius(4),
///     minimum: Temperature.FromDegreesCelsius(-2));
/// Console.WriteLine(night.TimeReached(Temperature.FromDegreesCelsius(0)));           // 04/21/2027 01:00:00
/// Console.WriteLine(night.DurationBelow(Temperature.FromDegreesCelsius(0)).Hours);   // 5
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record NightCooling : IFormattable, IDisplayable
{
    private const double HoursBeforeCurve = 2;

    private static readonly Method SquareRoot = new(
        "night-cooling.square-root",
        "cooling with the square root of time",
        FrostNightSources.Fao,
        new Domain("clear, calm nights; from two hours after sunset to sunrise"));

    private readonly double startCelsius;
    private readonly double minimumCelsius;

    /// <summary>Describes the cooling of a night.</summary>
    /// <param name="sunset">The time of sunset.</param>
    /// <param name="sunrise">The time of the next sunrise, more than 2 and up to 24 hours later.</param>
    /// <param name="twoHoursAfterSunset">The air temperature two hours after sunset.</param>
    /// <param name="minimum">The minimum, read or forecast; at most that temperature.</param>
    /// <exception cref="ArgumentOutOfRangeException">A temperature or the length of the night is out of its range.</exception>
    public NightCooling(DateTime sunset, DateTime sunrise, Temperature twoHoursAfterSunset, Temperature minimum)
    {
        Sunset = DateTime.SpecifyKind(sunset, DateTimeKind.Unspecified);
        Sunrise = DateTime.SpecifyKind(sunrise, DateTimeKind.Unspecified);
        double hours = (Sunrise - Sunset).TotalHours;
        if (!(hours > HoursBeforeCurve && hours <= 24))
            throw Guard.Refused(nameof(sunrise), hours, "h after sunset", "more than 2 and up to 24 h after sunset");
        startCelsius = NightCelsius.Air(twoHoursAfterSunset, nameof(twoHoursAfterSunset));
        minimumCelsius = NightCelsius.NotAbove(minimum, startCelsius, nameof(minimum));
        TwoHoursAfterSunset = HouseUnits.Normalise(twoHoursAfterSunset);
        Minimum = HouseUnits.Normalise(minimum);
    }

    /// <summary>The time of sunset.</summary>
    public DateTime Sunset { get; }

    /// <summary>The time of sunrise, when the curve ends at its minimum.</summary>
    public DateTime Sunrise { get; }

    /// <summary>The air temperature two hours after sunset.</summary>
    public Temperature TwoHoursAfterSunset { get; }

    /// <summary>The air temperature at sunrise.</summary>
    public Temperature Minimum { get; }

    /// <summary>When the curve begins: two hours after sunset.</summary>
    [JsonIgnore]
    public DateTime Start => Sunset.AddHours(HoursBeforeCurve);

    /// <summary>The rule behind the curve.</summary>
    [JsonIgnore]
    public Method Evidence { get; } = SquareRoot;

    /// <summary>What to take care of.</summary>
    [JsonIgnore]
    public IReadOnlyList<Caution> Cautions { get; } = ValueList<Caution>.Of([.. FrostNightCautions.Night, FrostNightCautions.CurveEndsAtSunrise]);

    private double Hours => (Sunrise - Start).TotalHours;

    /// <summary>The air temperature at a time.</summary>
    /// <param name="time">From two hours after sunset to sunrise.</param>
    /// <returns>The temperature on the curve.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside the curve.</exception>
    public Temperature At(DateTime time)
    {
        if (time < Start || time > Sunrise)
        {
            throw new ArgumentOutOfRangeException(
                nameof(time), $"time was {HourRange.Text(time)}; allowed: from {HourRange.Text(Start)} to {HourRange.Text(Sunrise)}.");
        }

        return Temperature.FromDegreesCelsius(CelsiusAfter((time - Start).TotalHours));
    }

    /// <summary>When the air first falls to a temperature.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <returns>
    /// The time; two hours after sunset where it was reached before or then, and <see langword="null"/> where the night does not become that cold.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside -90 to 60 °C.</exception>
    public DateTime? TimeReached(Temperature temperature) =>
        HoursUntil(NightCelsius.Air(temperature, nameof(temperature))) is double hours ? Start.AddTicks((long)(hours * TimeSpan.TicksPerHour)) : null;

    /// <summary>How long the air is at a temperature or below it, up to sunrise.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <returns>From nothing to the whole of the curve.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside -90 to 60 °C.</exception>
    public Duration DurationBelow(Temperature temperature) =>
        Duration.FromHours(HoursUntil(NightCelsius.Air(temperature, nameof(temperature))) is double hours ? Hours - hours : 0);

    /// <summary>The temperature that the air stays at or below for a time, at the end of the night: what buds had to endure that long.</summary>
    /// <param name="duration">How long, up to the length of the curve; half an hour for critical temperatures of buds.</param>
    /// <returns>The temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative or longer than the curve.</exception>
    public Temperature EnduredFor(Duration duration)
    {
        double hours = Guard.Within(Boundary.Days(duration) * 24, 0, Hours, "h", nameof(duration));
        return Temperature.FromDegreesCelsius(CelsiusAfter(Hours - hours));
    }

    /// <summary>The curve at the full hours.</summary>
    /// <returns>The temperatures, or <see langword="null"/> where a short night holds no full hour of the curve.</returns>
    public HourlyTemperatures? AtFullHours()
    {
        DateTime first = Start.Date.AddHours(Math.Ceiling(Start.TimeOfDay.TotalHours));
        if (first > Sunrise)
            return null;
        double[] celsius = new double[(int)(Sunrise - first).TotalHours + 1];
        for (int hour = 0; hour < celsius.Length; hour++)
            celsius[hour] = CelsiusAfter((first.AddHours(hour) - Start).TotalHours);
        return HourlyTemperatures.Create(first, celsius, TemperatureUnit.DegreeCelsius);
    }

    /// <summary>The night in metric units and invariant culture.</summary>
    /// <returns>One line: start, end and the rule.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The night as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: start, end and the rule.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new("Cooling of a night")
    {
        Rows =
        [
            .. Enumerable.Range(0, 5)
                .Select(quarter => Start.AddHours(Hours * quarter / 4))
                .Select(time => new DisplayRow(
                    HourRange.Text(time), QuantityText.Of(Temperature.FromDegreesCelsius(CelsiusAfter(Math.Min(Hours, (time - Start).TotalHours))), style))),
            new DisplayRow("method", SquareRoot.Name),
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
            new DisplayRow("source", SquareRoot.Source.ToString()),
        ],
    };

    private double CelsiusAfter(double hours) => startCelsius + (minimumCelsius - startCelsius) * Math.Sqrt(Math.Clamp(hours / Hours, 0, 1));

    /// <summary>The root turned round: τ = N ((T₂ − T)/(T₂ − minimum))².</summary>
    private double? HoursUntil(double celsius)
    {
        if (celsius >= startCelsius)
            return 0;
        if (celsius < minimumCelsius)
            return null;
        double share = (startCelsius - celsius) / (startCelsius - minimumCelsius);
        return Hours * share * share;
    }

    private string ToString(TextStyle style) =>
        $"{QuantityText.Of(TwoHoursAfterSunset, style)} at {HourRange.Text(Start)} to {QuantityText.Of(Minimum, style)} at {HourRange.Text(Sunrise)}; {SquareRoot}";
}
