using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;
using static HortiCalc.Beds.BulkMaterial;
using static HortiCalc.Beds.MoistureState;

namespace HortiCalc.Beds;

/// <summary>Published bulk densities, as their sources print them.</summary>
/// <remarks>
/// The sources differ, for one material by a factor of two: <see cref="For(BulkMaterial)"/> sets them side by side instead of
/// choosing one. Figures that soil science and media laboratories give are of dry matter by their definition and marked so;
/// where a source says nothing of moisture, the figure is marked as delivered. A density of one's own, from a label or a
/// weighed bucket, is better than any of them.
/// </remarks>
/// <example><code>
/// foreach (BulkDensity compost in BulkDensities.For(BulkMaterial.Compost))
///     Console.WriteLine(compost.MassOf(Volume.FromCubicMeters(1)));
/// </code></example>
public static class BulkDensities
{
    private const double LitresPerUsBushel = 35.23907016688; // 2150.42 cubic inches exactly

    private static readonly ValueList<BulkDensity> All = ValueList<BulkDensity>.Of(
    [
        .. CalRecycle(),
        .. Massachusetts(),
        .. Oregon(),
        .. Nofa(),
        .. SaturatedBlends(),
        .. Others(),
        .. ByTexture(),
        .. BulkDensityTables.All,
    ]);

    /// <summary>All of them, source by source.</summary>
    public static IReadOnlyList<BulkDensity> Published => All;

    /// <summary>What the sources print for a kind of material.</summary>
    /// <param name="material">The kind of material.</param>
    /// <returns>The densities, of every moisture; never empty.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The kind is not one of the defined ones.</exception>
    public static IReadOnlyList<BulkDensity> For(BulkMaterial material)
    {
        Guard.Defined(material);
        return ValueList<BulkDensity>.Of(All.Where(density => density.Material == material));
    }

    /// <summary>What the sources print for a kind of material at a moisture.</summary>
    /// <param name="material">The kind of material.</param>
    /// <param name="moisture">How wet it is.</param>
    /// <returns>The densities; empty where no source prints one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The kind or the moisture is not one of the defined ones.</exception>
    public static IReadOnlyList<BulkDensity> For(BulkMaterial material, MoistureState moisture)
    {
        Guard.Defined(moisture);
        return ValueList<BulkDensity>.Of(For(material).Where(density => density.Moisture == moisture));
    }

    /// <summary>One published density.</summary>
    /// <param name="sourceKey">The key of its source.</param>
    /// <param name="name">The material as the source names it.</param>
    /// <returns>The density.</returns>
    /// <exception cref="ArgumentException">There is none of that name from that source; the message lists what there
    /// is.</exception>
    public static BulkDensity Named(string sourceKey, string name)
    {
        Guard.NotBlank(sourceKey);
        Guard.NotBlank(name);
        List<BulkDensity> ofSource = [.. All.Where(density => density.Source.Key == sourceKey)];
        if (ofSource.Count == 0)
        {
            throw new ArgumentException(
                $"sourceKey was '{sourceKey}'; allowed: {string.Join(", ", All.Select(density => density.Source.Key).Distinct())}.",
                nameof(sourceKey));
        }

        return ofSource.Find(density => density.Name == name)
            ?? throw new ArgumentException(
                $"name was '{name}'; allowed: {string.Join(", ", ofSource.Select(density => density.Name))}.", nameof(name));
    }

    private static IEnumerable<BulkDensity> CalRecycle()
    {
        Source source = BulkDensitySources.CalRecycle;
        yield return PerCubicYard("earth, loose", BulkMaterial.Soil, Dry, 2100, source, "30 % more when compacted");
        yield return PerCubicYard("earth, excavated", BulkMaterial.Soil, Wet, 3000, source);
        yield return PerCubicYard("gravel or crushed stone, loose", Stone, Dry, 2600, source, "20 % more when wet");
        yield return PerCubicYard("sand, loose", Sand, Dry, 2400, source, "20 % more when damp, 30 % more when wet and compacted");
        yield return PerCubicYard("stone graded to 8 inches, loose", Stone, AsDelivered, 2700, source, "10 % more when consolidated in place");
        yield return PerCubicYard("wood chips, shredded", Wood, Dry, 300, source);
        yield return PerCubicYard("wood chips or bark with 30 % soil", Wood, AsDelivered, 800, source);
        yield return PerCubicYard("yard waste, loose", GreenWaste, AsDelivered, 600, source);
    }

    private static IEnumerable<BulkDensity> Massachusetts()
    {
        Source source = BulkDensitySources.Massachusetts;
        yield return PerCubicYard("grass clippings", GreenWaste, AsDelivered, 667, source);
        yield return PerCubicYard("leaves", GreenWaste, AsDelivered, 400, source);
        yield return PerCubicYard("brush", Wood, AsDelivered, 500, source);
        yield return PerCubicYard("unfinished compost", Compost, AsDelivered, 1500, source);
        yield return PerCubicYard("finished compost", Compost, AsDelivered, 1350, source);
    }

    private static IEnumerable<BulkDensity> Oregon()
    {
        Source source = BulkDensitySources.Oregon;
        yield return PerCubicYard("grass clippings", GreenWaste, AsDelivered, 40, 1500, source);
        yield return PerCubicYard("leaves", GreenWaste, AsDelivered, 250, 500, source);
        yield return PerCubicYard("loose yard debris", GreenWaste, AsDelivered, 250, source);
        yield return PerCubicYard("compacted yard debris", GreenWaste, AsDelivered, 640, source, "compacted");
        yield return PerCubicYard("wood collected at landfills", Wood, AsDelivered, 250, source);
        yield return PerCubicYard("green wood chips", Wood, Moist, 473, source);
        yield return PerCubicYard("dry wood chips", Wood, Dry, 243, source);
        yield return PerCubicYard("cordwood", Wood, AsDelivered, 500, source);
        yield return PerCubicYard("Christmas trees", Wood, AsDelivered, 30, source);
    }

    // The bushel column is the source's own; its column per cubic yard is rounded from it.
    private static IEnumerable<BulkDensity> Nofa()
    {
        yield return PerBushel("horse manure", Manure, 40);
        yield return PerBushel("broiler litter", Manure, 50);
        yield return PerBushel("other manure", Manure, 80);
        yield return PerBushel("compost", Compost, 50);
        yield return PerBushel("sawdust", Wood, 15);
        yield return PerBushel("wood ash", Ash, 30);
        yield return PerBushel("peat, compressed", Peat, 25);

        static BulkDensity PerBushel(string name, BulkMaterial material, double pounds) => new(
            name,
            material,
            AsDelivered,
            Density.FromKilogramsPerCubicMeter(pounds * Boundary.KilogramsPerPound / LitresPerUsBushel * 1000),
            BulkDensitySources.Nofa);
    }

    private static IEnumerable<BulkDensity> SaturatedBlends()
    {
        Source source = BulkDensitySources.SaturatedBlends;
        const string state = "saturated and compacted";
        yield return PerCubicYard("soil builder blend", BulkMaterial.Soil, Wet, 1836, source, state);
        yield return PerCubicYard("landscape soil", BulkMaterial.Soil, Wet, 1992, source, state);
        yield return PerCubicYard("mixed wood mulch", Mulch, Wet, 628, source, state);
        yield return PerCubicYard("sandy loam", BulkMaterial.Soil, Wet, 2056, source, state);
        yield return PerCubicYard("vegetable soil", BulkMaterial.Soil, Wet, 1908, source, state);
        yield return PerCubicYard("pine bark mulch", Mulch, Wet, 636, source, state);
        yield return PerCubicYard("compost", Compost, Wet, 1724, source, state);
        yield return PerCubicYard("turf blend", BulkMaterial.Soil, Wet, 2228, source, state);
    }

    private static IEnumerable<BulkDensity> Others()
    {
        yield return PerCubicYard("compost", Compost, AsDelivered, 1000, 1200, BulkDensitySources.OregonYard);
        yield return PerCubicYard("mulch", Mulch, AsDelivered, 400, 800, BulkDensitySources.WetMulch);
        yield return PerCubicYard("compost", Compost, AsDelivered, 1000, 1600, BulkDensitySources.WetMulch);
        yield return PerCubicYard("soil blends", BulkMaterial.Soil, AsDelivered, 2200, 2700, BulkDensitySources.WetMulch);
        yield return PerLitre("soil", BulkMaterial.Soil, AsDelivered, 1.3, BulkDensitySources.UkSupplier);
        yield return PerLitre("sand", Sand, AsDelivered, 1.4, BulkDensitySources.UkSupplier);
        yield return PerLitre("decorative aggregate", Stone, AsDelivered, 1.6, BulkDensitySources.UkSupplier);
        yield return PerLitre("fine sand", Sand, Dry, 1.28, BulkDensitySources.Antipodes);
        yield return PerLitre("coarse sand", Sand, Dry, 1.6, BulkDensitySources.Antipodes);
        yield return PerLitre("topsoil, some moisture", BulkMaterial.Soil, Moist, 1.44, BulkDensitySources.Antipodes);
        yield return PerLitre("soil", BulkMaterial.Soil, AsDelivered, 1.2, 1.7, BulkDensitySources.Antipodes);
        yield return PerLitre("peat and peat-bark substrate", Peat, Dry, 0.09, 0.16, BulkDensitySources.Arkansas);
        yield return PerLitre("mineral soils", BulkMaterial.Soil, Dry, 0.9, 1.8, BulkDensitySources.Illinois);
        yield return PerLitre("organic soils", BulkMaterial.Soil, Dry, 0.1, 0.6, BulkDensitySources.Illinois);
        yield return PerLitre("perlite, expanded", ExpandedMineral, Dry, 0.03, 0.15, BulkDensitySources.Perlite);
        yield return PerLitre("cocopeat and perlite 3:1", Coir, Dry, 0.09, BulkDensitySources.Cocopeat);
    }

    private static IEnumerable<BulkDensity> ByTexture()
    {
        Source source = BulkDensitySources.ByTexture;
        yield return PerLitre("clay", BulkMaterial.Soil, Dry, 1.25, source);
        yield return PerLitre("silty clay", BulkMaterial.Soil, Dry, 1.21, source);
        yield return PerLitre("silty clay loam", BulkMaterial.Soil, Dry, 1.27, source);
        yield return PerLitre("clay loam", BulkMaterial.Soil, Dry, 1.3, source);
        yield return PerLitre("sandy clay", BulkMaterial.Soil, Dry, 1.34, source);
        yield return PerLitre("silt loam", BulkMaterial.Soil, Dry, 1.38, source);
        yield return PerLitre("loam", BulkMaterial.Soil, Dry, 1.43, source);
        yield return PerLitre("sandy clay loam", BulkMaterial.Soil, Dry, 1.4, source);
        yield return PerLitre("sandy loam", BulkMaterial.Soil, Dry, 1.51, source);
        yield return PerLitre("loamy sand", BulkMaterial.Soil, Dry, 1.63, source);
        yield return PerLitre("sand", BulkMaterial.Soil, Dry, 1.69, source);
    }

    private static BulkDensity PerCubicYard(
        string name, BulkMaterial material, MoistureState moisture, double pounds, Source source, string conditions = "") =>
        new(name, material, moisture, Density.FromPoundsPerCubicYard(pounds), Density.FromPoundsPerCubicYard(pounds), source, conditions);

    private static BulkDensity PerCubicYard(
        string name, BulkMaterial material, MoistureState moisture, double lowPounds, double highPounds, Source source) =>
        new(name, material, moisture, Density.FromPoundsPerCubicYard(lowPounds), Density.FromPoundsPerCubicYard(highPounds), source);

    private static BulkDensity PerLitre(string name, BulkMaterial material, MoistureState moisture, double kilograms, Source source) =>
        new(name, material, moisture, Density.FromKilogramsPerLiter(kilograms), source);

    private static BulkDensity PerLitre(
        string name, BulkMaterial material, MoistureState moisture, double lowKilograms, double highKilograms, Source source) =>
        new(name, material, moisture, Density.FromKilogramsPerLiter(lowKilograms), Density.FromKilogramsPerLiter(highKilograms), source);
}
