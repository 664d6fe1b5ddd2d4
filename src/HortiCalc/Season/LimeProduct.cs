using HortiCalc.Display;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>The lime that the grower buys: the material and the size of a bag.</summary>
public sealed record LimeProduct
{
    /// <summary>Describes the lime that the grower buys.</summary>
    /// <param name="material">The material, with its calcium carbonate equivalent.</param>
    /// <param name="bag">The mass of one bag, more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The bag is not more than zero.</exception>
    public LimeProduct(LimingMaterial material, Mass bag)
    {
        Material = Guard.NotNull(material);
        Guard.Positive(Boundary.Kilograms(bag), "kg", nameof(bag));
        Bag = HouseUnits.Normalise(bag);
    }

    /// <summary>The material, with its calcium carbonate equivalent.</summary>
    public LimingMaterial Material { get; }

    /// <summary>The mass of one bag.</summary>
    public Mass Bag { get; }

    /// <summary>The material and its bag, in metric units and invariant culture.</summary>
    /// <returns>For instance <c>dolomite in bags of 12.5 kg</c>.</returns>
    public override string ToString() => $"{Material.Name} in bags of {QuantityText.Of(Bag, TextStyle.Default)}";
}
