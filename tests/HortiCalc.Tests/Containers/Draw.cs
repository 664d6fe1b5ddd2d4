using FsCheck;
using HortiCalc.Containers;
using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Tests.Containers;

/// <summary>Pot-sized values from whole numbers that a property is run on.</summary>
internal static class Draw
{
    /// <summary>From 2 cm to about 1.4 m, rarely a round number.</summary>
    public static Length Side(PositiveInt drawn) => Length.FromCentimeters(2 + drawn.Get % 1_000 / 7.0);

    /// <summary>From 0.1 to about 143 L.</summary>
    public static Volume Amount(PositiveInt drawn) => Volume.FromLiters(0.1 + drawn.Get % 1_000 / 7.0);

    /// <summary>From 0 to 50 %.</summary>
    public static Ratio Allowance(NonNegativeInt drawn) => Ratio.FromPercent(drawn.Get % 51);

    /// <summary>A share from 0 to 1, both included.</summary>
    public static double Share(NonNegativeInt drawn) => drawn.Get % 101 / 100.0;

    /// <summary>One tapered container of each kind, all of one height.</summary>
    public static Container[] OneOfEach(PositiveInt top, PositiveInt bottom, PositiveInt height) =>
    [
        Container.RoundTapered(Side(top), Side(bottom), Side(height)),
        Container.SquareTapered(Side(top), Side(bottom), Side(height)),
        Container.RectangularTapered(Side(top), Side(bottom), Side(bottom), Side(height), Side(height)),
    ];

    /// <summary>A recipe of one to six components with drawn parts.</summary>
    public static MediumRecipe Recipe(PositiveInt seed)
    {
        Random random = new(seed.Get);
        int count = random.Next(1, 7);
        return new MediumRecipe(
            "drawn",
            [.. Enumerable.Range(0, count).Select(i => new MediumComponent($"material {i}", random.Next(1, 20) / 2.0))],
            Source.CommonPractice("test", "a test"));
    }

    public static bool Near(double left, double right, double relative = 1e-9) =>
        Math.Abs(left - right) <= relative * Math.Max(Math.Abs(left), Math.Abs(right)) + 1e-12;
}
