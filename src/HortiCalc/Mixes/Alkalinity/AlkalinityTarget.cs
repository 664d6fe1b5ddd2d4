using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>How much alkalinity a publication lets the water for a container have.</summary>
public sealed record AlkalinityTarget
{
    /// <summary>States a target.</summary>
    /// <param name="container">For what, in the words of the trade.</param>
    /// <param name="low">The least.</param>
    /// <param name="high">The most.</param>
    /// <param name="source">Where it was printed.</param>
    /// <exception cref="ArgumentOutOfRangeException">The most is below the least.</exception>
    public AlkalinityTarget(string container, VolumetricCharge low, VolumetricCharge high, Source source)
    {
        Container = Guard.NotBlank(container);
        Low = low;
        Guard.AtLeast(high.MilliequivalentsPerLitre, low.MilliequivalentsPerLitre, "meq/L", nameof(high));
        High = high;
        Source = Guard.NotNull(source);
    }

    /// <summary>For what, in the words of the trade.</summary>
    public string Container { get; }

    /// <summary>The least.</summary>
    public VolumetricCharge Low { get; }

    /// <summary>The most.</summary>
    public VolumetricCharge High { get; }

    /// <summary>Where it was printed.</summary>
    public Source Source { get; }

    /// <summary>The least as calcium carbonate.</summary>
    [JsonIgnore]
    public MassConcentration LowAsCalciumCarbonate => WaterAlkalinity.ToCalciumCarbonate(Low);

    /// <summary>The most as calcium carbonate.</summary>
    [JsonIgnore]
    public MassConcentration HighAsCalciumCarbonate => WaterAlkalinity.ToCalciumCarbonate(High);

    /// <summary>One line of text in metric units and invariant culture.</summary>
    /// <returns>For instance <c>plugs: 0.75 to 1.25 meq/L [...]</c>.</returns>
    public override string ToString() => $"{Container}: {QuantityText.Number(Low.MilliequivalentsPerLitre, TextStyle.Default)} to {QuantityText.Number(High.MilliequivalentsPerLitre, TextStyle.Default)} meq/L [{Source}]";
}
