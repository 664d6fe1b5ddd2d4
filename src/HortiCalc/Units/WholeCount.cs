namespace HortiCalc.Units;

/// <summary>
/// Whole numbers of things from a ratio of two measured amounts. A ratio that misses a whole number only by the noise of
/// arithmetic is that number: three bags of 0.1 cover a need of 0.1 + 0.1 + 0.1, though the sum exceeds 0.3 by a hair.
/// </summary>
internal static class WholeCount
{
    // Above the noise of some operations (1e-16 each) and of UnitsNet's conversions (its cubic yard is rounded, by 2e-11),
    // far below anything that can be measured. The second figure keeps the noise of a huge count below a thousandth of one thing.
    private const double RelativeNoise = 1e-9;
    private const double LargestNoise = 1e-3;

    /// <summary>The least whole number that covers the ratio.</summary>
    public static int Covering(double ratio, string things, string parameter) =>
        Counted(OnWhole(ratio) ?? Math.Ceiling(ratio), things, parameter);

    /// <summary>The largest whole number that the ratio holds.</summary>
    public static int Within(double ratio, string things, string parameter) =>
        Counted(OnWhole(ratio) ?? Math.Floor(ratio), things, parameter);

    /// <summary>What is left of a total when a part is taken off; nothing where the two differ by noise or the part is larger.</summary>
    public static double Rest(double total, double part) => total - part <= RelativeNoise * total ? 0 : total - part;

    private static double? OnWhole(double ratio)
    {
        double nearest = Math.Round(ratio, MidpointRounding.AwayFromZero);
        return Math.Abs(ratio - nearest) <= Math.Min(RelativeNoise * ratio, LargestNoise) ? nearest : null;
    }

    private static int Counted(double count, string things, string parameter) =>
        count <= int.MaxValue
            ? (int)count
            : throw Guard.Refused(parameter, count, things, $"no more than {Guard.Number(int.MaxValue)} {things}");
}
