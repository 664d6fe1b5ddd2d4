using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Climate;

/// <summary>The door that counts of cold and of warmth share.</summary>
internal static class HourlyCounting
{
    public static HourlyAccumulation Accumulate(
        HourlyTemperatures hours, HourlyCounter counter, Method method, AccumulationUnit unit, DateTime? from, Ratio? maximumMissing)
    {
        Guard.NotNull(hours);
        double maximumMissingPercent = maximumMissing is Ratio share
            ? Guard.Within(Boundary.Fraction(share) * 100, 0, 100, "%", nameof(maximumMissing))
            : ChillEvidence.MaximumMissingPercent;
        HourlyTemperatures counted = from is DateTime first ? From(hours, first) : hours;
        if (100.0 * counted.MissingCount / counted.Count > maximumMissingPercent || counted.MissingCount == counted.Count)
        {
            throw new ArgumentException(
                $"hours had {Guard.Number(counted.MissingCount)} of {Guard.Number(counted.Count)} missing "
                + $"from {HourRange.Text(counted.Start)} to {HourRange.Text(counted.End)}; "
                + $"allowed: up to {Guard.Number(maximumMissingPercent)} % (maximumMissing sets this), and one known hour.",
                nameof(hours));
        }

        double[] additions = new double[counted.Count];
        counter.Series(counted.Celsius, counted.Start.Hour, additions);
        return new HourlyAccumulation(counted.Start, method, unit, additions);
    }

    public static void Totals(
        ReadOnlySpan<double> temperatures,
        int stations,
        TemperatureUnit unit,
        HourlyCounter counter,
        Span<double> totals,
        Span<int> missingHours,
        int firstHour)
    {
        Guard.AtLeast(stations, 1);
        Guard.Within(firstHour, 0, 23, "h");
        if (temperatures.Length % stations != 0)
        {
            throw new ArgumentException(
                $"temperatures held {Guard.Number(temperatures.Length)} values; allowed: a whole number of hours of {Guard.Number(stations)} stations.",
                nameof(temperatures));
        }

        RequireRoom(totals.Length, stations, nameof(totals));
        RequireRoom(missingHours.Length, stations, nameof(missingHours));
        (double shift, double factor) = unit switch
        {
            TemperatureUnit.DegreeCelsius => (0.0, 1.0),
            TemperatureUnit.DegreeFahrenheit => (Boundary.FahrenheitAtZeroCelsius, Boundary.FahrenheitPerCelsius),
            TemperatureUnit.Kelvin => (Boundary.KelvinAtZeroCelsius, 1.0),
            _ => throw new ArgumentOutOfRangeException(
                nameof(unit), $"unit was {unit:G}; allowed: {TemperatureUnit.DegreeCelsius}, {TemperatureUnit.DegreeFahrenheit}, {TemperatureUnit.Kelvin}."),
        };
        counter.Stations(temperatures, stations, shift, factor, firstHour, totals, missingHours);
    }

    private static void RequireRoom(int length, int stations, string parameter)
    {
        if (length < stations)
        {
            throw new ArgumentException(
                $"{parameter} held {Guard.Number(length)} values; allowed: {Guard.Number(stations)} or more, one a station.", parameter);
        }
    }

    private static HourlyTemperatures From(HourlyTemperatures hours, DateTime from)
    {
        HourRange.IndexOf(from, hours.Start, hours.End, nameof(from));
        return hours.Between(from, hours.End);
    }
}
