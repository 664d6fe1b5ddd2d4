using System.Globalization;
using HortiCalc.Mixes;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>"1 to N" and "one in N" are different things unless they make the same mix.</summary>
public class MixRatioTests
{
    [Fact]
    public void Ratios_OneToNineAndOneInTen_AreTheSameMix()
    {
        MixRatio garden = MixRatio.PartsToParts(concentrate: 1, diluent: 9);
        MixRatio sheet = MixRatio.OneIn(10);

        Assert.True(garden == sheet);
        Assert.Equal(garden.GetHashCode(), sheet.GetHashCode());
        Assert.Equal(10, garden.Factor);
        Assert.Equal(9, sheet.PartsOfDiluent);
        Assert.Equal(10, sheet.ShareOfConcentrate.Percent, 12);
    }

    [Theory]
    [InlineData(4)]
    [InlineData(9)]
    [InlineData(10)]
    [InlineData(100)]
    [InlineData(256)]
    public void Ratios_WithTheSameNumberInBothMeanings_AreNeverTheSameMix(int number)
    {
        MixRatio parts = MixRatio.PartsToParts(1, number);
        MixRatio oneIn = MixRatio.OneIn(number);

        Assert.True(parts != oneIn);
        Assert.False(parts.Equals((object)oneIn));
        Assert.True(parts.Factor > oneIn.Factor);
    }

    [Fact]
    public void PartsToParts_TwoToNinetyEight_IsOneInFifty() => Assert.Equal(MixRatio.OneIn(50), MixRatio.PartsToParts(2, 98));

    [Fact]
    public void PartsToParts_ThatAreNoBinaryFractions_EqualTheSameMix() => Assert.Equal(MixRatio.OneIn(3.3), MixRatio.PartsToParts(1, 2.3));

    [Fact]
    public void FromShare_OfTenPercent_IsOneInTen() => Assert.Equal(MixRatio.OneIn(10), MixRatio.FromShare(VolumeConcentration.FromPercent(10)));

    [Fact]
    public void Undiluted_Default_IsOneInOne()
    {
        Assert.Equal(MixRatio.OneIn(1), MixRatio.Undiluted);
        Assert.Equal(default, MixRatio.PartsToParts(3, 0));
        Assert.Equal(100, MixRatio.Undiluted.ShareOfConcentrate.Percent);
    }

    [Fact]
    public void Then_BeyondAnyNumber_IsRefused() => Assert.Equal(
        "next", Assert.Throws<ArgumentOutOfRangeException>(() => MixRatio.OneIn(1e300).Then(MixRatio.OneIn(1e300))).ParamName);

    [Fact]
    public void Then_OneInTenTwice_IsOneInAHundred() => Assert.Equal(MixRatio.OneIn(100), MixRatio.OneIn(10).Then(MixRatio.PartsToParts(1, 9)));

    [Fact]
    public void ToString_AnyRatio_StatesBothMeanings()
    {
        Assert.Equal("1 part to 9 parts, one in 10 of the mix", MixRatio.OneIn(10).ToString());
        Assert.Equal("1 part to 1 part, one in 2 of the mix", MixRatio.PartsToParts(5, 5).ToString());
        Assert.Equal("1 part to 1,5 parts, one in 2,5 of the mix", MixRatio.OneIn(2.5).ToString(null, CultureInfo.GetCultureInfo("de-DE")));
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void PartsToParts_ConcentrateNotAboveZero_IsRefused(double concentrate)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => MixRatio.PartsToParts(concentrate, 9));
        Assert.Equal("concentrate", refused.ParamName);
        Assert.Contains("greater than 0 parts", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void PartsToParts_DiluentNegativeOrNotFinite_IsRefused(double diluent) =>
        Assert.Equal("diluent", Assert.Throws<ArgumentOutOfRangeException>(() => MixRatio.PartsToParts(1, diluent)).ParamName);

    [Fact]
    public void PartsToParts_QuotientBeyondNumbers_IsRefused() =>
        Assert.Equal("diluent", Assert.Throws<ArgumentOutOfRangeException>(() => MixRatio.PartsToParts(1e-200, 1e200)).ParamName);

    [Theory]
    [InlineData(0.99)]
    [InlineData(0.0)]
    [InlineData(-10.0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void OneIn_BelowOne_IsRefused(double total)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => MixRatio.OneIn(total));
        Assert.Equal("total", refused.ParamName);
        Assert.Contains("1 parts or more", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(100.1)]
    public void FromShare_OutsideZeroToHundredPercent_IsRefused(double percent) => Assert.Equal(
        "share", Assert.Throws<ArgumentOutOfRangeException>(() => MixRatio.FromShare(VolumeConcentration.FromPercent(percent))).ParamName);
}
