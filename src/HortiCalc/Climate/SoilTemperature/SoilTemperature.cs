using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The temperature of the soil by depth, from the wave that its surface follows over a year or a day.</summary>
/// <remarks>
/// The depth matters more than the soil: in the table of <see cref="SoilMaterials"/> the daily wave is damped to a third within 5 to 18 cm,
/// the annual one within 1 to 3.5 m. Where the ground has its own record, fit the wave to that (<see cref="AnnualWaveFit"/>) instead of to the air.
/// </remarks>
public static class SoilTemperature
{
    private const double RoundingOfPeriod = 1e-9;

    /// <summary>The temperature at a depth on a day of the year.</summary>
    /// <param name="surface">The wave that the surface follows; that of the air where no other is known.</param>
    /// <param name="diffusivity">The diffusivity of the soil, from 0.05 to 5 mm²/s; <see cref="SoilMaterials"/> has some.</param>
    /// <param name="depth">The depth, from 0 to 30 m.</param>
    /// <param name="day">The day of the year.</param>
    /// <returns>The daily mean temperature.</returns>
    /// <exception cref="ArgumentNullException">The wave is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The depth or the diffusivity is outside what the method holds for.</exception>
    /// <example><code>
    /// AnnualWave air = new(Temperature.FromDegreesCelsius(10), TemperatureDelta.FromDegreesCelsius(9), Duration.FromDays(25));
    /// Estimate&lt;Temperature&gt; bed = SoilTemperature.On(
    ///     air, SoilMaterials.ClaySoilMoist.Diffusivity, depth: Length.FromCentimeters(10), day: new MonthDay(4, 20));
    /// </code></example>
    public static Estimate<Temperature> On(AnnualWave surface, ThermalDiffusivity diffusivity, Length depth, MonthDay day)
    {
        AnnualWave below = Guard.NotNull(surface).AtDepth(depth, diffusivity);
        return new Estimate<Temperature>(below.On(day), SoilTemperatureEvidence.AnnualWave, cautions: Cautions(surface));
    }

    /// <summary>The temperature at a depth at a time of the day.</summary>
    /// <param name="surface">The wave that the surface follows; that of the air where no other is known.</param>
    /// <param name="diffusivity">The diffusivity of the soil, from 0.05 to 5 mm²/s; <see cref="SoilMaterials"/> has some.</param>
    /// <param name="depth">The depth, from 0 to 30 m.</param>
    /// <param name="time">The time of the day, by the sun.</param>
    /// <returns>The temperature.</returns>
    /// <exception cref="ArgumentNullException">The wave is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The depth or the diffusivity is outside what the method holds for.</exception>
    public static Estimate<Temperature> At(DailyWave surface, ThermalDiffusivity diffusivity, Length depth, TimeOnly time)
    {
        DailyWave below = Guard.NotNull(surface).AtDepth(depth, diffusivity);
        return new Estimate<Temperature>(below.At(time), SoilTemperatureEvidence.DailyWave, cautions: Cautions(surface));
    }

    /// <summary>The depth at which a wave has shrunk to 1/e, 37 %, of what it is at the surface.</summary>
    /// <param name="diffusivity">The diffusivity of the soil, from 0.05 to 5 mm²/s.</param>
    /// <param name="period">How long the wave takes: a day, a year of 365 days; from an hour to 100 years.</param>
    /// <returns>√(diffusivity · period/π).</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diffusivity or the period is outside its range.</exception>
    public static Length DampingDepth(ThermalDiffusivity diffusivity, Duration period)
    {
        double squareMillimetresPerSecond = Checked(diffusivity, SoilTemperatureEvidence.AnnualWave);
        return Length.FromMeters(HeatWaveKernel.DampingDepthMetres(squareMillimetresPerSecond, PeriodDays(period)));
    }

    /// <summary>How much later than at the surface a wave comes at a depth.</summary>
    /// <param name="depth">The depth, from 0 to 30 m.</param>
    /// <param name="diffusivity">The diffusivity of the soil, from 0.05 to 5 mm²/s.</param>
    /// <param name="period">How long the wave takes; from an hour to 100 years.</param>
    /// <returns>The lag, in proportion to the depth; it can be longer than the period.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth, the diffusivity or the period is outside its range.</exception>
    public static Duration Lag(Length depth, ThermalDiffusivity diffusivity, Duration period)
    {
        (double depthMetres, double squareMillimetresPerSecond) = Checked(depth, diffusivity, SoilTemperatureEvidence.AnnualWave);
        double periodDays = PeriodDays(period);
        double dampingMetres = HeatWaveKernel.DampingDepthMetres(squareMillimetresPerSecond, periodDays);
        return Duration.FromDays(HeatWaveKernel.LagDays(depthMetres / dampingMetres, periodDays));
    }

    /// <summary>How much of a wave is left at a depth.</summary>
    /// <param name="depth">The depth, from 0 to 30 m.</param>
    /// <param name="dampingDepth">The damping depth, greater than 0, up to 30 m.</param>
    /// <returns>exp(−depth / damping depth) of what it is at the surface.</returns>
    /// <exception cref="ArgumentOutOfRangeException">One is outside its range.</exception>
    public static Ratio ShareLeft(Length depth, Length dampingDepth)
    {
        double depthMetres = Guard.Within(Boundary.Metres(depth), 0, SoilTemperatureEvidence.DeepestMetres, "m", nameof(depth));
        double dampingMetres = Guard.Positive(Boundary.Metres(dampingDepth), "m", nameof(dampingDepth));
        Guard.Within(dampingMetres, 0, SoilTemperatureEvidence.DeepestMetres, "m", nameof(dampingDepth));
        return Ratio.FromPercent(100 * Math.Exp(-depthMetres / dampingMetres));
    }

    /// <summary>The diffusivity of a soil from how much a wave shrinks between two depths.</summary>
    /// <param name="upper">The upper depth, 0 or more.</param>
    /// <param name="upperAmplitude">The amplitude there.</param>
    /// <param name="lower">The lower depth, below the upper.</param>
    /// <param name="lowerAmplitude">The amplitude there, greater than 0 and smaller than the upper one.</param>
    /// <param name="period">How long the wave takes; from an hour to 100 years.</param>
    /// <returns>The diffusivity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A depth, an amplitude or the period is outside its range.</exception>
    public static Estimate<ThermalDiffusivity> DiffusivityFromAmplitudes(
        Length upper, TemperatureDelta upperAmplitude, Length lower, TemperatureDelta lowerAmplitude, Duration period)
    {
        double upperMetres = Guard.NotNegative(Boundary.Metres(upper), "m", nameof(upper));
        double lowerMetres = Guard.Within(Boundary.Metres(lower), upperMetres, SoilTemperatureEvidence.DeepestMetres, "m", nameof(lower));
        Guard.Positive(lowerMetres - upperMetres, "m", $"{nameof(lower)} less {nameof(upper)}");
        double upperCelsius = Guard.Positive(Boundary.CelsiusDegrees(upperAmplitude), "°C", nameof(upperAmplitude));
        double lowerCelsius = Guard.Between(Boundary.CelsiusDegrees(lowerAmplitude), 0, upperCelsius, "°C", nameof(lowerAmplitude));
        double dampingMetres = (lowerMetres - upperMetres) / Math.Log(upperCelsius / lowerCelsius);
        return new Estimate<ThermalDiffusivity>(
            ThermalDiffusivity.FromSquareMillimetresPerSecond(HeatWaveKernel.SquareMillimetresPerSecond(dampingMetres, PeriodDays(period))),
            SoilTemperatureEvidence.AmplitudeRatio);
    }

    internal static (double DepthMetres, double SquareMillimetresPerSecond) Checked(Length depth, ThermalDiffusivity diffusivity, Method method) =>
        (method.Require(Boundary.Metres(depth), "m", nameof(depth)), Checked(diffusivity, method));

    private static double Checked(ThermalDiffusivity diffusivity, Method method) =>
        method.Require(diffusivity.SquareMillimetresPerSecond, "mm²/s", nameof(diffusivity));

    private static double PeriodDays(Duration period) =>
        Guard.Within(Boundary.Days(period), 1.0 / 24 - RoundingOfPeriod, 36_500, "d", nameof(period));

    private static Caution[] Cautions(TemperatureWave surface) =>
    [
        SoilTemperatureEvidence.AirIsNotSurface,
        SoilTemperatureEvidence.MeasureBeforeSowing,
        .. surface.MeanCelsius < surface.AmplitudeCelsius ? [SoilTemperatureEvidence.FreezingNotModelled] : (Caution[])[],
    ];
}
