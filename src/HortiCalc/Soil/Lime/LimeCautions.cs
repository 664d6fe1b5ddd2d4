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
