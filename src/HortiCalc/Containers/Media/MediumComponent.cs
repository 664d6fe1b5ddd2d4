using HortiCalc.Units;

namespace HortiCalc.Containers;

/// <summary>One component of a mix, in parts by loose volume.</summary>
public sealed record MediumComponent
{
    /// <summary>Describes a component.</summary>
    /// <param name="material">What it is.</param>
    /// <param name="parts">How many parts by loose volume; greater than zero, fractions allowed.</param>
    /// <exception cref="ArgumentException">The material is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The parts are not greater than zero.</exception>
    public MediumComponent(string material, double parts)
    {
        Material = Guard.NotBlank(material);
        Parts = Guard.Positive(parts, "parts");
    }

    /// <summary>What it is.</summary>
    public string Material { get; }

    /// <summary>How many parts by loose volume.</summary>
    public double Parts { get; }

    /// <summary>The parts and the material.</summary>
    /// <returns>For instance <c>7 loam</c>.</returns>
    public override string ToString() => $"{Guard.Number(Parts)} {Material}";
}
