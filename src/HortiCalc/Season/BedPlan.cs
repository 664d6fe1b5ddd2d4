using HortiCalc.Beds;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Season;

/// <summary>A bed, the crop it is to carry, and what is spread on it.</summary>
public sealed record BedPlan
{
    /// <summary>Describes a bed.</summary>
    /// <param name="name">The name, unique in the garden.</param>
    /// <param name="crop">The name of the crop.</param>
    /// <param name="shape">The shape and size.</param>
    /// <param name="amendments">What is spread on it; may be empty.</param>
    /// <exception cref="ArgumentException">A name is empty.</exception>
    public BedPlan(string name, string crop, Bed shape, IReadOnlyList<AmendmentPlan>? amendments = null)
    {
        Name = Guard.NotBlank(name);
        Crop = Guard.NotBlank(crop);
        Shape = Guard.NotNull(shape);
        Amendments = ValueList<AmendmentPlan>.Of(amendments);
    }

    /// <summary>The name, unique in the garden.</summary>
    public string Name { get; }

    /// <summary>The name of the crop.</summary>
    public string Crop { get; }

    /// <summary>The shape and size.</summary>
    public Bed Shape { get; }

    /// <summary>What is spread on it.</summary>
    public IReadOnlyList<AmendmentPlan> Amendments { get; }

    /// <summary>The bed, its shape and its crop, in metric units and invariant culture.</summary>
    /// <returns>For instance <c>wall bed: 4.8 m² of tomato</c>.</returns>
    public override string ToString() =>
        $"{Name}: {QuantityText.Of(Shape.Area, TextStyle.Default)} of {Crop}";
}
