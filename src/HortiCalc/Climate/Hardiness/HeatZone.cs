using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The twelve heat zones of the American Horticultural Society: how many days a year are hotter than 30 °C (86 °F).</summary>
/// <remarks>Zone 1 has one such day or fewer, zone 12 more than 210; a number at a bound belongs to the cooler zone.</remarks>
public static class HeatZone
{
    private const double HotCelsius = 30;
    private const int FewestYears = 12;

    private static readonly Source Ahs = new(
        "ahs-heat-zones",
        "Plant heat zones",
        "American Horticultural Society, as given by the Pinetum",
        1997,
        "http://pinetum.org/heat.htm");

    private static readonly Method Zones = new(
        "heat-zone.ahs",
        "AHS heat zone",
        Ahs,
        new Domain("mean number of days a year above 30 °C; made from records of 1974 to 1995 of 12 years and more", new DomainLimit("hotDaysAYear", 0, 366, "days")));

    private static readonly double[] UpperBoundsDays = [1, 7, 14, 30, 45, 60, 90, 120, 150, 180, 210];

    private static readonly Caution FewYears = new(
        "heat-zone.few-years", CautionLevel.Note, "Rests on fewer whole years than the twelve that a station of the map needed.", Ahs);

    private static readonly Caution WateredPlants = new(
        "heat-zone.watered-plants",
        CautionLevel.Note,
        "Heat zones take it that plants never lack water: a dry plant suffers in a cooler zone.",
        Source.CommonPractice("heat-zone-water", "heat ratings of plants are for watered plants"));

    /// <summary>The zone of a mean number of hot days.</summary>
    /// <param name="hotDaysAYear">The mean number of days a year whose maximum is above 30 °C, from 0 to 366.</param>
    /// <returns>The zone, from 1 to 12.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is no number of days in a year.</exception>
    public static Estimate<int> Of(double hotDaysAYear) => Of(hotDaysAYear, [WateredPlants]);

    /// <summary>The zone of a place, from its record.</summary>
    /// <param name="days">Daily temperatures, with at least one whole calendar year.</param>
    /// <returns>The zone, from 1 to 12; with a note where fewer than twelve years are whole.</returns>
    /// <exception cref="ArgumentNullException">The days are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">No calendar year has 95 % and more of its maxima.</exception>
    /// <example><code>
    /// double[] maxima = [.. Enumerable.Range(0, 12 * 365 + 3).Select(day => 20 - 13 * Math.Cos((day - 20) * Math.Tau / 365.25))];
    /// DailyTemperatures days = DailyTemperatures.Create(
    ///     new DateOnly(2001, 1, 1), [.. maxima.Select(maximum => maximum - 10)], maxima, TemperatureUnit.DegreeCelsius);
    /// Estimate&lt;int&gt; zone = HeatZone.FromDaily(days); // 7
    /// </code></example>
    public static Estimate<int> FromDaily(DailyTemperatures days)
    {
        Guard.NotNull(days);
        List<int> hotDays = [];
        for (int year = days.Start.Year; year <= days.End.Year; year++)
        {
            if (CountOf(days, year) is int count)
                hotDays.Add(count);
        }

        if (hotDays.Count == 0)
            throw new ArgumentException($"days, {days}, held no calendar year with 95 % of its maxima; allowed: one whole year or more.", nameof(days));
        return Of(hotDays.Average(), hotDays.Count < FewestYears ? [WateredPlants, FewYears] : [WateredPlants]);
    }

    private static Estimate<int> Of(double hotDaysAYear, Caution[] cautions)
    {
        Zones.Require(hotDaysAYear, "days", nameof(hotDaysAYear));
        return new Estimate<int>(1 + UpperBoundsDays.Count(bound => hotDaysAYear > bound), Zones, cautions: cautions);
    }

    /// <summary>The hot days of a year; nothing where it lacks more than 5 % of its maxima.</summary>
    private static int? CountOf(DailyTemperatures days, int year)
    {
        DateSpan span = new(new DateOnly(year, 1, 1), new DateOnly(year, 12, 31));
        int missing = 0;
        for (int day = 0; day < span.Count; day++)
        {
            DateOnly date = span.From.AddDays(day);
            missing += date < days.Start || date > days.End || days.MaximumOn(date) is null ? 1 : 0;
        }

        return missing <= 0.05 * span.Count ? HeatDays.Above(days, span, Temperature.FromDegreesCelsius(HotCelsius)).Value : null;
    }
}
