using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using HortiCalc.Json;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Json;

public class QuantityJsonTests
{
    /// <summary>Every quantity that has a converter: its type, the start of its messages, and the unit of its examples.</summary>
    public static TheoryData<Type, string, string> Quantities() => new()
    {
        { typeof(Length), "length", "m" },
        { typeof(Area), "area", "m²" },
        { typeof(Volume), "volume", "L" },
        { typeof(Mass), "mass", "kg" },
        { typeof(AreaDensity), "mass per area", "g/m²" },
        { typeof(Density), "density", "kg/m³" },
        { typeof(MassConcentration), "mass concentration", "mg/L" },
        { typeof(VolumeConcentration), "volume concentration", "%" },
        { typeof(MassFraction), "mass fraction", "%" },
        { typeof(Ratio), "ratio", "%" },
        { typeof(Temperature), "temperature", "°C" },
        { typeof(TemperatureDelta), "temperature difference", "°C" },
        { typeof(Duration), "duration", "d" },
        { typeof(Angle), "angle", "°" },
        { typeof(ReciprocalArea), "number per area", "1/m²" },
        { typeof(Ph), "pH", "pH" },
        { typeof(ThermalTime), "degree-days", "°C·d" },
        { typeof(ExchangeableCharge), "exchangeable charge", "cmol(c)/kg" },
        { typeof(VolumetricCharge), "charge per volume", "cmol(c)/L" },
        { typeof(PhotothermalTime), "photothermal time", "°C·d·h" },
        { typeof(ThermalDiffusivity), "thermal diffusivity", "mm²/s" },
        { typeof(ThermalConductivity), "thermal conductivity", "W/(m·K)" },
        { typeof(VolumetricHeatCapacity), "heat capacity by volume", "J/(m³·K)" },
        { typeof(Pressure), "pressure", "kPa" },
        { typeof(RelativeHumidity), "relative humidity", "%" },
        { typeof(Speed), "speed", "m/s" },
        { typeof(VolumeFlow), "volume flow", "L/min" },
        { typeof(VolumeRate), "volume on an area", "L/ha" },
        { typeof(ElectricConductivity), "electric conductivity", "mS/cm" },
        { typeof(Molarity), "molarity", "mol/L" },
        { typeof(ReciprocalLength), "number per length", "1/m" },
        { typeof(WaterRate), "water rate", "mm/h" },
        { typeof(Irradiation), "radiation on an area", "kJ/m²" },
        { typeof(Irradiance), "power of radiation on an area", "W/m²" },
        { typeof(Illuminance), "illuminance", "lx" },
        { typeof(PhotonFluxDensity), "photon flux density", "µmol/(m²·s)" },
        { typeof(DailyLightIntegral), "daily light integral", "mol/(m²·d)" },
    };

    [Fact]
    public void Quantities_OfTheContext_AreAllHere() => Assert.Equal(
        HortiCalcJsonContext.Default.Options.Converters
            .Where(converter => IsOfAQuantity(converter.GetType()) && converter.Type!.Namespace is "UnitsNet" or "HortiCalc.Units")
            .Select(converter => converter.Type!.Name).Order(),
        Quantities().Select(row => row.Data.Item1.Name).Order());

    [Theory]
    [MemberData(nameof(Quantities))]
    public void RoundTrip_EveryUnit_KeepsEveryDigitAndTheUnit(Type type, string name, string unit)
    {
        List<string> units = UnitsOf(type);
        Assert.Equal(unit, units[0]);
        Assert.NotEmpty(name);
        foreach (string one in units)
        {
            foreach (double value in (double[])[0.1 + 0.2, 1 / 3.0, 7, 0, 6.02214076])
            {
                // A diffusivity of nothing is none.
                if (value == 0 && type == typeof(ThermalDiffusivity))
                    continue;
                object first = Read(type, value, one);
                string json = Write(type, first);
                object second = JsonSerializer.Deserialize(json, type, HortiCalcJsonContext.Default.Options)!;
                Assert.True(first.Equals(second), $"{json} of {value} {one}");
                Assert.Equal(json, Write(type, second));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Quantities))]
    public void Write_FirstUnit_IsAnObjectWithReadableUnit(Type type, string name, string unit)
    {
        Assert.NotEmpty(name);
        Assert.Equal($$"""{"value":1.5,"unit":"{{unit}}"}""", Write(type, Read(type, 1.5, unit)));
    }

    [Theory]
    [MemberData(nameof(Quantities))]
    public void Read_AsciiSpelling_IsTheSameUnit(Type type, string name, string unit)
    {
        Assert.NotEmpty(name + unit);
        foreach (string one in UnitsOf(type))
        {
            string ascii = UnitSpelling.Ascii(one);
            Assert.True(ascii.All(char.IsAscii), ascii);
            Assert.Equal(Read(type, 2.5, one), Read(type, 2.5, ascii));
        }
    }

    [Theory]
    [MemberData(nameof(Quantities))]
    public void Read_Malformed_SaysWhichQuantityWhatWasFoundAndWhatExpected(Type type, string name, string unit)
    {
        string example = $$"""{"value":1.5,"unit":"{{unit}}"}""";
        (string Json, string Complaint)[] refusals =
        [
            ("\"5 kg\"", $"expected an object such as {example}, found the text \"5 kg\""),
            ("5", $"expected an object such as {example}, found 5"),
            ("null", $"expected an object such as {example}, found null"),
            ("true", $"expected an object such as {example}, found true"),
            ("[1]", $"expected an object such as {example}, found a list"),
            ("{}", $"\"value\" is missing; expected {example}"),
            ("""{"value":1.5}""", $"\"unit\" is missing; expected {example}"),
            ($$"""{"unit":"{{unit}}"}""", $"\"value\" is missing; expected {example}"),
            ($$"""{"value":"1.5","unit":"{{unit}}"}""", "expected a finite number for \"value\", found the text \"1.5\""),
            ($$"""{"value":null,"unit":"{{unit}}"}""", "expected a finite number for \"value\", found null"),
            ($$"""{"value":1e999,"unit":"{{unit}}"}""", "expected a finite number for \"value\", found 1e999"),
            ($$"""{"value":{},"unit":"{{unit}}"}""", "expected a finite number for \"value\", found an object"),
            ("""{"value":1.5,"unit":7}""", "expected a text for \"unit\", found 7"),
            ("""{"value":1.5,"unit":null}""", "expected a text for \"unit\", found null"),
            ("""{"value":1.5,"unit":"furlong"}""", $"unknown unit \"furlong\"; known: {unit}"),
            ("""{"value":1.5,"unit":""}""", $"unknown unit \"\"; known: {unit}"),
            ($$"""{"value":1.5,"unit":"{{unit}}","note":"x"}""", "unknown property \"note\""),
            ($$"""{"Value":1.5,"unit":"{{unit}}"}""", "unknown property \"Value\""),
            ($$"""{"value":1.5,"value":2,"unit":"{{unit}}"}""", "\"value\" is given twice"),
            ($$"""{"value":1.5,"unit":"{{unit}}","unit":"{{unit}}"}""", "\"unit\" is given twice"),
        ];
        foreach ((string json, string complaint) in refusals)
        {
            JsonException refused = Assert.Throws<JsonException>(() => JsonSerializer.Deserialize(json, type, HortiCalcJsonContext.Default.Options));
            Assert.StartsWith($"{name}: {complaint}", refused.Message, StringComparison.Ordinal);
            Assert.Equal("$", refused.Path);
        }
    }

    [Theory]
    [InlineData("""{"value":15,"unit":"pH"}""", "pH: value was 15 pH; allowed: from 0 to 14 pH", typeof(Ph))]
    [InlineData("""{"value":-1,"unit":"meq/100 g"}""", "exchangeable charge: value was -1 meq/100 g; allowed: 0 meq/100 g or more", typeof(ExchangeableCharge))]
    [InlineData("""{"value":-1,"unit":"cmol(c)/L"}""", "charge per volume: value was -1 cmol(c)/L", typeof(VolumetricCharge))]
    public void Read_ValueOutsideItsRange_SaysTheRange(string json, string complaint, Type type) => Assert.StartsWith(
        complaint,
        Assert.Throws<JsonException>(() => JsonSerializer.Deserialize(json, type, HortiCalcJsonContext.Default.Options)).Message,
        StringComparison.Ordinal);

    [Fact]
    public void Read_TradeUnits_AreTheirQuantities()
    {
        Assert.Equal(AreaDensity.FromTonnesPerHectare(2), Read(typeof(AreaDensity), 2, "t/ha"));
        Assert.Equal(AreaDensity.FromPoundsPerHundredSquareFeet(5), Read(typeof(AreaDensity), 5, "lb/100 ft2"));
        Assert.Equal(Volume.FromUsBushels(1), Read(typeof(Volume), 1, "bu (US)"));
        Assert.Equal(Volume.FromUsDryQuarts(25), Read(typeof(Volume), 25, "dry qt (US)"));
    }

    [Fact]
    public void Write_UnitNotListed_IsWrittenInTheHouseUnitExactly()
    {
        Assert.Equal("""{"value":1233481.83754752,"unit":"L"}""", Write(typeof(Volume), Volume.FromAcreFeet(1)));
        Assert.Equal("""{"value":6.35029318,"unit":"kg"}""", Write(typeof(Mass), Mass.FromStone(1)));
        Assert.Equal("""{"value":0.1016,"unit":"m"}""", Write(typeof(Length), Length.FromHands(1)));
    }

    [Fact]
    public void Write_OnACommaMachine_WritesAPoint()
    {
        using HortiCalc.Tests.Units.CultureScope german = new("de-DE");
        Assert.Equal("""{"value":1.5,"unit":"kg"}""", Write(typeof(Mass), Mass.FromKilograms(1.5)));
    }

    [Fact]
    public void Read_EscapedUnit_IsTheSameUnit() =>
        Assert.Equal(Area.FromSquareMeters(2), JsonSerializer.Deserialize<Area>("""{"unit":"m\u00B2","value":2}""", HortiCalcJsonContext.Default.Options));

    private static bool IsOfAQuantity(Type? converter) => converter is not null
        && (converter.IsGenericType && converter.GetGenericTypeDefinition() == typeof(QuantityConverter<>) || IsOfAQuantity(converter.BaseType));

    private static List<string> UnitsOf(Type type)
    {
        string message = Assert.Throws<JsonException>(
            () => JsonSerializer.Deserialize("""{"value":1,"unit":"furlong"}""", type, HortiCalcJsonContext.Default.Options)).Message;
        return [.. Regex.Match(message, "known: (.*)\\.$").Groups[1].Value.Split(", ")];
    }

    private static object Read(Type type, double value, string unit) => JsonSerializer.Deserialize(
        string.Create(CultureInfo.InvariantCulture, $$"""{"value":{{value:R}},"unit":"{{unit}}"}"""), type, HortiCalcJsonContext.Default.Options)!;

    private static string Write(Type type, object value) => JsonSerializer.Serialize(value, type, HortiCalcJsonContext.Default.Options);
}
