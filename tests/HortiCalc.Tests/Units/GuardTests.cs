using HortiCalc.Units;

namespace HortiCalc.Tests.Units;

public class GuardTests
{
    private delegate double Check(double depth);

    public static TheoryData<string, double, string> Refusals() => new()
    {
        { "Finite", double.NaN, "depth was NaN cm; allowed: a finite number" },
        { "Finite", double.PositiveInfinity, "depth was Infinity cm; allowed: a finite number" },
        { "Positive", 0, "depth was 0 cm; allowed: greater than 0 cm" },
        { "Positive", -1.5, "depth was -1.5 cm; allowed: greater than 0 cm" },
        { "Positive", double.NaN, "depth was NaN cm; allowed: greater than 0 cm" },
        { "Positive", double.PositiveInfinity, "depth was Infinity cm; allowed: greater than 0 cm" },
        { "NotNegative", -0.25, "depth was -0.25 cm; allowed: 0 cm or more" },
        { "NotNegative", double.NaN, "depth was NaN cm; allowed: 0 cm or more" },
        { "NotNegative", double.PositiveInfinity, "depth was Infinity cm; allowed: 0 cm or more" },
        { "AtLeast", 1.9, "depth was 1.9 cm; allowed: 2 cm or more" },
        { "AtLeast", double.NaN, "depth was NaN cm; allowed: 2 cm or more" },
        { "AtLeast", double.PositiveInfinity, "depth was Infinity cm; allowed: 2 cm or more" },
        { "Within", 4.99, "depth was 4.99 cm; allowed: from 5 to 30 cm" },
        { "Within", 30.01, "depth was 30.01 cm; allowed: from 5 to 30 cm" },
        { "Within", double.NaN, "depth was NaN cm; allowed: from 5 to 30 cm" },
        { "Within", double.NegativeInfinity, "depth was -Infinity cm; allowed: from 5 to 30 cm" },
        { "Between", 5, "depth was 5 cm; allowed: above 5 and below 30 cm" },
        { "Between", 30, "depth was 30 cm; allowed: above 5 and below 30 cm" },
        { "Between", double.NaN, "depth was NaN cm; allowed: above 5 and below 30 cm" },
    };

    [Theory]
    [MemberData(nameof(Refusals))]
    public void Checks_OutsideTheRange_NameParameterValueUnitAndRange(string check, double value, string message)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => Of(check)(value));
        Assert.Equal("depth", refused.ParamName);
        Assert.StartsWith(message + ".", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Finite", -1e300)]
    [InlineData("Positive", double.Epsilon)]
    [InlineData("NotNegative", 0)]
    [InlineData("AtLeast", 2)]
    [InlineData("Within", 5)]
    [InlineData("Within", 30)]
    [InlineData("Between", 5.0001)]
    public void Checks_InsideTheRange_ReturnTheValue(string check, double value) => Assert.Equal(value, Of(check)(value));

    [Fact]
    public void Checks_WithoutUnit_LeaveNoGap()
    {
        double share = 2;
        Assert.StartsWith(
            "share was 2; allowed: from 0 to 1.",
            Assert.Throws<ArgumentOutOfRangeException>(() => Guard.Within(share, 0, 1, "")).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Checks_OnACommaMachine_WriteAPoint()
    {
        using CultureScope german = new("de-DE");
        Assert.Contains("was -1.5 cm", Assert.Throws<ArgumentOutOfRangeException>(() => Of("Positive")(-1.5)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void AtLeast_WholeNumber_NamesTheCount()
    {
        int pots = 0;
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => Guard.AtLeast(pots, 1));
        Assert.Equal("pots", refused.ParamName);
        Assert.StartsWith("pots was 0; allowed: 1 or more.", refused.Message, StringComparison.Ordinal);
        Assert.Equal(1, Guard.AtLeast(1, 1));
    }

    [Fact]
    public void Defined_UndefinedWord_NamesTheAllowedOnes()
    {
        MeasurementSystem units = (MeasurementSystem)7;
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => Guard.Defined(units));
        Assert.Equal("units", refused.ParamName);
        Assert.StartsWith("units was 7; allowed: Metric, UsCustomary.", refused.Message, StringComparison.Ordinal);
        Assert.Equal(MeasurementSystem.Metric, Guard.Defined(MeasurementSystem.Metric));
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    public void NotBlank_Blank_NamesTheParameter(string title)
    {
        Assert.Equal("title", Assert.Throws<ArgumentException>(() => Guard.NotBlank(title)).ParamName);
        Assert.Equal("x", Guard.NotBlank("x"));
    }

    [Fact]
    public void NotBlankAndNotNull_Null_NameTheParameter()
    {
        string? title = null;
        Assert.Equal("title", Assert.Throws<ArgumentNullException>(() => Guard.NotBlank(title)).ParamName);
        Assert.Equal("title", Assert.Throws<ArgumentNullException>(() => Guard.NotNull(title)).ParamName);
        Assert.Equal("x", Guard.NotNull("x"));
    }

    private static Check Of(string check) => check switch
    {
        "Finite" => depth => Guard.Finite(depth, "cm"),
        "Positive" => depth => Guard.Positive(depth, "cm"),
        "NotNegative" => depth => Guard.NotNegative(depth, "cm"),
        "AtLeast" => depth => Guard.AtLeast(depth, 2, "cm"),
        "Within" => depth => Guard.Within(depth, 5, 30, "cm"),
        _ => depth => Guard.Between(depth, 5, 30, "cm"),
    };
}
