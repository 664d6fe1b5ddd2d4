using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>The conductivity that a publication wants for a crop.</summary>
public sealed record ConductivityTarget
{
    /// <summary>States a target.</summary>
    /// <param name="crop">The crop, as printed.</param>
    /// <param name="basis">In what it is measured.</param>
    /// <param name="low">The least; 0 or more.</param>
    /// <param name="high">The most; at least the least.</param>
    /// <param name="source">Where it was printed.</param>
    /// <exception cref="ArgumentOutOfRangeException">The range is not one, or the basis is not a defined one.</exception>
    public ConductivityTarget(string crop, ConductivityBasis basis, ElectricConductivity low, ElectricConductivity high, Source source)
    {
        Crop = Guard.NotBlank(crop);
        Basis = Guard.Defined(basis);
        double least = Guard.NotNegative(Boundary.DecisiemensPerMetre(low), "mS/cm", nameof(low));
        Guard.AtLeast(Boundary.DecisiemensPerMetre(high), least, "mS/cm", nameof(high));
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
        Source = Guard.NotNull(source);
    }

    /// <summary>The crop, as printed.</summary>
    public string Crop { get; }

    /// <summary>In what it is measured.</summary>
    public ConductivityBasis Basis { get; }

    /// <summary>The least.</summary>
    public ElectricConductivity Low { get; }

    /// <summary>The most.</summary>
    public ElectricConductivity High { get; }

    /// <summary>Where it was printed.</summary>
    public Source Source { get; }

    /// <summary>One line of text in metric units and invariant culture.</summary>
    /// <returns>For instance <c>Lettuce: 1 to 1.5 dS/m [...]</c>.</returns>
    public override string ToString() => $"{Crop}: {QuantityText.Number(Boundary.DecisiemensPerMetre(Low), TextStyle.Default)} to {QuantityText.Of(High, TextStyle.Default)} [{Source}]";
}
