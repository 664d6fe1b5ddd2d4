using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>A temperature that rises and falls as a sine wave about its mean: of a year or of a day.</summary>
/// <remarks>
/// <para>
/// Immutable; equal when mean, amplitude and time of the minimum are. The amplitude is half of the range from coldest to warmest.
/// </para>
/// <para>
/// In uniform ground the wave at a depth z is again a wave, exactly: with the same mean, an amplitude smaller by exp(−z/d), and later by
/// z/d · period/2π, where d is the damping depth √(diffusivity · period/π). It solves the equation of heat conduction for a surface that has
/// followed the wave for long.
/// </para>
/// </remarks>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(AnnualWave), "annual")]
[JsonDerivedType(typeof(DailyWave), "daily")]
public abstract record TemperatureWave : IFormattable
{
    private const double LargestAmplitudeCelsius = 60;

    private protected TemperatureWave(Temperature mean, TemperatureDelta amplitude, Duration coldest, double periodDays)
    {
        MeanCelsius = Guard.Within(
            Boundary.Celsius(mean), AirTemperature.LowestCelsius, AirTemperature.HighestCelsius, "°C", nameof(mean));
        AmplitudeCelsius = Guard.Within(Boundary.CelsiusDegrees(amplitude), 0, LargestAmplitudeCelsius, "°C", nameof(amplitude));
        ColdestDays = Guard.Within(Boundary.Days(coldest), 0, periodDays, "d", nameof(coldest)) % periodDays;
        PeriodDays = periodDays;
        Mean = Temperature.FromDegreesCelsius(MeanCelsius);
        Amplitude = TemperatureDelta.FromDegreesCelsius(AmplitudeCelsius);
        Coldest = Duration.FromDays(ColdestDays);
    }

    /// <summary>The mean.</summary>
    public Temperature Mean { get; }

    /// <summary>Half of the range from coldest to warmest.</summary>
    public TemperatureDelta Amplitude { get; }

    /// <summary>When the wave is coldest, from the start of its period.</summary>
    public Duration Coldest { get; }

    /// <summary>How long the wave takes: a year of 365 days, or a day.</summary>
    [JsonIgnore]
    public Duration Period => Duration.FromDays(PeriodDays);

    /// <summary>The lowest temperature.</summary>
    [JsonIgnore]
    public Temperature Minimum => Temperature.FromDegreesCelsius(MeanCelsius - AmplitudeCelsius);

    /// <summary>The highest temperature.</summary>
    [JsonIgnore]
    public Temperature Maximum => Temperature.FromDegreesCelsius(MeanCelsius + AmplitudeCelsius);

    internal double MeanCelsius { get; }

    internal double AmplitudeCelsius { get; }

    internal double ColdestDays { get; }

    internal double PeriodDays { get; }

    /// <summary>The wave in metric units and invariant culture.</summary>
    /// <returns>Mean, amplitude, and when it is coldest.</returns>
    public sealed override string ToString() => ToString(TextStyle.Default);

    /// <summary>The wave as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>Mean, amplitude, and when it is coldest.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    internal double CelsiusAt(double days) => MeanCelsius - AmplitudeCelsius * Math.Cos(2 * Math.PI * (days - ColdestDays) / PeriodDays);

    /// <summary>Amplitude and time of the minimum at a depth.</summary>
    internal (TemperatureDelta Amplitude, Duration Coldest) Damped(double depthMetres, double squareMillimetresPerSecond)
    {
        double depthInDampingDepths = depthMetres / HeatWaveKernel.DampingDepthMetres(squareMillimetresPerSecond, PeriodDays);
        double coldestDays = ColdestDays + HeatWaveKernel.LagDays(depthInDampingDepths, PeriodDays);
        return (
            TemperatureDelta.FromDegreesCelsius(AmplitudeCelsius * Math.Exp(-depthInDampingDepths)),
            Duration.FromDays(coldestDays % PeriodDays));
    }

    private protected abstract string ColdestWords(TextStyle style);

    private string ToString(TextStyle style) =>
        $"{QuantityText.Of(Mean, style)} ± {QuantityText.Of(Amplitude, style)}, coldest {ColdestWords(style)}";
}
