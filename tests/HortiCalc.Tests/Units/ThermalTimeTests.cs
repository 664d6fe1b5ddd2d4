using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Units;

public class ThermalTimeTests
{
    [Fact]
    public void FromFahrenheitDays_IsAnInterval_WithoutTheOffsetOfTheThermometer()
    {
        Assert.Equal(1500, ThermalTime.FromFahrenheitDays(2700).CelsiusDays);
        Assert.Equal(0, ThermalTime.FromFahrenheitDays(0).CelsiusDays);
        Assert.Equal(1.8, ThermalTime.FromCelsiusDays(1).FahrenheitDays);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Factories_NotFinite_AreRefusedWithTheUnit(double value)
    {
        ArgumentOutOfRangeException celsius = Assert.Throws<ArgumentOutOfRangeException>(() => ThermalTime.FromCelsiusDays(value));
        ArgumentOutOfRangeException fahrenheit = Assert.Throws<ArgumentOutOfRangeException>(() => ThermalTime.FromFahrenheitDays(value));
        Assert.Contains("°C·d; allowed: a finite number", celsius.Message, StringComparison.Ordinal);
        Assert.Contains("°F·d; allowed: a finite number", fahrenheit.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Arithmetic_BeyondTheLargestNumber_IsRefusedRatherThanInfinite()
    {
        ThermalTime huge = ThermalTime.FromCelsiusDays(double.MaxValue);
        Assert.Throws<OverflowException>(() => huge + huge);
        Assert.Throws<OverflowException>(() => huge * 2);
        Assert.Throws<ArgumentOutOfRangeException>(() => huge * double.NaN);
    }

    [Fact]
    public void Division_ByZero_IsRefused()
    {
        ThermalTime sum = ThermalTime.FromCelsiusDays(10);
        Assert.Throws<DivideByZeroException>(() => sum / ThermalTime.Zero);
        Assert.Throws<DivideByZeroException>(() => sum / TemperatureDelta.Zero);
        Assert.Throws<DivideByZeroException>(() => sum / Duration.Zero);
    }

    [Fact]
    public void Division_ByADifference_IsTheTimeItTakes() =>
        Assert.Equal(125, (ThermalTime.FromFahrenheitDays(2700) / TemperatureDelta.FromDegreesCelsius(12)).Days);

    [Fact]
    public void Division_ByATime_IsTheMeanDifference() =>
        Assert.Equal(12, (ThermalTime.FromCelsiusDays(1500) / Duration.FromDays(125)).DegreesCelsius);

    [Theory]
    [InlineData(812.54, null, "812.5 °C·d")]
    [InlineData(812.55, "M", "812.6 °C·d")]
    [InlineData(100, "U", "180 °F·d")]
    [InlineData(812.54321, "R", "812.54321 °C·d")]
    [InlineData(-0.04, "M", "0 °C·d")]
    [InlineData(-12.5, "M", "-12.5 °C·d")]
    public void ToString_ByFormat_Reads(double celsiusDays, string? format, string expected) =>
        Assert.Equal(expected, ThermalTime.FromCelsiusDays(celsiusDays).ToString(format, null));

    [Fact]
    public void ToString_CommaCulture_WritesAComma() =>
        Assert.Equal("812,5 °C·d", ThermalTime.FromCelsiusDays(812.5).ToString(null, CultureScope.German));

    [Fact]
    public void ToString_UnknownFormat_NamesTheAllowedOnes() =>
        Assert.Equal(
            "'Q' is not a format; allowed: M (°C·d), U (°F·d), R (every digit).",
            Assert.Throws<FormatException>(() => ThermalTime.Zero.ToString("Q", null)).Message);

    [Theory]
    [InlineData("1500 °C·d", 1500)]
    [InlineData("2700 °F·d", 1500)]
    [InlineData("1500°C·d", 1500)]
    [InlineData(" 1500 degC.d ", 1500)]
    [InlineData("2700 degF.d", 1500)]
    [InlineData("-1.5e1 °C·d", -15)]
    [InlineData("1500\u00A0°C·d", 1500)]
    public void Parse_BothUnitsInBothSpellings_Reads(string text, double celsiusDays) =>
        Assert.Equal(celsiusDays, ThermalTime.Parse(text, null).CelsiusDays, 1e-9);

    [Theory]
    [InlineData("1500 K·d", "unknown unit 'K·d'; known: °C·d, °F·d")]
    [InlineData("1500 GDD", "unknown unit 'GDD'")]
    [InlineData("1500", "'1500' has no unit; expected for instance '1.5 °C·d'")]
    [InlineData("", "has no unit")]
    [InlineData("much °C·d", "'much' is not a number")]
    [InlineData("1,5 °C·d", "'1,5' is not a number")]
    [InlineData("NaN °C·d", "allowed: a finite number")]
    public void Parse_AnythingElse_SaysWhatIsWrong(string text, string complaint)
    {
        Assert.False(ThermalTime.TryParse(text, null, out ThermalTime _));
        Assert.Contains(
            complaint, Assert.Throws<FormatException>(() => ThermalTime.Parse(text, null)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Parse_CommaMachineWithoutCulture_ReadsAPoint()
    {
        using CultureScope german = new("de-DE");
        Assert.Equal(ThermalTime.FromCelsiusDays(1.5), ThermalTime.Parse("1.5 °C·d", null));
        Assert.Equal(ThermalTime.FromCelsiusDays(1.5), ThermalTime.Parse("1,5 °C·d", CultureScope.German));
    }

    [Fact]
    public void Default_IsZero() => Assert.Equal(ThermalTime.Zero, ThermalTime.FromCelsiusDays(0));
}
