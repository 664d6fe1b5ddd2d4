using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Photothermal units: the degree-days of each day times its length, for plants whose development waits for long days as well as heat.</summary>
public static class PhotothermalUnits
{
    private static readonly Method GddTimesDayLength = new(
        "photothermal.sum",
        "degree-days times day length, day by day",
        new Source(
            "photothermal-time",
            "Photothermal time",
            "Wikipedia",
            null,
            "https://en.wikipedia.org/wiki/Photothermal_time"),
        new Domain("plants that develop faster in longer days"));

    private static readonly Caution SameDayLength = new(
        "photothermal.same-day-length",
        CautionLevel.Note,
        "Compare only with requirements counted with the same degree-days and the same day length: with or without twilight differs by an hour and more.",
        Source.CommonPractice("photothermal-day-length", "day length is counted from sunrise to sunset, or with civil twilight"));

    /// <summary>Sums degree-days times day length.</summary>
    /// <param name="days">The daily temperatures.</param>
    /// <param name="span">The days to count.</param>
    /// <param name="thresholds">The temperatures between which degree-days are counted.</param>
    /// <param name="method">The way in which degree-days are counted.</param>
    /// <param name="cutoff">What happens above the upper threshold.</param>
    /// <param name="dayLength">
    /// The length of a day, from 0 to 24 hours; <see cref="Daylight"/> has it by latitude. Given the hours of bright sunshine, the sum is called
    /// heliothermal.
    /// </param>
    /// <param name="missingDays">What is done about missing days; a day of the span outside the record is missing too.</param>
    /// <param name="maximumMissing">The largest share of missing days that is accepted, from 0 to 100 %; <see langword="null"/> for 5 %.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="ArgumentNullException">The days, thresholds, method or day length are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">
    /// More days are missing than accepted, none is known, the method is not defined for the cutoff, or the cutoff lacks its upper threshold.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A day is longer than 24 hours or shorter than none, or the share is no share.</exception>
    /// <example><code>
    /// DailyTemperatures days = DailyTemperatures.Create(
    ///     new DateOnly(2024, 5, 1), [8, 9, 11], [18, 19, 23], TemperatureUnit.DegreeCelsius);
    /// ClimateSum&lt;PhotothermalTime&gt; sum = PhotothermalUnits.Sum(
    ///     days, new DateSpan(days.Start, days.End), new DegreeDayThresholds(Temperature.FromDegreesCelsius(5)),
    ///     DegreeDayMethod.SimpleAverage, UpperCutoff.None,
    ///     dayLength: date =&gt; Daylight.Length(Angle.FromDegrees(52), date, DaylightMethod.Almanac).Value);
    /// </code></example>
    public static ClimateSum<PhotothermalTime> Sum(
        DailyTemperatures days,
        DateSpan span,
        DegreeDayThresholds thresholds,
        DegreeDayMethod method,
        UpperCutoff cutoff,
        Func<DateOnly, Duration> dayLength,
        MissingDays missingDays = MissingDays.LeftOut,
        Ratio? maximumMissing = null)
    {
        DegreeDayMethod.RequireExtremes(method, thresholds, cutoff);
        Guard.NotNull(dayLength);
        CountedDays counted = CountedDays.Of(days, span, missingDays, maximumMissing);
        double[] celsiusDays = new double[span.Count];
        method.Count(counted.MinimaCelsius, counted.MaximaCelsius, thresholds, cutoff, celsiusDays);
        double celsiusDayHours = counted.Sum((_, _, date) => celsiusDays[date.DayNumber - span.From.DayNumber] * Hours(dayLength, date));
        return counted.Result(PhotothermalTime.FromCelsiusDayHours(celsiusDayHours), "", GddTimesDayLength, SameDayLength);
    }

    private static double Hours(Func<DateOnly, Duration> dayLength, DateOnly date) =>
        Guard.Within(Boundary.Days(dayLength(date)) * 24, 0, 24, "h", $"{nameof(dayLength)} on {AirTemperature.Text(date)}");
}
