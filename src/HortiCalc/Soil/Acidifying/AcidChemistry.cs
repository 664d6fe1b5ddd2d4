namespace HortiCalc.Soil;

/// <summary>Molar masses in grams per mole, from the standard atomic weights in <see cref="LimeSources.AtomicWeights"/>.</summary>
internal static class AcidChemistry
{
    public const double Sulfur = 32.066;
    public const double Water = 2 * Hydrogen + Oxygen;
    public const double AluminiumSulfate = 2 * Aluminium + 3 * Sulfate;
    public const double IronSulfate = Iron + Sulfate;

    private const double Hydrogen = 1.00794;
    private const double Oxygen = 15.9994;
    private const double Aluminium = 26.981538;
    private const double Iron = 55.845;
    private const double Sulfate = Sulfur + 4 * Oxygen;

    /// <summary>Calcium carbonate neutralised per mass of a compound of which one mole gives so many moles of acid; a carbonate takes two.</summary>
    public static double CarbonatePerMass(double gramsPerMole, double acidPerMole) => LimeChemistry.CalciumCarbonate * acidPerMole / 2 / gramsPerMole;
}
