using HortiCalc.Mixes;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>Spray jobs, limits and dates by examples, and what is refused.</summary>
public class SprayTests
{
    [Fact]
    public void Job_WholeTanks_LeaveNoLast()
    {
        SprayJob job = new(Area.FromHectares(0.3), VolumeRate.FromLitresPerHectare(100), Volume.FromLiters(10));
        Assert.Equal((3, 0), (job.FullTanks, job.LastTank.Liters));
        Assert.Equal("30 L of spray on 3,000 m²: 3 full tanks of 10 L", job.ToString());
    }

    [Fact]
    public void Job_WithALastPart_SaysHowMuchProductGoesIn()
    {
        SprayJob job = new(Area.FromSquareMeters(1200), VolumeRate.FromLitresPerHectare(200), Volume.FromLiters(10));
        Assert.Equal((2, 4), (job.FullTanks, job.LastTank.Liters), (one, other) => one.Item1 == other.Item1 && Math.Abs(one.Item2 - other.Item2) < 1e-9);
        Assert.Equal(250, job.ProductIn(job.Tank, VolumeRate.FromLitresPerHectare(5)).Milliliters, 6);
        Assert.Equal(100, job.ProductIn(job.LastTank, VolumeRate.FromLitresPerHectare(5)).Milliliters, 6);
        Assert.Equal(50, job.ProductIn(job.Tank, AreaDensity.FromGramsPerSquareMeter(0.1)).Grams, 6);
    }

    [Fact]
    public void Job_ATankTooSmall_IsRefused() => Assert.Equal(
        "tank",
        Assert.Throws<ArgumentOutOfRangeException>(
            () => new SprayJob(Area.FromHectares(100), VolumeRate.FromLitresPerHectare(1000), Volume.FromMilliliters(1))).ParamName);

    [Fact]
    public void TreeRows_TenByTenAtTwenty_AreFiftyOrTwoHundredGallons()
    {
        double Gallons(TreeRowRule rule) => SprayerCalibration.ForTreeRows(
            Length.FromFeet(10), Length.FromFeet(10), Length.FromFeet(20), rule).Value.UsGallonsPerAcre;
        Assert.Equal(50, Gallons(TreeRowRule.Nursery), 6);
        Assert.Equal(200, Gallons(TreeRowRule.Orchard), 6);
    }

    [Fact]
    public void TreeRows_RulesBySource_NameTheirSource()
    {
        string Key(TreeRowRule rule) => SprayerCalibration.ForTreeRows(
            Length.FromMeters(2), Length.FromMeters(2), Length.FromMeters(4), rule).Method.Source.Key;
        Assert.Equal("ohio-tree-row-volume", Key(TreeRowRule.Orchard));
        Assert.Equal("cornell-tree-row-volume", Key(TreeRowRule.WellPrunedOrchard));
    }

    [Fact]
    public void TreeRowVolume_NoSpacing_IsRefused() => Assert.Equal(
        "rowSpacing",
        Assert.Throws<ArgumentOutOfRangeException>(() => SprayerCalibration.TreeRowVolume(
            Area.FromHectares(1), Length.FromMeters(2), Length.FromMeters(3), Length.Zero)).ParamName);

    [Theory]
    [InlineData(0, 3, 2, "flow")]
    [InlineData(1.2, 0, 2, "pressure")]
    [InlineData(1.2, 3, 0, "other")]
    public void PressureForFlow_OutsideWhatIsAllowed_NamesTheParameter(double litres, double bars, double otherLitres, string parameter) =>
        Assert.Equal(parameter, Assert.ThrowsAny<ArgumentException>(() => SprayerCalibration.PressureForFlow(
            VolumeFlow.FromLitersPerMinute(litres), Pressure.FromBars(bars), VolumeFlow.FromLitersPerMinute(otherLitres))).ParamName);

    [Fact]
    public void FlowAtPressure_NoPressure_IsRefused() => Assert.Equal(
        "other",
        Assert.Throws<ArgumentOutOfRangeException>(() => SprayerCalibration.FlowAtPressure(
            VolumeFlow.FromLitersPerMinute(1), Pressure.FromBars(3), Pressure.Zero)).ParamName);

    [Fact]
    public void Rate_SameInOtherUnits_IsEqual() =>
        Assert.Equal(VolumeRate.FromUsGallonsPerAcre(43.56), VolumeRate.Of(Volume.FromUsGallons(1), Area.FromSquareFeet(1000)));

    [Fact]
    public void Against_OilOnDryPlants_IsForbiddenAtAnyHeat()
    {
        Assert.Empty(SprayLimits.Against(MixIngredients.HorticulturalOil, Temperature.FromDegreesFahrenheit(70), areShortOfWater: false));
        Assert.Single(SprayLimits.Against(MixIngredients.HorticulturalOil, Temperature.FromDegreesFahrenheit(70), areShortOfWater: true));
        Assert.NotEmpty(SprayLimits.Against(MixIngredients.HorticulturalOil, Temperature.FromDegreesFahrenheit(90), areShortOfWater: false));
        Assert.NotEmpty(SprayLimits.Against(MixIngredients.HorticulturalOil, Temperature.FromDegreesFahrenheit(39), areShortOfWater: false));
        Assert.NotEmpty(SprayLimits.Against(MixIngredients.LiquidSoap, Temperature.FromDegreesFahrenheit(91), areShortOfWater: false));
    }

    [Theory]
    [InlineData(79, 0)]
    [InlineData(80, 2)]
    [InlineData(85, 3)]
    [InlineData(90, 4)]
    public void Against_Sulfur_EachSourceHasItsOwnCeiling(double fahrenheit, int limits) => Assert.Equal(
        limits,
        SprayLimits.Against(MixIngredients.WettableSulfur, Temperature.FromDegreesFahrenheit(fahrenheit), areShortOfWater: false).Count(limit => !limit.IsNever));

    /// <summary>Some plants are not to be sprayed in any weather, and the answer says which.</summary>
    [Fact]
    public void Against_SulfurInMildWeather_IsStillNeverForApricots()
    {
        SprayLimit never = Assert.Single(SprayLimits.Against(MixIngredients.WettableSulfur, Temperature.FromDegreesCelsius(20), areShortOfWater: false));
        Assert.Equal("apricot", never.Plants);
        Assert.True(never.IsNever);
        Assert.StartsWith("Sulfur on apricot: never [", never.ToString(), StringComparison.Ordinal);
        Assert.Equal("above", Assert.Throws<ArgumentException>(() => new SprayLimit(IngredientClass.Sulfur, "", null, null, false, never.Source)).ParamName);
    }

    [Fact]
    public void After_TwoProducts_TakesTheLaterOfEach()
    {
        DateTime end = new(2028, 2, 27, 18, 0, 0);
        SprayWait wait = SprayCalendar.After(
            end, new SprayedProduct("a", Duration.FromHours(48), 0), new SprayedProduct("b", Duration.FromHours(12), 3));
        Assert.Equal(new DateTime(2028, 2, 29, 18, 0, 0), wait.EntryFrom);
        Assert.Equal(new DateTime(2028, 3, 1, 18, 0, 0), wait.HarvestFrom);
    }

    [Fact]
    public void After_EntryLongerThanHarvest_EntryDecides()
    {
        SprayWait wait = SprayCalendar.After(new DateTime(2027, 6, 1), new SprayedProduct("a", Duration.FromHours(72), 2));
        Assert.Equal(wait.EntryFrom, wait.HarvestFrom);
    }

    [Fact]
    public void LastEndBefore_ADayOfRestrictedEntry_TakesTheHourToo()
    {
        SprayedProduct product = new("a", Duration.FromHours(24), 1);
        DateTime harvest = new(2027, 6, 8, 9, 0, 0);
        Assert.Equal(new DateTime(2027, 6, 7, 9, 0, 0), SprayCalendar.LastEndBefore(harvest, product));
        Assert.Equal(new DateOnly(2027, 6, 7), SprayCalendar.LastDayBefore(new DateOnly(2027, 6, 8), product));
        Assert.True(SprayCalendar.After(new DateTime(2027, 6, 7, 18, 0, 0), product).HarvestFrom > harvest);
        Assert.Equal("products", Assert.Throws<ArgumentException>(() => SprayCalendar.LastEndBefore(harvest)).ParamName);
    }

    [Fact]
    public void LastEndBefore_TheCalendarBegins_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(
        () => SprayCalendar.LastEndBefore(DateTime.MinValue.AddHours(1), new SprayedProduct("a", Duration.FromHours(12), 0)));

    [Fact]
    public void JobsWaitsAndRecipes_CarryTheCautionsOfSpraying()
    {
        SprayJob job = new(Area.FromSquareMeters(1200), VolumeRate.FromLitresPerHectare(200), Volume.FromLiters(10));
        Assert.Equal(["mix.label-decides", "spray.drift", "mix.protect-skin-and-eyes"], job.Cautions.Select(caution => caution.Code));
        Assert.Equal(["mix.label-decides"], SprayCalendar.After(new DateTime(2027, 6, 1), new SprayedProduct("a", Duration.FromHours(12), 0)).Cautions.Select(caution => caution.Code));
        Assert.All(FoliarRecipes.All, recipe => Assert.Contains(recipe.Cautions, caution => caution.Code == "spray.drift"));
    }

    [Fact]
    public void Repeat_SevenDaysOverAMonthWithAMost_StopsThere()
    {
        IReadOnlyList<DateOnly> dates = SprayCalendar.Repeat(new DateOnly(2027, 6, 1), 7, new DateOnly(2027, 6, 30), most: 3);
        Assert.Equal([new DateOnly(2027, 6, 1), new DateOnly(2027, 6, 8), new DateOnly(2027, 6, 15)], dates);
        Assert.Equal("last", Assert.Throws<ArgumentOutOfRangeException>(
            () => SprayCalendar.Repeat(new DateOnly(2027, 6, 1), 7, new DateOnly(2027, 5, 30), most: 3)).ParamName);
        Assert.Equal("days", Assert.Throws<ArgumentOutOfRangeException>(
            () => SprayCalendar.Repeat(new DateOnly(2027, 6, 1), 0, new DateOnly(2027, 6, 30), most: 3)).ParamName);
    }

    [Fact]
    public void LimeSulfur_OutsideItsDensities_IsRefused()
    {
        Assert.Equal("concentrate", Assert.Throws<ArgumentOutOfRangeException>(() => LimeSulfur.MakeUpTo(
            Volume.FromLiters(10), Density.FromKilogramsPerLiter(1.1), LimeSulfur.DormantSpray)).ParamName);
        Assert.Equal("spray", Assert.Throws<ArgumentOutOfRangeException>(() => LimeSulfur.MakeUpTo(
            Volume.FromLiters(10), Density.FromKilogramsPerLiter(1.28), Density.FromKilogramsPerLiter(1))).ParamName);
    }

    [Fact]
    public void Calibration_ImpossibleInputs_AreNamed()
    {
        Assert.Equal("width", Assert.Throws<ArgumentOutOfRangeException>(() => SprayerCalibration.CourseFor128thAcre(Length.Zero)).ParamName);
        Assert.Equal("speed", Assert.Throws<ArgumentOutOfRangeException>(
            () => SprayerCalibration.FromFlow(VolumeFlow.FromLitersPerMinute(1), Speed.Zero, Length.FromMeters(1))).ParamName);
        Assert.Equal("time", Assert.Throws<ArgumentOutOfRangeException>(
            () => SprayerCalibration.SpeedOver(Length.FromMeters(1), Duration.Zero)).ParamName);
        Assert.Equal("products", Assert.Throws<ArgumentException>(() => SprayCalendar.After(new DateTime(2027, 6, 1))).ParamName);
    }

    [Fact]
    public void Wait_HarvestBeforeEntry_IsRefused()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => new SprayWait(new DateTime(2027, 6, 2, 18, 0, 0), new DateTime(2027, 6, 1)));
        Assert.Equal("harvestFrom", refused.ParamName);
        Assert.Contains("2027-06-02 18:00 or later", refused.Message, StringComparison.Ordinal);
    }
}
