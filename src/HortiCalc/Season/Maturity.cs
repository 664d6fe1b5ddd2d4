using System.Text.Json.Serialization;
using HortiCalc.Display;

namespace HortiCalc.Season;

/// <summary>How long a crop takes from planting out to the first harvest: in days, or in warmth.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(DaysToMaturity), "days")]
[JsonDerivedType(typeof(HeatToMaturity), "heat")]
public abstract record Maturity
{
    private protected Maturity()
    {
    }

    internal abstract string Text(TextStyle style);

    /// <summary>The need in metric units and invariant culture.</summary>
    /// <returns>For instance <c>70 days</c>.</returns>
    public sealed override string ToString() => Text(TextStyle.Default);
}
