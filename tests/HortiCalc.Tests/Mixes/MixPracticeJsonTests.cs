using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using HortiCalc.Json;
using HortiCalc.Mixes;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>What tanks, measures, sanitising and sprays take and give survives storage.</summary>
public class MixPracticeJsonTests
{
    private static void RoundTrips<T>(T value, JsonTypeInfo<T> type) =>
        Assert.Equal(value, JsonSerializer.Deserialize(JsonSerializer.Serialize(value, type), type));

    private static StrengthPerVolume Milligrams(double value) => Strength.PerVolume(MassConcentration.FromMilligramsPerLiter(value));

    [Fact]
    public void Tanks_RoundTrip()
    {
        RoundTrips(TankMix.Correct(Volume.FromLiters(10), Milligrams(800), Milligrams(500), Milligrams(50_000)), HortiCalcJsonContext.Default.MixBlend);
        RoundTrips(TankMix.InSteps(Volume.FromLiters(1), Milligrams(800), MixRatio.OneIn(10), MixRatio.OneIn(5)), HortiCalcJsonContext.Default.MixBatches);
        RoundTrips(new PlannedTank("A", true, [MixIngredients.CalciumNitrate, MixIngredients.PotassiumNitrate]), HortiCalcJsonContext.Default.PlannedTank);
    }

    [Fact]
    public void Measures_RoundTrip()
    {
        foreach (KitchenMeasure measure in KitchenMeasures.Us)
            RoundTrips(measure, HortiCalcJsonContext.Default.KitchenMeasure);
        RoundTrips(
            Measuring.Nearest(Volume.FromMilliliters(35), KitchenMeasures.Us, Ratio.FromPercent(2)), HortiCalcJsonContext.Default.PracticalAmount);
        foreach (PowderMeasure row in PowderMeasures.All)
            RoundTrips(row, HortiCalcJsonContext.Default.PowderMeasure);
    }

    [Fact]
    public void Sanitising_RoundTrips()
    {
        foreach (ContactRecord record in ContactTimes.All)
            RoundTrips(record, HortiCalcJsonContext.Default.ContactRecord);
        foreach (HotWaterTreatment bath in HotWaterTreatment.All)
            RoundTrips(bath, HortiCalcJsonContext.Default.HotWaterTreatment);
        foreach (ChlorineLossRecord record in ChlorineLoss.Published)
            RoundTrips(record, HortiCalcJsonContext.Default.ChlorineLossRecord);
        RoundTrips(HypochlorousAcid.Share(new Ph(7.5), HypochlorousConstant.Rounded), HortiCalcJsonContext.Default.EstimateRatio);
        RoundTrips(HypochlorousAcid.PhFor(Ratio.FromPercent(90), HypochlorousConstant.Rounded), HortiCalcJsonContext.Default.EstimatePh);
        RoundTrips(
            HypochlorousAcid.Level(MassConcentration.FromMilligramsPerLiter(2), new Ph(8.5), HypochlorousConstant.Rounded),
            HortiCalcJsonContext.Default.EstimateMassConcentration);
        RoundTrips(
            ChlorineInjection.Bleach(
                VolumeFlow.FromUsGallonsPerMinute(100),
                MassConcentration.FromMilligramsPerLiter(10),
                HypochloriteLabel.Trade(Ratio.FromPercent(12.5))),
            HortiCalcJsonContext.Default.EstimateVolumeFlow);
    }

    [Fact]
    public void Sprays_RoundTrip()
    {
        RoundTrips(VolumeRate.FromUsGallonsPerAcre(43.56), HortiCalcJsonContext.Default.VolumeRate);
        RoundTrips(
            SprayerCalibration.ForTreeRows(Length.FromFeet(10), Length.FromFeet(9), Length.FromFeet(20), TreeRowRule.Orchard),
            HortiCalcJsonContext.Default.EstimateVolumeRate);
        RoundTrips(new SprayJob(Area.FromSquareMeters(1200), VolumeRate.FromLitresPerHectare(200), Volume.FromLiters(10)), HortiCalcJsonContext.Default.SprayJob);
        foreach (SprayLimit limit in SprayLimits.All)
            RoundTrips(limit, HortiCalcJsonContext.Default.SprayLimit);
        RoundTrips(SprayLimits.OilAndSulfurApart, HortiCalcJsonContext.Default.SprayInterval);
        SprayedProduct product = new("soap", Duration.FromHours(12), 1);
        RoundTrips(product, HortiCalcJsonContext.Default.SprayedProduct);
        RoundTrips(SprayCalendar.After(new DateTime(2027, 6, 1), product), HortiCalcJsonContext.Default.SprayWait);
        RoundTrips(LimeSulfur.MakeUpTo(Volume.FromLiters(10), LimeSulfur.FromBaume(32), LimeSulfur.DormantSpray), HortiCalcJsonContext.Default.EstimateMixBatch);
    }
}
