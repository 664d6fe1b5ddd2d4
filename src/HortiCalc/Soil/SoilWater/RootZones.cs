using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>How deep crops root by three tables, and the share of the available water that they take without loss.</summary>
/// <remarks>
/// Roots go as deep as the soil lets them and watering invites them: a pan, rock, ground water or light daily watering keeps them above the printed
/// depth. Most water is drawn from the upper half.
/// </remarks>
public static class RootZones
{
    private const double MillimetresPerDayOfTable = 5;
    private const double SharePerMillimetre = 0.04;
    private const double LeastShare = 0.1;
    private const double MostShare = 0.8;

    private static readonly Method DepletionRule = new(
        "depletion-share-fao-56",
        "share of the water taken without loss, FAO-56",
        SoilWaterSources.Fao56Table22,
        new Domain("the share of table 22, changed by 0.04 for each millimetre a day that crop water use differs from 5, and kept from 0.1 to 0.8"));

    /// <summary>Every row of the three tables.</summary>
    public static IReadOnlyList<CropRootZone> All { get; } = ValueList<CropRootZone>.Of(RootZoneRows.All);

    /// <summary>What the sources print of the root depth of a crop.</summary>
    /// <param name="crop">One or more words that all stand in the name, capitals and plural or not: <c>tomato</c>, <c>sweet corn</c>.</param>
    /// <returns>The rows; none where no source has the crop.</returns>
    /// <exception cref="ArgumentException">The crop is empty.</exception>
    /// <example><code>
    /// RootZoneComparison lettuce = RootZones.Compare("lettuce");
    /// Console.WriteLine(lettuce.Rows.Count);   // 3
    /// </code></example>
    public static RootZoneComparison Compare(string crop)
    {
        Guard.NotBlank(crop);
        return new RootZoneComparison(crop, ValueList<CropRootZone>.Of(All.Where(row => CropNames.Matches(crop, row.Crop))));
    }

    /// <summary>The share of the available water that a crop takes without loss, for how much it uses a day.</summary>
    /// <param name="tabulated">The share at 5 mm a day, as <see cref="CropRootZone.Depletion"/>; above 0, up to 100 %.</param>
    /// <param name="cropWaterUse">What the crop uses.</param>
    /// <returns>The share, from 10 to 80 %: less where the crop uses more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    /// <example><code>
    /// Estimate&lt;Ratio&gt; onADryDay = RootZones.DepletionShare(Ratio.FromPercent(40), WaterRate.FromMillimetresPerDay(8));
    /// Console.WriteLine(onADryDay.Value.Percent.ToString("F0", System.Globalization.CultureInfo.InvariantCulture));   // 28
    /// </code></example>
    public static Estimate<Ratio> DepletionShare(Ratio tabulated, WaterRate cropWaterUse)
    {
        double share = Guard.Within(Guard.Positive(Boundary.Fraction(tabulated) * 100, "%", nameof(tabulated)), 0, 100, "%", nameof(tabulated)) / 100;
        double adjusted = share + SharePerMillimetre * (MillimetresPerDayOfTable - cropWaterUse.MillimetresPerDay);
        return new Estimate<Ratio>(Ratio.FromPercent(Math.Clamp(adjusted, LeastShare, MostShare) * 100), DepletionRule);
    }
}
