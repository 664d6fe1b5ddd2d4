using HortiCalc.Mixes;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>The three questions of a batch, and what the arithmetic refuses.</summary>
public class DilutionTests
{
    private static readonly MixRatio OneToNine = MixRatio.PartsToParts(1, 9);

    [Fact]
    public void MakeUpTo_TenLitresOneToNine_TakesOneLitre()
    {
        MixBatch batch = Dilution.MakeUpTo(Volume.FromLiters(10), OneToNine);
        Assert.Equal(1, batch.Concentrate.Liters, 12);
        Assert.Equal(9, batch.Water.Liters, 12);
        Assert.Equal(10, batch.Total.Liters, 12);
        Assert.Null(batch.Strength);
        Assert.Equal(OneToNine, batch.Ratio);
    }

    [Fact]
    public void AddTo_TenLitresOneToNine_MakesMoreThanTen()
    {
        MixBatch batch = Dilution.AddTo(Volume.FromLiters(10), OneToNine);
        Assert.Equal(10.0 / 9, batch.Concentrate.Liters, 12);
        Assert.Equal(100.0 / 9, batch.Total.Liters, 12);
    }

    [Fact]
    public void UseUp_QuarterLitreOneToNine_MakesTwoAndAHalf() =>
        Assert.Equal(2.5, Dilution.UseUp(Volume.FromMilliliters(250), OneToNine).Total.Liters, 12);

    [Fact]
    public void MakeUpTo_TargetEqualToTheConcentrate_TakesNoWater()
    {
        Strength strength = Strength.ByVolume(VolumeConcentration.FromPercent(70));
        Assert.Equal(0, Dilution.MakeUpTo(Volume.FromLiters(1), strength, strength).Water.Liters);
    }

    [Fact]
    public void AddTo_TargetEqualToTheConcentrate_IsRefused()
    {
        Strength strength = Strength.ByVolume(VolumeConcentration.FromPercent(70));
        Assert.Throws<ArgumentOutOfRangeException>(() => Dilution.AddTo(Volume.FromLiters(1), strength, strength));
    }

    [Fact]
    public void RatioFor_TargetAboveTheConcentrate_IsRefusedWithBoth()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => Dilution.RatioFor(
            Strength.PerVolume(MassConcentration.FromGramsPerLiter(5)), Strength.PerVolume(MassConcentration.FromGramsPerLiter(50))));
        Assert.Equal("target", refused.ParamName);
        Assert.Contains("50 g/L", refused.Message, StringComparison.Ordinal);
        Assert.Contains("not above the concentrate, 5 g/L", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void RatioFor_TargetOfZero_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => Dilution.RatioFor(
        Strength.PerVolume(MassConcentration.FromGramsPerLiter(5)), Strength.PerVolume(MassConcentration.Zero)));

    [Fact]
    public void RatioFor_DifferentIngredients_IsRefusedWithBoth()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => Dilution.RatioFor(
            Strength.PerVolume(MassConcentration.FromGramsPerLiter(50), "sodium hypochlorite"),
            Strength.PerVolume(MassConcentration.FromMilligramsPerLiter(200), "available chlorine")));
        Assert.Equal("target", refused.ParamName);
        Assert.Contains("'available chlorine'", refused.Message, StringComparison.Ordinal);
        Assert.Contains("'sodium hypochlorite'", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void RatioFor_VolumeAgainstMassPerVolume_IsRefused() => Assert.Equal("target", Assert.Throws<ArgumentException>(() => Dilution.RatioFor(
        Strength.ByVolume(VolumeConcentration.FromPercent(50)), Strength.PerVolume(MassConcentration.FromGramsPerLiter(5)))).ParamName);

    [Fact]
    public void MakeUpTo_ByMassWithoutDensity_IsRefused()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => Dilution.MakeUpTo(
            Volume.FromLiters(1), OneToNine, Strength.ByMass(MassFraction.FromPercent(30))));
        Assert.Equal("stock", refused.ParamName);
        Assert.Contains("30 % by mass without a density", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void MakeUpTo_ByMassWithDensity_GivesMassPerVolume()
    {
        Strength concentrate = Strength.ByMass(MassFraction.FromPercent(30), Density.FromKilogramsPerLiter(1.1));
        StrengthPerVolume result = Assert.IsType<StrengthPerVolume>(Dilution.MakeUpTo(Volume.FromLiters(1), OneToNine, concentrate).Strength);
        Assert.Equal(33, result.Concentration.GramsPerLiter, 10);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Batches_VolumeNotAboveZero_AreRefusedByName(double litres)
    {
        Volume volume = Volume.FromLiters(litres);
        Assert.Equal("total", Assert.Throws<ArgumentOutOfRangeException>(() => Dilution.MakeUpTo(volume, OneToNine)).ParamName);
        Assert.Equal("water", Assert.Throws<ArgumentOutOfRangeException>(() => Dilution.AddTo(volume, OneToNine)).ParamName);
        Assert.Equal("concentrate", Assert.Throws<ArgumentOutOfRangeException>(() => Dilution.UseUp(volume, OneToNine)).ParamName);
        Assert.Equal("batch", Assert.Throws<ArgumentOutOfRangeException>(() => Dilution.ProductFor(VolumeConcentration.FromPercent(1), volume)).ParamName);
        Assert.Equal("per", Assert.Throws<ArgumentOutOfRangeException>(() => Dilution.RateOf(Mass.FromGrams(5), volume)).ParamName);
    }

    [Fact]
    public void AddTo_Undiluted_IsRefused() =>
        Assert.Equal("ratio", Assert.Throws<ArgumentOutOfRangeException>(() => Dilution.AddTo(Volume.FromLiters(1), MixRatio.Undiluted)).ParamName);

    [Fact]
    public void PowderFor_PowderWithoutTheIngredient_IsRefused() => Assert.Equal("powder", Assert.Throws<ArgumentOutOfRangeException>(() =>
        Dilution.PowderFor(Volume.FromLiters(1), Strength.ByMass(MassFraction.Zero), Strength.PerVolume(MassConcentration.FromGramsPerLiter(1)))).ParamName);

    [Fact]
    public void ProductHolding_ProductWithoutActiveIngredient_IsRefused() => Assert.Equal("product", Assert.Throws<ArgumentOutOfRangeException>(() =>
        Dilution.ProductHolding(Mass.FromGrams(1), Strength.PerVolume(MassConcentration.Zero))).ParamName);

    [Fact]
    public void Combine_NegativeWater_IsRefused() => Assert.Equal("water", Assert.Throws<ArgumentOutOfRangeException>(() =>
        Dilution.Combine(Volume.FromLiters(1), Volume.FromLiters(-1), Strength.ByVolume(VolumeConcentration.FromPercent(5)))).ParamName);

    [Fact]
    public void Batch_MadeInOtherUnits_IsEqual() =>
        Assert.Equal(
            new MixBatch(Volume.FromMilliliters(500), Volume.FromLiters(4.5)),
            new MixBatch(Volume.FromLiters(0.5), Volume.FromMilliliters(4500)));

    [Fact]
    public void Batch_AsText_SaysAmountsRatioAndStrength()
    {
        MixBatch batch = Dilution.MakeUpTo(Volume.FromLiters(10), OneToNine, Strength.ByVolume(VolumeConcentration.FromPercent(50), "alcohol"));
        Assert.Equal(
            "1 L of concentrate and 9 L of water make 10 L (1 part to 9 parts, one in 10 of the mix); 5 % by volume of alcohol", batch.ToString());
        Assert.Contains("gal (US)", batch.ToString("U", null), StringComparison.Ordinal);
        Assert.Throws<FormatException>(() => batch.ToString("X", null));
    }
}
