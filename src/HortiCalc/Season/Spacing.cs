using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>How far apart plants stand: in the row, and from row to row.</summary>
public sealed record Spacing
{
    /// <summary>Describes how far apart plants stand.</summary>
    /// <param name="inRow">From plant to plant in the row, more than zero.</param>
    /// <param name="betweenRows">From row to row, more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A distance is not more than zero.</exception>
    public Spacing(Length inRow, Length betweenRows)
    {
        Guard.Positive(Boundary.Metres(inRow), "m", nameof(inRow));
        Guard.Positive(Boundary.Metres(betweenRows), "m", nameof(betweenRows));
        InRow = HouseUnits.Normalise(inRow);
        BetweenRows = HouseUnits.Normalise(betweenRows);
    }

    /// <summary>From plant to plant in the row.</summary>
    public Length InRow { get; }

    /// <summary>From row to row.</summary>
    public Length BetweenRows { get; }

    /// <summary>The two distances.</summary>
    /// <returns>For instance <c>45 cm by 1.2 m</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    internal string ToString(TextStyle style) => $"{QuantityText.Of(InRow, style)} by {QuantityText.Of(BetweenRows, style)}";
}
