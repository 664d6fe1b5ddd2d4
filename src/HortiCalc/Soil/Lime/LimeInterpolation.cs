namespace HortiCalc.Soil;

/// <summary>Reads a printed table between its rows.</summary>
internal static class LimeInterpolation
{
    /// <summary>The value on a row, or on the straight line between the two rows beside it.</summary>
    /// <param name="rows">The row heads, rising.</param>
    /// <param name="values">One value a row.</param>
    /// <param name="at">From the first row head to the last.</param>
    /// <returns>The value, and whether it lies between two rows.</returns>
    public static (double Value, bool IsBetweenRows) Linear(ReadOnlySpan<double> rows, ReadOnlySpan<double> values, double at)
    {
        int row = rows.BinarySearch(at);
        if (row >= 0)
            return (values[row], false);
        int above = ~row;
        double share = (at - rows[above - 1]) / (rows[above] - rows[above - 1]);
        return (values[above - 1] + share * (values[above] - values[above - 1]), true);
    }
}
