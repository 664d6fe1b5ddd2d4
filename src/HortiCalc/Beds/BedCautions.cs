using HortiCalc.Evidence;

namespace HortiCalc.Beds;

/// <summary>What to take care of when loose materials are bought, carried and spread.</summary>
public static class BedCautions
{
    /// <summary>Above this, as the guideline has it, some people should no longer lift alone even close to the body.</summary>
    internal const double LiftingGuidelineKilograms = 16;

    // The booklet was seen; the figures of its diagram (25 and 16 kg at knuckle height, close to the body) were not.
    private static readonly Source Lifting = new(
        "hse-manual-handling",
        "Getting to grips with manual handling (INDG143): guideline weights for lifting",
        "Health and Safety Executive (UK)",
        2004,
        "https://vdocuments.site/indg143-getting-to-grips-with-manual-handling-the-manual-handling-operations-regulations.html",
        SourceKind.FromMemory);

    private static readonly Source DustSource = new(
        "queensland-legionella",
        "Legionella risks from work with potting mix and compost",
        "Workplace Health and Safety Queensland",
        null,
        "https://www.worksafe.qld.gov.au/safety-and-prevention/hazards/hazardous-exposures/biological-hazards/legionella-risks-from-work-with-potting-mix-and-compost");

    private static readonly Source SaltSource = new(
        "washington-compost-salts",
        "Garden tips: too much compost",
        "Washington State University Extension",
        2016,
        "http://ext100.wsu.edu/gardentips/2016/08/02/too-much-compost/");

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
        SaltSource);

    /// <summary>Dust of compost and soil can carry Legionella.</summary>
    public static Caution Dust { get; } = new(
        "compost.dust",
        CautionLevel.Danger,
        "Compost, mulch and soil can carry Legionella: keep them damp, do not breathe the dust, wear gloves, wash your hands;"
        + " see a doctor about a worsening cough or fever.",
        DustSource);
}
