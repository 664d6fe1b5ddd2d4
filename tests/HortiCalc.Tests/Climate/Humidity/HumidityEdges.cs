using HortiCalc.Climate;
using HortiCalc.Tests.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

public class HumidityEdges
{
    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(100.5)]
    public void FromRelativeHumidity_OutOfRange_IsRefused(double percent) => Refused(
        () => MoistAir.FromRelativeHumidity(C(20), RelativeHumidity.FromPercent(percent), Moist.SeaLevel),
        "relativeHumidity",
        $"was {percent.ToString(System.Globalization.CultureInfo.InvariantCulture)} %",
        "above 0, up to 100 %");

    [Fact]
    public void FromRelativeHumidity_OutsideTheFormula_IsRefusedAndTheDomainSaysSo()
    {
        Refused(() => MoistAir.FromRelativeHumidity(C(61), RelativeHumidity.FromPercent(50), Moist.SeaLevel), "temperature", "61 °C", "from -45 to 60 °C");
        Refused(() => MoistAir.FromRelativeHumidity(C(-66), RelativeHumidity.FromPercent(50), Moist.SeaLevel), "temperature", "-66 °C", "from -45 to 60 °C");
        Refused(() => MoistAir.FromRelativeHumidity(C(-50), RelativeHumidity.FromPercent(50), Moist.SeaLevel), "temperature", "-50 °C", "from -45 to 60 °C");
        Assert.False(SaturationVapourPressure.Wmo.Evidence.Domain.Contains("temperature", 61));
        Assert.True(SaturationVapourPressure.Wmo.IceEvidence!.Domain.Contains("temperature", -50));
    }

    [Theory]
    [InlineData(9)]
    [InlineData(1013.25)]
    public void FromRelativeHumidity_NoBarometerOnLand_IsRefused(double kilopascals) => Refused(
        () => MoistAir.FromRelativeHumidity(C(20), RelativeHumidity.FromPercent(50), Pressure.FromKilopascals(kilopascals)),
        "airPressure",
        $"{kilopascals.ToString(System.Globalization.CultureInfo.InvariantCulture)} kPa",
        "from 10 to 120 kPa");

    [Fact]
    public void FromDewPoint_AboveTheAir_IsRefused()
    {
        Refused(() => MoistAir.FromDewPoint(C(20), C(20.1), Moist.SeaLevel), "dewPoint", "20.1 °C", "not above the air's 20 °C");
        Refused(() => MoistAir.FromFrostPoint(C(-5), C(-4), Moist.SeaLevel), "frostPoint", "-4 °C", "not above the air's -5 °C");
        Refused(() => MoistAir.FromFrostPoint(C(5), C(1), Moist.SeaLevel), "frostPoint", "1 °C", "from -65 to 0 °C");
        Refused(() => MoistAir.FromWetBulb(C(20), C(21), Moist.SeaLevel), "wetBulb", "21 °C", "not above the air's 20 °C");
        Refused(() => MoistAir.FromIceBulb(C(-5), C(-4), Moist.SeaLevel), "iceBulb", "-4 °C", "not above the air's -5 °C");
    }

    [Theory]
    [InlineData("psychrometer.ventilated", 0.000662, 0.000594)]
    [InlineData("psychrometer.natural", 0.000800, null)]
    [InlineData("psychrometer.unventilated", 0.001200, null)]
    [InlineData("psychrometer.weather-bureau", 0.00066 * (1 + 0.00115 * 10), 0.00066 * (1 - 0.00115 * 10))]
    [InlineData("psychrometer.constant-latent-heat", 0.000665, null)]
    public void FromWetBulb_OneDegreeApart_FallsByThePrintedCoefficient(string key, double water, double? ice)
    {
        Psychrometer psychrometer = Psychrometer.FromKey(key);
        double fall = SaturationVapourPressure.Wmo.OverWater(C(10)).Kilopascals
            - MoistAir.FromWetBulb(C(11), C(10), Pressure.FromKilopascals(100), psychrometer).VapourPressure.Kilopascals;
        Assert.Equal(100 * water, fall, 1e-12);
        if (ice is not double perCelsius)
            return;
        double icyFall = SaturationVapourPressure.Wmo.OverIce(C(-10)).Kilopascals
            - MoistAir.FromIceBulb(C(-9), C(-10), Pressure.FromKilopascals(100), psychrometer).VapourPressure.Kilopascals;
        Assert.Equal(100 * perCelsius, icyFall, 1e-12);
    }

    [Fact]
    public void FromWetBulb_LowerThanDryAirCoolsIt_IsRefused()
    {
        Refused(() => MoistAir.FromWetBulb(C(30), C(5), Moist.SeaLevel), "wetBulb", "5 °C", "without any vapour, at 101.325 kPa");
        Refused(() => MoistAir.FromIceBulb(C(0), C(-20), Moist.SeaLevel), "iceBulb", "-20 °C", "without any vapour");
    }

    [Fact]
    public void New_VapourPressureOutOfRange_IsRefused()
    {
        Refused(() => new MoistAir(C(20), Pressure.FromKilopascals(2.5), Moist.SeaLevel, SaturationVapourPressure.Fao), "vapourPressure", "2.5 kPa", "above 0 kPa, up to 2.33828");
        Refused(() => new MoistAir(C(20), Pressure.Zero, Moist.SeaLevel, SaturationVapourPressure.Fao), "vapourPressure", "0 kPa", "above 0 kPa");
        Refused(() => MoistAir.FromMixingRatio(C(20), Ratio.FromPartsPerThousand(15), Moist.SeaLevel), "mixingRatio", "kPa of vapour", "saturated at 20 °C");
        Refused(() => MoistAir.FromMixingRatio(C(20), Ratio.Zero, Moist.SeaLevel), "mixingRatio", "0 kg/kg", "greater than 0");
        Refused(() => MoistAir.FromSpecificHumidity(C(20), MassFraction.FromPercent(100), Moist.SeaLevel), "specificHumidity", "1 kg/kg", "above 0 and below 1");
        Refused(() => MoistAir.FromAbsoluteHumidity(C(20), MassConcentration.Zero, Moist.SeaLevel), "absoluteHumidity", "0 g/m³", "greater than 0");
        Assert.Throws<ArgumentNullException>(() => new MoistAir(C(20), Pressure.FromKilopascals(1), Moist.SeaLevel, null!));
    }

    [Fact]
    public void OverIce_WhereTheSourceHasNone_IsNotSupportedAndSaysWhichHaveIt()
    {
        MoistAir air = MoistAir.FromRelativeHumidity(C(-5), RelativeHumidity.FromPercent(50), Moist.SeaLevel, SaturationVapourPressure.Fao);
        Assert.Contains("saturation.wmo, saturation.buck", Assert.Throws<NotSupportedException>(() => air.FrostPoint()).Message, StringComparison.Ordinal);
        Assert.Throws<NotSupportedException>(() => air.RelativeHumidityOverIce());
        Assert.Throws<NotSupportedException>(() => SaturationVapourPressure.Fao.OverIce(C(-5)));
        MoistAir cold = MoistAir.FromRelativeHumidity(C(-5), RelativeHumidity.FromPercent(50), Moist.SeaLevel);
        Assert.Contains(
            "psychrometer.ventilated", Assert.Throws<NotSupportedException>(() => cold.IceBulb(Psychrometer.Unventilated)).Message, StringComparison.Ordinal);
        Assert.Null(SaturationVapourPressure.Fao.IceEvidence);
        Assert.Null(Psychrometer.Unventilated.IceEvidence);
    }

    [Fact]
    public void HylandWexler_BelowFreezing_SpeaksOfIceAlone()
    {
        MoistAir air = MoistAir.FromRelativeHumidityOverIce(C(-10), RelativeHumidity.FromPercent(80), Moist.SeaLevel, SaturationVapourPressure.HylandWexler);

        Assert.Equal(80, air.RelativeHumidityOverIce().Percent, 1e-9);
        Assert.InRange(air.IceBulb()!.Value.DegreesCelsius, air.FrostPoint()!.Value.DegreesCelsius, -10);
        Refused(() => air.RelativeHumidity(), "temperature", "-10 °C", "from 0 to 200 °C");
        Refused(() => air.DewPoint(), "vapourPressure", "kPa", "from 0 to 200 °C");
        Refused(() => air.WetBulb(), "temperature", "-10 °C", "from 0 to 200 °C");
        Assert.Contains("over ice 80 %", air.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void WetBulb_BelowWhereTheFormulaHolds_IsRefused()
    {
        MoistAir air = MoistAir.FromRelativeHumidity(C(3), RelativeHumidity.FromPercent(12), Moist.SeaLevel, SaturationVapourPressure.HylandWexler);

        Refused(() => air.WetBulb(), "wetBulb", "0 °C or less", "from 0 °C");
        Assert.InRange(air.IceBulb()!.Value.DegreesCelsius, -10, 0);
    }

    [Fact]
    public void FrostPointAndIceBulb_InWarmMoistAir_AreNone()
    {
        MoistAir warm = MoistAir.FromRelativeHumidity(C(20), RelativeHumidity.FromPercent(50), Moist.SeaLevel);
        MoistAir fog = MoistAir.FromRelativeHumidity(C(-5), RelativeHumidity.FromPercent(100), Moist.SeaLevel);

        Assert.Null(warm.FrostPoint());
        Assert.Null(warm.IceBulb());
        Assert.Null(fog.IceBulb());
        Assert.InRange(fog.RelativeHumidityOverIce().Percent, 104, 106);
    }

    [Fact]
    public void DewPoint_OfAlmostDryAir_IsRefusedWithTheRange()
    {
        MoistAir dry = MoistAir.FromRelativeHumidity(C(20), RelativeHumidity.FromPercent(0.01), Moist.SeaLevel);

        Refused(() => dry.DewPoint(), "vapourPressure", "kPa", "saturated from -45 to 60 °C");
        Assert.InRange(dry.WetBulb().DegreesCelsius, 5, 7);
        Assert.DoesNotContain("dew", dry.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void AtAltitude_OutsideTheTroposphere_IsRefused()
    {
        Refused(() => AirPressure.AtAltitude(Length.FromKilometers(12)), "altitude", "12000 m", "from -5000 to 11000 m");
        Assert.InRange(AirPressure.AtAltitude(Length.FromMeters(-430)).Value.Kilopascals, 106, 107);
        Assert.InRange(AirPressure.AtAltitude(Length.FromMeters(8849)).Value.Kilopascals, 31, 32);
    }

    [Fact]
    public void VeryHighAltitude_WetBulb_StaysInOrder()
    {
        MoistAir summit = MoistAir.FromRelativeHumidity(C(-20), RelativeHumidity.FromPercent(30), AirPressure.AtAltitude(Length.FromMeters(8849)).Value);
        Assert.InRange(summit.WetBulb().DegreesCelsius, summit.DewPoint().DegreesCelsius, -20);
        MoistAir boiling = MoistAir.FromMixingRatio(C(90), Ratio.FromDecimalFractions(2), Pressure.FromKilopascals(60), SaturationVapourPressure.HylandWexler);
        Assert.InRange(boiling.WetBulb(Psychrometer.AdiabaticSaturation).DegreesCelsius, boiling.DewPoint().DegreesCelsius, 90);
    }

    [Theory]
    [InlineData(-21, 50, "temperature", "from -20 to 50 °C")]
    [InlineData(51, 50, "temperature", "from -20 to 50 °C")]
    [InlineData(20, 4, "relativeHumidity", "from 5 to 99 %")]
    [InlineData(20, 99.5, "relativeHumidity", "from 5 to 99 %")]
    public void FittedWetBulb_OutsideTheFit_IsRefused(double celsius, double percent, string parameter, string range) => Refused(
        () => Humidity.FittedWetBulbAt(C(celsius), RelativeHumidity.FromPercent(percent)), parameter, "", range);

    [Fact]
    public void FromKey_EveryMethod_IsFoundAndAnotherRefused()
    {
        Assert.All(SaturationVapourPressure.All, one => Assert.Same(one, SaturationVapourPressure.FromKey(one.Evidence.Key)));
        Assert.All(Psychrometer.All, one => Assert.Same(one, Psychrometer.FromKey(one.Evidence.Key)));
        Assert.All(AirPressureMethod.All, one => Assert.Same(one, AirPressureMethod.FromKey(one.Evidence.Key)));
        Assert.Contains("saturation.wmo", Assert.Throws<ArgumentException>(() => SaturationVapourPressure.FromKey("fog")).Message, StringComparison.Ordinal);
        Assert.Contains("psychrometer.natural", Assert.Throws<ArgumentException>(() => Psychrometer.FromKey("fog")).Message, StringComparison.Ordinal);
        Assert.Contains("air-pressure.fao", Assert.Throws<ArgumentException>(() => AirPressureMethod.FromKey("fog")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ToString_OnACommaMachine_IsInvariantAndOtherCulturesOnRequest()
    {
        using CultureScope german = new("de-DE");
        MoistAir air = MoistAir.FromRelativeHumidity(C(20.5), RelativeHumidity.FromPercent(62.5), Moist.SeaLevel);

        Assert.StartsWith("20.5 °C, relative humidity 62.5 %, air pressure 101 kPa; saturation over water by WMO [", air.ToString(), StringComparison.Ordinal);
        Assert.StartsWith("68.9 °F, relative humidity 62.5 %, air pressure 29.9 inHg", air.ToString("U", null), StringComparison.Ordinal);
        Assert.StartsWith("20,5 °C", air.ToString("M", System.Globalization.CultureInfo.GetCultureInfo("de-DE")), StringComparison.Ordinal);
        Assert.Throws<FormatException>(() => air.ToString("X", null));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Quantities_NotANumber_AreRefusedAtTheDoor(double number) =>
        Assert.ThrowsAny<ArgumentException>(() => MoistAir.FromRelativeHumidity(new Temperature(number, TemperatureUnit.DegreeCelsius), RelativeHumidity.FromPercent(50), Moist.SeaLevel));

    /// <summary>The gas law with the gas constant of CODATA 2018, 8.314462618 J/(mol·K), and water of 18.0153 g/mol.</summary>
    [Fact]
    public void AbsoluteHumidity_OfMoistAir_IsThatOfTheGasLaw()
    {
        MoistAir air = MoistAir.FromRelativeHumidity(C(20), RelativeHumidity.FromPercent(50), Moist.SeaLevel);
        double expected = air.VapourPressure.Pascals * 18.0153 / (8.314462618 * 293.15);

        Assert.Equal(expected, air.AbsoluteHumidity.GramsPerCubicMeter, 2e-4 * expected);
    }

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static void Refused(Func<object?> call, string parameter, string value, string range)
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() => { _ = call(); });
        Assert.Equal(parameter, refusal.ParamName);
        Assert.Contains(value, refusal.Message, StringComparison.Ordinal);
        Assert.Contains(range, refusal.Message, StringComparison.Ordinal);
    }
}
