namespace HortiCalc.Climate;

/// <summary>Finds a date in a run of days.</summary>
internal static class DayRange
{
    /// <summary>How many days a date is after the first of the run; refused where it is not in the run.</summary>
    public static int IndexOf(DateOnly date, DateOnly start, DateOnly end, string parameter) => date >= start && date <= end
        ? date.DayNumber - start.DayNumber
        : throw new ArgumentOutOfRangeException(
            parameter,
            $"{parameter} was {AirTemperature.Text(date)}; allowed: from {AirTemperature.Text(start)} to {AirTemperature.Text(end)}.");
}
