using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Corn heat units, by which Canada rates hybrids of maize and places: the night by its minimum, the day by its maximum.</summary>
/// <remarks>
/// Not degree-days: the day part rises to its highest at 29.8 °C (10 + 3.33/0.168) and falls beyond, as maize develops more slowly in great
/// heat. The unit has no temperature in it, so it is a plain number.
/// </remarks>
public static class CornHeatUnits
{
    private const string Unit = "corn heat units";

    private const double EndingFrostCelsius = -2;

    /// <summary>The units of one day.</summary>
    /// <param name="minimum">The day's lowest temperature, from -90 to 60 °C.</param>
    /// <param name="maximum">The day's highest temperature, not below the lowest, up to 60 °C.</param>
    /// <param name="method">Whether a part below zero counts.</param>
    /// <returns>The units; below zero on a cold day where the method counts parts below zero.</returns>
    /// <exception cref="ArgumentNullException">The method is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is out of range, or the maximum is below the minimum.</exception>
    /// <example><code>
    /// double day = CornHeatUnits.OfDay(
    ///     Temperature.FromDegreesCelsius(15), Temperature.FromDegreesCelsius(30), CornHeatUnitMethod.Ontario); // 26
    /// </code></example>
    public static double OfDay(Temperature minimum, Temperature maximum, CornHeatUnitMethod method)
    {
        Guard.NotNull(method);
        (double minimumCelsius, double maximumCelsius) = DayTemperatures.Celsius(minimum, maximum);
        return method.Units(minimumCelsius, maximumCelsius);
    }

    /// <summary>The units of a run of days.</summary>
    /// <param name="days">The daily temperatures.</param>
    /// <param name="span">The days to count; <see cref="CornHeatUnitMethod.Season"/> has the published season.</param>
    /// <param name="method">Whether a part below zero counts.</param>
    /// <param name="missingDays">What is done about missing days; a day of the span outside the record is missing too.</param>
    /// <param name="maximumMissing">The largest share of missing days that is accepted, from 0 to 100 %; <see langword="null"/> for 5 %.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="ArgumentNullException">The days or the method are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">More days are missing than accepted, or none is known.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The share is no share.</exception>
    /// <example><code>
    /// DailyTemperatures days = DailyTemperatures.Create(
    ///     new DateOnly(2024, 7, 1), [15, 17, 14], [30, 32, 27], TemperatureUnit.DegreeCelsius);
    /// ClimateSum&lt;double&gt; heat = CornHeatUnits.Sum(days, new DateSpan(days.Start, days.End), CornHeatUnitMethod.Canada);
    /// </code></example>
    public static ClimateSum<double> Sum(
        DailyTemperatures days,
        DateSpan span,
        CornHeatUnitMethod method,
        MissingDays missingDays = MissingDays.LeftOut,
        Ratio? maximumMissing = null)
    {
        Guard.NotNull(method);
        CountedDays counted = CountedDays.Of(days, span, missingDays, maximumMissing);
        return counted.Result(counted.Sum((minimum, maximum, _) => method.Units(minimum, maximum)), Unit, method.Evidence);
    }

    /// <summary>The sum up to the day on which it reaches a requirement.</summary>
    /// <param name="days">The daily temperatures.</param>
    /// <param name="from">The first day to count: a day of the record.</param>
    /// <param name="requirement">The units to reach, 0 or more.</param>
    /// <param name="method">Whether a part below zero counts.</param>
    /// <returns>
    /// The sum, whose <see cref="ClimateSum{T}.To"/> is the first day at whose end it is reached; <see langword="null"/> where the record ends
    /// before. Missing days are left out, so that the day may be too late.
    /// </returns>
    /// <exception cref="ArgumentNullException">The days or the method are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The first day is not in the record, or the requirement is negative.</exception>
    /// <exception cref="ArgumentException">More than 5 % of the days to the day it is reached are missing, or of the record where it is not.</exception>
    public static ClimateSum<double>? UntilReached(DailyTemperatures days, DateOnly from, double requirement, CornHeatUnitMethod method)
    {
        Guard.NotNull(method);
        return Requirement.Until(
            days, from, requirement, (minimum, maximum, _) => method.Units(minimum, maximum), to => Sum(days, new DateSpan(from, to), method));
    }

    /// <summary>Ontario's season of a year: from 1 May to the first day of autumn at or below −2 °C, that day included.</summary>
    /// <param name="days">The daily temperatures, from 1 August of the year on.</param>
    /// <param name="year">The year.</param>
    /// <returns>The season; to 31 December where no day is as cold.</returns>
    /// <remarks>
    /// The source says autumn and prints no date from which that is; here it is 1 August, after which −2 °C ends a crop. A missing day is
    /// passed over.
    /// </remarks>
    /// <exception cref="ArgumentNullException">The days are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The year is not from 1 to 9999, or its August is not in the record.</exception>
    public static DateSpan OntarioSeason(DailyTemperatures days, int year)
    {
        Guard.NotNull(days);
        DateSpan longest = CornHeatUnitMethod.Ontario.Season.StartingIn(year);
        DateOnly autumn = new(year, 8, 1);
        if (days.Start > autumn || days.End < autumn)
        {
            throw new ArgumentOutOfRangeException(
                nameof(year), $"year was {Guard.Number(year)}; allowed: a year whose 1 August is in the record, {AirTemperature.Text(days.Start)} to {AirTemperature.Text(days.End)}.");
        }

        for (DateOnly date = autumn; date <= longest.To && date <= days.End; date = date.AddDays(1))
        {
            // A comparison with a missing day is false.
            if (days.MinimaCelsius[date.DayNumber - days.Start.DayNumber] <= EndingFrostCelsius)
                return new DateSpan(longest.From, date);
        }

        return longest;
    }
}
