using HortiCalc.Beds;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>What is spread on a bed, how deep, and the size of a bag of it.</summary>
public sealed record AmendmentPlan
{
    /// <summary>Describes what is spread on a bed.</summary>
    /// <param name="material">The name of the material.</param>
    /// <param name="layer">How deep it is spread and worked in.</param>
    /// <param name="bag">The volume of one bag, or <see langword="null"/> where it comes loose.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The bag is not more than zero.</exception>
    public AmendmentPlan(string material, AmendmentLayer layer, Volume? bag = null)
    {
        Material = Guard.NotBlank(material);
        Layer = Guard.NotNull(layer);
        if (bag is Volume volume)
        {
            Guard.Positive(Boundary.Litres(volume), "L", nameof(bag));
            Bag = HouseUnits.Normalise(volume);
        }
    }

    /// <summary>
    /// The custom for a new bed: a loose layer of 10 cm (4 inches) worked in to a depth of 20 cm (8 inches), nothing added for settling.
    /// </summary>
    public static AmendmentLayer NewBedLayer { get; } =
        new(Length.FromCentimeters(10), Ratio.Zero, mixedDepth: Length.FromCentimeters(20));

    /// <summary>The name of the material.</summary>
    public string Material { get; }

    /// <summary>How deep it is spread and worked in.</summary>
    public AmendmentLayer Layer { get; }

    /// <summary>The volume of one bag, or <see langword="null"/> where it comes loose.</summary>
    public Volume? Bag { get; }

    /// <summary>The material and how it is spread, in metric units and invariant culture.</summary>
    /// <returns>For instance <c>garden compost: 10 cm layer, ...</c>.</returns>
    public override string ToString() => $"{Material}: {Layer}";
}
