using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Lime sulfur diluted by the density of what is in the barrel.</summary>
/// <remarks>
/// What a density has above water's mixes like a strength: volume of concentrate = volume of spray × (density of spray - 1) / (density of
/// concentrate - 1), densities in kg/L. The table of Purdue (1914) follows a dormant spray of about 1.034.
/// </remarks>
/// <example><code>
/// Density barrel = LimeSulfur.FromBaume(32);
/// Estimate&lt;MixBatch&gt; spray = LimeSulfur.MakeUpTo(Volume.FromUsGallons(50), barrel, LimeSulfur.DormantSpray);   // 6 gal
/// </code></example>
public static class LimeSulfur
{
    private const double KilogramsPerCubicMetreOfWater = 1000;
    private const double BaumeModulus = 145;

    private static readonly Method Rule = new(
        "lime-sulfur.by-density",
        "lime sulfur by the excess of its density over water",
        SpraySources.PurdueLimeSulfur,
        new Domain("clear lime sulfur without sediment", new DomainLimit("concentrate", 1200, 1300, "kg/m³"), new DomainLimit("spray", 1000, 1050, "kg/m³")));

    private static readonly IReadOnlyList<Caution> Cautions =
    [
        MixCautions.LimeSulfurNeverWithAcid,
        new Caution(
            "lime-sulfur.burns-eyes",
            CautionLevel.Danger,
            "Lime sulfur burns eyes for good: wear goggles, gloves and long sleeves.",
            MixSources.LimeSulfur),
        new Caution(
            "lime-sulfur.dormant-only",
            CautionLevel.Care,
            "The dormant strength burns leaves and buds that have opened.",
            SpraySources.PurdueLimeSulfur),
        MixCautions.LabelDecides,
    ];

    /// <summary>The density of the dormant spray that the table of Purdue follows: 1.034 kg/L, inferred from its figures.</summary>
    public static Density DormantSpray => Density.FromKilogramsPerCubicMeter(1034);

    /// <summary>The density of a liquid heavier than water from its degrees Baumé.</summary>
    /// <param name="degreesBaume">From 0 to 70; a plain number, as it stands on the hydrometer.</param>
    /// <returns>145/(145 - degrees) kg/L.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside what is allowed.</exception>
    public static Density FromBaume(double degreesBaume) => Density.FromKilogramsPerCubicMeter(
        KilogramsPerCubicMetreOfWater * BaumeModulus / (BaumeModulus - Guard.Within(degreesBaume, 0, 70, "degrees Baumé")));

    /// <summary>The degrees Baumé of a liquid heavier than water.</summary>
    /// <param name="density">From 1 to 1.93 kg/L.</param>
    /// <returns>145 - 145/density.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The density is outside what is allowed.</exception>
    public static double ToBaume(Density density) =>
        BaumeModulus - (BaumeModulus * KilogramsPerCubicMetreOfWater / Guard.Within(
            Boundary.KilogramsPerCubicMetre(density), KilogramsPerCubicMetreOfWater, 1930, "kg/m³", nameof(density)));

    /// <summary>Concentrate and water for a spray of a density.</summary>
    /// <param name="total">The volume of finished spray; more than 0.</param>
    /// <param name="concentrate">The density of the concentrate, from 1.2 to 1.3 kg/L.</param>
    /// <param name="spray">The density wanted, from above 1 to 1.05 kg/L.</param>
    /// <returns>The batch, with cautions.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what is allowed.</exception>
    public static Estimate<MixBatch> MakeUpTo(Volume total, Density concentrate, Density spray)
    {
        double strong = Rule.Require(Boundary.KilogramsPerCubicMetre(concentrate), "kg/m³", nameof(concentrate));
        double weak = Rule.Require(Boundary.KilogramsPerCubicMetre(spray), "kg/m³", nameof(spray));
        Guard.Positive(weak - KilogramsPerCubicMetreOfWater, "kg/m³ above water", nameof(spray));
        MixRatio ratio = MixRatio.OneIn((strong - KilogramsPerCubicMetreOfWater) / (weak - KilogramsPerCubicMetreOfWater));
        return new Estimate<MixBatch>(Dilution.MakeUpTo(total, ratio), Rule, cautions: Cautions);
    }
}
