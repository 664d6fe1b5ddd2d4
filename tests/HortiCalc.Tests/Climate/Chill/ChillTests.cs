using System.Text.Json;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Tests.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

public class ChillTests
{
    private static readonly DateTime Start = new(2024, 11, 1);

    [Fact]
    public void Dynamic_ConstantSixDegrees_FixesItsFirstPortionAfter29Hours()
    {
        HourlyAccumulation chill = Chill.Accumulate(Constant(6, 100), ChillModel.Dynamic);

        Assert.Equal(Start.AddHours(28), chill.Reached(0.5));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(6)]
    [InlineData(10)]
    public void Dynamic_ConstantCold_FixesItsFirstPortionInTheHourOfTheClosedForm(double celsius)
    {
        // x(n) = xs (1 - exp(-k n)): the product is complete in the first hour with x >= 1.
        double kelvin = celsius + 273;
        double balance = 139_500 / 2.567e18 * Math.Exp((12888.8 - 4153.5) / kelvin);
        double rate = 2.567e18 * Math.Exp(-12888.8 / kelvin);
        int first = (int)Math.Ceiling(Math.Log(balance / (balance - 1)) / rate);
        double product = balance * (1 - Math.Exp(-rate * first));
        double portion = product / (1 + Math.Exp(-1.6 * 277 * (kelvin - 277) / kelvin));

        HourlyAccumulation chill = Chill.Accumulate(Constant(celsius, 100), ChillModel.Dynamic);

        Assert.Equal(0, chill.SumAt(Start.AddHours(first - 2)));
        Assert.Equal(portion, chill[Start.AddHours(first - 1)]!.Value, 1e-12);
    }

    [Theory]
    [InlineData(13)]
    [InlineData(15)]
    [InlineData(25)]
    public void Dynamic_ConstantWarmth_FixesNothing(double celsius) =>
        Assert.Equal(0, Chill.Accumulate(Constant(celsius, 3000), ChillModel.Dynamic).Total);

    [Fact]
    public void Dynamic_ConstantCold_IsMostEffectiveAboutSix()
    {
        int best = Enumerable.Range(-5, 18).MaxBy(celsius => Chill.Accumulate(Constant(celsius, 5000), ChillModel.Dynamic).Total);

        Assert.InRange(best, 5, 8);
    }

    [Fact]
    public void Dynamic_WarmthBeforeAPortionIsFixed_DelaysItAndAfterwardsDoesNot()
    {
        double[] cold = [.. Enumerable.Repeat(6.0, 28)];
        double[] warm = [.. Enumerable.Repeat(24.0, 24)];

        Assert.True(Of([.. cold, 6]).Total > 0);
        Assert.Equal(0, Of([.. cold, .. warm, 6]).Total);
        Assert.Equal(Of([.. cold, 6]).Total, Of([.. cold, 6, .. warm]).Total);
    }

    [Fact]
    public void Dynamic_FrostThenMildCold_FixesMoreThanOnePortionAtOnce()
    {
        HourlyAccumulation chill = Of([.. Enumerable.Repeat(0.0, 200), 6]);

        Assert.InRange(chill.SumAt(chill.End.AddHours(-1)), 0, 1);
        Assert.True(chill[chill.End] > 1);
    }

    [Theory]
    [InlineData("hours-below-7.2", 7.2, 0)]
    [InlineData("hours-to-7.2", 7.2, 1)]
    [InlineData("hours-below-7.2", -8, 1)]
    [InlineData("hours-0-to-7.2", 7.2, 1)]
    [InlineData("hours-0-to-7.2", 0, 1)]
    [InlineData("hours-0-to-7.2", -0.1, 0)]
    [InlineData("hours-within-0-and-7.2", 0, 0)]
    [InlineData("hours-within-0-and-7.2", 7.2, 0)]
    [InlineData("hours-within-0-and-7.2", 0.1, 1)]
    [InlineData("hours-below-7", 7, 0)]
    [InlineData("hours-below-7", 6.9, 1)]
    [InlineData("utah-celsius", 9.0, 1)]
    [InlineData("utah-fahrenheit", 9.0, 0.5)]
    [InlineData("utah-celsius", 18.1, -1)]
    [InlineData("utah-fahrenheit", 18.1, -0.5)]
    [InlineData("positive-utah-hourly", 30, 0)]
    [InlineData("positive-utah-daily", 30, 0)]
    public void AnyModel_OnItsLimits_CountsAsItSays(string model, double celsius, double expected) =>
        Assert.Equal(expected, Chill.Accumulate(Constant(celsius, 1), ChillModel.FromKey(model)).Total, 1e-12);

    [Theory]
    [InlineData("hours-below-45F", 45, 0)]
    [InlineData("hours-32F-to-45F", 45, 1)]
    [InlineData("hours-32F-to-45F", 32, 1)]
    [InlineData("hours-to-7.2", 45, 0)]
    public void HoursInFahrenheit_OnTheLimit_CountAsTheySay(string model, double fahrenheit, double expected) => Assert.Equal(
        expected,
        Chill.Accumulate(HourlyTemperatures.Create(Start, [fahrenheit], TemperatureUnit.DegreeFahrenheit), ChillModel.FromKey(model)).Total);

    [Fact]
    public void SeasonStart_ByHemisphere_IsPublishedOrHalfAYearLater()
    {
        Assert.Equal(new MonthDay(11, 1), ChillModel.HoursBelow.SeasonStart(Hemisphere.Northern));
        Assert.Equal(new MonthDay(5, 1), ChillModel.HoursBelow.SeasonStart(Hemisphere.Southern));
        Assert.Equal(new MonthDay(9, 1), ChillModel.Dynamic.SeasonStart(Hemisphere.Northern));
        Assert.Equal(new MonthDay(3, 1), ChillModel.Dynamic.SeasonStart(Hemisphere.Southern));
        Assert.Null(ChillModel.UtahCelsius.SeasonStart(Hemisphere.Southern));
        Assert.Throws<ArgumentOutOfRangeException>(() => ChillModel.Dynamic.SeasonStart((Hemisphere)7));
    }

    [Fact]
    public void LowestSumAt_WarmAutumn_IsWhereUtahUnitsBegin()
    {
        HourlyTemperatures autumn = HourlyTemperatures.Create(
            Start, [.. Enumerable.Repeat(20.0, 50), .. Enumerable.Repeat(14.0, 10), .. Enumerable.Repeat(5.0, 60)], TemperatureUnit.DegreeCelsius);
        HourlyAccumulation all = Chill.Accumulate(autumn, ChillModel.UtahCelsius);

        Assert.Equal(Start.AddHours(59), all.LowestSumAt);
        Assert.Equal(60, Chill.Accumulate(autumn, ChillModel.UtahCelsius, from: all.LowestSumAt.AddHours(1)).Total);
        Assert.Equal(10, all.Total);
    }

    [Fact]
    public void PositiveUtahDaily_GapAtTheEndOfADay_AddsTheDayWithItsLastKnownHour()
    {
        double[] celsius = [.. Enumerable.Repeat(5.0, 23), double.NaN, .. Enumerable.Repeat(25.0, 24)];

        HourlyAccumulation chill = Chill.Accumulate(
            HourlyTemperatures.Create(Start, celsius, TemperatureUnit.DegreeCelsius), ChillModel.PositiveUtahDaily);

        Assert.Equal(23, chill[Start.AddHours(22)]);
        Assert.Null(chill[Start.AddHours(23)]);
        Assert.Equal(23, chill.Total);
    }

    [Fact]
    public void Accumulate_TooManyMissing_IsRefusedUnlessAccepted()
    {
        HourlyTemperatures hours = HourlyTemperatures.Create(Start, [5, double.NaN, 5, 5], TemperatureUnit.DegreeCelsius);

        ArgumentException refusal = Assert.Throws<ArgumentException>(() => Chill.Accumulate(hours, ChillModel.Dynamic));
        Assert.Equal("hours", refusal.ParamName);
        Assert.Contains("1 of 4 missing", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("allowed: up to 5 %", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(3, Chill.Accumulate(hours, ChillModel.HoursBelow, maximumMissing: Ratio.FromPercent(25)).Total);
        Assert.Throws<ArgumentException>(() => Chill.Accumulate(
            HourlyTemperatures.Create(Start, [double.NaN], TemperatureUnit.DegreeCelsius), ChillModel.Dynamic, maximumMissing: Ratio.FromPercent(100)));
        Assert.Equal("from", Assert.Throws<ArgumentOutOfRangeException>(() => Chill.Accumulate(hours, ChillModel.Dynamic, Start.AddDays(1))).ParamName);
        Assert.Throws<ArgumentNullException>(() => Chill.Accumulate(hours, null!));
        Assert.Throws<ArgumentNullException>(() => Chill.Accumulate(null!, ChillModel.Dynamic));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void Reached_NoRequirement_IsRefused(double requirement)
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(
            () => Chill.Accumulate(Constant(5, 10), ChillModel.Dynamic).Reached(requirement));

        Assert.Equal("requirement", refusal.ParamName);
        Assert.Contains("0 chill portions or more", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void FulfilledBy_OwnModel_SaysWhenWithoutTheCautionOfAnother()
    {
        ChillRequirement fig = ChillRequirements.Named("mrcc-chilling-hours", "Fig");
        HourlyAccumulation chill = Chill.Accumulate(Constant(5, 150), ChillModel.HoursFromFreezingFahrenheit);

        ChillFulfilment met = fig.FulfilledBy(chill);

        Assert.Equal(Start.AddHours(99), met.Reached);
        Assert.Null(met.HighReached);
        Assert.Equal(150, met.Total);
        Assert.DoesNotContain(met.Cautions, caution => caution.Code == "chill.other-model");
        Assert.Contains("Fig: 100 to 200 chill hours, met: 2024-11-05 03:00", met.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void FulfilledBy_AnotherModel_CarriesTheCaution()
    {
        ChillFulfilment met = ChillRequirements.Named("uc-fruit-and-nut-portions", "Peach", "Redhaven")
            .FulfilledBy(Chill.Accumulate(Constant(5, 150), ChillModel.HoursBelow));

        Assert.Contains(met.Cautions, caution => caution.Code == "chill.other-model" && caution.Level == CautionLevel.Care);
    }

    [Fact]
    public void Requirements_AllTables_AreKeptWhole()
    {
        Assert.Equal(46 + 39 + 27 + 19 + 31, ChillRequirements.All.Count);
        Assert.Equal(ChillRequirements.All.Count, ChillRequirements.All.Distinct().Count());
        Assert.Equal(["Apricot"], ChillRequirements.Of("apricot").Select(row => row.Crop).Distinct());
        Assert.Empty(ChillRequirements.Of("banana"));
        Assert.Equal("Citrus: no chill", ChillRequirements.Named("australian-nursery-chill", "Citrus").ToString());
        Assert.Equal("Grape: 100 or more chill hours", ChillRequirements.Named("mrcc-chilling-hours", "Grape").ToString());
        ArgumentException refusal = Assert.Throws<ArgumentException>(() => ChillRequirements.Named("mrcc-chilling-hours", "Banana"));
        Assert.Contains("uc-fruit-and-nut-portions", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Requirement_Edges_AreRefused()
    {
        Source source = Source.CommonPractice("mine", "my own orchard");

        Assert.Equal("low", Assert.Throws<ArgumentOutOfRangeException>(() => new ChillRequirement("Fig", null, ChillModel.Dynamic, -1, 2, source)).ParamName);
        Assert.Equal("high", Assert.Throws<ArgumentOutOfRangeException>(() => new ChillRequirement("Fig", null, ChillModel.Dynamic, 3, 2, source)).ParamName);
        Assert.Equal("crop", Assert.Throws<ArgumentException>(() => new ChillRequirement(" ", null, ChillModel.Dynamic, 1, 2, source)).ParamName);
    }

    [Fact]
    public void GrowingDegreeHours_AtTheThreeTemperatures_AreNothingFullAndNothing()
    {
        Assert.Equal(0, Heat(4));
        Assert.Equal(10.5, Heat(14.5), 1e-12);
        Assert.Equal(21, Heat(25), 1e-12);
        Assert.Equal(0, Heat(36), 1e-12);
        Assert.Equal(0, Heat(-10));

        static double Heat(double celsius) => GrowingDegreeHours.Accumulate(Constant(celsius, 1)).Total;
    }

    [Fact]
    public void AnyModel_FromDailyExtremes_CountsOnDrawnHours()
    {
        DailyTemperatures days = DailyTemperatures.Create(
            new DateOnly(2024, 12, 1), [.. Enumerable.Repeat(2.0, 92)], [.. Enumerable.Repeat(11.0, 92)], TemperatureUnit.DegreeCelsius);

        HourlyTemperatures hours = DiurnalCourse.Hourly(days, Angle.FromDegrees(38), DiurnalCurve.SineLogarithm).Value;
        HourlyTemperatures inner = hours.Between(new DateTime(2024, 12, 2), new DateTime(2025, 3, 1, 23, 0, 0));

        Assert.InRange(Chill.Accumulate(inner, ChillModel.Dynamic).Total, 55, 75);
    }

    [Fact]
    public void ToString_InAnyCulture_IsOneHonestLine()
    {
        using CultureScope german = new("de-DE");

        Assert.Equal(
            "1.5 chill units from 2024-11-01 00:00 to 2024-11-01 01:00, 0 missing; Utah chill units, Celsius bands "
            + "[Fresh Quarterly, Hortgro, South Africa, The fundamental flaws of chill models, table 1 (2021)]; 1 caution",
            Chill.Accumulate(HourlyTemperatures.Create(Start, [2, 5], TemperatureUnit.DegreeCelsius), ChillModel.UtahCelsius).ToString());
        Assert.Contains("(from memory)", Chill.Accumulate(Constant(5, 2), ChillModel.Dynamic).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Json_EveryType_ComesBackEqual()
    {
        HourlyTemperatures hours = HourlyTemperatures.Create(Start.AddHours(5), [1.25, double.NaN, -3], TemperatureUnit.DegreeCelsius);
        HourlyAccumulation chill = Chill.Accumulate(hours, ChillModel.Dynamic, maximumMissing: Ratio.FromPercent(50));
        RoundTrip(hours);
        RoundTrip(chill);
        RoundTrip(ChillRequirements.All[0].FulfilledBy(chill));
        RoundTrip(DiurnalCourse.Hourly(
            DailyTemperatures.Create(new DateOnly(2024, 3, 1), [1.0], [9.0], TemperatureUnit.DegreeCelsius), Angle.FromDegrees(45), DiurnalCurve.SineExponential));
        RoundTrip(Daylight.Declination(new DateOnly(2024, 3, 1), DaylightMethod.Almanac));
        Assert.All(ChillRequirements.All, RoundTrip);
        Assert.All(ChillModel.All, RoundTrip);
        Assert.All(DiurnalCurve.All, RoundTrip);
        Assert.All(DaylightMethod.All, RoundTrip);
    }

    [Theory]
    [InlineData("""{"start":"2024-11-01T00:30","unit":"°C","values":[1]}""", "full hour")]
    [InlineData("""{"start":"2024-11-01","unit":"°C","values":[1]}""", "2024-02-28T13:00")]
    [InlineData("""{"start":"2024-11-01T00:00","unit":"R","values":[1]}""", "known: °C")]
    [InlineData("""{"start":"2024-11-01T00:00","unit":"°C"}""", "\"values\" is missing")]
    [InlineData("""{"start":"2024-11-01T00:00","unit":"°C","values":[99]}""", "from -90 to 60")]
    public void Json_MalformedHours_AreRefusedWithWhatIsWrong(string json, string said)
    {
        JsonException refusal = Assert.Throws<JsonException>(() => JsonSerializer.Deserialize(json, HortiCalcJsonContext.Default.HourlyTemperatures));

        Assert.Contains(said, refusal.Message, StringComparison.Ordinal);
    }

    private static void RoundTrip<T>(T value) => Assert.Equal(
        value, JsonSerializer.Deserialize<T>(JsonSerializer.Serialize(value, HortiCalcJson.Options), HortiCalcJson.Options));

    private static HourlyAccumulation Of(double[] celsius) =>
        Chill.Accumulate(HourlyTemperatures.Create(Start, celsius, TemperatureUnit.DegreeCelsius), ChillModel.Dynamic);

    private static HourlyTemperatures Constant(double celsius, int hours) =>
        HourlyTemperatures.Create(Start, [.. Enumerable.Repeat(celsius, hours)], TemperatureUnit.DegreeCelsius);
}
