using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>Products as tables print them: single fertilisers, salts for nutrient solutions, and organic materials.</summary>
/// <remarks>
/// The average grade where the source prints a range. The organic list heads its columns N, P, K and is read as N, P₂O₅, K₂O, as labels count; how much of
/// their nitrogen is released it does not say, so that a product made with a share of your own is better to plan with. The label goes before any of these.
/// </remarks>
public static class Fertilizers
{
    /// <summary>Every product there is, table by table.</summary>
    public static IReadOnlyList<Fertilizer> All { get; } = ValueList<Fertilizer>.Of(
    [
        Ifa("Ammonia", 82.2, 0, 0, 0),
        Ifa("Urea", 46, 0, 0, 0),
        Ifa("Ammonium nitrate", 33.5, 0, 0, 0),
        Ifa("Calcium ammonium nitrate", 27, 0, 0, 0),
        Ifa("Urea ammonium nitrate", 30, 0, 0, 0),
        Ifa("Ammonium chloride", 25, 0, 0, 0),
        Ifa("Ammonium sulphate", 21, 0, 0, 24),
        Ifa("Phosphate rock", 0, 30.9, 0, 0),
        Ifa("MAP", 11, 52, 0, 0),
        Ifa("DAP", 18, 46, 0, 0),
        Ifa("TSP", 0, 46, 0, 0),
        Ifa("SSP", 0, 15, 0, 12),
        PotassiumChloride(),
        Ifa("Potassium sulphate", 0, 0, 50, 18),
        Ifa("Sulphur", 0, 0, 0, 100),
        Salt("Calcium nitrate, greenhouse", (Nutrient.Nitrogen, 15), (Nutrient.Calcium, 20)),
        Salt("Calcium chloride, technical", (Nutrient.Calcium, 27), (Nutrient.Chloride, 48)),
        Salt("Potassium nitrate, greenhouse", (Nutrient.Nitrogen, 13), (Nutrient.Potassium, 38)),
        Salt("FeEDTA", (Nutrient.Iron, 13)),
        Salt("FeDTPA", (Nutrient.Iron, 11)),
        Salt("Mono-ammonium phosphate, technical", (Nutrient.Nitrogen, 12), (Nutrient.Phosphorus, 27)),
        Salt("Mono-potassium phosphate, technical", (Nutrient.Phosphorus, 22), (Nutrient.Potassium, 28)),
        Salt("Ammonium nitrate fertiliser grade", (Nutrient.Nitrogen, 35)),
        Salt("Potassium sulphate greenhouse", (Nutrient.Potassium, 42), (Nutrient.Sulfur, 17)),
        Salt("Potassium chloride, pure", (Nutrient.Potassium, 52), (Nutrient.Chloride, 48)),
        Salt("Magnesium sulphate (Epsom salts)", (Nutrient.Magnesium, 10), (Nutrient.Sulfur, 13)),
        Salt("Magnesium nitrate, technical", (Nutrient.Nitrogen, 11), (Nutrient.Magnesium, 9.7)),
        Salt("Manganese sulphate tetrahydrate", (Nutrient.Manganese, 24.6)),
        Salt("Zinc sulphate heptahydrate", (Nutrient.Zinc, 22.7)),
        Organic("Blood", 10, 1.5, 0),
        Organic("Fish scrap", 9, 7, 0),
        Organic("Guano, bat", 6, 9, 3),
        Organic("Guano, bird", 13, 11, 3),
        Organic("Kelp or seaweed", 1, 0.5, 9),
        Organic("Bone meal, raw", 4, 22, 0),
        Organic("Bone meal, steamed", 2, 27, 0),
        Organic("Cocoa shell", 2.5, 1, 3),
        Organic("Cotton seed meal", 6, 2.5, 2),
        Organic("Hoof and horn meal", 14, 0, 0),
        Organic("Chicken manure", 0.9, 0.5, 0.8),
        Organic("Horse manure", 0.6, 0.3, 0.6),
        Organic("Sheep manure", 0.9, 0.5, 0.8),
        Organic("Swine manure", 0.6, 0.5, 0.4),
        Organic("Mushroom manure (spent)", 1, 1, 1),
        Organic("Oyster shells", 0.2, 0.3, 0),
        Organic("Peat (reed or sedge)", 2, 0.3, 0.3),
        Organic("Rice hulls (ground)", 0.5, 0.2, 0.5),
        Organic("Sewage sludge", 2, 1, 1),
        Organic("Sewage (activated)", 6, 5, 0),
        Organic("Cocoa tankage", 4, 1.5, 2),
        Organic("Garbage tankage", 3, 3, 1),
        Organic("Process tankage", 8, 2, 0),
        Organic("Wood ashes", 0, 2, 6),
    ]);

    /// <summary>Finds a product by its name.</summary>
    /// <param name="name">The name as its table prints it, capitals or not: <c>Urea</c>.</param>
    /// <returns>The product.</returns>
    /// <exception cref="ArgumentException">There is no such product, or the name is empty.</exception>
    public static Fertilizer Named(string name)
    {
        Guard.NotBlank(name);
        return All.FirstOrDefault(product => product.Name.Equals(name, StringComparison.OrdinalIgnoreCase))
            ?? throw new ArgumentException($"name was '{name}'; allowed: {string.Join("; ", All.Select(product => product.Name))}.", nameof(name));
    }

    private static Fertilizer Ifa(string name, double nitrogen, double phosphate, double potash, double sulfur) => Made(
        name,
        NutrientSources.Ifa,
        (Nutrient.Nitrogen, nitrogen),
        (Nutrient.Phosphorus, phosphate * OxideFactors.MolarMass.ElementPerOxide(Oxide.Phosphate)),
        (Nutrient.Potassium, potash * OxideFactors.MolarMass.ElementPerOxide(Oxide.Potash)),
        (Nutrient.Sulfur, sulfur));

    // The table prints 60 % K₂O and no chloride, which comes with the potassium, one to one by moles.
    private static Fertilizer PotassiumChloride()
    {
        double potassium = 60 * OxideFactors.MolarMass.ElementPerOxide(Oxide.Potash);
        return Made(
            "Potassium chloride",
            NutrientSources.Ifa,
            (Nutrient.Potassium, potassium),
            (Nutrient.Chloride, potassium * Ion.Chloride.GramsPerEquivalent / Ion.Potassium.GramsPerEquivalent));
    }

    private static Fertilizer Salt(string name, params (Nutrient Nutrient, double Percent)[] parts) => Made(name, NutrientSources.NewZealandSalts, parts);

    private static Fertilizer Organic(string name, double nitrogen, double phosphate, double potash) => Fertilizer.OfGrade(
        name, MassFraction.FromPercent(nitrogen), MassFraction.FromPercent(phosphate), MassFraction.FromPercent(potash), NutrientSources.TexasOrganics);

    private static Fertilizer Made(string name, Source source, params (Nutrient Nutrient, double Percent)[] parts) => new(
        name,
        [.. parts.Where(part => part.Percent > 0).Select(part => new NutrientContent(part.Nutrient, MassFraction.FromPercent(part.Percent)))],
        source);
}
