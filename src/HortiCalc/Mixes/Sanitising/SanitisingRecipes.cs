using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Published sanitising mixes for pots, tools, benches and surfaces.</summary>
/// <remarks>
/// They differ in strength and time because their sources do. What they make of a bottle of another strength:
/// <see cref="Hypochlorite.StrengthOf"/>.
/// </remarks>
public static class SanitisingRecipes
{
    private static readonly IReadOnlyList<Caution> Bleach = [.. MixCautions.Bleach, MixCautions.LabelStrength];

    private static readonly IReadOnlyList<MixUse> MeetsPlants = [MixUse.Pots, MixUse.Tools, MixUse.Benches];

    /// <summary>One part of bleach to nine of water; containers under it for 10 minutes, metal rinsed. Penn State Extension.</summary>
    public static MixRecipe PotsAndToolsPennState { get; } = OfBleach(
        "sanitise.penn-state",
        "bleach, 1 part to 9 of water (Penn State)",
        [MixUse.Pots, MixUse.Tools, MixUse.Benches],
        MixRatio.PartsToParts(1, 9),
        Duration.FromMinutes(10),
        RinseAdvice.RinseMetal,
        MixSources.PennState);

    /// <summary>One part of 5.25 % bleach to nine of water; a soak of 30 minutes, then a rinse. University of Massachusetts.</summary>
    public static MixRecipe PotsAndBenchesMassachusetts { get; } = OfBleach(
        "sanitise.umass",
        "5.25 % bleach, 1 part to 9 of water (Massachusetts)",
        [MixUse.Pots, MixUse.Benches],
        MixRatio.PartsToParts(1, 9),
        Duration.FromMinutes(30),
        RinseAdvice.Rinse,
        MixSources.UniversityOfMassachusetts);

    /// <summary>
    /// 5.25 % bleach diluted to 0.525 %; at least 1 minute on clean tools and benches, not on steel. Phytosphere Research.
    /// </summary>
    public static MixRecipe CleanToolsPhytosphere { get; } = OfBleach(
        "sanitise.phytosphere",
        "5.25 % bleach diluted to 0.525 % (Phytosphere)",
        [MixUse.Tools, MixUse.Benches],
        MixRatio.PartsToParts(1, 9),
        Duration.FromMinutes(1),
        RinseAdvice.NotStated,
        MixSources.Phytosphere);

    /// <summary>
    /// One part of 5 % bleach to 99 of water, wiped on clean surfaces that stay wet for 10 minutes. World Health Organization.
    /// </summary>
    public static MixRecipe WipedSurfacesWorldHealth { get; } = OfBleach(
        "sanitise.who-wiping",
        "5 % bleach, 1 part to 99 of water, wiped (WHO)",
        [MixUse.Surfaces, MixUse.Benches],
        MixRatio.PartsToParts(1, 99),
        Duration.FromMinutes(10),
        RinseAdvice.NotStated,
        MixSources.WorldHealthOrganization);

    /// <summary>One part of 5 % bleach to 99 of water, clean things under it for 30 minutes. World Health Organization.</summary>
    public static MixRecipe SoakedThingsWorldHealth { get; } = OfBleach(
        "sanitise.who-immersion",
        "5 % bleach, 1 part to 99 of water, soaked (WHO)",
        [MixUse.Tools, MixUse.Pots],
        MixRatio.PartsToParts(1, 99),
        Duration.FromMinutes(30),
        RinseAdvice.NotStated,
        MixSources.WorldHealthOrganization);

    /// <summary>
    /// One part of 5 % bleach to 49 of water: 0.1 % chlorine, made every day. Centers for Disease Control and Prevention.
    /// </summary>
    public static MixRecipe SurfacesChlorineSolution { get; } = OfBleach(
        "sanitise.cdc-0.1-percent",
        "5 % bleach, 1 part to 49 of water (CDC)",
        [MixUse.Surfaces],
        MixRatio.PartsToParts(1, 49),
        null,
        RinseAdvice.NotStated,
        MixSources.ChlorineSolution);

    /// <summary>
    /// Five US tablespoons of bleach to a US gallon of water, left for at least 1 minute. Centers for Disease Control and
    /// Prevention.
    /// </summary>
    public static MixRecipe SurfacesFiveTablespoons { get; } = OfBleachInWater(
        "sanitise.cdc-five-tablespoons",
        "bleach, 5 tablespoons to a gallon of water (CDC)",
        [MixUse.Surfaces],
        Volume.FromUsTablespoons(5),
        Duration.FromMinutes(1),
        MixSources.FacilityCleaning);

    /// <summary>
    /// One US tablespoon of bleach to a US gallon of water, for surfaces that touch food. Centers for Disease Control and
    /// Prevention.
    /// </summary>
    public static MixRecipe FoodSurfacesOneTablespoon { get; } = OfBleachInWater(
        "sanitise.cdc-food-surfaces",
        "bleach, 1 tablespoon to a gallon of water (CDC, food surfaces)",
        [MixUse.FoodSurfaces],
        Volume.FromUsTablespoons(1),
        null,
        MixSources.AfterAnEmergency);

    /// <summary>Alcohol of 70 %, as it is; tools dipped or wiped, left to dry, not rinsed. Penn State Extension.</summary>
    /// <remarks>
    /// A stronger alcohol is brought to 70 % with <see cref="Dilution"/>. Sources differ on the time: seconds on clean blades, a minute and more after
    /// cuts through diseased wood (<see cref="ToolsAlcoholArizona"/>).
    /// </remarks>
    public static MixRecipe ToolsAlcoholPennState { get; } = OfAlcohol(
        "sanitise.penn-state-alcohol", "70 % alcohol, undiluted (Penn State)", null, RinseAdvice.DoNotRinse, MixSources.PennState);

    /// <summary>Isopropyl alcohol of 70 %, as it is; pruning tools soaked for 2 minutes at least, better 5. University of Arizona.</summary>
    public static MixRecipe ToolsAlcoholArizona { get; } = OfAlcohol(
        "sanitise.arizona-alcohol", "70 % alcohol, undiluted, a soak (Arizona)", Duration.FromMinutes(2), RinseAdvice.NotStated, SanitisingSources.AlcoholSoak);

    /// <summary>Hydrogen peroxide of 3 %, as it is, on work surfaces; slow to act, and rinsed off. University of Iowa.</summary>
    /// <remarks>The source gives no time, and says that 3 to 6 % act slowly and are limited as germicides.</remarks>
    public static MixRecipe BenchesPeroxideIowa { get; } = new(
        "sanitise.iowa-peroxide",
        "3 % hydrogen peroxide, undiluted (Iowa)",
        [MixUse.Benches, MixUse.Surfaces],
        DoseBasis.FinishedMix,
        [new VolumeDose(MixIngredients.HydrogenPeroxide, VolumeConcentration.FromPercent(100), VolumeConcentration.FromPercent(100))],
        null,
        RinseAdvice.Rinse,
        SanitisingSources.PeroxideOnBenches,
        MixCautions.Peroxide);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<MixRecipe> All { get; } = ValueList<MixRecipe>.Of(
    [
        PotsAndToolsPennState,
        PotsAndBenchesMassachusetts,
        CleanToolsPhytosphere,
        WipedSurfacesWorldHealth,
        SoakedThingsWorldHealth,
        SurfacesChlorineSolution,
        SurfacesFiveTablespoons,
        FoodSurfacesOneTablespoon,
        ToolsAlcoholPennState,
        ToolsAlcoholArizona,
        BenchesPeroxideIowa,
    ]);

    private static MixRecipe OfAlcohol(string key, string name, Duration? contactTime, RinseAdvice rinse, Source source) => new(
        key,
        name,
        [MixUse.Tools],
        DoseBasis.FinishedMix,
        [new VolumeDose(MixIngredients.RubbingAlcohol, VolumeConcentration.FromPercent(100), VolumeConcentration.FromPercent(100))],
        contactTime,
        rinse,
        source,
        MixCautions.Alcohol);

    private static MixRecipe OfBleach(
        string key,
        string name,
        IReadOnlyList<MixUse> uses,
        MixRatio ratio,
        Duration? contactTime,
        RinseAdvice rinse,
        Source source) => new(
            key,
            name,
            uses,
            DoseBasis.FinishedMix,
            [new VolumeDose(MixIngredients.HouseholdBleach, ratio.ShareOfConcentrate, ratio.ShareOfConcentrate)],
            contactTime,
            rinse,
            source,
            uses.Any(MeetsPlants.Contains)
                ? [.. Bleach, MixCautions.RinseWell, MixCautions.FoodSurfaces]
                : [.. Bleach, MixCautions.FoodSurfaces]);

    private static MixRecipe OfBleachInWater(
        string key, string name, IReadOnlyList<MixUse> uses, Volume perGallon, Duration? contactTime, Source source)
    {
        VolumeConcentration rate = Dilution.RateOf(perGallon, Volume.FromUsGallons(1));
        return new MixRecipe(
            key,
            name,
            uses,
            DoseBasis.Water,
            [new VolumeDose(MixIngredients.HouseholdBleach, rate, rate)],
            contactTime,
            RinseAdvice.NotStated,
            source,
            [.. Bleach, MixCautions.FoodSurfaces]);
    }
}
