using HortiCalc.Mixes;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>Tanks that are not empty, by examples worked by hand, and what is refused.</summary>
public class TankTests
{
    private static StrengthPerVolume Milligrams(double value, string ingredient = "") =>
        Strength.PerVolume(MassConcentration.FromMilligramsPerLiter(value), ingredient);

    [Fact]
    public void Correct_TooStrong_AddsWater()
    {
        MixBlend mended = TankMix.Correct(Volume.FromLiters(10), Milligrams(800), Milligrams(500), Milligrams(50_000));
        Assert.Equal((6, 0), (mended.Water.Liters, mended.Concentrate.Liters), (one, other) => Math.Abs(one.Item1 - other.Item1) < 1e-9 && one.Item2 == other.Item2);
    }

    [Fact]
    public void Correct_TooWeak_AddsConcentrate()
    {
        // 10 L at 200 and x at 50,000 make 500: x = 10 · 300 / 49,500 L.
        MixBlend mended = TankMix.Correct(Volume.FromLiters(10), Milligrams(200), Milligrams(500), Milligrams(50_000));
        Assert.Equal(10 * 300 / 49.5, mended.Concentrate.Milliliters, 6);
        Assert.Equal(0, mended.Water.Liters);
        Assert.StartsWith("10 L with 60.6 mL of concentrate make 10.1 L; 500 mg/L", mended.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void BlendTo_ByTheCross_TakesTheArmsOfTheOther()
    {
        MixBlend blend = TankMix.BlendTo(
            Volume.FromLiters(1),
            Strength.ByVolume(VolumeConcentration.FromPercent(91)),
            Strength.ByVolume(VolumeConcentration.FromPercent(0)),
            Strength.ByVolume(VolumeConcentration.FromPercent(70)));
        Assert.Equal(70.0 / 91, blend.Present.Liters, 9);
    }

    [Fact]
    public void RinsesTo_TripleRinseOfATenth_LeavesAThousandth()
    {
        Assert.Equal(3, TankMix.RinsesTo(Milligrams(1000), Milligrams(1), Volume.FromLiters(1), Volume.FromLiters(9)));
        Assert.Equal(0, TankMix.RinsesTo(Milligrams(1), Milligrams(1), Volume.FromLiters(1), Volume.FromLiters(9)));
    }

    [Fact]
    public void FillUp_WhatIsLeftTooStrong_IsRefusedWithTheRoom()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => TankMix.FillUp(Volume.FromLiters(5), Milligrams(2000), Volume.FromLiters(8), Milligrams(500), Milligrams(50_000)));
        Assert.Equal("leftStrength", refused.ParamName);
        Assert.Contains("3 L of water or concentrate", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Strengths_ThatCannotBeCompared_AreRefused()
    {
        Assert.Equal("now", Assert.Throws<ArgumentException>(() => TankMix.Correct(
            Volume.FromLiters(1), Milligrams(1, "nitrogen"), Milligrams(2), Milligrams(3))).ParamName);
        Assert.Contains("density", Assert.Throws<ArgumentException>(() => TankMix.Correct(
            Volume.FromLiters(1), Strength.ByVolume(VolumeConcentration.FromPercent(1)), Milligrams(2), Milligrams(3))).Message, StringComparison.Ordinal);
        Assert.Equal("first", Assert.Throws<ArgumentException>(() => TankMix.BlendTo(
            Volume.FromLiters(1), Strength.ByMass(MassFraction.FromPercent(5)), Milligrams(3), Milligrams(2))).ParamName);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Correct_ImpossibleVolume_NamesItWithTheRange(double litres)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => TankMix.Correct(Volume.FromLiters(litres), Milligrams(1), Milligrams(2), Milligrams(3)));
        Assert.Equal("tank", refused.ParamName);
        Assert.Contains("greater than 0 L", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Correct_TargetAboveTheConcentrate_IsRefused() => Assert.Equal(
        "target",
        Assert.Throws<ArgumentOutOfRangeException>(
            () => TankMix.Correct(Volume.FromLiters(1), Milligrams(1), Milligrams(5), Milligrams(5))).ParamName);

    [Fact]
    public void InSteps_NoSteps_IsRefused() => Assert.Equal(
        "steps", Assert.Throws<ArgumentException>(() => TankMix.InSteps(Volume.FromLiters(1), Milligrams(5))).ParamName);
}
