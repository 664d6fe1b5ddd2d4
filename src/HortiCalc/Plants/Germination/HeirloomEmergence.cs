namespace HortiCalc.Plants;

/// <summary>Days to emergence of crops that the handbook does not have, from a seed company.</summary>
internal static class HeirloomEmergence
{
    public static readonly EmergenceTable[] Rows =
    [
        EmergencePrint.Row("artichoke", "Artichoke", "- - - - - 14-21 - - -", GerminationSources.Heirloom),
        EmergencePrint.Row("bean, fava", "Bean, fava", "- - - 7 7 - - - -", GerminationSources.Heirloom),
        EmergencePrint.Row("broccoli", "Broccoli", "- - 20 10 6 5 5 - -", GerminationSources.Heirloom),
        EmergencePrint.Row("pea, southern", "Pea, southern", "- - 14 10 8 7 - - -", GerminationSources.Heirloom),
        EmergencePrint.Row("pumpkin", "Pumpkin", "- - - - 15 6 4 3 -", GerminationSources.Heirloom),
        EmergencePrint.Row("soybean", "Soybean", "NG NG NG NG - 7 7 - NG", GerminationSources.Heirloom),
        EmergencePrint.Row("squash", "Squash", "- - - - 15 6 4 3 -", GerminationSources.Heirloom),
        EmergencePrint.Row("chard", "Swiss chard", "- - 20 15 12 10 7 NG -", GerminationSources.Heirloom),
    ];
}
