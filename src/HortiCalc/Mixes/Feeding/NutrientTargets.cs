using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Published targets for nutrient solutions, in milligrams of the element per litre as printed.</summary>
public static class NutrientTargets
{
    /// <summary>Leafy greens by Resh, as a grower quotes him.</summary>
    public static NutrientTarget LeafyGreensResh { get; } = Make(
        "leafy-greens-resh",
        "leafy greens, Resh",
        FeedingSources.LeafyGreens,
        (NutrientElement.Nitrogen, 165, 200),
        (NutrientElement.Phosphorus, 50, 50),
        (NutrientElement.Potassium, 150, 210),
        (NutrientElement.Calcium, 150, 200),
        (NutrientElement.Magnesium, 40, 60),
        (NutrientElement.Iron, 5, 5),
        (NutrientElement.Manganese, 0.5, 0.5),
        (NutrientElement.Zinc, 0.05, 0.15),
        (NutrientElement.Boron, 0.3, 0.5),
        (NutrientElement.Copper, 0.03, 0.15),
        (NutrientElement.Molybdenum, 0.02, 0.05));

    /// <summary>Leafy greens: the span of rates observed in use, by the same grower.</summary>
    public static NutrientTarget LeafyGreensObserved { get; } = Make(
        "leafy-greens-observed",
        "leafy greens, rates observed",
        FeedingSources.LeafyGreens,
        (NutrientElement.Nitrogen, 125, 200),
        (NutrientElement.Phosphorus, 15, 90),
        (NutrientElement.Potassium, 80, 350),
        (NutrientElement.Calcium, 38, 220),
        (NutrientElement.Magnesium, 14, 96),
        (NutrientElement.Iron, 1, 10),
        (NutrientElement.Manganese, 0.25, 1),
        (NutrientElement.Zinc, 0.1, 2.5),
        (NutrientElement.Boron, 0.14, 1.5),
        (NutrientElement.Copper, 0.023, 0.13),
        (NutrientElement.Molybdenum, 0.024, 0.075));

    /// <summary>Leafy greens by Cornell, as a grower quotes it.</summary>
    public static NutrientTarget LeafyGreensCornell { get; } = Make(
        "leafy-greens-cornell",
        "leafy greens, Cornell",
        FeedingSources.LeafyGreens,
        (NutrientElement.Nitrogen, 210, 210),
        (NutrientElement.Phosphorus, 31, 31),
        (NutrientElement.Potassium, 235, 235),
        (NutrientElement.Calcium, 200, 200),
        (NutrientElement.Magnesium, 49, 49),
        (NutrientElement.Sulfur, 64, 64),
        (NutrientElement.Iron, 4, 4),
        (NutrientElement.Manganese, 0.5, 0.5),
        (NutrientElement.Zinc, 0.1, 0.1),
        (NutrientElement.Boron, 0.5, 0.5),
        (NutrientElement.Copper, 0.1, 0.1),
        (NutrientElement.Molybdenum, 0.01, 0.01));

    /// <summary>Leafy greens by the University of Arizona, as a grower quotes it; it looks like that university's recipe for tomatoes.</summary>
    public static NutrientTarget LeafyGreensArizona { get; } = Make(
        "leafy-greens-arizona",
        "leafy greens, University of Arizona",
        FeedingSources.LeafyGreens,
        (NutrientElement.Nitrogen, 189, 189),
        (NutrientElement.Phosphorus, 39, 39),
        (NutrientElement.Potassium, 341, 341),
        (NutrientElement.Calcium, 170, 170),
        (NutrientElement.Magnesium, 48, 48),
        (NutrientElement.Iron, 2, 2),
        (NutrientElement.Manganese, 0.55, 0.55),
        (NutrientElement.Zinc, 0.33, 0.33),
        (NutrientElement.Boron, 0.28, 0.28),
        (NutrientElement.Copper, 0.05, 0.05),
        (NutrientElement.Molybdenum, 0.05, 0.05));

    /// <summary>Herbs by the modified recipe of Sonneveld, Mattson and Peters.</summary>
    public static NutrientTarget Herbs { get; } = Make(
        "herbs-modified-sonneveld",
        "herbs, modified Sonneveld",
        FeedingSources.Herbs,
        (NutrientElement.Nitrogen, 150, 150),
        (NutrientElement.Phosphorus, 31, 31),
        (NutrientElement.Potassium, 210, 210),
        (NutrientElement.Calcium, 90, 90),
        (NutrientElement.Magnesium, 24, 24),
        (NutrientElement.Iron, 1, 1),
        (NutrientElement.Manganese, 0.25, 0.25),
        (NutrientElement.Zinc, 0.13, 0.13),
        (NutrientElement.Copper, 0.023, 0.023),
        (NutrientElement.Molybdenum, 0.024, 0.024),
        (NutrientElement.Boron, 0.16, 0.16));

    /// <summary>All of them.</summary>
    public static IReadOnlyList<NutrientTarget> All { get; } = ValueList<NutrientTarget>.Of(
        [LeafyGreensResh, LeafyGreensObserved, LeafyGreensCornell, LeafyGreensArizona, Herbs]);

    private static NutrientTarget Make(string key, string name, Source source, params (NutrientElement Element, double Low, double High)[] ranges) => new(
        key,
        name,
        source,
        [
            .. ranges.Select(range => new NutrientRange(
                range.Element, MassConcentration.FromMilligramsPerLiter(range.Low), MassConcentration.FromMilligramsPerLiter(range.High))),
        ]);
}
