using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The tables of available water, as printed.</summary>
internal static class AvailableWaterTables
{
    private const double InchesPerFoot = 12;

    // Field capacity, wilting point and their difference, m³/m³, low and high.
    private static readonly Dictionary<SoilTexture, (double[] FieldCapacity, double[] WiltingPoint, double[] Available)> FaoRows = new()
    {
        [SoilTexture.Sand] = ([0.07, 0.17], [0.02, 0.07], [0.05, 0.11]),
        [SoilTexture.LoamySand] = ([0.11, 0.19], [0.03, 0.10], [0.06, 0.12]),
        [SoilTexture.SandyLoam] = ([0.18, 0.28], [0.06, 0.16], [0.11, 0.15]),
        [SoilTexture.Loam] = ([0.20, 0.30], [0.07, 0.17], [0.13, 0.18]),
        [SoilTexture.SiltLoam] = ([0.22, 0.36], [0.09, 0.21], [0.13, 0.19]),
        [SoilTexture.Silt] = ([0.28, 0.36], [0.12, 0.22], [0.16, 0.20]),
        [SoilTexture.SiltyClayLoam] = ([0.30, 0.37], [0.17, 0.24], [0.13, 0.18]),
        [SoilTexture.SiltyClay] = ([0.30, 0.42], [0.17, 0.29], [0.13, 0.19]),
        [SoilTexture.Clay] = ([0.32, 0.40], [0.20, 0.24], [0.12, 0.20]),
    };

    // Inches an inch, low and high, and the typical inches a foot.
    private static readonly Dictionary<(SoilTexture Texture, SandGrade Grade), (double Low, double High, double TypicalPerFoot)> ManualRows = new()
    {
        [(SoilTexture.Sand, SandGrade.Coarse)] = (0.01, 0.03, 0.25),
        [(SoilTexture.Sand, SandGrade.Unstated)] = (0.01, 0.03, 0.25),
        [(SoilTexture.Sand, SandGrade.Fine)] = (0.05, 0.07, 0.75),
        [(SoilTexture.Sand, SandGrade.VeryFine)] = (0.05, 0.07, 0.75),
        [(SoilTexture.LoamySand, SandGrade.Coarse)] = (0.06, 0.08, 0.85),
        [(SoilTexture.LoamySand, SandGrade.Unstated)] = (0.06, 0.08, 0.85),
        [(SoilTexture.LoamySand, SandGrade.Fine)] = (0.09, 0.11, 1.25),
        [(SoilTexture.LoamySand, SandGrade.VeryFine)] = (0.10, 0.12, 1.25),
        [(SoilTexture.SandyLoam, SandGrade.Coarse)] = (0.10, 0.12, 1.3),
        [(SoilTexture.SandyLoam, SandGrade.Unstated)] = (0.11, 0.13, 1.45),
        [(SoilTexture.SandyLoam, SandGrade.Fine)] = (0.13, 0.15, 1.7),
        [(SoilTexture.SandyLoam, SandGrade.VeryFine)] = (0.15, 0.17, 1.9),
        [(SoilTexture.Loam, SandGrade.Unstated)] = (0.16, 0.18, 2),
        [(SoilTexture.SiltLoam, SandGrade.Unstated)] = (0.19, 0.22, 2.45),
        [(SoilTexture.Silt, SandGrade.Unstated)] = (0.16, 0.18, 2),
        [(SoilTexture.SandyClayLoam, SandGrade.Unstated)] = (0.14, 0.16, 1.8),
        [(SoilTexture.ClayLoam, SandGrade.Unstated)] = (0.15, 0.17, 1.9),
        [(SoilTexture.SiltyClayLoam, SandGrade.Unstated)] = (0.17, 0.19, 2.15),
        [(SoilTexture.SandyClay, SandGrade.Unstated)] = (0.15, 0.17, 1.9),
        [(SoilTexture.SiltyClay, SandGrade.Unstated)] = (0.15, 0.17, 1.9),
        [(SoilTexture.Clay, SandGrade.Unstated)] = (0.14, 0.16, 1.8),
    };

    // The American names of the Australian field textures that have one.
    private static readonly Dictionary<SoilTexture, string> AustralianNames = new()
    {
        [SoilTexture.Sand] = "sand",
        [SoilTexture.LoamySand] = "loamy sand",
        [SoilTexture.SandyLoam] = "sandy loam",
        [SoilTexture.Loam] = "loam",
        [SoilTexture.SandyClayLoam] = "sandy clay loam",
        [SoilTexture.ClayLoam] = "clay loam",
    };

    public static WaterHolding Fao56(SoilComposition soil, AvailableWaterMethod method)
    {
        (double[] fieldCapacity, double[] wiltingPoint, double[] available) = FaoRows.TryGetValue(soil.Texture, out (double[], double[], double[]) row)
            ? row
            : throw NoRow(soil, method, FaoRows.Keys);
        return new WaterHolding(
            new Estimate<VolumeConcentration>(
                Share((available[0] + available[1]) / 2), method.Method, Range(available[0], available[1]), cautions: [SoilWaterCautions.TableSpread]),
            Range(fieldCapacity[0], fieldCapacity[1]),
            Range(wiltingPoint[0], wiltingPoint[1]));
    }

    public static WaterHolding NationalAgronomyManual(SoilComposition soil, AvailableWaterMethod method)
    {
        // Only sands, loamy sands and sandy loams are graded by their sand.
        if (!ManualRows.TryGetValue((soil.Texture, soil.SandGrade), out (double Low, double High, double TypicalPerFoot) row))
            row = ManualRows[(soil.Texture, SandGrade.Unstated)];
        return new WaterHolding(new Estimate<VolumeConcentration>(
            Share(row.TypicalPerFoot / InchesPerFoot), method.Method, Range(row.Low, row.High), cautions: [SoilWaterCautions.TableSpread]));
    }

    public static WaterHolding Ars(SoilComposition soil, AvailableWaterMethod method)
    {
        AverageSoil average = AverageSoils.Of(soil.Texture);
        return new WaterHolding(
            new Estimate<VolumeConcentration>(
                Share(Boundary.VolumeFraction(average.FieldCapacity) - Boundary.VolumeFraction(average.WiltingPoint)),
                method.Method,
                cautions: [SoilWaterCautions.TableSpread]),
            new EstimateRange<VolumeConcentration>(average.FieldCapacity, average.FieldCapacity, "one value"),
            new EstimateRange<VolumeConcentration>(average.WiltingPoint, average.WiltingPoint, "one value"));
    }

    public static WaterHolding VictoriaField(SoilComposition soil, AvailableWaterMethod method) => Victoria(soil, method, SoilWaterSources.VictoriaField);

    public static WaterHolding VictoriaVegetables(SoilComposition soil, AvailableWaterMethod method) =>
        Victoria(soil, method, SoilWaterSources.VictoriaTotal);

    private static WaterHolding Victoria(SoilComposition soil, AvailableWaterMethod method, Source source)
    {
        FieldGradeWater[] rows = [.. FieldGradeWaters.All.Where(row => row.Source == source && row.IsTotal)];
        FieldGradeWater? found = AustralianNames.TryGetValue(soil.Texture, out string? name) ? rows.FirstOrDefault(row => row.Grade == name) : null;
        if (found is null)
            throw NoRow(soil, method, AustralianNames.Where(pair => rows.Any(row => row.Grade == pair.Value)).Select(pair => pair.Key));
        return new WaterHolding(new Estimate<VolumeConcentration>(
            found.Water,
            method.Method,
            found.Low is { } low && found.High is { } high ? new EstimateRange<VolumeConcentration>(low, high, "range printed by the source") : null,
            cautions: [SoilWaterCautions.TableSpread, SoilWaterCautions.AustralianName]));
    }

    private static ArgumentException NoRow(SoilComposition soil, AvailableWaterMethod method, IEnumerable<SoilTexture> has) => new(
        $"soil was {soil.Texture}, which '{method.Method.Name}' does not list; allowed: {string.Join(", ", has.Order())}.", nameof(soil));

    private static VolumeConcentration Share(double share) => VolumeConcentration.FromPercent(share * 100);

    private static EstimateRange<VolumeConcentration> Range(double low, double high) => new(Share(low), Share(high), "range printed by the source");
}
