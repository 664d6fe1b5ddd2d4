using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Bleach: from the label to available chlorine, and batches of a wanted strength.</summary>
/// <remarks>
/// The arithmetic is exact; the answers are estimates because bleach fades in store, and because they carry the cautions
/// of handling it. Available chlorine is the mass of chlorine that would oxidise as much: one mole of hypochlorite counts as one
/// mole of chlorine, so that its mass by the molar masses 74.442 and 70.906 g/mol is 1/1.05 of that of the hypochlorite.
/// </remarks>
public static class Hypochlorite
{
    /// <summary>What the strengths of bleach count here.</summary>
    public const string Ingredient = "available chlorine";

    // Molar masses, g/mol: MixSources.HypochloriteDefinitions.
    internal const double SodiumHypochloriteGramsPerMole = 74.442;
    internal const double ChlorineGramsPerMole = 70.906;
    internal const double ChlorinePerHypochlorite = ChlorineGramsPerMole / SodiumHypochloriteGramsPerMole;

    private static readonly Domain LabelDomain = new("bleach of the strength on its label, unscented, diluted with water only");

    /// <summary>From the label by the definitions of the trade: by mass with the density, or trade per cent.</summary>
    public static Method FromLabel { get; } = new(
        "hypochlorite.from-label", "available chlorine from the label", MixSources.HypochloriteProfile, LabelDomain);

    /// <summary>From the label by the custom that takes its per cent as grams of chlorine per 100 mL.</summary>
    public static Method FromPercentAsWeightPerVolume { get; } = new(
        "hypochlorite.percent-as-weight-per-volume",
        "label per cent taken as weight per volume of chlorine",
        MixSources.KansasBleach,
        LabelDomain);

    private static readonly Method FromPowder = new(
        "hypochlorite.from-powder",
        "available chlorine from the powder's label",
        MixSources.ChlorinePowder,
        new Domain("dry calcium hypochlorite of the strength on its label, dissolved in water only"));

    /// <summary>The available chlorine of a share of sodium hypochlorite, both by mass.</summary>
    /// <param name="sodiumHypochlorite">From 0 to 100 %.</param>
    /// <returns>The share over 1.05; 5.25 % gives 5.00 %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0 to 100 %.</exception>
    public static MassFraction AvailableChlorineByMass(MassFraction sodiumHypochlorite) => MassFraction.FromPercent(
        ChlorinePerHypochlorite * Guard.Within(Boundary.MassFraction(sodiumHypochlorite) * 100, 0, 100, "%", nameof(sodiumHypochlorite)));

    /// <summary>The share of sodium hypochlorite that holds a share of available chlorine, both by mass.</summary>
    /// <param name="availableChlorine">From 0 to 95.2 %, which is pure hypochlorite.</param>
    /// <returns>The share times 1.05.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside what pure hypochlorite can hold.</exception>
    public static MassFraction SodiumHypochloriteByMass(MassFraction availableChlorine)
    {
        double percent = Boundary.MassFraction(availableChlorine) * 100;
        Guard.Within(percent, 0, 100 * ChlorinePerHypochlorite, "%", nameof(availableChlorine));
        return MassFraction.FromPercent(percent / ChlorinePerHypochlorite);
    }

    /// <summary>A batch with a wanted level of available chlorine that fills the volume given, bleach included.</summary>
    /// <param name="total">The volume of the finished mix; more than 0.</param>
    /// <param name="bleach">The label of the bleach.</param>
    /// <param name="availableChlorine">The level wanted; more than 0, not above that of the bleach.</param>
    /// <returns>Bleach and water, with the cautions of handling bleach.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume or the level is outside what is allowed.</exception>
    /// <example><code>
    /// HypochloriteLabel bleach = HypochloriteLabel.SodiumHypochlorite(
    ///     MassFraction.FromPercent(8.25), HypochloriteDensities.EightAndAQuarterPercent);
    /// Estimate&lt;MixBatch&gt; bucket = Hypochlorite.MakeUpTo(
    ///     Volume.FromLiters(10), bleach, MassConcentration.FromMilligramsPerLiter(500));   // 58 mL of bleach
    /// </code></example>
    public static Estimate<MixBatch> MakeUpTo(Volume total, HypochloriteLabel bleach, MassConcentration availableChlorine) =>
        Answer(Guard.NotNull(bleach), Dilution.MakeUpTo(total, bleach.Strength, Target(bleach, availableChlorine)));

    /// <summary>A batch with a wanted level of available chlorine in which the volume given is the water.</summary>
    /// <param name="water">The volume of water; more than 0.</param>
    /// <param name="bleach">The label of the bleach.</param>
    /// <param name="availableChlorine">The level wanted; more than 0, below that of the bleach.</param>
    /// <returns>Bleach and water, with the cautions of handling bleach.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume or the level is outside what is allowed.</exception>
    public static Estimate<MixBatch> AddTo(Volume water, HypochloriteLabel bleach, MassConcentration availableChlorine) =>
        Answer(Guard.NotNull(bleach), Dilution.AddTo(water, bleach.Strength, Target(bleach, availableChlorine)));

    /// <summary>The available chlorine of a mix.</summary>
    /// <param name="bleach">The label of the bleach.</param>
    /// <param name="ratio">The ratio of the mix.</param>
    /// <returns>The level, with the cautions of handling bleach.</returns>
    public static Estimate<MassConcentration> StrengthOf(HypochloriteLabel bleach, MixRatio ratio) => Answer(
        Guard.NotNull(bleach),
        MassConcentration.FromMilligramsPerLiter(Boundary.MilligramsPerLitre(bleach.AvailableChlorine) / ratio.Factor));

    /// <summary>The calcium hypochlorite powder that brings water to a wanted level of available chlorine.</summary>
    /// <param name="total">The volume of the finished mix; more than 0.</param>
    /// <param name="powder">The available chlorine by mass on the powder's label, often 65 or 70 %; more than 0.</param>
    /// <param name="availableChlorine">The level wanted; more than 0.</param>
    /// <returns>The mass of powder, taken to add no volume, with the cautions of handling it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume, the share or the level is outside what is allowed.</exception>
    /// <example><code>
    /// Estimate&lt;Mass&gt; powder = Hypochlorite.PowderFor(
    ///     Volume.FromLiters(10), MassFraction.FromPercent(70), MassConcentration.FromMilligramsPerLiter(500));   // 7.1 g
    /// </code></example>
    public static Estimate<Mass> PowderFor(Volume total, MassFraction powder, MassConcentration availableChlorine)
    {
        Guard.Within(Guard.Positive(Boundary.MassFraction(powder) * 100, "% by mass", nameof(powder)), 0, 100, "% by mass", nameof(powder));
        Guard.Positive(Boundary.MilligramsPerLitre(availableChlorine), "mg/L", nameof(availableChlorine));
        Mass mass = Dilution.PowderFor(total, Strength.ByMass(powder, ingredient: Ingredient), new StrengthPerVolume(availableChlorine, Ingredient));
        return new Estimate<Mass>(mass, FromPowder, cautions: [MixCautions.DryChlorine, .. MixCautions.Bleach, MixCautions.FadesInStore]);
    }

    private static StrengthPerVolume Target(HypochloriteLabel bleach, MassConcentration availableChlorine)
    {
        double milligramsPerLitre = Guard.Positive(Boundary.MilligramsPerLitre(availableChlorine), "mg/L", nameof(availableChlorine));
        Guard.Within(milligramsPerLitre, 0, Boundary.MilligramsPerLitre(bleach.AvailableChlorine), "mg/L", nameof(availableChlorine));
        return new StrengthPerVolume(availableChlorine, Ingredient);
    }

    private static Estimate<T> Answer<T>(HypochloriteLabel bleach, T value)
        where T : notnull
    {
        Estimate<T> answer = new(
            value,
            bleach.Basis == HypochloriteBasis.PercentAsWeightPerVolume ? FromPercentAsWeightPerVolume : FromLabel,
            cautions: [.. MixCautions.Bleach, MixCautions.FadesInStore]);
        return answer.Method == FromLabel ? answer : answer.WithCautions(MixCautions.DensityIgnored);
    }
}
