using UnitsNet;

namespace HortiCalc.Plants;

/// <summary>Minimum, optimum and maximum of 24 vegetables, Oregon.</summary>
internal static class OregonGerminationRanges
{
    public static readonly GerminationRange[] Rows =
    [
        Row("asparagus", "Asparagus", 50, 60, 85, 75, 95),
        Row("bean, snap", "Bean", 60, 60, 85, 80, 95),
        Row("beet", "Beet", 40, 50, 85, 85, 95),
        Row("cabbage", "Cabbage", 40, 45, 95, 85, 100),
        Row("carrot", "Carrot", 40, 45, 85, 80, 95),
        Row("cauliflower", "Cauliflower", 40, 45, 85, 80, 100),
        Row("chard", "Chard, Swiss", 40, 50, 85, 85, 95),
        Row("corn, sweet", "Corn", 50, 60, 95, 95, 105),
        Row("cucumber", "Cucumber", 60, 60, 95, 95, 105),
        Row("eggplant", "Eggplant", 60, 75, 90, 85, 95),
        Row("lettuce", "Lettuce", 35, 40, 80, 75, 95),
        Row("muskmelon", "Muskmelon", 60, 75, 95, 90, 100),
        Row("onion", "Onion", 35, 50, 95, 75, 95),
        Row("parsley", "Parsley", 40, 50, 85, 75, 90),
        Row("parsnip", "Parsnip", 35, 50, 70, 65, 85),
        Row("pea", "Pea", 40, 40, 75, 75, 85),
        Row("pepper", "Pepper", 60, 65, 95, 85, 95),
        Row("pumpkin", "Pumpkin", 60, 70, 90, 95, 100, "the optimum lies above its own optimum range"),
        Row("radish", "Radish", 40, 45, 90, 85, 95),
        Row("spinach", "Spinach", 35, 45, 75, 70, 85),
        Row("squash", "Squash", 60, 70, 95, 95, 100),
        Row("tomato", "Tomato", 50, 60, 85, 85, 95),
        Row("turnip", "Turnip", 40, 60, 105, 85, 105),
        Row("watermelon", "Watermelon", 60, 70, 95, 95, 105),
    ];

    private static GerminationRange Row(
        string crop, string printedCrop, double? minimum, double? optimumLow, double? optimumHigh, double? optimum, double? maximum, string? doubt = null) =>
        new(crop, printedCrop, GerminationSources.Oregon, At(minimum), At(optimumLow), At(optimumHigh), At(optimum), At(maximum), doubt);

    private static Temperature? At(double? value) => value is double degrees ? Temperature.FromDegreesFahrenheit(degrees) : null;
}
