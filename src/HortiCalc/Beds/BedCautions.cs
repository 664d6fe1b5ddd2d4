using HortiCalc.Evidence;

namespace HortiCalc.Beds;

/// <summary>What to take care of when loose materials are bought, carried and spread.</summary>
public static class BedCautions
{
    /// <summary>Above this, as the code of practice has it, the risk of hurting one's back rises; over 55 kg nobody should lift
    /// alone.</summary>
    internal const double LiftingGuidelineKilograms = 16;

    private static readonly Source Lifting = new(
        "western-australia-manual-handling",
        "Manual handling code of practice 1996, appendix G (quoted)",
        "WorkSafe Western Australia",
        1996,
        "http://shearingworld.com/lifting_weights.htm");

    private static readonly Source DustSource = new(
        "queensland-legionella",
        "Legionella risks from work with potting mix and compost",
        "Workplace Health and Safety Queensland",
        null,
        "https://www.worksafe.qld.gov.au/safety-and-prevention/hazards/hazardous-exposures/biological-hazards/legionella-risks-from-work-with-potting-mix-and-compost");

    private static readonly Source Structure = new(
        "delaware-roof-garden",
        "Basic structural analysis of a roof garden",
        "University of Delaware (student project)",
        2015,
        "https://sites.udel.edu/dustyn/2015/08/03/basic-structural-analysis-2");

    private static readonly Source Timber = new(
        "toronto-treated-wood",
        "Pressure treated wood: proximity to raised veggie bed",
        "Toronto Master Gardeners",
        null,
        "https://www.torontomastergardeners.ca/askagardener/pressure-treated-wood-proximity-to-raised-veggie-bed/");

    private static readonly Source Fill = new(
        "fill-soils-off-site",
        "Fill soils originating off-site",
        "environmental consultancy (US)",
        null,
        "http://www.federatedenvironmental.com/common-environmental-concerns/fill-soils-originating-off-site/");

    /// <summary>A load that not everybody should lift alone.</summary>
    public static Caution HeavyLoad { get; } = new(
        "load.heavy",
        CautionLevel.Danger,
        "This is more than one person should lift at once; split it, use a barrow, or lift it with someone else.",
        Lifting);

    /// <summary>The same volume weighs more when it is wetter.</summary>
    public static Caution WeightOfWater { get; } = new(
        "load.moisture",
        CautionLevel.Note,
        "Rain changes the weight: sand, for one, gains 20 % when damp and 30 % when wet; allow for it before loading a vehicle or a roof.",
        BulkDensitySources.CalRecycle);

    /// <summary>Compost and manure can bring more salt than roots bear.</summary>
    public static Caution Salts { get; } = new(
        "compost.salts",
        CautionLevel.Care,
        "Compost and manure can carry harmful amounts of salts; ask for the analysis, and avoid material with an electrical"
        + " conductivity above 8 mS/cm.",
        CompostSources.Washington);

    /// <summary>Compost whose salts may be more than is desired, depending on the extract they were measured in.</summary>
    public static Caution SaltsAboveDesired { get; } = new(
        "compost.salts-above-desired",
        CautionLevel.Note,
        "Less salt is desired of compost: 4 mS/cm in a saturated paste, 2.5 in one part to one of water, 1.5 in one to two; give less of it and"
        + " keep seed and seedlings out.",
        CompostSources.Missouri);

    /// <summary>Dust of compost and soil can carry Legionella.</summary>
    public static Caution Dust { get; } = new(
        "compost.dust",
        CautionLevel.Danger,
        "Compost, mulch and soil can carry Legionella: keep them damp, do not breathe the dust, wear gloves, wash your hands;"
        + " see a doctor about a worsening cough or fever.",
        DustSource);

    /// <summary>Soil on a roof, a balcony or a deck can be more than the building bears.</summary>
    public static Caution StructuralLoad { get; } = new(
        "load.structure",
        CautionLevel.Danger,
        "Wet soil on a roof, balcony or deck can be more than it was built for; count it saturated, with frame, plants and people, and have an"
        + " engineer confirm what the structure carries.",
        Structure);

    /// <summary>Old treated timber gives off arsenic.</summary>
    public static Caution TreatedTimber { get; } = new(
        "bed.treated-timber",
        CautionLevel.Danger,
        "Timber treated with copper, chromium and arsenic leaches for many years, as do old sleepers with tar: keep it away from soil in which"
        + " food grows, do not saw it without protection, and never burn it.",
        Timber);

    /// <summary>Bought or found soil can be contaminated.</summary>
    public static Caution ContaminatedFill { get; } = new(
        "fill.contaminated",
        CautionLevel.Danger,
        "Soil from elsewhere can carry lead, oil, asbestos or farm chemicals: ask where it was dug, and have it tested before food is grown"
        + " in it.",
        Fill);

    /// <summary>What goes with a kind of material, however much of it and whatever it is bought for.</summary>
    internal static IEnumerable<Caution> Of(BulkMaterial material)
    {
        if (material is BulkMaterial.Compost or BulkMaterial.Manure)
            yield return Salts;
        if (material is BulkMaterial.Compost or BulkMaterial.Manure or BulkMaterial.Mulch or BulkMaterial.Soil or BulkMaterial.GreenWaste
            or BulkMaterial.Peat or BulkMaterial.Coir)
        {
            yield return Dust;
        }
    }
}
