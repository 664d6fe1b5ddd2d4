using UnitsNet;

namespace HortiCalc.Plants;

/// <summary>Workable and best ranges of vegetables, best ranges of herbs and flowers, Sacramento Valley.</summary>
internal static class CalifornianGerminationRanges
{
    public static readonly GerminationRange[] Rows =
    [
        Row("arugula", "Arugula", 40, 50, 55, null, 70),
        Row("bean", "Beans", 60, 75, 85, null, 95),
        Row("beet", "Beets", 45, 65, 85, null, 95),
        Row("carrot", "Carrots", 45, 65, 85, null, 95),
        Row("chard", "Chard", 50, 65, 85, null, 90),
        Row("corn", "Corn", 55, 75, 85, null, 95),
        Row("cucumber", "Cucumber", 60, 80, 90, null, 95),
        Row("gourd", "Gourd", 70, 80, 90, null, 100),
        Row("lettuce", "Lettuce", 45, 60, 65, null, 75),
        Row("melon", "Melons", 70, 85, 95, null, 100),
        Row("mustard", "Mustard", 50, 60, 70, null, 75),
        Row("okra", "Okra", 70, 80, 95, null, 100),
        Row("pea", "Peas", 40, 65, 75, null, 85),
        Row("radish", "Radish", 45, 75, 85, null, 95),
        Row("spinach", "Spinach", 50, 65, 80, null, 85),
        Row("squash", "Squash", 60, 80, 95, null, 100),
        Row("chicory", "Radicchio/Chicory", 45, 65, 75, null, 85),
        Row("cilantro", "Cilantro", null, 55, 65, null, null),
        Row("dill", "Dill", null, 60, 70, null, null),
        Row("parsley", "Parsley", null, 60, 65, null, null),
        Row("chamomile", "Chamomile", null, 65, 75, null, null),
        Row("fennel", "Fennel", null, 65, 75, null, null),
        Row("basil", "Basil", null, 75, 85, null, null),
        Row("flower, hardy annual", "Hardy annual", null, 50, 70, null, null),
        Row("flower, tender annual", "Tender annual", null, 65, 85, null, null),
    ];

    private static GerminationRange Row(
        string crop, string printedCrop, double? minimum, double? optimumLow, double? optimumHigh, double? optimum, double? maximum) =>
        new(crop, printedCrop, GerminationSources.California, At(minimum), At(optimumLow), At(optimumHigh), At(optimum), At(maximum));

    private static Temperature? At(double? value) => value is double degrees ? Temperature.FromDegreesFahrenheit(degrees) : null;
}
