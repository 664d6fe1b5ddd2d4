using System.Globalization;
using HortiCalc.Mixes;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>Practical measures by examples, and what is refused.</summary>
public class MeasuringTests
{
    [Theory]
    [InlineData(30, 5, "1 US fluid ounce")]
    [InlineData(237, 1, "1 US cup")]
    [InlineData(5, 3, "1 US teaspoon")]
    [InlineData(22.2, 1, "1 1/2 US tablespoons")]
    [InlineData(2.5, 3, "1/2 US teaspoon")]
    [InlineData(3785, 1, "1 US gallon")]
    public void Nearest_UsKitchen_NamesTheMeasure(double millilitres, double percent, string words) => Assert.StartsWith(
        words + " (",
        Measuring.Nearest(Volume.FromMilliliters(millilitres), KitchenMeasures.Us, Ratio.FromPercent(percent)).ToString(),
        StringComparison.Ordinal);

    [Fact]
    public void Nearest_SingleTooFarOff_TakesTwoMeasures()
    {
        PracticalAmount amount = Measuring.Nearest(Volume.FromMilliliters(35), KitchenMeasures.Us, Ratio.FromPercent(2));
        Assert.Equal(2, amount.Measures.Count);
        Assert.InRange(Math.Abs(amount.Error.Percent), 0, 2);
    }

    [Fact]
    public void Nearest_SpoonfulsOfThreeCountries_AreNotTheSame()
    {
        Volume amount = Volume.FromMilliliters(20);
        Assert.Equal("1 Australian tablespoon", Measuring.Nearest(amount, KitchenMeasures.Australian, Ratio.FromPercent(1)).Measures[0].ToString());
        Assert.NotEqual(
            Measuring.Nearest(amount, KitchenMeasures.Metric, Ratio.FromPercent(20)).Measured.Milliliters,
            Measuring.Nearest(amount, KitchenMeasures.Australian, Ratio.FromPercent(20)).Measured.Milliliters);
    }

    [Fact]
    public void Nearest_TooSmallForAnySpoon_IsRefusedWithAmountAndLimit()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => Measuring.Nearest(Volume.FromMilliliters(0.3), KitchenMeasures.Us, Ratio.FromPercent(10)));
        Assert.Equal("amount", refused.ParamName);
        Assert.Contains("0.3 mL", refused.Message, StringComparison.Ordinal);
        Assert.Contains("within 10 %", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Nearest_NoPairNearEnough_IsRefusedWithTheBestThatCouldBeDone()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => Measuring.Nearest(Volume.FromMilliliters(13.7), KitchenMeasures.Metric, Ratio.FromPercent(0.2)));
        Assert.Equal("amount", refused.ParamName);
        Assert.Contains("nearest is 2 3/4 metric teaspoons", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void OnScale_TooCoarse_IsRefused()
    {
        Assert.Equal(7, Measuring.OnScale(Mass.FromGrams(7.1), Mass.FromGrams(1), Ratio.FromPercent(2)).Grams, 9);
        Assert.Equal("amount", Assert.Throws<ArgumentOutOfRangeException>(
            () => Measuring.OnScale(Mass.FromGrams(1.4), Mass.FromGrams(1), Ratio.FromPercent(2))).ParamName);
    }

    [Fact]
    public void Amount_InACultureWithACommaForDecimals_IsWrittenThatWay() => Assert.Contains(
        "29,6 mL",
        Measuring.Nearest(Volume.FromMilliliters(30), KitchenMeasures.Us, Ratio.FromPercent(5)).ToString("M", CultureInfo.GetCultureInfo("de-DE")),
        StringComparison.Ordinal);

    [Fact]
    public void Powders_OnePage_ContradictsItselfAndSaysSo()
    {
        Assert.Contains(PowderMeasures.All, row => row.Doubt.Contains("28 g is not possible", StringComparison.Ordinal));
        Assert.All(PowderMeasures.All, row => Assert.InRange(row.BulkDensity.KilogramsPerLiter, 0.4, 1.9));
        Assert.NotEqual(
            PowderMeasures.All.Single(row => row is { Material: "potassium sulfate", Measure: "glass" }).BulkDensity.KilogramsPerLiter,
            PowderMeasures.All.Single(row => row is { Material: "potassium sulfate", Measure: "matchbox" }).BulkDensity.KilogramsPerLiter);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    public void Nearest_ImpossibleAmount_IsRefused(double millilitres) => Assert.Equal(
        "amount",
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Measuring.Nearest(Volume.FromMilliliters(millilitres), KitchenMeasures.Us, Ratio.FromPercent(5))).ParamName);

    [Fact]
    public void Nearest_NothingAtHandOrLimitTooWide_IsRefused()
    {
        Assert.Equal("measures", Assert.Throws<ArgumentException>(
            () => Measuring.Nearest(Volume.FromMilliliters(5), [], Ratio.FromPercent(5))).ParamName);
        Assert.Equal("limit", Assert.Throws<ArgumentOutOfRangeException>(
            () => Measuring.Nearest(Volume.FromMilliliters(5), KitchenMeasures.Us, Ratio.FromPercent(100))).ParamName);
    }

    /// <summary>What has marks is read at a mark, and the smallest that does it is taken.</summary>
    [Theory]
    [InlineData(7, "7 mL with a 10 mL syringe")]
    [InlineData(30, "30 mL with a 100 mL cylinder")]
    [InlineData(700, "700 mL with a 1 L jug")]
    [InlineData(1500, "1.5 L with a 1 L jug")]
    public void Nearest_WithMarks_ReadsTheSmallestThatHoldsIt(double millilitres, string text) => Assert.Equal(
        text, Measuring.Nearest(Volume.FromMilliliters(millilitres), KitchenMeasures.Graduated, Ratio.FromPercent(2)).Measures.Single().ToString());
}
