using HortiCalc.Evidence;
using HortiCalc.Tests.Units;

namespace HortiCalc.Tests.Evidence;

public class SourceMethodDomainTests
{
    [Fact]
    public void Source_ByKind_SaysHowFarToTrustIt()
    {
        Assert.Equal("Sample Extension, Sample Bulletin 7 (1999)", Samples.Source.ToString());
        Assert.Equal("common practice: one part in ten", Source.CommonPractice("ten", "one part in ten").ToString());
        Assert.Equal("P, T (no date)", new Source("k", "T", "P", null, null).ToString());
        Assert.Equal("P, T (from memory)", new Source("k", "T", "P", 1990, null, SourceKind.FromMemory).ToString());
        Assert.Equal(SourceKind.CommonPractice, Source.CommonPractice("ten", "one part in ten").Kind);
    }

    [Fact]
    public void Source_YearOnAnyMachine_HasNoSeparator()
    {
        using CultureScope german = new("de-DE");
        Assert.Equal("Sample Extension, Sample Bulletin 7 (1999)", Samples.Source.ToString());
    }

    [Theory]
    [InlineData("", "t", "p", "key")]
    [InlineData("k", " ", "p", "title")]
    [InlineData("k", "t", "", "publisher")]
    public void Source_BlankText_IsRefusedByName(string key, string title, string publisher, string parameter) =>
        Assert.Equal(parameter, Assert.Throws<ArgumentException>(() => new Source(key, title, publisher, 2000, null)).ParamName);

    [Fact]
    public void Source_UndefinedKind_IsRefused() =>
        Assert.Equal("kind", Assert.Throws<ArgumentOutOfRangeException>(() => new Source("k", "t", "p", 2000, null, (SourceKind)9)).ParamName);

    [Fact]
    public void Records_OfTheSameMembers_AreEqual()
    {
        Assert.Equal(Samples.Source, new Source("sample", "Sample Bulletin 7", "Sample Extension", 1999, "https://example.org/7"));
        Assert.Equal(Samples.Note, new Caution("sample.note", CautionLevel.Note, "Read the table with care.", Samples.Source));
        Assert.Equal(
            new Domain("soil", new DomainLimit("depth", 0, 30, "cm")), new Domain("soil", (List<DomainLimit>)[new DomainLimit("depth", 0, 30, "cm")]));
        Assert.NotEqual(new Domain("soil"), new Domain("peat"));
    }

    [Fact]
    public void Method_Text_IsNameAndSource()
    {
        Assert.Equal("sample table [Sample Extension, Sample Bulletin 7 (1999)]", Samples.Method.ToString());
        Assert.Equal("name", Assert.Throws<ArgumentException>(() => new Method("k", "", Samples.Source, new Domain(""))).ParamName);
        Assert.Equal("source", Assert.Throws<ArgumentNullException>(() => new Method("k", "n", null!, new Domain(""))).ParamName);
        Assert.Equal("domain", Assert.Throws<ArgumentNullException>(() => new Method("k", "n", Samples.Source, null!)).ParamName);
    }

    [Theory]
    [InlineData(4.9)]
    [InlineData(6.6)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Require_OutsideTheDomain_NamesParameterValueRangeAndMethod(double current)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => Samples.Method.Require(current, "pH"));
        Assert.Equal("current", refused.ParamName);
        Assert.StartsWith("current was ", refused.Message, StringComparison.Ordinal);
        Assert.Contains(" pH; allowed: from 5 to 6.5 pH, which is what 'sample table' was published for", refused.Message, StringComparison.Ordinal);
        Assert.False(Samples.Method.Domain.Contains("current", current));
    }

    [Fact]
    public void Require_InsideTheDomainOrWithoutLimit_ReturnsTheValue()
    {
        double current = 5;
        double slope = 90;
        Assert.Equal(5, Samples.Method.Require(current, "pH"));
        Assert.Equal(90, Samples.Method.Require(slope, "°"));
        Assert.True(Samples.Method.Domain.Contains("slope", slope));
    }

    [Theory]
    [InlineData(5, 6.5, "current from 5 to 6.5 pH")]
    [InlineData(double.NegativeInfinity, 6.5, "current up to 6.5 pH")]
    [InlineData(5, double.PositiveInfinity, "current from 5 pH")]
    [InlineData(double.NegativeInfinity, double.PositiveInfinity, "current without limit")]
    public void Limit_WithOrWithoutEnds_Reads(double low, double high, string expected) =>
        Assert.Equal(expected, new DomainLimit("current", low, high, "pH").ToString());

    [Theory]
    [InlineData(6, 5)]
    [InlineData(double.NaN, 5)]
    [InlineData(5, double.NaN)]
    public void Limit_EndsThatMakeNoSpan_AreRefused(double low, double high) =>
        Assert.Equal("low", Assert.Throws<ArgumentOutOfRangeException>(() => new DomainLimit("current", low, high, "pH")).ParamName);

    [Fact]
    public void Domain_Text_IsLimitsAndConditions()
    {
        Assert.Equal("current from 5 to 6.5 pH; depth from 0 to 30 cm; mineral soil", Samples.Method.Domain.ToString());
        Assert.Equal("", new Domain("").ToString());
    }

    [Fact]
    public void Caution_Text_IsLevelAndSentence()
    {
        Assert.Equal("Danger: Wear goggles.", Samples.Danger.ToString());
        Assert.Equal("danger", Samples.Danger.LevelWord);
        Assert.Equal("note", Samples.Note.LevelWord);
        Assert.Equal("level", Assert.Throws<ArgumentOutOfRangeException>(() => new Caution("c", (CautionLevel)5, "s", Samples.Source)).ParamName);
        Assert.Equal("code", Assert.Throws<ArgumentException>(() => new Caution(" ", CautionLevel.Note, "s", Samples.Source)).ParamName);
    }

    [Fact]
    public void Range_Text_FollowsUnitsAndCulture()
    {
        EstimateRange<UnitsNet.Mass> range = new(UnitsNet.Mass.FromKilograms(1.5), UnitsNet.Mass.FromKilograms(2.3), "a span");
        Assert.Equal("1.5 kg to 2.3 kg", range.ToString());
        Assert.Equal("3.31 lb to 5.07 lb", range.ToString("U", null));
        Assert.Equal("1,5 kg to 2,3 kg", range.ToString("M", CultureScope.German));
        Assert.Equal(range, new EstimateRange<UnitsNet.Mass>(UnitsNet.Mass.FromGrams(1500), UnitsNet.Mass.FromGrams(2300), "a span"));
    }

    [Fact]
    public void Range_LowAboveHigh_IsRefusedWithBothInReadableUnits()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(
            () => new EstimateRange<UnitsNet.Mass>(UnitsNet.Mass.FromKilograms(3), UnitsNet.Mass.FromKilograms(2), "a span"));
        Assert.StartsWith("low was 3 kg; allowed: not above high, 2 kg.", refused.Message, StringComparison.Ordinal);
        Assert.Equal("meaning", Assert.Throws<ArgumentException>(() => new EstimateRange<int>(1, 2, "")).ParamName);
    }
}
