using System.Globalization;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Units;

public class ChargeTests
{
    [Theory]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Factories_NegativeOrNotFinite_AreRefusedWithTheUnit(double value)
    {
        Assert.Contains(" cmol(c)/kg; allowed: 0 cmol(c)/kg or more", Refusal(() => ExchangeableCharge.FromCentimolesPerKilogram(value)), StringComparison.Ordinal);
        Assert.Contains(" meq/100 g; allowed: 0 meq/100 g or more", Refusal(() => ExchangeableCharge.FromMilliequivalentsPer100Grams(value)), StringComparison.Ordinal);
        Assert.Contains(" cmol(c)/L; allowed: 0 cmol(c)/L or more", Refusal(() => VolumetricCharge.FromCentimolesPerLitre(value)), StringComparison.Ordinal);
        Assert.Contains(" meq/100 cm³; allowed: 0 meq/100 cm³ or more", Refusal(() => VolumetricCharge.FromMilliequivalentsPer100CubicCentimetres(value)), StringComparison.Ordinal);
    }

    [Fact]
    public void Subtraction_OfMoreThanThereIs_IsRefused()
    {
        ExchangeableCharge small = ExchangeableCharge.FromCentimolesPerKilogram(3);
        ExchangeableCharge large = ExchangeableCharge.FromCentimolesPerKilogram(5);
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => small - large);
        Assert.Equal("right", refused.ParamName);
        Assert.Contains("right was 5 cmol(c)/kg; allowed: from 0 to 3 cmol(c)/kg", refused.Message, StringComparison.Ordinal);
        Assert.Equal(2, (large - small).CentimolesPerKilogram);
        Assert.Throws<ArgumentOutOfRangeException>(() => VolumetricCharge.FromCentimolesPerLitre(1) - VolumetricCharge.FromCentimolesPerLitre(2));
    }

    [Fact]
    public void Division_OfOneByAnother_IsAShare()
    {
        ExchangeableCharge capacity = ExchangeableCharge.FromCentimolesPerKilogram(12);
        ExchangeableCharge acidity = ExchangeableCharge.FromMilliequivalentsPer100Grams(3);
        Assert.Equal(0.75, (capacity - acidity) / capacity);
        Assert.Throws<DivideByZeroException>(() => capacity / default(ExchangeableCharge));
        Assert.Throws<DivideByZeroException>(() => VolumetricCharge.FromCentimolesPerLitre(1) / default(VolumetricCharge));
    }

    [Fact]
    public void Multiplication_ByBulkDensity_IsTheChargePerVolume()
    {
        ExchangeableCharge byMass = ExchangeableCharge.FromCentimolesPerKilogram(10);
        Assert.Equal(13, (byMass * Density.FromGramsPerCubicCentimeter(1.3)).CentimolesPerLitre);
        Assert.Equal(10, (VolumetricCharge.FromCentimolesPerLitre(13) / Density.FromKilogramsPerCubicMeter(1300)).CentimolesPerKilogram);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void BulkDensity_NotPositive_IsRefused(double kilogramsPerCubicMetre)
    {
        Density density = Density.FromKilogramsPerCubicMeter(kilogramsPerCubicMetre);
        Assert.Equal("bulkDensity", Assert.Throws<ArgumentOutOfRangeException>(() => ExchangeableCharge.FromCentimolesPerKilogram(1) * density).ParamName);
        Assert.Equal("bulkDensity", Assert.Throws<ArgumentOutOfRangeException>(() => VolumetricCharge.FromCentimolesPerLitre(1) / density).ParamName);
    }

    [Fact]
    public void Multiplication_ByANegativeFactor_IsRefused() =>
        Assert.Equal("factor", Assert.Throws<ArgumentOutOfRangeException>(() => ExchangeableCharge.FromCentimolesPerKilogram(1) * -1).ParamName);

    [Fact]
    public void ToString_ByFormatAndCulture_Reads()
    {
        ExchangeableCharge byMass = ExchangeableCharge.FromCentimolesPerKilogram(5.23456);
        VolumetricCharge byVolume = VolumetricCharge.FromCentimolesPerLitre(0.1 + 0.2);
        Assert.Equal("5.235 cmol(c)/kg", byMass.ToString());
        Assert.Equal("5,235 meq/100 g", byMass.ToString("U", CultureScope.German));
        Assert.Equal("0.3 cmol(c)/L", byVolume.ToString());
        Assert.Equal("0.3 meq/100 cm³", byVolume.ToString("U", null));
        Assert.Equal("0.30000000000000004 cmol(c)/L", byVolume.ToString("R", null));
        Assert.Throws<FormatException>(() => byMass.ToString("Z", null));
    }

    [Theory]
    [InlineData("5.2 cmol(c)/kg")]
    [InlineData("5.2 meq/100 g")]
    [InlineData("5.2meq/100 g")]
    public void Parse_PerMassInBothUnits_Reads(string text) =>
        Assert.Equal(5.2, ExchangeableCharge.Parse(text, CultureInfo.InvariantCulture).CentimolesPerKilogram);

    [Theory]
    [InlineData("1.2 cmol(c)/L")]
    [InlineData("1.2 meq/100 cm³")]
    [InlineData("1.2 meq/100 cm3")]
    public void Parse_PerVolumeInBothUnits_Reads(string text) =>
        Assert.Equal(1.2, VolumetricCharge.Parse(text, CultureInfo.InvariantCulture).CentimolesPerLitre);

    [Theory]
    [InlineData("1.2 cmol(c)/L", "unknown unit 'cmol(c)/L'; known: cmol(c)/kg, meq/100 g")]
    [InlineData("1.2 mmol/kg", "unknown unit 'mmol/kg'")]
    [InlineData("-1 meq/100 g", "allowed: 0 meq/100 g or more")]
    [InlineData("1.2", "has no unit")]
    public void Parse_OfPerMass_RefusesWhatItIsNot(string text, string complaint)
    {
        Assert.False(ExchangeableCharge.TryParse(text, null, out ExchangeableCharge _));
        Assert.Contains(complaint, Assert.Throws<FormatException>(() => ExchangeableCharge.Parse(text, null)).Message, StringComparison.Ordinal);
    }

    private static string Refusal(Action act)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(act);
        Assert.Equal("value", refused.ParamName);
        return refused.Message;
    }
}
