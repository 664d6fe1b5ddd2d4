using FsCheck.Xunit;
using HortiCalc.Climate;
using MathNet.Numerics.Distributions;
using UnitsNet;
using static HortiCalc.Tests.Climate.FrostNightSamples;

namespace HortiCalc.Tests.Climate;

[Properties(Arbitrary = [typeof(FrostNightArbitraries)], MaxTest = 200)]
public class FrostDamageProperties
{
    private static double Percent(AnyBud bud, double celsius) => bud.Line.DamageAt(C(celsius)).Share!.Value.Percent;

    [Property]
    public void DamageAt_ThePrintedTemperatures_IsTenAndNinetyPercent(AnyBud bud)
    {
        Assert.Equal(10, Percent(bud, bud.Ten), 1e-9);
        Assert.Equal(90, Percent(bud, bud.Ninety), 1e-9);
        Assert.Equal(90, bud.Line.DamageAt(F(Math.Round(bud.Line.NinetyPercentKill!.Value.DegreesFahrenheit))).Share!.Value.Percent, 1e-9);
    }

    [Property]
    public void DamageAt_OutsideThePrintedTemperatures_IsNoNumber(AnyBud bud)
    {
        FrostDamage warmer = bud.Line.DamageAt(C(bud.Ten + 0.01));
        FrostDamage colder = bud.Line.DamageAt(C(bud.Ninety - 0.01));

        Assert.Equal((FrostDamageLevel.LessThanTenPercent, null), (warmer.Level, warmer.Share));
        Assert.Equal((FrostDamageLevel.MoreThanNinetyPercent, null), (colder.Level, colder.Share));
        Assert.Contains("less than 10 %", warmer.ToString(), StringComparison.Ordinal);
        Assert.Contains("more than 90 %", colder.ToString(), StringComparison.Ordinal);
    }

    [Property]
    public void DamageAt_FallingTemperature_RisesEvenly(AnyBud bud, AnyShare share)
    {
        double celsius = bud.Ten + (bud.Ninety - bud.Ten) * share.Share;
        if (bud.Line.DamageAt(C(celsius)).Share is not null)
            Assert.Equal(10 + 80 * share.Share, Percent(bud, celsius), 1e-6);
    }

    [Property]
    public void DamageAt_BetweenThePrintedTemperatures_IsWithinFourPercentOfAProbit(AnyBud bud, AnyShare share)
    {
        double celsius = bud.Ten + (bud.Ninety - bud.Ten) * Math.Clamp(share.Share, 0.001, 0.999);
        double middle = (bud.Ten + bud.Ninety) / 2;
        double spread = (bud.Ten - bud.Ninety) / 2 / Normal.InvCDF(0, 1, 0.9);

        Assert.Equal(100 * Normal.CDF(0, 1, (middle - celsius) / spread), Percent(bud, celsius), 4.0);
    }

    [Property]
    public void IsHarmful_AnyTemperature_IsAtOrBelowTheWarmestPrinted(AnyBud bud, AnyShare share)
    {
        double celsius = -20 + 22 * share.Share;
        double harmful = Math.Max(bud.Ten, bud.Line.HighestCritical?.DegreesCelsius ?? double.NegativeInfinity);

        Assert.Equal(harmful, bud.Line.Harmful.DegreesCelsius);
        Assert.Equal(celsius <= harmful, bud.Line.DamageAt(C(celsius)).IsHarmful);
    }

    [Fact]
    public void For_AStageThatSourcesDisagreeOn_GivesEachSource()
    {
        IReadOnlyList<CriticalTemperature> lines = CriticalTemperatures.For("PEACH", "pink");

        Assert.Equal(["msu-wsu-tree-fruit", "purdue-frost-damage"], lines.Select(line => line.Source.Key));
        Assert.Equal([15, 18], lines.Select(line => line.NinetyPercentKill!.Value.DegreesFahrenheit), (one, other) => Math.Abs(one - other) < 1e-9);
        Assert.Equal([50.0, 10 + 80 * 5 / 7.0], lines.Select(line => line.DamageAt(F(20)).Share!.Value.Percent), (one, other) => Math.Abs(one - other) < 1e-6);
        Assert.Equal(lines, CriticalTemperatures.For("peach", "first pink"));
    }

    [Fact]
    public void All_Lines_AreTheWholeTables()
    {
        Dictionary<string, int> lines = CriticalTemperatures.All.GroupBy(line => line.Source.Key).ToDictionary(group => group.Key, group => group.Count());
        Assert.Equal(
            new Dictionary<string, int>
            {
                ["msu-wsu-tree-fruit"] = 49,
                ["utah-ipm-012-11"] = 16,
                ["intermountain-cherry-stages"] = 14,
                ["purdue-frost-damage"] = 24,
                ["ontario-strawberry-irrigation"] = 4,
                ["maine-strawberry-frost"] = 4,
                ["msu-blueberry-critical"] = 6,
                ["maine-cranberry-frost"] = 10,
            },
            lines);
        Assert.Equal(CriticalTemperatures.All.Count, CriticalTemperatures.All.Distinct().Count());
        Assert.All(CriticalTemperatures.Crops, crop => Assert.All(
            CriticalTemperatures.StagesOf(crop), stage => Assert.NotEmpty(CriticalTemperatures.For(crop, stage))));
        Assert.All(CriticalTemperatures.BudNeeds, need => Assert.Contains(need.Crop, CriticalTemperatures.Crops));
    }

    [Fact]
    public void DamageAt_WhereOnlyACriticalTemperatureIsPrinted_SaysOnWhichSide()
    {
        CriticalTemperature blossom = CriticalTemperatures.For("strawberry", "open blossom").Single(line => line.Source.Key == "ontario-strawberry-irrigation");
        CriticalTemperature swell = CriticalTemperatures.For("blueberry", "bud swell").Single(line => line.Source.Key == "msu-blueberry-critical");

        Assert.Equal(FrostDamageLevel.WarmerThanCritical, blossom.DamageAt(C(-1)).Level);
        Assert.Equal(FrostDamageLevel.AtCritical, blossom.DamageAt(C(-1.1)).Level);
        Assert.Equal(FrostDamageLevel.ColderThanCritical, blossom.DamageAt(C(-1.2)).Level);
        Assert.Equal(
            [FrostDamageLevel.WarmerThanCritical, FrostDamageLevel.AtCritical, FrostDamageLevel.AtCritical, FrostDamageLevel.AtCritical, FrostDamageLevel.ColderThanCritical],
            new double[] { 16, 15, 12, 10, 9 }.Select(fahrenheit => swell.DamageAt(F(fahrenheit)).Level));
    }

    [Fact]
    public void DamageAt_WhereNinetyPercentIsNotPrinted_IsTenPercentOrMore()
    {
        CriticalTemperature swollen = Assert.Single(CriticalTemperatures.For("apricot", "swollen bud"));
        Assert.Equal(FrostDamageLevel.LessThanTenPercent, swollen.DamageAt(F(16)).Level);
        Assert.Equal(FrostDamageLevel.TenPercentOrMore, swollen.DamageAt(F(15)).Level);
        Assert.Equal(FrostDamageLevel.TenPercentOrMore, swollen.DamageAt(F(-20)).Level);
    }

    [Property]
    public void Covering_AnyAirMinimumUpTo32Fahrenheit_IsInOneAlmanacClass(AnyShare share)
    {
        double fahrenheit = 32.49 - 40 * share.Share;
        Assert.Single(FrostDefinitions.Covering(F(fahrenheit), FrostSensor.Air), definition => definition.Source.Key == "almanac-freeze-classes");
    }

    [Theory]
    [InlineData(32.5, null)]
    [InlineData(32.4, "light freeze")]
    [InlineData(28.5, "light freeze")]
    [InlineData(28.4, "moderate freeze")]
    [InlineData(24.5, "moderate freeze")]
    [InlineData(24.4, "severe freeze")]
    public void Covering_BetweenWholeFahrenheit_GoesToTheNearestAndAHalfToTheWarmer(double fahrenheit, string? term) => Assert.Equal(
        term,
        FrostDefinitions.Covering(F(fahrenheit), FrostSensor.Air).SingleOrDefault(definition => definition.Source.Key == "almanac-freeze-classes")?.Term);

    [Fact]
    public void Covering_MinusOne_IsCalledDifferently()
    {
        Assert.Equal(
            ["light freeze", "freeze warning", "frost", "freeze", "light frost", "air frost"],
            FrostDefinitions.Covering(C(-1), FrostSensor.Air).Select(definition => definition.Term));
        Assert.Equal(
            ["day with ground frost", "ground frost, 1906 to 1960", "ground frost, since 1961"],
            FrostDefinitions.Covering(C(-1), FrostSensor.Grass).Select(definition => definition.Term));
        Assert.Equal(["ground frost, since 1961"], FrostDefinitions.Covering(C(-0.5), FrostSensor.Grass).Select(definition => definition.Term));
        Assert.Empty(FrostDefinitions.Covering(C(5), FrostSensor.Air));
    }
}
