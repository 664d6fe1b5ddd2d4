using System.Globalization;
using UnitsNet;

namespace HortiCalc.Plants;

/// <summary>Shares of normal seedlings and days to emergence of 24 crops in the trials of Harrington, as one page reproduces them.</summary>
/// <remarks>
/// A dash stands where the page prints 0 for what is not known (see <see cref="NormalSeedlings"/>) and where it prints no days beside a share.
/// Where it prints no days beside a share of 0, nothing germinates.
/// </remarks>
internal static class HarringtonSeedlings
{
    public static readonly NormalSeedlingTable[] Shares =
    [
        Share("asparagus", "Asparagus", "0 0 61 80 88 95 79 37 -"),
        Share("bean, lima", "Beans, lima", "- - 1 52 82 90 88 2 -"),
        Share("bean, snap", "Beans, snap", "0 0 1 97 90 97 47 39 0"),
        Share("beet", "Beets", "- 53 72 88 90 97 89 35 -"),
        Share("cabbage", "Cabbage", "- 27 78 93 - 99 - - -"),
        Share("carrot", "Carrots", "0 48 93 95 96 96 95 74 0"),
        Share("cauliflower", "Cauliflower", "- - 58 60 - 63 45 - -"),
        Share("celery", "Celery", "0 72 70 40 97 65 0 0 -"),
        Share("cucumber", "Cucumber", "0 0 0 95 99 99 99 99 49"),
        Share("eggplant", "Eggplant", "- - - - 21 53 60 - -"),
        Share("lettuce", "Lettuce", "98 98 98 99 99 99 12 0 0"),
        Share("muskmelon", "Muskmelon", "- - - - 38 94 90 - -"),
        Share("okra", "Okra", "0 0 0 74 89 92 88 85 35"),
        Share("onion", "Onions", "90 98 98 98 99 97 91 73 2"),
        Share("parsley", "Parsley", "- - 63 - 69 64 50 - -"),
        Share("parsnip", "Parsnips", "82 87 79 85 89 77 51 1 0"),
        Share("pea", "Peas", "- 89 94 93 93 94 86 - -"),
        Share("pepper", "Peppers", "0 0 1 70 96 98 95 70 0"),
        Share("radish", "Radish", "0 42 76 97 95 97 95 - -"),
        Share("spinach", "Spinach", "83 96 91 82 52 28 32 0 0"),
        Share("corn, sweet", "Sweet Corn", "0 0 47 97 97 98 91 88 10"),
        Share("tomato", "Tomatoes", "0 0 82 98 98 97 83 46 0"),
        Share("turnip", "Turnips", "1 14 79 98 99 100 99 99 88"),
        Share("watermelon", "Watermelon", "- 0 - 17 94 90 92 96 -"),
    ];

    public static readonly EmergenceTable[] Emergence =
    [
        EmergencePrint.Row("asparagus", "Asparagus", "NG NG 53 24 15 10 12 19 -", GerminationSources.Harrington),
        EmergencePrint.Row("bean, lima", "Beans, lima", "- - - 31 18 7 7 - -", GerminationSources.Harrington),
        EmergencePrint.Row("bean, snap", "Beans, snap", "NG NG - 16 11 8 6 6 NG", GerminationSources.Harrington),
        EmergencePrint.Row("beet", "Beets", "- 42 17 10 6 5 5 5 -", GerminationSources.Harrington),
        EmergencePrint.Row("cabbage", "Cabbage", "- - 15 9 6 5 4 - -", GerminationSources.Harrington),
        EmergencePrint.Row("carrot", "Carrots", "NG 51 17 10 7 6 6 9 NG", GerminationSources.Harrington),
        EmergencePrint.Row("cauliflower", "Cauliflower", "- - 20 10 6 5 5 - -", GerminationSources.Harrington),
        EmergencePrint.Row("celery", "Celery", "NG 41 16 12 7 - NG NG -", GerminationSources.Harrington),
        EmergencePrint.Row("cucumber", "Cucumber", "NG NG NG 13 6 4 3 3 -", GerminationSources.Harrington),
        EmergencePrint.Row("eggplant", "Eggplant", "- - - - 13 8 5 - -", GerminationSources.Harrington),
        EmergencePrint.Row("lettuce", "Lettuce", "49 15 7 4 3 2 3 NG NG", GerminationSources.Harrington),
        EmergencePrint.Row("muskmelon", "Muskmelon", "- - - - 8 4 3 - -", GerminationSources.Harrington),
        EmergencePrint.Row("okra", "Okra", "NG NG NG 27 17 13 7 6 7", GerminationSources.Harrington),
        EmergencePrint.Row("onion", "Onions", "136 31 13 7 5 4 4 13 -", GerminationSources.Harrington),
        EmergencePrint.Row("parsley", "Parsley", "- - 29 17 14 13 12 - -", GerminationSources.Harrington),
        EmergencePrint.Row("parsnip", "Parsnips", "172 57 27 19 14 15 32 - NG", GerminationSources.Harrington),
        EmergencePrint.Row("pea", "Peas", "- 36 14 9 8 6 6 - -", GerminationSources.Harrington),
        EmergencePrint.Row("pepper", "Peppers", "NG NG - 25 13 8 8 9 NG", GerminationSources.Harrington),
        EmergencePrint.Row("radish", "Radish", "NG 29 11 6 4 4 3 - -", GerminationSources.Harrington),
        EmergencePrint.Row("spinach", "Spinach", "63 23 12 7 6 5 6 NG NG", GerminationSources.Harrington),
        EmergencePrint.Row("corn, sweet", "Sweet Corn", "NG NG 22 12 7 4 4 3 -", GerminationSources.Harrington),
        EmergencePrint.Row("tomato", "Tomatoes", "NG NG 43 14 8 6 6 9 NG", GerminationSources.Harrington),
        EmergencePrint.Row("turnip", "Turnips", "- - 5 3 2 1 1 1 3", GerminationSources.Harrington),
        EmergencePrint.Row("watermelon", "Watermelon", "- NG - - 12 5 4 3 -", GerminationSources.Harrington),
    ];

    private static NormalSeedlingTable Share(string crop, string printedCrop, string columns) => new(
        crop,
        printedCrop,
        [.. columns.Split(' ').Select((text, column) => new NormalSeedlingCell(EmergencePrint.At(column), Percent(text)))],
        GerminationSources.Harrington);

    private static Ratio? Percent(string text) => text == "-" ? null : Ratio.FromPercent(double.Parse(text, CultureInfo.InvariantCulture));
}
