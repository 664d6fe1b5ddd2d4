using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The conductivity and diffusivity of sand and clay by how densely they are packed and how moist they are.</summary>
/// <remarks>
/// The source prints ranges, over five methods of predicting them; the value is the middle of the range. Only the packings and moistures of its
/// table are answered, nothing between them.
/// </remarks>
public static class PackedSoil
{
    private static readonly Source Farouki = new(
        "farouki-1982",
        "Thermal conductivity and diffusivity of sand and clay soils (after Farouki, CRREL Report 82-8)",
        "US Army Cold Regions Research and Engineering Laboratory",
        1982,
        "https://groundloopdesign.com");

    private static readonly Method Table = new(
        "packed-soil.table",
        "table of sand and clay by dry density and moisture",
        Farouki,
        new Domain(
            "unfrozen; dry densities of 1300, 1600 and 1900 kg/m³; moistures of 5, 10, 15 and 20 % of the dry mass, at 1900 kg/m³ up to 15 %",
            new DomainLimit("dryDensity", 1300, 1900, "kg/m³"),
            new DomainLimit("moisture", 5, 20, "%")));

    private static readonly Row[] Rows =
    [
        new(SoilGrain.Sand, 1900, 5, 2.1, 3.3, 0.089, 0.14),
        new(SoilGrain.Sand, 1900, 10, 2.4, 3.5, 0.086, 0.12),
        new(SoilGrain.Sand, 1900, 15, 2.8, 3.8, 0.085, 0.11),
        new(SoilGrain.Sand, 1600, 5, 1.4, 2.4, 0.072, 0.12),
        new(SoilGrain.Sand, 1600, 10, 2.1, 2.6, 0.089, 0.11),
        new(SoilGrain.Sand, 1600, 15, 2.3, 2.8, 0.083, 0.10),
        new(SoilGrain.Sand, 1600, 20, 2.4, 2.9, 0.078, 0.093),
        new(SoilGrain.Sand, 1300, 5, 0.9, 1.9, 0.056, 0.12),
        new(SoilGrain.Sand, 1300, 10, 1.0, 1.9, 0.056, 0.10),
        new(SoilGrain.Sand, 1300, 15, 1.0, 2.1, 0.047, 0.093),
        new(SoilGrain.Sand, 1300, 20, 1.2, 2.1, 0.048, 0.083),
        new(SoilGrain.Clay, 1900, 5, 1.0, 1.4, 0.045, 0.060),
        new(SoilGrain.Clay, 1900, 10, 1.0, 1.4, 0.037, 0.049),
        new(SoilGrain.Clay, 1900, 15, 1.4, 1.9, 0.043, 0.059),
        new(SoilGrain.Clay, 1600, 5, 0.9, 1.0, 0.045, 0.054),
        new(SoilGrain.Clay, 1600, 10, 0.9, 1.0, 0.037, 0.045),
        new(SoilGrain.Clay, 1600, 15, 1.0, 1.2, 0.034, 0.045),
        new(SoilGrain.Clay, 1600, 20, 1.0, 1.4, 0.038, 0.051),
        new(SoilGrain.Clay, 1300, 5, 0.5, 0.9, 0.033, 0.056),
        new(SoilGrain.Clay, 1300, 10, 0.6, 0.9, 0.033, 0.047),
        new(SoilGrain.Clay, 1300, 15, 0.7, 0.95, 0.032, 0.044),
        new(SoilGrain.Clay, 1300, 20, 0.7, 1.0, 0.028, 0.042),
    ];

    /// <summary>How fast the soil levels out temperatures.</summary>
    /// <param name="grain">Sand or clay.</param>
    /// <param name="dryDensity">How densely it is packed, dry: 1300, 1600 or 1900 kg/m³.</param>
    /// <param name="moisture">Its water as a share of the dry mass: 5, 10, 15 or 20 %.</param>
    /// <returns>The middle of the printed range, and the range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The table has no such soil.</exception>
    /// <example><code>
    /// Estimate&lt;ThermalDiffusivity&gt; sand = PackedSoil.Diffusivity(
    ///     SoilGrain.Sand, Density.FromKilogramsPerCubicMeter(1600), Ratio.FromPercent(10));
    /// </code></example>
    public static Estimate<ThermalDiffusivity> Diffusivity(SoilGrain grain, Density dryDensity, Ratio moisture)
    {
        Row row = Find(grain, dryDensity, moisture);
        return Of(row.LowSquareMetresPerDay, row.HighSquareMetresPerDay, ThermalDiffusivity.FromSquareMetresPerDay);
    }

    /// <summary>How well the soil conducts heat.</summary>
    /// <param name="grain">Sand or clay.</param>
    /// <param name="dryDensity">How densely it is packed, dry: 1300, 1600 or 1900 kg/m³.</param>
    /// <param name="moisture">Its water as a share of the dry mass: 5, 10, 15 or 20 %.</param>
    /// <returns>The middle of the printed range, and the range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The table has no such soil.</exception>
    public static Estimate<ThermalConductivity> Conductivity(SoilGrain grain, Density dryDensity, Ratio moisture)
    {
        Row row = Find(grain, dryDensity, moisture);
        return Of(row.LowWattsPerMetreKelvin, row.HighWattsPerMetreKelvin, value => ThermalConductivity.FromWattsPerMeterKelvin(value));
    }

    private static Estimate<T> Of<T>(double low, double high, Func<double, T> quantity)
        where T : notnull => new(
            quantity((low + high) / 2),
            Table,
            new EstimateRange<T>(quantity(low), quantity(high), "printed range of five methods of prediction"));

    private static Row Find(SoilGrain grain, Density dryDensity, Ratio moisture)
    {
        const double hair = 1e-9;
        Guard.Defined(grain);
        double kilogramsPerCubicMetre = Table.Require(Boundary.KilogramsPerCubicMetre(dryDensity), "kg/m³", nameof(dryDensity));
        double percent = Table.Require(Boundary.Fraction(moisture) * 100, "%", nameof(moisture));
        Row[] packed = [.. Rows.Where(row => row.Grain == grain && Math.Abs(row.KilogramsPerCubicMetre - kilogramsPerCubicMetre) < hair * 1900)];
        if (packed.Length == 0)
            throw Guard.Refused(nameof(dryDensity), kilogramsPerCubicMetre, "kg/m³", "1300, 1600 or 1900 kg/m³, as in the table");
        Row? found = packed.FirstOrDefault(row => Math.Abs(row.MoisturePercent - percent) < hair * 100);
        return found ?? throw Guard.Refused(
            nameof(moisture), percent, "%", $"{string.Join(", ", packed.Select(row => Guard.Number(row.MoisturePercent)))} %, as in the table");
    }

    private sealed record Row(
        SoilGrain Grain,
        double KilogramsPerCubicMetre,
        double MoisturePercent,
        double LowWattsPerMetreKelvin,
        double HighWattsPerMetreKelvin,
        double LowSquareMetresPerDay,
        double HighSquareMetresPerDay);
}
