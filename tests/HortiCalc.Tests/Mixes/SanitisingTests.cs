using HortiCalc.Evidence;
using HortiCalc.Mixes;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>Chlorine, contact, seed baths and dangers by examples, and what is refused.</summary>
public class SanitisingTests
{
    [Theory]
    [InlineData(8.0, 22)]
    [InlineData(8.0, 25)]
    [InlineData(8.0, 21)]
    [InlineData(7.0, 73)]
    [InlineData(7.5, 50)]
    public void Share_PublishedPoints_LieInTheStatedRange(double pH, double percent)
    {
        EstimateRange<Ratio> range = HypochlorousAcid.Share(new Ph(pH), HypochlorousConstant.UsGeologicalSurvey).Range!;
        Assert.InRange(percent, range.Low.Percent, range.High.Percent);
    }

    [Fact]
    public void Share_OutsideTheDomain_IsRefusedWithTheRange()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => HypochlorousAcid.Share(new Ph(4), HypochlorousConstant.Rounded));
        Assert.Equal("pH", refused.ParamName);
        Assert.Contains("from 5 to 10", refused.Message, StringComparison.Ordinal);
        Assert.Equal("water", Assert.Throws<ArgumentOutOfRangeException>(
            () => HypochlorousAcid.Share(new Ph(7), Temperature.FromDegreesCelsius(40))).ParamName);
    }

    [Fact]
    public void Recipe_WithTheStrongerBleach_IsFiftySevenPercentStronger()
    {
        double Level(double label) => Hypochlorite.StrengthOf(
            HypochloriteLabel.PercentAsWeightPerVolume(MassFraction.FromPercent(label)), MixRatio.PartsToParts(1, 9)).Value.MilligramsPerLiter;
        Assert.Equal(57, 100 * ((Level(8.25) / Level(5.25)) - 1), 0);
    }

    [Fact]
    public void InStore_OutsideTheTable_IsRefused()
    {
        Assert.Equal("time", Assert.Throws<ArgumentOutOfRangeException>(
            () => ChlorineLoss.InStore(Duration.FromDays(200), Temperature.FromDegreesFahrenheit(80))).ParamName);
        Assert.Equal("store", Assert.Throws<ArgumentOutOfRangeException>(
            () => ChlorineLoss.InStore(Duration.FromDays(20), Temperature.FromDegreesFahrenheit(60))).ParamName);
    }

    [Fact]
    public void Loss_OfSeveralSources_IsARangeAndNotOneNumber()
    {
        Assert.Equal(2, ChlorineLoss.UseWithin.Range!.Low.Hours, 9);
        Assert.Equal(24, ChlorineLoss.UseWithin.Range.High.Hours, 9);
        Assert.True(ChlorineLoss.Published.Select(record => record.Source).Distinct().Count() >= 3);
    }

    [Fact]
    public void Injection_CarriesTheCautionsFirst()
    {
        Estimate<VolumeFlow> pump = ChlorineInjection.Bleach(
            VolumeFlow.FromUsGallonsPerMinute(100),
            MassConcentration.FromMilligramsPerLiter(10),
            HypochloriteLabel.PercentAsWeightPerVolume(MassFraction.FromPercent(5.25)));
        Assert.Contains(pump.Cautions, caution => caution.Code == "bleach.never-with-acid");
        Assert.Equal("72.1 mL/min", HortiCalc.Display.QuantityText.Format(pump.Value, MeasurementSystem.Metric, System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal("1.14 gal/h (US)", HortiCalc.Display.QuantityText.Format(pump.Value, MeasurementSystem.UsCustomary, System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal("availableChlorine", Assert.Throws<ArgumentOutOfRangeException>(() => ChlorineInjection.Bleach(
            VolumeFlow.FromUsGallonsPerMinute(100),
            MassConcentration.FromGramsPerLiter(60),
            HypochloriteLabel.PercentAsWeightPerVolume(MassFraction.FromPercent(5.25)))).ParamName);
    }

    /// <summary>A level to mix is a mix: it carries what its agent must not meet, and the label first.</summary>
    [Fact]
    public void ContactTimes_EachRecord_CarriesTheCautionsOfItsAgent() => Assert.All(ContactTimes.All, record =>
    {
        string[] codes = [.. record.Cautions.Select(caution => caution.Code)];
        IReadOnlyList<IngredientClass> classes = record.Agent.Classes;
        Assert.Contains("mix.label-decides", codes);
        Assert.Contains("mix.protect-skin-and-eyes", codes);
        Assert.Equal(classes.Contains(IngredientClass.Hypochlorite), codes.Contains("bleach.never-with-acid"));
        Assert.Equal(classes.Contains(IngredientClass.HydrogenPeroxide), codes.Contains("hazard.peroxide-and-vinegar"));
        Assert.Equal(classes.Contains(IngredientClass.QuaternaryAmmonium), codes.Contains("hazard.soap-and-quaternary-ammonium"));
        Assert.Equal(record.Use == MixUse.FoodSurfaces, codes.Contains("mix.food-surfaces"));
        Assert.Equal(record.Use == MixUse.IrrigationLine && record.Agent == MixIngredients.HydrogenPeroxide, codes.Contains("peroxide.hurts-plants"));
    });

    [Theory]
    [InlineData("hydrogen-peroxide", 6)]
    [InlineData("peracetic-acid", 7)]
    [InlineData("quaternary-ammonium", 4)]
    [InlineData("bleach", 14)]
    public void ContactTimes_EachAgent_HasRecords(string agent, int count) =>
        Assert.Equal(count, ContactTimes.All.Count(record => record.Agent.Key == agent));

    /// <summary>The stronger the peracetic acid, the sooner the same conidia die, and grey mould outlasts green mould.</summary>
    [Fact]
    public void ContactTimes_ConidiaInPeraceticAcid_DieSoonerInMoreOfIt()
    {
        Duration Time(string key) => ContactTimes.All.Single(record => record.Key == "contact.peracetic-" + key).Time!.Value;
        Assert.True(Time("botrytis-500") < Time("botrytis-100") && Time("penicillium-500") < Time("penicillium-100"));
        Assert.True(Time("penicillium-100") < Time("botrytis-100") && Time("penicillium-500") < Time("botrytis-500"));
    }

    [Fact]
    public void ContactRecord_MadeFromAProduct_IsItsLevel()
    {
        ContactRecord wash = ContactTimes.All.Single(record => record.Key == "contact.hard-peracetic");
        MixBatch batch = wash.MakeUpTo(Volume.FromLiters(10), Strength.PercentAsWeightPerVolume(MassFraction.FromPercent(5.3), "peracetic acid"), atHighEnd: true);
        Assert.Equal(10_000 * 500 / 53_000.0, batch.Concentrate.Milliliters, 6);
    }

    [Theory]
    [InlineData(MixUse.Pots)]
    [InlineData(MixUse.Tools)]
    [InlineData(MixUse.Benches)]
    [InlineData(MixUse.Seed)]
    [InlineData(MixUse.IrrigationLine)]
    public void ContactTimes_EachUse_HasASourcedRecord(MixUse use) => Assert.NotEmpty(ContactTimes.For(use));

    [Fact]
    public void HotWater_TwoSources_DisagreeAndBothAreGiven()
    {
        Assert.Equal(2, HotWaterTreatment.For("Tomato").Count);
        Assert.Contains("cucumber", Assert.Throws<ArgumentException>(() => HotWaterTreatment.For("cucumber")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void PlannedTank_CalciumWithSulfate_IsRefusedInStockAlone()
    {
        MixIngredient[] feed = [MixIngredients.CalciumNitrate, MixIngredients.MagnesiumSulfate];
        ArgumentException refused = Assert.Throws<ArgumentException>(() => new PlannedTank("A", isStock: true, feed));
        Assert.Contains("gypsum", refused.Message, StringComparison.Ordinal);
        Assert.Equal(2, new PlannedTank("feed", isStock: false, feed).Ingredients.Count);
    }

    [Fact]
    public void PlannedTank_BleachAndVinegar_GivesEveryReason()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => new PlannedTank(
            "bucket", isStock: false, [MixIngredients.HouseholdBleach, MixIngredients.Vinegar, MixIngredients.Ammonia]));
        Assert.Contains("chlorine gas", refused.Message, StringComparison.Ordinal);
        Assert.Contains("chloramine", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(99.9)]
    [InlineData(0)]
    public void PhFor_AShareOutsideTheDomain_NamesTheShare(double percent) => Assert.Equal(
        "share",
        Assert.Throws<ArgumentOutOfRangeException>(
            () => HypochlorousAcid.PhFor(Ratio.FromPercent(percent), HypochlorousConstant.UsGeologicalSurvey)).ParamName);

    [Fact]
    public void ContactRecord_BleachCountedAsHypochlorite_IsRefused()
    {
        ContactRecord pots = ContactTimes.For(MixUse.Pots)[0];
        Strength hypochlorite = Strength.PercentAsWeightPerVolume(MassFraction.FromPercent(6), "sodium hypochlorite");
        Assert.Equal("concentrate", Assert.Throws<ArgumentException>(() => pots.MakeUpTo(Volume.FromLiters(10), hypochlorite, false)).ParamName);
        HypochloriteLabel bottle = HypochloriteLabel.Trade(Ratio.FromPercent(6));
        Assert.Equal(875, pots.MakeUpTo(Volume.FromLiters(10), bottle.Strength, false).Concentrate.Milliliters, 6);
    }

    [Fact]
    public void ContactRecords_OfChlorineOnSeed_SayThatOnlyTheSurfaceIsReached() => Assert.All(
        ContactTimes.For(MixUse.Seed).Where(record => record.Agent == MixIngredients.HouseholdBleach),
        record => Assert.Contains(ContactTimes.SeedSurfaceOnly, record.Cautions));

    [Fact]
    public void ContactRecord_OfAlcohol_SaysThatItBurns()
    {
        MassConcentration level = MassConcentration.FromGramsPerLiter(550);
        ContactRecord dip = new(
            "own", "tools", MixUse.Tools, MixIngredients.RubbingAlcohol, level, level, null, RinseAdvice.NotStated, ContactTimes.All[0].Source);
        Assert.Contains(dip.Cautions, caution => caution.Code == "alcohol.flammable");
    }
}
