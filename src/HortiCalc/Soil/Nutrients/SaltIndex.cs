using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>The salt index of a material: how much it raises the osmotic pressure of the soil water beside the same mass of sodium nitrate, which is 100.</summary>
/// <remarks>Immutable; equal when all members are equal. It compares materials near seed and roots; it does not say what amount does harm.</remarks>
public sealed record SaltIndex
{
    /// <summary>Holds an index.</summary>
    /// <param name="material">The material.</param>
    /// <param name="value">The index; zero or more.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentException">The material is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The index is negative.</exception>
    /// <exception cref="ArgumentNullException">The source is <see langword="null"/>.</exception>
    public SaltIndex(string material, double value, Source source)
    {
        Material = Guard.NotBlank(material);
        Value = Guard.NotNegative(value, "");
        Source = Guard.NotNull(source);
    }

    /// <summary>The material.</summary>
    public string Material { get; }

    /// <summary>The index, for the same mass; sodium nitrate is 100.</summary>
    public double Value { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The index and its source, in invariant culture.</summary>
    /// <returns>For instance <c>Urea: 74.4 [...]</c>.</returns>
    public override string ToString() => $"{Material}: {Guard.Number(Value)} [{Source}]";
}
