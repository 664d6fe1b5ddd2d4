namespace HortiCalc.Soil;

/// <summary>Molar masses in grams per mole, from the standard atomic weights in <see cref="LimeSources.AtomicWeights"/>.</summary>
internal static class LimeChemistry
{
    public const double Magnesium = 24.3050;
    public const double CalciumCarbonate = Calcium + Carbonate;
    public const double MagnesiumCarbonate = Magnesium + Carbonate;
    public const double Dolomite = CalciumCarbonate + MagnesiumCarbonate;
    public const double CalciumHydroxide = Calcium + 2 * Hydroxide;
    public const double MagnesiumHydroxide = Magnesium + 2 * Hydroxide;
    public const double CalciumOxide = Calcium + Oxygen;
    public const double MagnesiumOxide = Magnesium + Oxygen;

    /// <summary>Calcium carbonate that neutralises as much as calcium oxide, by mass: 1.785.</summary>
    public const double CarbonatePerOxide = CalciumCarbonate / CalciumOxide;

    private const double Calcium = 40.078;
    private const double Carbon = 12.0107;
    private const double Oxygen = 15.9994;
    private const double Hydrogen = 1.00794;
    private const double Carbonate = Carbon + 3 * Oxygen;
    private const double Hydroxide = Oxygen + Hydrogen;
}
