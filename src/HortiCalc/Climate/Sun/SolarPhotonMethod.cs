using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>A published way from the energy of sunlight to the photons in it that plants can use.</summary>
/// <remarks>They differ by a sixth, because about half of the energy lies from 400 to 700 nm, and the half changes with sky and season.</remarks>
public sealed record SolarPhotonMethod
{
    private const double MegajoulesPerKilowattHour = 3.6;

    // Of sun and sky, Thimijan and Heins 1983.
    private const double MolesPerPhotosyntheticMegajoule = 4.57;

    private SolarPhotonMethod(string key, string name, Source source, double molesPerMegajoule, double low, double high)
    {
        Evidence = new Method(key, name, source, new Domain("radiation of sun and sky on level ground, all wavelengths, unfiltered"));
        MolesPerMegajoule = molesPerMegajoule;
        LowMolesPerMegajoule = low;
        HighMolesPerMegajoule = high;
    }

    /// <summary>7.058 mol for a kilowatt-hour, 1.96 for a megajoule: the factor of the light maps for greenhouse growers.</summary>
    public static SolarPhotonMethod LightMaps { get; } = Plain(
        "solar-photons.light-maps",
        "7.058 mol per kilowatt-hour",
        new Source(
            "logan-sams-faust-2016",
            "Mapping daily light integrals for greenhouse production",
            "American Meteorological Society, 96th annual meeting",
            2016,
            "https://ams.confex.com/ams/96Annual/webprogram/Paper289816.html"),
        7.058 / MegajoulesPerKilowattHour);

    /// <summary>2.04 mol for a megajoule, measured at stations in the western United States.</summary>
    public static SolarPhotonMethod WesternStations { get; } = Plain(
        "solar-photons.western-stations",
        "2.04 mol per megajoule",
        new Source(
            "meek-1984",
            "A generalized relationship between photosynthetically active radiation and solar radiation",
            "Agronomy Journal 76:939",
            1984,
            null,
            SourceKind.FromMemory),
        2.04);

    /// <summary>Half of the energy, with 3 % either way, at the 4.57 µmol/J of sun and sky: 2.29 mol for a megajoule, from 2.15 to 2.42.</summary>
    public static SolarPhotonMethod HalfOfEnergy { get; } = new(
        "solar-photons.half",
        "half of the energy at 4.57 µmol/J",
        new Source(
            "szeicz-1974",
            "Solar radiation for plant growth",
            "Journal of Applied Ecology 11",
            1974,
            "https://www.britishecologicalsociety.org/applied-ecology-resources/document/19740723105/"),
        0.50 * MolesPerPhotosyntheticMegajoule,
        0.47 * MolesPerPhotosyntheticMegajoule,
        0.53 * MolesPerPhotosyntheticMegajoule);

    /// <summary>Every method there is.</summary>
    public static IReadOnlyList<SolarPhotonMethod> All { get; } =
        ValueList<SolarPhotonMethod>.Of([LightMaps, WesternStations, HalfOfEnergy]);

    /// <summary>The method's key, name and source.</summary>
    public Method Evidence { get; }

    /// <summary>Moles of photons from 400 to 700 nm for a megajoule of sunlight of all wavelengths.</summary>
    public double MolesPerMegajoule { get; }

    internal double LowMolesPerMegajoule { get; }

    internal double HighMolesPerMegajoule { get; }

    /// <summary>Finds a method by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentException">There is no such method, or the key is empty.</exception>
    public static SolarPhotonMethod FromKey(string key) => Keyed.Find(All, method => method.Evidence.Key, key);

    /// <summary>The method's name.</summary>
    /// <returns>For instance <c>2.04 mol per megajoule</c>.</returns>
    public override string ToString() => Evidence.Name;

    private static SolarPhotonMethod Plain(string key, string name, Source source, double molesPerMegajoule) =>
        new(key, name, source, molesPerMegajoule, molesPerMegajoule, molesPerMegajoule);
}
