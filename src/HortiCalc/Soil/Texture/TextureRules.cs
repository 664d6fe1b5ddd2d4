namespace HortiCalc.Soil;

/// <summary>The bounds of the classes, in per cent of sand, silt and clay. Every soil meets the bounds of one class, and of one alone.</summary>
internal static class TextureRules
{
    private const double Hair = ParticleSizes.Hair;

    public static readonly (SoilTexture Class, Func<double, double, double, bool> Holds)[] Usda =
    [
        (SoilTexture.Sand, (sand, silt, clay) => Below(silt + 1.5 * clay, 15)),
        (SoilTexture.LoamySand, (sand, silt, clay) => From(silt + 1.5 * clay, 15) && Below(silt + 2 * clay, 30)),
        (SoilTexture.SandyLoam, (sand, silt, clay) =>
            From(silt + 2 * clay, 30) && (From(clay, 7) && Below(clay, 20) && Above(sand, 52) || Below(clay, 7) && Below(silt, 50))),
        (SoilTexture.Loam, (sand, silt, clay) => From(clay, 7) && Below(clay, 27) && From(silt, 28) && Below(silt, 50) && UpTo(sand, 52)),
        (SoilTexture.SiltLoam, (sand, silt, clay) => From(silt, 50) && (From(clay, 12) && Below(clay, 27) || Below(silt, 80) && Below(clay, 12))),
        (SoilTexture.Silt, (sand, silt, clay) => From(silt, 80) && Below(clay, 12)),
        (SoilTexture.SandyClayLoam, (sand, silt, clay) => From(clay, 20) && Below(clay, 35) && Below(silt, 28) && Above(sand, 45)),
        (SoilTexture.ClayLoam, (sand, silt, clay) => From(clay, 27) && Below(clay, 40) && Above(sand, 20) && UpTo(sand, 45)),
        (SoilTexture.SiltyClayLoam, (sand, silt, clay) => From(clay, 27) && Below(clay, 40) && UpTo(sand, 20)),
        (SoilTexture.SandyClay, (sand, silt, clay) => From(clay, 35) && Above(sand, 45)),
        (SoilTexture.SiltyClay, (sand, silt, clay) => From(clay, 40) && From(silt, 40)),
        (SoilTexture.Clay, (sand, silt, clay) => From(clay, 40) && UpTo(sand, 45) && Below(silt, 40)),
    ];

    public static T Find<T>((T Class, Func<double, double, double, bool> Holds)[] rules, ParticleSizes particles)
    {
        foreach ((T name, Func<double, double, double, bool> holds) in rules)
        {
            if (holds(particles.SandPercent, particles.SiltPercent, particles.ClayPercent))
                return name;
        }

        throw new InvalidOperationException($"No class has {particles}.");
    }

    private static bool From(double value, double bound) => value >= bound - Hair;

    private static bool Below(double value, double bound) => value < bound - Hair;

    private static bool Above(double value, double bound) => value > bound + Hair;

    private static bool UpTo(double value, double bound) => value <= bound + Hair;
}
