using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>What to take care of when acidifying.</summary>
internal static class AcidCautions
{
    public static Caution NotNeeded { get; } = new(
        "acid.not-needed",
        CautionLevel.Note,
        "The soil is at or below the target pH already; nothing is needed to acidify it.",
        Source.CommonPractice("acid-only-above-target", "acidify only a soil whose pH is above the target"));

    public static Caution MethodsDiffer { get; } = new(
        "acid.methods-differ",
        CautionLevel.Note,
        "Published rates of sulfur for one change of pH differ several times over, because they assume other soils and depths; "
            + "add little at a time and test between.",
        Source.CommonPractice("acid-methods-compared", "rates of sulfur tables for one soil, compared"));

    public static Caution Retest { get; } = new(
        "acid.retest",
        CautionLevel.Note,
        "Test again before adding more, six to eight weeks after the first at the soonest: bacteria need that long in warm, moist soil, and longer in the cold.",
        AcidSources.GardenSulfurTime);

    public static Caution OverAcidifying { get; } = new(
        "acid.over-acidifying",
        CautionLevel.Care,
        "Soil made too acid harms plants: below pH 5 nutrients run short and aluminium turns toxic; err on the small side, in several small additions.",
        AcidSources.AluminiumLabel);

    public static Caution FizzTest { get; } = new(
        "acid.fizz-test",
        CautionLevel.Note,
        "The rate is for a soil without free lime: if vinegar makes the soil fizz, it cannot realistically be acidified.",
        AcidSources.Rhs);

    public static Caution FreeCarbonate { get; } = new(
        "acid.free-carbonate",
        CautionLevel.Care,
        "The soil holds free carbonate, and until all of it is dissolved the pH does not move: it may not be worth it; "
            + "grow acid-loving plants in containers, or plants that suit the soil.",
        AcidSources.FreeCarbonate);

    public static Caution Laboratory { get; } = new(
        "acid.laboratory",
        CautionLevel.Note,
        "A licensed laboratory can measure how much acid this soil takes, and its free lime; its recommendation goes before any table.",
        Source.CommonPractice("acid-laboratory", "a laboratory's recommendation goes before a general table"));

    public static Caution Ignition { get; } = new(
        "acid.sulfur-ignition",
        CautionLevel.Danger,
        "Sulfur is a flammable solid (H228) and its dust can explode in air: keep it from flames, sparks and oxidisers such as nitrates and chlorates; "
            + "burning it gives sulfur dioxide.",
        AcidSources.SulfurDust);

    public static Caution SulfurIrritates { get; } = new(
        "acid.sulfur-irritates",
        CautionLevel.Danger,
        "Sulfur powder irritates skin and eyes (H315, H319): wear gloves, goggles and a dust mask, spread it in still weather, and rinse eyes for 15 minutes.",
        AcidSources.SulfurDataSheet);

    public static Caution Aluminium { get; } = new(
        "acid.aluminium",
        CautionLevel.Care,
        "Aluminium sulfate brings aluminium that is toxic to many plants and builds up: use it for hydrangeas only, not over large areas.",
        AcidSources.Illinois);

    public static Caution SulfateIrritates { get; } = new(
        "acid.sulfate-irritates",
        CautionLevel.Danger,
        "Aluminium and iron sulfate irritate skin and can damage eyes: wear gloves and goggles, raise no dust, keep children and animals away, "
            + "and follow the product's label.",
        Source.CommonPractice("acid-sulfates", "sulfate salts that turn acid in water are kept from skin and eyes"));

    public static Caution IronStains { get; } = new(
        "acid.iron-stains",
        CautionLevel.Care,
        "Iron sulfate stains stone, concrete, clothes and skin rust brown; sweep it off before watering, and give no more than is needed.",
        Source.CommonPractice("acid-iron-stains", "iron sulfate stains what it falls on"));

    public static Caution IronAndPhosphorus { get; } = new(
        "acid.iron-phosphorus",
        CautionLevel.Note,
        "Iron sulfate in large quantities can interfere with the phosphorus that plants find.",
        AcidSources.Rhs);

    public static Caution Nitrogen { get; } = new(
        "acid.nitrogen",
        CautionLevel.Care,
        "An ammonium fertiliser feeds nitrogen as well as acid: never give more of it than the plants need nitrogen, and never with lime.",
        Source.CommonPractice("acid-nitrogen", "fertiliser is given by the need for nitrogen, whatever its acidity"));

    public static Caution NotLinear { get; } = new(
        "acid.medium-not-linear",
        CautionLevel.Note,
        "The pH of a potting medium does not rise in proportion to the lime: twice the rate does not give a second unit; mix a trial batch and test it.",
        MediumSources.TexasQuoted);

    public static Caution MediumTrial { get; } = new(
        "acid.medium-trial",
        CautionLevel.Note,
        "In a nursery trial only one of six materials kept the pH of a peat and bark medium below the untreated one for 14 weeks of alkaline water; "
            + "treat the water first.",
        MediumSources.SubstrateTrial);

    /// <summary>What goes with every dose that is not zero.</summary>
    public static IReadOnlyList<Caution> OfEveryDose { get; } = [MethodsDiffer, Retest, OverAcidifying, FizzTest, Laboratory];

    /// <summary>What goes with a dose of a material.</summary>
    public static IReadOnlyList<Caution> Of(AcidifyingMaterial material) => material.Form switch
    {
        AcidForm.Sulfur => [Ignition, SulfurIrritates],
        AcidForm.AluminiumSulfate => [Aluminium, SulfateIrritates],
        AcidForm.IronSulfate => [IronStains, IronAndPhosphorus, SulfateIrritates],
        _ => [Nitrogen],
    };
}
