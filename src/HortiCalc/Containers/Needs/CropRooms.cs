using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>Published depths, volumes and diameters that crops want, side by side.</summary>
/// <remarks>
/// They disagree by a factor of two, most lists are of low authority, and a depth of roots in open ground is no least depth of a container. They are given as
/// printed, not averaged.
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
        Deep(CropRoomSources.GardenHandbook, "beets", DepthKind.Container, 10, 12),
        Deep(CropRoomSources.GardenHandbook, "bush beans", DepthKind.Container, 8, 10),
        Deep(CropRoomSources.GardenHandbook, "carrots", DepthKind.Container, 10, 12),
        Deep(CropRoomSources.SmallGarden, "carrots", DepthKind.Container, 9, 18),
        Deep(CropRoomSources.SmallGarden, "potatoes", DepthKind.Container, 16, 18),
        Deep(CropRoomSources.SmallGarden, "asian lettuce, mustard greens", DepthKind.Container, 4, 6),
        Deep(CropRoomSources.SmallGarden, "cabbage", DepthKind.Container, 8, 12),
        Deep(CropRoomSources.RaisedBedTable, "tomato", DepthKind.RaisedBed, 12, null),
        Deep(CropRoomSources.RaisedBedTable, "carrot", DepthKind.RaisedBed, 12, null),
        Deep(CropRoomSources.RaisedBedTable, "lettuce", DepthKind.RaisedBed, 6, 12),
        Deep(CropRoomSources.RaisedBedTable, "strawberry", DepthKind.RaisedBed, 12, 12),
        Deep(CropRoomSources.RaisedBedTable, "pea", DepthKind.RaisedBed, 12, null),
        Deep(CropRoomSources.RaisedBedTable, "sweet corn", DepthKind.RaisedBed, 12, null),
        Deep(CropRoomSources.RaisedBedTable, "pepper", DepthKind.RaisedBed, 8, 12),
        Deep(CropRoomSources.RaisedBedTable, "cucumber", DepthKind.RaisedBed, 6, 8),
        Deep(CropRoomSources.RaisedBedTable, "potato", DepthKind.RaisedBed, 12, 18),
        Deep(CropRoomSources.RaisedBedTable, "onion", DepthKind.RaisedBed, 6, 10),
        Deep(CropRoomSources.RaisedBedTable, "celery", DepthKind.RaisedBed, 6, 8),
        Deep(CropRoomSources.RaisedBedTable, "beet", DepthKind.RaisedBed, 10, 12),
        Deep(CropRoomSources.RaisedBedTable, "eggplant", DepthKind.RaisedBed, 12, null),
        Deep(CropRoomSources.RaisedBedTable, "zucchini", DepthKind.RaisedBed, 12, null),
        Deep(CropRoomSources.RaisedBedTable, "pumpkin", DepthKind.RaisedBed, 24, null),
        Deep(CropRoomSources.RootingGroups, "shallow group: leafy greens, radish, brassicas, onions, corn, potatoes", DepthKind.Rooting, 12, 18),
        Deep(CropRoomSources.RootingGroups, "medium group: beans, cantaloupe, cucumber, summer squash, root crops, peas, chard, eggplant, pepper", DepthKind.Rooting, 18, 24),
        Deep(CropRoomSources.RootingGroups, "deep group: pumpkin, winter squash, watermelon, okra, sweet potato, tomato, asparagus", DepthKind.Rooting, 24, 36),
        Deep(CropRoomSources.RaisedBedGroups, "lettuce, spinach, radish, herbs", DepthKind.RaisedBed, 6, 8),
        Deep(CropRoomSources.RaisedBedGroups, "peppers, bush beans, broccoli, cabbage", DepthKind.RaisedBed, 10, 12),
        Deep(CropRoomSources.RaisedBedGroups, "tomato, squash, potato, carrot", DepthKind.RaisedBed, 18, 24),
        Deep(CropRoomSources.RaisedBedCrops, "lettuce", DepthKind.RaisedBed, 6, 8),
        Deep(CropRoomSources.RaisedBedCrops, "radish", DepthKind.RaisedBed, 8, null),
        Deep(CropRoomSources.RaisedBedCrops, "spinach", DepthKind.RaisedBed, 8, null),
        Deep(CropRoomSources.RaisedBedCrops, "pepper", DepthKind.RaisedBed, 14, null),
        Deep(CropRoomSources.RaisedBedCrops, "bush bean", DepthKind.RaisedBed, 12, null),
        Deep(CropRoomSources.RaisedBedCrops, "cucumber", DepthKind.RaisedBed, 14, null),
        Deep(CropRoomSources.RaisedBedCrops, "tomato", DepthKind.RaisedBed, 18, null),
        Deep(CropRoomSources.RaisedBedCrops, "carrot", DepthKind.RaisedBed, 16, null),
        Deep(CropRoomSources.RaisedBedCrops, "potato", DepthKind.RaisedBed, 24, null),
        Deep(CropRoomSources.PotDepths, "almost every vegetable and herb", DepthKind.Container, 8, null),
        Deep(CropRoomSources.PotDepths, "beans", DepthKind.Container, 8, 12),
        Deep(CropRoomSources.GardenMix, "annuals and vegetables", DepthKind.RaisedBed, 6, null),
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

    private static CropRoom Deep(Source source, string crop, DepthKind kind, double lowInches, double? highInches) =>
        new(crop, source, kind, Length.FromInches(lowInches), highInches is { } high ? Length.FromInches(high) : null);

    private static CropRoom Plants(Source source, string crop, double? gallons, int? plants, int? most) =>
        new(crop, source, volume: gallons is { } volume ? Volume.FromUsGallons(volume) : null, plants: plants, plantsHigh: most);

    private static CropRoom Across(Source source, string crop, double inches) => new(crop, source, diameter: Length.FromInches(inches));
}
