using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>Published depths of compost and mulch, side by side.</summary>
/// <remarks>Where a source prints a volume per area, <see cref="Amendment.Depth"/> turns it into a depth; these are the depths as printed.</remarks>
public static class LayerAdvices
{
    private static readonly Source Mesa = new(
        "mesa-county-compost", "Ultra fine compost: recommended uses", "Mesa County (Colorado)", null, "https://www.mesacounty.us/swm/composting/recommended-uses/ultra-fine/");

    private static readonly Source Duluth = new(
        "duluth-compost-use", "Using compost", "Western Lake Superior Sanitary District (Minnesota)", null, "https://wlssd.com/products/garden-green-compost/using-compost/");

    private static readonly Source Stormwater = new(
        "minnesota-stormwater", "Application guidelines for compost, Minnesota Stormwater Manual", "Minnesota Pollution Control Agency", 2013, "https://stormwater.pca.state.mn.us/index.php?diff=next&oldid=5150&title=Application_guidelines");

    private static readonly Source Cardwell = new(
        "compost-producer-nova-scotia", "Compost 101", "compost producer (Canada)", null, "https://cardwellcompost.com/compost-101-2/");

    private static readonly Source BuffaloRiver = new(
        "compost-producer-council-guide", "Flowers and vegetables, after the use guidelines of the US Composting Council", "compost producer (US)", null, "https://buffalorivercompost.com/project/flowers-veg/");

    private static readonly Source NorthCarolina = new(
        "north-carolina-compost-use", "Compost use guidelines for gardens, landscapes, and small farms", "North Carolina Department of Agriculture and Consumer Services", null, "https://digital.ncdcr.gov/documents/detail/3689414");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<LayerAdvice> Published { get; } = ValueList<LayerAdvice>.Of(
    [
        Of("general garden, keeps salts low", 1, 1, 6, 6, CompostSources.Colorado),
        Of("the most at one time, whatever its analysis", 3, 3, 6, 6, NorthCarolina),
        Of("soil preparation", 1 / 3.0, 1 / 3.0, 4, 6, Mesa),
        Of("vegetable gardens", 0.125, 0.125, 3, 6, Mesa),
        Of("new lawns", 1, 2, 5, 7, Duluth),
        Of("new planting beds", 4, 6, 6, 8, Duluth),
        Of("existing vegetable or flower beds", 2, 4, null, null, Duluth),
        Of("existing lawn, topdressing", 0.5, 0.5, null, null, Duluth),
        Of("planting areas on compacted soil", 3, 3, 8, 8, Stormwater),
        Of("turf on compacted soil", 1.75, 1.75, 8, 8, Stormwater),
        new LayerAdvice(
            "new gardens", Length.FromCentimeters(2.5), Length.FromCentimeters(4), Length.FromCentimeters(15), Length.FromCentimeters(20), Cardwell),
        Of("flowers and vegetables", 1, 2, 6, 8, BuffaloRiver),
        Of("sandy soil", 1, 2, null, null, BulkDensitySources.EarthSystems),
        Of("loam soil", 1, 1, null, null, BulkDensitySources.EarthSystems),
        Of("heavy clay soil", 3, 3, null, null, BulkDensitySources.EarthSystems),
        Of("annual flowers and vegetables", 1, 1, 4, 6, BulkDensitySources.EarthSystems),
        Of("round established trees", 3, 4, null, null, BulkDensitySources.EarthSystems),
    ]);

    private static LayerAdvice Of(string use, double lowInches, double highInches, double? workedInLowInches, double? workedInHighInches, Source source) => new(
        use,
        Length.FromInches(lowInches),
        Length.FromInches(highInches),
        workedInLowInches is double low ? Length.FromInches(low) : null,
        workedInHighInches is double high ? Length.FromInches(high) : null,
        source);
}
