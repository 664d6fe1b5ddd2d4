using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>Makes rows of the tables of tolerance from the numbers as printed.</summary>
internal static class SaltRows
{
    public const SaltRating S = SaltRating.Sensitive;
    public const SaltRating MS = SaltRating.ModeratelySensitive;
    public const SaltRating MT = SaltRating.ModeratelyTolerant;
    public const SaltRating T = SaltRating.Tolerant;

    /// <summary>Thresholds in dS/m, losses in per cent for one dS/m.</summary>
    public static SaltTolerance Row(
        Source source, string crop, string printed, double low, double high, double least, double most, SaltRating? rating) => new(
        crop,
        printed,
        source,
        ElectricConductivity.FromMillisiemensPerCentimeter(low),
        ElectricConductivity.FromMillisiemensPerCentimeter(high),
        Ratio.FromPercent(least),
        Ratio.FromPercent(most),
        rating);

    public static SaltTolerance Rated(Source source, string crop, string printed, SaltRating? rating, bool isEstimate = false) =>
        new(crop, printed, source, rating: rating, isEstimate: isEstimate);
}
