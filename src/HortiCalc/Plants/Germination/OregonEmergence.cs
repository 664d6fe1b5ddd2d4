namespace HortiCalc.Plants;

/// <summary>Days to emergence of 11 crops as printed by Oregon: the part of the table that could be read.</summary>
/// <remarks>The last cell of muskmelon could not be read and is left out.</remarks>
internal static class OregonEmergence
{
    public static readonly EmergenceTable[] Rows =
    [
        EmergencePrint.Row("asparagus", "Asparagus", "NG NG 53 24 15 10 11 19 28", GerminationSources.Oregon),
        EmergencePrint.Row("bean, snap", "Bean", "NG NG NG 16 11 8 6 6 NG", GerminationSources.Oregon),
        EmergencePrint.Row("beet", "Beet", "- 42 17 10 6 5 4 4 -", GerminationSources.Oregon),
        EmergencePrint.Row("cabbage", "Cabbage", "- - 15 9 6 4 3 - -", GerminationSources.Oregon),
        EmergencePrint.Row("carrot", "Carrot", "NG 51 17 10 7 6 6 8 NG", GerminationSources.Oregon),
        EmergencePrint.Row("cauliflower", "Cauliflower", "- - 19 10 6 5 4 - -", GerminationSources.Oregon),
        EmergencePrint.Row("corn, sweet", "Corn", "NG NG 22 12 7 4 4 3 NG", GerminationSources.Oregon),
        EmergencePrint.Row("cucumber", "Cucumber", "NG NG NG 13 6 4 3 3 -", GerminationSources.Oregon),
        EmergencePrint.Row("eggplant", "Eggplant", "- - - 13 8 5 - - -", GerminationSources.Oregon),
        EmergencePrint.Row("lettuce", "Lettuce", "49 15 7 4 3 2 2 NG NG", GerminationSources.Oregon),
        EmergencePrint.Row("muskmelon", "Muskmelon", "- - - - 8 4 3 -", GerminationSources.Oregon),
    ];
}
