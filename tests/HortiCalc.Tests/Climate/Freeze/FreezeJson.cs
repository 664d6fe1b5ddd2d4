using System.Text.Json;
using FsCheck.Xunit;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Json;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

[Properties(Arbitrary = [typeof(FreezeArbitraries)], MaxTest = 50)]
public class FreezeJson
{
    private static readonly HortiCalcJsonContext Json = HortiCalcJsonContext.Default;

    [Fact]
    public void FreezeClimate_WrittenAndRead_IsEqualAndAnswersTheSame()
    {
        DateOnly[] freezes = [.. FreezeRecords.EveryYear(2001, 2014, 4, 20).Where(date => date.Year % 3 > 0), .. FreezeRecords.EveryYear(2001, 2014, 11, 1)];
        FreezeClimate climate = FreezeClimate.FromDaily(
            FreezeRecords.WithFreezesAndGaps(2001, 2014, freezes, FreezeRecords.Days(new DateOnly(2006, 10, 1), 25)),
            Temperature.FromDegreesFahrenheit(32),
            new FreezeClimateOptions(Hemisphere.Northern));

        FreezeClimate read = JsonSerializer.Deserialize(JsonSerializer.Serialize(climate, Json.FreezeClimate), Json.FreezeClimate)!;
        Assert.Equal(climate, read);
        Assert.Equal(climate.GetHashCode(), read.GetHashCode());
        Assert.Equal(
            climate.LastInSpring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(10)), read.LastInSpring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(10)));
        Assert.Equal(
            climate.SeasonWithoutFreeze.LengthWithChanceOfLongerSeason(Ratio.FromPercent(50)),
            read.SeasonWithoutFreeze.LengthWithChanceOfLongerSeason(Ratio.FromPercent(50)));
    }

    [Property]
    public void Distributions_WrittenAndRead_AreEqual(AnyFreeze freeze)
    {
        Assert.Equal(freeze.Spring, JsonSerializer.Deserialize(JsonSerializer.Serialize(freeze.Spring, Json.LastSpringFreeze), Json.LastSpringFreeze));
        Assert.Equal(freeze.Autumn, JsonSerializer.Deserialize(JsonSerializer.Serialize(freeze.Autumn, Json.FirstAutumnFreeze), Json.FirstAutumnFreeze));
        FreezeDates dates = freeze.Dates;
        Assert.Equal(dates, JsonSerializer.Deserialize(JsonSerializer.Serialize(dates, Json.FreezeDates), Json.FreezeDates));
    }

    [Property]
    public void Answers_WrittenAndRead_AreEqual(AnyFreeze freeze, MonthDay date)
    {
        Estimate<MonthDay> day = freeze.Spring.DateWithChanceOfLaterFreezeGivenAFreeze(Ratio.FromPercent(10))!;
        Assert.Equal(day, JsonSerializer.Deserialize(JsonSerializer.Serialize(day, Json.EstimateMonthDay), Json.EstimateMonthDay));
        Estimate<Ratio> chance = freeze.Spring.ChanceOfFreezeAfter(date);
        Assert.Equal(chance, JsonSerializer.Deserialize(JsonSerializer.Serialize(chance, Json.EstimateRatio), Json.EstimateRatio));
    }

    [Fact]
    public void Inputs_WrittenAndRead_AreEqual()
    {
        foreach (FreezeClimateOptions options in new[]
        {
            new FreezeClimateOptions(),
            new FreezeClimateOptions(Hemisphere.Southern, new MonthDay(1, 24), 5),
        })
        {
            Assert.Equal(options, JsonSerializer.Deserialize(JsonSerializer.Serialize(options, Json.FreezeClimateOptions), Json.FreezeClimateOptions));
        }

        foreach (TabulatedFreezeDate level in new[] { new TabulatedFreezeDate(Ratio.FromPercent(10), new MonthDay(2, 29)), new TabulatedFreezeDate(Ratio.FromPercent(90), null) })
            Assert.Equal(level, JsonSerializer.Deserialize(JsonSerializer.Serialize(level, Json.TabulatedFreezeDate), Json.TabulatedFreezeDate));
    }

    [Theory]
    [InlineData("\"02-30\"")]
    [InlineData("\"April\"")]
    [InlineData("422")]
    public void MonthDay_Malformed_IsRefusedWithWhatItWas(string json)
    {
        JsonException refusal = Assert.Throws<JsonException>(() => JsonSerializer.Deserialize(json, Json.MonthDay));
        Assert.Contains("04-22", refusal.Message, StringComparison.Ordinal);
    }
}
