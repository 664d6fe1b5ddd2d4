namespace HortiCalc.Tests.Mixes;

/// <summary>Equality up to the arithmetic of binary fractions.</summary>
internal static class Near
{
    public static bool Equal(double one, double other) => Math.Abs(one - other) <= 1e-9 * Math.Max(Math.Abs(one), Math.Abs(other));
}
