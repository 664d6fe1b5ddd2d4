namespace HortiCalc.Climate;

/// <summary>Bridges the gaps of a series.</summary>
internal static class Gaps
{
    /// <summary>
    /// Makes a day that lacks one temperature lack both: a known minimum beside an interpolated maximum could lie above it.
    /// </summary>
    public static void DropPartialDays(Span<double> minima, Span<double> maxima)
    {
        for (int day = 0; day < minima.Length; day++)
        {
            if (double.IsNaN(minima[day]) || double.IsNaN(maxima[day]))
                minima[day] = maxima[day] = double.NaN;
        }
    }

    /// <summary>Replaces each missing value (NaN) between two known ones by the straight line between them; leaves the ends as they are.</summary>
    public static void Interpolate(Span<double> values)
    {
        int known = -1;
        for (int next = 0; next < values.Length; next++)
        {
            if (double.IsNaN(values[next]))
                continue;
            for (int gap = known + 1; known >= 0 && gap < next; gap++)
                values[gap] = values[known] + (values[next] - values[known]) * (gap - known) / (next - known);
            known = next;
        }
    }
}
