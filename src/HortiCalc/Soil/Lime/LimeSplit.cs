using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A published rule for how much lime one application may hold, and how the rest follows.</summary>
/// <remarks>
/// <para>
/// Immutable; equal when all members are equal. Rules disagree: 50 or 100 lb/1000 sq ft on a lawn, so the ground decides which to choose.
/// </para>
/// <para>
/// The maxima are of ground limestone. They are applied to the amount of pure calcium carbonate in a dose, so that a material of half the
/// strength may be given at twice the rate.
/// </para>
/// </remarks>
/// <example><code>
/// LimeSplit ours = new(
///     new Method("own-limit", "limit of our county", Source.CommonPractice("own-limit", "limit of our county"), new Domain("lawns")),
///     Mass.FromPounds(40) / Area.FromSquareFeet(1000),
///     LimeShares.Equal,
///     fewestMonths: 6);
/// Console.WriteLine(ours);
/// </code></example>
public sealed record LimeSplit
{
    /// <summary>Describes a rule of one's own, for instance that of a local laboratory.</summary>
    /// <param name="method">The rule's name and source.</param>
    /// <param name="maximum">The most that one application holds, as calcium carbonate; above zero.</param>
    /// <param name="shares">How the whole is shared out.</param>
    /// <param name="mostApplications">
    /// The most applications, the last of which then takes what is left; <see langword="null"/> for no limit.
    /// </param>
    /// <param name="fewestMonths">The fewest months between two, or <see langword="null"/> where the source gives none.</param>
    /// <param name="mostMonths">The most months between two, or <see langword="null"/> where the source gives none.</param>
    /// <exception cref="ArgumentNullException">The method is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The maximum is not above zero, a count is below one, or the most months are fewer than the fewest.
    /// </exception>
    public LimeSplit(
        Method method, AreaDensity maximum, LimeShares shares, int? mostApplications = null, int? fewestMonths = null, int? mostMonths = null)
    {
        Method = Guard.NotNull(method);
        Guard.Positive(Boundary.GramsPerSquareMetre(maximum), "g/m²", nameof(maximum));
        Maximum = HouseUnits.Normalise(maximum);
        Shares = Guard.Defined(shares);
        MostApplications = mostApplications is { } most ? Guard.AtLeast(most, 1, nameof(mostApplications)) : null;
        FewestMonths = fewestMonths is { } few ? Guard.AtLeast(few, 1, nameof(fewestMonths)) : null;
        MostMonths = mostMonths is { } many ? Guard.AtLeast(many, fewestMonths ?? 1, nameof(mostMonths)) : null;
    }

    /// <summary>
    /// Home garden, Penn State: up to 10 lb/100 sq ft at once, 11 to 20 in two, 21 or more in three, equal, six months apart.
    /// </summary>
    /// <remarks>
    /// Printed in whole pounds. Between 10 and 11 and between 20 and 21 nothing is printed; the larger number of applications is taken,
    /// our reading.
    /// </remarks>
    public static LimeSplit PennStateGarden { get; } = new(
        Rule("lime-split-penn-state-garden", "split for a home garden, Penn State", LimeSources.PennStateHomeGarden),
        PoundsPer100SquareFeet(10),
        LimeShares.Equal,
        mostApplications: 3,
        fewestMonths: 6,
        mostMonths: 6);

    /// <summary>Home lawn, Penn State: no application over 100 lb/1000 sq ft, 4 to 6 months apart.</summary>
    public static LimeSplit PennStateLawn { get; } = new(
        Rule("lime-split-penn-state-lawn", "split for a home lawn, Penn State", LimeSources.PennStateHomeLawn),
        PoundsPer1000SquareFeet(100),
        LimeShares.Equal,
        fewestMonths: 4,
        mostMonths: 6);

    /// <summary>Golf greens and tees, Penn State: no application over 25 lb/1000 sq ft, 4 to 6 months apart.</summary>
    public static LimeSplit PennStateGreen { get; } = new(
        Rule("lime-split-penn-state-green", "split for a golf green, Penn State", LimeSources.PennStateCommercialTurf),
        PoundsPer1000SquareFeet(25),
        LimeShares.Equal,
        fewestMonths: 4,
        mostMonths: 6);

    /// <summary>Lawn, North Carolina: 50 lb/1000 sq ft at a time, the rest six months later.</summary>
    public static LimeSplit NorthCarolinaLawn { get; } = new(
        Rule("lime-split-north-carolina-lawn", "split for a lawn, North Carolina", LimeSources.NorthCarolinaLawn),
        PoundsPer1000SquareFeet(50),
        LimeShares.FullThenRest,
        fewestMonths: 6,
        mostMonths: 6);

    /// <summary>Surface of grassland, United Kingdom: at most 7 t/ha at a time; no interval printed.</summary>
    public static LimeSplit UkGrassland { get; } = new(
        Rule("lime-split-uk-grassland", "split for grassland, UK", LimeSources.AgriculturalLimeAssociation),
        TonnesPerHectare(7),
        LimeShares.FullThenRest);

    /// <summary>Arable land, United Kingdom: more than 10 t/ha in two dressings, the first ploughed in; no interval printed.</summary>
    public static LimeSplit UkArable { get; } = new(
        Rule("lime-split-uk-arable", "split for arable land, UK", LimeSources.AgriculturalLimeAssociation),
        TonnesPerHectare(10),
        LimeShares.Equal,
        mostApplications: 2);

    /// <summary>Ireland: at most 7.5 t/ha, the rest in the third year.</summary>
    public static LimeSplit Ireland { get; } = new(
        Rule("lime-split-ireland", "split, Ireland", LimeSources.IrishForageGuide),
        TonnesPerHectare(7.5),
        LimeShares.FullThenRest,
        mostApplications: 2,
        fewestMonths: 24,
        mostMonths: 24);

    /// <summary>Lime not worked in, Missouri: 2 US tons per acre at a time, the rest two to three years later.</summary>
    public static LimeSplit MissouriSurface { get; } = new(
        Rule("lime-split-missouri-surface", "split for lime not worked in, Missouri", LimeSources.MissouriSurface),
        AreaDensity.FromGramsPerSquareMeter(2 * LimeUnits.GramsPerSquareMetrePerShortTonPerAcre),
        LimeShares.FullThenRest,
        fewestMonths: 24,
        mostMonths: 36);

    /// <summary>Forage before sowing, Penn State: more than 4 US tons per acre in two, half ploughed in and half worked into the surface; no interval printed.</summary>
    public static LimeSplit PennStateForage { get; } = new(
        Rule("lime-split-penn-state-forage", "split for forage, Penn State", MaterialSources.PennStateForage),
        AreaDensity.FromGramsPerSquareMeter(4 * LimeUnits.GramsPerSquareMetrePerShortTonPerAcre),
        LimeShares.Equal,
        mostApplications: 2);

    /// <summary>Top dressing of perennials and unworked soil, Oregon: 1 to 2 US tons per acre, of which the upper is the most; no interval printed.</summary>
    public static LimeSplit OregonTopDressing { get; } = new(
        Rule("lime-split-oregon-top-dressing", "split for lime not worked in, Oregon", MaterialSources.OregonTopDressing),
        AreaDensity.FromGramsPerSquareMeter(2 * LimeUnits.GramsPerSquareMetrePerShortTonPerAcre),
        LimeShares.FullThenRest);

    /// <summary>Garden, a garden site: more than 90 lb/1000 sq ft in two, three months apart; common practice.</summary>
    public static LimeSplit GardenSite { get; } = new(
        Rule("lime-split-garden-site", "split for a garden, garden site", LimeMethodSources.GardenCalcium),
        PoundsPer1000SquareFeet(90),
        LimeShares.Equal,
        mostApplications: 2,
        fewestMonths: 3,
        mostMonths: 3);

    /// <summary>Sand, Germany: at most 1000 kg of calcium oxide per hectare and year, which is 1785 kg of carbonate.</summary>
    public static LimeSplit GermanSand { get; } = German("lime-split-german-sand", "split for sand, Germany", 1);

    /// <summary>Clay, Germany: at most 4000 kg of calcium oxide per hectare and year, which is 7139 kg of carbonate.</summary>
    public static LimeSplit GermanClay { get; } = German("lime-split-german-clay", "split for clay, Germany", 4);

    /// <summary>The rule's name and source.</summary>
    public Method Method { get; }

    /// <summary>The most that one application holds, as calcium carbonate.</summary>
    public AreaDensity Maximum { get; }

    /// <summary>How the whole is shared out.</summary>
    public LimeShares Shares { get; }

    /// <summary>The most applications, or <see langword="null"/> for no limit.</summary>
    public int? MostApplications { get; }

    /// <summary>The fewest months between two applications, or <see langword="null"/> where the source gives none.</summary>
    public int? FewestMonths { get; }

    /// <summary>The most months between two applications, or <see langword="null"/> where the source gives none.</summary>
    public int? MostMonths { get; }

    /// <summary>The rule's name and source.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Method.ToString();

    internal string Interval => (FewestMonths, MostMonths) switch
    {
        (null, null) => "",
        ({ } few, { } many) when few == many => $"{Guard.Number(few)} months apart",
        ({ } few, { } many) => $"{Guard.Number(few)} to {Guard.Number(many)} months apart",
        ({ } few, null) => $"at least {Guard.Number(few)} months apart",
        (null, { } many) => $"at most {Guard.Number(many)} months apart",
    };

    /// <summary>The share of the whole in each application; none for nothing.</summary>
    internal double[] SharesOf(double carbonateGramsPerSquareMetre)
    {
        double ratio = carbonateGramsPerSquareMetre / Boundary.GramsPerSquareMetre(Maximum);
        if (ratio == 0)
            return [];

        // A hair is taken off, so that twice the maximum is two applications in every unit.
        double needed = Math.Ceiling(ratio * (1 - 1e-9));
        if (MostApplications is null && needed > MostCount)
        {
            throw Guard.Refused(
                "requirement",
                carbonateGramsPerSquareMetre,
                "g/m² of calcium carbonate",
                $"up to {Guard.Number(MostCount)} times what one application holds");
        }

        int count = (int)Math.Min(Math.Max(1, needed), MostApplications ?? MostCount);
        double[] shares = new double[count];
        if (Shares == LimeShares.Equal)
        {
            Array.Fill(shares, 1.0 / count);
        }
        else
        {
            Array.Fill(shares, 1 / ratio);
            shares[^1] = 1 - (count - 1) / ratio;
        }

        return shares;
    }

    // More applications than anyone lives to see.
    private const int MostCount = 1000;

    private static Method Rule(string key, string name, Source source) => new(key, name, source, new Domain("ground limestone"));

    private static LimeSplit German(string key, string name, double oxideTonnesPerHectare) => new(
        Rule(key, name, LimeMethodSources.GermanScheme),
        TonnesPerHectare(oxideTonnesPerHectare * LimeChemistry.CarbonatePerOxide),
        LimeShares.FullThenRest,
        fewestMonths: 12,
        mostMonths: 12);

    private static AreaDensity PoundsPer100SquareFeet(double value) =>
        AreaDensity.FromGramsPerSquareMeter(value * LimeUnits.GramsPerSquareMetrePerPoundPer100SquareFeet);

    private static AreaDensity PoundsPer1000SquareFeet(double value) =>
        AreaDensity.FromGramsPerSquareMeter(value * LimeUnits.GramsPerSquareMetrePerPoundPer1000SquareFeet);

    private static AreaDensity TonnesPerHectare(double value) =>
        AreaDensity.FromGramsPerSquareMeter(value * LimeUnits.GramsPerSquareMetrePerTonnePerHectare);
}
