using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>What a pot told with no more than a measuring jug: how much water filled its medium with the holes stopped, and how much ran out when they were opened.</summary>
/// <remarks>
/// <para>The water that fills the medium is its pores, what runs out is the air, what stays is container capacity, all in the pot that the medium was measured in.
/// Water that the medium held before it was filled is not seen: begin with a dry one, or fill, drain and fill again with what ran out. For a weighed core there is
/// <see cref="PorometerReading"/>.</para>
/// <para>Immutable; equal when all members are equal.</para>
/// </remarks>
/// <example><code>
/// SoakReading mix = new(medium: Volume.FromLiters(2), filled: Volume.FromLiters(1.4), drained: Volume.FromLiters(0.36));
/// Console.WriteLine(mix);   // 18 % air, 52 % water, 70 % pores
/// foreach (MediumFinding finding in MediumRanges.Findings(mix))
///     Console.WriteLine(finding);
/// </code></example>
public sealed record SoakReading
{
    /// <summary>Takes up a reading.</summary>
    /// <param name="medium">The volume of the medium; above zero.</param>
    /// <param name="filled">The water that it took until it stood full; from zero to the volume of the medium.</param>
    /// <param name="drained">The water that ran out of it after that; from zero to what had filled it.</param>
    /// <exception cref="ArgumentOutOfRangeException">A volume lies outside what is said above.</exception>
    public SoakReading(Volume medium, Volume filled, Volume drained)
    {
        double mediumLitres = Guard.Positive(Boundary.Litres(medium), "L", nameof(medium));
        double filledLitres = Guard.Within(Boundary.Litres(filled), 0, mediumLitres, "L", nameof(filled));
        Guard.Within(Boundary.Litres(drained), 0, filledLitres, "L", nameof(drained));
        Medium = HouseUnits.Normalise(medium);
        Filled = HouseUnits.Normalise(filled);
        Drained = HouseUnits.Normalise(drained);
    }

    /// <summary>The volume of the medium.</summary>
    public Volume Medium { get; }

    /// <summary>The water that it took until it stood full.</summary>
    public Volume Filled { get; }

    /// <summary>The water that ran out of it after that.</summary>
    public Volume Drained { get; }

    /// <summary>Total porosity: the water that filled it, as a share of the volume.</summary>
    [JsonIgnore]
    public Ratio TotalPorosity => Share(Boundary.Litres(Filled));

    /// <summary>Air space in this pot: the water that ran out, as a share of the volume.</summary>
    [JsonIgnore]
    public Ratio AirSpace => Share(Boundary.Litres(Drained));

    /// <summary>Container capacity in this pot: the water that stayed, as a share of the volume.</summary>
    [JsonIgnore]
    public Ratio ContainerCapacity => Share(Boundary.Litres(Filled) - Boundary.Litres(Drained));

    /// <summary>What to take care of when such a reading is used.</summary>
    [JsonIgnore]
    public IReadOnlyList<Caution> Cautions { get; } = ValueList<Caution>.Of([PhysicsCautions.Soaking, PhysicsCautions.Packing]);

    /// <summary>The reading in invariant culture.</summary>
    /// <returns>For instance <c>18 % air, 52 % water, 70 % pores</c>.</returns>
    public override string ToString() =>
        $"{QuantityText.Of(AirSpace, TextStyle.Default)} air, {QuantityText.Of(ContainerCapacity, TextStyle.Default)} water, {QuantityText.Of(TotalPorosity, TextStyle.Default)} pores";

    private Ratio Share(double litres) => Ratio.FromPercent(100 * litres / Boundary.Litres(Medium));
}
