using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Climate;

/// <summary>Counts degree days: how far, and for how long, temperature is above a base.</summary>
/// <remarks>
/// A sum of degree days is exact arithmetic on the recorded extremes by a rule with a name, hence a quantity and not an estimate. What is
/// uncertain is whether the rule fits the plant or insect: a requirement holds for the method it was published with.
/// </remarks>
public static partial class DegreeDays
{
    private const double MaximumMissingPercent = 5;

    /// <summary>Counts the degree days of one day.</summary>
    /// <param name="minimum">The day's lowest temperature, from -90 to 60 °C.</param>
    /// <param name="maximum">The day's highest temperature, not below the lowest, up to 60 °C.</param>
    /// <param name="thresholds">The temperatures between which development is counted.</param>
    /// <param name="method">The method that the requirement was published with.</param>
    /// <param name="cutoff">What happens above the upper threshold.</param>
    /// <param name="nextMinimum">
    /// The next day's lowest temperature, for the methods that look at it (<see cref="DegreeDayMethod.UsesNextMinimum"/>; the others do not);
    /// <see langword="null"/> for the day's own.
    /// </param>
    /// <returns>The degree days; negative only where the cutoff is <see cref="UpperCutoff.IntermediateBelowZero"/>.</returns>
    /// <exception cref="ArgumentNullException">The thresholds or the method are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is out of range, or the maximum is below the minimum.</exception>
    /// <exception cref="ArgumentException">The method is not defined for the cutoff, or the cutoff lacks its upper threshold.</exception>
    /// <example><code>
    /// DegreeDayThresholds maize = new(Temperature.FromDegreesFahrenheit(50), Temperature.FromDegreesFahrenheit(86));
    /// ThermalTime day = DegreeDays.OfDay(
    ///     Temperature.FromDegreesFahrenheit(65), Temperature.FromDegreesFahrenheit(90), maize,
    ///     DegreeDayMethod.ClampedAverage, UpperCutoff.Horizontal);
    /// Console.WriteLine(day.ToString("U", null)); // 25.5 °F·d
    /// </code></example>
    public static ThermalTime OfDay(
        Temperature minimum,
        Temperature maximum,
        DegreeDayThresholds thresholds,
        DegreeDayMethod method,
        UpperCutoff cutoff,
        Temperature? nextMinimum = null)
    {
        double minimumCelsius = Guard.Within(
            Boundary.Celsius(minimum), AirTemperature.LowestCelsius, AirTemperature.HighestCelsius, "°C", nameof(minimum));
        double maximumCelsius = Guard.Within(
            Boundary.Celsius(maximum), minimumCelsius, AirTemperature.HighestCelsius, "°C", nameof(maximum));
        DegreeDayMethod.RequireExtremes(method, thresholds, cutoff);
        double celsiusDays = 0;
        double nextCelsius = nextMinimum is Temperature next
            ? Guard.Within(Boundary.Celsius(next), AirTemperature.LowestCelsius, AirTemperature.HighestCelsius, "°C", nameof(nextMinimum))
            : minimumCelsius;
        method.Count(
            new(in minimumCelsius), new(in maximumCelsius), new(in nextCelsius), thresholds, cutoff, new(ref celsiusDays));
        return ThermalTime.FromCelsiusDays(celsiusDays);
    }

    /// <summary>Counts and sums the degree days of a record from a day on.</summary>
    /// <param name="days">
    /// The daily temperatures, where a day without its minimum or its maximum is missing; cut them with
    /// <see cref="DailyTemperatures.Between"/> to end earlier.
    /// </param>
    /// <param name="thresholds">The temperatures between which development is counted.</param>
    /// <param name="method">The method that the requirement was published with.</param>
    /// <param name="cutoff">What happens above the upper threshold.</param>
    /// <param name="from">The first day to count, at any time of the year; <see langword="null"/> for the first of the record.</param>
    /// <param name="missingDays">What is done about missing days.</param>
    /// <param name="maximumMissing">The largest share of missing days that is accepted, from 0 to 100 %; <see langword="null"/> for 5 %.</param>
    /// <returns>The degree days of each day and their running sum, to the last day of the record.</returns>
    /// <exception cref="ArgumentNullException">The days, thresholds or method are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The first day is not in the record, or the share is no share.</exception>
    /// <exception cref="ArgumentException">
    /// More days are missing than accepted, none is known, the method is not defined for the cutoff, or the cutoff lacks its upper threshold.
    /// </exception>
    /// <remarks>
    /// The limit of 5 % is our choice: left out, a twentieth of the days takes about a twentieth of the sum, which is less than the choice of
    /// the method does.
    /// </remarks>
    /// <example><code>
    /// DailyTemperatures days = DailyTemperatures.Create(
    ///     new DateOnly(2024, 2, 28), [8, 9, 11, 12], [15, 18, 19, 21], TemperatureUnit.DegreeCelsius);
    /// DegreeDaySeries heat = DegreeDays.Accumulate(
    ///     days, new DegreeDayThresholds(Temperature.FromDegreesCelsius(10)), DegreeDayMethod.SingleSine, UpperCutoff.None,
    ///     from: new DateOnly(2024, 2, 29));
    /// DateOnly? hatch = heat.DateReached(ThermalTime.FromCelsiusDays(8)); // 1 March
    /// </code></example>
    public static DegreeDaySeries Accumulate(
        DailyTemperatures days,
        DegreeDayThresholds thresholds,
        DegreeDayMethod method,
        UpperCutoff cutoff,
        DateOnly? from = null,
        MissingDays missingDays = MissingDays.LeftOut,
        Ratio? maximumMissing = null)
    {
        Guard.NotNull(days);
        DegreeDayMethod.RequireExtremes(method, thresholds, cutoff);
        Guard.Defined(missingDays);
        double maximumMissingPercent = AcceptedPercent(maximumMissing);
        DailyTemperatures counted = from is DateOnly first ? From(days, first) : days;
        RequireKnown(counted, maximumMissingPercent);

        double[] celsiusDays = new double[counted.Count];
        if (counted.MissingCount == 0)
        {
            method.Count(counted.MinimaCelsius, counted.MaximaCelsius, thresholds, cutoff, celsiusDays);
        }
        else
        {
            double[] minimaCelsius = counted.MinimaCelsius.ToArray();
            double[] maximaCelsius = counted.MaximaCelsius.ToArray();
            Gaps.DropPartialDays(minimaCelsius, maximaCelsius);
            if (missingDays == MissingDays.Interpolated)
            {
                Gaps.Interpolate(minimaCelsius);
                Gaps.Interpolate(maximaCelsius);
            }

            method.Count(minimaCelsius, maximaCelsius, thresholds, cutoff, celsiusDays);
        }

        return new DegreeDaySeries(counted.Start, thresholds, method, cutoff, missingDays, counted.Missing, celsiusDays);
    }

    /// <summary>Counts and sums the same record between several thresholds.</summary>
    /// <param name="days">The daily temperatures.</param>
    /// <param name="thresholds">The thresholds, from one to many.</param>
    /// <param name="method">The method that the requirements were published with.</param>
    /// <param name="cutoff">What happens above the upper threshold.</param>
    /// <param name="from">The first day to count; <see langword="null"/> for the first of the record.</param>
    /// <param name="missingDays">What is done about missing days.</param>
    /// <param name="maximumMissing">The largest share of missing days that is accepted; <see langword="null"/> for 5 %.</param>
    /// <returns>One series for each of the thresholds, in their order.</returns>
    /// <exception cref="ArgumentNullException">The days, the thresholds or the method are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The first day is not in the record, or the share is no share.</exception>
    /// <exception cref="ArgumentException">As for <see cref="Accumulate"/>.</exception>
    public static IReadOnlyList<DegreeDaySeries> AccumulateEach(
        DailyTemperatures days,
        IReadOnlyList<DegreeDayThresholds> thresholds,
        DegreeDayMethod method,
        UpperCutoff cutoff,
        DateOnly? from = null,
        MissingDays missingDays = MissingDays.LeftOut,
        Ratio? maximumMissing = null) =>
        ValueList<DegreeDaySeries>.Of(
            Guard.NotNull(thresholds).Select(pair => Accumulate(days, pair, method, cutoff, from, missingDays, maximumMissing)));

    /// <summary>Counts the same record by every method above the base, and every cutoff that it is defined for.</summary>
    /// <param name="days">The daily temperatures; cut them with <see cref="DailyTemperatures.Between"/>.</param>
    /// <param name="thresholds">The thresholds; without an upper one, only what is counted without a cutoff.</param>
    /// <param name="missingDays">What is done about missing days.</param>
    /// <param name="maximumMissing">The largest share of missing days that is accepted; <see langword="null"/> for 5 %.</param>
    /// <returns>The total of each method and cutoff.</returns>
    /// <exception cref="ArgumentNullException">The days or the thresholds are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The share is no share.</exception>
    /// <exception cref="ArgumentException">More days are missing than accepted, or none is known.</exception>
    public static DegreeDayComparison Compare(
        DailyTemperatures days,
        DegreeDayThresholds thresholds,
        MissingDays missingDays = MissingDays.LeftOut,
        Ratio? maximumMissing = null)
    {
        Guard.NotNull(days);
        Guard.NotNull(thresholds);
        List<DegreeDayTotal> totals = [];
        foreach (DegreeDayMethod method in DegreeDayMethod.All)
        {
            foreach (UpperCutoff cutoff in method.Cutoffs.Where(cutoff => cutoff == UpperCutoff.None || thresholds.Upper is not null))
            {
                DegreeDaySeries series = Accumulate(days, thresholds, method, cutoff, null, missingDays, maximumMissing);
                totals.Add(new DegreeDayTotal(method, cutoff, series.Total));
            }
        }

        return new DegreeDayComparison(days.Start, days.End, thresholds, totals);
    }

    /// <summary>Counts many days at once, of one place after one another or of many places, without allocating.</summary>
    /// <param name="minima">
    /// The lowest temperature of each day, in <paramref name="unit"/>; not a number where it is missing. Where the method looks at the next
    /// day's minimum, the next in the span is that, and one more than <paramref name="maxima"/> may be given, for the last day.
    /// </param>
    /// <param name="maxima">The highest temperature of each day, in <paramref name="unit"/>; not a number where it is missing.</param>
    /// <param name="unit">°C, °F or K.</param>
    /// <param name="thresholds">The temperatures between which development is counted.</param>
    /// <param name="method">The method.</param>
    /// <param name="cutoff">What happens above the upper threshold.</param>
    /// <param name="destination">
    /// As many as <paramref name="maxima"/>: the degree days of each day, in °F·d where the unit is °F and in °C·d otherwise; not a number where
    /// an extreme is missing. May be the same memory as the minima or the maxima, but not overlap them otherwise.
    /// </param>
    /// <exception cref="ArgumentNullException">The thresholds or the method are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An extreme is infinite, or no temperature of the air (-90 to 60 °C), a maximum is below its minimum, or the unit is another one. What the
    /// destination then holds is not defined.
    /// </exception>
    /// <exception cref="ArgumentException">
    /// The spans are not of the lengths above, the method is not defined for the cutoff, or the cutoff lacks its upper threshold.
    /// </exception>
    /// <remarks>
    /// Each day is counted for itself by operations that are the same to the last bit on every processor, so that the result does not depend on
    /// how the days are split over calls or threads. Use one call a thread for large grids.
    /// </remarks>
    /// <example><code>
    /// double[] minima = [8, 9, 11, double.NaN], maxima = [15, 18, 19, 21], counted = new double[4];
    /// DegreeDays.Count(
    ///     minima, maxima, TemperatureUnit.DegreeCelsius, new DegreeDayThresholds(Temperature.FromDegreesCelsius(10)),
    ///     DegreeDayMethod.SingleSine, UpperCutoff.None, counted);
    /// </code></example>
    public static void Count(
        ReadOnlySpan<double> minima,
        ReadOnlySpan<double> maxima,
        TemperatureUnit unit,
        DegreeDayThresholds thresholds,
        DegreeDayMethod method,
        UpperCutoff cutoff,
        Span<double> destination)
    {
        DegreeDayMethod.RequireExtremes(method, thresholds, cutoff);
        int count = maxima.Length;
        bool oneMore = method.UsesNextMinimum && minima.Length == count + 1;
        if (!oneMore)
            RequireLength(minima.Length, count, "maxima", nameof(minima));
        RequireLength(destination.Length, count, "maxima", nameof(destination));
        if (!method.UsesNextMinimum)
        {
            CountChecked(minima, maxima, minima, unit, thresholds, method, cutoff, destination);
        }
        else if (oneMore)
        {
            CountChecked(minima[..count], maxima, minima[1..], unit, thresholds, method, cutoff, destination);
        }
        else if (count > 0)
        {
            double last = minima[^1];
            CountChecked(minima[..^1], maxima[..^1], minima[1..], unit, thresholds, method, cutoff, destination[..^1]);
            CountChecked(new(in last), maxima[^1..], new(in last), unit, thresholds, method, cutoff, destination[^1..]);
        }
    }

    /// <summary>Counts many days at once, whose next days are elsewhere: a map of one day with the map of the next.</summary>
    /// <param name="minima">The lowest temperature of each day, in <paramref name="unit"/>; not a number where it is missing.</param>
    /// <param name="maxima">The highest temperature of each day, in <paramref name="unit"/>; not a number where it is missing.</param>
    /// <param name="nextMinima">
    /// The lowest temperature of the day after each, in <paramref name="unit"/>; where it is not a number, the day falls back to its own.
    /// </param>
    /// <param name="unit">°C, °F or K.</param>
    /// <param name="thresholds">The temperatures between which development is counted.</param>
    /// <param name="method">The method; where it does not look at the next minima, they change nothing.</param>
    /// <param name="cutoff">What happens above the upper threshold.</param>
    /// <param name="destination">
    /// As many as <paramref name="maxima"/>: the degree days of each day, in °F·d where the unit is °F and in °C·d otherwise; not a number where
    /// an extreme is missing. May be the same memory as one of the others, but not overlap them otherwise.
    /// </param>
    /// <exception cref="ArgumentNullException">The thresholds or the method are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An extreme is infinite, or no temperature of the air (-90 to 60 °C), a maximum is below its minimum, or the unit is another one. What the
    /// destination then holds is not defined.
    /// </exception>
    /// <exception cref="ArgumentException">
    /// The spans are not all as long, the method is not defined for the cutoff, or the cutoff lacks its upper threshold.
    /// </exception>
    public static void Count(
        ReadOnlySpan<double> minima,
        ReadOnlySpan<double> maxima,
        ReadOnlySpan<double> nextMinima,
        TemperatureUnit unit,
        DegreeDayThresholds thresholds,
        DegreeDayMethod method,
        UpperCutoff cutoff,
        Span<double> destination)
    {
        DegreeDayMethod.RequireExtremes(method, thresholds, cutoff);
        RequireLength(minima.Length, maxima.Length, "maxima", nameof(minima));
        RequireLength(nextMinima.Length, maxima.Length, "maxima", nameof(nextMinima));
        RequireLength(destination.Length, maxima.Length, "maxima", nameof(destination));
        CountChecked(minima, maxima, nextMinima, unit, thresholds, method, cutoff, destination);
    }

    private static void CountChecked(
        ReadOnlySpan<double> minima,
        ReadOnlySpan<double> maxima,
        ReadOnlySpan<double> nextMinima,
        TemperatureUnit unit,
        DegreeDayThresholds thresholds,
        DegreeDayMethod method,
        UpperCutoff cutoff,
        Span<double> destination)
    {
        DegreeDayUnit scale = DegreeDayUnit.Of(unit);
        bool sound = method.Count(cutoff, new DayRun
        {
            Minima = minima,
            Maxima = maxima,
            NextMinima = nextMinima,
            Destination = destination,
            Lower = scale.Threshold(thresholds.LowerCelsius),
            Upper = scale.Threshold(thresholds.UpperCelsius),
            Lowest = scale.Lowest,
            Highest = scale.Highest,
        });
        if (!sound)
            throw scale.Unsound(minima, maxima, nextMinima);
    }

    private static void RequireLength(int length, int allowed, string like, string parameter)
    {
        if (length != allowed)
            throw new ArgumentException($"{parameter} held {Guard.Number(length)}; allowed: {Guard.Number(allowed)}, as many as {like}.", parameter);
    }

    private static double AcceptedPercent(Ratio? maximumMissing) => maximumMissing is Ratio share
        ? Guard.Within(Boundary.Fraction(share) * 100, 0, 100, "%", nameof(maximumMissing))
        : MaximumMissingPercent;

    private static DailyTemperatures From(DailyTemperatures days, DateOnly from)
    {
        DayRange.IndexOf(from, days.Start, days.End, nameof(from));
        return days.Between(from, days.End);
    }

    private static void RequireKnown(DailyTemperatures days, double maximumMissingPercent)
    {
        double missingPercent = 100.0 * days.MissingCount / days.Count;
        if (missingPercent <= maximumMissingPercent && days.MissingCount < days.Count)
            return;
        throw new ArgumentException(
            $"days had {Guard.Number(days.MissingCount)} of {Guard.Number(days.Count)} missing "
            + $"from {AirTemperature.Text(days.Start)} to {AirTemperature.Text(days.End)}; "
            + $"allowed: up to {Guard.Number(maximumMissingPercent)} % (maximumMissing sets this), and one day with its minimum and its maximum.",
            nameof(days));
    }
}
