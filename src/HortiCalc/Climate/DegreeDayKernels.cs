namespace HortiCalc.Climate;

/// <summary>
/// The degree days of each day of a run, from its minimum and maximum. Plain loops over spans: no allocation, no state, the
/// same result whatever the split, a missing day (NaN) in, a missing day out. Without an upper threshold it is infinite.
/// </summary>
internal static class DegreeDayKernels
{
    /// <summary>
    /// A threshold and a day that are the same in Fahrenheit may differ by a few units of the last place in Celsius. What is
    /// not above this is nothing, so that a day exactly at the threshold counts exactly zero.
    /// </summary>
    public const double NoiseCelsiusDays = 1e-12;

    /// <summary>max(0, min(M, U) - L), M the mean of the two.</summary>
    public static void SimpleAverage(
        ReadOnlySpan<double> minimaCelsius, ReadOnlySpan<double> maximaCelsius, double lowerCelsius, double upperCelsius, Span<double> celsiusDays)
    {
        for (int day = 0; day < celsiusDays.Length; day++)
            celsiusDays[day] = AboveNoise(Math.Min(Mean(minimaCelsius[day], maximaCelsius[day]), upperCelsius) - lowerCelsius);
    }

    /// <summary>max(0, M - L), M the mean of the minimum and of the maximum, the latter taken for U where it is above.</summary>
    public static void CappedMaximumAverage(
        ReadOnlySpan<double> minimaCelsius, ReadOnlySpan<double> maximaCelsius, double lowerCelsius, double upperCelsius, Span<double> celsiusDays)
    {
        for (int day = 0; day < celsiusDays.Length; day++)
            celsiusDays[day] = AboveNoise(Mean(minimaCelsius[day], Math.Min(maximaCelsius[day], upperCelsius)) - lowerCelsius);
    }

    /// <summary>M - L, M the mean of the two after each is brought within L and U.</summary>
    public static void ClampedAverage(
        ReadOnlySpan<double> minimaCelsius, ReadOnlySpan<double> maximaCelsius, double lowerCelsius, double upperCelsius, Span<double> celsiusDays)
    {
        for (int day = 0; day < celsiusDays.Length; day++)
        {
            double low = Math.Clamp(minimaCelsius[day], lowerCelsius, upperCelsius);
            double high = Math.Clamp(maximaCelsius[day], lowerCelsius, upperCelsius);
            celsiusDays[day] = AboveNoise(Mean(low, high) - lowerCelsius);
        }
    }

    /// <summary>max(0, M - L), M the mean of the minimum, L where it is below, and of the maximum, U where it is above.</summary>
    public static void CappedAndRaisedAverage(
        ReadOnlySpan<double> minimaCelsius, ReadOnlySpan<double> maximaCelsius, double lowerCelsius, double upperCelsius, Span<double> celsiusDays)
    {
        for (int day = 0; day < celsiusDays.Length; day++)
        {
            double low = Math.Max(minimaCelsius[day], lowerCelsius);
            double high = Math.Min(maximaCelsius[day], upperCelsius);
            celsiusDays[day] = AboveNoise(Mean(low, high) - lowerCelsius);
        }
    }

    /// <summary>The area of the triangle above L less that above U.</summary>
    public static void SingleTriangle(
        ReadOnlySpan<double> minimaCelsius, ReadOnlySpan<double> maximaCelsius, double lowerCelsius, double upperCelsius, Span<double> celsiusDays)
    {
        for (int day = 0; day < celsiusDays.Length; day++)
        {
            double low = minimaCelsius[day];
            double high = maximaCelsius[day];
            celsiusDays[day] = AboveNoise(TriangleAbove(low, high, lowerCelsius) - TriangleAbove(low, high, upperCelsius));
        }
    }

    /// <summary>The area of the sine curve above L less that above U.</summary>
    public static void SingleSine(
        ReadOnlySpan<double> minimaCelsius, ReadOnlySpan<double> maximaCelsius, double lowerCelsius, double upperCelsius, Span<double> celsiusDays)
    {
        for (int day = 0; day < celsiusDays.Length; day++)
        {
            double low = minimaCelsius[day];
            double high = maximaCelsius[day];
            celsiusDays[day] = AboveNoise(SineAbove(low, high, lowerCelsius) - SineAbove(low, high, upperCelsius));
        }
    }

    /// <summary>
    /// The area between a temperature and the sides of a triangle that rises from the minimum to the maximum and falls back,
    /// over one day. A constant day is wholly above or wholly at or below.
    /// </summary>
    public static double TriangleAbove(double minimumCelsius, double maximumCelsius, double thresholdCelsius)
    {
        if (thresholdCelsius >= maximumCelsius)
            return 0;
        if (thresholdCelsius <= minimumCelsius)
            return Mean(minimumCelsius, maximumCelsius) - thresholdCelsius;
        double excessCelsius = maximumCelsius - thresholdCelsius;
        return excessCelsius * excessCelsius / (2 * (maximumCelsius - minimumCelsius));
    }

    /// <summary>
    /// The area between a temperature K and a sine wave through the minimum and the maximum, over one day. With the amplitude A
    /// and x = (K - M) / A it is A (sqrt(1 - x²) - x arccos x) / π, which is the printed form
    /// ((M - K)(π/2 - θ) + A cos θ) / π with θ = arcsin x, but keeps its digits where the wave only grazes the threshold.
    /// </summary>
    public static double SineAbove(double minimumCelsius, double maximumCelsius, double thresholdCelsius)
    {
        if (thresholdCelsius >= maximumCelsius)
            return 0;
        if (thresholdCelsius <= minimumCelsius)
            return Mean(minimumCelsius, maximumCelsius) - thresholdCelsius;
        double amplitudeCelsius = (maximumCelsius - minimumCelsius) / 2;
        double x = Math.Clamp((thresholdCelsius - Mean(minimumCelsius, maximumCelsius)) / amplitudeCelsius, -1, 1);
        return amplitudeCelsius * (Math.Sqrt((1 - x) * (1 + x)) - x * Math.Acos(x)) / Math.PI;
    }

    private static double Mean(double minimumCelsius, double maximumCelsius) => (minimumCelsius + maximumCelsius) / 2;

    // Written so that a missing day stays one.
    private static double AboveNoise(double celsiusDays) => celsiusDays <= NoiseCelsiusDays ? 0 : celsiusDays;
}
