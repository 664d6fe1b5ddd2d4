using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Soil;
using UnitsNet;

namespace HortiCalc.Tests.Soil;

/// <summary>The laws of texture.</summary>
public class TextureProperties
{
    // Per cent of sand and clay on a grid of a tenth, so that every bound of the triangle is met.
    private static (double Sand, double Clay) Point(PositiveInt one, PositiveInt two)
    {
        int sand = one.Get % 1001;
        return (sand / 10.0, two.Get % (1001 - sand) / 10.0);
    }

    private static ParticleSizes Of(double sand, double clay) => ParticleSizes.FromSandAndClay(MassFraction.FromPercent(sand), MassFraction.FromPercent(clay));

    private static SoilTexture Class(double sand, double clay) => SoilTextures.Classify(Of(sand, clay)).Value;

    private static double Silt(double sand, double clay) => Math.Round(100 - sand - clay, 6, MidpointRounding.AwayFromZero);

    [Property]
    public bool Classify_AnySoil_MeetsTheRuleOfItsClassAlone(PositiveInt one, PositiveInt two)
    {
        (double sand, double clay) = Point(one, two);
        return TextureRules.Usda.Count(rule => rule.Holds(sand, Silt(sand, clay), clay)) == 1
            && TextureRules.Usda.Single(rule => rule.Class == Class(sand, clay)).Holds(sand, Silt(sand, clay), clay);
    }

    [Property]
    public bool Classify_InAnyUnit_IsTheSame(PositiveInt one, PositiveInt two)
    {
        (double sand, double clay) = Point(one, two);
        ParticleSizes grams = ParticleSizes.FromSandAndClay(MassFraction.FromGramsPerKilogram(sand * 10), MassFraction.FromGramsPerKilogram(clay * 10));
        return SoilTextures.Classify(grams).Value == Class(sand, clay);
    }

    [Property]
    public bool Classify_FortyPercentOfClay_IsAClay(PositiveInt one, PositiveInt two)
    {
        (double sand, double clay) = Point(one, two);
        return clay < 40 || Class(sand, clay) is SoilTexture.Clay or SoilTexture.SiltyClay or SoilTexture.SandyClay;
    }

    [Property]
    public bool Classify_LittleClay_IsNeverAClayOrClayLoam(PositiveInt one, PositiveInt two)
    {
        (double sand, double clay) = Point(one, two);
        return clay >= 20 || Class(sand, clay) is SoilTexture.Sand or SoilTexture.LoamySand or SoilTexture.SandyLoam or SoilTexture.Loam or SoilTexture.SiltLoam or SoilTexture.Silt;
    }

    [Property]
    public bool Classify_Sand_HasMoreThanEightyFivePercentOfSandAndUnderTenOfClay(PositiveInt one, PositiveInt two)
    {
        (double sand, double clay) = Point(one, two);
        return Class(sand, clay) != SoilTexture.Sand || (sand > 85 && clay < 10);
    }

    [Property]
    public bool Classify_LoamySand_HasSeventyToNinetyOneOfSandAndUnderFifteenOfClay(PositiveInt one, PositiveInt two)
    {
        (double sand, double clay) = Point(one, two);
        return Class(sand, clay) != SoilTexture.LoamySand || (sand > 70 && sand <= 90 && clay < 15);
    }

    [Property]
    public bool Classify_SiltySoils_HaveTheirSilt(PositiveInt one, PositiveInt two)
    {
        (double sand, double clay) = Point(one, two);
        return Class(sand, clay) switch
        {
            SoilTexture.Silt => Silt(sand, clay) >= 80,
            SoilTexture.SiltLoam => Silt(sand, clay) >= 50,
            SoilTexture.SiltyClay => Silt(sand, clay) >= 40 && sand <= 20,
            SoilTexture.SiltyClayLoam => Silt(sand, clay) > 40 && sand <= 20,
            _ => true,
        };
    }

    [Property]
    public bool Classify_SandySoils_HaveTheirSand(PositiveInt one, PositiveInt two)
    {
        (double sand, double clay) = Point(one, two);
        return Class(sand, clay) switch
        {
            SoilTexture.SandyClay or SoilTexture.SandyClayLoam => sand > 45,
            SoilTexture.SandyLoam => sand > 43,
            SoilTexture.Clay or SoilTexture.ClayLoam => sand <= 45,
            SoilTexture.Loam => sand is > 23 and <= 52,
            _ => true,
        };
    }

    [Property]
    public bool Classify_BetweenTwoSoilsOfAConvexClass_IsTheClass(PositiveInt one, PositiveInt two, PositiveInt three, PositiveInt four, PositiveInt way)
    {
        // All classes but sandy loam, silt loam and clay are convex. Half a per cent inside the bounds, the roundings of the blend do not cross them.
        (double sand, double clay) = Point(one, two);
        (double otherSand, double otherClay) = Point(three, four);
        SoilTexture texture = Class(sand, clay);
        if (texture is SoilTexture.SandyLoam or SoilTexture.SiltLoam or SoilTexture.Clay || Class(otherSand, otherClay) != texture)
            return true;
        double share = way.Get % 101 / 100.0;
        double Blend(double a, double b) => Math.Round(a + share * (b - a), 6, MidpointRounding.AwayFromZero);
        return Class(Blend(sand, otherSand), Blend(clay, otherClay)) == texture;
    }

    [Property]
    public bool Classify_MoreClayForSand_NeverTurnsALoamIntoASand(PositiveInt one, PositiveInt two)
    {
        (double sand, double clay) = Point(one, two);
        return sand < 1 || Class(sand, clay) is SoilTexture.Sand or SoilTexture.LoamySand || Class(Math.Round(sand - 1, 1, MidpointRounding.AwayFromZero), Math.Round(clay + 1, 1, MidpointRounding.AwayFromZero)) is not (SoilTexture.Sand or SoilTexture.LoamySand);
    }

    [Property]
    public bool ParticleSizes_SiltAsTheRest_MakesAHundred(PositiveInt one, PositiveInt two)
    {
        (double sand, double clay) = Point(one, two);
        ParticleSizes particles = Of(sand, clay);
        return Math.Abs(particles.Sand.Percent + particles.Silt.Percent + particles.Clay.Percent - 100) < 1e-9
            && particles == new ParticleSizes(particles.Sand, particles.Silt, particles.Clay);
    }

    [Property]
    public bool ParticleSizes_RoundedReport_KeepsItsClassFromSandAndClay(PositiveInt one, PositiveInt two, bool up)
    {
        (double sand, double clay) = Point(one, two);
        double silt = Silt(sand, clay) + (up ? 0.9 : -0.9);
        return silt is < 0 or > 100
            || SoilTextures.Classify(new ParticleSizes(MassFraction.FromPercent(sand), MassFraction.FromPercent(silt), MassFraction.FromPercent(clay))).Value == Class(sand, clay);
    }

    [Property]
    public bool ParticleSizes_TooFarFromAHundred_AreRefused(PositiveInt one, PositiveInt two, PositiveInt off)
    {
        (double sand, double clay) = Point(one, two);
        double silt = Silt(sand, clay) + 1.1 + off.Get % 20;
        return silt > 100 || Assert.Throws<ArgumentOutOfRangeException>(
            () => new ParticleSizes(MassFraction.FromPercent(sand), MassFraction.FromPercent(silt), MassFraction.FromPercent(clay))).ParamName == "silt";
    }

    [Property]
    public bool AustralianGrades_AnyClay_HasAGradeThatHoldsIt(PositiveInt seed)
    {
        double clay = seed.Get % 1001 / 10.0;
        return AustralianFieldGrades.WithClay(MassFraction.FromPercent(clay)) is { Count: > 0 } grades
            && grades.All(grade => grade.ClayLow.Percent <= clay && clay <= grade.ClayHigh.Percent);
    }
}
