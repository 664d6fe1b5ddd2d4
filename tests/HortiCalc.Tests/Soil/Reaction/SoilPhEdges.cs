using System.Globalization;
using System.Text.Json;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Soil;

/// <summary>What the arithmetic of pH refuses, warns of, says and stores.</summary>
public class SoilPhEdges
{
    [Theory]
    [InlineData(2.9)]
    [InlineData(10.1)]
    public void Convert_NoSoilsPh_RefusesWithTheDomain(double ph)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => PhConversion.ConyersDavey.Convert(new Ph(ph)));

        Assert.Equal("reading", refused.ParamName);
        Assert.Contains($"reading was {ph.ToString(CultureInfo.InvariantCulture)} pH; allowed: from 3 to 10 pH", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ConvertBack_WhatComesToNoSoilsPh_RefusesAndReadingIsMarked()
    {
        Assert.Equal("reading", Assert.Throws<ArgumentOutOfRangeException>(() => PhConversion.ConyersDavey.ConvertBack(new Ph(9.9))).ParamName);
        Assert.Throws<ArgumentOutOfRangeException>(() => PhConversion.PolandChlorides.ConvertBack(new Ph(9)));
        Estimate<Ph> back = PhConversion.ConyersDavey.ConvertBack(new Ph(5.4));
        Assert.Equal("ph-read-backwards", back.Adjustments.Single().Key);
        Assert.Equal("ph.name-the-solution", back.Cautions.Single().Code);
    }

    [Fact]
    public void Mean_WidelyScatteredSolutions_HaveNoUpperEndAndSoNoRange()
    {
        Assert.Null(SoilPh.Mean([new Ph(3), new Ph(6), new Ph(6), new Ph(6)], PhMeanMethod.Solutions).Range);
        Assert.Null(SoilPh.Mean([new Ph(3)], PhMeanMethod.SoilSamples).Range);
        Assert.NotNull(SoilPh.Mean([new Ph(3), new Ph(6)], PhMeanMethod.SoilSamples).Range);
    }

    [Fact]
    public void EveryQuestion_Nothing_Refuses()
    {
        Assert.Equal("readings", Assert.Throws<ArgumentException>(() => SoilPh.Mean([], PhMeanMethod.Solutions)).ParamName);
        Assert.Equal("method", Assert.Throws<ArgumentNullException>(() => SoilPh.Mean([new Ph(5)], null!)).ParamName);
        Assert.Equal("parts", Assert.Throws<ArgumentException>(() => SoilPh.OfBlend([])).ParamName);
        Assert.Equal("layers", Assert.Throws<ArgumentException>(() => SoilPh.OfLayers([])).ParamName);
        Assert.Equal("parts", Assert.Throws<ArgumentNullException>(() => SoilPh.OfMix(null!)).ParamName);
    }

    [Fact]
    public void OfMix_UnknownBuffering_RefusesAndSaysWhy()
    {
        MediumPart peat = new(Mass.FromKilograms(1), new Ph(4));
        MediumPart loam = new(Mass.FromKilograms(1), new Ph(6.5));

        InvalidOperationException refused = Assert.Throws<InvalidOperationException>(() => SoilPh.OfMix([peat, loam]));
        Assert.Contains("depends on how strongly each holds its own", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void OfMix_OutsideTheStraightLine_Refuses()
    {
        MassFraction capacity = MassFraction.FromMilligramsPerKilogram(400);
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => SoilPh.OfMix(
            [new MediumPart(Mass.FromKilograms(1), new Ph(4), capacity), new MediumPart(Mass.FromKilograms(1), new Ph(6), capacity)]));

        Assert.Equal("parts", refused.ParamName);
        Assert.Contains("parts was 4 pH; allowed: from 4.5 to 6.5 pH", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_Impossible_Refuse()
    {
        Assert.Equal("thickness", Assert.Throws<ArgumentOutOfRangeException>(() => new PhLayer(Length.Zero, new Ph(6))).ParamName);
        Assert.Equal("volume", Assert.Throws<ArgumentOutOfRangeException>(() => new SolutionPart(Volume.FromLiters(-1), new Ph(6))).ParamName);
        Assert.Equal("dryMass", Assert.Throws<ArgumentOutOfRangeException>(() => new MediumPart(Mass.Zero, new Ph(6))).ParamName);
        Assert.Equal("bufferCapacity", Assert.Throws<ArgumentOutOfRangeException>(
            () => new MediumPart(Mass.FromKilograms(1), new Ph(6), MassFraction.Zero)).ParamName);
    }

    [Fact]
    public void OfBlend_Tenfold_DilutionOfAcid_RaisesThePhByOne()
    {
        Estimate<Ph> blend = SoilPh.OfBlend([new SolutionPart(Volume.FromLiters(1), new Ph(3)), new SolutionPart(Volume.FromLiters(9), new Ph(7))]);

        Assert.Equal(4, blend.Value.Value, 1e-5);
        Assert.Equal("ph.alkalinity", blend.Cautions.Single().Code);
    }

    [Fact]
    public void OfLayers_SourLayer_IsShownInTheRange()
    {
        Estimate<Ph> sample = SoilPh.OfLayers([new PhLayer(Length.FromCentimeters(5), new Ph(5.8)), new PhLayer(Length.FromCentimeters(5), new Ph(4.8))]);

        Assert.Equal(new Ph(4.8), sample.Range!.Low);
        Assert.Equal("ph.layers-hide", sample.Cautions.Single().Code);
    }

    [Fact]
    public void CropPhs_Garlic_ShowsThatSourcesDisagree()
    {
        CropPhComparison garlic = CropPhs.Compare("garlic");

        Assert.Contains(garlic.Rows, row => row.Source.Key == "oregon-em-9057-ph" && row.Minimum == new Ph(6.5));
        Assert.Contains(garlic.Rows, row => row.Source.Key == "us-almanac-ph" && row.OptimumLow == new Ph(5.5) && row.OptimumHigh == new Ph(8));
        Assert.Contains(garlic.Rows, row => row.Crop == "Allium sativum");
        Assert.True(garlic.Minima!.Low < garlic.Minima.High);
        Assert.StartsWith("garlic, ", garlic.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void CropPhs_BrokenRowsAndOtherReadings_StayOutOfTheSpans()
    {
        Assert.Equal(3, CropPhs.All.Count(row => row.Doubt is not null));
        Assert.Null(CropPhs.Compare("Acanthus mollis").Optima);
        Assert.Null(CropPhs.Compare("arable land").Targets);
        Assert.Empty(CropPhs.Compare("no such plant").Rows);
        Assert.Equal(1133, CropPhs.All.Count(row => row.Source.Key == "fao-ecocrop-ph"));
        Assert.Equal("crop", Assert.Throws<ArgumentException>(() => CropPhs.Named("us-almanac-ph", "no such plant")).ParamName);
    }

    [Fact]
    public void CropPhs_Blueberry_FindsSingularAndPlural()
    {
        Assert.Equal(CropPhs.Compare("blueberries").Rows, CropPhs.Compare("Blueberry").Rows);
        Assert.Contains(CropPhs.Compare("blueberry").Rows, row => row.Crop == "Blueberries, rhododendrons, azaleas");
        Assert.Contains(CropPhs.Compare("tomatoes").Rows, row => row.Crop == "Lycopersicon esculentum");
    }

    [Fact]
    public void CropPh_Impossible_Refuses()
    {
        Source source = Source.CommonPractice("own", "our own trial");

        Assert.Equal("optimumHigh", Assert.Throws<ArgumentException>(() => new CropPh("a", source, optimumLow: new Ph(5))).ParamName);
        Assert.Equal("maximum", Assert.Throws<ArgumentOutOfRangeException>(() => new CropPh("a", source, minimum: new Ph(5), maximum: new Ph(4))).ParamName);
        Assert.Equal("crop", Assert.Throws<ArgumentException>(() => new CropPh(" ", source)).ParamName);
    }

    [Fact]
    public void Json_EveryType_ComesBackEqual()
    {
        Same(new PhLayer(Length.FromInches(2), new Ph(6)));
        Same(new SolutionPart(Volume.FromUsGallons(2), new Ph(6)));
        Same(new MediumPart(Mass.FromPounds(2), new Ph(6), MassFraction.FromMilligramsPerKilogram(400)));
        Same(CropPhs.Compare("garlic"));
        Same(CropPhs.Named("fao-ecocrop-ph", "Acanthus mollis"));
        Assert.All(PhConversion.All, Same);
        Assert.All(PhMeanMethod.All, Same);
        Assert.Throws<JsonException>(() => JsonSerializer.Deserialize("\"ph-none\"", HortiCalcJsonContext.Default.PhConversion));
    }

    [Fact]
    public void ToString_InACommaCulture_FollowsTheCaller()
    {
        CultureInfo german = CultureInfo.GetCultureInfo("de-DE");

        Assert.StartsWith("Garlic: best pH 5,5 to pH 8 [", CropPhs.Named("us-almanac-ph", "Garlic").ToString("M", german), StringComparison.Ordinal);
        Assert.Equal("5 cm of pH 5.8", new PhLayer(Length.FromCentimeters(5), new Ph(5.8)).ToString());
        Assert.StartsWith("pH in calcium chloride from pH in water [", PhConversion.ConyersDavey.ToString(), StringComparison.Ordinal);
    }

    private static void Same<T>(T value)
    {
        string json = JsonSerializer.Serialize(value, HortiCalcJson.Options);
        Assert.Equal(value, JsonSerializer.Deserialize<T>(json, HortiCalcJson.Options));
    }
}
