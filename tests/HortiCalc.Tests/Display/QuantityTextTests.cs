using System.Globalization;
using HortiCalc.Display;
using HortiCalc.Tests.Units;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Display;

public class QuantityTextTests
{
    public static TheoryData<IQuantity, string, string> Texts() => new()
    {
        // Length
        { Length.FromMeters(0), "0 m", "0 ft" },
        { Length.FromMillimeters(0.5), "0.5 mm", "0.0197 in" },
        { Length.FromMillimeters(9.99), "9.99 mm", "0.393 in" },
        { Length.FromMillimeters(9.996), "1 cm", "0.394 in" },
        { Length.FromMeters(0.01234), "1.23 cm", "0.486 in" },
        { Length.FromMeters(0.9996), "1 m", "3.28 ft" },
        { Length.FromMeters(12.345), "12.3 m", "40.5 ft" },
        { Length.FromMeters(1234.6), "1,235 m", "4,051 ft" },
        { Length.FromMeters(12_345), "12.3 km", "40,502 ft" },
        { Length.FromMeters(-0.5), "-50 cm", "-19.7 in" },
        { Length.FromFeet(3), "91.4 cm", "3 ft" },

        // Area
        { Area.Zero, "0 m²", "0 sq ft" },
        { Area.FromSquareMeters(1234.6), "1,235 m²", "13,289 sq ft" },
        { Area.FromSquareMeters(12_345), "1.23 ha", "3.05 acres" },
        { Area.FromSquareMeters(-12_345), "-1.23 ha", "-3.05 acres" },
        { Area.FromAcres(1), "4,047 m²", "1 acre" },

        // Volume
        { Volume.Zero, "0 L", "0 gal (US)" },
        { Volume.FromMilliliters(4.92892159375), "4.93 mL", "1 tsp" },
        { Volume.FromMilliliters(29.5735295625), "29.6 mL", "1 fl oz" },
        { Volume.FromLiters(0.9463529), "946 mL", "0.25 gal (US)" },
        { Volume.FromLiters(0.9996), "1 L", "0.264 gal (US)" },
        { Volume.FromLiters(100), "100 L", "26.4 gal (US)" },
        { Volume.FromLiters(283.16846592), "283 L", "10 cu ft" },
        { Volume.FromCubicMeters(1.5), "1.5 m³", "1.96 cu yd" },
        { Volume.FromLiters(-250), "-250 L", "-8.83 cu ft" },

        // Mass
        { Mass.Zero, "0 kg", "0 lb" },
        { Mass.FromMilligrams(12.34), "12.3 mg", "0.000435 oz" },
        { Mass.FromGrams(1234.6), "1.23 kg", "2.72 lb" },
        { Mass.FromGrams(999.6), "1 kg", "2.2 lb" },
        { Mass.FromGrams(999.4), "999 g", "2.2 lb" },
        { Mass.FromPounds(0.9999), "454 g", "1 lb" },
        { Mass.FromShortTons(1), "907 kg", "1 ton (US)" },
        { Mass.FromKilograms(1000), "1 t", "1.1 tons (US)" },
        { Mass.FromKilograms(-0.25), "-250 g", "-8.82 oz" },

        // The rest
        { AreaDensity.FromGramsPerSquareMeter(244.12), "244 g/m²", "5 lb/100 sq ft" },
        { Density.FromKilogramsPerCubicMeter(1300), "1,300 kg/m³", "81.2 lb/cu ft" },
        { MassConcentration.FromMilligramsPerLiter(0), "0 mg/L", "0 mg/L" },
        { MassConcentration.FromMilligramsPerLiter(150), "150 mg/L", "150 mg/L" },
        { MassConcentration.FromGramsPerLiter(7.5), "7.5 g/L", "1 oz/gal (US)" },
        { VolumeConcentration.FromPercent(10), "10 % by volume", "10 % by volume" },
        { MassFraction.FromPercent(8.25), "8.25 % by mass", "8.25 % by mass" },
        { Ratio.FromPercent(12.345), "12.3 %", "12.3 %" },
        { Temperature.FromDegreesCelsius(10), "10 °C", "50 °F" },
        { Temperature.FromDegreesCelsius(-1), "-1 °C", "30.2 °F" },
        { Temperature.FromDegreesFahrenheit(28), "-2.22 °C", "28 °F" },
        { Temperature.FromKelvins(273.15), "0 °C", "32 °F" },
        { TemperatureDelta.FromDegreesCelsius(10), "10 °C", "18 °F" },
        { Duration.FromDays(0), "0 days", "0 days" },
        { Duration.FromDays(1), "1 day", "1 day" },
        { Duration.FromDays(2), "2 days", "2 days" },
        { Duration.FromHours(36), "1.5 days", "1.5 days" },
        { Duration.FromHours(5), "5 h", "5 h" },
        { Duration.FromSeconds(17.2), "17.2 s", "17.2 s" },
        { Duration.FromSeconds(59.99), "1 min", "1 min" },
        { Duration.FromMinutes(15), "15 min", "15 min" },
        { Duration.FromMinutes(59.99), "1 h", "1 h" },
        { Angle.FromDegrees(45.5), "45.5°", "45.5°" },
        { ReciprocalArea.FromInverseSquareMeters(16), "16 per m²", "1.49 per sq ft" },
        { Pressure.FromKilopascals(12), "12 kPa", "12 kPa" },
    };

    [Theory]
    [MemberData(nameof(Texts))]
    public void Format_AnyQuantity_ReadsInTheUnitsOfItsSize(IQuantity quantity, string metric, string us)
    {
        Assert.Equal(metric, QuantityText.Format(quantity, MeasurementSystem.Metric, CultureInfo.InvariantCulture));
        Assert.Equal(us, QuantityText.Format(quantity, MeasurementSystem.UsCustomary, CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Format_CommaCulture_WritesItsSeparators()
    {
        Assert.Equal("1,23 kg", QuantityText.Format(Mass.FromGrams(1234.6), MeasurementSystem.Metric, CultureScope.German));
        Assert.Equal("1.235 m²", QuantityText.Format(Area.FromSquareMeters(1234.6), MeasurementSystem.Metric, CultureScope.German));
    }

    [Fact]
    public void Format_WithoutCultureOnACommaMachine_WritesAPoint()
    {
        using CultureScope german = new("de-DE");
        Assert.Equal("1.23 kg", QuantityText.Format(Mass.FromGrams(1234.6), MeasurementSystem.Metric, null));
    }

    [Fact]
    public void Format_NothingOrUndefinedUnits_IsRefused()
    {
        Assert.Equal("quantity", Assert.Throws<ArgumentNullException>(() => QuantityText.Format(null!, MeasurementSystem.Metric, null)).ParamName);
        Assert.Equal("units", Assert.Throws<ArgumentOutOfRangeException>(() => QuantityText.Format(Mass.Zero, (MeasurementSystem)3, null)).ParamName);
    }

    [Theory]
    [InlineData(0, "0")]
    [InlineData(0.125, "0.125")]
    [InlineData(1.235, "1.24")]
    [InlineData(-1.235, "-1.24")]
    [InlineData(12.35, "12.4")]
    [InlineData(99.95, "100")]
    [InlineData(99.94, "99.9")]
    [InlineData(123.5, "124")]
    [InlineData(-0.4e-5, "-4E-6")]
    [InlineData(0.00012345, "0.000123")]
    [InlineData(1234567.8, "1,234,568")]
    [InlineData(1e-12, "1E-12")]
    [InlineData(double.PositiveInfinity, "Infinity")]
    public void Number_AnySize_KeepsThreeDigitsAndTheWholePart(double value, string expected) =>
        Assert.Equal(expected, QuantityText.Number(value, TextStyle.Default));

    [Fact]
    public void Of_OtherValues_Read()
    {
        Assert.Equal("2024-02-29", QuantityText.Of(new DateOnly(2024, 2, 29), TextStyle.Default));
        Assert.Equal("12,345", QuantityText.Of(12_345, TextStyle.Default));
        Assert.Equal("1.23", QuantityText.Of(1.2345, TextStyle.Default));
        Assert.Equal("UsCustomary", QuantityText.Of(MeasurementSystem.UsCustomary, TextStyle.Default));
        Assert.Equal("6 h", QuantityText.Of(TimeSpan.FromHours(6), TextStyle.Default));
        Assert.Equal("pH 6.5", QuantityText.Of(new Ph(6.5), TextStyle.Parse("U", null)));
        Assert.Equal("180 °F·d", QuantityText.Of(ThermalTime.FromCelsiusDays(100), TextStyle.Parse("U", null)));
        Assert.Equal("loam", QuantityText.Of("loam", TextStyle.Default));
    }

    [Theory]
    [InlineData(null, MeasurementSystem.Metric)]
    [InlineData("", MeasurementSystem.Metric)]
    [InlineData("G", MeasurementSystem.Metric)]
    [InlineData("m", MeasurementSystem.Metric)]
    [InlineData("U", MeasurementSystem.UsCustomary)]
    public void Style_FormatCodes_ChooseTheUnits(string? format, MeasurementSystem units) =>
        Assert.Equal(units, TextStyle.Parse(format, null).Units);

    [Fact]
    public void Style_UnknownFormat_NamesTheAllowedOnes() =>
        Assert.Equal("'X' is not a format; allowed: M (metric), U (US customary).", Assert.Throws<FormatException>(() => TextStyle.Parse("X", null)).Message);
}
