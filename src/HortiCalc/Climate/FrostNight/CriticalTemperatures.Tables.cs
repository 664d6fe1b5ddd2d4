using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Climate;

/// <content>The tables, in the degrees in which they are printed.</content>
public static partial class CriticalTemperatures
{
    // The old standard, 10 % kill, 90 % kill, in °F; nothing where the chart is empty. The chart writes a dash for an empty cell.
    private static CriticalTemperature[] MichiganTreeFruit =>
    [
        Kill("Apple", "Silver tip", "silver tip", 16, 15, 2, FrostNightSources.MichiganTreeFruit),
        Kill("Apple", "Green tip", "green tip", 16, 18, 10, FrostNightSources.MichiganTreeFruit),
        Kill("Apple", "Half inch green", "half inch green", 22, 23, 15, FrostNightSources.MichiganTreeFruit),
        Kill("Apple", "Tight cluster", "tight cluster", 27, 27, 21, FrostNightSources.MichiganTreeFruit),
        Kill("Apple", "First pink", "first pink", 27, 28, 24, FrostNightSources.MichiganTreeFruit),
        Kill("Apple", "Full pink", "full pink", 28, 28, 25, FrostNightSources.MichiganTreeFruit),
        Kill("Apple", "First bloom", "first bloom", 28, 28, 25, FrostNightSources.MichiganTreeFruit),
        Kill("Apple", "Full bloom", "full bloom", 29, 28, 25, FrostNightSources.MichiganTreeFruit),
        Kill("Apple", "Post bloom", "post bloom", 29, 28, 25, FrostNightSources.MichiganTreeFruit),
        Kill("Pear", "Bud scales separating", "bud scales separating", 18, 15, 0, FrostNightSources.MichiganTreeFruit),
        Kill("Pear", "Blossom buds exposed", "blossom buds exposed", 23, 20, 6, FrostNightSources.MichiganTreeFruit),
        Kill("Pear", "Tight cluster", "tight cluster", 24, 24, 15, FrostNightSources.MichiganTreeFruit),
        Kill("Pear", "First white", "first white", 28, 25, 19, FrostNightSources.MichiganTreeFruit),
        Kill("Pear", "Full white", "full white", 29, 26, 22, FrostNightSources.MichiganTreeFruit),
        Kill("Pear", "First bloom", "first bloom", 29, 27, 23, FrostNightSources.MichiganTreeFruit),
        Kill("Pear", "Full bloom", "full bloom", 29, 28, 24, FrostNightSources.MichiganTreeFruit),
        Kill("Pear", "Post bloom", "post bloom", 30, 28, 24, FrostNightSources.MichiganTreeFruit),
        Kill("Apricot", "Swollen bud", "swollen bud", null, 15, null, FrostNightSources.MichiganTreeFruit),
        Kill("Apricot", "Tips separate", "tips separate", 23, 20, 0, FrostNightSources.MichiganTreeFruit),
        Kill("Apricot", "Calyx red", "calyx red", null, 22, 9, FrostNightSources.MichiganTreeFruit),
        Kill("Apricot", "First white", "first white", 25, 24, 14, FrostNightSources.MichiganTreeFruit),
        Kill("Apricot", "First bloom", "first bloom", null, 25, 19, FrostNightSources.MichiganTreeFruit),
        Kill("Apricot", "Full bloom", "full bloom", 28, 27, 22, FrostNightSources.MichiganTreeFruit),
        Kill("Apricot", "In the shuck", "in the shuck", null, 27, 24, FrostNightSources.MichiganTreeFruit),
        Kill("Apricot", "Green fruit", "green fruit", 31, 28, 25, FrostNightSources.MichiganTreeFruit),
        Kill("Peach", "Swollen bud", "swollen bud", 23, 18, 1, FrostNightSources.MichiganTreeFruit),
        Kill("Peach", "Calyx green", "calyx green", null, 21, 5, FrostNightSources.MichiganTreeFruit),
        Kill("Peach", "Calyx red", "calyx red", null, 23, 9, FrostNightSources.MichiganTreeFruit),
        Kill("Peach", "First pink", "first pink", 25, 25, 15, FrostNightSources.MichiganTreeFruit),
        Kill("Peach", "First bloom", "first bloom", null, 26, 21, FrostNightSources.MichiganTreeFruit),
        Kill("Peach", "Full bloom", "full bloom", 27, 27, 24, FrostNightSources.MichiganTreeFruit),
        Kill("Peach", "Post bloom", "post bloom", 30, 28, 25, FrostNightSources.MichiganTreeFruit),
        Kill("European plum", "First swelling", "first swelling", null, 14, 0, FrostNightSources.MichiganTreeFruit),
        Kill("European plum", "Side white", "side white", null, 17, 3, FrostNightSources.MichiganTreeFruit),
        Kill("European plum", "Tip green", "tip green", null, 20, 7, FrostNightSources.MichiganTreeFruit),
        Kill("European plum", "Tight cluster", "tight cluster", null, 24, 16, FrostNightSources.MichiganTreeFruit),
        Kill("European plum", "First white", "first white", 23, 26, 22, FrostNightSources.MichiganTreeFruit),
        Kill("European plum", "First bloom", "first bloom", 27, 27, 23, FrostNightSources.MichiganTreeFruit),
        Kill("European plum", "Full bloom", "full bloom", 27, 28, 23, FrostNightSources.MichiganTreeFruit),
        Kill("European plum", "Post bloom", "post bloom", 30, 28, 23, FrostNightSources.MichiganTreeFruit),
        Kill("Sweet cherry", "Swollen bud", "swollen bud", 23, 17, 5, FrostNightSources.MichiganTreeFruit),
        Kill("Sweet cherry", "Side green", "side green", 23, 22, 9, FrostNightSources.MichiganTreeFruit),
        Kill("Sweet cherry", "Green tip", "green tip", 25, 25, 14, FrostNightSources.MichiganTreeFruit),
        Kill("Sweet cherry", "Tight cluster", "tight cluster", 28, 26, 17, FrostNightSources.MichiganTreeFruit),
        Kill("Sweet cherry", "Open cluster", "open cluster", 28, 27, 21, FrostNightSources.MichiganTreeFruit),
        Kill("Sweet cherry", "First white", "first white", 29, 27, 24, FrostNightSources.MichiganTreeFruit),
        Kill("Sweet cherry", "First bloom", "first bloom", 29, 28, 25, FrostNightSources.MichiganTreeFruit),
        Kill("Sweet cherry", "Full bloom", "full bloom", 29, 28, 25, FrostNightSources.MichiganTreeFruit),
        Kill("Sweet cherry", "Post bloom", "post bloom", 30, 28, 25, FrostNightSources.MichiganTreeFruit),
    ];

    // 10 % kill, 90 % kill, in °F, from the same bulletins under the names of another state.
    private static CriticalTemperature[] UtahTreeFruit =>
    [
        Kill("Apple", "Silver Tip", "silver tip", null, 15, 2, FrostNightSources.UtahFactSheet),
        Kill("Apple", "Green Tip", "green tip", null, 18, 10, FrostNightSources.UtahFactSheet),
        Kill("Apple", "Half-Inch Green", "half inch green", null, 23, 15, FrostNightSources.UtahFactSheet),
        Kill("Apple", "Tight Cluster", "tight cluster", null, 27, 21, FrostNightSources.UtahFactSheet),
        Kill("Apple", "First Pink (Pink)", "first pink", null, 28, 24, FrostNightSources.UtahFactSheet),
        Kill("Apple", "Full Pink (Open Cluster)", "full pink", null, 28, 25, FrostNightSources.UtahFactSheet),
        Kill("Apple", "First Bloom (King Bloom)", "first bloom", null, 28, 25, FrostNightSources.UtahFactSheet),
        Kill("Apple", "Full Bloom and Post-bloom", "full bloom", null, 28, 25, FrostNightSources.UtahFactSheet),
        Kill("Pear", "Swollen Bud (Scale Separation)", "bud scales separating", null, 15, 0, FrostNightSources.UtahFactSheet),
        Kill("Pear", "Bud Burst (Blossom Buds Exposed)", "blossom buds exposed", null, 20, 6, FrostNightSources.UtahFactSheet),
        Kill("Pear", "Green Cluster (Tight Cluster)", "tight cluster", null, 24, 15, FrostNightSources.UtahFactSheet),
        Kill("Pear", "White Bud (First White, Popcorn)", "first white", null, 25, 19, FrostNightSources.UtahFactSheet),
        Kill("Pear", "Full White", "full white", null, 26, 22, FrostNightSources.UtahFactSheet),
        Kill("Pear", "First Bloom (King Blossom)", "first bloom", null, 27, 23, FrostNightSources.UtahFactSheet),
        Kill("Pear", "Full Bloom", "full bloom", null, 28, 24, FrostNightSources.UtahFactSheet),
        Kill("Pear", "Petal Fall (Post-bloom)", "post bloom", null, 28, 24, FrostNightSources.UtahFactSheet),
        Kill("Sweet cherry", "Swollen Bud (First Swell)", "swollen bud", null, 17, 5, FrostNightSources.IntermountainCherry),
        Kill("Sweet cherry", "Green Tip (Bud Burst)", "green tip", null, 25, 14, FrostNightSources.IntermountainCherry),
        Kill("Sweet cherry", "Tight Cluster", "tight cluster", null, 26, 17, FrostNightSources.IntermountainCherry),
        Kill("Sweet cherry", "White Bud (First White, Popcorn)", "first white", null, 27, 24, FrostNightSources.IntermountainCherry),
        Kill("Sweet cherry", "First Bloom", "first bloom", null, 28, 25, FrostNightSources.IntermountainCherry),
        Kill("Sweet cherry", "Full Bloom", "full bloom", null, 28, 25, FrostNightSources.IntermountainCherry),
        Kill("Sweet cherry", "Petal Fall (Post Bloom)", "post bloom", null, 28, 25, FrostNightSources.IntermountainCherry),
        Kill("Tart cherry", "Swollen Bud (First Swell)", "swollen bud", null, 15, 0, FrostNightSources.IntermountainCherry),
        Kill("Tart cherry", "Green Tip (Bud Burst)", "green tip", null, 26, 22, FrostNightSources.IntermountainCherry),
        Kill("Tart cherry", "Tight Cluster", "tight cluster", null, 26, 24, FrostNightSources.IntermountainCherry),
        Kill("Tart cherry", "White Bud (First White, Popcorn)", "first white", null, 28, 24, FrostNightSources.IntermountainCherry),
        Kill("Tart cherry", "First Bloom", "first bloom", null, 28, 24, FrostNightSources.IntermountainCherry),
        Kill("Tart cherry", "Full Bloom", "full bloom", null, 28, 25, FrostNightSources.IntermountainCherry),
        Kill("Tart cherry", "Petal Fall (Post Bloom)", "post bloom", null, 28, 25, FrostNightSources.IntermountainCherry),
    ];

    // 10 % kill, 90 % kill, in °F.
    private static CriticalTemperature[] PurdueFruit =>
    [
        Kill("Apple", "Silver tip", "silver tip", null, 15, 2, FrostNightSources.Purdue),
        Kill("Apple", "Green tip", "green tip", null, 18, 10, FrostNightSources.Purdue),
        Kill("Apple", "Half-inch green", "half inch green", null, 23, 15, FrostNightSources.Purdue),
        Kill("Apple", "Tight cluster", "tight cluster", null, 27, 21, FrostNightSources.Purdue),
        Kill("Apple", "Pink", "full pink", null, 28, 25, FrostNightSources.Purdue),
        Kill("Apple", "Bloom", "full bloom", null, 28, 25, FrostNightSources.Purdue),
        Kill("Apple", "Petal fall", "post bloom", null, 28, 25, FrostNightSources.Purdue),
        Kill("Peach", "Swollen bud", "swollen bud", null, 18, 2, FrostNightSources.Purdue),
        Kill("Peach", "Half-inch green", "half-inch green", null, 23, 5, FrostNightSources.Purdue),
        Kill("Peach", "Pink", "first pink", null, 25, 18, FrostNightSources.Purdue),
        Kill("Peach", "Bloom", "full bloom", null, 27, 24, FrostNightSources.Purdue),
        Kill("Peach", "Petal fall", "post bloom", null, 28, 25, FrostNightSources.Purdue),
        Kill("Grape", "Early swell", "early swell", null, 15, 10, FrostNightSources.Purdue),
        Kill("Grape", "Full swell", "full swell", null, 25, 22, FrostNightSources.Purdue),
        Kill("Grape", "Bud burst", "bud burst", null, 28, 26, FrostNightSources.Purdue),
        Kill("Blueberry", "Bud swell", "bud swell", null, 15, 10, FrostNightSources.Purdue),
        Kill("Blueberry", "Tight cluster", "tight cluster", null, 23, 20, FrostNightSources.Purdue),
        Kill("Blueberry", "Early pink bud", "early pink bud", null, 25, 23, FrostNightSources.Purdue),
        Kill("Blueberry", "White tip", "white tip", null, 27, 24, FrostNightSources.Purdue),
        Kill("Blueberry", "Full bloom", "full bloom", null, 28, 26, FrostNightSources.Purdue),
        Kill("Strawberry", "Tight bud", "tight bud", null, 24, 22, FrostNightSources.Purdue),
        Kill("Strawberry", "Petals showing", "popcorn", null, 30, 28, FrostNightSources.Purdue),
        Kill("Strawberry", "Full bloom", "open blossom", null, 32, 31, FrostNightSources.Purdue),
        Kill("Strawberry", "Petal fall", "fruit", null, 31, 28, FrostNightSources.Purdue),
    ];

    // Ontario in °C, Maine in °F: one critical temperature a stage.
    private static CriticalTemperature[] Strawberries =>
    [
        Critical("Strawberry", "", "Tight bud", Temperature.FromDegreesCelsius(-5.5), Temperature.FromDegreesCelsius(-5.5), FrostNightSources.OntarioFactsheet),
        Critical("Strawberry", "", "Tight bud", Fahrenheit(25), Fahrenheit(25), FrostNightSources.MaineStrawberry),
        Critical("Strawberry", "", "Popcorn", Temperature.FromDegreesCelsius(-2.2), Temperature.FromDegreesCelsius(-2.2), FrostNightSources.OntarioFactsheet),
        Critical("Strawberry", "", "Popcorn", Fahrenheit(26), Fahrenheit(26), FrostNightSources.MaineStrawberry),
        Critical("Strawberry", "", "Open blossom", Temperature.FromDegreesCelsius(-1.1), Temperature.FromDegreesCelsius(-1.1), FrostNightSources.OntarioFactsheet),
        Critical("Strawberry", "", "Open blossom", Fahrenheit(30), Fahrenheit(30), FrostNightSources.MaineStrawberry),
        Critical("Strawberry", "", "Fruit", Temperature.FromDegreesCelsius(-2.2), Temperature.FromDegreesCelsius(-2.2), FrostNightSources.OntarioFactsheet),
        Critical("Strawberry", "", "Fruit", Fahrenheit(28), Fahrenheit(28), FrostNightSources.MaineStrawberry),
    ];

    // The range that the stage can stand, in °F.
    private static CriticalTemperature[] MichiganBlueberry =>
    [
        Critical("Blueberry", "", "Bud swell", Fahrenheit(10), Fahrenheit(15), FrostNightSources.MichiganBlueberry),
        Critical("Blueberry", "", "Tight cluster", Fahrenheit(20), Fahrenheit(23), FrostNightSources.MichiganBlueberry),
        Critical("Blueberry", "", "Early pink bud", Fahrenheit(23), Fahrenheit(25), FrostNightSources.MichiganBlueberry),
        Critical("Blueberry", "", "Late pink bud", Fahrenheit(24), Fahrenheit(27), FrostNightSources.MichiganBlueberry),
        Critical("Blueberry", "", "Full bloom", Fahrenheit(28), Fahrenheit(28), FrostNightSources.MichiganBlueberry),
        Critical("Blueberry", "", "Petal fall", Fahrenheit(32), Fahrenheit(32), FrostNightSources.MichiganBlueberry),
    ];

    // Tolerances of two groups of varieties, in °F.
    private static CriticalTemperature[] MaineCranberry =>
    [
        Critical("Cranberry", "Early Black, Howes", "Spring dormant (bud reddish)", Fahrenheit(18), Fahrenheit(18), FrostNightSources.MaineCranberry, "spring dormant"),
        Critical("Cranberry", "Ben Lear, Stevens, new hybrids", "Spring dormant (bud reddish)", Fahrenheit(20), Fahrenheit(20), FrostNightSources.MaineCranberry, "spring dormant"),
        Critical("Cranberry", "Early Black, Howes", "White bud", Fahrenheit(20), Fahrenheit(20), FrostNightSources.MaineCranberry, "white bud"),
        Critical("Cranberry", "Ben Lear, Stevens, new hybrids", "White bud", Fahrenheit(22), Fahrenheit(22), FrostNightSources.MaineCranberry, "white bud"),
        Critical("Cranberry", "Early Black, Howes", "Bud swell (scales loosening)", Fahrenheit(22), Fahrenheit(22), FrostNightSources.MaineCranberry, "bud swell"),
        Critical("Cranberry", "Ben Lear, Stevens, new hybrids", "Bud swell (scales loosening)", Fahrenheit(25), Fahrenheit(25), FrostNightSources.MaineCranberry, "bud swell"),
        Critical("Cranberry", "Early Black, Howes", "Bud break (cabbage head/popcorn, 2 mm)", Fahrenheit(25), Fahrenheit(25), FrostNightSources.MaineCranberry, "bud break"),
        Critical("Cranberry", "Ben Lear, Stevens, new hybrids", "Bud break (cabbage head/popcorn, 2 mm)", Fahrenheit(27), Fahrenheit(27), FrostNightSources.MaineCranberry, "bud break"),
        Critical("Cranberry", "Early Black, Howes", "Bud elongation", Fahrenheit(27), Fahrenheit(27), FrostNightSources.MaineCranberry, "bud elongation"),
        Critical("Cranberry", "Ben Lear, Stevens, new hybrids", "Bud elongation", Fahrenheit(29.5), Fahrenheit(30), FrostNightSources.MaineCranberry, "bud elongation"),
    ];

    private static CriticalTemperature Kill(
        string crop, string stage, string commonStage, double? critical, double tenPercent, double? ninetyPercent, Source source) => new(
            crop, "", stage, commonStage, Fahrenheit(critical), Fahrenheit(critical), Fahrenheit(tenPercent), Fahrenheit(ninetyPercent), source);

    private static CriticalTemperature Critical(
        string crop, string variety, string stage, Temperature? lowest, Temperature? highest, Source source, string? commonStage = null) =>
        new(crop, variety, stage, commonStage ?? Lower(stage), lowest, highest, null, null, source);

    private static Temperature? Fahrenheit(double? value) => value is double degrees ? Temperature.FromDegreesFahrenheit(degrees) : null;

    private static string Lower(string text) => text.ToLowerInvariant();
}
