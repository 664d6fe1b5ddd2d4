using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Climate;

/// <summary>The lowest and highest air temperature of each day over a run of days, with the gaps known.</summary>
/// <remarks>Immutable. A day is missing when either of its two temperatures is; nothing is ever taken for zero.</remarks>
public sealed class DailyTemperatures
{
    // NaN marks a missing day, in both arrays at once.
    private readonly double[] minimaCelsius;
    private readonly double[] maximaCelsius;

    private DailyTemperatures(DateOnly start, double[] minimaCelsius, double[] maximaCelsius)
    {
        Start = start;
        this.minimaCelsius = minimaCelsius;
        this.maximaCelsius = maximaCelsius;
        MissingCount = minimaCelsius.Count(double.IsNaN);
    }

    /// <summary>The first day.</summary>
    public DateOnly Start { get; }

    /// <summary>The last day.</summary>
    public DateOnly End => Start.AddDays(Count - 1);

    /// <summary>How many days there are from the first to the last, missing ones included.</summary>
    public int Count => minimaCelsius.Length;

    /// <summary>How many of the days are missing.</summary>
    public int MissingCount { get; }

    internal ReadOnlySpan<double> MinimaCelsius => minimaCelsius;

    internal ReadOnlySpan<double> MaximaCelsius => maximaCelsius;

    /// <summary>Makes a series of consecutive days.</summary>
    /// <param name="start">The first day.</param>
    /// <param name="minima">The lowest temperature of each day, in <paramref name="unit"/>; not a number where it is missing.</param>
    /// <param name="maxima">The highest temperature of each day, in <paramref name="unit"/>; as many as <paramref name="minima"/>.</param>
    /// <param name="unit">The unit of both.</param>
    /// <returns>The series.</returns>
    public static DailyTemperatures Create(DateOnly start, ReadOnlySpan<double> minima, ReadOnlySpan<double> maxima, TemperatureUnit unit)
    {
        // TO BE COMPLETED: refusals (max below min, infinite, outside -90..60 °C, lengths, empty, beyond calendar).
        double[] low = new double[minima.Length];
        double[] high = new double[maxima.Length];
        for (int day = 0; day < minima.Length; day++)
        {
            bool known = !double.IsNaN(minima[day]) && !double.IsNaN(maxima[day]);
            low[day] = known ? Boundary.Celsius(new Temperature(minima[day], unit)) : double.NaN;
            high[day] = known ? Boundary.Celsius(new Temperature(maxima[day], unit)) : double.NaN;
        }

        return new DailyTemperatures(start, low, high);
    }
}
