namespace HortiCalc.Climate;

/// <summary>Counts a rule along one series, or over many stations at once.</summary>
internal abstract class HourlyCounter
{
    /// <summary>What each hour adds; NaN where the hour is missing.</summary>
    public abstract void Series(ReadOnlySpan<double> celsius, int firstHourOfDay, Span<double> additions);

    /// <summary>
    /// The total of each station and how many of its hours are missing. The temperatures of an hour stand side by side, station by station;
    /// less a shift and over a factor they are degrees Celsius.
    /// </summary>
    public abstract void Stations(
        ReadOnlySpan<double> temperatures,
        int stations,
        double shift,
        double factor,
        int firstHourOfDay,
        Span<double> totals,
        Span<int> missingHours);
}
