using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>Published depths, volumes and diameters that crops want, side by side.</summary>
/// <remarks>
/// They disagree, and most lists are of low authority. They are given as printed, not averaged. Depths of raised beds and of roots in open ground are other
/// figures, and no least depth of a container.
/// </remarks>
/// <example><code>
/// foreach (CropRoom row in CropRooms.Naming("carrot"))
///     Console.WriteLine(row);
/// </code></example>
public static class CropRooms
{
    /// <summary>Every row there is, source by source.</summary>
    public static IReadOnlyList<CropRoom> All { get; } = ValueList<CropRoom>.Of(
    [
        Deep(CropRoomSources.GardenHandbook, "beets", 10, 12),
        Deep(CropRoomSources.GardenHandbook, "bush beans", 8, 10),
        Deep(CropRoomSources.GardenHandbook, "carrots", 10, 12),
        Deep(CropRoomSources.SmallGarden, "carrots", 9, 18),
        Deep(CropRoomSources.SmallGarden, "potatoes", 16, 18),
        Deep(CropRoomSources.SmallGarden, "asian lettuce, mustard greens", 4, 6),
        Deep(CropRoomSources.SmallGarden, "cabbage", 8, 12),
        Deep(CropRoomSources.PotDepths, "almost every vegetable and herb", 8, null),
        Deep(CropRoomSources.PotDepths, "beans", 8, 12),
        Group(CropRoomSources.Maryland, "large vegetables: tomato, pepper, eggplant, cucumber, winter squash", 8, 10, 12, 16),
        Group(CropRoomSources.Maryland, "medium vegetables: dwarf kinds, summer squash, cabbages, beans, beets, chard, carrots, larger herbs", 4, 6, 8, 12),
        Group(CropRoomSources.Maryland, "small vegetables: herbs, radish, scallions, spinach, salad greens, peas, beans", 1, 3, 4, 6),
        Group(CropRoomSources.Maryland, "potatoes", 30, null, null, null),
        Group(CropRoomSources.Maryland, "strawberries", null, null, 8, null),
        Group(CropRoomSources.Maryland, "dwarf fruit trees", 25, 30, null, null),
        Group(CropRoomSources.Maryland, "shrubs", 25, null, null, null),
        Group(CropRoomSources.GardenMentor, "small: lettuce, spinach, radishes, herbs", 1, 3, 6, 8),
        Group(CropRoomSources.GardenMentor, "medium: bush beans, peppers, dwarf tomatoes", 3, 5, 8, 12),
        Plants(CropRoomSources.Minnesota, "basil", 1, 3, 4),
        Plants(CropRoomSources.Minnesota, "parsley", 1, 2, 4),
        Plants(CropRoomSources.PotDepths, "asparagus, in a small container", 2, 2, null),
        Plants(CropRoomSources.PotDepths, "asparagus, in a large container", 10, 5, null),
        Plants(CropRoomSources.PotDepths, "beans, in a large container", 10, 2, null),
        Plants(CropRoomSources.PotDepths, "beets, in a large container", 10, 24, null),
        new CropRoom(
            "beets, in a small container", CropRoomSources.PotDepths, volume: Volume.FromUsGallons(2), plants: 7, volumeHigh: Volume.FromUsGallons(3)),
        new CropRoom("broccoli", CropRoomSources.PotDepths, volume: Volume.FromUsGallons(5), plants: 1, volumeHigh: Volume.FromUsGallons(10)),
        Across(CropRoomSources.PotDepths, "asian leaves, mustard and mizuna", 8),
        Across(CropRoomSources.PotDepths, "arugula", 8),
        Across(CropRoomSources.PotDepths, "bok choy, one plant", 8),
        Plants(CropRoomSources.GardenHandbook, "cucumbers, per plant", 1, null, null),
        Plants(CropRoomSources.GardenHandbook, "eggplant", 3, null, null),
        Plants(CropRoomSources.GardenHandbook, "green pepper, per plant", 1, null, null),
        Plants(CropRoomSources.Iowa, "cabbage", null, 1, null),
        Plants(CropRoomSources.Iowa, "cucumber", null, 2, null),
        Plants(CropRoomSources.Iowa, "eggplant", null, 1, null),
        Plants(CropRoomSources.Iowa, "green beans", null, 2, 3),
        Plants(CropRoomSources.Iowa, "leaf lettuce", null, 4, 6),
        Plants(CropRoomSources.Iowa, "parsley", null, 1, null),
        Plants(CropRoomSources.Iowa, "pepper", null, 2, null),
        Plants(CropRoomSources.Iowa, "swiss chard", null, 1, null),
        Plants(CropRoomSources.Texas, "broccoli", 2, 1, null),
        Plants(CropRoomSources.Texas, "carrot", 1, 2, 3),
        Plants(CropRoomSources.Texas, "cucumber", 1, 1, null),
        Plants(CropRoomSources.Texas, "eggplant", 5, 1, null),
        Plants(CropRoomSources.Texas, "green bean", 2, null, null),
        Plants(CropRoomSources.Texas, "green onion", 1, 3, 5),
        Plants(CropRoomSources.Texas, "leaf lettuce", 1, null, null),
        Plants(CropRoomSources.Texas, "parsley", 1, null, null),
        Plants(CropRoomSources.Texas, "spinach", 1, null, null),
        Plants(CropRoomSources.Texas, "squash", 5, null, null),
        Plants(CropRoomSources.Texas, "tomato", 5, null, null),
        Across(CropRoomSources.Illinois, "tomato", 20),
        Across(CropRoomSources.Illinois, "pepper", 16),
        Across(CropRoomSources.Illinois, "radish, onion, beet", 10),
        Across(CropRoomSources.Illinois, "carrot", 12),
        Across(CropRoomSources.Illinois, "herbs and flowers", 12),
        Across(CropRoomSources.Illinois, "greens", 10),
        Plants(CropRoomSources.IllinoisColumn, "tomato, most", 3, null, null),
        Plants(CropRoomSources.IllinoisColumn, "parsley", 0.5, 1, null),
        Plants(CropRoomSources.IllinoisColumn, "cabbage", 1, 1, null),
        Plants(CropRoomSources.IllinoisColumn, "cucumber, bush kinds", 1, 2, null),
        Plants(CropRoomSources.IllinoisColumn, "green beans", 1, 2, 3),
        Plants(CropRoomSources.IllinoisColumn, "leaf lettuce", 1, 4, 6),
        Litres("cherry tomato", 15, 20, 1, null),
        Litres("pepper", 20, 30, 1, null),
        Litres("lettuce", 10, 15, 3, 4),
        new CropRoom("strawberries", CropRoomSources.FrenchPlanters, depth: Length.FromCentimeters(15)),
        new CropRoom(
            "small shrubs: box, bay",
            CropRoomSources.FrenchPlanters,
            diameter: Length.FromCentimeters(40),
            volume: Volume.FromLiters(40),
            volumeHigh: Volume.FromLiters(70)),
    ]);

    /// <summary>The rows whose crop or group names a word.</summary>
    /// <param name="word">The word, capitals or not: <c>carrot</c> finds carrots too.</param>
    /// <returns>The rows; none where no source names it.</returns>
    /// <exception cref="ArgumentException">The word is empty.</exception>
    public static IReadOnlyList<CropRoom> Naming(string word)
    {
        Guard.NotBlank(word);
        return ValueList<CropRoom>.Of(All.Where(row => row.Crop.Contains(word, StringComparison.OrdinalIgnoreCase)));
    }

    private static CropRoom Deep(Source source, string crop, double lowInches, double? highInches) =>
        new(crop, source, Length.FromInches(lowInches), highInches is { } high ? Length.FromInches(high) : null);

    private static CropRoom Group(Source source, string crop, double? gallons, double? mostGallons, double? lowInches, double? highInches) => new(
        crop,
        source,
        lowInches is { } low ? Length.FromInches(low) : null,
        highInches is { } high ? Length.FromInches(high) : null,
        volume: gallons is { } least ? Volume.FromUsGallons(least) : null,
        volumeHigh: mostGallons is { } most ? Volume.FromUsGallons(most) : null);

    private static CropRoom Plants(Source source, string crop, double? gallons, int? plants, int? most) =>
        new(crop, source, volume: gallons is { } volume ? Volume.FromUsGallons(volume) : null, plants: plants, plantsHigh: most);

    private static CropRoom Litres(string crop, double low, double high, int plants, int? most) => new(
        crop,
        CropRoomSources.FrenchPlanters,
        volume: Volume.FromLiters(low),
        plants: plants,
        plantsHigh: most,
        volumeHigh: Volume.FromLiters(high));

    private static CropRoom Across(Source source, string crop, double inches) => new(crop, source, diameter: Length.FromInches(inches));
}
