using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>What a label prints of a feed's conductivity: so many mS/cm at so much nitrogen.</summary>
public sealed record FeedConductivity
{
    internal static readonly Method Method = new(
        "feed.conductivity-of-label",
        "conductivity in proportion to nitrogen by the product's label",
        FeedingSources.BagChart,
        new Domain("feeds of the strengths that the label prints, 50 to 200 mg/L of nitrogen on the chart cited"));

    /// <summary>States what a label prints.</summary>
    /// <param name="nitrogen">The nitrogen of the feed; more than 0.</param>
    /// <param name="conductivity">Its conductivity in pure water; more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is not above 0.</exception>
    public FeedConductivity(MassConcentration nitrogen, ElectricConductivity conductivity)
    {
        Guard.Positive(Boundary.MilligramsPerLitre(nitrogen), "mg/L", nameof(nitrogen));
        Guard.Positive(Boundary.DecisiemensPerMetre(conductivity), "mS/cm", nameof(conductivity));
        Nitrogen = HouseUnits.Normalise(nitrogen);
        Conductivity = HouseUnits.Normalise(conductivity);
    }

    /// <summary>The nitrogen of the feed.</summary>
    public MassConcentration Nitrogen { get; }

    /// <summary>Its conductivity in pure water.</summary>
    public ElectricConductivity Conductivity { get; }

    /// <summary>One line of text in metric units and invariant culture.</summary>
    /// <returns>For instance <c>0.74 dS/m at 100 mg/L of nitrogen</c>.</returns>
    public override string ToString() =>
        $"{QuantityText.Of(Conductivity, TextStyle.Default)} at {QuantityText.Of(Nitrogen, TextStyle.Default)} of nitrogen";

    internal double MillisiemensPerMilligram => Boundary.DecisiemensPerMetre(Conductivity) / Boundary.MilligramsPerLitre(Nitrogen);
}
