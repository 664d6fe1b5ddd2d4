using HortiCalc.Mixes;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>One strength on its several bases.</summary>
public class StrengthTests
{
    [Fact]
    public void ByMass_WithoutDensity_HasNoMassPerVolume()
    {
        StrengthByMass strength = Strength.ByMass(MassFraction.FromPercent(6));
        Assert.Null(strength.Density);
        Assert.Contains("density", Assert.Throws<InvalidOperationException>(() => strength.ToMassPerVolume()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void WithDensity_SixPercentOfBleach_IsMassPerVolume() => Assert.Equal(
        64.8, Strength.ByMass(MassFraction.FromPercent(6)).WithDensity(Density.FromKilogramsPerLiter(1.08)).ToMassPerVolume().Concentration.GramsPerLiter, 10);

    [Fact]
    public void ByVolume_TimesTheDensityOfTheIngredient_IsMassPerVolume() => Assert.Equal(
        7.89, Strength.ByVolume(VolumeConcentration.FromPercent(1)).ToMassPerVolume(Density.FromKilogramsPerCubicMeter(789)).Concentration.GramsPerLiter, 10);

    [Fact]
    public void PartsPerMillionInDiluteWater_FiveHundred_IsFiveHundredMilligramsALitre()
    {
        StrengthPerVolume strength = Strength.PartsPerMillionInDiluteWater(MassFraction.FromPartsPerMillion(500), "available chlorine");
        Assert.Equal(500, strength.Concentration.MilligramsPerLiter, 10);
        Assert.Equal("available chlorine", strength.Ingredient);
    }

    [Fact]
    public void PartsPerMillionInDiluteWater_AboveOnePercent_IsRefused()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => Strength.PartsPerMillionInDiluteWater(MassFraction.FromPercent(5.25)));
        Assert.Equal("share", refused.ParamName);
        Assert.Contains("52500 ppm", refused.Message, StringComparison.Ordinal);
        Assert.Contains("from 0 to 10000 ppm", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void PercentAsWeightPerVolume_IsTheMassStrengthOfALiquidAsDenseAsWater()
    {
        MassFraction percent = MassFraction.FromPercent(5.25);
        Assert.Equal(
            Strength.ByMass(percent, Density.FromKilogramsPerLiter(1)).ToMassPerVolume().Concentration.GramsPerLiter,
            Strength.PercentAsWeightPerVolume(percent).Concentration.GramsPerLiter,
            10);
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(100.1)]
    public void Shares_OutsideZeroToHundredPercent_AreRefused(double percent)
    {
        Assert.Equal("share", Assert.Throws<ArgumentOutOfRangeException>(() => Strength.ByVolume(VolumeConcentration.FromPercent(percent))).ParamName);
        Assert.Equal("share", Assert.Throws<ArgumentOutOfRangeException>(() => Strength.ByMass(MassFraction.FromPercent(percent))).ParamName);
        Assert.Equal("percent", Assert.Throws<ArgumentOutOfRangeException>(
            () => Strength.PercentAsWeightPerVolume(MassFraction.FromPercent(percent))).ParamName);
    }

    [Fact]
    public void Concentration_Negative_IsRefused() => Assert.Equal(
        "concentration", Assert.Throws<ArgumentOutOfRangeException>(() => Strength.PerVolume(MassConcentration.FromMilligramsPerLiter(-1))).ParamName);

    [Fact]
    public void Density_NotAboveZero_IsRefused() => Assert.Equal(
        "density", Assert.Throws<ArgumentOutOfRangeException>(() => Strength.ByMass(MassFraction.FromPercent(6), Density.Zero)).ParamName);

    [Fact]
    public void ToMassFraction_MoreIngredientThanTheLitreWeighs_IsRefused() => Assert.Equal(
        "density",
        Assert.Throws<ArgumentOutOfRangeException>(() => Strength
            .PerVolume(MassConcentration.FromGramsPerLiter(1100))
            .ToMassFraction(Density.FromKilogramsPerLiter(1))).ParamName);

    [Fact]
    public void Strengths_OnDifferentBases_AreNeverEqual()
    {
        Strength volume = Strength.ByVolume(VolumeConcentration.FromPercent(5));
        Strength mass = Strength.ByMass(MassFraction.FromPercent(5));
        Assert.NotEqual(volume, mass);
        Assert.Equal(volume, Strength.ByVolume(VolumeConcentration.FromMillilitersPerLiter(50)));
    }

    [Fact]
    public void Strength_AsText_NamesItsBasisAndIngredient()
    {
        Assert.Equal("5 % by volume", Strength.ByVolume(VolumeConcentration.FromPercent(5)).ToString());
        Assert.Equal("6 % by mass of sodium hypochlorite", Strength.ByMass(MassFraction.FromPercent(6), ingredient: "sodium hypochlorite").ToString());
        Assert.Equal("500 mg/L of nitrogen", Strength.PerVolume(MassConcentration.FromMilligramsPerLiter(500), "nitrogen").ToString());
    }
}
