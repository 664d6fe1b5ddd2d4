using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The daily mean temperature over a year as one sine wave.</summary>
/// <remarks>The year has 365 days; 29 February counts as the 28th. The tenth of January is 10 days from the start of the year.</remarks>
/// <example><code>
/// AnnualWave surface = new(
///     mean: Temperature.FromDegreesCelsius(15), amplitude: TemperatureDelta.FromDegreesCelsius(15), coldest: Duration.FromDays(10));
/// AnnualWave deep = surface.AtDepth(Length.FromMeters(1), ThermalDiffusivity.FromSquareMetresPerDay(0.05));
/// Console.WriteLine($"{deep.Maximum} around {deep.WarmestDay}"); // 24.9 °C around 5 Aug
/// </code></example>
public sealed record AnnualWave : TemperatureWave
{
    internal const double DaysOfYear = MonthDay.DaysOfYear;

    /// <summary>Describes a wave of a year.</summary>
    /// <param name="mean">The mean of the year, from -90 to 60 °C.</param>
    /// <param name="amplitude">Half of the range from the coldest to the warmest day's mean, from 0 to 60 °C.</param>
    /// <param name="coldest">The day on which it is coldest, counted so that 1 January is 1; from 0 to 365 days.</param>
    /// <exception cref="ArgumentOutOfRangeException">One is outside its range.</exception>
    public AnnualWave(Temperature mean, TemperatureDelta amplitude, Duration coldest)
        : base(mean, amplitude, coldest, DaysOfYear)
    {
    }

    /// <summary>The day nearest to when it is coldest.</summary>
    [JsonIgnore]
    public MonthDay ColdestDay => MonthDay.Nearest(ColdestDays);

    /// <summary>The day nearest to when it is warmest, half a year later.</summary>
    [JsonIgnore]
    public MonthDay WarmestDay => MonthDay.Nearest(ColdestDays + DaysOfYear / 2);

    /// <summary>The temperature on a day.</summary>
    /// <param name="day">A day of the year.</param>
    /// <returns>The temperature.</returns>
    public Temperature On(MonthDay day) => Temperature.FromDegreesCelsius(CelsiusAt(day.DayOfYear));

    /// <summary>The wave in the ground below a surface that follows this one.</summary>
    /// <param name="depth">The depth, from 0 to 30 m.</param>
    /// <param name="diffusivity">The diffusivity of the ground, from 0.05 to 5 mm²/s.</param>
    /// <returns>The wave at that depth: the same mean, a smaller amplitude, later.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth or the diffusivity is outside its range.</exception>
    public AnnualWave AtDepth(Length depth, ThermalDiffusivity diffusivity)
    {
        (double depthMetres, double squareMillimetresPerSecond) = SoilTemperature.Checked(depth, diffusivity, SoilTemperatureEvidence.AnnualWave);
        (TemperatureDelta amplitude, Duration coldest) = Damped(depthMetres, squareMillimetresPerSecond);
        return new AnnualWave(Mean, amplitude, coldest);
    }

    private protected override string ColdestWords(TextStyle style) => "around " + ColdestDay.ToString(style.Format, style.Culture);
}
