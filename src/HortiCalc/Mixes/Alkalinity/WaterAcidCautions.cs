using HortiCalc.Evidence;

namespace HortiCalc.Mixes;

/// <summary>What to take care of with acids for water. The codes are stable.</summary>
internal static class WaterAcidCautions
{
    public static readonly Caution IntoWater = new(
        "acid.into-water",
        CautionLevel.Danger,
        "Pour acid into plenty of water, slowly and stirring; never pour water into acid: the heat makes it boil and spit.",
        AlkalinitySources.UniversityOfMassachusetts);

    public static readonly Caution EyesAndSkin = new(
        "acid.eyes-and-skin",
        CautionLevel.Danger,
        "Acid blinds and burns: wear a face shield or goggles, acid-proof gloves and apron, and have water to rinse with at hand.",
        AlkalinitySources.UniversityOfMassachusetts);

    public static readonly Caution Trained = new(
        "acid.trained-users",
        CautionLevel.Danger,
        "Concentrated acids are for people trained in handling them; follow the label, the safety data sheet and local rules on keeping and selling them.",
        AlkalinitySources.UniversityOfMassachusetts);

    public static readonly Caution Fumes = new(
        "acid.nitric-fumes",
        CautionLevel.Danger,
        "Nitric acid gives off poisonous fumes and feeds fire: keep it out of closed rooms and away from anything that burns.",
        AlkalinitySources.UniversityOfMassachusetts);

    public static readonly Caution Sulfuric = new(
        "acid.sulfuric-licensed",
        CautionLevel.Danger,
        "Strong sulfuric acid is among the most dangerous of all: leave it to licensed or trained users; for home use take citric acid.",
        AlkalinitySources.AcidChoices);

    public static readonly Caution MuchPhosphorus = new(
        "acid.much-phosphorus",
        CautionLevel.Care,
        "This much phosphoric acid brings more phosphorus than plants need; an extension service stops at 2.25 fl oz of 75 % acid to 100 gallons, "
        + "17.6 mL to 100 L. Take another acid for the rest.",
        AlkalinitySources.UniversityOfMassachusetts);

    public static readonly Caution PhRises = new(
        "acid.ph-rises-in-air",
        CautionLevel.Note,
        "The pH is that of a closed pipe: as carbon dioxide leaves it rises again, by half a unit and more. The alkalinity stays as it is.",
        AlkalinitySources.Constants);

    public static readonly Caution CitricIsEaten = new(
        "acid.citric-is-eaten",
        CautionLevel.Note,
        "Microbes consume citric acid within days, and the alkalinity it held comes back.",
        AlkalinitySources.Custom);

    public static readonly Caution CheckByMeter = new(
        "acid.check-by-meter",
        CautionLevel.Care,
        "Check pH and alkalinity of the treated water by meter and test kit, first on a bucket; waters change over the year.",
        AlkalinitySources.Bucket);

    public static readonly Caution AlreadyThere = new(
        "acid.already-there",
        CautionLevel.Note,
        "The water is already at or below what is wanted; it needs no acid.",
        AlkalinitySources.Constants);

    /// <summary>What goes with every acid.</summary>
    public static readonly IReadOnlyList<Caution> Always = [IntoWater, EyesAndSkin, Trained, MixCautions.NeverWithAcid];

    // 2.25 fl oz of 75 % acid of density 1.58 to 100 US gallons, in moles per litre.
    private const double MuchPhosphoricMolesPerLitre = 2.25 / 12_800 * 1580 * 0.75 / 97.994;

    public static IReadOnlyList<Caution> For(AcidProduct acid, GasExchange exchange, double molesPerLitre) =>
    [
        .. Always,
        .. acid.Acid switch
        {
            WaterAcid.Nitric => [Fumes],
            WaterAcid.Sulfuric => [Sulfuric],
            WaterAcid.Phosphoric when molesPerLitre > MuchPhosphoricMolesPerLitre => [MuchPhosphorus],
            WaterAcid.Citric => [CitricIsEaten],
            _ => (Caution[])[],
        },
        .. exchange == GasExchange.Closed ? [PhRises] : (Caution[])[],
        CheckByMeter,
    ];
}
