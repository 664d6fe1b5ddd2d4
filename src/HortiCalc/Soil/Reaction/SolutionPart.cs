using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A volume of a solution and its pH.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record SolutionPart
{
    /// <summary>Describes a part of a blend.</summary>
    /// <param name="volume">The volume; above zero.</param>
    /// <param name="ph">Its pH.</param>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above zero.</exception>
    public SolutionPart(Volume volume, Ph ph)
    {
        Guard.Positive(Boundary.Litres(volume), "L", nameof(volume));
        Volume = HouseUnits.Normalise(volume);
        Ph = ph;
    }

    /// <summary>The volume.</summary>
    public Volume Volume { get; }

    /// <summary>Its pH.</summary>
    public Ph Ph { get; }

    /// <summary>The part in metric units and invariant culture.</summary>
    /// <returns>For instance <c>10 L of pH 5.8</c>.</returns>
    public override string ToString() => $"{QuantityText.Of(Volume, TextStyle.Default)} of {Ph}";
}
