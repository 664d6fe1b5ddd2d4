using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>Equal things to be carried: bags, bales, buckets.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record HaulItem
{
    /// <summary>Describes what is to be carried.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="count">How many; zero or more.</param>
    /// <param name="mass">What one weighs; greater than zero.</param>
    /// <param name="volume">The room one takes; greater than zero.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The count is negative, or mass or volume is not greater than zero.</exception>
    public HaulItem(string name, int count, Mass mass, Volume volume)
    {
        Name = Guard.NotBlank(name);
        Count = Guard.AtLeast(count, 0);
        Guard.Positive(Boundary.Kilograms(mass), "kg", nameof(mass));
        Guard.Positive(Boundary.Litres(volume), "L", nameof(volume));
        Mass = HouseUnits.Normalise(mass);
        Volume = HouseUnits.Normalise(volume);
    }

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>How many.</summary>
    public int Count { get; }

    /// <summary>What one weighs.</summary>
    public Mass Mass { get; }

    /// <summary>The room one takes.</summary>
    public Volume Volume { get; }

    /// <summary>One line in metric units and invariant culture.</summary>
    /// <returns>For instance <c>7 × compost, 28 kg and 50 L each</c>.</returns>
    public override string ToString() => $"{QuantityText.Of(Count, TextStyle.Default)} × {Name}, {QuantityText.Of(Mass, TextStyle.Default)} and {QuantityText.Of(Volume, TextStyle.Default)} each";

    /// <summary>Bags of a material, each as heavy as the heavy end of what its source prints.</summary>
    /// <param name="bags">The bags.</param>
    /// <param name="density">What the material weighs.</param>
    /// <returns>The item, named for the material.</returns>
    /// <exception cref="ArgumentNullException">The bags or the density is missing.</exception>
    public static HaulItem Of(BagPurchase bags, BulkDensity density)
    {
        Estimate<Mass> mass = Guard.NotNull(density).MassOf(Guard.NotNull(bags).Bag);
        return new HaulItem(density.Name, bags.Count, mass.Range?.High ?? mass.Value, bags.Bag);
    }
}
