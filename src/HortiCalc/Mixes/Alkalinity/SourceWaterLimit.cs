using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>The most of an ion that a publication bears in the water a feed is made with.</summary>
public sealed record SourceWaterLimit
{
    /// <summary>States a limit.</summary>
    /// <param name="ion">The ion.</param>
    /// <param name="most">Below what it should stay, as mass of the ion; more than 0.</param>
    /// <param name="source">Where it was printed.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ion is not a defined one, or the limit is not above 0.</exception>
    public SourceWaterLimit(SolutionIon ion, MassConcentration most, Source source)
    {
        Ion = Guard.Defined(ion);
        Guard.Positive(Boundary.MilligramsPerLitre(most), "mg/L", nameof(most));
        Most = HouseUnits.Normalise(most);
        Source = Guard.NotNull(source);
    }

    /// <summary>The ion.</summary>
    public SolutionIon Ion { get; }

    /// <summary>Below what it should stay, as mass of the ion.</summary>
    public MassConcentration Most { get; }

    /// <summary>Where it was printed.</summary>
    public Source Source { get; }

    /// <summary>One line of text in metric units and invariant culture.</summary>
    /// <returns>For instance <c>sodium below 50 mg/L [...]</c>.</returns>
    public override string ToString() => $"{IonFacts.Of(Ion).Name} below {QuantityText.Of(Most, TextStyle.Default)} [{Source}]";
}
