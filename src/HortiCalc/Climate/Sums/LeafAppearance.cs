using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>How many leaves a plant has put out, and when it will have so many: thermal time divided by the phyllochron.</summary>
public static class LeafAppearance
{
    private static readonly Caution NotConstant = new(
        "leaf-appearance.phyllochron-varies",
        CautionLevel.Note,
        "The phyllochron of one crop is twice as long in warmth as in cold: count leaves in your field and correct it.",
        Phyllochrons.WheatAndBarleyInCold.Source);

    /// <summary>The number of leaves on the main stem.</summary>
    /// <param name="sinceEmergence">
    /// The degree-days since emergence, or since the start of the source's own table, counted between the phyllochron's thresholds; 0 or more.
    /// </param>
    /// <param name="phyllochron">The degree-days from leaf to leaf.</param>
    /// <returns>The leaves, with the fraction of the one that unfolds; a range where the source prints one.</returns>
    /// <exception cref="ArgumentNullException">The phyllochron is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The degree-days are negative.</exception>
    /// <example><code>
    /// Estimate&lt;double&gt; leaves = LeafAppearance.Leaves(
    ///     ThermalTime.FromFahrenheitDays(480), Phyllochrons.MaizeFourToSixteenLeaves); // 8
    /// </code></example>
    public static Estimate<double> Leaves(ThermalTime sinceEmergence, Phyllochron phyllochron)
    {
        Guard.NotNull(phyllochron);
        double celsiusDays = Guard.NotNegative(sinceEmergence.CelsiusDays, "°C·d", nameof(sinceEmergence));
        double fewest = celsiusDays / phyllochron.High.CelsiusDays;
        double most = celsiusDays / phyllochron.Low.CelsiusDays;
        return new Estimate<double>(
            2 * celsiusDays / (phyllochron.Low + phyllochron.High).CelsiusDays,
            MethodOf(phyllochron),
            fewest < most ? new EstimateRange<double>(fewest, most, "printed range of the phyllochron") : null,
            cautions: [NotConstant]);
    }

    /// <summary>The degree-days from emergence to a number of leaves.</summary>
    /// <param name="leaves">The number of leaves, 0 or more.</param>
    /// <param name="phyllochron">The degree-days from leaf to leaf.</param>
    /// <returns>The degree-days; a range where the source prints one.</returns>
    /// <exception cref="ArgumentNullException">The phyllochron is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of leaves is negative or not finite.</exception>
    public static Estimate<ThermalTime> ThermalTimeTo(double leaves, Phyllochron phyllochron)
    {
        Guard.NotNull(phyllochron);
        Guard.NotNegative(leaves, "");
        ThermalTime low = phyllochron.Low * leaves;
        ThermalTime high = phyllochron.High * leaves;
        return new Estimate<ThermalTime>(
            (phyllochron.Low + phyllochron.High) * (leaves / 2),
            MethodOf(phyllochron),
            low < high ? new EstimateRange<ThermalTime>(low, high, "printed range of the phyllochron") : null,
            cautions: [NotConstant]);
    }

    private static Method MethodOf(Phyllochron phyllochron) => new(
        "leaf-appearance.phyllochron",
        "thermal time divided by the phyllochron",
        phyllochron.Source,
        new Domain($"{phyllochron.Crop}, {phyllochron.Condition}; degree-days {phyllochron.Thresholds}"));
}
