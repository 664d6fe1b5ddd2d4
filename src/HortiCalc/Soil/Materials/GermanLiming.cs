using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The German scheme: the pH in calcium chloride to aim at, and the lime that keeps it there, by soil group and humus.</summary>
/// <remarks>
/// Its pH is in calcium chloride, lower than in water, and its rates are kilograms of calcium oxide per hectare; the material of every answer says
/// so. The table for soils below the target was not seen. It prints humus to a tenth of a percent, up to 4, from 4.1 to 8 and so on; a share between is
/// taken for the higher row, our reading.
/// </remarks>
public static class GermanLiming
{
    // Soil group, use, highest humus in percent, target pH, maintenance and most in kg CaO/ha and year. Grass on loam: the maintenance is cut off in the copy seen.
    private static readonly (GermanSoilGroup Group, GermanLandUse Use, double HighestHumusPercent, double TargetPh, double? Maintenance, double Most)[] Rows =
    [
        (GermanSoilGroup.Sand, GermanLandUse.Arable, 4, 5.6, 600, 1000),
        (GermanSoilGroup.Sand, GermanLandUse.Arable, 8, 5.2, 500, 1000),
        (GermanSoilGroup.Sand, GermanLandUse.Arable, 15, 4.8, 400, 1000),
        (GermanSoilGroup.Sand, GermanLandUse.Arable, 30, 4.3, 200, 1000),
        (GermanSoilGroup.Sand, GermanLandUse.Arable, 100, 4.1, 0, 1000),
        (GermanSoilGroup.LoamySand, GermanLandUse.Arable, 4, 6.0, 900, 1500),
        (GermanSoilGroup.LoamySand, GermanLandUse.Arable, 8, 5.6, 800, 1500),
        (GermanSoilGroup.LoamySand, GermanLandUse.Arable, 15, 5.2, 700, 1500),
        (GermanSoilGroup.LoamySand, GermanLandUse.Arable, 30, 4.8, 300, 1500),
        (GermanSoilGroup.SandyLoam, GermanLandUse.Arable, 4, 6.4, 1100, 2000),
        (GermanSoilGroup.SandyLoam, GermanLandUse.Arable, 8, 6.0, 900, 2000),
        (GermanSoilGroup.SandyLoam, GermanLandUse.Arable, 15, 5.6, 700, 2000),
        (GermanSoilGroup.SandyLoam, GermanLandUse.Arable, 30, 5.1, 400, 2000),
        (GermanSoilGroup.Loam, GermanLandUse.Arable, 4, 6.8, 1300, 3000),
        (GermanSoilGroup.Loam, GermanLandUse.Arable, 8, 6.3, 1100, 3000),
        (GermanSoilGroup.Loam, GermanLandUse.Arable, 15, 5.8, 900, 3000),
        (GermanSoilGroup.Loam, GermanLandUse.Arable, 30, 5.2, 500, 3000),
        (GermanSoilGroup.Clay, GermanLandUse.Arable, 4, 7.0, 1600, 4000),
        (GermanSoilGroup.Clay, GermanLandUse.Arable, 8, 6.5, 1500, 4000),
        (GermanSoilGroup.Clay, GermanLandUse.Arable, 15, 6.0, 1200, 4000),
        (GermanSoilGroup.Clay, GermanLandUse.Arable, 30, 5.4, 600, 4000),
        (GermanSoilGroup.Sand, GermanLandUse.Grass, 8, 5.0, 500, 1000),
        (GermanSoilGroup.Sand, GermanLandUse.Grass, 15, 4.8, 400, 1000),
        (GermanSoilGroup.Sand, GermanLandUse.Grass, 30, 4.5, 300, 1000),
        (GermanSoilGroup.Sand, GermanLandUse.Grass, 100, 4.3, 0, 1000),
        (GermanSoilGroup.LoamySand, GermanLandUse.Grass, 8, 5.4, 600, 1000),
        (GermanSoilGroup.LoamySand, GermanLandUse.Grass, 15, 5.2, 500, 1000),
        (GermanSoilGroup.LoamySand, GermanLandUse.Grass, 30, 5.0, 300, 1000),
        (GermanSoilGroup.SandyLoam, GermanLandUse.Grass, 8, 5.7, 700, 1500),
        (GermanSoilGroup.SandyLoam, GermanLandUse.Grass, 15, 5.4, 600, 1500),
        (GermanSoilGroup.SandyLoam, GermanLandUse.Grass, 30, 5.1, 400, 1500),
        (GermanSoilGroup.Loam, GermanLandUse.Grass, 8, 5.9, null, 1500),
        (GermanSoilGroup.Loam, GermanLandUse.Grass, 15, 5.6, null, 1500),
        (GermanSoilGroup.Loam, GermanLandUse.Grass, 30, 5.3, null, 1500),
    ];

    private static readonly Method Evidence = new(
        "lime-german-scheme",
        "German target pH and maintenance lime",
        LimeMethodSources.GermanScheme,
        new Domain("Germany; pH in calcium chloride; kilograms of calcium oxide per hectare", new DomainLimit("humus", 0, 100, "%")));

    /// <summary>The advice for a soil.</summary>
    /// <param name="group">The soil group.</param>
    /// <param name="use">The use of the land.</param>
    /// <param name="humus">The humus by mass; 0 to 100 %.</param>
    /// <returns>The target, the maintenance and the most in a year.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The table has no row for the soil; peat stands with sand.</exception>
    /// <example><code>
    /// GermanLimeAdvice advice = GermanLiming.Advice(GermanSoilGroup.Loam, GermanLandUse.Arable, MassFraction.FromPercent(3));
    /// Console.WriteLine(advice.TargetInCalciumChloride);   // pH 6.8
    /// Console.WriteLine(advice.Maintenance!.As(LimingMaterial.GroundLimestone));
    /// </code></example>
    public static GermanLimeAdvice Advice(GermanSoilGroup group, GermanLandUse use, MassFraction humus)
    {
        Guard.Defined(group);
        Guard.Defined(use);
        double percent = Guard.Within(Boundary.MassFraction(humus) * 100, 0, 100, "%", nameof(humus));
        (GermanSoilGroup Group, GermanLandUse Use, double HighestHumusPercent, double TargetPh, double? Maintenance, double Most)[] rows =
            [.. Rows.Where(row => row.Group == group && row.Use == use)];
        if (rows.Length == 0)
            throw new ArgumentOutOfRangeException(nameof(group), $"group was {group}; allowed for {use}: {string.Join(", ", Rows.Where(row => row.Use == use).Select(row => row.Group).Distinct())}.");
        foreach ((GermanSoilGroup Group, GermanLandUse Use, double HighestHumusPercent, double TargetPh, double? Maintenance, double Most) row in rows)
        {
            if (percent <= row.HighestHumusPercent)
            {
                return new GermanLimeAdvice(
                    new Ph(row.TargetPh),
                    row.Maintenance is { } maintenance ? OfOxide(maintenance) : null,
                    OfOxide(row.Most));
            }
        }

        throw Guard.Refused(nameof(humus), percent, "%", $"up to {Guard.Number(rows[^1].HighestHumusPercent)} %, which is what '{Evidence.Name}' prints for {group}");
    }

    private static LimeRequirement OfOxide(double kilogramsPerHectare)
    {
        Estimate<AreaDensity> rate = new(AreaDensity.FromGramsPerSquareMeter(kilogramsPerHectare / 10), Evidence);
        return new LimeRequirement(rate.WithCautions(Liming.MaterialCautions(rate, LimingMaterial.CalciumOxide)), LimingMaterial.CalciumOxide);
    }
}
