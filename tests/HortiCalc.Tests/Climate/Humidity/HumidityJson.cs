using System.Text.Json;
using HortiCalc.Climate;
using HortiCalc.Display;
using HortiCalc.Json;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

public class HumidityJson
{
    [Fact]
    public void Json_AirMethodsAndEstimates_ComeBackEqual()
    {
        RoundTrip(MoistAir.FromRelativeHumidity(Temperature.FromDegreesFahrenheit(70), RelativeHumidity.FromPercent(65), Pressure.FromInchesOfMercury(29.9)));
        RoundTrip(MoistAir.FromDewPoint(
            Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(9), Pressure.FromHectopascals(950), SaturationVapourPressure.HylandWexler));
        Assert.All(SaturationVapourPressure.All, RoundTrip);
        Assert.All(Psychrometer.All, RoundTrip);
        Assert.All(AirPressureMethod.All, RoundTrip);
        RoundTrip(AirPressure.AtAltitude(Length.FromFeet(5280)));
        RoundTrip(Humidity.FittedWetBulbAt(Temperature.FromDegreesCelsius(20), RelativeHumidity.FromPercent(50)));
    }

    [Fact]
    public void Json_Air_HoldsWhatItWasMadeOfAlone()
    {
        MoistAir air = new(Temperature.FromDegreesCelsius(20), Pressure.FromKilopascals(1.25), Pressure.FromKilopascals(101), SaturationVapourPressure.Fao);

        Assert.Equal(
            """{"temperature":{"value":20,"unit":"°C"},"vapourPressure":{"value":1.25,"unit":"kPa"},"airPressure":{"value":101,"unit":"kPa"},"saturation":"saturation.fao"}""",
            JsonSerializer.Serialize(air, HortiCalcJson.Options));
    }

    [Fact]
    public void Equality_SameAirInOtherUnits_IsEqual() => Assert.Equal(
        MoistAir.FromDewPoint(Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(10), Pressure.FromKilopascals(101)),
        MoistAir.FromDewPoint(Temperature.FromDegreesFahrenheit(68), Temperature.FromDegreesFahrenheit(50), Pressure.FromHectopascals(1010)));

    [Fact]
    public void Display_Air_ShowsItsMeasuresAndSource()
    {
        MoistAir air = MoistAir.FromRelativeHumidity(Temperature.FromDegreesCelsius(24), RelativeHumidity.FromPercent(65), Pressure.FromKilopascals(101.3));
        string text = DisplayText.Plain(((IDisplayable)air).ToDisplay(TextStyle.Default));

        Assert.StartsWith("air at 24 °C, relative humidity 65 %", text, StringComparison.Ordinal);
        Assert.Contains("1.04 kPa", text, StringComparison.Ordinal);
        Assert.Contains("dew point", text, StringComparison.Ordinal);
        Assert.Contains("g/kg of dry air", text, StringComparison.Ordinal);
    }

    private static void RoundTrip<T>(T value)
    {
        string json = JsonSerializer.Serialize(value, HortiCalcJson.Options);
        Assert.Equal(value, JsonSerializer.Deserialize<T>(json, HortiCalcJson.Options));
    }
}
