using System.Globalization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The temperature over a day as one sine wave.</summary>
/// <remarks>Solar time: a clock's hour of summer time and the place in its zone are the caller's to take off.</remarks>
/// <example><code>
/// DailyWave surface = new(
///     mean: Temperature.FromDegreesCelsius(20), amplitude: TemperatureDelta.FromDegreesCelsius(7), coldest: Duration.FromHours(5));
/// DailyWave below = surface.AtDepth(Length.FromCentimeters(10), ThermalDiffusivity.FromSquareMetresPerSecond(0.5e-6));
/// Temperature noon = below.At(new TimeOnly(12, 0));
/// </code></example>
public sealed record DailyWave : TemperatureWave
{
    /// <summary>Describes a wave of a day.</summary>
    /// <param name="mean">The mean of the day, from -90 to 60 °C.</param>
    /// <param name="amplitude">Half of the range from coldest to warmest, from 0 to 60 °C.</param>
    /// <param name="coldest">When it is coldest, from midnight on; from 0 to 24 hours.</param>
    /// <exception cref="ArgumentOutOfRangeException">One is outside its range.</exception>
    public DailyWave(Temperature mean, TemperatureDelta amplitude, Duration coldest)
        : base(mean, amplitude, coldest, periodDays: 1)
    {
    }

    /// <summary>The temperature at a time of the day.</summary>
    /// <param name="time">A time of the day.</param>
    /// <returns>The temperature.</returns>
    public Temperature At(TimeOnly time) => Temperature.FromDegreesCelsius(CelsiusAt(time.ToTimeSpan().TotalDays));

    /// <summary>The wave in the ground below a surface that follows this one.</summary>
    /// <param name="depth">The depth, from 0 to 30 m.</param>
    /// <param name="diffusivity">The diffusivity of the ground, from 0.05 to 5 mm²/s.</param>
    /// <returns>The wave at that depth: the same mean, a smaller amplitude, later.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth or the diffusivity is outside its range.</exception>
    public DailyWave AtDepth(Length depth, ThermalDiffusivity diffusivity)
    {
        (double depthMetres, double squareMillimetresPerSecond) = SoilTemperature.Checked(depth, diffusivity, SoilTemperatureEvidence.DailyWave);
        (TemperatureDelta amplitude, Duration coldest) = Damped(depthMetres, squareMillimetresPerSecond);
        return new DailyWave(Mean, amplitude, coldest);
    }

    private protected override string ColdestWords(TextStyle style) =>
        "at " + TimeOnly.FromTimeSpan(TimeSpan.FromDays(ColdestDays)).ToString("HH:mm", CultureInfo.InvariantCulture);
}
