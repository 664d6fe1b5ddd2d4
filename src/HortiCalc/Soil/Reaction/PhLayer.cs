using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A layer of soil and its pH.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record PhLayer
{
    /// <summary>Describes a layer.</summary>
    /// <param name="thickness">How thick it is; above zero.</param>
    /// <param name="ph">Its pH, read in the same way for all layers.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is not above zero.</exception>
    public PhLayer(Length thickness, Ph ph)
    {
        Guard.Positive(Boundary.Metres(thickness), "m", nameof(thickness));
        Thickness = HouseUnits.Normalise(thickness);
        Ph = ph;
    }

    /// <summary>How thick it is.</summary>
    public Length Thickness { get; }

    /// <summary>Its pH.</summary>
    public Ph Ph { get; }

    /// <summary>The layer in metric units and invariant culture.</summary>
    /// <returns>For instance <c>5 cm of pH 5.8</c>.</returns>
    public override string ToString() => $"{QuantityText.Of(Thickness, TextStyle.Default)} of {Ph}";
}
