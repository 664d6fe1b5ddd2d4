using FsCheck.Xunit;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using UnitsNet;
using static HortiCalc.Tests.Climate.FrostNightSamples;

namespace HortiCalc.Tests.Climate;

[Properties(Arbitrary = [typeof(FrostNightArbitraries)], MaxTest = 200)]
public class SprinklingProperties
{
    private static readonly Pressure SeaLevel = Pressure.FromKilopascals(101.325);

    private static double Start(double dewPoint, double critical, double kilopascals = 101.325, SprinklerStartMethod? method = null) =>
        Sprinkling.StartTemperature(C(dewPoint), C(critical), Pressure.FromKilopascals(kilopascals), method).Value.DegreesCelsius;

    [Property]
    public void StartTemperature_OfDrierAir_HasTheCriticalTemperatureForItsWetBulb(AnyDamp damp)
    {
        double start = Start(damp.DewPoint, damp.Critical);
        if (damp.DewPoint >= damp.Critical)
            Assert.Equal(damp.Critical, start);
        else
            Assert.Equal(damp.Critical, MoistAir.FromDewPoint(C(start), C(damp.DewPoint), SeaLevel).WetBulb().DegreesCelsius, 1e-7);
    }

    [Property]
    public void StartTemperature_AnyAir_IsAtOrAboveTheCriticalTemperature(AnyDamp damp)
    {
        foreach (SprinklerStartMethod method in new[] { SprinklerStartMethod.Psychrometric, SprinklerStartMethod.OneThirdRule })
            Assert.True(Start(damp.DewPoint, damp.Critical, method: method) >= damp.Critical);
    }

    [Property]
    public void StartTemperature_OfDrierThinnerOrMoreDelicate_IsWarmer(AnyDamp damp)
    {
        double start = Start(damp.DewPoint, damp.Critical);
        Assert.True(Start(damp.DewPoint - 1, damp.Critical) >= start);
        Assert.True(Start(damp.DewPoint, damp.Critical + 0.5) > start);
        Assert.True(Start(damp.DewPoint, damp.Critical, 80) >= start);
        if (damp.DewPoint < damp.Critical)
            Assert.True(Start(damp.DewPoint, damp.Critical, 80) > start);
    }

    [Property]
    public void StartTemperature_NearZero_IsWithinHalfADegreeOfTheOneThirdRule(AnyShare share)
    {
        double dewPoint = -5 * share.Share;
        Assert.Equal(Start(dewPoint, 0), Start(dewPoint, 0, method: SprinklerStartMethod.OneThirdRule), 0.5);
    }

    [Property]
    public void OneThirdRule_OfDrierAir_LeavesAThirdOfTheWayToTheDewPoint(AnyDamp damp)
    {
        double start = Start(damp.DewPoint, damp.Critical, method: SprinklerStartMethod.OneThirdRule);
        Assert.Equal(damp.Critical, damp.DewPoint < damp.Critical ? start - (start - damp.DewPoint) / 3 : start, 1e-9);
    }

    [Property]
    public void StopTemperature_SameDewPoint_IsTheStartButNeverBelowZero(AnyDamp damp) =>
        Assert.Equal(
            Math.Max(0, Start(damp.DewPoint, damp.Critical)),
            Sprinkling.StopTemperature(C(damp.DewPoint), C(damp.Critical)).Value.DegreesCelsius,
            1e-9);

    [Property]
    public void StartTemperature_BetweenLinesOfTheTables_LiesBetweenThem(AnyShare share)
    {
        double dewPoint = Math.Clamp(-8.3 + (8.3 - 1.1) * share.Share, -8.3, -1.1);
        Assert.InRange(Start(dewPoint, 0, method: SprinklerStartMethod.OntarioTable), 0, 4.4);
        double drier = Math.Max(-8.3, dewPoint - 0.2);
        Assert.True(Start(drier, 0, method: SprinklerStartMethod.OntarioTable) >= Start(dewPoint, 0, method: SprinklerStartMethod.OntarioTable));
    }

    [Property]
    public void WaterNeeded_TwiceTheAreaForHalfTheTime_IsTheSame(AnyShare share)
    {
        double hours = 1 + 10 * share.Share;
        Estimate<Volume> one = Sprinkling.WaterNeeded(Area.FromSquareMeters(50), Duration.FromHours(hours));
        Estimate<Volume> two = Sprinkling.WaterNeeded(Area.FromSquareMeters(100), Duration.FromHours(hours / 2));

        Assert.Equal(one.Value.Liters, two.Value.Liters, 1e-9);
        Assert.Equal(0.15 * 25.4 * 50 * hours, one.Value.Liters, 1e-9);
        Assert.Equal(one.Range!.High, one.Value);
    }

    [Fact]
    public void StartTemperature_Methods_AreFoundByKeyAndTheDefaultIsTheEquation()
    {
        Assert.All(SprinklerStartMethod.All, method => Assert.Same(method, SprinklerStartMethod.FromKey(method.Evidence.Key)));
        Assert.Equal(SprinklerStartMethod.Psychrometric.Evidence, Sprinkling.StartTemperature(C(-5), C(-1)).Method);
        Assert.Contains(Sprinkling.StartTemperature(C(-5), C(-1)).Cautions, caution => caution is { Code: "frost-night.electricity", Level: CautionLevel.Danger });
    }

    [Fact]
    public void Gain_OfTheCovers_IsTheLowEndOfThePrintedRange()
    {
        Assert.All(RowCover.All, cover => Assert.Equal(cover.Gain.Range!.Low, cover.Gain.Value));
        Assert.All(RowCover.All, cover => Assert.Same(cover, RowCover.FromKey(cover.Evidence.Key)));
        Assert.Equal(6 / 1.8, RowCover.Heavy.Gain.Range!.High.DegreesCelsius, 1e-9);
    }
}
