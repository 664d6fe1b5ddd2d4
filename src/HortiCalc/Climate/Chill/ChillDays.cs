using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Counts chill days: cold between freezing and a threshold, from daily extremes alone.</summary>
/// <remarks>
/// Its threshold was fitted together with the requirement, crop by crop: a requirement in chill days holds for its own threshold.
/// The source counts chill days below zero, and the heat that follows above; here they are positive.
/// </remarks>
public static class ChillDays
{
    private static readonly Caution LeftOut = new(
        "chill-days.missing-left-out",
        CautionLevel.Care,
        "Days without a temperature add nothing: the true sum of chill days is larger.",
        Source.CommonPractice("chill-days-missing", "missing days of a sum of chill are reported"));

    /// <summary>
    /// The part of a triangle through the day's extremes that lies between the minimum, or 0 °C where that is lower, and the
    /// threshold. Nothing on a day wholly above the threshold or below 0 °C. Cesaraccio and others, 2004.
    /// </summary>
    public static Method Evidence { get; } = new(
        "chill-days",
        "chill days",
        new Source(
            "cesaraccio-2004-chill-days",
            "Table 2: chill days by daily extremes, after Cesaraccio et al. 2004, Agricultural and Forest Meteorology 126",
            "Journal of the Korean Forest Society",
            null,
            "https://journal.kfs21.or.kr"),
        new Domain("daily extremes", new DomainLimit("threshold", 0, AirTemperature.HighestCelsius, "°C")));

    /// <summary>Counts the chill days of one day.</summary>
    /// <param name="minimum">The day's lowest temperature, from -90 to 60 °C.</param>
    /// <param name="maximum">The day's highest temperature, not below the lowest, up to 60 °C.</param>
    /// <param name="threshold">The temperature above which there is no chill, from 0 °C.</param>
    /// <returns>The chill days, in degrees times days; never negative.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is out of range.</exception>
    /// <example><code>
    /// ThermalTime chill = ChillDays.OfDay(
    ///     Temperature.FromDegreesCelsius(2), Temperature.FromDegreesCelsius(8), Temperature.FromDegreesCelsius(10)); // 3 °C·d
    /// </code></example>
    public static ThermalTime OfDay(Temperature minimum, Temperature maximum, Temperature threshold)
    {
        double minimumCelsius = Guard.Within(
            Boundary.Celsius(minimum), AirTemperature.LowestCelsius, AirTemperature.HighestCelsius, "°C", nameof(minimum));
        double maximumCelsius = Guard.Within(
            Boundary.Celsius(maximum), minimumCelsius, AirTemperature.HighestCelsius, "°C", nameof(maximum));
        return ThermalTime.FromCelsiusDays(OfDay(minimumCelsius, maximumCelsius, Celsius(threshold)));
    }

    /// <summary>Sums the chill days of a record.</summary>
    /// <param name="days">The daily temperatures, cut to the season.</param>
    /// <param name="threshold">The temperature above which there is no chill, from 0 °C.</param>
    /// <param name="maximumMissing">
    /// The largest share of missing days that is accepted, from 0 to 100 %; <see langword="null"/> for 5 %.
    /// </param>
    /// <returns>The sum. Missing days add nothing, which a caution says.</returns>
    /// <exception cref="ArgumentNullException">The days are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The threshold is below 0 °C, or the share is no share.</exception>
    /// <exception cref="ArgumentException">More days are missing than accepted, or none is known.</exception>
    public static Estimate<ThermalTime> Sum(DailyTemperatures days, Temperature threshold, Ratio? maximumMissing = null)
    {
        Guard.NotNull(days);
        double thresholdCelsius = Celsius(threshold);
        double maximumMissingPercent = maximumMissing is Ratio share
            ? Guard.Within(Boundary.Fraction(share) * 100, 0, 100, "%", nameof(maximumMissing))
            : ChillEvidence.MaximumMissingPercent;
        if (100.0 * days.MissingCount / days.Count > maximumMissingPercent || days.MissingCount == days.Count)
        {
            throw new ArgumentException(
                $"days had {Guard.Number(days.MissingCount)} of {Guard.Number(days.Count)} missing; "
                + $"allowed: up to {Guard.Number(maximumMissingPercent)} % (maximumMissing sets this), and one known day.",
                nameof(days));
        }

        double sumCelsiusDays = 0;
        for (int day = 0; day < days.Count; day++)
        {
            double celsiusDays = OfDay(days.MinimaCelsius[day], days.MaximaCelsius[day], thresholdCelsius);
            sumCelsiusDays += double.IsNaN(celsiusDays) ? 0 : celsiusDays;
        }

        return new Estimate<ThermalTime>(
            ThermalTime.FromCelsiusDays(sumCelsiusDays), Evidence, cautions: days.MissingCount > 0 ? [LeftOut] : []);
    }

    /// <summary>The six cases of the source in one: the area above the minimum or 0 °C, less that above the threshold.</summary>
    private static double OfDay(double minimumCelsius, double maximumCelsius, double thresholdCelsius) => Math.Max(
        0,
        Above(Math.Max(0, minimumCelsius), minimumCelsius, maximumCelsius) - Above(thresholdCelsius, minimumCelsius, maximumCelsius));

    /// <summary>The area of the day's triangle above a temperature, in degrees times days.</summary>
    private static double Above(double celsius, double minimumCelsius, double maximumCelsius) =>
        celsius >= maximumCelsius ? 0
        : celsius <= minimumCelsius ? (minimumCelsius + maximumCelsius) / 2 - celsius
        : (maximumCelsius - celsius) * (maximumCelsius - celsius) / (2 * (maximumCelsius - minimumCelsius));

    private static double Celsius(Temperature threshold) => Evidence.Require(Boundary.Celsius(threshold), "°C", nameof(threshold));
}
