using System.Globalization;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Soil;

/// <summary>What salts refuse, warn of, say and store, and what was worked by hand.</summary>
public class SaltEdges
{
    private static readonly VolumetricCharge One = VolumetricCharge.FromCentimolesPerLitre(0.1);

    [Theory]
    [InlineData(7.73, 2.32, 1.44, 5.638)]
    [InlineData(36, 6, 2, 18)]
    public void SodiumAdsorptionRatio_ByHand_IsMet(double sodium, double calcium, double magnesium, double expected) =>
        Assert.Equal(expected, Salts.SodiumAdsorptionRatio(Meq(sodium), Meq(calcium), Meq(magnesium)), 5e-4);

    // Cells of the table of FAO-29 from memory: the power of the ratio must meet each to the printed hundredth or two.
    [Theory]
    [InlineData(0.05, 0.1, 13.20, 0.02)]
    [InlineData(0.10, 0.5, 9.07, 0.03)]
    [InlineData(0.25, 3.0, 5.91, 0.02)]
    [InlineData(0.50, 8.0, 4.30, 0.01)]
    [InlineData(2.00, 2.0, 1.40, 0.01)]
    [InlineData(10.0, 0.7, 0.43, 0.01)]
    [InlineData(30.0, 8.0, 0.28, 0.005)]
    public void AdjustedRatio_OfATableCell_ComesFromItsCalcium(double ratio, double conductivity, double calcium, double tolerance)
    {
        double adjusted = Salts.AdjustedSodiumAdsorptionRatio(
            Meq(10), Meq(2), VolumetricCharge.FromCentimolesPerLitre(0), Meq(2 * ratio), Ec(conductivity)).Value;

        Assert.Equal(calcium, 2 * Math.Pow(10 / adjusted, 2), tolerance);
    }

    [Fact]
    public void ExchangeableSodium_AtEighteen_IsAFifth() => Assert.Equal(20.19, Salts.ExchangeableSodium(18).Value.Percent, 0.005);

    [Fact]
    public void GypsumRequirement_ByHandAfterOster_IsMetWithItsEnds()
    {
        ExchangeableCharge sodium = Salts.SodiumToReplace(ExchangeableCharge.FromCentimolesPerKilogram(20), Ratio.FromPercent(20), Ratio.FromPercent(5));
        SoilLayer layer = new(Length.FromCentimeters(15), Density.FromGramsPerCubicCentimeter(1.3));
        Estimate<AreaDensity> gypsum = Salts.GypsumRequirement(sodium, layer, Ratio.FromPercent(90), GypsumMethod.Oster);

        // 8.6 x 1.1 x 0.15 x 1.3 x 20 x (20 - 5) / 90 = 6.149 t/ha at the low end; the molar masses make 8.6086 of 8.6.
        Assert.Equal(614.9, gypsum.Range!.Low.GramsPerSquareMeter, 0.7);
        Assert.Equal(gypsum.Range.Low.GramsPerSquareMeter * 1.3 / 1.1, gypsum.Range.High.GramsPerSquareMeter, 1e-6);
        Assert.Contains(gypsum.Cautions, caution => caution.Code == "salt.gypsum-drainage");
    }

    [Fact]
    public void GypsumRequirement_NothingToReplace_IsZeroWithANote()
    {
        Estimate<AreaDensity> none = Salts.GypsumRequirement(
            ExchangeableCharge.FromCentimolesPerKilogram(0), SoilLayer.FurrowSlice, Ratio.FromPercent(100), GypsumMethod.Ali);

        Assert.Equal(0, none.Value.GramsPerSquareMeter);
        Assert.Equal("salt.gypsum-not-needed", none.Cautions.Single().Code);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(101)]
    public void GypsumRequirement_ImpossiblePurity_IsRefused(double percent)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>("purity", () => Salts.GypsumRequirement(
            ExchangeableCharge.FromCentimolesPerKilogram(1), SoilLayer.FurrowSlice, Ratio.FromPercent(percent), GypsumMethod.Ali));

        Assert.Contains("above 0 and up to 100 %", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void LeachingRequirement_ByHand_IsMetAndWarnsWhereMuchRunsThrough()
    {
        Estimate<Ratio> moderate = Salts.LeachingRequirement(Ec(1.2), Ec(2.5), LeachingMethod.Rhoades);
        Estimate<Ratio> heavy = Salts.LeachingRequirement(Ec(3), Ec(2.5), LeachingMethod.Rhoades);

        Assert.Equal(10.6, moderate.Value.Percent, 0.05);
        Assert.Equal(["salt.leaching-loses-nitrate"], moderate.Cautions.Select(caution => caution.Code));
        Assert.Equal(31.6, heavy.Value.Percent, 0.05);
        Assert.Contains(Salts.LeachingRequirement(Ec(4), Ec(2.5), LeachingMethod.Rhoades).Cautions, caution => caution.Code == "salt.heavy-leaching");
    }

    [Theory]
    [InlineData("leaching-rhoades", 6.25)]
    [InlineData("leaching-salt-balance", 2.5)]
    [InlineData("leaching-high-frequency", 5)]
    public void LeachingRequirement_WaterTooSalty_IsRefusedWithTheBound(string method, double bound)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            "water", () => Salts.LeachingRequirement(Ec(bound), Ec(2.5), LeachingMethod.FromKey(method)));

        Assert.Contains($"below {bound.ToString(CultureInfo.InvariantCulture)} dS/m", refused.Message, StringComparison.Ordinal);
        Assert.True(Salts.LeachingRequirement(Ec(bound - 0.01), Ec(2.5), LeachingMethod.FromKey(method)).Value.Percent < 100);
    }

    [Fact]
    public void WaterWithLeaching_AllRunningThrough_IsRefused() => Assert.Contains(
        "from 0 to below 100 %",
        Assert.Throws<ArgumentOutOfRangeException>("leaching", () => Salts.WaterWithLeaching(Length.FromMillimeters(5), Ratio.FromPercent(100))).Message,
        StringComparison.Ordinal);

    [Fact]
    public void Extract_WhereTheSaturatedOneWouldBeThinner_IsRefusedAsItsDomainSays()
    {
        ExtractConversion fine = ExtractConversions.FromKey("extract-1-1-60-fine");
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>("measured", () => fine.SaturatedExtract(Ec(0.58)));

        // 2.66 x - 0.97 is x at 0.97 / 1.66.
        Assert.Contains("0.5843373494 dS/m or more", refused.Message, StringComparison.Ordinal);
        Assert.False(fine.Method.Domain.Contains("measured", 0.58));
        Assert.True(fine.Method.Domain.Contains("measured", 0.59));
        Assert.Equal(0.97 / 1.66, fine.SaturatedExtract(Ec(0.97 / 1.66)).Value.MillisiemensPerCentimeter, 1e-12);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(151)]
    public void SlavichPetterson_ImpossibleWater_IsRefused(double percent) =>
        Assert.Throws<ArgumentOutOfRangeException>("saturationWater", () => ExtractConversions.SlavichPetterson(Ratio.FromPercent(percent)));

    [Fact]
    public void Readings_Impossible_AreRefusedByName()
    {
        Assert.Throws<ArgumentOutOfRangeException>("saturated", () => Salts.Rank(Ec(-0.1)));
        Assert.Throws<ArgumentOutOfRangeException>("saturated", () => Salts.Class(Ec(-0.1), 3.0));
        Assert.Throws<ArgumentOutOfRangeException>("sodiumAdsorptionRatio", () => Salts.Class(Ec(1), -1.0));
        Assert.Throws<ArgumentOutOfRangeException>("exchangeableSodium", () => Salts.Class(Ec(1), Ratio.FromPercent(101)));
        Assert.Throws<ArgumentOutOfRangeException>("sodiumAdsorptionRatio", () => Salts.ExchangeableSodium(61));
        Assert.Throws<ArgumentOutOfRangeException>("exchangeableSodium", () => Salts.SodiumAdsorptionRatio(Ratio.FromPercent(47)));
        Assert.Throws<ArgumentOutOfRangeException>("calcium", () => Salts.SodiumAdsorptionRatio(One, VolumetricCharge.FromCentimolesPerLitre(0), VolumetricCharge.FromCentimolesPerLitre(0)));
        Assert.Throws<ArgumentOutOfRangeException>("conductivity", () => Salts.AdjustedSodiumAdsorptionRatio(One, One, One, One, Ec(9)));
        Assert.Throws<ArgumentOutOfRangeException>("bicarbonatePerCalcium", () => Salts.AdjustedSodiumAdsorptionRatio(One, One, One, Meq(31), Ec(1)));
        Assert.Throws<ArgumentOutOfRangeException>("measured", () => Salts.MediumReading(Ec(2.4), MediumExtract.OneToTwo, MediumExtract.PourThrough));
        Assert.Throws<ArgumentOutOfRangeException>("extract", () => Salts.MediumLevel(Ec(2), (MediumExtract)9));
        Assert.Throws<ArgumentOutOfRangeException>("conductivity", () => Salts.DissolvedSolids(Ec(5.1), DissolvedSolidsMethod.Irrigation));
        Assert.Throws<ArgumentOutOfRangeException>("leachingFraction", () => Salts.SoilSalinity(Ec(1), Ratio.FromPercent(0.5)));
        Assert.Throws<ArgumentOutOfRangeException>("boron", () => BoronTolerances.Bearing(MassConcentration.FromMilligramsPerLiter(15.1)));
    }

    [Fact]
    public void SaltTolerance_RatingAlone_HasNoYield()
    {
        SaltTolerance apple = SaltTolerances.Named("fao-56-table-23", "Apples");

        Assert.Equal(SaltRating.Sensitive, apple.Rating);
        Assert.Contains("prints no threshold of Apples", Assert.Throws<InvalidOperationException>(() => apple.RelativeYield(Ec(1))).Message, StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => BoronTolerances.Named("lemon").RelativeYield(MassConcentration.FromMilligramsPerLiter(1)));
    }

    [Fact]
    public void SaltTolerance_ThresholdWithoutLoss_IsRefused()
    {
        Source source = Source.CommonPractice("test", "test");
        Assert.Throws<ArgumentException>("loss", () => new SaltTolerance("a", "a", source, Ec(1)));
        Assert.Throws<ArgumentOutOfRangeException>("loss", () => new SaltTolerance("a", "a", source, Ec(1), loss: Ratio.FromPercent(0)));
        Assert.Throws<ArgumentOutOfRangeException>("thresholdHigh", () => new SaltTolerance("a", "a", source, Ec(2), Ec(1), Ratio.FromPercent(5)));
    }

    [Fact]
    public void SaltTolerances_OfTomato_StandSideBySide()
    {
        IReadOnlyList<SaltTolerance> rows = SaltTolerances.Of("tomato");
        SaltTolerance range = rows[0];

        Assert.Equal(["fao-56-table-23", "ussl-herbaceous-1990"], rows.Select(row => row.Source.Key));
        Assert.Equal(0.9, range.Threshold!.Value.MillisiemensPerCentimeter);
        Assert.Equal(2.5, range.ThresholdHigh!.Value.MillisiemensPerCentimeter);
        Assert.Equal(79.3, range.RelativeYield(Ec(4)).Value.Percent, 1e-9);
        Assert.Equal(72.1, range.RelativeYield(Ec(4)).Range!.Low.Percent, 1e-9);
        Assert.Equal(86.5, range.RelativeYield(Ec(4)).Range!.High.Percent, 1e-9);
    }

    [Fact]
    public void Tolerances_FromMemory_SaySo()
    {
        Assert.Contains(SaltTolerances.Named("ussl-field-and-woody", "Guar").RelativeYield(Ec(9)).Cautions, caution => caution.Code == "salt.not-seen-in-print");
        Assert.DoesNotContain(SaltTolerances.Named("fao-56-table-23", "Carrots").RelativeYield(Ec(2)).Cautions, caution => caution.Code == "salt.not-seen-in-print");
        Assert.Contains(BoronTolerances.Named("Lettuce").RelativeYield(MassConcentration.FromMilligramsPerLiter(2)).Cautions, caution => caution.Code == "salt.not-seen-in-print");
    }

    [Fact]
    public void Tolerances_WhatTwoListsPrintAlike_Agrees()
    {
        SaltTolerance[] printed = [.. SaltTolerances.All.Where(row => row.Source.Key == "fao-56-table-23" && row.Threshold is not null)];
        SaltTolerance[] remembered = [.. SaltTolerances.All.Where(row => row.Source.Key == "ussl-field-and-woody")];
        (SaltTolerance Printed, SaltTolerance Remembered)[] pairs =
            [.. remembered.SelectMany(row => printed.Where(other => other.Crop == row.Crop).Select(other => (other, row)))];

        // FAO-56 took its thresholds from the same lists: those remembered must lie within what it prints.
        Assert.True(pairs.Length >= 40);
        Assert.All(pairs, pair => Assert.InRange(
            pair.Remembered.Threshold!.Value.MillisiemensPerCentimeter,
            pair.Printed.Threshold!.Value.MillisiemensPerCentimeter,
            pair.Printed.ThresholdHigh!.Value.MillisiemensPerCentimeter));
    }

    [Fact]
    public void Water_NothingReported_IsNotJudged()
    {
        Assert.Empty(new IrrigationWater().Findings);
        Assert.Null(new IrrigationWater { Sodium = One, Calcium = VolumetricCharge.FromCentimolesPerLitre(0), Magnesium = VolumetricCharge.FromCentimolesPerLitre(0) }.SodiumAdsorptionRatio);
        Assert.Equal("1.25 dS/m, 1 hazards judged", new IrrigationWater { Conductivity = Ec(1.25) }.ToString());
        Assert.Throws<ArgumentOutOfRangeException>("Conductivity", () => new IrrigationWater { Conductivity = Ec(-1) });
        Assert.Throws<ArgumentOutOfRangeException>("Boron", () => new IrrigationWater { Boron = MassConcentration.FromMilligramsPerLiter(-1) });
    }

    [Fact]
    public void FromKey_EveryMethod_IsFoundAndAnotherRefused()
    {
        Assert.All(LeachingMethod.All, method => Assert.Same(method, LeachingMethod.FromKey(method.Method.Key)));
        Assert.All(GypsumMethod.All, method => Assert.Same(method, GypsumMethod.FromKey(method.Method.Key)));
        Assert.All(DissolvedSolidsMethod.All, method => Assert.Same(method, DissolvedSolidsMethod.FromKey(method.Method.Key)));
        Assert.All(ExtractConversions.All, line => Assert.Same(line, ExtractConversions.FromKey(line.Method.Key)));
        Assert.Equal(16 + 3 + 5, Enum.GetValues<SoilExtract>().Sum(extract => ExtractConversions.For(extract).Count));
        Assert.Contains("gypsum-ali", Assert.Throws<ArgumentException>("key", () => GypsumMethod.FromKey("x")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_EveryType_ReadsBackAsItWas()
    {
        Assert.All(SaltTolerances.All, Same);
        Assert.All(BoronTolerances.All, Same);
        Assert.All(ExtractConversions.All, Same);
        Same(ExtractConversions.SlavichPetterson(Ratio.FromPercent(45)));
        Assert.All(LeachingMethod.All, Same);
        Assert.All(GypsumMethod.All, Same);
        Assert.All(DissolvedSolidsMethod.All, Same);
        IrrigationWater water = new() { Conductivity = Ec(1.2), Sodium = Meq(3), Calcium = Meq(2), Magnesium = Meq(1), Boron = MassConcentration.FromMilligramsPerLiter(0.2) };
        Same(water);
        Assert.All(water.Findings, Same);
        Same(Salts.Rank(Ec(3)));
        Same(Salts.Class(Ec(3), 14.0));
        Same(Salts.MediumLevel(Ec(3), MediumExtract.PourThrough));
        Same(Salts.MediumReading(Ec(1), MediumExtract.OneToTwo, MediumExtract.PourThrough));
        Same(BoronTolerances.Bearing(MassConcentration.FromMilligramsPerLiter(3)));
        Assert.Equal("\"leaching-rhoades\"", HortiCalcJson.Serialize(LeachingMethod.Rhoades));

        static void Same<T>(T value) => Assert.Equal(value, HortiCalcJson.Deserialize<T>(HortiCalcJson.Serialize(value)));
    }

    [Fact]
    public void ToString_AnyCulture_IsTheSame()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.StartsWith("broccoli: from 2.8 dS/m, 9.2 % each dS/m, moderately sensitive [", SaltTolerances.Named("fao-56-table-23", "broccoli").ToString(), StringComparison.Ordinal);
            Assert.StartsWith("Carrot: 1 mg/L to 2 mg/L [", BoronTolerances.Named("carrot").ToString(), StringComparison.Ordinal);
            Assert.StartsWith("saturated extract from 1:1, 3.01 x EC - 0.77 [", ExtractConversions.FromKey("extract-1-1-60-medium").ToString(), StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Json_EverythingOfSalts_ComesBackEqual()
    {
        static void RoundTrip<T>(T value) => Assert.Equal(value, HortiCalcJson.Deserialize<T>(HortiCalcJson.Serialize(value)));

        RoundTrip(new SoilLayer(Length.FromInches(6), Density.FromGramsPerCubicCentimeter(1.3)));
        RoundTrip(Ion.Calcium);
        RoundTrip(ExtractConversions.FromKey("extract-1-1-60-medium"));
        RoundTrip(DissolvedSolidsMethod.Irrigation);
        RoundTrip(LeachingMethod.Rhoades);
        RoundTrip(GypsumMethod.Oster);
        RoundTrip(new IrrigationWater { Conductivity = Ec(1.2), Sodium = Meq(3), Boron = MassConcentration.FromMilligramsPerLiter(0.2) });
        RoundTrip(SaltTolerances.Named("fao-56-table-23", "Carrots"));
        RoundTrip(SaltTolerances.All.First(row => row.Threshold is null));
        RoundTrip(BoronTolerances.Named("Lettuce"));
        RoundTrip(Salts.Class(Ec(4.6), 14));
        RoundTrip(Salts.MediumReading(Ec(1.2), MediumExtract.OneToTwo, MediumExtract.PourThrough));
        RoundTrip(new IrrigationWater { Conductivity = Ec(1.2) }.Findings[0]);
    }

    private static VolumetricCharge Meq(double value) => VolumetricCharge.FromCentimolesPerLitre(value / 10);

    private static ElectricConductivity Ec(double decisiemens) => ElectricConductivity.FromMillisiemensPerCentimeter(decisiemens);
}
