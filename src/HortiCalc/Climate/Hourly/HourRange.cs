using System.Globalization;
using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>Finds an hour in a run of hours.</summary>
internal static class HourRange
{
    /// <summary>How many hours an hour is after the first of the run; refused where it is not in the run.</summary>
    public static int IndexOf(DateTime hour, DateTime start, DateTime end, string parameter)
    {
        DateTime full = Full(hour, parameter);
        return full >= start && full <= end
            ? (int)((full - start).Ticks / TimeSpan.TicksPerHour)
            : throw new ArgumentOutOfRangeException(parameter, $"{parameter} was {Text(hour)}; allowed: from {Text(start)} to {Text(end)}.");
    }

    /// <summary>The hour without a kind, so that equal hours are equal; refused where it is not a full one.</summary>
    public static DateTime Full(DateTime hour, string parameter) => hour.Ticks % TimeSpan.TicksPerHour == 0
        ? DateTime.SpecifyKind(hour, DateTimeKind.Unspecified)
        : throw new ArgumentOutOfRangeException(
            parameter, $"{parameter} was {hour.ToString("yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture)}; allowed: a full hour.");

    public static string Text(DateTime hour) => hour.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    public static ValueList<DateTime> Missing(DateTime start, ReadOnlySpan<double> values, int count)
    {
        List<DateTime> hours = new(count);
        for (int hour = 0; hour < values.Length && hours.Count < count; hour++)
        {
            if (double.IsNaN(values[hour]))
                hours.Add(start.AddHours(hour));
        }

        return ValueList<DateTime>.Of(hours);
    }
}
