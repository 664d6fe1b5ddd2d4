using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>What goes into a vehicle at once.</summary>
/// <remarks>Immutable; equal when the items are equal.</remarks>
public sealed record Trip
{
    /// <summary>Adds up a trip.</summary>
    /// <param name="items">What is carried, one item at least.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no item.</exception>
    public Trip(IReadOnlyList<HaulItem> items)
    {
        Guard.AtLeast(Guard.NotNull(items).Count, 1, nameof(items));
        Items = ValueList<HaulItem>.Of(items);
        Mass = UnitsNet.Mass.FromKilograms(Items.Sum(item => item.Count * Boundary.Kilograms(item.Mass)));
        Volume = UnitsNet.Volume.FromLiters(Items.Sum(item => item.Count * Boundary.Litres(item.Volume)));
    }

    /// <summary>What is carried.</summary>
    public IReadOnlyList<HaulItem> Items { get; }

    /// <summary>What it weighs together.</summary>
    public Mass Mass { get; }

    /// <summary>The room it takes together.</summary>
    public Volume Volume { get; }

    /// <summary>One line in metric units and invariant culture.</summary>
    /// <returns>For instance <c>7 × compost, 1 × bark: 394 kg</c>.</returns>
    public override string ToString() => $"{string.Join(", ", Items.Select(item => $"{QuantityText.Of(item.Count, TextStyle.Default)} × {item.Name}"))}: {QuantityText.Of(Mass, TextStyle.Default)}";
}
