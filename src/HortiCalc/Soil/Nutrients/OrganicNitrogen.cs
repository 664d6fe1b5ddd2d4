using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>How much nitrogen crops get from manure and compost, and when a material ties nitrogen up instead.</summary>
/// <example><code>
/// Estimate&lt;AreaDensity&gt; nitrogen = OrganicNitrogen.FromManure(
///     FarmyardManure.Cattle, AreaDensity.FromKilogramsPerSquareMeter(2.5), ManureHandling.Surface, ManureSeason.Spring, sandy: false);
/// Console.WriteLine(nitrogen);                          // 1.5 g/m²
/// Console.WriteLine(OrganicNitrogen.Effect(70));        // straw ties nitrogen up
/// </code></example>
public static class OrganicNitrogen
{
    internal const double TiesUpAbove = 30;

    private const double ReleasesBelow = 20;
    private const double LowestDryMatterPercent = 18;

    /// <summary>The share of the nitrogen of farmyard manure that the next crop gets, by season and soil.</summary>
    /// <param name="handling">Whether it is old or fresh, dug in or not.</param>
    /// <param name="season">When it is spread.</param>
    /// <param name="sandy">Whether the soil is sandy or shallow, from which nitrogen is washed in autumn and winter.</param>
    /// <returns>The share of the total nitrogen.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such value, or the table has no figure: manure is not dug into grass.</exception>
    public static Estimate<Ratio> ManureShare(ManureHandling handling, ManureSeason season, bool sandy)
    {
        Guard.Defined(handling);
        double percent = (Guard.Defined(season), sandy) switch
        {
            (ManureSeason.SummerGrass, _) when handling != ManureHandling.Surface => throw new ArgumentOutOfRangeException(
                nameof(handling), $"handling was {handling} in {season}; allowed: {ManureHandling.Surface} in summer on grass."),
            (ManureSeason.Autumn, true) => 5,
            (ManureSeason.Spring, _) when handling == ManureHandling.FreshDugIn => 15,
            _ => 10,
        };
        return new Estimate<Ratio>(Ratio.FromPercent(percent), NutrientMethods.ManureShare, cautions: [NutrientCautions.Manure, NutrientCautions.Convention]);
    }

    /// <summary>The share of the nitrogen of manure that the next crop gets, by the guide of a country.</summary>
    /// <param name="guide">Whose figures. England and Wales tell soils and handling apart, which is why <see cref="ManureShare(ManureHandling, ManureSeason, bool)"/> takes them; Ireland the season alone.</param>
    /// <param name="handling">Whether it is old or fresh, dug in or not; of no account in Ireland.</param>
    /// <param name="season">When it is spread.</param>
    /// <param name="sandy">Whether the soil is sandy or shallow; of no account in Ireland.</param>
    /// <returns>The share of the total nitrogen; zero in Ireland outside spring.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such value, or the table has no figure.</exception>
    public static Estimate<Ratio> ManureShare(ManureGuide guide, ManureHandling handling, ManureSeason season, bool sandy)
    {
        if (Guard.Defined(guide) == ManureGuide.EnglandAndWales)
            return ManureShare(handling, season, sandy);
        Guard.Defined(handling);
        return new Estimate<Ratio>(
            Ratio.FromPercent(Guard.Defined(season) == ManureSeason.Spring ? 25 : 0),
            NutrientMethods.IrishManureShare,
            cautions: [NutrientCautions.Manure, NutrientCautions.Convention]);
    }

    /// <summary>The nitrogen to add to a material so that it ties up no more: C/A - N, where A is the ratio aimed at.</summary>
    /// <param name="carbon">The carbon in the material by mass; from 0 to 100 %.</param>
    /// <param name="nitrogen">Its nitrogen by mass, on the same footing; from 0 to 100 %.</param>
    /// <param name="carbonToNitrogen">The ratio aimed at, for instance 30; above zero.</param>
    /// <returns>The nitrogen by mass of the material; zero where it holds enough.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number lies outside what is said above.</exception>
    public static MassFraction NitrogenToAdd(MassFraction carbon, MassFraction nitrogen, double carbonToNitrogen)
    {
        double carbonPercent = Guard.Within(Boundary.MassFraction(carbon) * 100, 0, 100, "%", nameof(carbon));
        double nitrogenPercent = Guard.Within(Boundary.MassFraction(nitrogen) * 100, 0, 100, "%", nameof(nitrogen));
        return MassFraction.FromPercent(Math.Max(0, carbonPercent / Guard.Positive(carbonToNitrogen, "") - nitrogenPercent));
    }

    /// <summary>The nitrogen in farmyard manure.</summary>
    /// <param name="manure">The manure.</param>
    /// <returns>All nitrogen by mass of fresh manure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such manure.</exception>
    public static Estimate<MassFraction> ManureContent(FarmyardManure manure) => OfManure(Guard.Defined(manure) switch
    {
        FarmyardManure.Cattle => 6.0,
        FarmyardManure.Duck => 6.5,
        _ => 7.0,
    });

    /// <summary>The nitrogen in farmyard manure that plants can take up at once, and that is lost to the air or washed out first.</summary>
    /// <param name="manure">The manure.</param>
    /// <param name="fresh">Whether it is fresh; old manure was stored for three months or more.</param>
    /// <returns>The readily available nitrogen by mass of fresh manure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such manure, or the table has no figure.</exception>
    public static Estimate<MassFraction> ManureReadilyAvailable(FarmyardManure manure, bool fresh) => OfManure((Guard.Defined(manure), fresh) switch
    {
        (FarmyardManure.Cattle, false) => 0.6,
        (FarmyardManure.Cattle, true) => 1.2,
        (FarmyardManure.Pig, false) => 1.0,
        (FarmyardManure.Pig, true) => 1.8,
        (FarmyardManure.Sheep, false) => 0.7,
        (FarmyardManure.Sheep, true) => 1.4,
        (FarmyardManure.Duck, false) => 1.0,
        (FarmyardManure.Duck, true) => 1.6,
        _ => throw new ArgumentOutOfRangeException(nameof(manure), $"manure was {manure}; allowed: Cattle, Pig, Sheep or Duck, which the table prints."),
    });

    /// <summary>The nitrogen that the next crop gets from a dressing of farmyard manure.</summary>
    /// <param name="manure">The manure.</param>
    /// <param name="rate">The fresh manure per area; zero or more.</param>
    /// <param name="handling">Whether it is old or fresh, dug in or not.</param>
    /// <param name="season">When it is spread.</param>
    /// <param name="sandy">Whether the soil is sandy or shallow.</param>
    /// <returns>The nitrogen per area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The rate is negative, or as in <see cref="ManureShare(ManureHandling, ManureSeason, bool)"/>.</exception>
    public static Estimate<AreaDensity> FromManure(FarmyardManure manure, AreaDensity rate, ManureHandling handling, ManureSeason season, bool sandy)
    {
        double grams = Guard.NotNegative(Boundary.GramsPerSquareMetre(rate), "g/m²", nameof(rate));
        double content = Boundary.MassFraction(ManureContent(manure).Value);
        return ManureShare(handling, season, sandy).Select(share => AreaDensity.FromGramsPerSquareMeter(grams * content * Boundary.Fraction(share)));
    }

    /// <summary>The share of the organic nitrogen of manure that is released in a year.</summary>
    /// <param name="animal">The animal.</param>
    /// <param name="dryMatter">The dry matter of the manure; from 0 to 100 %. The table parts at 18 %.</param>
    /// <param name="yearsAgo">0 for manure of this year, 1 and 2 for that of the years before.</param>
    /// <returns>The share of the organic nitrogen as it was spread.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such animal, or a number lies outside what is said above.</exception>
    public static Estimate<Ratio> OrganicReleased(ManureAnimal animal, Ratio dryMatter, int yearsAgo)
    {
        Guard.Defined(animal);
        double dry = Guard.Within(Boundary.Fraction(dryMatter) * 100, 0, 100, "%", nameof(dryMatter));
        Guard.Within(yearsAgo, 0, 2, "", nameof(yearsAgo));
        double percent = yearsAgo switch
        {
            1 => 12,
            2 => 5,
            _ => (animal, dry < LowestDryMatterPercent) switch
            {
                (ManureAnimal.Poultry, _) => 55,
                (ManureAnimal.Horse or ManureAnimal.Sheep, true) => 30,
                (_, true) => 35,
                _ => 25,
            },
        };
        return new Estimate<Ratio>(Ratio.FromPercent(percent), NutrientMethods.ManureRelease, cautions: [NutrientCautions.Manure, NutrientCautions.Convention]);
    }

    /// <summary>The share of the nitrogen of mature compost that is released in a year: 10 to 15 % in the first, and half as much in each later one.</summary>
    /// <remarks>Common practice. All years together come to twice the first year's share, so that most of the nitrogen stays in the humus.</remarks>
    /// <param name="year">1 for the year in which it is spread; to 50.</param>
    /// <returns>The middle of the range, and the range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The year lies outside what is said above.</exception>
    public static Estimate<Ratio> CompostShare(int year)
    {
        Guard.Within(year, 1, 50, "", nameof(year));
        double left = Math.Pow(0.5, year - 1);
        return new Estimate<Ratio>(
            Ratio.FromPercent(12.5 * left),
            NutrientMethods.CompostHalving,
            new EstimateRange<Ratio>(Ratio.FromPercent(10 * left), Ratio.FromPercent(15 * left), "10 to 15 % in the first year"),
            cautions: [NutrientCautions.Convention]);
    }

    /// <summary>Whether a material releases nitrogen or ties it up while it rots: below 20 parts of carbon to one of nitrogen, and above 30.</summary>
    /// <param name="carbonToNitrogen">The ratio by mass; above zero.</param>
    /// <returns>The effect, with a caution where it ties nitrogen up.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is not above zero.</exception>
    public static Estimate<NitrogenEffect> Effect(double carbonToNitrogen)
    {
        Guard.Positive(carbonToNitrogen, "");
        NitrogenEffect effect = carbonToNitrogen < ReleasesBelow ? NitrogenEffect.Releases : carbonToNitrogen > TiesUpAbove ? NitrogenEffect.TiesUp : NitrogenEffect.Either;
        return new Estimate<NitrogenEffect>(
            effect,
            NutrientMethods.Effect,
            cautions: effect == NitrogenEffect.TiesUp ? [NutrientCautions.TiesUp, NutrientCautions.Convention] : [NutrientCautions.Convention]);
    }

    private static Estimate<MassFraction> OfManure(double kilogramsPerTonne) => new(
        MassFraction.FromGramsPerKilogram(kilogramsPerTonne), NutrientMethods.ManureContent, cautions: [NutrientCautions.Manure, NutrientCautions.Convention]);
}
