using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>Published bulk densities of builders', hauliers', suppliers' and teachers' tables.</summary>
internal static class BulkDensityTables
{
    public static IReadOnlyList<BulkDensity> All { get; } = ValueList<BulkDensity>.Of(
    [
        PerCubicMetre("dry sand, fine", BulkMaterial.Sand, MoistureState.Dry, 1.28, 1.28, BulkDensitySources.BuildersTips),
        PerCubicMetre("dry sand, coarse", BulkMaterial.Sand, MoistureState.Dry, 1.6, 1.6, BulkDensitySources.BuildersTips),
        PerCubicMetre("topsoil, some moisture", BulkMaterial.Soil, MoistureState.Moist, 1.44, 1.44, BulkDensitySources.BuildersTips),
        PerCubicMetre("ballast", BulkMaterial.Stone, MoistureState.AsDelivered, 1.76, 1.76, BulkDensitySources.BuildersTips),
        PerCubicMetre("gravel", BulkMaterial.Stone, MoistureState.AsDelivered, 1.92, 1.92, BulkDensitySources.BuildersTips),
        PerCubicMetre("shingle", BulkMaterial.Stone, MoistureState.AsDelivered, 1.62, 1.62, BulkDensitySources.BuildersTips),
        PerCubicMetre("stiff clay", BulkMaterial.Soil, MoistureState.AsDelivered, 1.6, 1.6, BulkDensitySources.BuildersTips),
        PerCubicMetre("loam", BulkMaterial.Soil, MoistureState.AsDelivered, 1.28, 1.28, BulkDensitySources.BuildersTips),
        PerCubicMetre("peat, wet", BulkMaterial.Peat, MoistureState.Wet, 0.96, 0.96, BulkDensitySources.BuildersTips),
        PerCubicMetre("lump chalk", BulkMaterial.Stone, MoistureState.AsDelivered, 1.2, 1.2, BulkDensitySources.BuildersTips),
        PerCubicMetre("sandstone", BulkMaterial.Stone, MoistureState.AsDelivered, 2.32, 2.32, BulkDensitySources.BuildersTips),
        PerCubicMetre("lias", BulkMaterial.Stone, MoistureState.AsDelivered, 2.48, 2.48, BulkDensitySources.BuildersTips),
        PerCubicMetre("granite", BulkMaterial.Stone, MoistureState.AsDelivered, 2.72, 2.72, BulkDensitySources.BuildersTips),
        PerCubicMetre("slate", BulkMaterial.Stone, MoistureState.AsDelivered, 2.8, 2.8, BulkDensitySources.BuildersTips),
        PerCubicMetre("flint", BulkMaterial.Stone, MoistureState.AsDelivered, 2.3, 2.3, BulkDensitySources.BuildersTips),
        PerCubicMetre("yorkstone", BulkMaterial.Stone, MoistureState.AsDelivered, 2.5, 2.5, BulkDensitySources.BuildersTips),
        PerCubicMetre("brick rubble", BulkMaterial.Stone, MoistureState.AsDelivered, 1.8, 2.2, BulkDensitySources.BuildersTips),
        PerCubicYard("sandy loam topsoil", BulkMaterial.Soil, MoistureState.AsDelivered, 2400, 2400, BulkDensitySources.EarthHaulers),
        PerCubicYard("sand", BulkMaterial.Sand, MoistureState.AsDelivered, 2600, 2600, BulkDensitySources.EarthHaulers),
        PerCubicYard("gravel", BulkMaterial.Stone, MoistureState.AsDelivered, 2750, 2750, BulkDensitySources.EarthHaulers),
        PerCubicYard("compost", BulkMaterial.Compost, MoistureState.AsDelivered, 1250, 1250, BulkDensitySources.WeightPage),
        PerCubicYard("compost, wet", BulkMaterial.Compost, MoistureState.Wet, 1370, 1370, BulkDensitySources.WeightPage),
        PerCubicYard("topsoil, dry", BulkMaterial.Soil, MoistureState.Dry, 3460, 3460, BulkDensitySources.CompostCouncil),
        PerCubicYard("finished compost", BulkMaterial.Compost, MoistureState.AsDelivered, 1200, 1200, BulkDensitySources.CompostCouncil),
        PerCubicYard("manure compost", BulkMaterial.Compost, MoistureState.AsDelivered, 1018, 1018, BulkDensitySources.EarthSystems, "35 % moisture"),
        PerCubicYard("compost", BulkMaterial.Compost, MoistureState.AsDelivered, 700, 1400, BulkDensitySources.CompostWeights, "30 to 50 % moisture"),
        PerCubicYard("dairy compost", BulkMaterial.Compost, MoistureState.AsDelivered, 1200, 1400, BulkDensitySources.CompostWeights),
        PerCubicYard("manure compost", BulkMaterial.Compost, MoistureState.AsDelivered, 1200, 1400, BulkDensitySources.CompostWeights),
        PerCubicYard("finished compost", BulkMaterial.Compost, MoistureState.AsDelivered, 800, 800, BulkDensitySources.CompostChart),
        PerCubicYard("leaves, not composted", BulkMaterial.GreenWaste, MoistureState.AsDelivered, 500, 500, BulkDensitySources.CompostChart),
        PerCubicYard("manure, not composted", BulkMaterial.Manure, MoistureState.AsDelivered, 1000, 1000, BulkDensitySources.CompostChart),
        PerCubicMetre("perlite and peat mixes", BulkMaterial.ExpandedMineral, MoistureState.Dry, 0.08, 0.14, BulkDensitySources.PeatWeight),
        PerCubicMetre("coir pith, fine", BulkMaterial.Coir, MoistureState.Dry, 0.11, 0.11, BulkDensitySources.CoirPith),
        PerCubicMetre("soil alone in pots", BulkMaterial.Soil, MoistureState.Dry, 1.32, 1.32, BulkDensitySources.PotSoil),
        PerCubicMetre("sphagnum peat", BulkMaterial.Peat, MoistureState.Dry, 0.1, 0.1, BulkDensitySources.ArkansasPeat),
        PerCubicMetre("greenhouse substrates, recommended", BulkMaterial.Peat, MoistureState.AsDelivered, 0.15, 1.3, BulkDensitySources.Arkansas, "wider than what is in use"),
        PerCubicMetre("soil", BulkMaterial.Soil, MoistureState.AsDelivered, 1.7, 1.7, BulkDensitySources.Roof, "the most that was found for it"),
    ]);

    private static BulkDensity PerCubicMetre(
        string name, BulkMaterial material, MoistureState moisture, double lowTonnes, double highTonnes, Source source, string conditions = "") =>
        new(name, material, moisture, Density.FromKilogramsPerLiter(lowTonnes), Density.FromKilogramsPerLiter(highTonnes), source, conditions);

    private static BulkDensity PerCubicYard(
        string name, BulkMaterial material, MoistureState moisture, double lowPounds, double highPounds, Source source, string conditions = "") =>
        new(name, material, moisture, Density.FromPoundsPerCubicYard(lowPounds), Density.FromPoundsPerCubicYard(highPounds), source, conditions);
}
