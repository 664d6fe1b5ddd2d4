using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>A published scheme that puts winters, or the plants that stand them, into classes by temperature.</summary>
/// <remarks>
/// <para>
/// Each scheme is bounded in the unit it was made in: the zones of the US Department of Agriculture in whole °F (their °C are rounded, so that
/// -17.8 °C is still 0.04 °F below the bound of zone 7a), the ratings of the Royal Horticultural Society in whole °C.
/// </para>
/// <para>
/// The tables print each bound in two rows and do not say whose it is. Here a temperature at a bound belongs to the warmer class; the answer
/// carries a note when that decided.
/// </para>
/// </remarks>
/// <example><code>
/// Estimate&lt;HardinessClass&gt; zone = HardinessScheme.UsdaZones.ClassOf(Temperature.FromDegreesFahrenheit(7)); // 7b
/// </code></example>
public sealed record HardinessScheme
{
    // A converted temperature carries a hair of binary noise, which must not decide a bound.
    private const int Decimals = 9;

    private static readonly Source Usda = new(
        "usda-hardiness-zones",
        "USDA plant hardiness zones and half zones",
        "US Department of Agriculture scheme of 2012 and 2023, as tabulated by an open encyclopedia",
        2012,
        "https://en.permawiki.org/wiki/Hardiness_zone");

    private static readonly Source UsdaOld = new(
        "usda-hardiness-zones-1990",
        "Plant Hardiness Zone Map: zone details",
        "US Department of Agriculture, 1990 edition, in a nursery's reprint",
        1990,
        "http://www.regannursery.com/getting_started/usda/zone_details.html");

    private static readonly Source Rhs = new(
        "rhs-hardiness-ratings",
        "Hardiness ratings",
        "Royal Horticultural Society",
        2013,
        "https://docslib.org/doc/1620185/rhs-hardiness-ratings-h1-h4-which-are-not-the-direct-equivalents-of-the-new-ratings");

    private static readonly Caution HalfAreColder = new(
        "hardiness.half-are-colder",
        CautionLevel.Care,
        "The zone rests on the mean of yearly lowest temperatures: about half of all winters are colder than that.",
        Usda);

    private static readonly Caution MoreThanCold = new(
        "hardiness.more-than-cold",
        CautionLevel.Care,
        "Snow cover, wind, wet soil, early and late cold, provenance and pots decide too and are outside the scheme; roots in pots are less hardy than in the ground.",
        Rhs);

    private static readonly Caution AtABound = new(
        "hardiness.at-a-bound",
        CautionLevel.Note,
        "This is the bound between two classes; the table does not say whose it is, and the warmer one is given.",
        Usda);

    private readonly double[] lowerBounds;
    private readonly string[] names;
    private readonly bool isFahrenheit;
    private readonly Caution[] cautions;

    /// <summary>Lower bounds from the coldest class up; negative infinity for a coldest class without one.</summary>
    private HardinessScheme(
        string key, string name, Source source, string holdsFor, bool isFahrenheit, string[] names, double[] lowerBounds, double upperEnd, Caution[] cautions)
    {
        double lowest = lowerBounds[0];
        DomainLimit[] limits = double.IsFinite(lowest) || double.IsFinite(upperEnd)
            ? [new DomainLimit(
                "temperature",
                double.IsFinite(lowest) ? InCelsius(lowest, isFahrenheit) : AirTemperature.LowestCelsius,
                double.IsFinite(upperEnd) ? InCelsius(upperEnd, isFahrenheit) : AirTemperature.HighestCelsius,
                "°C")]
            : [new DomainLimit("temperature", AirTemperature.LowestCelsius, AirTemperature.HighestCelsius, "°C")];
        Evidence = new Method(key, name, source, new Domain(holdsFor, limits));
        this.names = names;
        this.lowerBounds = lowerBounds;
        this.isFahrenheit = isFahrenheit;
        this.cautions = cautions;
        Classes = ValueList<HardinessClass>.Of(names.Select((className, index) => new HardinessClass(
            className, Bound(lowerBounds[index]), Bound(index + 1 < names.Length ? lowerBounds[index + 1] : upperEnd))));
    }

    /// <summary>
    /// The half zones of the US Department of Agriculture, 1a to 13b in steps of 5 °F from -60 to 70 °F, by the mean annual extreme minimum of 30
    /// years. The default: it is the one used on plant labels in most countries.
    /// </summary>
    public static HardinessScheme UsdaZones { get; } = new(
        "hardiness.usda",
        "USDA hardiness half zone",
        Usda,
        "mean annual extreme minimum temperature over 30 years",
        isFahrenheit: true,
        [.. Enumerable.Range(0, 26).Select(step => $"{step / 2 + 1}{(step % 2 == 0 ? 'a' : 'b')}")],
        [.. Enumerable.Range(0, 26).Select(step => -60 + 5.0 * step)],
        upperEnd: 70,
        [HalfAreColder, MoreThanCold]);

    /// <summary>
    /// The half zones of the map of 1990, which older plant lists mean, as far as its table was seen: zone 1 below -50 °F, undivided, to zone 7a.
    /// Its °C are printed with gaps of 0.1 between classes; the °F decide.
    /// </summary>
    public static HardinessScheme UsdaZones1990 { get; } = new(
        "hardiness.usda-1990",
        "USDA hardiness half zone of 1990",
        UsdaOld,
        "mean annual extreme minimum temperature, map of 1974 to 1986; classes up to 7a",
        isFahrenheit: true,
        ["1", "2a", "2b", "3a", "3b", "4a", "4b", "5a", "5b", "6a", "6b", "7a"],
        [double.NegativeInfinity, -50, -45, -40, -35, -30, -25, -20, -15, -10, -5, 0],
        upperEnd: 5,
        [HalfAreColder, MoreThanCold]);

    /// <summary>
    /// The ratings of the Royal Horticultural Society, H7 to H1a: the lowest temperatures that a plant so rated stands. A place whose winters go
    /// down to a temperature needs the rating of that temperature or a hardier one.
    /// </summary>
    public static HardinessScheme RhsRatings { get; } = new(
        "hardiness.rhs",
        "RHS hardiness rating",
        Rhs,
        "lowest temperature of the winter",
        isFahrenheit: false,
        ["H7", "H6", "H5", "H4", "H3", "H2", "H1c", "H1b", "H1a"],
        [double.NegativeInfinity, -20, -15, -10, -5, 1, 5, 10, 15],
        upperEnd: double.PositiveInfinity,
        [MoreThanCold]);

    /// <summary>Every scheme there is.</summary>
    public static IReadOnlyList<HardinessScheme> All { get; } = ValueList<HardinessScheme>.Of([UsdaZones, UsdaZones1990, RhsRatings]);

    /// <summary>The scheme's key, name, source and domain.</summary>
    public Method Evidence { get; }

    /// <summary>Its classes, coldest first.</summary>
    public IReadOnlyList<HardinessClass> Classes { get; }

    /// <summary>Finds a scheme by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>.</param>
    /// <returns>The scheme.</returns>
    /// <exception cref="ArgumentException">There is no such scheme, or the key is empty.</exception>
    public static HardinessScheme FromKey(string key) => Keyed.Find(All, scheme => scheme.Evidence.Key, key);

    /// <summary>The class of a temperature.</summary>
    /// <param name="temperature">
    /// What the scheme classes: <see cref="WinterMinima.MeanLowest"/> for the zones, the lowest temperature of a winter for the ratings.
    /// </param>
    /// <returns>The class, with what it leaves out.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is colder or warmer than the classes of the scheme.</exception>
    public Estimate<HardinessClass> ClassOf(Temperature temperature)
    {
        double celsius = Boundary.Celsius(temperature);
        double value = Math.Round(isFahrenheit ? InFahrenheit(celsius) : celsius, Decimals, MidpointRounding.ToEven);
        DomainLimit limit = Evidence.Domain.Limits[0];
        double top = InScale(limit.High);
        if (!(value >= InScale(limit.Low) && value <= top))
            throw Guard.Refused(nameof(temperature), celsius, "°C", $"from {Guard.Number(limit.Low)} to {Guard.Number(limit.High)} °C, the classes of the {Evidence.Name}");
        int index = lowerBounds.Length - 1;
        while (value < lowerBounds[index])
            index--;
        bool isAtABound = index > 0 && value == lowerBounds[index];
        return new Estimate<HardinessClass>(Classes[index], Evidence, cautions: isAtABound ? [.. cautions, AtABound] : cautions);
    }

    /// <summary>Whether another scheme is the same one.</summary>
    /// <param name="other">Another scheme.</param>
    /// <returns><see langword="true"/> where the keys are the same.</returns>
    public bool Equals(HardinessScheme? other) => other is not null && Evidence.Key == other.Evidence.Key;

    /// <inheritdoc/>
    public override int GetHashCode() => Evidence.Key.GetHashCode(StringComparison.Ordinal);

    /// <summary>The scheme's name.</summary>
    /// <returns>For instance <c>USDA hardiness half zone</c>.</returns>
    public override string ToString() => Evidence.Name;

    private static double InCelsius(double bound, bool isFahrenheit) =>
        isFahrenheit ? (bound - Boundary.FahrenheitAtZeroCelsius) / Boundary.FahrenheitPerCelsius : bound;

    private static double InFahrenheit(double celsius) => celsius * Boundary.FahrenheitPerCelsius + Boundary.FahrenheitAtZeroCelsius;

    private double InScale(double celsius) => Math.Round(isFahrenheit ? InFahrenheit(celsius) : celsius, Decimals, MidpointRounding.ToEven);

    private Temperature? Bound(double value) => !double.IsFinite(value)
        ? null
        : isFahrenheit ? Temperature.FromDegreesFahrenheit(value) : Temperature.FromDegreesCelsius(value);
}
