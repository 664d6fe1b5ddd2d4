using FsCheck.Xunit;
using HortiCalc.Climate;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

public class HumidityProperties
{
    private const double Billionth = 1e-9;

    [Property]
    public void DewPoint_OfSaturation_IsTheTemperature(ushort temperature)
    {
        Temperature air = Moist.Warm(temperature);
        foreach (SaturationVapourPressure formula in SaturationVapourPressure.All)
            Assert.Equal(air.DegreesCelsius, formula.DewPoint(formula.OverWater(air)).DegreesCelsius, Billionth);
    }

    [Property]
    public void FrostPoint_OfSaturationOverIce_IsTheTemperature(ushort temperature)
    {
        Temperature air = Moist.Cold(temperature);
        foreach (SaturationVapourPressure formula in SaturationVapourPressure.All.Where(one => one.IceEvidence is not null))
            Assert.Equal(air.DegreesCelsius, formula.FrostPoint(formula.OverIce(air)).DegreesCelsius, Billionth);
    }

    [Property]
    public void OverWater_WarmerAir_HoldsMore(ushort temperature, ushort further)
    {
        (Temperature cool, Temperature warm) = Ordered(Moist.Warm(temperature), Moist.Warm(further));
        foreach (SaturationVapourPressure formula in SaturationVapourPressure.All)
            Assert.True(formula.OverWater(cool).Kilopascals <= formula.OverWater(warm).Kilopascals);
    }

    [Property]
    public void OverWater_AllFormulas_AgreeWithinThreePerMille(ushort temperature)
    {
        Temperature air = Moist.Warm(temperature);
        double reference = SaturationVapourPressure.HylandWexler.OverWater(air).Kilopascals;
        foreach (SaturationVapourPressure formula in SaturationVapourPressure.All)
            Assert.InRange(formula.OverWater(air).Kilopascals / reference, 0.997, 1.003);
    }

    [Property]
    public void OverIce_AllFormulas_AgreeWithinThreePerMilleAndLieBelowWater(ushort temperature)
    {
        Temperature air = Moist.Cold(temperature);
        double reference = SaturationVapourPressure.HylandWexler.OverIce(air).Kilopascals;
        Assert.InRange(SaturationVapourPressure.Wmo.OverIce(air).Kilopascals / reference, 0.997, 1.003);
        Assert.InRange(SaturationVapourPressure.Buck.OverIce(air).Kilopascals / reference, 0.997, 1.003);
        Assert.True(SaturationVapourPressure.Wmo.OverIce(air).Kilopascals < SaturationVapourPressure.Wmo.OverWater(air).Kilopascals);
    }

    [Property]
    public void OverWaterPerCelsius_IsTheSlopeOfTheCurve(ushort temperature)
    {
        double celsius = Math.Clamp(Moist.Warm(temperature).DegreesCelsius, 0.6, 49.9);
        foreach (SaturationVapourPressure formula in SaturationVapourPressure.All)
        {
            double rise = formula.OverWater(Temperature.FromDegreesCelsius(celsius + 1e-3)).Kilopascals
                - formula.OverWater(Temperature.FromDegreesCelsius(celsius - 1e-3)).Kilopascals;
            Assert.Equal(rise / 2e-3, formula.OverWaterPerCelsius(Temperature.FromDegreesCelsius(celsius)).Kilopascals, 1e-7);
        }
    }

    [Property]
    public void Points_OfAnyAir_AreInOrder(ushort temperature, ushort share, ushort pressure)
    {
        MoistAir air = Moist.Air(temperature, share, pressure);
        double dew = air.DewPoint().DegreesCelsius;
        foreach (Psychrometer psychrometer in Psychrometer.All)
            Assert.InRange(air.WetBulb(psychrometer).DegreesCelsius, dew - Billionth, air.Temperature.DegreesCelsius + Billionth);
    }

    [Property]
    public void Points_OfIcyAir_AreInOrder(ushort temperature, ushort share, ushort pressure)
    {
        MoistAir air = Moist.Icy(temperature, share, pressure);
        double frost = air.FrostPoint()!.Value.DegreesCelsius;
        foreach (Psychrometer psychrometer in Psychrometer.All.Where(one => one.IceEvidence is not null))
            Assert.InRange(air.IceBulb(psychrometer)!.Value.DegreesCelsius, frost - Billionth, air.Temperature.DegreesCelsius + Billionth);
    }

    [Property]
    public void FrostPoint_BelowFreezing_LiesAboveTheDewPoint(ushort temperature, ushort share, ushort pressure)
    {
        MoistAir air = Moist.Air(temperature, share, pressure);
        Temperature dew = air.DewPoint();
        if (air.FrostPoint() is Temperature frost)
            Assert.InRange(frost.DegreesCelsius, dew.DegreesCelsius - Billionth, 0);
        else
            Assert.True(dew.DegreesCelsius > -Billionth);
    }

    [Property]
    public void Everything_OfMoisterAir_IsHigherButTheDeficit(ushort temperature, ushort share, ushort pressure)
    {
        Temperature warmth = Moist.Any(temperature);
        double percent = Math.Min(99, Moist.Share(share).Percent);
        MoistAir dry = MoistAir.FromRelativeHumidity(warmth, RelativeHumidity.FromPercent(percent), Moist.Barometer(pressure));
        MoistAir moist = MoistAir.FromRelativeHumidity(warmth, RelativeHumidity.FromPercent(percent + 1), Moist.Barometer(pressure));

        Assert.True(dry.DewPoint().DegreesCelsius < moist.DewPoint().DegreesCelsius);
        Assert.True(dry.MixingRatio.DecimalFractions < moist.MixingRatio.DecimalFractions);
        Assert.True(dry.SpecificHumidity.DecimalFractions < moist.SpecificHumidity.DecimalFractions);
        Assert.True(dry.AbsoluteHumidity.GramsPerCubicMeter < moist.AbsoluteHumidity.GramsPerCubicMeter);
        Assert.True(dry.VapourPressureDeficit().Kilopascals > moist.VapourPressureDeficit().Kilopascals);
        foreach (Psychrometer psychrometer in Psychrometer.All)
            Assert.True(dry.WetBulb(psychrometer).DegreesCelsius < moist.WetBulb(psychrometer).DegreesCelsius);
    }

    [Property]
    public void From_EveryMeasureOfAnAir_IsTheSameAir(ushort temperature, ushort share, ushort pressure)
    {
        MoistAir air = Moist.Air(temperature, share, pressure);
        Temperature warmth = air.Temperature;
        Same(air, MoistAir.FromRelativeHumidity(warmth, air.RelativeHumidity(), air.AirPressure));
        Same(air, MoistAir.FromDewPoint(warmth, air.DewPoint(), air.AirPressure));
        Same(air, MoistAir.FromMixingRatio(warmth, air.MixingRatio, air.AirPressure));
        Same(air, MoistAir.FromSpecificHumidity(warmth, air.SpecificHumidity, air.AirPressure));
        Same(air, MoistAir.FromAbsoluteHumidity(warmth, air.AbsoluteHumidity, air.AirPressure));
        Same(air, new MoistAir(warmth, air.VapourPressure, air.AirPressure, air.Saturation));
        foreach (Psychrometer psychrometer in Psychrometer.All)
            Same(air, MoistAir.FromWetBulb(warmth, air.WetBulb(psychrometer), air.AirPressure, psychrometer));
    }

    [Property]
    public void From_EveryMeasureOfAnIcyAir_IsTheSameAir(ushort temperature, ushort share, ushort pressure)
    {
        MoistAir air = Moist.Icy(temperature, share, pressure);
        Same(air, MoistAir.FromRelativeHumidityOverIce(air.Temperature, air.RelativeHumidityOverIce(), air.AirPressure));
        Same(air, MoistAir.FromFrostPoint(air.Temperature, air.FrostPoint()!.Value, air.AirPressure));
        foreach (Psychrometer psychrometer in Psychrometer.All.Where(one => one.IceEvidence is not null))
            Same(air, MoistAir.FromIceBulb(air.Temperature, air.IceBulb(psychrometer)!.Value, air.AirPressure, psychrometer));
    }

    [Property]
    public void Points_OfSaturatedAir_AreTheTemperature(ushort temperature, ushort pressure)
    {
        Temperature warmth = Moist.Any(temperature);
        MoistAir fog = MoistAir.FromRelativeHumidity(warmth, RelativeHumidity.FromPercent(100), Moist.Barometer(pressure));

        Assert.Equal(warmth.DegreesCelsius, fog.DewPoint().DegreesCelsius, Billionth);
        Assert.Equal(0, fog.VapourPressureDeficit().Kilopascals, Billionth);
        foreach (Psychrometer psychrometer in Psychrometer.All)
            Assert.Equal(warmth.DegreesCelsius, fog.WetBulb(psychrometer).DegreesCelsius, Billionth);
    }

    [Property]
    public void FromWetBulb_LessAiredPsychrometer_MeansDrierAir(ushort temperature, byte depression)
    {
        Temperature dry = Temperature.FromDegreesCelsius(20 + 25.0 * temperature / ushort.MaxValue);
        Temperature wet = Temperature.FromDegreesCelsius(dry.DegreesCelsius - 0.1 - 3.0 * depression / byte.MaxValue);
        double[] humidities =
        [
            .. ((Psychrometer[])[Psychrometer.Ventilated, Psychrometer.NaturallyVentilated, Psychrometer.Unventilated])
                .Select(psychrometer => MoistAir.FromWetBulb(dry, wet, Moist.SeaLevel, psychrometer).RelativeHumidity().Percent),
        ];

        Assert.True(humidities[0] > humidities[1] && humidities[1] > humidities[2]);
    }

    [Property]
    public void WetBulb_ThinnerAir_CoolsFurther(ushort temperature, ushort share)
    {
        RelativeHumidity humidity = RelativeHumidity.FromPercent(Math.Min(95, Moist.Share(share).Percent));
        MoistAir low = MoistAir.FromRelativeHumidity(Moist.Any(temperature), humidity, Moist.SeaLevel);
        MoistAir high = MoistAir.FromRelativeHumidity(Moist.Any(temperature), humidity, Pressure.FromKilopascals(62));

        Assert.Equal(low.DewPoint().DegreesCelsius, high.DewPoint().DegreesCelsius, Billionth);
        Assert.True(high.WetBulb().DegreesCelsius < low.WetBulb().DegreesCelsius);
    }

    [Property]
    public void WetBulb_VentilatedAndThermodynamic_AreWithinHalfADegree(ushort temperature, ushort share)
    {
        MoistAir air = MoistAir.FromRelativeHumidity(Moist.Warm(temperature), Moist.Share(share), Moist.SeaLevel);

        Assert.Equal(air.WetBulb(Psychrometer.AdiabaticSaturation).DegreesCelsius, air.WetBulb().DegreesCelsius, 0.5);
    }

    [Property]
    public void FittedWetBulb_WhereItIsNotColdAndDry_HoldsTheSolvedOne(ushort temperature, ushort share)
    {
        Temperature warmth = Temperature.FromDegreesCelsius(15 + 35.0 * temperature / ushort.MaxValue);
        RelativeHumidity humidity = RelativeHumidity.FromPercent(Math.Clamp(Moist.Share(share).Percent, 12, 99));
        double solved = MoistAir.FromRelativeHumidity(warmth, humidity, Moist.SeaLevel, SaturationVapourPressure.HylandWexler)
            .WetBulb(Psychrometer.AdiabaticSaturation).DegreesCelsius;

        HortiCalc.Evidence.EstimateRange<Temperature> range = Humidity.FittedWetBulbAt(warmth, humidity).Range!;
        Assert.InRange(solved, range.Low.DegreesCelsius - 0.05, range.High.DegreesCelsius + 0.05);
    }

    [Property]
    public void VapourPressureDeficitOfLeaf_LeafAsWarmAsTheAir_IsThatOfTheAir(ushort temperature, ushort share, ushort pressure, byte cooler)
    {
        MoistAir air = Moist.Air(temperature, share, pressure);
        Temperature leaf = Temperature.FromDegreesCelsius(air.Temperature.DegreesCelsius - cooler / 100.0 - 0.01);

        Assert.Equal(air.VapourPressureDeficit().Kilopascals, air.VapourPressureDeficitOfLeaf(air.Temperature).Kilopascals, 1e-12);
        Assert.Equal(0, air.VapourPressureDeficitOfLeaf(air.DewPoint()).Kilopascals, 1e-12);
        Assert.True(air.VapourPressureDeficitOfLeaf(leaf).Kilopascals < air.VapourPressureDeficit().Kilopascals);
    }

    [Property]
    public void FromRelativeHumidity_UsUnits_IsTheSameAir(ushort temperature, ushort share, ushort pressure)
    {
        MoistAir air = Moist.Air(temperature, share, pressure);
        MoistAir us = MoistAir.FromRelativeHumidity(
            Temperature.FromDegreesFahrenheit(air.Temperature.DegreesFahrenheit), Moist.Share(share), Pressure.FromInchesOfMercury(air.AirPressure.Kilopascals / Boundary.KilopascalsPerInchOfMercury));

        Same(air, us);
        Assert.Equal(air.WetBulb().DegreesFahrenheit, us.WetBulb().DegreesFahrenheit, 1e-8);
    }

    [Property]
    public void AtAltitude_Higher_IsThinnerByEveryMethod(short altitude, byte further)
    {
        double metres = altitude / 8.0;
        foreach (AirPressureMethod method in AirPressureMethod.All)
        {
            double low = AirPressure.AtAltitude(Length.FromMeters(metres), method).Value.Kilopascals;
            double high = AirPressure.AtAltitude(Length.FromMeters(metres + 1 + further), method).Value.Kilopascals;
            Assert.True(high < low);
        }

        Assert.Equal(
            AirPressure.AtAltitude(Length.FromMeters(metres), AirPressureMethod.Fao).Value.Kilopascals,
            AirPressure.AtAltitude(Length.FromMeters(metres)).Value.Kilopascals,
            1.5);
    }

    private static (Temperature, Temperature) Ordered(Temperature a, Temperature b) => a.DegreesCelsius <= b.DegreesCelsius ? (a, b) : (b, a);

    private static void Same(MoistAir expected, MoistAir actual)
    {
        Assert.InRange(actual.VapourPressure.Kilopascals / expected.VapourPressure.Kilopascals, 1 - Billionth, 1 + Billionth);
        Assert.Equal(expected.AirPressure.Kilopascals, actual.AirPressure.Kilopascals, Billionth);
    }
}
