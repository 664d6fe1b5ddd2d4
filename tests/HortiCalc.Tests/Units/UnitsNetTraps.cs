using System.Globalization;
using System.Text.Json;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Units;

/// <summary>What UnitsNet 5 does that a caller would not expect, each beside what this library does instead.</summary>
public class UnitsNetTraps
{
    private static readonly Method Any = new("any", "any method", Source.CommonPractice("any", "any"), new Domain(""));

    [Fact]
    public void ToleranceOfATemperature_IsConvertedWithItsOffset_OursIsADifference()
    {
        Temperature one = Temperature.FromDegreesCelsius(20);
        Temperature other = Temperature.FromDegreesCelsius(20.5);
        Assert.ThrowsAny<ArgumentException>(() => one.Equals(other, Temperature.FromKelvins(1)));

        Assert.True(Math.Abs(Boundary.Celsius(one) - Boundary.Celsius(other)) <= Boundary.CelsiusDegrees(TemperatureDelta.FromKelvins(1)));
    }

    [Fact]
    public void TemperaturePlusDifference_ComesBackInKelvin_OursInCelsius()
    {
        Temperature sum = Temperature.FromDegreesCelsius(20) + TemperatureDelta.FromDegreesCelsius(10);
        Assert.Equal(TemperatureUnit.Kelvin, sum.Unit);

        Assert.Equal(TemperatureUnit.DegreeCelsius, HouseUnits.Normalise(sum).Unit);
        Assert.StartsWith("30 °C", new Estimate<Temperature>(sum, Any).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void TenCelsiusInFahrenheit_IsNotQuiteFifty_OursIs()
    {
        Assert.NotEqual(50, Temperature.FromDegreesCelsius(10).DegreesFahrenheit);

        Assert.Equal(50, Boundary.FahrenheitFromCelsius(10));
        Assert.Equal(10, Boundary.Celsius(Temperature.FromDegreesFahrenheit(50)));
    }

    [Fact]
    public void Equality_ComparesUnits_OursComparesValues()
    {
        Assert.False(Length.FromInches(1).Equals((object)Length.FromMillimeters(25.4)));

        Assert.Equal(new Estimate<Length>(Length.FromInches(1), Any), new Estimate<Length>(Length.FromMillimeters(25.4), Any));
    }

    [Fact]
    public void NotANumber_IsRefusedWithoutItsName_OursNamesIt()
    {
        Assert.Equal("val", Assert.Throws<ArgumentException>(() => Mass.FromKilograms(double.NaN)).ParamName);
        Assert.True(double.IsInfinity(Length.FromMeters(1) / Length.Zero));

        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => AreaDensity.FromKilogramsPerHectare(double.NaN));
        Assert.Equal("value", refused.ParamName);
        Assert.Contains("NaN kg/ha", refused.Message, StringComparison.Ordinal);
        Assert.Throws<DivideByZeroException>(() => ThermalTime.FromCelsiusDays(1) / ThermalTime.Zero);
    }

    [Fact]
    public void FiveM_AsADuration_IsMinutes_OursIsRefused()
    {
        Assert.Equal(300, Duration.Parse("5 m", CultureInfo.InvariantCulture).Seconds);

        JsonException refused = Assert.Throws<JsonException>(() => Read<Duration>("""{"value":5,"unit":"m"}"""));
        Assert.Contains("unknown unit \"m\"; known: d, h, min", refused.Message, StringComparison.Ordinal);
        Assert.Equal(Duration.FromMinutes(5), Read<Duration>("""{"value":5,"unit":"min"}"""));
    }

    [Fact]
    public void PintAndTeaspoon_WithoutCountry_AreGuessed_OursAskForIt()
    {
        Assert.Equal(VolumeUnit.ImperialPint, Volume.Parse("1 pt", CultureInfo.InvariantCulture).Unit);
        Assert.Equal(VolumeUnit.MetricTeaspoon, Volume.Parse("1 tsp", CultureInfo.InvariantCulture).Unit);

        Assert.Contains("unknown unit \"pt\"", Assert.Throws<JsonException>(() => Read<Volume>("""{"value":1,"unit":"pt"}""")).Message, StringComparison.Ordinal);
        Assert.Equal(VolumeUnit.UsPint, Read<Volume>("""{"value":1,"unit":"pt (US)"}""").Unit);
    }

    [Fact]
    public void Kilocubicmetre_IsAThousandCubicMetres_NotACubicKilometre()
    {
        Assert.Equal(1000, Boundary.CubicMetres(new Volume(1, VolumeUnit.KilocubicMeter)));
        Assert.Equal(1e9, Boundary.CubicMetres(new Volume(1, VolumeUnit.CubicKilometer)), 1e-3);
    }

    [Fact]
    public void MillicubicmetrePerKilogram_IsALitrePerKilogram_ThoughItPrintsCubicMillimetres()
    {
        SpecificVolume one = new(1, SpecificVolumeUnit.MillicubicMeterPerKilogram);
        Assert.Equal(0.001, one.CubicMetersPerKilogram);
        Assert.Equal("mm³/kg", SpecificVolume.GetAbbreviation(SpecificVolumeUnit.MillicubicMeterPerKilogram, CultureInfo.InvariantCulture));

        Assert.Equal(0.001, HouseUnits.Normalise(one).Value);
    }

    [Fact]
    public void Tonne_ShortTonAndLongTon_AreThreeMasses()
    {
        Assert.Equal(1000, Boundary.Kilograms(Mass.FromTonnes(1)));
        Assert.Equal(907.18474, Boundary.Kilograms(Mass.FromShortTons(1)));
        Assert.Equal(1016.0469088, Boundary.Kilograms(Mass.FromLongTons(1)));
        Assert.Equal(5000, Mass.Parse("5 T", CultureInfo.InvariantCulture).Kilograms);

        Assert.Equal(2.2417, AreaDensity.FromShortTonsPerAcre(1).TonnesPerHectare, 5e-5);
        Assert.Contains("unknown unit \"ton\"", Assert.Throws<JsonException>(() => Read<Mass>("""{"value":1,"unit":"ton"}""")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_FollowsTheMachine_OursFollowsTheCaller()
    {
        using CultureScope german = new("de-DE");
        object length = Length.FromMeters(1.5);
        Assert.Equal("1,5 m", length.ToString());

        Assert.Equal("1.5 m", HortiCalc.Display.QuantityText.Format(Length.FromMeters(1.5), MeasurementSystem.Metric, null));
    }

    private static T Read<T>(string json) => JsonSerializer.Deserialize<T>(json, HortiCalcJsonContext.Default.Options)!;
}
