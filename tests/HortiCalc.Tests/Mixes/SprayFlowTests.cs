using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Mixes;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>Liquids other than water through a nozzle, and the speed for a rate.</summary>
public class SprayFlowTests
{
    private static VolumeFlow Flow(PositiveInt value) => VolumeFlow.FromLitersPerMinute(0.1 + (value.Get % 400 / 100.0));

    private static Density Liquid(PositiveInt value) => Density.FromKilogramsPerCubicMeter(800 + (value.Get % 1100));

    [Property]
    public bool WaterFlowFor_ADenserLiquid_IsMore(PositiveInt flow, PositiveInt one, PositiveInt other) =>
        SprayerCalibration.WaterFlowFor(Flow(flow), Liquid(one)).Value > SprayerCalibration.WaterFlowFor(Flow(flow), Liquid(other)).Value
        == Liquid(one) > Liquid(other);

    [Property]
    public bool WaterFlowFor_TwiceTheFlow_IsTwiceTheWater(PositiveInt flow, PositiveInt liquid) => Near.Equal(
        SprayerCalibration.WaterFlowFor(Flow(flow) * 2, Liquid(liquid)).Value.LitersPerMinute,
        2 * SprayerCalibration.WaterFlowFor(Flow(flow), Liquid(liquid)).Value.LitersPerMinute);

    /// <summary>A denser liquid needs the pressure that brings the chart's flow of water: the two laws are one.</summary>
    [Property]
    public bool WaterFlowFor_AsPressure_GoesWithTheDensity(PositiveInt flow, PositiveInt one, PositiveInt other)
    {
        VolumeFlow first = SprayerCalibration.WaterFlowFor(Flow(flow), Liquid(one)).Value;
        VolumeFlow second = SprayerCalibration.WaterFlowFor(Flow(flow), Liquid(other)).Value;
        return Near.Equal(
            SprayerCalibration.PressureForFlow(first, Pressure.FromBars(3), second).Value.Bars,
            3 * Liquid(other).KilogramsPerCubicMeter / Liquid(one).KilogramsPerCubicMeter);
    }

    [Property]
    public bool SpeedFor_TheRateOfAFlowAtASpeed_IsThatSpeed(PositiveInt flow, PositiveInt speed, PositiveInt width)
    {
        Speed driven = Speed.FromKilometersPerHour(0.5 + (speed.Get % 150 / 10.0));
        Length swath = Length.FromMeters(0.2 + (width.Get % 300 / 10.0));
        return Near.Equal(
            SprayerCalibration.SpeedFor(SprayerCalibration.FromFlow(Flow(flow), driven, swath), Flow(flow), swath).MetersPerSecond, driven.MetersPerSecond);
    }

    [Fact]
    public void ImpossibleInputs_AreNamed()
    {
        ArgumentOutOfRangeException heavy = Assert.Throws<ArgumentOutOfRangeException>(
            () => SprayerCalibration.WaterFlowFor(VolumeFlow.FromLitersPerMinute(1), Density.FromKilogramsPerLiter(3)));
        Assert.Equal("liquid", heavy.ParamName);
        Assert.Contains("3000 kg/m³; allowed: from 790 to 1920", heavy.Message, StringComparison.Ordinal);
        Assert.Equal("rate", Assert.Throws<ArgumentOutOfRangeException>(
            () => SprayerCalibration.SpeedFor(default, VolumeFlow.FromLitersPerMinute(1), Length.FromMeters(1))).ParamName);
        Assert.Equal("flow", Assert.Throws<ArgumentOutOfRangeException>(() => SprayerCalibration.SpeedFor(
            HortiCalc.Units.VolumeRate.FromLitresPerHectare(200), VolumeFlow.Zero, Length.FromMeters(1))).ParamName);
    }
}
