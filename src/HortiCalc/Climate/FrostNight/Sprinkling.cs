using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>When to start and stop sprinkling against frost, and how much water it takes.</summary>
/// <remarks>
/// Freezing water keeps what it covers near 0 °C, but the first drops evaporate and cool it to the wet bulb. So water must run while the wet bulb of the
/// air is still above the critical temperature of the crop, which in dry air is several degrees before the air itself is.
/// </remarks>
public static class Sprinkling
{
    private const double SeaLevelKilopascals = 101.325;

    private static readonly Method Rate = new(
        "sprinkling.rate",
        "application rate of Maine",
        FrostNightSources.MaineStrawberry,
        new Domain("strawberries, overhead sprinklers that turn once a minute or faster; more is needed in wind and at low humidity"));

    /// <summary>The air temperature at which to start: where its wet bulb has come down to the critical temperature.</summary>
    /// <param name="dewPoint">The dew point of the air, read in the evening upwind of the crop.</param>
    /// <param name="criticalTemperature">The critical temperature of the crop at its stage.</param>
    /// <param name="airPressure">What a barometer shows there; sea level where it is <see langword="null"/>. See <see cref="AirPressure"/>.</param>
    /// <param name="method">The method; <see cref="SprinklerStartMethod.Psychrometric"/> where it is <see langword="null"/>.</param>
    /// <returns>The air temperature, at or above the critical one by the equation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is outside what the method was published for.</exception>
    /// <example><code>
    /// Estimate&lt;Temperature&gt; start = Sprinkling.StartTemperature(
    ///     dewPoint: Temperature.FromDegreesCelsius(-5), criticalTemperature: Temperature.FromDegreesCelsius(-1.1));
    /// Console.WriteLine($"{start.Value.DegreesCelsius:F1} °C"); // 1.2 °C
    /// </code></example>
    public static Estimate<Temperature> StartTemperature(
        Temperature dewPoint, Temperature criticalTemperature, Pressure? airPressure = null, SprinklerStartMethod? method = null) =>
        AtCriticalWetBulb(dewPoint, criticalTemperature, airPressure, method);

    /// <summary>The air temperature above which to stop in the morning, when the ice melts off by itself: where the wet bulb passes the critical one.</summary>
    /// <param name="dewPoint">The dew point of the air then, read upwind of the sprinklers.</param>
    /// <param name="criticalTemperature">The critical temperature of the crop at its stage.</param>
    /// <param name="airPressure">What a barometer shows there; sea level where it is <see langword="null"/>.</param>
    /// <param name="method">The method; <see cref="SprinklerStartMethod.Psychrometric"/> where it is <see langword="null"/>.</param>
    /// <returns>
    /// The air temperature, never below 0 °C, because below it ice does not melt. With the same dew point as in the evening it is the starting temperature
    /// or 0 °C.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is outside what the method was published for.</exception>
    public static Estimate<Temperature> StopTemperature(
        Temperature dewPoint, Temperature criticalTemperature, Pressure? airPressure = null, SprinklerStartMethod? method = null) =>
        AtCriticalWetBulb(dewPoint, criticalTemperature, airPressure, method)
            .Select(air => Boundary.Celsius(air) < 0 ? Temperature.FromDegreesCelsius(0) : air);

    /// <summary>The water that sprinkling takes, as a guide: 0.1 to 0.15 inches in an hour.</summary>
    /// <param name="area">The area that is wetted.</param>
    /// <param name="duration">How long it runs.</param>
    /// <returns>The volume at the larger rate, because too little water does harm; the range is the printed one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The area or the time is not greater than 0.</exception>
    public static Estimate<Volume> WaterNeeded(Area area, Duration duration)
    {
        double squareMetres = Guard.Positive(Boundary.SquareMetres(area), "m²", nameof(area));
        double hours = Guard.Positive(Boundary.Days(duration) * 24, "h", nameof(duration));
        Volume Of(double inchesInAnHour) =>
            Volume.FromLiters(inchesInAnHour * Boundary.MetresPerInch * hours * squareMetres * Boundary.LitresPerCubicMetre);
        return new Estimate<Volume>(
            Of(0.15), Rate, new EstimateRange<Volume>(Of(0.1), Of(0.15), "range printed by the source"), cautions: FrostNightCautions.Water);
    }

    private static Estimate<Temperature> AtCriticalWetBulb(
        Temperature dewPoint, Temperature criticalTemperature, Pressure? airPressure, SprinklerStartMethod? method)
    {
        SprinklerStartMethod chosen = method ?? SprinklerStartMethod.Psychrometric;
        double dewCelsius = chosen.Evidence.Require(Boundary.Celsius(dewPoint), "°C", nameof(dewPoint));
        double criticalCelsius = chosen.Evidence.Require(Boundary.Celsius(criticalTemperature), "°C", nameof(criticalTemperature));
        double kilopascals = chosen.Evidence.Require(
            airPressure is Pressure barometer ? Guard.Positive(Boundary.Kilopascals(barometer), "kPa", nameof(airPressure)) : SeaLevelKilopascals,
            "kPa",
            nameof(airPressure));
        return new Estimate<Temperature>(
            Temperature.FromDegreesCelsius(chosen.StartCelsius(dewCelsius, criticalCelsius, kilopascals)),
            chosen.Evidence,
            cautions: [.. FrostNightCautions.Night, .. FrostNightCautions.Water]);
    }
}
