namespace HortiCalc.Climate;

/// <summary>The damped wave in a half-space of one diffusivity. T(z,t) = mean + A e^(−z/d) sin(ωt + φ − z/d), d = √(2α/ω), ω = 2π/period.</summary>
internal static class HeatWaveKernel
{
    private const double SecondsPerDay = 86_400;
    private const double SquareMillimetresPerSquareMetre = 1_000_000;

    public static double DampingDepthMetres(double squareMillimetresPerSecond, double periodDays) =>
        Math.Sqrt(squareMillimetresPerSecond / SquareMillimetresPerSquareMetre * periodDays * SecondsPerDay / Math.PI);

    public static double LagDays(double depthInDampingDepths, double periodDays) => depthInDampingDepths * periodDays / (2 * Math.PI);

    public static double SquareMillimetresPerSecond(double dampingDepthMetres, double periodDays) =>
        Math.PI * dampingDepthMetres * dampingDepthMetres / (periodDays * SecondsPerDay) * SquareMillimetresPerSquareMetre;
}
