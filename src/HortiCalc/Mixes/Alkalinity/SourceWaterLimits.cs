using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Published limits for the water that hydroponic feeds are made with.</summary>
public static class SourceWaterLimits
{
    /// <summary>
    /// Oklahoma State University Extension: sodium below 50, calcium below 150, chloride below 140 and sulfate below 100 mg/L. A fifth row cannot be
    /// read with certainty and is left out.
    /// </summary>
    public static IReadOnlyList<SourceWaterLimit> Hydroponics { get; } = ValueList<SourceWaterLimit>.Of(
    [
        Of(SolutionIon.Sodium, 50), Of(SolutionIon.Calcium, 150), Of(SolutionIon.Chloride, 140), Of(SolutionIon.Sulfate, 100),
    ]);

    /// <summary>The limits that a water breaks.</summary>
    /// <param name="water">What the water holds.</param>
    /// <param name="limits">The limits.</param>
    /// <returns>Those it reaches or exceeds; empty where it keeps them all.</returns>
    /// <exception cref="ArgumentNullException">Something is missing.</exception>
    /// <example><code>
    /// SolutionIons well = new(IonConcentration.FromMass(SolutionIon.Sodium, MassConcentration.FromMilligramsPerLiter(80)));
    /// IReadOnlyList&lt;SourceWaterLimit&gt; broken = SourceWaterLimits.BrokenBy(well, SourceWaterLimits.Hydroponics);   // sodium
    /// </code></example>
    public static IReadOnlyList<SourceWaterLimit> BrokenBy(SolutionIons water, IReadOnlyList<SourceWaterLimit> limits)
    {
        Guard.NotNull(water);
        return ValueList<SourceWaterLimit>.Of(Guard.NotNull(limits).Where(limit =>
            new IonConcentration(limit.Ion, water[limit.Ion]).Mass is MassConcentration mass
            && Boundary.MilligramsPerLitre(mass) >= Boundary.MilligramsPerLitre(limit.Most)));
    }

    private static SourceWaterLimit Of(SolutionIon ion, double milligramsPerLitre) =>
        new(ion, MassConcentration.FromMilligramsPerLiter(milligramsPerLitre), AlkalinitySources.SourceWater);
}
