using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Plants;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Plants;

public class GerminationTests
{
    private static readonly Source Own = Source.CommonPractice("own-trial", "own trial");

    // With a base of zero the curves are fractions that can be worked out by hand.
    [Theory]
    [InlineData(20, 40, 10, 0.75)]
    [InlineData(20, 40, 30, 0.75)]
    [InlineData(30, 40, 15, 0.3125)]
    [InlineData(30, 40, 35, 0.793981481481)]
    public void Beta_ByHand_IsTheFraction(double optimum, double ceiling, double soil, double fraction)
    {
        GerminationNeed need = new(
            "any", "any", GerminationStage.Germination, null, GerminationResponse.Beta,
            new CardinalTemperatures(Celsius(0), Celsius(optimum), null, Celsius(ceiling)),
            ThermalTime.FromCelsiusDays(optimum), ThermalTime.FromCelsiusDays(optimum), Own);

        Assert.Equal(fraction, Germination.ProgressPerDay(Celsius(soil), need).Value.DecimalFractions, 1e-11);
    }

    [Theory]
    [InlineData(12.53, 165.5)]
    [InlineData(25, 165.5)]
    [InlineData(8.765, 331)]
    [InlineData(32.56, 331)]
    public void Segmented_FennelOfHamedan_TakesTwiceAsLongHalfWayToBaseAndCeiling(double soil, double hours) =>
        Assert.Equal(hours, Germination.Time(Celsius(soil), GerminationNeeds.FennelHamedan)!.Value.Hours, 1e-6);

    [Fact]
    public void Over_Onions_AreReachedOnTheDayAndPartOfIt()
    {
        double[] days = [8.5, 9.5, 10.5, 11.5, 12.5, 12.5, 12.5, 22.5, 12.5];

        GerminationProgress progress = Germination.Over(days, TemperatureUnit.DegreeCelsius, new DateOnly(2025, 4, 1), GerminationNeeds.Onion);

        // 60 degree days in seven days, and all 20 of the eighth.
        Assert.Equal(new DateOnly(2025, 4, 8), progress.Reached);
        Assert.Equal(8, progress.Elapsed!.Value.Days, 1e-12);
        Assert.Equal(100, progress.PartOfDay!.Value.Percent, 1e-12);
        Assert.Equal("onion, sown 2025-04-01: germination of 50 % on 2025-04-08, 100 % into the day", progress.ToString());
    }

    [Fact]
    public void Over_TooFewDays_SaysHowFar()
    {
        GerminationProgress progress = Germination.Over([2.5, 12.5, -1], TemperatureUnit.DegreeCelsius, new DateOnly(2025, 4, 1), GerminationNeeds.Onion);

        Assert.Null(progress.Elapsed);
        Assert.Null(progress.Reached);
        Assert.Equal(12.5, progress.Progress.Percent, 1e-9);
        Assert.Equal(2, progress.DaysTooCold);
        Assert.Equal("onion, sown 2025-04-01: no germination of 50 % in 3 days, 12.5 % of the way", progress.ToString());
    }

    [Fact]
    public void Over_NoDays_IsNoProgress()
    {
        GerminationProgress progress = Germination.Over([], TemperatureUnit.DegreeCelsius, new DateOnly(2025, 4, 1), GerminationNeeds.Onion);

        Assert.Equal((0, 0.0), (progress.Days, progress.Progress.Percent));
        Assert.Null(progress.Reached);
    }

    [Fact]
    public void Time_Cotton_HasThePrintedRangeAndTheCautionOfAir()
    {
        Estimate<Duration> time = Germination.Time(Temperature.FromDegreesFahrenheit(70), GerminationNeeds.Cotton)!;

        Assert.Equal(5.5, time.Value.Days, 1e-9);
        Assert.Equal(5, time.Range!.Low.Days, 1e-9);
        Assert.Equal(6, time.Range.High.Days, 1e-9);
        Assert.Contains(time.Cautions, caution => caution.Code == "germination.air-temperature");
        Assert.Contains(time.Cautions, caution => caution.Code == "germination.share-not-stated");
        Assert.DoesNotContain(
            Germination.Time(Celsius(20), GerminationNeeds.Onion)!.Cautions, caution => caution.Code == "germination.share-not-stated");
    }

    // On paper onion needs no longer than the half inch of soil does, by more than the printed day.
    [Theory]
    [InlineData(10)]
    [InlineData(15)]
    [InlineData(20)]
    [InlineData(25)]
    public void Time_OnionOnPaper_IsBeforeEmergenceFromSoil(double celsius)
    {
        EmergenceReading soil = Emergence.At(Celsius(celsius), EmergenceTables.Named("knott-emergence-days", "onion"));

        Assert.True(Germination.Time(Celsius(celsius), GerminationNeeds.Onion)!.Value.Days < soil.Days!.Value.Days);
    }

    [Fact]
    public void Emergence_Table_TellsNoGerminationFromNotTestedAndFromTheGapBetween()
    {
        EmergenceTable lima = EmergenceTables.Named("knott-emergence-days", "Bean, lima");

        Assert.Equal(EmergenceFinding.NotTested, Emergence.At(Celsius(2), lima).Finding);
        Assert.Equal(EmergenceFinding.NotTested, Emergence.At(Celsius(7), lima).Finding);
        Assert.Equal(EmergenceFinding.NoGermination, Emergence.At(Celsius(10), lima).Finding);
        Assert.Equal(EmergenceFinding.Uncertain, Emergence.At(Celsius(12), lima).Finding);
        Assert.Equal(31, Emergence.At(Celsius(15), lima).Days!.Value.Days);
        Assert.Equal(7, Emergence.At(Celsius(27), lima).Days!.Value.Days);
        Assert.Equal("bean, lima at 10 °C: no germination [" + lima.Source + "]", Emergence.At(Celsius(10), lima).ToString());
    }

    [Fact]
    public void Emergence_BetweenTwoTemperatures_IsByRate()
    {
        // 13 days at 10 °C and 7 at 15 °C: half way the rate is the mean of both.
        EmergenceReading reading = Emergence.At(Celsius(12.5), EmergenceTables.Named("knott-emergence-days", "onion"));

        Assert.Equal(2 / (1 / 13.0 + 1 / 7.0), reading.Days!.Value.Days, 1e-12);
    }

    [Fact]
    public void Emergence_Artichoke_HasThePrintedRange()
    {
        EmergenceReading reading = Emergence.At(Celsius(25), EmergenceTables.Named("heirloom-emergence-days", "artichoke"));

        Assert.Equal((14.0, 17.5, 21.0), (reading.Days!.Range!.Low.Days, reading.Days.Value.Days, reading.Days.Range.High.Days));
        Assert.Contains("14 days to 21 days", reading.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void EmergenceTables_Whole_AreAllThere()
    {
        Assert.Equal(24 + 11 + 8 + 24, EmergenceTables.All.Count);
        Assert.All(EmergenceTables.All, table => Assert.Equal(table is { Crop: "muskmelon", Source.Key: "oregon-seed-germination" } ? 8 : 9, table.Cells.Count));
        Assert.Equal(
            "knott-emergence-days, oregon-seed-germination, harrington-normal-seedlings",
            string.Join(", ", EmergenceTables.Of("bean, snap").Select(table => table.Source.Key)));
    }

    [Fact]
    public void NormalSeedlings_ZeroPrintedForAMissingValue_IsMissing()
    {
        foreach ((string crop, double celsius) in new[] { ("cabbage", 20.0), ("cabbage", 30), ("cauliflower", 20), ("parsley", 15), ("eggplant", 15), ("asparagus", 40) })
            Assert.Null(NormalSeedlings.At(Celsius(celsius), NormalSeedlings.Of(crop)));
        Assert.Null(NormalSeedlings.At(Celsius(22), NormalSeedlings.Of("cabbage")));
        Assert.Equal(0, NormalSeedlings.At(Celsius(0), NormalSeedlings.Of("asparagus"))!.Value.Percent);
        Assert.Equal(93, NormalSeedlings.At(Celsius(15), NormalSeedlings.Of("Cabbage"))!.Value.Percent);
        Assert.Equal(42, NormalSeedlings.All.Sum(table => table.Cells.Count(cell => cell.Share is null)));
    }

    [Fact]
    public void GerminationRanges_Pepper_ShowWhereTheSourcesDisagree()
    {
        GerminationRangeComparison pepper = GerminationRanges.Compare("Pepper");

        Assert.Equal(3, pepper.Ranges.Count);
        Assert.Equal((59, 60), WholeFahrenheit(pepper.Minima!));
        Assert.Equal((65, 95), WholeFahrenheit(pepper.Optima!));
        Assert.Equal((85, 95), WholeFahrenheit(pepper.Maxima!));
        Assert.StartsWith("Pepper, 3 sources: minimum 59 °F to 60 °F", pepper.ToString("U", null), StringComparison.Ordinal);
    }

    [Fact]
    public void GerminationRanges_Doubtful_AreShownAndKeptOutOfTheSpans()
    {
        GerminationRangeComparison wheat = GerminationRanges.Compare("wheat");
        GerminationRangeComparison pumpkin = GerminationRanges.Compare("pumpkin");

        Assert.Contains("20 °C", Assert.Single(wheat.Ranges).ToString(), StringComparison.Ordinal);
        Assert.Contains("doubtful", wheat.Ranges[0].ToString(), StringComparison.Ordinal);
        Assert.Null(wheat.Minima);
        Assert.Equal(3, pumpkin.Ranges.Count);
        Assert.Equal(105, pumpkin.Maxima!.High.DegreesFahrenheit, 1e-9);
        Assert.Equal(5, GerminationRanges.All.Count(range => range.Doubt is not null));
    }

    [Fact]
    public void CardinalTemperatures_Fennel_StandSideBySide() =>
        Assert.Equal(
        "5, 5, 5, 3.86, 3.33",
        string.Join(", ", CardinalTemperatureRecords.Of("Fennel").Select(record => Guard.Number(record.Temperatures.Base.DegreesCelsius))));

    [Fact]
    public void Json_Published_WrittenAndRead_IsEqual()
    {
        Assert.All(GerminationNeeds.All, need => Assert.Equal(need, HortiCalcJson.Deserialize<GerminationNeed>(HortiCalcJson.Serialize(need))));
        Assert.All(CardinalTemperatureRecords.All, record => Assert.Equal(record, HortiCalcJson.Deserialize<CardinalTemperatureRecord>(HortiCalcJson.Serialize(record))));
        Assert.All(GerminationRanges.All, range => Assert.Equal(range, HortiCalcJson.Deserialize<GerminationRange>(HortiCalcJson.Serialize(range))));
        Assert.All(NormalSeedlings.All, table => Assert.Equal(table, HortiCalcJson.Deserialize<NormalSeedlingTable>(HortiCalcJson.Serialize(table))));
        GerminationRangeComparison beet = GerminationRanges.Compare("beet");
        Assert.Equal(beet, HortiCalcJson.Deserialize<GerminationRangeComparison>(HortiCalcJson.Serialize(beet)));
        Assert.Equal("\"germination.beta\"", HortiCalcJson.Serialize(GerminationResponse.Beta));
        Assert.Contains("\"NoGermination\"", HortiCalcJson.Serialize(EmergenceTables.All[0]), StringComparison.Ordinal);
    }

    [Fact]
    public void Texts_InFahrenheitAndAnotherCulture_FollowThem()
    {
        IFormatProvider german = System.Globalization.CultureInfo.GetCultureInfo("de-DE");

        Assert.Equal("base 41 °F, optimum 54.6 °F to 77 °F, ceiling 104 °F", GerminationNeeds.FennelHamedan.Temperatures.ToString("U", null));
        Assert.Equal("base 5 °C, optimum 12,5 °C to 25 °C, ceiling 40,1 °C", GerminationNeeds.FennelHamedan.Temperatures.ToString("M", german));
        Assert.StartsWith("onion: 80 °C·d to germination of 50 %; base 2.5 °C [", GerminationNeeds.Onion.ToString(), StringComparison.Ordinal);
        Assert.Equal("59 °F: 24 days", EmergenceTables.All[0].Cells[3].ToString("U", null));
        Assert.Equal("20 °C: not known", NormalSeedlings.Of("cabbage").Cells[4].ToString());
    }

    private static (double Low, double High) WholeFahrenheit(EstimateRange<Temperature> range) =>
        (Math.Round(range.Low.DegreesFahrenheit, 9), Math.Round(range.High.DegreesFahrenheit, 9));

    private static Temperature Celsius(double value) => Temperature.FromDegreesCelsius(value);
}
