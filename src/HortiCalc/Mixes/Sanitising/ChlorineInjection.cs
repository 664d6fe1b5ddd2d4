using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Chlorine fed continuously into an irrigation line.</summary>
/// <remarks>
/// The rule of the trade: flow of bleach = flow of water × level wanted / level of the bleach, the small flow of the bleach itself left out of
/// the total. What the water uses up comes on top: measure the free chlorine at the end of the line and turn the pump until it is right.
/// </remarks>
/// <example><code>
/// Estimate&lt;VolumeFlow&gt; pump = ChlorineInjection.Bleach(
///     VolumeFlow.FromUsGallonsPerMinute(100),
///     MassConcentration.FromMilligramsPerLiter(10),
///     HypochloriteLabel.PercentAsWeightPerVolume(MassFraction.FromPercent(5.25)));   // 1.14 gal/h
/// </code></example>
public static class ChlorineInjection
{
    private static readonly Method Rule = new(
        "chlorine-injection",
        "bleach injected in proportion to the flow",
        SanitisingSources.MicroIrrigationTable,
        new Domain("a steady flow of water; the demand of the water not counted"));

    private static readonly IReadOnlyList<Caution> Cautions =
    [
        MixCautions.NeverWithAcid,
        new Caution(
            "injection.never-with-acid-line",
            CautionLevel.Danger,
            "Never feed chlorine and acid or ammonium fertiliser from one tank or through one port: chlorine or chloramine gases form.",
            MixSources.FireProtection),
        new Caution(
            "injection.measure-at-the-end",
            CautionLevel.Care,
            "Measure free chlorine at the far end of the line: what water and pipes use up comes on top, and too much harms plants.",
            SanitisingSources.AustralianNurseries),
        MixCautions.ProtectSkinAndEyes,
        MixCautions.LabelDecides,
    ];

    /// <summary>The flow of bleach for a level of chlorine in a flow of water.</summary>
    /// <param name="water">The flow of water; more than 0.</param>
    /// <param name="availableChlorine">The level wanted; more than 0, not above that of the bleach.</param>
    /// <param name="bleach">The label of the bleach.</param>
    /// <returns>The flow of the pump, with cautions.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what is allowed.</exception>
    public static Estimate<VolumeFlow> Bleach(VolumeFlow water, MassConcentration availableChlorine, HypochloriteLabel bleach)
    {
        double litresPerMinute = Guard.Positive(Boundary.LitresPerMinute(water), "L/min", nameof(water));
        double strong = Boundary.MilligramsPerLitre(Guard.NotNull(bleach).AvailableChlorine);
        double wanted = Guard.Positive(Boundary.MilligramsPerLitre(availableChlorine), "mg/L", nameof(availableChlorine));
        Guard.Within(wanted, 0, strong, "mg/L", nameof(availableChlorine));
        return new Estimate<VolumeFlow>(
            VolumeFlow.FromLitersPerMinute(litresPerMinute * wanted / strong), Rule, cautions: [.. Cautions, MixCautions.FadesInStore]);
    }

    /// <summary>The level of chlorine that a pump brings to a flow of water.</summary>
    /// <param name="water">The flow of water; more than 0.</param>
    /// <param name="pump">The flow of bleach; 0 or more, not above that of the water.</param>
    /// <param name="bleach">The label of the bleach.</param>
    /// <returns>The level before the water uses any up.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what is allowed.</exception>
    public static Estimate<MassConcentration> LevelOf(VolumeFlow water, VolumeFlow pump, HypochloriteLabel bleach)
    {
        double litresPerMinute = Guard.Positive(Boundary.LitresPerMinute(water), "L/min", nameof(water));
        double bleachLitresPerMinute = Guard.Within(Boundary.LitresPerMinute(pump), 0, litresPerMinute, "L/min", nameof(pump));
        double strong = Boundary.MilligramsPerLitre(Guard.NotNull(bleach).AvailableChlorine);
        return new Estimate<MassConcentration>(
            MassConcentration.FromMilligramsPerLiter(strong * bleachLitresPerMinute / litresPerMinute), Rule, cautions: Cautions);
    }

    /// <summary>The mass of chlorine that a level in a flow takes in a time; as gas it is for licensed practice alone.</summary>
    /// <param name="water">The flow of water; more than 0.</param>
    /// <param name="chlorine">The level wanted; more than 0.</param>
    /// <param name="time">The time; more than 0.</param>
    /// <returns>The mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is not above 0.</exception>
    public static Mass ChlorineFor(VolumeFlow water, MassConcentration chlorine, Duration time)
    {
        double litresPerMinute = Guard.Positive(Boundary.LitresPerMinute(water), "L/min", nameof(water));
        double milligramsPerLitre = Guard.Positive(Boundary.MilligramsPerLitre(chlorine), "mg/L", nameof(chlorine));
        double minutes = Guard.Positive(Boundary.Days(time) * 1440, "min", nameof(time));
        return Mass.FromKilograms(litresPerMinute * minutes * milligramsPerLitre / 1e6);
    }
}
