using HortiCalc.Display;
using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The chances that the display of a freeze shows.</summary>
internal static class FreezeDisplay
{
    public static readonly double[] Percents = [10, 50, 90];

    public static IEnumerable<DisplayRow> Rows<T>(string label, Func<Ratio, Estimate<T>?> valueAt, TextStyle style)
        where T : notnull =>
        Percents.Select(percent => Ratio.FromPercent(percent)).Select(chance => new DisplayRow(
            $"{QuantityText.Of(chance, style)} {label}",
            valueAt(chance) is Estimate<T> estimate ? QuantityText.Of(estimate.Value, style) : "none"));
}
