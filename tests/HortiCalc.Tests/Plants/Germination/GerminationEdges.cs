using System.Globalization;
using HortiCalc.Evidence;
using HortiCalc.Plants;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Plants;

public class GerminationEdges
{
    private static readonly DateOnly Sown = new(2025, 4, 1);

    [Theory]
    [InlineData(2.5)]
    [InlineData(2.4)]
    [InlineData(-20)]
    public void Time_AtOrBelowTheBase_IsNoGermination(double celsius) => Assert.Null(Germination.Time(Celsius(celsius), GerminationNeeds.Onion));

    [Fact]
    public void Time_AboveWhatTheLineHoldsFor_IsRefusedWithItsDomain()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>("soil", () => Germination.Time(Celsius(26), GerminationNeeds.Onion));

        Assert.Contains("soil was 26 °C; allowed: up to 25 °C", refused.Message, StringComparison.Ordinal);
        Assert.False(Germination.ProgressPerDay(Celsius(25), GerminationNeeds.Onion).Method.Domain.Contains("soil", 26));
    }

    [Fact]
    public void Time_CeilingAndJustBelow_IsNoneAndLong()
    {
        Assert.Null(Germination.Time(Celsius(40.12), GerminationNeeds.FennelHamedan));
        Assert.True(Germination.Time(Celsius(40.11), GerminationNeeds.FennelHamedan)!.Value.Days > 1000);
    }

    [Fact]
    public void Time_RateTooSmallToTellFromNone_IsNoGermination()
    {
        GerminationNeed steep = new(
            "any", "any", GerminationStage.Germination, null, GerminationResponse.Beta,
            new CardinalTemperatures(Celsius(0), Celsius(40), null, Celsius(40.01)),
            ThermalTime.FromCelsiusDays(100), ThermalTime.FromCelsiusDays(100), GerminationNeeds.Onion.Source);

        Assert.Null(Germination.Time(Celsius(0.001), steep));
        Assert.Equal(0, Germination.ProgressPerDay(Celsius(0.001), steep).Value.Percent);
        Assert.Null(Germination.Over([0.001, 0.001], TemperatureUnit.DegreeCelsius, Sown, steep).Elapsed);
    }

    [Theory]
    [InlineData(1e300)]
    [InlineData(91)]
    [InlineData(-61)]
    public void Time_NoSeedbed_IsRefused(double celsius)
    {
        Assert.Throws<ArgumentOutOfRangeException>("soil", () => Germination.Time(Celsius(celsius), GerminationNeeds.FennelHamedan));
        Assert.Throws<ArgumentOutOfRangeException>("soil", () => Emergence.Compare(Celsius(celsius), "onion"));
    }

    [Theory]
    [InlineData(double.NaN, "2025-04-02 was missing")]
    [InlineData(double.PositiveInfinity, "2025-04-02 was")]
    [InlineData(26, "2025-04-02 was 26 °C; allowed: from -60 to 25 °C")]
    [InlineData(-80, "2025-04-02 was -80 °C; allowed: from -60 to 25 °C")]
    public void Over_ADayThatCannotBeCounted_IsRefusedWithItsDate(double celsius, string words)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            "dailyMeans", () => Germination.Over([10, celsius], TemperatureUnit.DegreeCelsius, Sown, GerminationNeeds.Onion));

        Assert.Contains(words, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Over_EndOfTheCalendar_IsRefusedPastIt()
    {
        Assert.Equal(1, Germination.Over([10], TemperatureUnit.DegreeCelsius, DateOnly.MaxValue, GerminationNeeds.Onion).Days);
        Assert.Throws<ArgumentOutOfRangeException>(
            "sown", () => Germination.Over([10, 10], TemperatureUnit.DegreeCelsius, DateOnly.MaxValue, GerminationNeeds.Onion));
    }

    [Fact]
    public void CardinalTemperatures_OutOfOrder_AreRefused()
    {
        Assert.Contains(
            "lowerOptimum was 5 °C; allowed: above 5 °C",
            Assert.Throws<ArgumentOutOfRangeException>("lowerOptimum", () => new CardinalTemperatures(Celsius(5), Celsius(5))).Message,
            StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("upperOptimum", () => new CardinalTemperatures(Celsius(5), Celsius(20), Celsius(19)));
        Assert.Throws<ArgumentOutOfRangeException>("ceiling", () => new CardinalTemperatures(Celsius(5), Celsius(20), Celsius(25), Celsius(25)));
        Assert.Throws<ArgumentOutOfRangeException>("ceiling", () => new CardinalTemperatures(Celsius(5), ceiling: Celsius(4)));
        Assert.Throws<ArgumentException>("upperOptimum", () => new CardinalTemperatures(Celsius(5), null, Celsius(20)));
        Assert.Throws<ArgumentOutOfRangeException>("base", () => new CardinalTemperatures(Celsius(-100)));
    }

    [Fact]
    public void GerminationNeed_ThatCannotBe_IsRefused()
    {
        CardinalTemperatures baseAlone = new(Celsius(5));
        CardinalTemperatures span = new(Celsius(5), Celsius(20), Celsius(25), Celsius(35));

        Assert.Throws<ArgumentException>("temperatures", () => Need(GerminationResponse.Segmented, baseAlone));
        Assert.Contains(
            "no span", Assert.Throws<ArgumentException>("temperatures", () => Need(GerminationResponse.Beta, span)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("low", () => Need(GerminationResponse.Linear, baseAlone, low: 0));
        Assert.Throws<ArgumentOutOfRangeException>("high", () => Need(GerminationResponse.Linear, baseAlone, low: 20, high: 10));
        Assert.Contains(
            "share was 0 %; allowed: above 0, up to 100 %",
            Assert.Throws<ArgumentOutOfRangeException>("share", () => Need(GerminationResponse.Linear, baseAlone, percent: 0)).Message,
            StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("share", () => Need(GerminationResponse.Linear, baseAlone, percent: 100.1));
        Assert.Throws<ArgumentOutOfRangeException>("highest", () => Need(GerminationResponse.Linear, baseAlone, highest: 5));
        Assert.Throws<ArgumentOutOfRangeException>("stage", () => Need(GerminationResponse.Linear, baseAlone, stage: (GerminationStage)5));
    }

    [Fact]
    public void FromKey_Unknown_IsRefusedWithTheKnownOnes() => Assert.Contains(
        "germination.linear, germination.segmented, germination.beta",
        Assert.Throws<ArgumentException>("key", () => GerminationResponse.FromKey("x")).Message,
        StringComparison.Ordinal);

    [Fact]
    public void GerminationProgress_ContradictoryParts_AreRefused()
    {
        Assert.Throws<ArgumentException>(
            "partOfDay", () => new GerminationProgress(GerminationNeeds.Onion, Sown, 3, ThermalTime.Zero, 0, 0, Duration.FromDays(2)));
        Assert.Throws<ArgumentOutOfRangeException>("days", () => new GerminationProgress(GerminationNeeds.Onion, Sown, -1, ThermalTime.Zero, 0, 0));
        Assert.Throws<ArgumentOutOfRangeException>(
            "partOfDay",
            () => new GerminationProgress(GerminationNeeds.Onion, Sown, 3, ThermalTime.Zero, 0, 0, Duration.FromDays(2), Ratio.FromPercent(101)));
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(40.1)]
    public void Emergence_BeyondTheTable_IsRefusedWithItsEnds(double celsius)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            "soil", () => Emergence.At(Celsius(celsius), EmergenceTables.Named("knott-emergence-days", "onion")));

        Assert.Contains($"soil was {celsius.ToString(CultureInfo.InvariantCulture)} °C; allowed: from 0 to 40 °C", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("soil", () => NormalSeedlings.At(Celsius(celsius), NormalSeedlings.Of("onion")));
        Assert.Empty(Emergence.Compare(Celsius(celsius), "onion"));
    }

    [Fact]
    public void Emergence_CellThatCouldNotBeRead_IsNoPartOfTheTable() => Assert.Throws<ArgumentOutOfRangeException>(
        "soil", () => Emergence.At(Celsius(36), EmergenceTables.Named("oregon-seed-germination", "muskmelon")));

    [Fact]
    public void Cells_ThatContradictThemselves_AreRefused()
    {
        Assert.Throws<ArgumentException>("low", () => new EmergenceCell(Celsius(20), EmergenceFinding.Emerges));
        Assert.Throws<ArgumentException>("low", () => new EmergenceCell(Celsius(20), EmergenceFinding.NotTested, Duration.FromDays(0), Duration.FromDays(0)));
        Assert.Throws<ArgumentOutOfRangeException>("low", () => new EmergenceCell(Celsius(20), EmergenceFinding.Emerges, Duration.Zero, Duration.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(
            "high", () => new EmergenceCell(Celsius(20), EmergenceFinding.Emerges, Duration.FromDays(5), Duration.FromDays(4)));
        Assert.Throws<ArgumentOutOfRangeException>("finding", () => new EmergenceCell(Celsius(20), EmergenceFinding.Uncertain));
        Assert.Throws<ArgumentOutOfRangeException>("share", () => new NormalSeedlingCell(Celsius(20), Ratio.FromPercent(101)));
        EmergenceCell cell = new(Celsius(20), EmergenceFinding.NotTested);
        Assert.Throws<ArgumentException>("cells", () => new EmergenceTable("any", "Any", [cell, cell], GerminationNeeds.Onion.Source));
        Assert.Throws<ArgumentException>("cells", () => new EmergenceTable("any", "Any", [], GerminationNeeds.Onion.Source));
        Assert.Throws<ArgumentException>("cells", () => new NormalSeedlingTable("any", "Any", [], GerminationNeeds.Onion.Source));
        Assert.Throws<ArgumentException>(
            "days", () => new EmergenceReading("any", Celsius(20), EmergenceFinding.Emerges, GerminationNeeds.Onion.Source));
    }

    [Fact]
    public void GerminationRange_OutOfOrder_IsRefused()
    {
        Source source = GerminationNeeds.Onion.Source;

        Assert.Throws<ArgumentException>("optimumHigh", () => new GerminationRange("any", "Any", source, optimumLow: Celsius(10)));
        Assert.Throws<ArgumentOutOfRangeException>("optimumHigh", () => new GerminationRange("any", "Any", source, null, Celsius(10), Celsius(9)));
        Assert.Throws<ArgumentOutOfRangeException>("maximum", () => new GerminationRange("any", "Any", source, Celsius(10), maximum: Celsius(9)));
    }

    [Fact]
    public void Named_UnknownCropOrSource_IsRefused()
    {
        Assert.Throws<ArgumentException>("crop", () => EmergenceTables.Named("knott-emergence-days", "baobab"));
        Assert.Contains(
            "oregon-seed-germination", Assert.Throws<ArgumentException>("crop", () => EmergenceTables.Named("x", "onion")).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("crop", () => GerminationRanges.Named("x", "onion"));
        Assert.Throws<ArgumentException>("crop", () => NormalSeedlings.Of("baobab"));
        Assert.Empty(GerminationNeeds.Of("baobab"));
        Assert.Throws<ArgumentException>("crop", () => GerminationNeeds.Of(" "));
    }

    private static GerminationNeed Need(
        GerminationResponse response,
        CardinalTemperatures temperatures,
        double low = 10,
        double? high = null,
        double? percent = null,
        double? highest = null,
        GerminationStage stage = GerminationStage.Germination) => new(
            "any",
            "any",
            stage,
            percent is double share ? Ratio.FromPercent(share) : null,
            response,
            temperatures,
            ThermalTime.FromCelsiusDays(low),
            ThermalTime.FromCelsiusDays(high ?? low),
            GerminationNeeds.Onion.Source,
            highest is double end ? Celsius(end) : null);

    private static Temperature Celsius(double value) => Temperature.FromDegreesCelsius(value);
}
