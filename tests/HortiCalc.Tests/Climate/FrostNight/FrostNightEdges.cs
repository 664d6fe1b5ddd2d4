using HortiCalc.Climate;
using UnitsNet;
using static HortiCalc.Tests.Climate.FrostNightSamples;

namespace HortiCalc.Tests.Climate;

public class FrostNightEdges
{
    private static readonly DateTime Sunset = new(2027, 4, 20, 20, 0, 0);
    private static readonly IReadOnlyList<CriticalTemperature> Crop = CriticalTemperatures.For("apple", "full bloom");

    private static IReadOnlyList<PastNight> Copies(Func<int, PastNight> night) => [.. Enumerable.Range(0, 12).Select(night)];

    [Fact]
    public void PastNight_AboveTheEvening_IsRefused()
    {
        AssertRefused<ArgumentOutOfRangeException>(() => Night(3, 3.5, -1), "eveningDewPoint", "was 3.5 °C", "from -90 to 3 °C");
        AssertRefused<ArgumentOutOfRangeException>(() => Night(3, 1, 4), "minimum", "was 4 °C", "from -90 to 3 °C");
        AssertRefused<ArgumentOutOfRangeException>(() => Night(61, 1, 4), "eveningTemperature", "was 61 °C", "from -90 to 60 °C");
        AssertRefused<ArgumentOutOfRangeException>(() => new PastNight(F(40), F(41), F(30)), "eveningDewPoint", "°C");
    }

    [Fact]
    public void Model_NineNights_IsRefusedAndTenAreTaken()
    {
        AssertRefused<ArgumentException>(() => new NightMinimumModel(NightMinimumFitting.TwoStep, [.. TenNights.Take(9)]), "nights", "held 9", "10 or more");
        Assert.Equal(10, new NightMinimumModel(NightMinimumFitting.TwoStep, TenNights).Nights.Count);
    }

    [Fact]
    public void Model_NightsTooAlike_IsRefused()
    {
        IReadOnlyList<PastNight> oneEvening = Copies(night => Night(3, -night, -4));
        IReadOnlyList<PastNight> oneDewPoint = Copies(night => Night(3 + night, -2, -4));
        IReadOnlyList<PastNight> inStep = Copies(night => Night(night, night - 3, -4));
        IReadOnlyList<PastNight> oneApart = Copies(night => Night(night == 5 ? 4 : 3, -night, -4));
        foreach (NightMinimumFitting fitting in NightMinimumFitting.All)
            AssertRefused<ArgumentException>(() => new NightMinimumModel(fitting, oneEvening), "nights", "too alike");
        AssertRefused<ArgumentException>(() => new NightMinimumModel(NightMinimumFitting.TwoStep, oneDewPoint), "nights", "too alike");
        AssertRefused<ArgumentException>(() => new NightMinimumModel(NightMinimumFitting.Joint, inStep), "nights", "too alike");
        AssertRefused<ArgumentException>(() => new NightMinimumModel(NightMinimumFitting.Joint, oneApart), "nights", "left out");
        Assert.Equal(0, new NightMinimumModel(NightMinimumFitting.TemperatureOnly, oneDewPoint).PerDewPoint);
    }

    [Fact]
    public void Model_Null_IsRefused()
    {
        AssertRefused<ArgumentNullException>(() => new NightMinimumModel(null!, TenNights), "fitting");
        AssertRefused<ArgumentNullException>(() => new NightMinimumModel(NightMinimumFitting.Joint, null!), "nights");
        AssertRefused<ArgumentException>(() => NightMinimumFitting.FromKey("none"), "key", "night-minimum.joint");
    }

    [Fact]
    public void Minimum_WarmerThanTheEvening_IsTheEveningWithACaution()
    {
        NightMinimumModel warm = new(NightMinimumFitting.TemperatureOnly, Copies(night => Night(night / 2.0, -5, night / 2.0 - (night == 11 ? 0 : 0.2))));
        Assert.Equal(-3, warm.Minimum(C(-3), C(-5)).Value.DegreesCelsius, 0.5);
        NightMinimumModel flat = new(NightMinimumFitting.TemperatureOnly, Copies(night => Night(night / 2.0, -5, -1 - night % 2 / 10.0)));
        HortiCalc.Evidence.Estimate<Temperature> held = flat.Minimum(C(-3), C(-5));
        Assert.Equal(-3, held.Value.DegreesCelsius);
        Assert.Equal(-3, held.Range!.High.DegreesCelsius);
        Assert.Contains(held.Cautions, caution => caution.Code == "frost-night.no-cooling");
    }

    [Fact]
    public void ChanceOfMinimum_ThresholdAboveTheEvening_IsRefused() =>
        AssertRefused<ArgumentOutOfRangeException>(() => Model.ChanceOfMinimumAtOrBelow(C(4), C(-3), C(4.5)), "threshold", "was 4.5 °C", "from -90 to 4 °C");

    [Fact]
    public void ChanceOfMinimum_WithoutError_IsAllOrNothing()
    {
        // Powers of two: the line is met exactly, nothing is left over.
        NightMinimumModel exact = new(NightMinimumFitting.TemperatureOnly, Copies(night => Night(night, -8, night * 0.5 - 4)));
        Assert.Equal(100, exact.ChanceOfMinimumAtOrBelow(C(4), C(-8), C(-1.9)).Value.Percent, 1e-9);
        Assert.Equal(0, exact.ChanceOfMinimumAtOrBelow(C(4), C(-8), C(-2.1)).Value.Percent, 1e-9);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(-3)]
    [InlineData(25)]
    public void NightCooling_LengthOutOfRange_IsRefused(double hours)
    {
        string value = hours.ToString(System.Globalization.CultureInfo.InvariantCulture) + " h";
        AssertRefused<ArgumentOutOfRangeException>(() => new NightCooling(Sunset, Sunset.AddHours(hours), C(4), C(-1)), "sunrise", value, "up to 24 h");
        AssertRefused<ArgumentOutOfRangeException>(
            () => new FrostEvening(Sunset, Sunset.AddHours(hours), C(4), C(-1), Speed.Zero, true), "sunrise", value, "up to 24 h");
    }

    [Fact]
    public void NightCooling_OutsideTheCurve_IsRefused()
    {
        NightCooling night = new(Sunset, Sunset.AddHours(10), C(4), C(-2));
        AssertRefused<ArgumentOutOfRangeException>(() => night.At(Sunset.AddHours(1)), "time", "2027-04-20 21:00", "from 2027-04-20 22:00 to 2027-04-21 06:00");
        AssertRefused<ArgumentOutOfRangeException>(() => night.At(Sunset.AddHours(10.5)), "time", "2027-04-21 06:30");
        AssertRefused<ArgumentOutOfRangeException>(() => night.EnduredFor(Duration.FromHours(9)), "duration", "9 h", "from 0 to 8 h");
        AssertRefused<ArgumentOutOfRangeException>(() => night.DurationBelow(C(99)), "temperature", "99 °C");
        AssertRefused<ArgumentOutOfRangeException>(() => new NightCooling(Sunset, Sunset.AddHours(10), C(4), C(5)), "minimum", "was 5 °C", "to 4 °C");
    }

    [Fact]
    public void NightCooling_WithoutCooling_IsLevel()
    {
        NightCooling night = new(Sunset, Sunset.AddHours(10), C(1), C(1));
        Assert.Equal(1, night.At(Sunset.AddHours(6)).DegreesCelsius);
        Assert.Equal(8, night.DurationBelow(C(1)).Hours, 1e-9);
        Assert.Equal(0, night.DurationBelow(C(0.9)).Hours);
    }

    [Fact]
    public void NightCooling_ShortNightWithoutAFullHour_HasNoHours()
    {
        DateTime sunset = new(2027, 6, 20, 22, 10, 0);
        Assert.Null(new NightCooling(sunset, sunset.AddMinutes(150), C(4), C(3)).AtFullHours());
        Assert.Equal(1, new NightCooling(sunset, sunset.AddMinutes(170), C(4), C(3)).AtFullHours()!.Count);
    }

    [Fact]
    public void NightCooling_KindsOfTime_AreSetAside() =>
        Assert.Equal(
            new NightCooling(Sunset, Sunset.AddHours(10), C(4), C(1)),
            new NightCooling(DateTime.SpecifyKind(Sunset, DateTimeKind.Utc), DateTime.SpecifyKind(Sunset.AddHours(10), DateTimeKind.Local), C(4), C(1)));

    [Theory]
    [InlineData(7)]
    [InlineData(1)]
    [InlineData(13)]
    public void GrassMinimum_MonthNotPublished_IsRefused(int month) =>
        AssertRefused<ArgumentOutOfRangeException>(() => FrostRules.GrassMinimum(C(6), C(3), month), "month", $"was {month}", "5, 6, 8, 9 or 10");

    [Fact]
    public void Rules_DewPointAboveTheAir_IsRefused()
    {
        AssertRefused<ArgumentOutOfRangeException>(() => FrostRules.GrassMinimum(C(6), C(7), 6), "afternoonDewPoint", "was 7 °C");
        AssertRefused<ArgumentOutOfRangeException>(() => FrostRules.MeanOfMaximumAndDewPoint(C(6), C(7)), "dewPoint", "was 7 °C");
        AssertRefused<ArgumentOutOfRangeException>(() => FrostRules.Outlook(C(-91)), "afternoonDewPoint", "was -91 °C");
        AssertRefused<ArgumentOutOfRangeException>(() => FrostTypes.Of(Speed.FromMetersPerSecond(-1), true), "windSpeed", "was -1 m/s", "0 m/s or more");
    }

    [Fact]
    public void CriticalTemperature_Contradictions_AreRefused()
    {
        HortiCalc.Evidence.Source source = Crop[0].Source;
        AssertRefused<ArgumentException>(() => new CriticalTemperature("a", "", "b", "b", null, null, null, null, source), "tenPercentKill");
        AssertRefused<ArgumentException>(() => new CriticalTemperature("a", "", "b", "b", C(-1), C(-1), null, C(-2), source), "tenPercentKill");
        AssertRefused<ArgumentException>(() => new CriticalTemperature("a", "", "b", "b", null, C(-1), C(-2), null, source), "highestCritical");
        AssertRefused<ArgumentOutOfRangeException>(() => new CriticalTemperature("a", "", "b", "b", C(0), C(-1), null, null, source), "lowestCritical", "was 0 °C", "to -1 °C");
        AssertRefused<ArgumentOutOfRangeException>(() => new CriticalTemperature("a", "", "b", "b", null, null, C(-2), C(-2), source), "ninetyPercentKill", "below -2 °C");
        AssertRefused<ArgumentException>(() => new CriticalTemperature(" ", "", "b", "b", null, null, C(-2), null, source), "crop");
        AssertRefused<ArgumentOutOfRangeException>(() => Crop[0].DamageAt(C(-100)), "temperature", "was -100 °C");
        AssertRefused<ArgumentOutOfRangeException>(() => new CropBudNeed("a", Ratio.FromPercent(50), Ratio.FromPercent(40), source), "high", "was 40 %", "from 50 to 100 %");
    }

    [Fact]
    public void For_UnknownCropOrStage_NamesWhatThereIs()
    {
        AssertRefused<ArgumentException>(() => CriticalTemperatures.For("Orange", "bloom"), "crop", "'Orange'", "Sweet cherry");
        AssertRefused<ArgumentException>(() => CriticalTemperatures.For("Grape", "bloom"), "stage", "'bloom'", "early swell, full swell, bud burst");
        AssertRefused<ArgumentException>(() => CriticalTemperatures.StagesOf(""), "crop");
    }

    [Fact]
    public void FrostDefinition_UpsideDown_IsRefused() => AssertRefused<ArgumentOutOfRangeException>(
        () => new FrostDefinition("x", FrostSensor.Air, C(-5), true, C(-1), false, Crop[0].Source), "coldest", "was -1 °C", "to -5 °C");

    [Fact]
    public void Sprinkling_OutsideWhatWasPublished_IsRefused()
    {
        AssertRefused<ArgumentOutOfRangeException>(
            () => Sprinkling.StartTemperature(C(-9), C(0), method: SprinklerStartMethod.OntarioTable), "dewPoint", "was -9 °C", "from -8.3 to -1.1 °C", "Ontario");
        AssertRefused<ArgumentOutOfRangeException>(
            () => Sprinkling.StartTemperature(C(-5), C(-1), method: SprinklerStartMethod.OntarioTable), "criticalTemperature", "was -1 °C", "from 0 to 0 °C");
        AssertRefused<ArgumentOutOfRangeException>(() => Sprinkling.StartTemperature(C(-5), C(-11)), "criticalTemperature", "was -11 °C", "from -10 to 5 °C");
        AssertRefused<ArgumentOutOfRangeException>(
            () => Sprinkling.StartTemperature(C(-5), C(0), Pressure.FromKilopascals(1013)), "airPressure", "was 1013 kPa", "from 50 to 110 kPa");
        AssertRefused<ArgumentOutOfRangeException>(() => Sprinkling.WaterNeeded(Area.Zero, Duration.FromHours(1)), "area", "was 0 m²");
        AssertRefused<ArgumentOutOfRangeException>(() => Sprinkling.WaterNeeded(Area.FromSquareMeters(1), Duration.Zero), "duration", "was 0 h");
        AssertRefused<ArgumentException>(() => SprinklerStartMethod.FromKey("x"), "key", "sprinkler-start.ontario");
        AssertRefused<ArgumentException>(() => RowCover.FromKey("x"), "key", "row-cover.heavy");
        Assert.True(SprinklerStartMethod.OntarioTable.Evidence.Domain.Contains("dewPoint", -8.3));
        Assert.False(SprinklerStartMethod.OntarioTable.Evidence.Domain.Contains("dewPoint", -8.4));
    }

    [Fact]
    public void FrostNight_WindOrCloud_IsRefusedWithWhatTheRegressionWasPublishedFor()
    {
        AssertRefused<ArgumentOutOfRangeException>(() => new FrostNight(Evening(4, -3, windMetresPerSecond: 2), Model, Crop), "evening", "2 m/s", "below 2 m/s");
        AssertRefused<ArgumentOutOfRangeException>(() => new FrostNight(Evening(4, -3, isClear: false), Model, Crop), "evening", "isClear", "no cloud, fog or rain");
        AssertRefused<ArgumentException>(() => new FrostNight(Evening(4, -3), Model, []), "crop", "1 or more");
        AssertRefused<ArgumentNullException>(() => new FrostNight(null!, Model, Crop), "evening");
        AssertRefused<ArgumentNullException>(() => new FrostNight(Evening(4, -3), null!, Crop), "model");
        AssertRefused<ArgumentOutOfRangeException>(() => Evening(4, -3, windMetresPerSecond: -1), "windSpeed", "was -1 m/s");
        AssertRefused<ArgumentOutOfRangeException>(() => Evening(4, 5), "dewPoint", "was 5 °C", "to 4 °C");
        AssertRefused<ArgumentOutOfRangeException>(
            () => new FrostEvening(Sunset, Sunset.AddHours(9), C(4), C(1), Speed.Zero, true, airPressure: Pressure.FromBars(2)), "airPressure", "was 200 kPa");
    }

    [Fact]
    public void FrostNight_WithoutInversion_IsUnclear() =>
        Assert.Equal(FrostType.Unclear, new FrostNight(Evening(4, -3, inversion: false), Model, Crop).Type.Value);
}
