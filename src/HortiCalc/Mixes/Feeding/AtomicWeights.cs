namespace HortiCalc.Mixes;

/// <summary>
/// Atomic weights in grams per mole, abridged to five digits: <see cref="FeedingSources.AtomicWeights"/>. Where the weight varies in nature the
/// conventional one is taken, as for H, B, C, N, O, Mg, S and Cl.
/// </summary>
internal static class AtomicWeights
{
    private static readonly Dictionary<string, double> GramsPerMole = new(StringComparer.Ordinal)
    {
        ["H"] = 1.008,
        ["B"] = 10.81,
        ["C"] = 12.011,
        ["N"] = 14.007,
        ["O"] = 15.999,
        ["Na"] = 22.990,
        ["Mg"] = 24.305,
        ["Si"] = 28.085,
        ["P"] = 30.974,
        ["S"] = 32.06,
        ["Cl"] = 35.45,
        ["K"] = 39.098,
        ["Ca"] = 40.078,
        ["Mn"] = 54.938,
        ["Fe"] = 55.845,
        ["Cu"] = 63.546,
        ["Zn"] = 65.38,
        ["Mo"] = 95.95,
    };

    public static bool Knows(string symbol) => GramsPerMole.ContainsKey(symbol);

    public static double Of(string symbol) => GramsPerMole[symbol];

    public static double Of(NutrientElement element) => GramsPerMole[Symbol(element)];

    public static string Symbol(NutrientElement element) => element switch
    {
        NutrientElement.Nitrogen => "N",
        NutrientElement.Phosphorus => "P",
        NutrientElement.Potassium => "K",
        NutrientElement.Calcium => "Ca",
        NutrientElement.Magnesium => "Mg",
        NutrientElement.Sulfur => "S",
        NutrientElement.Iron => "Fe",
        NutrientElement.Manganese => "Mn",
        NutrientElement.Zinc => "Zn",
        NutrientElement.Copper => "Cu",
        NutrientElement.Boron => "B",
        NutrientElement.Molybdenum => "Mo",
        NutrientElement.Chlorine => "Cl",
        _ => "Na",
    };
}
