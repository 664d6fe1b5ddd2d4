using System.Globalization;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Units;

public class PhTests
{
    [Theory]
    [InlineData(-0.0001)]
    [InlineData(14.0001)]
    [InlineData(20)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void Constructor_OutsideTheScale_IsRefusedWithValueAndRange(double value)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => new Ph(value));
        Assert.Equal("value", refused.ParamName);
        Assert.Contains(value.ToString("G10", CultureInfo.InvariantCulture) + " pH", refused.Message, StringComparison.Ordinal);
        Assert.Contains("from 0 to 14 pH", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(7)]
    [InlineData(14)]
    public void Constructor_EndsOfTheScale_AreAllowed(double value) => Assert.Equal(value, new Ph(value).Value);

    [Fact]
    public void Subtraction_OfTwo_IsAPlainNumber() => Assert.Equal(1.25, new Ph(6.5) - new Ph(5.25));

    [Theory]
    [InlineData(0)]
    [InlineData(-1e-7)]
    [InlineData(1.01)]
    [InlineData(1e-15)]
    public void FromHydrogenActivity_OutsideTheScale_IsRefusedNamingTheActivity(double molesPerLitre)
    {
        ArgumentOutOfRangeException refused =
            Assert.Throws<ArgumentOutOfRangeException>(() => Ph.FromHydrogenActivity(Molarity.FromMolesPerLiter(molesPerLitre)));
        Assert.Equal("activity", refused.ParamName);
        Assert.Contains("mol/L", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void FromHydrogenActivity_OneMolePerLitre_IsZero() =>
        Assert.Equal("pH 0", Ph.FromHydrogenActivity(Molarity.FromMolesPerLiter(1)).ToString());

    [Fact]
    public void MeanOfSolutions_OfNone_IsRefused()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => Ph.MeanOfSolutions([]));
        Assert.Equal("solutions", refused.ParamName);
        Assert.Contains("one pH or more", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void MeanOfSoilSamples_OfNone_IsRefused() =>
        Assert.Equal("samples", Assert.Throws<ArgumentException>(() => Ph.MeanOfSoilSamples([])).ParamName);

    [Theory]
    [InlineData(null, "pH 5.46")]
    [InlineData("M", "pH 5.46")]
    [InlineData("u", "pH 5.46")]
    [InlineData("R", "pH 5.455")]
    public void ToString_ByFormat_RoundsForAReaderAndKeepsEveryDigitInR(string? format, string expected) =>
        Assert.Equal(expected, new Ph(5.455).ToString(format, CultureInfo.InvariantCulture));

    [Fact]
    public void ToString_CommaCulture_WritesAComma() => Assert.Equal("pH 6,5", new Ph(6.5).ToString(null, CultureScope.German));

    [Fact]
    public void ToString_WithoutCultureOnACommaMachine_WritesAPoint()
    {
        using CultureScope german = new("de-DE");
        Assert.Equal("pH 6.5", new Ph(6.5).ToString());
        Assert.Equal("pH 6.5", new Ph(6.5).ToString("R", null));
        Assert.Equal(new Ph(6.5), Ph.Parse("6.5", null));
    }

    [Fact]
    public void ToString_UnknownFormat_IsRefused() =>
        Assert.Contains("'X'", Assert.Throws<FormatException>(() => new Ph(7).ToString("X", null)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("pH 6.5")]
    [InlineData("pH6.5")]
    [InlineData("ph 6.5")]
    [InlineData("6.5")]
    [InlineData("  pH 6.5 ")]
    public void Parse_WithOrWithoutLetters_Reads(string text) => Assert.Equal(new Ph(6.5), Ph.Parse(text, CultureInfo.InvariantCulture));

    [Theory]
    [InlineData("")]
    [InlineData("pH")]
    [InlineData("acid")]
    [InlineData("15")]
    [InlineData("-1")]
    [InlineData("NaN")]
    [InlineData("6,5")]
    [InlineData("6.5 pH units")]
    public void Parse_AnythingElse_IsRefusedWithTheText(string text)
    {
        Assert.False(Ph.TryParse(text, CultureInfo.InvariantCulture, out Ph _));
        FormatException refused = Assert.Throws<FormatException>(() => Ph.Parse(text, CultureInfo.InvariantCulture));
        Assert.Contains($"'{text}'", refused.Message, StringComparison.Ordinal);
        Assert.Contains("0 to 14", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Parse_CommaCulture_ReadsAComma() => Assert.Equal(new Ph(6.5), Ph.Parse("pH 6,5", CultureScope.German));

    [Fact]
    public void TryParse_Null_IsFalse() => Assert.False(Ph.TryParse(null, null, out Ph _));

    [Fact]
    public void Parse_Null_IsRefused() => Assert.Throws<ArgumentNullException>(() => Ph.Parse(null!, null));
}
