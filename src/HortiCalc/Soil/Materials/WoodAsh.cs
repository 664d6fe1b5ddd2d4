using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The limit of wood ash, which limes as it feeds.</summary>
/// <example><code>
/// Estimate&lt;AreaDensity&gt; most = WoodAsh.MostPerYear(new Ph(6.2));
/// Console.WriteLine(most);
/// </code></example>
public static class WoodAsh
{
    private const double HighestPh = 7.0;

    private static readonly Method Limit = new(
        "wood-ash-yearly-limit",
        "the most wood ash in a year",
        WoodAshSources.ExtensionNote,
        new Domain("gardens up to pH 7.0; other sources print from 20 lb per 1000 square feet every other year to 50 a year"));

    /// <summary>The most wood ash in a year: 20 lb/1000 sq ft up to pH 7.0, none above.</summary>
    /// <param name="current">The pH of the soil in water.</param>
    /// <returns>The most, with its cautions.</returns>
    public static Estimate<AreaDensity> MostPerYear(Ph current)
    {
        double poundsPer1000SquareFeet = current.Value > HighestPh ? 0 : 20;
        return new Estimate<AreaDensity>(
            AreaDensity.FromGramsPerSquareMeter(poundsPer1000SquareFeet * LimeUnits.GramsPerSquareMetrePerPoundPer1000SquareFeet),
            Limit,
            cautions: [LimeCautions.WoodAsh, LimeCautions.CoalAsh]);
    }
}
