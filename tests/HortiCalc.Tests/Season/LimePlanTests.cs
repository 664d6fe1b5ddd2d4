using HortiCalc.Season;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Season;

public sealed class LimePlanTests
{
    [Fact]
    public void ForBed_AcidLoam_TakesTheGardenTableAndSetsTheOthersBesideIt()
    {
        LimeSupply lime = Assert.IsType<LimeSupply>(Line(Invented.Loam(5.5), Invented.Crop()));

        // Principles of Horticulture, Table 14.4: 800 g/m² of ground limestone on loam from pH 5.5 to 6.5, on 4.8 m².
        Assert.Equal(3.84, lime.Dose.Value.Kilograms, 9);
        Assert.Equal(6.5, lime.Target.Value);
        Assert.Equal("lime-us-garden-texture", Assert.Single(lime.Others).Method.Key);
        Assert.Equal(2, lime.Applications);
    }

    [Fact]
    public void ForBed_ReportWithBufferAcidity_TakesTheLaboratorysOwnMethod()
    {
        SoilReport soil = Invented.Loam(5.5) with { BufferAcidity = VolumetricCharge.FromMilliequivalentsPer100CubicCentimetres(1.5) };
        LimeSupply lime = Assert.IsType<LimeSupply>(Line(soil, Invented.Crop()));
        Assert.Equal("lime-north-carolina", lime.Dose.Method.Key);
        Assert.Equal(2, lime.Others.Count);
    }

    [Theory]
    [InlineData(6.0, NoLimeReason.SoilSuits)]
    [InlineData(7.0, NoLimeReason.SoilSuits)]
    [InlineData(7.1, NoLimeReason.SoilAboveRange)]
    [InlineData(3.5, NoLimeReason.NoMethod)]
    public void ForBed_OtherSoils_PlansNoneAndSaysWhy(double ph, NoLimeReason reason) =>
        Assert.Equal(reason, Assert.IsType<NoLime>(Line(Invented.Loam(ph), Invented.Crop())).Reason);

    [Fact]
    public void ForBed_SoilNotTested_PlansNone()
    {
        Assert.Equal(NoLimeReason.NotTested, Assert.IsType<NoLime>(Line(null, Invented.Crop())).Reason);
        Assert.Equal(NoLimeReason.NotTested, Assert.IsType<NoLime>(Line(new SoilReport { Texture = SoilTexture.Loam }, Invented.Crop())).Reason);
    }

    [Fact]
    public void ForBed_CropOfAcidSoil_IsNotLimedBeyondItsRange()
    {
        // To the middle of 5.2 to 6.0; the tables go to 6.5 only, so none covers it.
        Crop crop = Invented.Crop(lowestPh: 5.2, highestPh: 6.0);
        Assert.Equal(NoLimeReason.NoMethod, Assert.IsType<NoLime>(Line(Invented.Loam(5.1), crop)).Reason);
    }

    [Fact]
    public void ForBed_LimeInBags_BuysWholeOnes()
    {
        Garden garden = Invented.Bed(Invented.Crop(), Invented.Site(soil: Invented.Loam(5.5)));
        Garden bagged = new(
            garden.Site, 2027, garden.Crops, garden.Beds, lime: new LimeProduct(new LimingMaterial("product", Ratio.FromPercent(80)), Mass.FromKilograms(2)));
        LimeSupply lime = SeasonPlan.For(bagged, SeasonFiles.DemoWeather).Supplies.OfType<LimeSupply>().Single();
        Assert.Equal(4.8, lime.Dose.Value.Kilograms, 9);
        Assert.Equal(3, lime.BagCount);
        Assert.Contains("3 of 2 kg", lime.ToString(), StringComparison.Ordinal);
    }

    private static SupplyLine Line(SoilReport? soil, Crop crop) =>
        SeasonPlan.For(Invented.Bed(crop, Invented.Site(soil: soil)), SeasonFiles.DemoWeather).Supplies[0];
}
