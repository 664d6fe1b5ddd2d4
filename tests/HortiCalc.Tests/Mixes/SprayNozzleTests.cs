using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Evidence;
using HortiCalc.Mixes;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>What a nozzle gives at another pressure and with another liquid, and the speed for a rate.</summary>
public class SprayNozzleTests
{
    private static VolumeFlow Flow(PositiveInt value) => VolumeFlow.FromLitersPerMinute(0.1 + (value.Get % 400 / 100.0));

    private static Pressure Bars(PositiveInt value) => Pressure.FromBars(0.5 + (value.Get % 100 / 10.0));

    private static Density Liquid(PositiveInt value) => Density.FromKilogramsPerCubicMeter(800 + (value.Get % 1100));

    [Fact]
    public void FlowAt_ThreeQuartersOfThePressure_IsAnEighthLess() => Assert.Equal(
        0.3464,
        SprayNozzle.FlowAt(
            Pressure.FromPoundsForcePerSquareInch(30), VolumeFlow.FromUsGallonsPerMinute(0.40), Pressure.FromPoundsForcePerSquareInch(40)).Value.UsGallonsPerMinute,
        4);

    [Property]
    public bool FlowAt_FourTimesThePressure_IsTwiceTheFlow(PositiveInt flow, PositiveInt pressure) => Near.Equal(
        SprayNozzle.FlowAt(Bars(pressure) * 4, Flow(flow), Bars(pressure)).Value.LitersPerMinute, 2 * Flow(flow).LitersPerMinute);

    [Property]
    public bool PressureFor_TheFlowAtAPressure_IsThatPressure(PositiveInt flow, PositiveInt known, PositiveInt asked) => Near.Equal(
        SprayNozzle.PressureFor(SprayNozzle.FlowAt(Bars(asked), Flow(flow), Bars(known)).Value, Flow(flow), Bars(known)).Value.Bars, Bars(asked).Bars);

    [Property]
    public bool FlowAt_ByWayOfAThirdPressure_IsTheSame(PositiveInt flow, PositiveInt one, PositiveInt two, PositiveInt three) => Near.Equal(
        SprayNozzle.FlowAt(Bars(three), SprayNozzle.FlowAt(Bars(two), Flow(flow), Bars(one)).Value, Bars(two)).Value.LitersPerMinute,
        SprayNozzle.FlowAt(Bars(three), Flow(flow), Bars(one)).Value.LitersPerMinute);

    [Property]
    public bool WaterFlowFor_ADenserLiquid_IsMore(PositiveInt flow, PositiveInt one, PositiveInt other) =>
        (SprayNozzle.WaterFlowFor(Flow(flow), Liquid(one)).Value > SprayNozzle.WaterFlowFor(Flow(flow), Liquid(other)).Value) == (Liquid(one) > Liquid(other));

    [Property]
    public bool SpeedFor_TheRateOfAFlowAtASpeed_IsThatSpeed(PositiveInt flow, PositiveInt speed, PositiveInt width)
    {
        Speed driven = Speed.FromKilometersPerHour(0.5 + (speed.Get % 150 / 10.0));
        Length swath = Length.FromMeters(0.2 + (width.Get % 300 / 10.0));
        return Near.Equal(
            SprayerCalibration.SpeedFor(SprayerCalibration.FromFlow(Flow(flow), driven, swath), Flow(flow), swath).MetersPerSecond, driven.MetersPerSecond);
    }

    [Fact]
    public void Answers_SayWhatToTakeCareOf() => Assert.Equal(
        ["spray.drift", "mix.label-decides"],
        SprayNozzle.FlowAt(Pressure.FromBars(2), VolumeFlow.FromLitersPerMinute(1), Pressure.FromBars(3)).Cautions.Select(caution => caution.Code));

    [Fact]
    public void ImpossibleInputs_AreNamed()
    {
        Assert.Equal("pressure", Assert.Throws<ArgumentOutOfRangeException>(
            () => SprayNozzle.FlowAt(Pressure.Zero, VolumeFlow.FromLitersPerMinute(1), Pressure.FromBars(3))).ParamName);
        Assert.Equal("knownPressure", Assert.Throws<ArgumentOutOfRangeException>(
            () => SprayNozzle.FlowAt(Pressure.FromBars(3), VolumeFlow.FromLitersPerMinute(1), Pressure.Zero)).ParamName);
        Assert.Equal("flow", Assert.Throws<ArgumentOutOfRangeException>(
            () => SprayNozzle.PressureFor(VolumeFlow.Zero, VolumeFlow.FromLitersPerMinute(1), Pressure.FromBars(3))).ParamName);
        ArgumentOutOfRangeException heavy = Assert.Throws<ArgumentOutOfRangeException>(
            () => SprayNozzle.WaterFlowFor(VolumeFlow.FromLitersPerMinute(1), Density.FromKilogramsPerLiter(3)));
        Assert.Equal("liquid", heavy.ParamName);
        Assert.Contains("3000 kg/m³; allowed: from 790 to 1920", heavy.Message, StringComparison.Ordinal);
        Assert.Equal("rate", Assert.Throws<ArgumentOutOfRangeException>(
            () => SprayerCalibration.SpeedFor(default, VolumeFlow.FromLitersPerMinute(1), Length.FromMeters(1))).ParamName);
    }

    [Theory]
    [InlineData(TreeRowRule.OrchardWellPruned, 152.46, "cornell-tree-row-volume")]
    [InlineData(TreeRowRule.OrchardDense, 217.8, "cornell-tree-row-volume")]
    [InlineData(TreeRowRule.Orchard, 200, "ohio-tree-row-volume")]
    public void TreeRows_TenByTenAtTwenty_FollowTheRule(TreeRowRule rule, double gallonsPerAcre, string source)
    {
        Estimate<VolumeRate> rate = SprayerCalibration.ForTreeRows(Length.FromFeet(10), Length.FromFeet(10), Length.FromFeet(20), rule);
        Assert.Equal(gallonsPerAcre, rate.Value.UsGallonsPerAcre, 6);
        Assert.Equal(source, rate.Method.Source.Key);
    }
}
