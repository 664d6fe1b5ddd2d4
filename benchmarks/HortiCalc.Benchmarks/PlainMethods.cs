namespace HortiCalc.Benchmarks;

/// <summary>One day by the printed formulas, as a user would write them.</summary>
internal static class PlainMethods
{
    public static double SineAbove(double minimum, double maximum, double threshold)
    {
        if (threshold >= maximum)
            return 0;
        double mean = (minimum + maximum) / 2;
        if (threshold <= minimum)
            return mean - threshold;
        double amplitude = (maximum - minimum) / 2;
        double angle = Math.Asin((threshold - mean) / amplitude);
        return ((mean - threshold) * (Math.PI / 2 - angle) + amplitude * Math.Cos(angle)) / Math.PI;
    }

    public static double TriangleAbove(double minimum, double maximum, double threshold)
    {
        if (threshold >= maximum)
            return 0;
        if (threshold <= minimum)
            return (minimum + maximum) / 2 - threshold;
        return (maximum - threshold) * (maximum - threshold) / (2 * (maximum - minimum));
    }

    public static double FourCase(double minimum, double maximum, double threshold)
    {
        double mean = (minimum + maximum) / 2;
        if (maximum <= threshold)
            return 0;
        if (minimum >= threshold)
            return mean - threshold;
        return mean >= threshold ? (maximum - threshold) / 2 - (threshold - minimum) / 4 : (maximum - threshold) / 4;
    }
}
