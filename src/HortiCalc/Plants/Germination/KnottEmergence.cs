namespace HortiCalc.Plants;

/// <summary>Days to emergence of 24 crops, the whole table of the handbook.</summary>
internal static class KnottEmergence
{
    public static readonly EmergenceTable[] Rows =
    [
        EmergencePrint.Row("asparagus", "Asparagus", "NG NG 53 24 15 10 12 20 28", GerminationSources.Knott),
        EmergencePrint.Row("bean, lima", "Bean, lima", "- - NG 31 18 7 7 NG -", GerminationSources.Knott),
        EmergencePrint.Row("bean, snap", "Bean snap", "NG NG NG 16 11 8 6 6 NG", GerminationSources.Knott),
        EmergencePrint.Row("beet", "Beet", "- 42 17 10 6 5 5 5 -", GerminationSources.Knott),
        EmergencePrint.Row("cabbage", "Cabbage", "- - 15 9 6 5 4 - -", GerminationSources.Knott),
        EmergencePrint.Row("carrot", "Carrot", "NG 51 17 10 7 6 6 9 NG", GerminationSources.Knott),
        EmergencePrint.Row("cauliflower", "Cauliflower", "- - 20 10 6 5 5 - -", GerminationSources.Knott),
        EmergencePrint.Row("celery", "Celery", "NG 41 16 12 7 NG NG NG -", GerminationSources.Knott),
        EmergencePrint.Row("corn, sweet", "Corn, sweet", "NG NG 22 12 7 4 4 3 NG", GerminationSources.Knott),
        EmergencePrint.Row("cucumber", "Cucumber", "NG NG NG 13 6 4 3 3 -", GerminationSources.Knott),
        EmergencePrint.Row("eggplant", "Eggplant", "- - - - 13 8 5 - -", GerminationSources.Knott),
        EmergencePrint.Row("lettuce", "Lettuce", "49 15 7 4 3 2 3 NG NG", GerminationSources.Knott),
        EmergencePrint.Row("muskmelon", "Muskmelon", "- - - - 8 4 3 - -", GerminationSources.Knott),
        EmergencePrint.Row("okra", "Okra", "NG NG NG 27 17 13 7 6 7", GerminationSources.Knott),
        EmergencePrint.Row("onion", "Onion", "136 31 13 7 5 4 4 13 NG", GerminationSources.Knott),
        EmergencePrint.Row("parsley", "Parsley", "- - 29 17 14 13 12 - -", GerminationSources.Knott),
        EmergencePrint.Row("parsnip", "Parsnip", "172 57 27 19 14 15 32 NG NG", GerminationSources.Knott),
        EmergencePrint.Row("pea", "Pea", "- 36 14 9 8 6 6 - -", GerminationSources.Knott),
        EmergencePrint.Row("pepper", "Pepper", "NG NG NG 25 13 8 8 9 NG", GerminationSources.Knott),
        EmergencePrint.Row("radish", "Radish", "NG 29 11 6 4 4 3 - -", GerminationSources.Knott),
        EmergencePrint.Row("spinach", "Spinach", "63 23 12 7 6 5 6 NG NG", GerminationSources.Knott),
        EmergencePrint.Row("tomato", "Tomato", "NG NG 43 14 8 6 6 9 NG", GerminationSources.Knott),
        EmergencePrint.Row("turnip", "Turnip", "NG NG 5 3 2 1 1 1 3", GerminationSources.Knott),
        EmergencePrint.Row("watermelon", "Watermelon", "- NG - - 12 5 4 3 -", GerminationSources.Knott),
    ];
}
