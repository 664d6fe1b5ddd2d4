using System.Text.Json.Serialization;
using HortiCalc.Climate;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Season;

/// <summary>What one season needs and when: supplies, dates, risks and cautions, every line with the methods and sources it rests on.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
/// <example><code>
/// Garden garden = GardenFile.Read(File.ReadAllText("site.json"));
/// using StreamReader weather = File.OpenText("weather.csv");
/// SeasonPlan plan = SeasonPlan.For(garden, WeatherCsv.Read(weather));
/// Console.WriteLine(plan.ToText(MeasurementSystem.UsCustomary));
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record SeasonPlan : IFormattable, IDisplayable
{
    /// <summary>Puts a plan together from its lines, as stored; <see cref="For"/> makes one.</summary>
    /// <param name="garden">The garden that was planned.</param>
    /// <param name="weather">The daily record that the dates rest on.</param>
    /// <param name="supplies">What the season needs.</param>
    /// <param name="dates">What is due when.</param>
    /// <param name="risks">What can go wrong.</param>
    /// <param name="cautions">What to take care of.</param>
    public SeasonPlan(
        Garden garden,
        WeatherRecord weather,
        IReadOnlyList<SupplyLine> supplies,
        IReadOnlyList<DateLine> dates,
        IReadOnlyList<RiskLine> risks,
        IReadOnlyList<CautionLine> cautions)
    {
        Garden = Guard.NotNull(garden);
        Weather = Guard.NotNull(weather);
        Supplies = ValueList<SupplyLine>.Of(Guard.NotNull(supplies));
        Dates = ValueList<DateLine>.Of(Guard.NotNull(dates));
        Risks = ValueList<RiskLine>.Of(Guard.NotNull(risks));
        Cautions = ValueList<CautionLine>.Of(Guard.NotNull(cautions));
    }

    /// <summary>The garden that was planned.</summary>
    public Garden Garden { get; }

    /// <summary>The daily record that the dates rest on.</summary>
    public WeatherRecord Weather { get; }

    /// <summary>What the season needs, bed by bed, pots by pots, mix by mix.</summary>
    public IReadOnlyList<SupplyLine> Supplies { get; }

    /// <summary>What is due when, in the order of time; jobs without a date come last.</summary>
    public IReadOnlyList<DateLine> Dates { get; }

    /// <summary>What can go wrong, with its chance.</summary>
    public IReadOnlyList<RiskLine> Risks { get; }

    /// <summary>What to take care of, the gravest first.</summary>
    public IReadOnlyList<CautionLine> Cautions { get; }

    /// <summary>Every source that a line or a caution rests on, each once, in the order of the lines.</summary>
    [JsonIgnore]
    public IReadOnlyList<Source> Sources => ValueList<Source>.Of(
        Supplies.Concat<PlanLine>(Dates).Concat(Risks).SelectMany(line => line.Evidence).Select(method => method.Source)
            .Concat(Cautions.Select(line => line.Caution.Source))
            .Distinct());

    /// <summary>Plans a season.</summary>
    /// <param name="garden">The garden and what it is to carry.</param>
    /// <param name="days">The daily temperatures of the place, of as many years as there are: ten for chances, thirty for good ones.</param>
    /// <returns>The plan. Where the record or the soil report does not give something, the line says so.</returns>
    /// <exception cref="ArgumentNullException">The garden or the days are <see langword="null"/>.</exception>
    public static SeasonPlan For(Garden garden, DailyTemperatures days)
    {
        Guard.NotNull(garden);
        Guard.NotNull(days);
        SeasonClimate climate = new(days, SeasonCalendar.Of(garden));
        List<SupplyLine> supplies = [];
        List<DateLine> dates = [];
        List<RiskLine> risks = [];
        CautionList cautions = new();

        foreach (BedPlan bed in garden.Beds)
        {
            (IReadOnlyList<SupplyLine> ofBed, IReadOnlyList<Caution> care) = SupplyPlanner.ForBed(bed, garden);
            supplies.AddRange(ofBed);
            cautions.Add(bed.Name, care);
        }

        foreach (PotPlan pots in garden.Pots)
        {
            (IReadOnlyList<SupplyLine> ofPots, IReadOnlyList<Caution> care) = SupplyPlanner.ForPots(pots, garden);
            supplies.AddRange(ofPots);
            cautions.Add(pots.Name, care);
        }

        foreach (MixPlan mix in garden.Mixes)
        {
            MixSupply supply = SupplyPlanner.ForMix(mix);
            supplies.Add(supply);
            cautions.Add(mix.Name, supply.Batch.Cautions);
        }

        foreach (Planting planting in Planting.Of(garden))
        {
            (IReadOnlyList<DateLine> ofPlanting, IReadOnlyList<RiskLine> dangers, IReadOnlyList<Caution> care) = DatePlanner.Plan(planting, climate, garden);
            dates.AddRange(ofPlanting);
            risks.AddRange(dangers);
            cautions.Add("dates", care);
        }

        return new SeasonPlan(
            garden,
            WeatherRecord.Of(days, garden.Site.WeatherSource),
            supplies,
            [.. dates.OrderBy(line => line.Date ?? DateOnly.MaxValue)],
            risks,
            cautions.Lines);
    }

    /// <summary>The whole plan as aligned text, in sections: supplies, dates, risks, cautions, sources.</summary>
    /// <remarks>Lines are at most 110 characters long; an address that is longer stands on a line of its own, unbroken.</remarks>
    /// <param name="units">The units the reader is used to.</param>
    /// <param name="culture">The culture that decides the decimal separator, or <see langword="null"/> for the invariant one.</param>
    /// <returns>Many lines, separated by line feeds.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The units are not one of the defined ones.</exception>
    public string ToText(MeasurementSystem units = MeasurementSystem.Metric, IFormatProvider? culture = null) =>
        SeasonPlanText.Write(this, new TextStyle(Guard.Defined(units), culture ?? System.Globalization.CultureInfo.InvariantCulture));

    /// <summary>The plan in one line; <see cref="ToText"/> writes it whole.</summary>
    /// <returns>The place, the year, the weather record and how many lines there are of each kind.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The plan in one line; <see cref="ToText"/> writes it whole.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The place, the year, the weather record and how many lines there are of each kind.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(Title)
    {
        Rows =
        [
            .. Supplies.Concat<PlanLine>(Dates).Concat(Risks).Select(line =>
                new DisplayRow(line.Place, string.Join("; ", line.Cells(style).Where(cell => cell.Length > 0)))),
            .. Cautions.Select(line => new DisplayRow(line.Caution.LevelWord, line.Caution.Sentence)),
            .. Sources.Select(source => new DisplayRow("source", source.ToString())),
        ],
    };

    internal string Title => $"{Garden.Site.Name}, season of {Garden.SpringYear.ToString(System.Globalization.CultureInfo.InvariantCulture)}";

    private string ToString(TextStyle style) =>
        $"{Title}: {QuantityText.Of(Supplies.Count, style)} supplies, {QuantityText.Of(Dates.Count, style)} dates, "
        + $"{QuantityText.Of(Risks.Count, style)} risks, {QuantityText.Of(Cautions.Count, style)} cautions, "
        + $"{QuantityText.Of(Sources.Count, style)} sources; {Weather.ToString(style)}";
}
