using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>What to take care of when liming.</summary>
internal static class LimeCautions
{
    public static Caution NotNeeded { get; } = new(
        "lime.not-needed",
        CautionLevel.Note,
        "The soil is at or above the target pH already; no lime is needed.",
        Source.CommonPractice("lime-only-below-target", "lime only a soil whose pH is below the target"));

    public static Caution NoAcidity { get; } = new(
        "lime.no-acidity",
        CautionLevel.Note,
        "The report shows no acidity to neutralise although the pH is below the target; check the report.",
        Source.CommonPractice("lime-in-proportion-to-acidity", "the lime requirement is in proportion to the acidity found"));

    public static Caution CreditCovers { get; } = new(
        "lime.credit-covers",
        CautionLevel.Note,
        "Lime that was applied before and has not reacted yet is expected to cover the need.",
        LimeSources.NorthCarolina);

    public static Caution BelowReportingLimit { get; } = new(
        "lime.below-reporting-limit",
        CautionLevel.Note,
        "The laboratory reports no need for lime below 0.3 US ton per acre (67 g/m²).",
        LimeSources.NorthCarolina);

    public static Caution UndefinedInSource { get; } = new(
        "lime.undefined-in-source",
        CautionLevel.Note,
        "The source gives a rate below and above an exchangeable acidity of 4.0 meq/100 g, but none at it; the smaller was taken, "
            + "because lime can be added later and not taken out.",
        LimeSources.PennStateAgronomic);

    public static Caution MethodsDiffer { get; } = new(
        "lime.methods-differ",
        CautionLevel.Note,
        "Published methods differ about threefold for the same soil, because they assume other depths, materials and soils; "
            + "lime in steps and test between them.",
        Source.CommonPractice("lime-methods-compared", "rates of garden lime tables for one soil, compared"));

    public static Caution Retest { get; } = new(
        "lime.retest",
        CautionLevel.Note,
        "Test the soil again before liming again, and not within three months of liming: a test so soon can mislead.",
        LimeSources.Rhs);

    public static Caution Manure { get; } = new(
        "lime.manure",
        CautionLevel.Care,
        "Never lime together with manure, slurry, urea or an ammonium fertiliser: nitrogen escapes as ammonia; "
            + "leave three months after liming.",
        LimeSources.IrishForageGuide);

    public static Caution Dust { get; } = new(
        "lime.dust",
        CautionLevel.Care,
        "Spread lime on a still day with gloves, eye protection and a dust mask, and keep children and animals away until it is watered or worked in.",
        Source.CommonPractice("lime-dust", "any ground lime is spread without breathing its dust or letting it into the eyes"));

    public static Caution Caustic { get; } = new(
        "lime.caustic",
        CautionLevel.Danger,
        "Hydrated lime and quicklime burn eyes, skin and airways: wear goggles, gloves and covering clothes, raise no dust, "
            + "rinse eyes for several minutes and see a doctor, and follow the product's label.",
        LimeSources.CalciumHydroxideCard);

    public static Caution Quicklime { get; } = new(
        "lime.quicklime",
        CautionLevel.Danger,
        "Quicklime is not for gardens: it is caustic and reacts with water; use ground limestone.",
        LimeSources.GardenLimingMaterials);

    public static Caution Saturated { get; } = new(
        "lime.saturated",
        CautionLevel.Note,
        "The bases are at or above what the method aims at; it asks for no lime.",
        Source.CommonPractice("lime-only-below-saturation", "lime only a soil whose saturation is below the target"));

    public static Caution Unconfirmed { get; } = new(
        "lime.unconfirmed",
        CautionLevel.Care,
        "A coefficient of this method was not found in print; take the laboratory's own recommendation before it.",
        LimeMethodSources.AdamsEvans);

    public static Caution Unreviewed { get; } = new(
        "lime.unreviewed",
        CautionLevel.Note,
        "This rule circulates without a peer-reviewed source; hold it against another method.",
        LimeMethodSources.GardenCalcium);

    public static Caution Overliming { get; } = new(
        "lime.overliming",
        CautionLevel.Care,
        "The rate neutralises more than the potential acidity that the report shows; cap it there.",
        LimeMethodSources.Guarconi);

    public static Caution DepthUnknown { get; } = new(
        "lime.depth-unknown",
        CautionLevel.Note,
        "The source does not say which depth of soil the rate is for; it was left as published.",
        Source.CommonPractice("lime-depth-as-published", "a rate without a depth is not scaled"));

    public static Caution Surface { get; } = new(
        "lime.surface",
        CautionLevel.Note,
        "Lime left on the surface moves down about a centimetre a year and takes years to act around plants; give it in small amounts.",
        new Source(
            "holbrook-landcare-lime",
            "New lime demonstration testing sites",
            "Holbrook Landcare, in The Border Mail",
            null,
            "https://www.bordermail.com.au/story/7169146/new-lime-demonstration-testing-sites-loving-the-land/"));

    public static Caution Laboratory { get; } = new(
        "lime.laboratory",
        CautionLevel.Note,
        "Where the methods lie far apart, let a licensed soil laboratory of your region recommend the rate.",
        Source.CommonPractice("lime-laboratory", "a local laboratory's recommendation comes before a table from elsewhere"));

    public static Caution BrushOff { get; } = new(
        "lime.brush-off",
        CautionLevel.Danger,
        "Brush dry caustic lime off the skin before washing, and wear no contact lenses.",
        new Source(
            "clay-county-lime-first-aid", "Flood clean-up: lime", "Clay County Free Press", null, "https://claycountyfreepress.com/?p=10794"));

    public static Caution ExposureLimit { get; } = new(
        "lime.exposure-limit",
        CautionLevel.Care,
        "In air, calcium hydroxide is limited to 15 mg/m³ of dust, 5 mg/m³ of respirable dust, and 5 mg/m³ by advice.",
        new Source(
            "osha-calcium-hydroxide",
            "Chemical sampling information: calcium hydroxide",
            "Occupational Safety and Health Administration",
            2008,
            "https://webarchive.library.unt.edu/eot2008/20081104134822/http://www.osha.gov/dts/chemicalsampling/data/CH_224400.html"));

    public static Caution NearPlants { get; } = new(
        "lime.near-plants",
        CautionLevel.Care,
        "Keep hydrated lime off plants and spread it on a calm day.",
        new Source("shas-lime", "Lime", "Sheffield Horticultural and Allotment Society", null, "http://www.shas.org.uk/Lime"));

    public static Caution WoodAsh { get; } = new(
        "lime.wood-ash",
        CautionLevel.Care,
        "Wood ash burns seeds and roots by its salt and holds boron; use none above pH 7.0.",
        WoodAshSources.ExtensionNote);

    public static Caution CoalAsh { get; } = new(
        "lime.coal-ash",
        CautionLevel.Care,
        "Coal ash is no lime: it has no neutralising power.",
        WoodAshSources.ExtensionNote);

    /// <summary>What goes with every dose that is not zero.</summary>
    public static IReadOnlyList<Caution> OfEveryDose { get; } = [MethodsDiffer, Retest, Manure, Dust];

    /// <summary>What goes with a dose of a material.</summary>
    public static IReadOnlyList<Caution> Of(LimingMaterial material) => material.Form switch
    {
        LimeForm.Oxide => [Caustic, Quicklime],
        LimeForm.Hydroxide => [Caustic],
        _ when material.IsTooStrongForACarbonate => [Caustic],
        _ => [],
    };
}
