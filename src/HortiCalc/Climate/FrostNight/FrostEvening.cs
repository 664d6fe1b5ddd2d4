using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>What is read on an evening before a frost: times, thermometers, wind and sky.</summary>
/// <remarks>Immutable; equal when all members are equal. Times are of one clock that does not jump in the night; their kind is set aside.</remarks>
public sealed record FrostEvening : IFormattable
{
    /// <summary>Describes an evening.</summary>
    /// <param name="sunset">The time of sunset.</param>
    /// <param name="sunrise">The time of the next sunrise, more than 2 and up to 24 hours later.</param>
    /// <param name="temperature">The air temperature two hours after sunset.</param>
    /// <param name="dewPoint">The dew point then, at most the air temperature; see <see cref="MoistAir"/> to find it from other readings.</param>
    /// <param name="windSpeed">The wind speed, 0 or more.</param>
    /// <param name="isClear">Whether the sky is without cloud, and there is no fog and no rain.</param>
    /// <param name="inversion">Whether the air is warmer higher up; <see langword="null"/> where nobody measured.</param>
    /// <param name="airPressure">What a barometer shows there; sea level where it is <see langword="null"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range.</exception>
    public FrostEvening(
        DateTime sunset,
        DateTime sunrise,
        Temperature temperature,
        Temperature dewPoint,
        Speed windSpeed,
        bool isClear,
        bool? inversion = null,
        Pressure? airPressure = null)
    {
        Sunset = DateTime.SpecifyKind(sunset, DateTimeKind.Unspecified);
        Sunrise = DateTime.SpecifyKind(sunrise, DateTimeKind.Unspecified);
        double hours = (Sunrise - Sunset).TotalHours;
        if (!(hours > 2 && hours <= 24))
            throw Guard.Refused(nameof(sunrise), hours, "h after sunset", "more than 2 and up to 24 h after sunset");
        NightCelsius.NotAbove(dewPoint, NightCelsius.Air(temperature, nameof(temperature)), nameof(dewPoint));
        MetresPerSecond = Guard.NotNegative(Boundary.MetresPerSecond(windSpeed), "m/s", nameof(windSpeed));
        if (airPressure is Pressure barometer)
            Guard.Within(Boundary.Kilopascals(barometer), 50, 110, "kPa", nameof(airPressure));
        Temperature = HouseUnits.Normalise(temperature);
        DewPoint = HouseUnits.Normalise(dewPoint);
        WindSpeed = HouseUnits.Normalise(windSpeed);
        IsClear = isClear;
        Inversion = inversion;
        AirPressure = airPressure is Pressure given ? HouseUnits.Normalise(given) : null;
    }

    /// <summary>The time of sunset.</summary>
    public DateTime Sunset { get; }

    /// <summary>The time of the next sunrise.</summary>
    public DateTime Sunrise { get; }

    /// <summary>The air temperature two hours after sunset.</summary>
    public Temperature Temperature { get; }

    /// <summary>The dew point two hours after sunset.</summary>
    public Temperature DewPoint { get; }

    /// <summary>The wind speed.</summary>
    public Speed WindSpeed { get; }

    /// <summary>Whether the sky is without cloud, and there is no fog and no rain.</summary>
    public bool IsClear { get; }

    /// <summary>Whether the air is warmer higher up; <see langword="null"/> where nobody measured.</summary>
    public bool? Inversion { get; }

    /// <summary>What a barometer shows there; sea level where it is <see langword="null"/>.</summary>
    public Pressure? AirPressure { get; }

    internal double MetresPerSecond { get; }

    /// <summary>The evening in metric units and invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The evening as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style) =>
        $"{HourRange.Text(Sunset)} to {HourRange.Text(Sunrise)}: {QuantityText.Of(Temperature, style)}, dew point {QuantityText.Of(DewPoint, style)}, "
        + $"wind {QuantityText.Of(WindSpeed, style)}, {(IsClear ? "clear" : "not clear")}";
}
