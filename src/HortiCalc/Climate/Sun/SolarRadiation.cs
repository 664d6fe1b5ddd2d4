using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>How much of the sun's energy falls on level ground in a day or an hour, above the atmosphere and below it.</summary>
/// <remarks>FAO Irrigation and Drainage Paper 56, chapter 3: the radiation that its rules of crop water take.</remarks>
public static class SolarRadiation
{
    private const double LowestAltitudeMetres = -430;
    private const double HighestAltitudeMetres = 6000;
    private const double WidestRangeCelsius = 60;
    private const double InteriorCoefficient = 0.16;
    private const double CoastalCoefficient = 0.19;
    private const double SeaLevelTransmission = 0.75;
    private const double TransmissionPerMetre = 2e-5;
    private const double HighLatitudeDegrees = 55;

    // A recorder's hours, printed to a tenth, may pass the reckoned day length by their rounding.
    private const double SunshineRoundingHours = 0.05;

    /// <summary>The radiation of a day above the atmosphere. FAO-56, equation 21.</summary>
    /// <param name="latitude">The latitude, north positive, from -90 to 90°.</param>
    /// <param name="date">The date; only its number in the year counts.</param>
    /// <returns>The radiation; zero in the polar night. Beyond 55° with a caution.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The latitude is not from -90 to 90°.</exception>
    /// <example><code>
    /// Estimate&lt;Irradiation&gt; day = SolarRadiation.Extraterrestrial(Angle.FromDegrees(-20), new DateOnly(2025, 9, 3));
    /// Console.WriteLine(day.Value.MegajoulesPerSquareMeter); // 32.2
    /// </code></example>
    public static Estimate<Irradiation> Extraterrestrial(Angle latitude, DateOnly date)
    {
        double degrees = Daylight.Degrees(latitude);
        return Result(Fao56Sun.MegajoulesOfDay(degrees, date.DayOfYear), SunEvidence.ExtraterrestrialOfDay, degrees);
    }

    /// <summary>The radiation of an hour or less above the atmosphere. FAO-56, equations 28 to 33.</summary>
    /// <param name="place">The place.</param>
    /// <param name="start">When the period starts, by the clock of the place; its date is the one whose declination counts.</param>
    /// <param name="period">How long it lasts: more than 0, up to 1 h.</param>
    /// <returns>
    /// The radiation. A period in which the sun rises or sets counts only the part when it is up, where the publication has none for the
    /// whole period if the sun is down in its middle; so the hours of a day sum to <see cref="Extraterrestrial"/>.
    /// </returns>
    /// <exception cref="ArgumentNullException">The place is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The period is not above 0 and up to 1 h.</exception>
    public static Estimate<Irradiation> ExtraterrestrialOfPeriod(Place place, DateTimeOffset start, Duration period)
    {
        Guard.NotNull(place);
        double hours = SunEvidence.ExtraterrestrialOfPeriod.Require(
            Guard.Positive(Boundary.Days(period) * 24, "h", nameof(period)), "h", nameof(period));
        int dayOfYear = start.DayOfYear;
        double universalHours = start.TimeOfDay.TotalHours - start.Offset.TotalHours;
        double megajoules = Fao56Sun.MegajoulesBetween(
            place.LatitudeDegrees,
            dayOfYear,
            Fao56Sun.SolarTimeRadians(universalHours, place.LongitudeDegrees, dayOfYear),
            Fao56Sun.SolarTimeRadians(universalHours + hours, place.LongitudeDegrees, dayOfYear));
        return Result(megajoules, SunEvidence.ExtraterrestrialOfPeriod, place.LatitudeDegrees);
    }

    /// <summary>The radiation of a day without clouds, by altitude. FAO-56, equation 37, for places without fitted coefficients.</summary>
    /// <param name="latitude">The latitude, north positive, from -90 to 90°.</param>
    /// <param name="date">The date.</param>
    /// <param name="altitude">The height above the sea, from -430 to 6000 m.</param>
    /// <returns>The radiation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The latitude or the altitude is outside its range.</exception>
    public static Estimate<Irradiation> ClearSky(Angle latitude, DateOnly date, Length altitude)
    {
        double degrees = Daylight.Degrees(latitude);
        double metres = Guard.Within(Boundary.Metres(altitude), LowestAltitudeMetres, HighestAltitudeMetres, "m", nameof(altitude));
        double share = SeaLevelTransmission + TransmissionPerMetre * metres;
        return Result(share * Fao56Sun.MegajoulesOfDay(degrees, date.DayOfYear), SunEvidence.ClearSkyByAltitude, degrees);
    }

    /// <summary>The radiation of a day without clouds, by coefficients fitted to the place. FAO-56, equation 36.</summary>
    /// <param name="latitude">The latitude, north positive, from -90 to 90°.</param>
    /// <param name="date">The date.</param>
    /// <param name="coefficients">The coefficients.</param>
    /// <returns>The radiation: that of <see cref="FromSunshine"/> with sunshine all day.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The latitude is not from -90 to 90°.</exception>
    /// <exception cref="ArgumentNullException">The coefficients are <see langword="null"/>.</exception>
    public static Estimate<Irradiation> ClearSky(Angle latitude, DateOnly date, AngstromCoefficients coefficients)
    {
        double degrees = Daylight.Degrees(latitude);
        double share = Guard.NotNull(coefficients).Overcast + coefficients.Sunshine;
        return Result(share * Fao56Sun.MegajoulesOfDay(degrees, date.DayOfYear), coefficients.Evidence, degrees);
    }

    /// <summary>The radiation of a day from its hours of sunshine. FAO-56, equation 35, the Angstrom formula.</summary>
    /// <param name="latitude">The latitude, north positive, from -90 to 90°.</param>
    /// <param name="date">The date.</param>
    /// <param name="sunshine">The hours of bright sunshine, from 0 to the length of the day (<see cref="DaylightMethod.Geometric"/>).</param>
    /// <param name="coefficients">The coefficients; <see langword="null"/> for <see cref="AngstromCoefficients.Fao56"/>.</param>
    /// <returns>The radiation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The latitude is not from -90 to 90°, or there was more sunshine than day.</exception>
    /// <example><code>
    /// Estimate&lt;Irradiation&gt; may = SolarRadiation.FromSunshine(
    ///     Angle.FromDegrees(-22.9), new DateOnly(2025, 5, 15), Duration.FromHours(7.1));
    /// Console.WriteLine(may.Value.MegajoulesPerSquareMeter); // 14.5
    /// </code></example>
    public static Estimate<Irradiation> FromSunshine(
        Angle latitude, DateOnly date, Duration sunshine, AngstromCoefficients? coefficients = null)
    {
        double degrees = Daylight.Degrees(latitude);
        AngstromCoefficients parts = coefficients ?? AngstromCoefficients.Fao56;
        double dayHours = Fao56Sun.DayLengthHours(degrees, date.DayOfYear);
        double sunHours = Guard.Within(
            Boundary.Days(sunshine) * 24, 0, Math.Min(24, dayHours + SunshineRoundingHours), "h", nameof(sunshine));
        double clearness = dayHours > 0 ? Math.Min(1, sunHours / dayHours) : 0;
        return Result(
            (parts.Overcast + parts.Sunshine * clearness) * Fao56Sun.MegajoulesOfDay(degrees, date.DayOfYear), parts.Evidence, degrees);
    }

    /// <summary>The radiation of a day from its range of temperature, where nothing better is known. FAO-56, equation 50, Hargreaves and Samani.</summary>
    /// <param name="latitude">The latitude, north positive, from -90 to 90°.</param>
    /// <param name="date">The date.</param>
    /// <param name="range">The highest less the lowest air temperature of the day, from 0 to 60 °C.</param>
    /// <param name="setting">Whether the place lies inland (0.16) or on a coast (0.19).</param>
    /// <returns>The radiation; with a caution where it is more than a clear sky lets through at sea level. Better over weeks than for a day.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the setting is not one of the defined ones.</exception>
    /// <example><code>
    /// Estimate&lt;Irradiation&gt; july = SolarRadiation.FromTemperature(
    ///     Angle.FromDegrees(45.72), new DateOnly(2025, 7, 15), TemperatureDelta.FromDegreesCelsius(26.6 - 14.8), LandSetting.Interior);
    /// Console.WriteLine(july.Value.MegajoulesPerSquareMeter); // 22.3
    /// </code></example>
    public static Estimate<Irradiation> FromTemperature(Angle latitude, DateOnly date, TemperatureDelta range, LandSetting setting)
    {
        double degrees = Daylight.Degrees(latitude);
        double rangeCelsius = Guard.Within(Boundary.CelsiusDegrees(range), 0, WidestRangeCelsius, "°C", nameof(range));
        double coefficient = Guard.Defined(setting) == LandSetting.Interior ? InteriorCoefficient : CoastalCoefficient;
        double share = coefficient * Math.Sqrt(rangeCelsius);
        double above = Fao56Sun.MegajoulesOfDay(degrees, date.DayOfYear);
        Estimate<Irradiation> radiation = Result(share * above, SunEvidence.FromTemperature, degrees);
        return share > SeaLevelTransmission && above > 0 ? radiation.WithCautions(SunEvidence.BrighterThanClear) : radiation;
    }

    private static Estimate<Irradiation> Result(double megajoules, Method method, double latitudeDegrees) => new(
        Irradiation.FromMegajoulesPerSquareMeter(megajoules),
        method,
        cautions: Math.Abs(latitudeDegrees) > HighLatitudeDegrees ? [SunEvidence.HighLatitude] : null);
}
