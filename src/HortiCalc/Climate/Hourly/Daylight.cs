using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>How long the sun is up, by latitude and date.</summary>
/// <remarks>Every published way stands behind one signature and is chosen by a <see cref="DaylightMethod"/>.</remarks>
public static class Daylight
{
    /// <summary>The time from sunrise to sunset.</summary>
    /// <param name="latitude">The latitude, north positive, from -90 to 90°.</param>
    /// <param name="date">The date. 29 February is the 60th day of its year, as the sources count.</param>
    /// <param name="method">
    /// How the declination is reckoned and what counts as sunrise: <see cref="DaylightMethod.Geometric"/> with rules of crop water
    /// and of hourly temperature, <see cref="DaylightMethod.Almanac"/> for what a clock shows.
    /// </param>
    /// <returns>From 0 h, the polar night, to 24 h, the polar day. Both are what they are: no error, and no caution.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The latitude is not from -90 to 90°, or the year is not one that the method was published for.
    /// </exception>
    /// <exception cref="ArgumentNullException">The method is <see langword="null"/>.</exception>
    /// <example><code>
    /// Estimate&lt;Duration&gt; midsummer = Daylight.Length(Angle.FromDegrees(52), new DateOnly(2025, 6, 21), DaylightMethod.Geometric);
    /// Console.WriteLine(midsummer.Value.Hours); // 16.5
    /// </code></example>
    public static Estimate<Duration> Length(Angle latitude, DateOnly date, DaylightMethod method)
    {
        Guard.NotNull(method).Require(date, nameof(date));
        return new Estimate<Duration>(Duration.FromDays(method.LengthHours(Degrees(latitude), date) / 24), method.Evidence);
    }

    /// <summary>How far north of the equator the sun stands overhead at noon.</summary>
    /// <param name="date">The date.</param>
    /// <param name="method">How the declination is reckoned.</param>
    /// <returns>From about -23.5° at the December solstice to 23.5° at the June one.</returns>
    /// <exception cref="ArgumentNullException">The method is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The year is not one that the method was published for.</exception>
    public static Estimate<Angle> Declination(DateOnly date, DaylightMethod method)
    {
        Guard.NotNull(method).Require(date, nameof(date));
        return new Estimate<Angle>(Angle.FromDegrees(double.RadiansToDegrees(method.DeclinationRadians(date))), method.Evidence);
    }

    internal static double Degrees(Angle latitude, string parameter = "latitude") =>
        Guard.Within(Boundary.Degrees(latitude), -90, 90, "°", parameter);
}
