using System.Globalization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The lowest temperature of each winter of a record, and their mean: the annual extreme minimum that hardiness zones rest on.</summary>
/// <remarks>
/// <para>Immutable; equal when all members are equal.</para>
/// <para>
/// A winter here is a whole cold season, from midsummer to midsummer, so that one cold spell over New Year is not taken for two years' extremes.
/// "Average annual minimum" on older maps means this mean of yearly lowest temperatures, not the mean of daily minima.
/// </para>
/// </remarks>
/// <example><code>
/// // Thirty invented years; a real record is read from a file.
/// double[] minima = [.. Enumerable.Range(0, 30 * 365).Select(day => 3 - 12 * Math.Cos((day - 20) * Math.Tau / 365) + day * 7919 % 13 - 6)];
/// DailyTemperatures days = DailyTemperatures.FromMinima(new DateOnly(1991, 1, 1), minima, TemperatureUnit.DegreeCelsius);
/// WinterMinima winters = WinterMinima.FromDaily(days, Hemisphere.Northern);
/// Estimate&lt;HardinessClass&gt; zone = HardinessScheme.UsdaZones.ClassOf(winters.MeanLowest.Value);
/// Ratio risk = winters.ShareAtOrBelow(Temperature.FromDegreesCelsius(-15));
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record WinterMinima : IFormattable, IDisplayable
{
    /// <summary>How many days may be missing from the colder half of a winter before it is left out.</summary>
    /// <remarks>Common practice: the number that drops an end of a season of freezes, <see cref="FreezeClimateOptions.MissingDaysThatDrop"/>.</remarks>
    public const int MissingDaysThatDrop = 10;

    private static readonly Source Daly = new(
        "daly-2012-hardiness",
        "Development of a New USDA Plant Hardiness Zone Map for the United States",
        "Journal of Applied Meteorology and Climatology 51:242-264",
        2012,
        "https://studylib.net/doc/13409673/development-of-a-new-usda-plant-hardiness-zone-map-for......");

    private static readonly Method MeanOfLowest = new(
        "hardiness.mean-lowest",
        "mean annual extreme minimum",
        Daly,
        new Domain("a place whose winters are alike over the record; 30 winters for a zone, 10 at least"));

    /// <summary>Puts winters together, as stored; <see cref="FromDaily"/> takes them from a record.</summary>
    /// <param name="winters">The winters, in order; at least ten.</param>
    /// <param name="leftOut">The years in which winters began that were left out for missing days.</param>
    /// <exception cref="ArgumentNullException">A list is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">There are fewer than ten winters, or they are not in order.</exception>
    public WinterMinima(IReadOnlyList<WinterMinimum> winters, IReadOnlyList<int> leftOut)
    {
        Winters = ValueList<WinterMinimum>.Of(Guard.NotNull(winters));
        LeftOut = ValueList<int>.Of(Guard.NotNull(leftOut));
        if (Winters.Count < FreezeEvidence.FewestSeasons)
        {
            throw new ArgumentException(
                $"winters were {Guard.Number(Winters.Count)}; allowed: {FreezeEvidence.FewestSeasons} or more ({FreezeEvidence.PeriodAverages}).", nameof(winters));
        }

        for (int i = 1; i < Winters.Count; i++)
        {
            if (Winters[i].Date <= Winters[i - 1].Date)
            {
                throw new ArgumentException(
                    $"winters held {AirTemperature.Text(Winters[i].Date)} after {AirTemperature.Text(Winters[i - 1].Date)}; allowed: in order of date.",
                    nameof(winters));
            }
        }
    }

    /// <summary>The winters, in order.</summary>
    public IReadOnlyList<WinterMinimum> Winters { get; }

    /// <summary>The years in which winters began that were left out for missing days; whole winters of the record's ends are among them.</summary>
    public IReadOnlyList<int> LeftOut { get; }

    /// <summary>The mean of the winters' lowest temperatures, with the lowest and the highest of them as its range.</summary>
    public Estimate<Temperature> MeanLowest => new(
        Temperature.FromDegreesCelsius(Winters.Average(winter => Boundary.Celsius(winter.Lowest))),
        MeanOfLowest,
        new EstimateRange<Temperature>(
            Temperature.FromDegreesCelsius(Winters.Min(winter => Boundary.Celsius(winter.Lowest))),
            Temperature.FromDegreesCelsius(Winters.Max(winter => Boundary.Celsius(winter.Lowest))),
            "coldest and mildest winter of the record"),
        cautions: [RestsOn()]);

    /// <summary>The share of winters that went down to a temperature.</summary>
    /// <param name="temperature">A temperature.</param>
    /// <returns>The number of winters whose lowest is at or below it, over all winters of the record: what was, not a forecast.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not finite.</exception>
    public Ratio ShareAtOrBelow(Temperature temperature)
    {
        double celsius = Guard.Finite(Boundary.Celsius(temperature), "°C", nameof(temperature));
        int count = Winters.Count(winter => Boundary.Celsius(winter.Lowest) <= celsius + FreezeRecord.HalfATenthCelsius);
        return Ratio.FromPercent(100.0 * count / Winters.Count);
    }

    /// <summary>Takes the lowest temperature of each winter from a record.</summary>
    /// <param name="days">Daily temperatures; minima alone are enough.</param>
    /// <param name="hemisphere">Which half of the earth the place lies on: winters run from August to July, in the south from February to January.</param>
    /// <returns>
    /// The winters. One is left out where more than <see cref="MissingDaysThatDrop"/> days are missing from October to March (April to September
    /// in the south); days outside the record are missing.
    /// </returns>
    /// <exception cref="ArgumentNullException">The days are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">Fewer than ten winters are left.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The hemisphere is not one of the two.</exception>
    public static WinterMinima FromDaily(DailyTemperatures days, Hemisphere hemisphere)
    {
        Guard.NotNull(days);
        int firstMonth = Guard.Defined(hemisphere) == Hemisphere.Northern ? 8 : 2;
        List<WinterMinimum> winters = [];
        List<int> leftOut = [];
        for (int year = days.Start.Year - 1; year <= days.End.Year && year < DateOnly.MaxValue.Year; year++)
        {
            if (year < DateOnly.MinValue.Year)
                continue;
            DateOnly start = new(year, firstMonth, 1);
            DateOnly end = start.AddYears(1).AddDays(-1);
            if (end < days.Start || start > days.End)
                continue;
            if (Winter(days, start, end) is WinterMinimum winter)
                winters.Add(winter);
            else
                leftOut.Add(year);
        }

        return winters.Count >= FreezeEvidence.FewestSeasons
            ? new WinterMinima(winters, leftOut)
            : throw new ArgumentException(
                $"days, {days}, held {Guard.Number(winters.Count)} winters that are whole enough; allowed: {FreezeEvidence.FewestSeasons} or more ({FreezeEvidence.PeriodAverages}).",
                nameof(days));
    }

    /// <summary>The winters in metric units and invariant culture.</summary>
    /// <returns>One line: how many winters, their mean lowest temperature, the coldest.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The winters as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: how many winters, their mean lowest temperature, the coldest.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new("Lowest temperatures of winters")
    {
        Rows =
        [
            new DisplayRow("winters", QuantityText.Of(Winters.Count, style)),
            new DisplayRow("left out", LeftOut.Count == 0 ? "none" : $"those beginning in {string.Join(", ", LeftOut.Select(year => year.ToString(CultureInfo.InvariantCulture)))}"),
            new DisplayRow("mean", QuantityText.Of(MeanLowest.Value, style)),
            new DisplayRow("coldest", Coldest().ToString(style.Format, style.Culture)),
            new DisplayRow("USDA zone", ZoneText()),
            new DisplayRow("source", Daly.ToString()),
        ],
    };

    private string ToString(TextStyle style) =>
        $"{QuantityText.Of(Winters.Count, style)} winters: mean lowest {QuantityText.Of(MeanLowest.Value, style)}, "
        + $"coldest {Coldest().ToString(style.Format, style.Culture)}; {QuantityText.Of(LeftOut.Count, style)} left out";

    private WinterMinimum Coldest() => Winters.MinBy(winter => Boundary.Celsius(winter.Lowest))!;

    private string ZoneText()
    {
        Temperature mean = MeanLowest.Value;
        DomainLimit limit = HardinessScheme.UsdaZones.Evidence.Domain.Limits[0];
        double celsius = Boundary.Celsius(mean);
        return celsius >= limit.Low && celsius <= limit.High ? HardinessScheme.UsdaZones.ClassOf(mean).Value.Name : "beyond the zones";
    }

    private Caution RestsOn() => new(
        "hardiness.winters",
        CautionLevel.Note,
        string.Create(
            CultureInfo.InvariantCulture,
            $"Rests on {Winters.Count} winters{(Winters.Count < FreezeEvidence.SeasonsOfANormal ? ", fewer than the 30 of the zone maps" : "")}; {LeftOut.Count} left out for missing days."),
        Daly);

    /// <summary>The lowest temperature of a winter, or nothing where its colder half has too many gaps.</summary>
    private static WinterMinimum? Winter(DailyTemperatures days, DateOnly start, DateOnly end)
    {
        ReadOnlySpan<double> minimaCelsius = days.MinimaCelsius;
        DateOnly coldFrom = start.AddMonths(2);
        DateOnly coldTo = start.AddMonths(8);
        int missing = 0;
        double lowestCelsius = double.PositiveInfinity;
        DateOnly date = start;
        for (DateOnly day = start; day <= end; day = day.AddDays(1))
        {
            int index = day.DayNumber - days.Start.DayNumber;
            double celsius = index >= 0 && index < minimaCelsius.Length ? minimaCelsius[index] : double.NaN;
            if (double.IsNaN(celsius))
            {
                missing += day >= coldFrom && day < coldTo ? 1 : 0;
            }
            else if (celsius < lowestCelsius)
            {
                lowestCelsius = celsius;
                date = day;
            }
        }

        return missing <= MissingDaysThatDrop ? new WinterMinimum(date, Temperature.FromDegreesCelsius(lowestCelsius)) : null;
    }
}
