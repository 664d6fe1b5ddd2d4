using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Plants;

/// <summary>The share of seed that grows to normal seedlings, by soil temperature.</summary>
/// <remarks>
/// The printed table writes 0 for what it does not know too. A zero is kept where the days to emergence of the same trials say that nothing
/// germinates there. Where those were not tested (or have days: asparagus at 40 °C), and where days are printed beside the zero (cabbage at 20 and
/// 30 °C, cauliflower at 20 °C, parsley at 15 °C), the share is missing.
/// </remarks>
public static class NormalSeedlings
{
    /// <summary>Every table there is.</summary>
    public static IReadOnlyList<NormalSeedlingTable> All { get; } = ValueList<NormalSeedlingTable>.Of(HarringtonSeedlings.Shares);

    /// <summary>The table of a crop.</summary>
    /// <param name="crop">The crop in plain English, capitals or not: <c>bean, snap</c>.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentException">There is no such crop, or the name is empty.</exception>
    public static NormalSeedlingTable Of(string crop)
    {
        Guard.NotBlank(crop);
        return All.FirstOrDefault(table => table.Crop.Equals(crop, StringComparison.OrdinalIgnoreCase))
            ?? throw new ArgumentException($"crop was '{crop}'; allowed: {string.Join("; ", All.Select(table => table.Crop))}.", nameof(crop));
    }

    /// <summary>The share of normal seedlings at a soil temperature.</summary>
    /// <param name="soil">The soil temperature, within the table.</param>
    /// <param name="table">The table of a crop.</param>
    /// <returns>
    /// The share, in a straight line between two printed ones; <see langword="null"/> where it is not known there or on one side of it.
    /// </returns>
    /// <exception cref="ArgumentNullException">The table is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside the table.</exception>
    /// <example><code>
    /// Estimate&lt;Ratio&gt;? lettuce = NormalSeedlings.At(Temperature.FromDegreesFahrenheit(86), NormalSeedlings.Of("lettuce"));  // 12 %
    /// Estimate&lt;Ratio&gt;? unknown = NormalSeedlings.At(Temperature.FromDegreesCelsius(20), NormalSeedlings.Of("cabbage"));    // null
    /// </code></example>
    public static Estimate<Ratio>? At(Temperature soil, NormalSeedlingTable table)
    {
        Guard.NotNull(table);
        double celsius = SeedbedTemperature.Celsius(soil, nameof(soil));
        Method method = table.MethodFor(nameof(soil));
        method.Require(celsius, "°C", nameof(soil));
        int above = 0;
        while (table.Cells[above].SoilCelsius < celsius)
            above++;
        int below = table.Cells[above].SoilCelsius == celsius ? above : above - 1;
        if (table.Cells[below].Percent is not double from || table.Cells[above].Percent is not double to)
            return null;
        double span = table.Cells[above].SoilCelsius - table.Cells[below].SoilCelsius;
        double percent = span == 0 ? from : from + (to - from) * ((celsius - table.Cells[below].SoilCelsius) / span);
        return new Estimate<Ratio>(Ratio.FromPercent(percent), method, cautions: [GerminationEvidence.NormalSeedlings]);
    }
}
