using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Published conductivities for crops, apart by what is measured.</summary>
public static class ConductivityTargets
{
    /// <summary>The feed in hydroponics on pumice; the source prints no unit, the figures are mS/cm.</summary>
    public static IReadOnlyList<ConductivityTarget> Hydroponics { get; } = Make(
        ConductivityBasis.Solution,
        FeedingSources.PumiceConductivity,
        ("Lettuce-loose headed", 0.3, 0.8),
        ("Lettuce-compact headed", 0.6, 1.4),
        ("Tomato", 1.8, 2.8),
        ("Peppers", 1.8, 2.8),
        ("Spinach/collards", 1.8, 3.5),
        ("Strawberries", 1.8, 2.5),
        ("Asparagus", 1.4, 1.8),
        ("Cabbage", 1.4, 2.4),
        ("Eggplant", 1.8, 2.2),
        ("Cauliflower", 1.4, 2.4),
        ("Maize", 1.6, 2.4),
        ("Parsley", 0.8, 1.8),
        ("Okra", 2.0, 2.4),
        ("Pumpkin", 1.4, 2.4),
        ("Cucumber", 1.6, 2.4),
        ("Peas", 1.4, 1.8),
        ("Beans", 1.8, 2.5));

    /// <summary>The saturated extract of the growing medium.</summary>
    public static IReadOnlyList<ConductivityTarget> SaturatedMedia { get; } = Make(
        ConductivityBasis.SaturatedMediaExtract,
        FeedingSources.SaturatedMediaConductivity,
        ("Asparagus", 1.5, 2.0),
        ("Watermelon", 1.5, 2.5),
        ("Carrot", 1.5, 2.0),
        ("Cabbage", 2.0, 3.0),
        ("Cucumber", 2.0, 3.0),
        ("Chrysanthemum", 1.5, 2.5),
        ("Onion", 1.5, 2.0),
        ("Bean", 2.0, 2.5),
        ("Strawberry", 2.0, 2.5),
        ("Lettuce", 1.0, 1.5),
        ("Eggplant", 2.5, 3.0),
        ("Melon", 1.5, 2.5),
        ("Potato", 2.0, 3.0),
        ("Pepper", 2.0, 3.0),
        ("Pea", 1.0, 1.5),
        ("Tomato", 2.5, 5.0),
        ("Celery", 2.0, 2.5),
        ("Marrow", 2.0, 2.5));

    private static ValueList<ConductivityTarget> Make(
        ConductivityBasis basis, Source source, params (string Crop, double Low, double High)[] rows) => ValueList<ConductivityTarget>.Of(
        rows.Select(row => new ConductivityTarget(
            row.Crop,
            basis,
            ElectricConductivity.FromMillisiemensPerCentimeter(row.Low),
            ElectricConductivity.FromMillisiemensPerCentimeter(row.High),
            source)));
}
