using UnitsNet;

namespace HortiCalc.Plants;

/// <summary>Minimum, optimum range and maximum of 14 crops, a textbook.</summary>
internal static class TextbookGerminationRanges
{
    public static readonly GerminationRange[] Rows =
    [
        Row("rice", "Rice", 10, 20, 35, null, 45),
        Row("wheat", "Wheat", 20, 25, 30, null, 40, "the minimum is printed 20 °C, at which wheat is near its optimum"),
        Row("maize", "Maize", 10, 25, 30, null, 40),
        Row("soybean", "Soybean", 10, 25, 30, null, 35),
        Row("tomato", "Tomato", 11, 15, 27, null, 30),
        Row("cucumber", "Cucumber", 18, 25, 30, null, 30),
        Row("eggplant", "Egg plant", 15, 20, 25, null, 33),
        Row("pepper", "Pepper", 15, 20, 30, null, 35),
        Row("pumpkin", "Pumpkin", 15, 20, 25, null, 40),
        Row("watermelon", "Water melon", 15, 25, 30, null, 35, "printed with the botanical name of melon"),
        Row("lettuce", "Lettuce", 4, 15, 20, null, 25),
        Row("carrot", "Carrot", 11, 15, 25, null, 30),
        Row("cabbage", "Cabbage", 8, 15, 30, null, 35),
        Row("spinach", "Spinach", 5, 15, 20, null, 30),
    ];

    private static GerminationRange Row(
        string crop, string printedCrop, double? minimum, double? optimumLow, double? optimumHigh, double? optimum, double? maximum, string? doubt = null) =>
        new(crop, printedCrop, GerminationSources.Textbook, At(minimum), At(optimumLow), At(optimumHigh), At(optimum), At(maximum), doubt);

    private static Temperature? At(double? value) => value is double degrees ? Temperature.FromDegreesCelsius(degrees) : null;
}
