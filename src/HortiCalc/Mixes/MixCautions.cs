using HortiCalc.Evidence;

namespace HortiCalc.Mixes;

/// <summary>What to take care of with mixes. The codes are stable.</summary>
internal static class MixCautions
{
    public static readonly Caution NeverWithAcid = new(
        "bleach.never-with-acid",
        CautionLevel.Danger,
        "Never let bleach meet vinegar or any other acid, acid cleaners and acid fertilisers included: chlorine gas forms.",
        MixSources.FireProtection);

    public static readonly Caution NeverWithAmmonia = new(
        "bleach.never-with-ammonia",
        CautionLevel.Danger,
        "Never let bleach meet ammonia or anything that holds it, ammonium fertilisers and manure included: chloramine gases form.",
        MixSources.FireProtection);

    public static readonly Caution NeverWithAlcohol = new(
        "bleach.never-with-alcohol",
        CautionLevel.Danger,
        "Never let bleach meet alcohol, rubbing alcohol and methylated spirit included: chloroform forms, which stuns and can kill.",
        MixSources.FireProtection);

    public static readonly Caution NeverWithOthers = new(
        "bleach.never-with-others",
        CautionLevel.Danger,
        "Mix bleach with water only, never with another cleaner or disinfectant.",
        MixSources.Hygiene);

    public static readonly Caution NeverWithPesticides = new(
        "bleach.never-with-pesticides",
        CautionLevel.Danger,
        "Never let bleach meet a pesticide, in a tank or on a tool that was not rinsed: it reacts with some of them.",
        MixSources.BleachAndPesticides);

    public static readonly Caution Ventilate = new(
        "mix.ventilate",
        CautionLevel.Danger,
        "Mix and use it outdoors or with doors and windows open, and do not breathe the fumes.",
        MixSources.AfterAnEmergency);

    public static readonly Caution ProtectSkinAndEyes = new(
        "mix.protect-skin-and-eyes",
        CautionLevel.Danger,
        "Wear waterproof gloves and eye protection, and keep it from children and animals.",
        MixSources.AfterAnEmergency);

    public static readonly Caution MakeFresh = new(
        "bleach.make-fresh",
        CautionLevel.Care,
        "Make it fresh before use: one source sees it halved every two hours, others allow a day. "
        + "Soil and plant remains use it up, so clean first.",
        MixSources.UniversityOfMassachusetts);

    public static readonly Caution LabelStrength = new(
        "bleach.label-strength",
        CautionLevel.Care,
        "The recipe was printed for the bleach named in it; 8.25 % bleach makes a mix 57 % stronger than 5.25 % bleach does.",
        MixSources.HypochloriteDefinitions);

    public static readonly Caution FadesInStore = new(
        "bleach.fades-in-store",
        CautionLevel.Note,
        "Bleach loses strength in store, faster when warm; the label states what left the factory.",
        MixSources.HypochloriteProfile);

    public static readonly Caution DensityIgnored = new(
        "bleach.density-ignored",
        CautionLevel.Note,
        "The label's per cent was taken as grams of chlorine per 100 mL, as many charts do; "
        + "that leaves out the density and the factor 1.05.",
        MixSources.KansasBleach);

    public static readonly Caution DryChlorine = new(
        "bleach.dry-chlorine",
        CautionLevel.Danger,
        "Dry calcium hypochlorite can burn or explode with damp, dirt or another pool chemical: use a clean dry scoop, "
        + "put it into plenty of water, and never pour water on it.",
        MixSources.DryChlorine);

    public static readonly Caution Flammable = new(
        "alcohol.flammable",
        CautionLevel.Danger,
        "Alcohol and its vapour catch fire easily: keep it from flames, sparks and hot engines, and let tools dry before anything is lit.",
        MixSources.IsopropylAlcohol);

    public static readonly Caution PeroxideAndVinegar = new(
        "hazard.peroxide-and-vinegar",
        CautionLevel.Danger,
        "Hydrogen peroxide and vinegar in one vessel make peracetic acid, which burns skin, eyes and lungs.",
        MixSources.FireProtection);

    public static readonly Caution ConcentratedPeroxide = new(
        "hazard.concentrated-peroxide",
        CautionLevel.Danger,
        "Never mix concentrated hydrogen peroxide with pesticides or fertilisers: it is a strong oxidiser.",
        MixSources.Guelph);

    public static readonly Caution PeroxideCorrodes = new(
        "peroxide.corrodes",
        CautionLevel.Care,
        "Peroxide and peracetic acid corrode aluminium, copper, brass and zinc and bleach cloth and skin; rinse what was treated.",
        SanitisingSources.PeroxideOnBenches);

    public static readonly Caution PeroxideHurtsPlants = new(
        "peroxide.hurts-plants",
        CautionLevel.Care,
        "Peroxide fed all the time hurt lettuce in solution from 8 mg/L and cucumbers on rockwool from 125 mg/L; try it on a few plants.",
        SanitisingSources.PeroxideHurtsPlants);

    public static readonly Caution SoapAndQuaternaryAmmonium = new(
        "hazard.soap-and-quaternary-ammonium",
        CautionLevel.Care,
        "Soap left on a surface inactivates quaternary ammonium disinfectants; rinse between the two.",
        MixSources.GreenhouseCleaning);

    public static readonly Caution QuaternaryAmmoniumWithWaterOnly = new(
        "quaternary-ammonium.with-water-only",
        CautionLevel.Danger,
        "Mix quaternary ammonium with water only; the concentrate burns eyes and skin.",
        SanitisingSources.QuaternaryLabel);

    public static readonly Caution Bees = new(
        "foliar.bees",
        CautionLevel.Care,
        "Do not spray while bees are about; spray what they visit at dawn or dusk.",
        MixSources.PollinatorGardens);

    public static readonly Caution OilInCold = new(
        "foliar.oil-in-cold",
        CautionLevel.Care,
        "Do not spray oil below about 4 °C (40 °F) or when frost is near.",
        MixSources.OilInCold);

    public static readonly Caution Corrodes = new(
        "bleach.corrodes",
        CautionLevel.Care,
        "Bleach corrodes metal; rinse and dry blades and fittings.",
        MixSources.PennState);

    public static readonly Caution RinseWell = new(
        "mix.rinse",
        CautionLevel.Care,
        "Rinse what plants will touch with clean water before use.",
        MixSources.UniversityOfMassachusetts);

    public static readonly Caution FoodSurfaces = new(
        "mix.food-surfaces",
        CautionLevel.Danger,
        "For surfaces that touch food keep to the rate and the rinse on the label; "
        + "above 200 mg/L of chlorine rinse them with drinking water. The mixes for pots and tools are far above that.",
        MixSources.FoodContactCeiling);

    public static readonly Caution LabelDecides = new(
        "mix.label-decides",
        CautionLevel.Danger,
        "The product's label and local rules decide, whatever a recipe says; where a licence is needed, leave it to someone who holds one.",
        MixSources.LabelIsLaw);

    public static readonly Caution Drift = new(
        "spray.drift",
        CautionLevel.Danger,
        "Spray in calm air only: what drifts reaches people, animals, water and plants beyond.",
        SpraySources.Drift);

    public static readonly Caution TestFirst = new(
        "foliar.test-first",
        CautionLevel.Care,
        "Spray a few leaves first and wait some days: some kinds are burnt by what others bear.",
        MixSources.TestFirst);

    public static readonly Caution NoHeatOrDrought = new(
        "foliar.no-heat-or-drought",
        CautionLevel.Care,
        "Do not spray in hot sun, near or above 32 °C (90 °F), or on plants short of water.",
        MixSources.CaliforniaOilAndSulfur);

    public static readonly Caution OilAndSulfur = new(
        "foliar.oil-and-sulfur",
        CautionLevel.Care,
        "Keep oil and sulfur at least two weeks apart, in either order; some sources say a month.",
        MixSources.CaliforniaOilAndSulfur);

    public static readonly Caution SeedSurfaceOnly = new(
        "seed.surface-only",
        CautionLevel.Note,
        "Chlorine kills only what sits on the seed; hot water reaches inside, and kills the seed too when it is a little too hot.",
        SanitisingSources.PathogensInside);

    public static readonly Caution SpoonVaries = new(
        "mix.spoon-varies",
        CautionLevel.Note,
        "A spoon of powder is a level one and its weight depends on the powder; weigh it where it matters.",
        MixSources.Custom);

    public static readonly Caution LimeBurns = new(
        "mix.lime-burns",
        CautionLevel.Danger,
        "Lime burns eyes and skin: wear goggles and gloves, and keep the dust down.",
        MixSources.Custom);

    public static readonly Caution CopperStays = new(
        "foliar.copper-stays",
        CautionLevel.Care,
        "Copper harms fish and builds up in soil year by year; keep it out of water and to what the label allows in a year.",
        MixSources.Custom);

    /// <summary>What goes with every mix of bleach.</summary>
    public static readonly IReadOnlyList<Caution> Bleach =
    [
        NeverWithAcid,
        NeverWithAmmonia,
        NeverWithAlcohol,
        NeverWithOthers,
        NeverWithPesticides,
        Ventilate,
        ProtectSkinAndEyes,
        MakeFresh,
        Corrodes,
        LabelDecides,
    ];

    /// <summary>What goes with every alcohol.</summary>
    public static readonly IReadOnlyList<Caution> Alcohol = [Flammable, NeverWithAlcohol, Ventilate, ProtectSkinAndEyes, LabelDecides];

    /// <summary>What goes with hydrogen peroxide and peracetic acid.</summary>
    public static readonly IReadOnlyList<Caution> Peroxide = [PeroxideAndVinegar, ConcentratedPeroxide, Ventilate, ProtectSkinAndEyes, PeroxideCorrodes, LabelDecides];

    /// <summary>What goes with quaternary ammonium.</summary>
    public static readonly IReadOnlyList<Caution> QuaternaryAmmonium = [QuaternaryAmmoniumWithWaterOnly, SoapAndQuaternaryAmmonium, ProtectSkinAndEyes, LabelDecides];

    /// <summary>What goes with every mix sprayed on leaves.</summary>
    public static readonly IReadOnlyList<Caution> Foliar = [TestFirst, NoHeatOrDrought, Bees, Drift, ProtectSkinAndEyes, LabelDecides];

    /// <summary>What goes with every job of spraying, whatever is in the tank.</summary>
    public static readonly IReadOnlyList<Caution> Spraying = ValueList<Caution>.Of([LabelDecides, Drift, ProtectSkinAndEyes]);

    /// <summary>What goes with every wait after a spray.</summary>
    public static readonly IReadOnlyList<Caution> Waiting = ValueList<Caution>.Of([LabelDecides]);

    /// <summary>What goes with every mix that holds oil.</summary>
    public static readonly IReadOnlyList<Caution> Oil = [.. Foliar, OilAndSulfur, OilInCold];

    /// <summary>What goes with a disinfectant, by its class and use.</summary>
    public static IReadOnlyList<Caution> OfDisinfectant(MixIngredient agent, MixUse use)
    {
        IReadOnlyList<Caution> byClass =
            agent.Classes.Contains(IngredientClass.Hypochlorite) ? Bleach
            : agent.Classes.Contains(IngredientClass.HydrogenPeroxide) ? Peroxide
            : agent.Classes.Contains(IngredientClass.QuaternaryAmmonium) ? QuaternaryAmmonium
            : agent.Classes.Contains(IngredientClass.Alcohol) ? Alcohol
            : [Ventilate, ProtectSkinAndEyes, LabelDecides];
        return use switch
        {
            MixUse.FoodSurfaces => [.. byClass, FoodSurfaces],
            MixUse.Seed when byClass == Bleach => [.. byClass, SeedSurfaceOnly],
            MixUse.IrrigationLine when byClass == Peroxide => [.. byClass, PeroxideHurtsPlants],
            _ => byClass,
        };
    }
}
