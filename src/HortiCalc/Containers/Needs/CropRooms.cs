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

    private static CropRoom Plants(Source source, string crop, double? gallons, int? plants, int? most) =>
        new(crop, source, volume: gallons is { } volume ? Volume.FromUsGallons(volume) : null, plants: plants, plantsHigh: most);

    private static CropRoom Across(Source source, string crop, double inches) => new(crop, source, diameter: Length.FromInches(inches));
}
