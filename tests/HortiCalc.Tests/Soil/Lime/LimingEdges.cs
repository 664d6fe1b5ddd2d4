using System.Globalization;
using HortiCalc.Evidence;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;
using static HortiCalc.Tests.Soil.SoilSamples;

namespace HortiCalc.Tests.Soil;

/// <summary>What liming refuses, and how it says so.</summary>
public class LimingEdges
{
    [Theory]
    [InlineData(4.99)]
    [InlineData(6.01)]
    [InlineData(3)]
    public void Requirement_UkTableOutsideItsRows_RefusesWithTheDomain(double ph)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => Liming.Requirement(ByTexture(ph, SoilTexture.Loam), Neutralish, LimingMethod.UkGardenTexture));

        Assert.Equal("PhInWater", refused.ParamName);
        Assert.Contains($"PhInWater was {ph.ToString(CultureInfo.InvariantCulture)} pH; allowed: from 5 to 6 pH", refused.Message, StringComparison.Ordinal);
        Assert.Contains("UK garden table by texture", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(6.0)]
    [InlineData(6.4)]
    [InlineData(7.0)]
    public void Requirement_GardenTableToAnotherTarget_Refuses(double target)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => Liming.Requirement(ByTexture(5.2, SoilTexture.Loam), new Ph(target), LimingMethod.UsGardenTexture));

        Assert.Equal("target", refused.ParamName);
        Assert.Contains("from 6.5 to 6.5 pH", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(SoilTexture.Sand)]
    [InlineData(SoilTexture.LoamySand)]
    [InlineData(SoilTexture.SandyClay)]
    [InlineData(SoilTexture.SiltyClay)]
    [InlineData(SoilTexture.Clay)]
    public void Requirement_UsTableWithoutAColumnForTheTexture_RefusesAndListsThoseItHas(SoilTexture texture)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => Liming.Requirement(ByTexture(5.2, texture), Neutralish, LimingMethod.UsGardenTexture));

        Assert.Equal("Texture", refused.ParamName);
        Assert.Contains($"Texture was {texture}; allowed: SandyLoam, Loam, SiltLoam", refused.Message, StringComparison.Ordinal);
    }

    // The row between sandy loam and silty loam has no label in the copy seen, so nobody may take it for loam.
    [Fact]
    public void Requirement_AustralianTableForLoam_Refuses() =>
        Assert.Equal("Texture", Assert.Throws<ArgumentOutOfRangeException>(
            () => Liming.Requirement(ByTexture(5.2, SoilTexture.Loam), Neutralish, LimingMethod.AustralianGardenTexture)).ParamName);

    [Theory]
    [InlineData(4.4, 6.0, "PhInWater")]
    [InlineData(5.0, 6.6, "target")]
    public void Requirement_AustralianTableOutsideItsUnits_Refuses(double ph, double target, string parameter) =>
        Assert.Equal(parameter, Assert.Throws<ArgumentOutOfRangeException>(
            () => Liming.Requirement(ByTexture(ph, SoilTexture.SandyLoam), new Ph(target), LimingMethod.AustralianGardenTexture)).ParamName);

    [Theory]
    [InlineData(1.99)]
    [InlineData(25.71)]
    [InlineData(0)]
    public void Requirement_PennStateTurfOutsideItsRows_Refuses(double acidity)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => Liming.Requirement(ByAcidity(5, acidity), Neutralish, LimingMethod.PennStateTurf));

        Assert.Equal("ExchangeableAcidity", refused.ParamName);
        Assert.Contains("from 2 to 25.7 meq/100 g", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Requirement_PennStateToAnotherGoal_RefusesAndListsTheGoals()
    {
        ArgumentOutOfRangeException turf = Assert.Throws<ArgumentOutOfRangeException>(
            () => Liming.Requirement(ByAcidity(5, 5), new Ph(6.2), LimingMethod.PennStateTurf));
        ArgumentOutOfRangeException agronomic = Assert.Throws<ArgumentOutOfRangeException>(
            () => Liming.Requirement(ByAcidity(5, 5), new Ph(6), LimingMethod.PennStateAgronomic));

        Assert.Equal("target", turf.ParamName);
        Assert.Contains("target was 6.2 pH; allowed: 6 or 6.5 or 7 pH", turf.Message, StringComparison.Ordinal);
        Assert.Contains("allowed: 6.5 or 7 pH", agronomic.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Requirement_NorthCarolinaAboveTheBuffersPh_Refuses()
    {
        ArgumentOutOfRangeException target = Assert.Throws<ArgumentOutOfRangeException>(
            () => Liming.Requirement(ByBuffer(5, 1), new Ph(6.7), LimingMethod.NorthCarolina()));
        ArgumentOutOfRangeException buffer = Assert.Throws<ArgumentOutOfRangeException>(
            () => Liming.Requirement(new SoilReport { PhInWater = new Ph(5), MehlichBufferPh = new Ph(6.7) }, new Ph(6), LimingMethod.NorthCarolina()));

        Assert.Equal("target", target.ParamName);
        Assert.Contains("target was 6.7 pH; allowed: up to 6.6 pH", target.Message, StringComparison.Ordinal);
        Assert.Equal("MehlichBufferPh", buffer.ParamName);
        Assert.Contains("from 3 to 6.6 pH", buffer.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Requirement_ReportWithoutAMember_RefusesByItsName()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(
            () => Liming.Requirement(new SoilReport { PhInWater = new Ph(5) }, Neutralish, LimingMethod.PennStateTurf));

        Assert.Equal("soil", refused.ParamName);
        Assert.StartsWith("soil has no ExchangeableAcidity, which 'Penn State turf table by exchangeable acidity' needs.", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Requirement_Nothing_Refuses()
    {
        Assert.Equal("soil", Assert.Throws<ArgumentNullException>(() => Liming.Requirement(null!, Neutralish, LimingMethod.PennStateTurf)).ParamName);
        Assert.Equal("method", Assert.Throws<ArgumentNullException>(() => Liming.Requirement(new SoilReport(), Neutralish, null!)).ParamName);
        Assert.Equal("material", Assert.Throws<ArgumentNullException>(() => Given(1).As(null!)).ParamName);
        Assert.Equal("split", Assert.Throws<ArgumentNullException>(() => Given(1).Split(null!)).ParamName);
    }

    [Fact]
    public void Domain_Methods_LetACallerAskFirst()
    {
        Domain domain = LimingMethod.UkGardenTexture.Method.Domain;

        Assert.True(domain.Contains("PhInWater", 5.5));
        Assert.False(domain.Contains("PhInWater", 6.2));
        Assert.True(domain.Contains("target", 6.5));
        Assert.False(domain.Contains("target", 7));
    }

    [Fact]
    public void ForDepth_SourceWithoutDepth_Refuses()
    {
        LimeRequirement need = Liming.Requirement(ByTexture(5.5, SoilTexture.Loam), Neutralish, LimingMethod.UkGardenTexture);

        Assert.Null(need.Depth);
        Assert.Contains(
            "'UK garden table by texture' does not say which depth",
            Assert.Throws<InvalidOperationException>(() => need.ForDepth(Length.FromCentimeters(15))).Message,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-0.1)]
    public void ForDepth_NoDepth_Refuses(double metres)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => Given(500, depth: Length.FromInches(7)).ForDepth(Length.FromMeters(metres)));

        Assert.Equal("depth", refused.ParamName);
        Assert.Contains("allowed: greater than 0 m", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Over_NegativeArea_Refuses()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => Given(500).Over(Area.FromSquareMeters(-1)));

        Assert.Equal("area", refused.ParamName);
        Assert.Contains("area was -1 m²; allowed: 0 m² or more", refused.Message, StringComparison.Ordinal);
        Assert.Equal(0, Given(500).Over(Area.Zero).Value.Kilograms);
        Assert.Equal("area", Assert.Throws<ArgumentOutOfRangeException>(() => Given(0).Split(LimeSplit.Ireland).Over(Area.FromSquareMeters(-1))).ParamName);
    }

    [Fact]
    public void FromRecommendation_ImpossibleRate_Refuses()
    {
        Assert.Equal("rate", Assert.Throws<ArgumentOutOfRangeException>(() => Given(-1)).ParamName);
        Assert.Equal("recommendedBy", Assert.Throws<ArgumentException>(
            () => Liming.FromRecommendation(AreaDensity.Zero, LimingMaterial.GroundLimestone, " ")).ParamName);
        Assert.Equal("depth", Assert.Throws<ArgumentOutOfRangeException>(() => Given(1, depth: Length.Zero)).ParamName);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(250.1)]
    public void LimingMaterial_ImpossibleEquivalent_Refuses(double percent)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => Product(percent));

        Assert.Equal("calciumCarbonateEquivalent", refused.ParamName);
        Assert.Contains($"was {percent.ToString(CultureInfo.InvariantCulture)} %; allowed: above 0 and up to 250 %", refused.Message, StringComparison.Ordinal);
    }

    // The trap: a British label's 54 is as calcium oxide.
    [Fact]
    public void LimingMaterial_NeutralisingValueOfFiftyFour_IsAlmostPureLimestone()
    {
        LimingMaterial british = LimingMaterial.FromCalciumOxideEquivalent("British limestone", Ratio.FromPercent(54));

        Assert.InRange(british.CalciumCarbonateEquivalent.Percent, 96, 97);
        Assert.Equal("neutralisingValue", Assert.Throws<ArgumentOutOfRangeException>(
            () => LimingMaterial.FromCalciumOxideEquivalent("too much", Ratio.FromPercent(141))).ParamName);
    }

    [Fact]
    public void LimingMaterial_ImpossibleMembers_Refuses()
    {
        Assert.Equal("magnesium", Assert.Throws<ArgumentOutOfRangeException>(
            () => new LimingMaterial("a", Ratio.FromPercent(90), magnesium: MassFraction.FromPercent(101))).ParamName);
        Assert.Equal("form", Assert.Throws<ArgumentOutOfRangeException>(() => new LimingMaterial("a", Ratio.FromPercent(90), (LimeForm)9)).ParamName);
        Assert.Equal("name", Assert.Throws<ArgumentException>(() => new LimingMaterial("", Ratio.FromPercent(90))).ParamName);
    }

    [Fact]
    public void ResidualLime_ImpossibleMembers_Refuses()
    {
        AreaDensity rate = AreaDensity.FromGramsPerSquareMeter(100);

        Assert.Equal("months", Assert.Throws<ArgumentOutOfRangeException>(() => new ResidualLime(rate, -1, NorthCarolinaSoilClass.Mineral)).ParamName);
        Assert.Equal("rate", Assert.Throws<ArgumentOutOfRangeException>(() => new ResidualLime(-rate, 1, NorthCarolinaSoilClass.Mineral)).ParamName);
        Assert.Equal("soilClass", Assert.Throws<ArgumentOutOfRangeException>(() => new ResidualLime(rate, 1, (NorthCarolinaSoilClass)7)).ParamName);
    }

    [Fact]
    public void LimeSplit_ImpossibleMembers_Refuses()
    {
        Method rule = new("own", "our own rule", Source.CommonPractice("own", "our own rule"), new Domain(""));
        AreaDensity maximum = AreaDensity.FromGramsPerSquareMeter(300);

        Assert.Equal("maximum", Assert.Throws<ArgumentOutOfRangeException>(() => new LimeSplit(rule, AreaDensity.Zero, LimeShares.Equal)).ParamName);
        Assert.Equal("mostApplications", Assert.Throws<ArgumentOutOfRangeException>(() => new LimeSplit(rule, maximum, LimeShares.Equal, 0)).ParamName);
        Assert.Equal("mostMonths", Assert.Throws<ArgumentOutOfRangeException>(() => new LimeSplit(rule, maximum, LimeShares.Equal, null, 6, 4)).ParamName);
        Assert.Equal("shares", Assert.Throws<ArgumentOutOfRangeException>(() => new LimeSplit(rule, maximum, (LimeShares)5)).ParamName);
    }

    [Fact]
    public void Split_SenselessAmount_Refuses()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => Given(1e9).Split(LimeSplit.PennStateLawn));

        Assert.Equal("requirement", refused.ParamName);
        Assert.Contains("up to 1000 times what one application holds", refused.Message, StringComparison.Ordinal);
        Assert.Equal(2, Given(1e9).Split(LimeSplit.UkArable).Count);
    }

    [Fact]
    public void SoilReport_UnknownTexture_Refuses() =>
        Assert.Equal("Texture", Assert.Throws<ArgumentOutOfRangeException>(() => new SoilReport { Texture = (SoilTexture)12 }).ParamName);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-0.1)]
    [InlineData(14.1)]
    public void SoilReport_ImpossiblePh_Refuses(double ph) => Assert.Throws<ArgumentOutOfRangeException>(() => ByTexture(ph, SoilTexture.Loam));
}
