using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>Published depths of soil for crops in beds. The sources are of little authority and differ by a factor of two; they are set side
/// by side and none is preferred.</summary>
/// <example><code>
/// foreach (CropSoilDepth depth in SoilDepths.For("lettuce"))
///     Console.WriteLine($"{depth.Low.Inches} in or more: {depth.Source}");
/// </code></example>
public static class SoilDepths
{
    private static readonly Source Retailer = new(
        "raised-bed-depth-retailer",
        "Optimal raised garden bed depths",
        "retailer of raised beds (US)",
        null,
        "https://www.anleolifeshop.com/blogs/garden-center/optimal-raised-garden-bed-depths");

    private static readonly Source Groups = new(
        "rooting-depth-groups",
        "What soil depth for planting vegetables in a raised bed (rooting depth groups, widely copied)",
        "gardening blog",
        null,
        "https://diygardeningandbet.wixsite.com/diygabl/post/what-soil-depth-for-planting-vegetables-in-a-raised-bed");

    private static readonly Source Advice = new(
        "raised-bed-depth-advice",
        "How deep should a raised garden bed be",
        "garden advice site",
        null,
        "https://biologyinsights.com/how-deep-should-a-raised-garden-bed-be");

    private static readonly Source Second = new(
        "vegetable-depth-advice",
        "Do different vegetables require specific depth considerations",
        "garden advice site",
        null,
        "https://smartgardenguru.com/blog/do-different-vegetables-require-specific-depth-considerations");

    private static readonly Source Supplier = new(
        "garden-mix-supplier",
        "Garden mix",
        "landscape supplier",
        null,
        "https://sandsandsoils.com/garden-mix");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<CropSoilDepth> Published { get; } = ValueList<CropSoilDepth>.Of(
    [
        Of("tomato", SoilDepthKind.RaisedBed, 12, null, Retailer),
        Of("carrot", SoilDepthKind.RaisedBed, 12, null, Retailer),
        Of("lettuce", SoilDepthKind.RaisedBed, 6, 12, Retailer),
        Of("strawberry", SoilDepthKind.RaisedBed, 12, 12, Retailer),
        Of("pea", SoilDepthKind.RaisedBed, 12, null, Retailer),
        Of("sweet corn", SoilDepthKind.RaisedBed, 12, null, Retailer),
        Of("pepper", SoilDepthKind.RaisedBed, 8, 12, Retailer),
        Of("cucumber", SoilDepthKind.RaisedBed, 6, 8, Retailer),
        Of("potato", SoilDepthKind.RaisedBed, 12, 18, Retailer),
        Of("onion", SoilDepthKind.RaisedBed, 6, 10, Retailer),
        Of("celery", SoilDepthKind.RaisedBed, 6, 8, Retailer),
        Of("beet", SoilDepthKind.RaisedBed, 10, 12, Retailer),
        Of("eggplant", SoilDepthKind.RaisedBed, 12, null, Retailer),
        Of("zucchini", SoilDepthKind.RaisedBed, 12, null, Retailer),
        Of("pumpkin", SoilDepthKind.RaisedBed, 24, null, Retailer),
        Of("shallow group: leafy greens, radish, brassicas, onions, corn, potatoes", SoilDepthKind.Rooting, 12, 18, Groups),
        Of("medium group: beans, cantaloupe, cucumber, summer squash, root crops, peas, chard, eggplant, pepper", SoilDepthKind.Rooting, 18, 24, Groups),
        Of("deep group: pumpkin, winter squash, watermelon, okra, sweet potato, tomato, asparagus", SoilDepthKind.Rooting, 24, 36, Groups),
        Of("lettuce, spinach, radish, herbs", SoilDepthKind.RaisedBed, 6, 8, Advice),
        Of("peppers, bush beans, broccoli, cabbage", SoilDepthKind.RaisedBed, 10, 12, Advice),
        Of("tomato, squash, potato, carrot", SoilDepthKind.RaisedBed, 18, 24, Advice),
        Of("lettuce", SoilDepthKind.RaisedBed, 6, 8, Second),
        Of("radish", SoilDepthKind.RaisedBed, 8, null, Second),
        Of("spinach", SoilDepthKind.RaisedBed, 8, null, Second),
        Of("pepper", SoilDepthKind.RaisedBed, 14, null, Second),
        Of("bush bean", SoilDepthKind.RaisedBed, 12, null, Second),
        Of("cucumber", SoilDepthKind.RaisedBed, 14, null, Second),
        Of("tomato", SoilDepthKind.RaisedBed, 18, null, Second),
        Of("carrot", SoilDepthKind.RaisedBed, 16, null, Second),
        Of("potato", SoilDepthKind.RaisedBed, 24, null, Second),
        Of("annuals and vegetables", SoilDepthKind.RaisedBed, 6, null, Supplier),
    ]);

    /// <summary>What the sources print for a crop, groups that name it included.</summary>
    /// <param name="crop">The crop in English, singular as a rule; looked for as part of the source's words.</param>
    /// <returns>The depths; empty where no source names the crop.</returns>
    /// <exception cref="ArgumentException">The crop is empty.</exception>
    public static IReadOnlyList<CropSoilDepth> For(string crop)
    {
        Guard.NotBlank(crop);
        return ValueList<CropSoilDepth>.Of(Published.Where(depth => depth.Crop.Contains(crop, StringComparison.OrdinalIgnoreCase)));
    }

    private static CropSoilDepth Of(string crop, SoilDepthKind kind, double lowInches, double? highInches, Source source) =>
        new(crop, kind, Length.FromInches(lowInches), highInches is double high ? Length.FromInches(high) : null, source);
}
