using HortiCalc.Units;

namespace HortiCalc.Beds;

/// <summary>One material of a filled bed, with the layer it makes.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record BedLayer
{
    /// <summary>Describes a layer of a bed.</summary>
    /// <param name="name">What the grower calls it.</param>
    /// <param name="material">The kind of material.</param>
    /// <param name="layer">How deep it lies, and what is bought on top for settling.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The material is not one of the defined ones.</exception>
    public BedLayer(string name, BulkMaterial material, AmendmentLayer layer)
    {
        Name = Guard.NotBlank(name);
        Material = Guard.Defined(material);
        Layer = Guard.NotNull(layer);
    }

    /// <summary>What the grower calls it.</summary>
    public string Name { get; }

    /// <summary>The kind of material.</summary>
    public BulkMaterial Material { get; }

    /// <summary>How deep it lies, and what is bought on top for settling.</summary>
    public AmendmentLayer Layer { get; }

    /// <summary>One line in metric units and invariant culture.</summary>
    /// <returns>For instance <c>compost: layer 5 cm deep, left on top, 10 % added for settling</c>.</returns>
    public override string ToString() => $"{Name}: {Layer}";
}
