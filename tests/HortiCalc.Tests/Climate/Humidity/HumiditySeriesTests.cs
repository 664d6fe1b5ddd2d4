using System.Runtime.Intrinsics;
using HortiCalc.Climate;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

public class HumiditySeriesTests
{
    private const double PressureTolerance = 1e-12;
    private const double CelsiusTolerance = 1e-10;

    private static readonly Random Noise = new(1871);
    private static readonly double[] Warmths = [.. Enumerable.Range(0, 1003).Select(_ => 0.5 + 49 * Noise.NextDouble())];
    private static readonly double[] Shares = [.. Enumerable.Range(0, 1003).Select(_ => 15 + 85 * Noise.NextDouble())];

    public static TheoryData<string> Formulas() => [.. SaturationVapourPressure.All.Select(formula => formula.Evidence.Key)];

    [Theory]
    [MemberData(nameof(Formulas))]
    public void Series_EveryFormula_AgreesWithOneByOne(string key)
    {
        SaturationVapourPressure formula = SaturationVapourPressure.FromKey(key);
        double[] saturation = new double[Warmths.Length];
        double[] deficits = new double[Warmths.Length];
        Humidity.SaturationVapourPressures(Warmths, TemperatureUnit.DegreeCelsius, formula, PressureUnit.Kilopascal, saturation);
        Humidity.VapourPressureDeficits(Warmths, TemperatureUnit.DegreeCelsius, Shares, formula, PressureUnit.Kilopascal, deficits);

        for (int place = 0; place < Warmths.Length; place++)
        {
            double alone = formula.OverWater(Temperature.FromDegreesCelsius(Warmths[place])).Kilopascals;
            Assert.InRange(saturation[place] / alone, 1 - PressureTolerance, 1 + PressureTolerance);
            Assert.Equal(alone * (1 - Shares[place] / 100), deficits[place], alone * PressureTolerance);
        }
    }

    [Theory]
    [InlineData("saturation.wmo")]
    [InlineData("saturation.fao")]
    public void DewPointsAndRelativeHumidities_AreInversesAndAgreeWithOneByOne(string key)
    {
        SaturationVapourPressure formula = SaturationVapourPressure.FromKey(key);
        double[] dewPoints = new double[Warmths.Length];
        double[] back = new double[Warmths.Length];
        Humidity.DewPoints(Warmths, TemperatureUnit.DegreeCelsius, Shares, formula, dewPoints);
        Humidity.RelativeHumidities(Warmths, dewPoints, TemperatureUnit.DegreeCelsius, formula, back);

        for (int place = 0; place < Warmths.Length; place++)
        {
            MoistAir air = MoistAir.FromRelativeHumidity(
                Temperature.FromDegreesCelsius(Warmths[place]), RelativeHumidity.FromPercent(Shares[place]), Moist.SeaLevel, formula);
            Assert.Equal(air.DewPoint().DegreesCelsius, dewPoints[place], CelsiusTolerance);
            Assert.Equal(Shares[place], back[place], 1e-9);
        }
    }

    [Fact]
    public void DewPoints_ByNewton_AgreeWithOneByOne()
    {
        double[] warm = [.. Warmths.Select(celsius => 25 + celsius)];
        double[] moist = [.. Shares.Select(percent => 40 + percent * 0.6)];
        double[] dewPoints = new double[warm.Length];
        Humidity.DewPoints(warm, TemperatureUnit.DegreeCelsius, moist, SaturationVapourPressure.HylandWexler, dewPoints);

        for (int place = 0; place < warm.Length; place++)
        {
            Pressure vapour = SaturationVapourPressure.HylandWexler.OverWater(Temperature.FromDegreesCelsius(warm[place])) * (moist[place] / 100);
            Assert.Equal(SaturationVapourPressure.HylandWexler.DewPoint(vapour).DegreesCelsius, dewPoints[place], CelsiusTolerance);
        }
    }

    [Fact]
    public void Lanes_OfEveryWidth_AgreeWithOneLane()
    {
        MagnusFormula magnus = new(0.6112, 17.62, 243.12, 0);
        HumidityScale scale = new(1, 0, 1) { Lowest = -45, Highest = 60 };
        foreach (HumiditySeries series in Enum.GetValues<HumiditySeries>())
        {
            double[] second = series == HumiditySeries.RelativeHumidity ? [.. Warmths.Select(celsius => celsius - 3)] : Shares;
            double[] one = new double[Warmths.Length];
            Assert.True(HumidityKernels.Run<SingleLane, MagnusFormula>(series, magnus, Warmths, second, scale, one));
            AssertSame<Lanes128>(series, second, one);
            AssertSame<Lanes256>(series, second, one);
            AssertSame<Lanes512>(series, second, one);
        }

        void AssertSame<TLanes>(HumiditySeries series, double[] second, double[] one)
            where TLanes : struct, IExponentialLanes<TLanes>
        {
            double[] many = new double[Warmths.Length];
            Assert.True(HumidityKernels.Run<TLanes, MagnusFormula>(series, magnus, Warmths, second, scale, many));
            for (int place = 0; place < one.Length; place++)
                Assert.Equal(one[place], many[place], 1e-11 + 1e-12 * Math.Abs(one[place]));
        }
    }

    [Fact]
    public void Exponential_OfEveryWidth_IsWithinFourUnitsOfTheLastPlace()
    {
        for (double power = -20; power < 20; power += 0.0137)
        {
            double exact = Math.Exp(power);
            double logarithm = Math.Log(exact);
            Assert.InRange(Vector128.Exp(Vector128.Create(power))[0] / exact, 1 - 1e-15, 1 + 1e-15);
            Assert.InRange(Vector256.Exp(Vector256.Create(power))[1] / exact, 1 - 1e-15, 1 + 1e-15);
            Assert.InRange(Vector512.Exp(Vector512.Create(power))[7] / exact, 1 - 1e-15, 1 + 1e-15);
            Assert.Equal(logarithm, Vector128.Log(Vector128.Create(exact))[0], 1e-15 * (1 + Math.Abs(logarithm)));
            Assert.Equal(logarithm, Vector512.Log(Vector512.Create(exact))[5], 1e-15 * (1 + Math.Abs(logarithm)));
        }
    }

    [Fact]
    public void Series_HoweverSplit_GivesTheSameBits()
    {
        double[] whole = new double[Warmths.Length];
        double[] parts = new double[Warmths.Length];
        Humidity.DewPoints(Warmths, TemperatureUnit.DegreeCelsius, Shares, SaturationVapourPressure.Wmo, whole);
        for (int place = 0; place < parts.Length;)
        {
            int count = Math.Min(1 + place % 13, parts.Length - place);
            Humidity.DewPoints(
                Warmths.AsSpan(place, count), TemperatureUnit.DegreeCelsius, Shares.AsSpan(place, count), SaturationVapourPressure.Wmo, parts.AsSpan(place, count));
            place += count;
        }

        Assert.Equal(whole, parts);
    }

    [Fact]
    public void Series_OtherUnits_AreTheSameAir()
    {
        double[] celsius = new double[Warmths.Length];
        double[] fahrenheit = new double[Warmths.Length];
        double[] kelvin = new double[Warmths.Length];
        Humidity.DewPoints(Warmths, TemperatureUnit.DegreeCelsius, Shares, SaturationVapourPressure.Wmo, celsius);
        Humidity.DewPoints([.. Warmths.Select(one => one * 1.8 + 32)], TemperatureUnit.DegreeFahrenheit, Shares, SaturationVapourPressure.Wmo, fahrenheit);
        Humidity.DewPoints([.. Warmths.Select(one => one + 273.15)], TemperatureUnit.Kelvin, Shares, SaturationVapourPressure.Wmo, kelvin);
        for (int place = 0; place < celsius.Length; place++)
        {
            Assert.Equal(celsius[place], (fahrenheit[place] - 32) / 1.8, 1e-9);
            Assert.Equal(celsius[place], kelvin[place] - 273.15, 1e-9);
        }
    }

    [Theory]
    [InlineData(PressureUnit.Pascal)]
    [InlineData(PressureUnit.Hectopascal)]
    [InlineData(PressureUnit.Millibar)]
    [InlineData(PressureUnit.Kilopascal)]
    [InlineData(PressureUnit.MillimeterOfMercury)]
    [InlineData(PressureUnit.InchOfMercury)]
    [InlineData(PressureUnit.PoundForcePerSquareInch)]
    public void SaturationVapourPressures_EveryUnitOfPressure_IsTheSamePressure(PressureUnit unit)
    {
        double[] pressures = new double[1];
        Humidity.SaturationVapourPressures([20], TemperatureUnit.DegreeCelsius, SaturationVapourPressure.Fao, unit, pressures);

        Assert.Equal(SaturationVapourPressure.Fao.OverWater(Temperature.FromDegreesCelsius(20)).Kilopascals, Boundary.Kilopascals(new Pressure(pressures[0], unit)), 1e-12);
    }

    [Fact]
    public void Series_MissingNumbers_StayMissingAndLeaveTheOthers()
    {
        double[] pressures = new double[9];
        double[] temperatures = [10, double.NaN, 20, 20, 20, 20, 20, 20, double.NaN];
        Humidity.VapourPressureDeficits(
            temperatures, TemperatureUnit.DegreeCelsius, [50, 50, double.NaN, 50, 0, 100, 50, 50, 50], SaturationVapourPressure.Fao, PressureUnit.Kilopascal, pressures);

        Assert.Equal([false, true, true, false, false, false, false, false, true], pressures.Select(double.IsNaN));
        Assert.Equal(0, pressures[5]);
        Assert.Equal(2 * pressures[3], pressures[4], 1e-12);
        Humidity.SaturationVapourPressures([], TemperatureUnit.DegreeCelsius, SaturationVapourPressure.Fao, PressureUnit.Kilopascal, []);
    }

    [Fact]
    public void Series_InPlace_IsTheSame()
    {
        double[] expected = new double[Warmths.Length];
        Humidity.DewPoints(Warmths, TemperatureUnit.DegreeCelsius, Shares, SaturationVapourPressure.Wmo, expected);
        double[] place = [.. Warmths];
        Humidity.DewPoints(place, TemperatureUnit.DegreeCelsius, Shares, SaturationVapourPressure.Wmo, place);

        Assert.Equal(expected, place);
    }

    [Fact]
    public void Series_Allocates_Nothing()
    {
        double[] destination = new double[Warmths.Length];
        Humidity.DewPoints(Warmths, TemperatureUnit.DegreeCelsius, Shares, SaturationVapourPressure.Wmo, destination);
        MoistAir air = MoistAir.FromRelativeHumidity(Temperature.FromDegreesCelsius(20), RelativeHumidity.FromPercent(50), Moist.SeaLevel);
        _ = air.WetBulb();
        long before = GC.GetAllocatedBytesForCurrentThread();
        Humidity.DewPoints(Warmths, TemperatureUnit.DegreeCelsius, Shares, SaturationVapourPressure.Wmo, destination);
        Humidity.VapourPressureDeficits(Warmths, TemperatureUnit.DegreeCelsius, Shares, SaturationVapourPressure.Wmo, PressureUnit.Kilopascal, destination);
        _ = air.WetBulb();

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Fact]
    public void Series_OutOfRange_IsRefusedByPlaceWithTheRange()
    {
        double[] two = new double[2];
        Refused(
            () => Humidity.SaturationVapourPressures([20, 61], TemperatureUnit.DegreeCelsius, SaturationVapourPressure.Wmo, PressureUnit.Pascal, two),
            "temperatures[1] was 61 °C; allowed: from -45 to 60 °C");
        Refused(
            () => Humidity.SaturationVapourPressures([20, 141], TemperatureUnit.DegreeFahrenheit, SaturationVapourPressure.Wmo, PressureUnit.Pascal, two),
            "temperatures[1] was 141 °F; allowed: from -49 to 140 °F");
        Refused(
            () => Humidity.VapourPressureDeficits([20, 20], TemperatureUnit.DegreeCelsius, [50, 100.1], SaturationVapourPressure.Wmo, PressureUnit.Pascal, two),
            "relativeHumidities[1] was 100.1 %; allowed: from 0 to 100 %");
        Refused(
            () => Humidity.VapourPressureDeficits([20, 20], TemperatureUnit.DegreeCelsius, [-1e-12, 50], SaturationVapourPressure.Wmo, PressureUnit.Pascal, two),
            "relativeHumidities[0] was -1E-12 %; allowed: from 0 to 100 %");
        Refused(
            () => Humidity.DewPoints([20, 20], TemperatureUnit.DegreeCelsius, [50, 0], SaturationVapourPressure.Wmo, two),
            "relativeHumidities[1] was 0 %; allowed: above 0, up to 100 %");
        Refused(
            () => Humidity.DewPoints([20, 20], TemperatureUnit.DegreeCelsius, [50, 0.1], SaturationVapourPressure.Wmo, two),
            "relativeHumidities[1] was 0.1 %; allowed: such that the dew point lies from -45 to 60 °C");
        Refused(
            () => Humidity.RelativeHumidities([20, 20], [10, 21], TemperatureUnit.DegreeCelsius, SaturationVapourPressure.Wmo, two),
            "dewPoints[1] was 21 °C; allowed: not above the air's 20 °C");
        Refused(
            () => Humidity.SaturationVapourPressures([20, 20], TemperatureUnit.DegreeCelsius, SaturationVapourPressure.Wmo, PressureUnit.MeterOfHead, two),
            "pressureUnit was MeterOfHead; allowed: Pascal");
        Refused(
            () => Humidity.SaturationVapourPressures([20, 20], TemperatureUnit.DegreeRankine, SaturationVapourPressure.Wmo, PressureUnit.Pascal, two),
            "unit was DegreeRankine");
        Assert.Contains(
            "destination held 2; allowed: 1",
            Assert.Throws<ArgumentException>(
                () => Humidity.SaturationVapourPressures([20], TemperatureUnit.DegreeCelsius, SaturationVapourPressure.Wmo, PressureUnit.Pascal, two)).Message,
            StringComparison.Ordinal);
        double[] place = [20, 61];
        Refused(
            () => Humidity.SaturationVapourPressures(place, TemperatureUnit.DegreeCelsius, SaturationVapourPressure.Wmo, PressureUnit.Kilopascal, place),
            "temperatures held a value out of range; allowed: from -45 to 60 °C");
    }

    private static void Refused(Action call, string message) =>
        Assert.StartsWith(message, Assert.Throws<ArgumentOutOfRangeException>(call).Message, StringComparison.Ordinal);
}
