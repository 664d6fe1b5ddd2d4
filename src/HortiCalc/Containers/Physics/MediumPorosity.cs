using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>Pores of a medium from densities.</summary>
/// <example><code>
/// Ratio pores = MediumPorosity.FromDensities(Density.FromGramsPerCubicCentimeter(0.11), Density.FromGramsPerCubicCentimeter(1.55));   // 92.9 %
/// Estimate&lt;Ratio&gt; byDensityAlone = MediumPorosity.FromBulkDensity(Density.FromGramsPerCubicCentimeter(0.11));                       // 92.5 %
/// Console.WriteLine($"{pores} {byDensityAlone}");
/// </code></example>
public static class MediumPorosity
{
    private static readonly Method ByRegression = new(
        "pore-space-by-density",
        "pore space from the dry bulk density alone",
        PhysicsSources.PoreSpaceRegression,
        new Domain(
            "238 horticultural substrates without closed pores: not with polystyrene",
            new DomainLimit("dryBulkDensity", 0, 1000, "g/L")));

    private static readonly Method AirByRegression = new(
        "air-volume-by-densities",
        "air volume from dry and drained bulk density",
        PhysicsSources.PoreSpaceRegression,
        new Domain(
            "238 horticultural substrates without closed pores: not with polystyrene",
            new DomainLimit("dryBulkDensity", 0, 1000, "g/L")));

    /// <summary>Total porosity: one less the bulk density divided by that of the particles. Exact.</summary>
    /// <remarks>The 2.65 g/cm³ of minerals is wrong for organic media, whose particles lie from 0.35 to 2.1 g/cm³ (W. C. Fonteno, HortScience 25, 1990).</remarks>
    /// <param name="dryBulkDensity">The dry mass by volume; zero or more.</param>
    /// <param name="particleDensity">The density of the particles; above zero, not below the bulk density.</param>
    /// <returns>The pores as a share of the volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A density lies outside what is said above.</exception>
    public static Ratio FromDensities(Density dryBulkDensity, Density particleDensity)
    {
        double bulk = Guard.NotNegative(Boundary.KilogramsPerCubicMetre(dryBulkDensity), "kg/m³", nameof(dryBulkDensity));
        double particles = Guard.AtLeast(
            Guard.Positive(Boundary.KilogramsPerCubicMetre(particleDensity), "kg/m³", nameof(particleDensity)), bulk, "kg/m³", nameof(particleDensity));
        return Ratio.FromPercent(100 * (1 - bulk / particles));
    }

    /// <summary>Total porosity from the dry bulk density alone: 96.72 − 0.038 × density in g/L.</summary>
    /// <param name="dryBulkDensity">The dry mass by volume; zero or more, and no more than 1000 g/L, our own bound: the abstract prints none.</param>
    /// <returns>The pores as a share of the volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The density lies outside what is said above.</exception>
    public static Estimate<Ratio> FromBulkDensity(Density dryBulkDensity) => new(
        Ratio.FromPercent(PoresPercent(dryBulkDensity, ByRegression)), ByRegression, cautions: [PhysicsCautions.Packing]);

    /// <summary>The air of a drained medium from its dry and its drained bulk density: 96.72 + 0.062 × dry in g/L − 100 × drained in g/mL.</summary>
    /// <param name="dryBulkDensity">The dry mass by volume; zero or more, and no more than 1000 g/L.</param>
    /// <param name="drainedBulkDensity">The mass by volume after draining; not below the dry one, and no more than fills the pores with water.</param>
    /// <returns>The air as a share of the volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A density lies outside what is said above.</exception>
    public static Estimate<Ratio> AirFromDensities(Density dryBulkDensity, Density drainedBulkDensity)
    {
        double poresPercent = PoresPercent(dryBulkDensity, AirByRegression);
        double dry = Boundary.KilogramsPerCubicMetre(dryBulkDensity);
        double drained = Guard.Within(
            Boundary.KilogramsPerCubicMetre(drainedBulkDensity), dry, dry + 10 * poresPercent, "kg/m³", nameof(drainedBulkDensity));

        // The printed line is the pore space less the water, 100 (DD − VW / 1000): 96.72 + 0.062 VW − 100 DD.
        return new Estimate<Ratio>(Ratio.FromPercent(Math.Max(0, 96.72 + 0.062 * dry - drained / 10)), AirByRegression, cautions: [PhysicsCautions.Packing]);
    }

    private static double PoresPercent(Density dryBulkDensity, Method method)
    {
        double gramsPerLitre = Boundary.KilogramsPerCubicMetre(dryBulkDensity);
        method.Require(gramsPerLitre, "g/L", nameof(dryBulkDensity));
        return 96.72 - 0.038 * gramsPerLitre;
    }
}
