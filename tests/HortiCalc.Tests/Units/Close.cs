namespace HortiCalc.Tests.Units;

/// <summary>Comparisons of numbers that differ by the arithmetic of binary fractions alone.</summary>
internal static class Close
{
    public static bool To(double expected, double actual, double relative = 1e-12) =>
        Math.Abs(expected - actual) <= relative * Math.Max(Math.Abs(expected), Math.Abs(actual));

    public static void Assert(double expected, double actual, double relative = 1e-12) =>
        Xunit.Assert.True(To(expected, actual, relative), FormattableString.Invariant($"expected {expected:R}, found {actual:R}"));
}
