using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>A published way to count the winter's cold from hourly temperatures.</summary>
/// <remarks>
/// <para>
/// A requirement belongs to the model it was measured with. The models are not proportional: over 5078 stations an hour count
/// divided by portions runs from 0 to 34, Utah units divided by portions from -155 to +20 (Luedeling and Brown, 2011). Where a
/// requirement names no model, prefer <see cref="Dynamic"/>: it is the one that holds in mild winters too.
/// </para>
/// <para>
/// Models by bands say what happens on a limit. Records to a tenth of a degree often stand on one: at one station counts with and
/// without the limits differ by 2 %.
/// </para>
/// </remarks>
public sealed record ChillModel
{
    private const double FreezingFahrenheit = 32;
    private const double ChillingFahrenheit = 45;

    // No hour is too cold.
    private const double Always = double.NegativeInfinity;

    private static readonly Source ChillingHours = new(
        "uc-davis-chilling-hours",
        "About chilling hours, units and portions",
        "University of California Davis, Fruit and Nut Research and Information Center",
        null,
        "https://fruitsandnuts.ucdavis.edu/about-chilling-hours-units-and-portions");

    private static readonly Source ChillAndPortions = new(
        "uc-chill-portions",
        "Chill Portions and the Dynamic Model",
        "University of California Agriculture and Natural Resources",
        null,
        "http://ccag-eh.ucanr.edu/Chill_Portions_and_the_Dynamic_Model/");

    private static readonly Source UtahInCelsius = new(
        "fresh-quarterly-chill-models",
        "The fundamental flaws of chill models, table 1",
        "Fresh Quarterly, Hortgro, South Africa",
        2021,
        "https://www.freshquarterly.co.za/the-fundamental-flaws-of-chill-models/");

    private static readonly MonthDay FirstOfNovember = new(11, 1);

    private readonly MonthDay? northernStart;

    private ChillModel(
        string key, string name, AccumulationUnit unit, Source source, string conditions, MonthDay? northernStart, HourlyCounter counter)
    {
        Evidence = new Method(key, name, source, new Domain(conditions));
        Unit = unit;
        this.northernStart = northernStart;
        Counter = counter;
    }

    /// <summary>Hours below 7.2 °C, frost included; 7.2 °C itself does not count.</summary>
    public static ChillModel HoursBelow { get; } = Hours(
        "hours-below-7.2", "hours below 7.2 °C", ChillingHours, Always, BandRule.At(7.2));

    /// <summary>Hours at 7.2 °C or below, frost included, as the counties of California word it.</summary>
    public static ChillModel HoursToAndAt { get; } = Hours(
        "hours-to-7.2", "hours at 7.2 °C or below", ChillAndPortions, Always, 7.2);

    /// <summary>Hours from 0 to 7.2 °C, both included.</summary>
    public static ChillModel HoursFromZero { get; } = Hours(
        "hours-0-to-7.2", "hours from 0 to 7.2 °C", ChillingHours, BandRule.At(0), 7.2);

    /// <summary>Hours above 0 and below 7.2 °C, neither included.</summary>
    public static ChillModel HoursWithin { get; } = Hours(
        "hours-within-0-and-7.2", "hours above 0 and below 7.2 °C", ChillingHours, 0, BandRule.At(7.2));

    /// <summary>Hours below 45 °F, frost included; 45 °F itself, 7.22 °C, does not count. For records in Fahrenheit.</summary>
    public static ChillModel HoursBelowFahrenheit { get; } = Hours(
        "hours-below-45F", "hours below 45 °F", ChillingHours, Always, BandRule.At(Boundary.CelsiusFromFahrenheit(ChillingFahrenheit)));

    /// <summary>Hours from 32 to 45 °F, both included. For records in Fahrenheit: 45 °F is 7.22 °C, beyond 7.2.</summary>
    public static ChillModel HoursFromFreezingFahrenheit { get; } = Hours(
        "hours-32F-to-45F",
        "hours from 32 to 45 °F",
        ChillingHours,
        BandRule.At(Boundary.CelsiusFromFahrenheit(FreezingFahrenheit)),
        Boundary.CelsiusFromFahrenheit(ChillingFahrenheit));

    /// <summary>Hours below 7 °C, the rounded limit that some tables of requirements are given for.</summary>
    public static ChillModel HoursBelowSeven { get; } = Hours(
        "hours-below-7", "hours below 7 °C", ChillEvidence.AustralianHours, Always, BandRule.At(7));

    /// <summary>
    /// Utah chill units by the bands printed in Fahrenheit: to 34 nothing, to 36 a half, to 48 one, to 54 a half, to 60 nothing, to
    /// 65 minus a half, above minus one. Richardson, Seeley and Walker, 1974. A limit belongs to the band below it, as the print of
    /// 34.01-36 and so on says.
    /// </summary>
    public static ChillModel UtahFahrenheit { get; } = Units(
        "utah-fahrenheit",
        "Utah chill units, Fahrenheit bands",
        ChillingHours,
        "a limit belongs to the colder band",
        Fahrenheit((34, 0.5), (36, 1), (48, 0.5), (54, 0), (60, -0.5), (65, -1)));

    /// <summary>
    /// Utah chill units by the bands printed in Celsius: from 1.5 a half, from 2.5 one, from 9.2 a half, from 12.5 nothing, from 16
    /// minus a half, above 18 minus one. These are not the Fahrenheit bands converted: 9 °C is one here and a half there.
    /// </summary>
    /// <remarks>Printed to tenths. Between 1.4 and 1.5, and so on at each limit, a finer reading counts with the warmer band.</remarks>
    public static ChillModel UtahCelsius { get; } = Units(
        "utah-celsius", "Utah chill units, Celsius bands", UtahInCelsius, "a limit belongs to the colder band", CelsiusBands());

    /// <summary>
    /// Utah chill units in Celsius of which a day that adds less than nothing adds nothing: warmth takes away cold of the same day
    /// alone. The daily positive units of South Africa (Infruitec).
    /// </summary>
    /// <remarks>What a day adds is added with its last known hour.</remarks>
    public static ChillModel PositiveUtahDaily { get; } = Units(
        "positive-utah-daily",
        "daily positive Utah chill units",
        new Source(
            "hortgro-daily-positive-units",
            "Monthly chill: daily positive Utah chill units",
            "Hortgro Science, South Africa",
            null,
            "https://climatechange.hortgro.science/climate-change-app/fruit-regions-western-cape-langkloof/klein-karoo-east/monthly-chill/"),
        "bands printed in Celsius; calendar days",
        CelsiusBands(),
        flooredByDay: true);

    /// <summary>
    /// Utah chill units in Celsius without the negative ones: each hour adds nothing or more. It goes by the same name as
    /// <see cref="PositiveUtahDaily"/> and counts more.
    /// </summary>
    public static ChillModel PositiveUtahHourly { get; } = Units(
        "positive-utah-hourly",
        "hourly positive Utah chill units",
        new Source(
            "positive-utah-hourly", "Positive chill units with each hour floored at nothing", "circulating variant", null, null, SourceKind.FromMemory),
        "bands printed in Celsius",
        new BandRule(0, (1.4, 0.5), (2.4, 1), (9.1, 0.5), (12.4, 0)));

    /// <summary>
    /// The Utah bands simplified for strawberry nurseries: at 32 °F or below nothing, to 45 one, to 60 a half, to 65 minus a half,
    /// above minus one.
    /// </summary>
    public static ChillModel StrawberryNursery { get; } = Units(
        "strawberry-nursery",
        "strawberry nursery chill units",
        new Source(
            "uc-strawberry-chill-units",
            "Chill units accumulated at Macdoel",
            "University of California Cooperative Extension",
            2015,
            "https://ucanr.edu/blogs/blogcore/postdetail.cfm?postnum=19053"),
        "whole degrees Fahrenheit; a reading between two bands counts with the warmer",
        Fahrenheit((32, 1), (45, 0.5), (60, -0.5), (65, -1)));

    /// <summary>
    /// Chill portions of the dynamic model: a product formed by cold and destroyed by warmth, fixed for good in portions once it is
    /// complete. Fishman, Erez and Couvillon, 1987; Erez and others, 1990.
    /// </summary>
    /// <remarks>
    /// The Kelvin scale of the model is Celsius and 273; with 273.15 a winter comes out differently by half a portion. Portions are
    /// not whole: each cycle fixes the share of the product that its temperature decides. Frost forms the product and fixes almost
    /// none of it, so that a mild hour after it can fix more than one. Most effective about 6 °C, nothing from 13 °C up.
    /// </remarks>
    public static ChillModel Dynamic { get; } = new(
        "dynamic",
        "dynamic model",
        AccumulationUnit.ChillPortions,
        new Source(
            "erez-1990",
            "The dynamic model for rest completion in peach buds",
            "Acta Horticulturae 276:165-174",
            1990,
            null,
            SourceKind.FromMemory),
        "hourly temperatures; Kelvin taken as Celsius and 273",
        new MonthDay(9, 1),
        new HourlyCounter<DynamicRule>(default, flooredByDay: false));

    /// <summary>Every model there is.</summary>
    public static IReadOnlyList<ChillModel> All { get; } = ValueList<ChillModel>.Of(
    [
        HoursBelow, HoursToAndAt, HoursFromZero, HoursWithin, HoursBelowFahrenheit, HoursFromFreezingFahrenheit, HoursBelowSeven, UtahFahrenheit,
        UtahCelsius, PositiveUtahDaily, PositiveUtahHourly, StrawberryNursery, Dynamic,
    ]);

    /// <summary>The model's key, name and source.</summary>
    public Method Evidence { get; }

    /// <summary>What the model counts in.</summary>
    public AccumulationUnit Unit { get; }

    internal HourlyCounter Counter { get; }

    /// <summary>Finds a model by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>, for instance <c>dynamic</c>.</param>
    /// <returns>The model.</returns>
    /// <exception cref="ArgumentException">There is no such model, or the key is empty.</exception>
    public static ChillModel FromKey(string key) => Keyed.Find(All, model => model.Evidence.Key, key);

    /// <summary>The day from which the model is commonly counted.</summary>
    /// <param name="hemisphere">The hemisphere. The days are published for California; the south takes those half a year later.</param>
    /// <returns>
    /// 1 November for hours and 1 September for the dynamic model; <see langword="null"/> for Utah units, which begin where their
    /// running sum is lowest: <see cref="HourlyAccumulation.LowestSumAt"/>.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">The hemisphere is none.</exception>
    public MonthDay? SeasonStart(Hemisphere hemisphere) => northernStart is MonthDay start
        ? Guard.Defined(hemisphere) == Hemisphere.Northern ? start : new MonthDay((start.Month + 5) % 12 + 1, start.Day)
        : null;

    /// <summary>The model's name.</summary>
    /// <returns>For instance <c>dynamic model</c>.</returns>
    public override string ToString() => Evidence.Name;

    private static ChillModel Hours(string key, string name, Source source, double aboveCelsius, double upToCelsius) => new(
        key,
        name,
        AccumulationUnit.ChillHours,
        source,
        "hourly temperatures",
        FirstOfNovember,
        new HourlyCounter<HoursRule>(new HoursRule(aboveCelsius, upToCelsius), flooredByDay: false));

    private static ChillModel Units(
        string key, string name, Source source, string conditions, BandRule bands, bool flooredByDay = false) => new(
            key,
            name,
            AccumulationUnit.ChillUnits,
            source,
            $"hourly temperatures; {conditions}",
            null,
            new HourlyCounter<BandRule>(bands, flooredByDay));

    private static BandRule Fahrenheit(params (double LimitFahrenheit, double Weight)[] bands) =>
        new(0, [.. bands.Select(band => (Boundary.CelsiusFromFahrenheit(band.LimitFahrenheit), band.Weight))]);

    private static BandRule CelsiusBands() => new(0, (1.4, 0.5), (2.4, 1), (9.1, 0.5), (12.4, 0), (15.9, -0.5), (18.0, -1));
}
