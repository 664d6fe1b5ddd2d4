using HortiCalc.Display;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>How the ends of a published span are written: one figure where the source prints one.</summary>
internal static class PublishedSpan
{
    public static string Text(IQuantity low, IQuantity high, TextStyle style)
    {
        string first = QuantityText.Of(low, style);
        return low.Equals(high) ? first : $"{first} to {QuantityText.Of(high, style)}";
    }
}
