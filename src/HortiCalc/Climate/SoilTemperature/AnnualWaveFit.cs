using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The annual wave that comes closest to a record, and by how much it misses.</summary>
/// <remarks>
/// <para>
/// Least squares on mean, amplitude and phase at once: T = m + a cos ωt + b sin ωt is linear in m, a and b, so there is one best wave and no search.
/// It misses the weather of single days, which is what <see cref="ResidualError"/> tells: 3 °C and more where winters and springs are changeable.
/// </para>
/// <para>Immutable; equal when all members are equal.</para>
/// </remarks>
/// <example><code>
/// double[] means = [.. Enumerable.Range(1, 730).Select(day =&gt; 10 - 9 * Math.Cos((day - 20) * 2 * Math.PI / 365))];
/// DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2021, 1, 1), means, means, TemperatureUnit.DegreeCelsius);
/// AnnualWaveFit fit = AnnualWaveFit.FromDaily(days);
/// Console.WriteLine(fit.Wave); // 10 °C ± 9 °C, coldest around 20 Jan
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record AnnualWaveFit : IFormattable, IDisplayable
{
    private const int FewestDays = 330;
    private const int FewestDaysOfAQuarter = 45;

    /// <summary>Describes a fitted wave.</summary>
    /// <param name="wave">The wave.</param>
    /// <param name="residualError">The root mean square of what the record differs from the wave; 0 or more.</param>
    /// <param name="count">How many values it was fitted to, at least 4.</param>
    /// <param name="missingCount">How many days of the record were missing, 0 or more.</param>
    /// <exception cref="ArgumentNullException">The wave is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public AnnualWaveFit(AnnualWave wave, TemperatureDelta residualError, int count, int missingCount)
    {
        Wave = Guard.NotNull(wave);
        ResidualError = TemperatureDelta.FromDegreesCelsius(
            Guard.NotNegative(Boundary.CelsiusDegrees(residualError), "°C", nameof(residualError)));
        Count = Guard.AtLeast(count, 4);
        MissingCount = Guard.AtLeast(missingCount, 0);
    }

    /// <summary>The wave.</summary>
    public AnnualWave Wave { get; }

    /// <summary>
    /// The root mean square of what the record differs from the wave, with the three fitted numbers taken off the count: for a day of the record, two
    /// times in three less than this.
    /// </summary>
    public TemperatureDelta ResidualError { get; }

    /// <summary>How many values it was fitted to.</summary>
    public int Count { get; }

    /// <summary>How many days of the record were missing; they take no part.</summary>
    public int MissingCount { get; }

    /// <summary>Fits a wave to daily means.</summary>
    /// <param name="days">
    /// The daily temperatures of air or soil; the mean of a day is half the sum of minimum and maximum. At least 330 known days, and 45 in every
    /// quarter of the year: with less a season is guessed.
    /// </param>
    /// <returns>The wave and its error.</returns>
    /// <exception cref="ArgumentNullException">The days are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">Too few days are known, in the year or in a quarter of it.</exception>
    public static AnnualWaveFit FromDaily(DailyTemperatures days)
    {
        Guard.NotNull(days);
        List<double> times = new(days.Count);
        List<double> meansCelsius = new(days.Count);
        int[] knownOfQuarter = new int[4];
        for (int index = 0; index < days.Count; index++)
        {
            if (double.IsNaN(days.MinimaCelsius[index]) || double.IsNaN(days.MaximaCelsius[index]))
                continue;
            MonthDay day = MonthDay.From(days.Start.AddDays(index));
            knownOfQuarter[(day.Month - 1) / 3]++;
            times.Add(day.DayOfYear);
            meansCelsius.Add((days.MinimaCelsius[index] + days.MaximaCelsius[index]) / 2);
        }

        if (times.Count < FewestDays || knownOfQuarter.Min() < FewestDaysOfAQuarter)
        {
            throw new ArgumentException(
                $"days held {Guard.Number(times.Count)} known days, {Guard.Number(knownOfQuarter.Min())} in the quarter of the year with fewest; "
                + $"allowed: {FewestDays} or more, and {FewestDaysOfAQuarter} or more in each.",
                nameof(days));
        }

        return Fit(times, meansCelsius, days.MissingCount);
    }

    /// <summary>Fits a wave to the means of the twelve months, each taken for its middle.</summary>
    /// <param name="means">The means from January to December, of air or soil; twelve.</param>
    /// <returns>The wave and its error.</returns>
    /// <remarks>Means of months round off the peaks of a wave by about 1 %, which is not corrected.</remarks>
    /// <exception cref="ArgumentNullException">The means are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">There are not twelve.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A mean is outside -90 to 60 °C.</exception>
    public static AnnualWaveFit FromMonthlyMeans(IReadOnlyList<Temperature> means)
    {
        Guard.NotNull(means);
        if (means.Count != 12)
            throw new ArgumentException($"means held {Guard.Number(means.Count)} months; allowed: 12.", nameof(means));
        double[] meansCelsius =
        [
            .. means.Select(mean => Guard.Within(
                Boundary.Celsius(mean), AirTemperature.LowestCelsius, AirTemperature.HighestCelsius, "°C", nameof(means))),
        ];
        return Fit([.. Enumerable.Range(1, 12).Select(MiddleOfMonth)], meansCelsius, 0);
    }

    /// <summary>The fit in metric units and invariant culture.</summary>
    /// <returns>The wave, its error, and how many values it rests on.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The fit as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The wave, its error, and how many values it rests on.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new("Annual wave " + Wave.ToString(style.Format, style.Culture))
    {
        Rows =
        [
            new DisplayRow("residual error", QuantityText.Of(ResidualError, style)),
            new DisplayRow("values", QuantityText.Of(Count, style)),
            new DisplayRow("missing", QuantityText.Of(MissingCount, style)),
            new DisplayRow("method", SoilTemperatureEvidence.FittedWave.Name),
        ],
    };

    /// <summary>The middle of a month, on the scale on which 1 January is 1.</summary>
    internal static double MiddleOfMonth(int month)
    {
        DateOnly first = new(2001, month, 1);
        return first.DayOfYear + (DateTime.DaysInMonth(2001, month) - 1) / 2.0;
    }

    private static AnnualWaveFit Fit(List<double> times, IReadOnlyList<double> valuesCelsius, int missingCount)
    {
        // The normal equations of 1, cos and sin; about the mean of the values, so that no digit is lost.
        double centre = valuesCelsius.Average();
        double[,] sums = new double[3, 4];
        Span<double> row = stackalloc double[4];
        for (int index = 0; index < times.Count; index++)
        {
            double angle = 2 * Math.PI * times[index] / AnnualWave.DaysOfYear;
            row[0] = 1;
            row[1] = Math.Cos(angle);
            row[2] = Math.Sin(angle);
            row[3] = valuesCelsius[index] - centre;
            for (int i = 0; i < 3; i++)
            {
                for (int j = 0; j < 4; j++)
                    sums[i, j] += row[i] * row[j];
            }
        }

        (double offset, double cosine, double sine) = Solve(sums);

        // -A cos(ω(t - c)) = a cos ωt + b sin ωt with a = -A cos ωc, b = -A sin ωc.
        double amplitude = Math.Sqrt(cosine * cosine + sine * sine);
        double coldestDays = MonthDay.Wrapped(Math.Atan2(-sine, -cosine) / (2 * Math.PI) * AnnualWave.DaysOfYear);
        AnnualWave wave = new(
            Temperature.FromDegreesCelsius(centre + offset), TemperatureDelta.FromDegreesCelsius(amplitude), Duration.FromDays(coldestDays));
        double squares = 0;
        for (int index = 0; index < times.Count; index++)
        {
            double residual = valuesCelsius[index] - wave.CelsiusAt(times[index]);
            squares += residual * residual;
        }

        return new AnnualWaveFit(wave, TemperatureDelta.FromDegreesCelsius(Math.Sqrt(squares / (times.Count - 3))), times.Count, missingCount);
    }

    /// <summary>Three equations by elimination; they are well conditioned, because all seasons take part.</summary>
    private static (double, double, double) Solve(double[,] sums)
    {
        for (int pivot = 0; pivot < 3; pivot++)
        {
            for (int other = 0; other < 3; other++)
            {
                if (other == pivot)
                    continue;
                double factor = sums[other, pivot] / sums[pivot, pivot];
                for (int column = pivot; column < 4; column++)
                    sums[other, column] -= factor * sums[pivot, column];
            }
        }

        return (sums[0, 3] / sums[0, 0], sums[1, 3] / sums[1, 1], sums[2, 3] / sums[2, 2]);
    }

    private string ToString(TextStyle style) =>
        $"{Wave.ToString(style.Format, style.Culture)}; residual error {QuantityText.Of(ResidualError, style)} over {QuantityText.Of(Count, style)} values, "
        + $"{QuantityText.Of(MissingCount, style)} missing";
}
