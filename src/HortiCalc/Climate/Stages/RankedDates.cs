namespace HortiCalc.Climate;

/// <summary>Quantiles of dates in rank order by the plotting position k / (n + 1): what lies beyond the ranks is not told.</summary>
internal static class RankedDates
{
    /// <summary>The day number of a date that does not come: later than every date.</summary>
    public const int Never = int.MaxValue;

    // A level in per cent times the ranks is not exact in binary fractions.
    private const double Hair = 1e-9;

    public static double Lowest(int count) => 1.0 / (count + 1);

    public static double Highest(int count) => (double)count / (count + 1);

    public static bool Supports(int count, double level) =>
        level * (count + 1) >= 1 - Hair && level * (count + 1) <= count + Hair;

    /// <summary>The level itself, or the nearest that so many dates support.</summary>
    public static double Supported(int count, double level) => Math.Clamp(level, Lowest(count), Highest(count));

    /// <summary>The day number at a level that is supported, to the nearest day, half a day to the later one.</summary>
    public static int At(ReadOnlySpan<int> sorted, double level)
    {
        double position = level * (sorted.Length + 1);
        int rank = Math.Clamp((int)Math.Floor(position + Hair), 1, sorted.Length);
        double part = position - rank;
        int below = sorted[rank - 1];
        if (part <= Hair || below == Never)
            return below;
        int above = sorted[rank];
        return above == Never ? Never : below + (int)Math.Floor(part * (above - below) + 0.5);
    }
}
