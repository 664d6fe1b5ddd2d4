using System.Text.Json.Serialization;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A corner of a bed, measured from any fixed point in two directions at right angles.</summary>
/// <remarks>Immutable; kept in metres, so that corners given in feet and in metres compare by place.</remarks>
public readonly record struct BedCorner
{
    /// <summary>Makes a corner.</summary>
    /// <param name="x">The distance in the first direction; may be negative.</param>
    /// <param name="y">The distance in the direction at right angles to it; may be negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">A distance is beyond a million metres.</exception>
    [JsonConstructor]
    public BedCorner(Length x, Length y)
    {
        Guard.Within(Boundary.Metres(x), -Dimension.LargestMetres, Dimension.LargestMetres, "m", nameof(x));
        Guard.Within(Boundary.Metres(y), -Dimension.LargestMetres, Dimension.LargestMetres, "m", nameof(y));
        X = HouseUnits.Normalise(x);
        Y = HouseUnits.Normalise(y);
    }

    /// <summary>The distance in the first direction.</summary>
    public Length X { get; }

    /// <summary>The distance in the direction at right angles to it.</summary>
    public Length Y { get; }

    /// <summary>The place in metres, in invariant culture.</summary>
    /// <returns>For instance <c>(4 m, 1.5 m)</c>.</returns>
    public override string ToString() => $"({Guard.Number(Boundary.Metres(X))} m, {Guard.Number(Boundary.Metres(Y))} m)";
}
