namespace HortiCalc.Units;

/// <summary>
/// Whole numbers of things from a ratio of two measured amounts. A ratio that misses a whole number only by the noise of
/// binary fractions is that number: three bags of 0.1 cover a need of 0.3, though 0.3 / 0.1 falls short of 3.
/// </summary>
internal static class WholeCount
{
    // Far above the noise of a few operations (about 1e-16 each), far below anything that can be measured.
    private const double RelativeNoise = 1e-12;

    /// <summary>The least whole number that covers the ratio.</summary>
    public static int Covering(double ratio, string things, string parameter) =>
        Counted(OnWhole(ratio) ?? Math.Ceiling(ratio), things, parameter);

    /// <summary>The largest whole number that the ratio holds.</summary>
    public static int Within(double ratio, string things, string parameter) =>
        Counted(OnWhole(ratio) ?? Math.Floor(ratio), things, parameter);

    private static double? OnWhole(double ratio)
    {
        double nearest = Math.Round(ratio, MidpointRounding.AwayFromZero);
        return Math.Abs(ratio - nearest) <= RelativeNoise * ratio ? nearest : null;
    }

    private static int Counted(double count, string things, string parameter) =>
        count <= int.MaxValue
            ? (int)count
            : throw Guard.Refused(parameter, count, things, $"no more than {Guard.Number(int.MaxValue)} {things}");
}
