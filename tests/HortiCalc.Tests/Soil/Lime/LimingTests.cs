using HortiCalc.Evidence;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;
using static HortiCalc.Tests.Soil.SoilSamples;

namespace HortiCalc.Tests.Soil;

/// <summary>How liming behaves where no table says it in a number: readings, gaps in print, cautions.</summary>
public class LimingTests
{
    [Fact]
    public void Requirement_OnAPrintedRow_RecordsOnlyTheReadingOfTheColumn()
    {
        Estimate<AreaDensity> rate = Liming.Requirement(ByTexture(5.5, SoilTexture.LoamySand), Neutralish, LimingMethod.UkGardenTexture).Rate;

        Assert.Equal("loamy sand read in the column 'light soils (very sandy, low clay)'", Assert.Single(rate.Adjustments).Name);
        Assert.Equal(SourceKind.CommonPractice, rate.Adjustments[0].Source.Kind);
    }

    [Fact]
    public void Requirement_ClassNamedByTheTable_RecordsNoReading()
    {
        Assert.Empty(Liming.Requirement(ByTexture(5.5, SoilTexture.Loam), Neutralish, LimingMethod.UkGardenTexture).Rate.Adjustments);
        Assert.Empty(Liming.Requirement(ByTexture(5.5, SoilTexture.ClayLoam), Neutralish, LimingMethod.UsGardenTexture).Rate.Adjustments);
        Assert.Single(Liming.Requirement(ByTexture(5.5, SoilTexture.SiltyClayLoam), Neutralish, LimingMethod.UsGardenTexture).Rate.Adjustments);
    }

    // What the caution lime.methods-differ says.
    [Fact]
    public void Requirement_OneSoilByTheGardenTables_DiffersAboutThreefold()
    {
        double[] rates = [.. LimingMethod.All
            .Where(method => method.CanUse(ByTexture(5.5, SoilTexture.SiltLoam), Neutralish, out _))
            .Select(method => GramsPerSquareMetre(ByTexture(5.5, SoilTexture.SiltLoam), 6.5, method))];

        Assert.Equal(5, rates.Length);
        Assert.InRange(rates.Max() / rates.Min(), 2.5, 4);
    }

    [Fact]
    public void Requirement_BetweenPrintedRows_RecordsTheStraightLine()
    {
        LimeRequirement need = Liming.Requirement(ByTexture(5.6, SoilTexture.Loam), Neutralish, LimingMethod.UsGardenTexture);

        Assert.Equal("lime-between-rows", Assert.Single(need.Rate.Adjustments).Key);
        Assert.Equal(8 - 0.2 * 4, need.Over(Area.FromSquareFeet(100)).Value.Pounds, 1e-9);
    }

    [Theory]
    [InlineData(SoilTexture.Sand, 700)]
    [InlineData(SoilTexture.LoamySand, 700)]
    [InlineData(SoilTexture.SandyLoam, 800)]
    [InlineData(SoilTexture.Loam, 800)]
    [InlineData(SoilTexture.SiltLoam, 800)]
    [InlineData(SoilTexture.Silt, 800)]
    [InlineData(SoilTexture.SandyClayLoam, 1000)]
    [InlineData(SoilTexture.ClayLoam, 1000)]
    [InlineData(SoilTexture.SiltyClayLoam, 1000)]
    [InlineData(SoilTexture.SandyClay, 1000)]
    [InlineData(SoilTexture.SiltyClay, 1000)]
    [InlineData(SoilTexture.Clay, 1000)]
    public void Requirement_UkTable_ReadsEveryTextureInItsColumn(SoilTexture texture, double gramsPerSquareMetre) =>
        Assert.Equal(gramsPerSquareMetre, GramsPerSquareMetre(ByTexture(5.5, texture), 6.5, LimingMethod.UkGardenTexture));

    [Theory]
    [InlineData(SoilTexture.SandyLoam, 6)]
    [InlineData(SoilTexture.Loam, 8)]
    [InlineData(SoilTexture.SiltLoam, 8)]
    [InlineData(SoilTexture.Silt, 8)]
    [InlineData(SoilTexture.SandyClayLoam, 10.5)]
    [InlineData(SoilTexture.ClayLoam, 10.5)]
    [InlineData(SoilTexture.SiltyClayLoam, 10.5)]
    public void Requirement_UsTable_ReadsTexturesInTheirColumn(SoilTexture texture, double poundsPer100SquareFeet) =>
        Assert.Equal(
            poundsPer100SquareFeet,
            Liming.Requirement(ByTexture(5.5, texture), Neutralish, LimingMethod.UsGardenTexture).Over(Area.FromSquareFeet(100)).Value.Pounds,
            1e-9);

    [Fact]
    public void Requirement_AustralianTableOverTwoUnits_TakesBothPrintedRates()
    {
        LimeRequirement need = Liming.Requirement(ByTexture(4.5, SoilTexture.SandyLoam), Neutralish, LimingMethod.AustralianGardenTexture);

        Assert.Equal(130 + 195, need.Grams());
        Assert.Empty(need.Rate.Adjustments);
        Assert.Equal(10, need.Depth!.Value.Centimeters, 1e-9);
    }

    [Fact]
    public void Requirement_AustralianTableWithinAUnit_RecordsTheShare()
    {
        LimeRequirement need = Liming.Requirement(ByTexture(5.0, SoilTexture.SandyLoam), new Ph(6.0), LimingMethod.AustralianGardenTexture);

        Assert.Equal(0.5 * 130 + 0.5 * 195, need.Grams(), 1e-9);
        Assert.Equal("lime-share-of-ph-unit", Assert.Single(need.Rate.Adjustments).Key);
    }

    [Fact]
    public void Requirement_PennStateTurfBetweenRows_LiesOnTheStraightLine()
    {
        LimeRequirement need = Liming.Requirement(ByAcidity(5.5, 2.3), new Ph(7), LimingMethod.PennStateTurf);

        Assert.Equal(60, need.Over(Area.FromSquareFeet(1000)).Value.Pounds, 1e-9);
        Assert.Equal("lime-between-rows", Assert.Single(need.Rate.Adjustments).Key);
    }

    // The source prints a rule below and above 4.0, and none at it.
    [Theory]
    [InlineData(3.999, 2000, false)]
    [InlineData(4.0, 2000, true)]
    [InlineData(4.001, 840 * 4.001, false)]
    [InlineData(0, 2000, false)]
    public void Requirement_PennStateAgronomicAboutFour_TakesTheSmallerWhereNothingIsPrinted(double acidity, double poundsPerAcre, bool warned)
    {
        LimeRequirement need = Liming.Requirement(ByAcidity(5.5, acidity), Neutralish, LimingMethod.PennStateAgronomic);

        Assert.Equal(poundsPerAcre, need.Over(Area.FromAcres(1)).Value.Pounds, 1e-6);
        Assert.Equal(warned, need.Rate.Codes().Contains("lime.undefined-in-source"));
    }

    [Fact]
    public void Requirement_NoAcidityBelowTheTarget_IsZeroAndSaysSo()
    {
        Assert.Equal(["lime.no-acidity"], Liming.Requirement(ByAcidity(5.5, 0), new Ph(7), LimingMethod.PennStateAgronomic).Rate.Codes());
        Assert.Equal(["lime.no-acidity"], Liming.Requirement(ByBuffer(5.5, 0), new Ph(6), LimingMethod.NorthCarolina()).Rate.Codes());
        Assert.Equal(
            ["lime.no-acidity"],
            Liming.Requirement(new SoilReport { PhInWater = new Ph(5), MehlichBufferPh = new Ph(6.6) }, new Ph(6), LimingMethod.NorthCarolina()).Rate.Codes());
    }

    [Fact]
    public void Requirement_NorthCarolinaWithMoreCreditThanNeed_IsZeroAndSaysSo()
    {
        ResidualLime lime = new(AreaDensity.FromGramsPerSquareMeter(500), 2, NorthCarolinaSoilClass.Mineral);
        LimeRequirement need = Liming.Requirement(ByBuffer(5, 1.2), new Ph(6), LimingMethod.NorthCarolina(lime));

        Assert.Equal(0, need.Grams());
        Assert.Equal(["lime.credit-covers"], need.Rate.Codes());
        Assert.Equal("lime-residual-credit", Assert.Single(need.Rate.Adjustments).Key);
    }

    [Fact]
    public void Requirement_NorthCarolinaBelowTheReportingLimit_SaysSo()
    {
        Assert.Contains("lime.below-reporting-limit", Liming.Requirement(ByBuffer(5, 0.4), new Ph(6), LimingMethod.NorthCarolina()).Rate.Codes());
        Assert.DoesNotContain("lime.below-reporting-limit", Liming.Requirement(ByBuffer(5, 1.2), new Ph(6), LimingMethod.NorthCarolina()).Rate.Codes());
    }

    [Fact]
    public void Requirement_NorthCarolinaAtItsPole_IsZeroNotUndefined()
    {
        LimeRequirement need = Liming.Requirement(ByBuffer(6.6, 1), new Ph(6.6), LimingMethod.NorthCarolina());

        Assert.Equal(0, need.Grams());
        Assert.Equal(["lime.not-needed"], need.Rate.Codes());
    }

    [Fact]
    public void Requirement_NorthCarolinaWithAcidityAndBufferPh_TakesTheAcidity()
    {
        SoilReport both = new()
        {
            PhInWater = new Ph(5),
            BufferAcidity = VolumetricCharge.FromCentimolesPerLitre(2),
            MehlichBufferPh = new Ph(6.5),
        };

        Assert.Equal(GramsPerSquareMetre(ByBuffer(5, 2), 6, LimingMethod.NorthCarolina()), GramsPerSquareMetre(both, 6, LimingMethod.NorthCarolina()));
    }

    [Fact]
    public void As_FromNorthCarolinaStandardLime_StartsFromNinetyPercent()
    {
        LimeRequirement need = Liming.Requirement(ByBuffer(5, 1.6), new Ph(6), LimingMethod.NorthCarolina());

        Assert.Equal(0.9, need.As(LimingMaterial.GroundLimestone).Grams() / need.Grams(), 1e-12);
    }

    [Fact]
    public void As_CausticMaterials_BringTheirCautions()
    {
        LimeRequirement need = Given(500);

        Assert.DoesNotContain("lime.caustic", need.As(LimingMaterial.Dolomite).Rate.Codes());
        Assert.Contains("lime.caustic", need.As(LimingMaterial.CalciumHydroxide).Rate.Codes());
        Assert.DoesNotContain("lime.quicklime", need.As(LimingMaterial.CalciumHydroxide).Rate.Codes());
        Assert.Contains("lime.caustic", need.As(LimingMaterial.CalciumOxide).Rate.Codes());
        Assert.Contains("lime.quicklime", need.As(LimingMaterial.CalciumOxide).Rate.Codes());
        Assert.Contains("lime.caustic", Given(500, LimingMaterial.CalciumHydroxide).Rate.Codes());
        Assert.DoesNotContain("lime.caustic", Given(0, LimingMaterial.CalciumHydroxide).Rate.Codes());
        Assert.Equal(CautionLevel.Danger, need.As(LimingMaterial.CalciumOxide).Rate.Cautions.Single(caution => caution.Code == "lime.caustic").Level);
    }

    // Nobody who leaves the form out may miss that the material burns: no carbonate is so strong.
    [Theory]
    [InlineData(119, false)]
    [InlineData(120, false)]
    [InlineData(121, true)]
    [InlineData(135, true)]
    public void As_AMaterialStrongerThanAnyCarbonate_IsTakenForCaustic(double ccePercent, bool caustic)
    {
        Assert.Equal(caustic, Given(500).As(Product(ccePercent)).Rate.Codes().Contains("lime.caustic"));
        Assert.Equal(caustic, Given(500, Product(ccePercent)).Rate.Codes().Contains("lime.caustic"));
    }

    [Fact]
    public void Over_ADose_KeepsMethodAdjustmentsAndCautions()
    {
        LimeRequirement need = Given(500, depth: Length.FromInches(7)).ForDepth(Length.FromInches(5)).As(LimingMaterial.CalciumHydroxide);
        Estimate<Mass> dose = need.Over(Area.FromSquareMeters(4));

        Assert.Equal(need.Rate.Method, dose.Method);
        Assert.Equal(need.Rate.Adjustments, dose.Adjustments);
        Assert.Equal(need.Rate.Cautions, dose.Cautions);
    }

    // Printed in whole pounds: 11 to 20, 21 or more.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.5, 1)]
    [InlineData(10, 1)]
    [InlineData(10.01, 2)]
    [InlineData(10.99, 2)]
    [InlineData(20, 2)]
    [InlineData(20.5, 3)]
    [InlineData(90, 3)]
    public void Split_PennStateGarden_TakesTheLargerCountInTheGapsOfPrint(double poundsPer100SquareFeet, int count)
    {
        LimeRequirement need = Liming.FromRecommendation(
            Mass.FromPounds(poundsPer100SquareFeet) / Area.FromSquareFeet(100), LimingMaterial.GroundLimestone, "a laboratory");

        Assert.Equal(count, need.Split(LimeSplit.PennStateGarden).Count);
    }

    [Fact]
    public void Split_WeakerMaterial_IsJudgedByItsCarbonate()
    {
        AreaDensity twentyPounds = Mass.FromPounds(20) / Area.FromSquareFeet(100);
        LimeRequirement weak = Liming.FromRecommendation(twentyPounds, Product(50), "a laboratory");
        LimeRequirement full = Liming.FromRecommendation(twentyPounds, Product(100), "a laboratory");

        Assert.Equal(1, weak.Split(LimeSplit.PennStateGarden).Count);
        Assert.Equal(2, full.Split(LimeSplit.PennStateGarden).Count);
        Assert.Equal(2, full.As(Product(50)).Split(LimeSplit.PennStateGarden).Count);
    }

    [Fact]
    public void Split_Ireland_LeavesTheRestToTheThirdYear()
    {
        LimeSchedule schedule = Given(2000).Split(LimeSplit.Ireland);

        Assert.Equal([750, 1250], schedule.Rates.Select(rate => Math.Round(rate.Value.GramsPerSquareMeter, 6, MidpointRounding.ToEven)));
        Assert.Equal(24, LimeSplit.Ireland.FewestMonths);
    }

    [Fact]
    public void Missing_EmptyReport_NamesAllThatIsNeeded()
    {
        Assert.Equal(["PhInWater", "Texture"], LimingMethod.UkGardenTexture.Missing(new SoilReport()));
        Assert.Equal(["PhInWater", "ExchangeableAcidity"], LimingMethod.PennStateTurf.Missing(new SoilReport()));
        Assert.Equal(["PhInWater", "BufferAcidity or MehlichBufferPh"], LimingMethod.NorthCarolina().Missing(new SoilReport()));
        Assert.Empty(LimingMethod.PennStateTurf.Missing(ByAcidity(5, 3)));
        Assert.Equal("soil", Assert.Throws<ArgumentNullException>(() => LimingMethod.PennStateTurf.Missing(null!)).ParamName);
    }

    [Fact]
    public void All_Methods_AreDistinctAndSayWhatTheyAssume()
    {
        Assert.Equal(16, LimingMethod.All.Select(method => method.Method.Key).Distinct().Count());
        Assert.All(LimingMethod.All, method => Assert.NotEmpty(method.Fineness));
        Assert.Equal(
            [
                "lime-australian-garden-texture", "lime-uk-per-ph-unit", "lime-penn-state-agronomic", "lime-oregon-sikora", "lime-iowa-pm-1688",
                "lime-buffer-capacity", "lime-brazil-base-saturation", "lime-brazil-aluminium", "lime-cochrane-aluminium",
            ],
            LimingMethod.All.Where(method => method.Depth is not null).Select(method => method.Method.Key));
        Assert.DoesNotContain(LimingMethod.AdamsEvans, LimingMethod.All);
        Assert.DoesNotContain(SourceKind.FromMemory, LimingMethod.All.Select(method => method.Method.Source.Kind));
    }

    [Fact]
    public void Materials_MagnesiumOfPureCompounds_IsTheMolarShare()
    {
        Assert.Equal(0, LimingMaterial.CalciumCarbonate.Magnesium!.Value.Percent);
        Assert.Equal(13.2, LimingMaterial.Dolomite.Magnesium!.Value.Percent, 0.05);
        Assert.Null(LimingMaterial.GroundLimestone.Magnesium);
    }
}
