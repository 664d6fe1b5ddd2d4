using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>Factors between an element and the oxide that labels count it as: by molar mass, and as bodies print them rounded.</summary>
/// <remarks>
/// Immutable; a closed set: the values are the static members. <see cref="MolarMass"/> is the default: it is exact, and back and forth gives the same.
/// The printed ones are for following a form to the digit.
/// </remarks>
/// <example><code>
/// AreaDensity phosphate = AreaDensity.FromKilogramsPerHectare(100);
/// AreaDensity phosphorus = OxideFactors.MolarMass.ToElement(Oxide.Phosphate, phosphate);   // 43.6 kg/ha
/// Console.WriteLine(OxideFactors.Ifa.ElementPerOxide(Oxide.Phosphate));                     // 0.4364
/// Console.WriteLine(phosphorus);
/// </code></example>
public sealed record OxideFactors
{
    private const double Oxygen = 15.9994;

    private readonly ValueList<(Oxide Oxide, double? Element, double? Oxidised)> factors;

    private OxideFactors(string key, string name, Source source, params (Oxide Oxide, double? Element, double? Oxidised)[] factors)
    {
        Method = new Method(key, name, source, new Domain(""));
        this.factors = ValueList<(Oxide Oxide, double? Element, double? Oxidised)>.Of(factors);
    }

    /// <summary>By the molar masses of the standard atomic weights.</summary>
    public static OxideFactors MolarMass { get; } = new(
        "oxides-molar-mass",
        "oxides by molar mass",
        LimeSources.AtomicWeights,
        Exact(Oxide.Phosphate, 30.973762, 2, 5),
        Exact(Oxide.Potash, 39.0983, 2, 1),
        Exact(Oxide.MagnesiumOxide, 24.3050, 1, 1),
        Exact(Oxide.CalciumOxide, 40.078, 1, 1),
        Exact(Oxide.SulfurTrioxide, 32.065, 1, 3),
        Exact(Oxide.SodiumOxide, 22.98976928, 2, 1),
        (Oxide.SodiumChloride, 22.98976928 / (22.98976928 + 35.453), (22.98976928 + 35.453) / 22.98976928));

    /// <summary>As the International Fertilizer Industry Association prints them: phosphate and potash.</summary>
    public static OxideFactors Ifa { get; } = new(
        "oxides-ifa", "oxides as IFA prints them", NutrientSources.Sgs, (Oxide.Phosphate, 0.4364, 2.2914), (Oxide.Potash, 0.8302, 1.2046));

    /// <summary>As the Fertilizer Association of Ireland prints them.</summary>
    public static OxideFactors Ireland { get; } = new(
        "oxides-ireland",
        "oxides as the Fertilizer Association of Ireland prints them",
        NutrientSources.Ireland,
        (Oxide.Phosphate, 0.436, 2.291),
        (Oxide.Potash, 0.830, 1.205),
        (Oxide.MagnesiumOxide, 0.603, 1.658),
        (Oxide.SulfurTrioxide, 0.400, 2.500),
        (Oxide.SodiumOxide, 0.742, 1.348),
        (Oxide.SodiumChloride, 0.393, 2.542));

    /// <summary>As a Swedish laboratory prints them: division by 2.29, 1.2, 1.66, 1.4 and 2.5.</summary>
    public static OxideFactors Sweden { get; } = new(
        "oxides-sweden",
        "oxides as LMI prints them",
        NutrientSources.Sweden,
        (Oxide.Phosphate, 1 / 2.29, 2.29),
        (Oxide.Potash, 1 / 1.2, 1.2),
        (Oxide.MagnesiumOxide, 1 / 1.66, 1.66),
        (Oxide.CalciumOxide, 1 / 1.4, 1.4),
        (Oxide.SulfurTrioxide, 1 / 2.5, 2.5));

    /// <summary>As North Carolina prints them: phosphate both ways, potash from potassium alone.</summary>
    public static OxideFactors NorthCarolina { get; } = new(
        "oxides-north-carolina",
        "oxides as North Carolina prints them",
        NutrientSources.NorthCarolina,
        (Oxide.Phosphate, 0.44, 2.29),
        (Oxide.Potash, null, 1.2));

    /// <summary>Every set of factors there is.</summary>
    public static IReadOnlyList<OxideFactors> All { get; } = ValueList<OxideFactors>.Of([MolarMass, Ifa, Ireland, Sweden, NorthCarolina]);

    /// <summary>The key, name and source of the factors.</summary>
    public Method Method { get; }

    /// <summary>Finds a set of factors by its key.</summary>
    /// <param name="key">The key of its method, for instance <c>oxides-molar-mass</c>.</param>
    /// <returns>The factors.</returns>
    /// <exception cref="ArgumentException">There is no such set, or the key is empty.</exception>
    public static OxideFactors FromKey(string key) => SoilKeys.Find(All, set => set.Method.Key, key);

    /// <summary>The mass of element in one of oxide.</summary>
    /// <param name="oxide">The oxide.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such oxide, or the source prints no factor for it.</exception>
    public double ElementPerOxide(Oxide oxide) => Row(oxide).Element ?? throw Silent(oxide);

    /// <summary>The mass of oxide that one of element makes.</summary>
    /// <param name="oxide">The oxide.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such oxide, or the source prints no factor for it.</exception>
    public double OxidePerElement(Oxide oxide) => Row(oxide).Oxidised ?? throw Silent(oxide);

    /// <summary>The element in a mass of oxide.</summary>
    /// <param name="oxide">The oxide.</param>
    /// <param name="amount">Its mass; zero or more.</param>
    /// <returns>The mass of the element.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative, or the source prints no factor.</exception>
    public Mass ToElement(Oxide oxide, Mass amount) =>
        Mass.FromKilograms(Guard.NotNegative(Boundary.Kilograms(amount), "kg", nameof(amount)) * ElementPerOxide(oxide));

    /// <summary>The element in a share of oxide.</summary>
    /// <param name="oxide">The oxide.</param>
    /// <param name="amount">Its share by mass; zero or more.</param>
    /// <returns>The share of the element.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative, or the source prints no factor.</exception>
    public MassFraction ToElement(Oxide oxide, MassFraction amount) =>
        MassFraction.FromPercent(Guard.NotNegative(Boundary.MassFraction(amount) * 100, "%", nameof(amount)) * ElementPerOxide(oxide));

    /// <summary>The element in a rate of oxide.</summary>
    /// <param name="oxide">The oxide.</param>
    /// <param name="amount">Its mass per area; zero or more.</param>
    /// <returns>The mass of the element per area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative, or the source prints no factor.</exception>
    public AreaDensity ToElement(Oxide oxide, AreaDensity amount) => AreaDensity.FromGramsPerSquareMeter(
        Guard.NotNegative(Boundary.GramsPerSquareMetre(amount), "g/m²", nameof(amount)) * ElementPerOxide(oxide));

    /// <summary>The oxide that a mass of element makes.</summary>
    /// <param name="oxide">The oxide.</param>
    /// <param name="amount">The mass of the element; zero or more.</param>
    /// <returns>The mass of the oxide.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative, or the source prints no factor.</exception>
    public Mass ToOxide(Oxide oxide, Mass amount) =>
        Mass.FromKilograms(Guard.NotNegative(Boundary.Kilograms(amount), "kg", nameof(amount)) * OxidePerElement(oxide));

    /// <summary>The oxide that a share of element makes.</summary>
    /// <param name="oxide">The oxide.</param>
    /// <param name="amount">The share of the element by mass; zero or more.</param>
    /// <returns>The share of the oxide.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative, or the source prints no factor.</exception>
    public MassFraction ToOxide(Oxide oxide, MassFraction amount) =>
        MassFraction.FromPercent(Guard.NotNegative(Boundary.MassFraction(amount) * 100, "%", nameof(amount)) * OxidePerElement(oxide));

    /// <summary>The oxide that a rate of element makes.</summary>
    /// <param name="oxide">The oxide.</param>
    /// <param name="amount">The mass of the element per area; zero or more.</param>
    /// <returns>The mass of the oxide per area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative, or the source prints no factor.</exception>
    public AreaDensity ToOxide(Oxide oxide, AreaDensity amount) => AreaDensity.FromGramsPerSquareMeter(
        Guard.NotNegative(Boundary.GramsPerSquareMetre(amount), "g/m²", nameof(amount)) * OxidePerElement(oxide));

    /// <summary>The name and source of the factors.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Method.ToString();

    private static (Oxide Oxide, double? Element, double? Oxidised) Exact(Oxide oxide, double element, int elements, int oxygens)
    {
        double share = element * elements / (element * elements + Oxygen * oxygens);
        return (oxide, share, 1 / share);
    }

    private (Oxide Oxide, double? Element, double? Oxidised) Row(Oxide oxide)
    {
        Guard.Defined(oxide);
        foreach ((Oxide Oxide, double? Element, double? Oxidised) row in factors)
        {
            if (row.Oxide == oxide)
                return row;
        }

        throw Silent(oxide);
    }

    private ArgumentOutOfRangeException Silent(Oxide oxide) => new(
        nameof(oxide), $"oxide was {oxide}; allowed: {string.Join(", ", factors.Select(row => row.Oxide))}, in the direction that '{Method.Name}' prints.");
}
