using UnitsNet;

namespace HortiCalc.Plants;

/// <summary>Minimum, optimum and maximum of 27 vegetables, a magazine.</summary>
internal static class MagazineGerminationRanges
{
    public static readonly GerminationRange[] Rows =
    [
        Row("asparagus", "Asparagus", 50, null, null, 73, 95),
        Row("bean, lima", "Beans (lima)", 60, null, null, 80, 85),
        Row("bean, snap", "Beans (snap)", 60, null, null, 85, 95),
        Row("beet", "Beets", 40, null, null, 85, 95),
        Row("broccoli", "Broccoli", 40, null, null, 85, 95),
        Row("cabbage", "Cabbage", 40, null, null, 85, 95),
        Row("carrot", "Carrots", 40, null, null, 80, 95),
        Row("cauliflower", "Cauliflower", 40, null, null, 80, 95),
        Row("celery", "Celery", 40, null, null, 80, 95),
        Row("cucumber", "Cucumbers", 60, null, null, 95, 105),
        Row("eggplant", "Eggplant", 60, null, null, 85, 95),
        Row("endive", "Endive", 32, null, null, 75, 75, "the optimum is printed the same as the maximum"),
        Row("lettuce", "Lettuce", 32, null, null, 75, 75, "the optimum is printed the same as the maximum"),
        Row("melon", "Melons", 60, null, null, 95, 105),
        Row("okra", "Okra", 60, null, null, 95, 105),
        Row("onion", "Onions", 32, null, null, 80, 95),
        Row("parsnip", "Parsnips", 32, null, null, 70, 85),
        Row("pea", "Peas", 40, null, null, 75, 85),
        Row("pepper", "Peppers", 60, null, null, 75, 85),
        Row("pumpkin", "Pumpkins", 60, null, null, 95, 105),
        Row("radish", "Radishes", 40, null, null, 85, 95),
        Row("spinach", "Spinach", 32, null, null, 70, 75),
        Row("squash", "Squash", 60, null, null, 95, 105),
        Row("corn, sweet", "Sweet corn", 50, null, null, 85, 105),
        Row("chard", "Swiss chard", 40, null, null, 85, 95),
        Row("tomato", "Tomatoes", 50, null, null, 85, 95),
        Row("turnip", "Turnips", 40, null, null, 85, 105),
    ];

    private static GerminationRange Row(
        string crop, string printedCrop, double? minimum, double? optimumLow, double? optimumHigh, double? optimum, double? maximum, string? doubt = null) =>
        new(crop, printedCrop, GerminationSources.Magazine, At(minimum), At(optimumLow), At(optimumHigh), At(optimum), At(maximum), doubt);

    private static Temperature? At(double? value) => value is double degrees ? Temperature.FromDegreesFahrenheit(degrees) : null;
}
