using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Tells radiation frost from advection frost.</summary>
public static class FrostTypes
{
    private static readonly Method Table = new(
        "frost-type.table",
        "wind, sky and inversion",
        FrostNightSources.FrostTypes,
        new Domain("radiation: wind below 5 miles per hour, clear, with an inversion; advection: wind above 5 miles per hour, without one"));

    private static readonly double LimitMetresPerSecond = 5 * Boundary.MetresPerMile / 3600;

    /// <summary>The type of a frost by the published marks of each.</summary>
    /// <param name="windSpeed">The wind speed, 0 or more.</param>
    /// <param name="clearSky">Whether the sky is clear. An advection frost may have clouds or none.</param>
    /// <param name="inversion">Whether the air is warmer higher up; <see langword="null"/> where nobody measured.</param>
    /// <returns>The type; <see cref="FrostType.Unclear"/> where the marks contradict one another.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The wind speed is negative.</exception>
    /// <example><code>
    /// Estimate&lt;FrostType&gt; type = FrostTypes.Of(Speed.FromMetersPerSecond(1), clearSky: true);
    /// Console.WriteLine(type.Value); // Radiation
    /// </code></example>
    public static Estimate<FrostType> Of(Speed windSpeed, bool clearSky, bool? inversion = null)
    {
        double metresPerSecond = Guard.NotNegative(Boundary.MetresPerSecond(windSpeed), "m/s", nameof(windSpeed));
        FrostType type = FrostType.Unclear;
        if (metresPerSecond < LimitMetresPerSecond && clearSky && inversion != false)
            type = FrostType.Radiation;
        else if (metresPerSecond > LimitMetresPerSecond && inversion != true)
            type = FrostType.Advection;
        return new Estimate<FrostType>(
            type, Table, cautions: type == FrostType.Advection ? [FrostNightCautions.ForecastFirst, FrostNightCautions.NotInWind] : [FrostNightCautions.ForecastFirst]);
    }
}
