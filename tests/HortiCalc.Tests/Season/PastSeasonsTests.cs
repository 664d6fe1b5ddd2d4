using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Season;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Season;

/// <summary>Plans on real weather, in the south, without frost, in the cold, and on records too short for chances.</summary>
public sealed class PastSeasonsTests
{
    private static readonly HeatToMaturity Corn = new(
        ThermalTime.FromFahrenheitDays(1539), new DegreeDayThresholds(Temperature.FromDegreesFahrenheit(50), Temperature.FromDegreesFahrenheit(86)));

    [Fact]
    public void For_RealWeatherOfFourYears_KeepsClearOfWhatItHasSeenAndSaysSo()
    {
        Crop crop = Invented.Crop(hurtAtCelsius: 0, maturity: Corn);
        SeasonPlan plan = SeasonPlan.For(Invented.Bed(crop, Invented.Site(47.4)), SeasonFiles.Seattle);

        // The latest morning at 0 °C or colder in the file is 19 March 2012, -1.1 °C.
        DateLine outside = plan.Date(PlanStep.PlantOut);
        Assert.Equal(new ColdNightOnRecord(Temperature.FromDegreesCelsius(0), 4), outside.Reason);
        Assert.Equal(new DateOnly(2027, 3, 20), outside.Date);

        HeatReached heat = Assert.IsType<HeatReached>(plan.Date(PlanStep.Harvest).Reason);
        Assert.Equal((4, null), (heat.Years, heat.Later));
        Assert.Contains(plan.Cautions, line => line.Caution.Code == "season.short-record" && line.Caution.Level == CautionLevel.Care);
        Assert.All(plan.Risks, line => Assert.Null(line.Chance));
        Assert.Contains(plan.Risks, line => line.Risk == PlanRisk.TooLittleHeat && line.Seasons == 4);
    }

    [Fact]
    public void For_SouthernSite_IsTheNorthernPlanHalfAYearLater()
    {
        Crop crop = Invented.Crop(warmCelsius: 13, maturity: Corn, pruned: true);
        SeasonPlan north = SeasonPlan.For(Invented.Pots(crop), SeasonFiles.DemoWeather);
        SeasonPlan south = SeasonPlan.For(Invented.Pots(crop, Invented.Site(-46)), Invented.Weather(daysLater: 184));
        Assert.Equal(north.Dates.Count, south.Dates.Count);
        foreach (DateLine line in north.Dates)
        {
            int later = south.Date(line.Step).Date!.Value.DayNumber - line.Date!.Value.DayNumber;
            Assert.InRange(later, 181, 187); // Months differ in length, and the seasons are cut on other days.
        }

        Assert.Equal(2028, south.Date(PlanStep.BringIndoors).Date!.Value.Year);
        Assert.Equal(2027, south.Date(PlanStep.SetOutside).Date!.Value.Year);
    }

    [Fact]
    public void For_SiteWithoutFrost_NeedsNoDatesAndHasNoRisk()
    {
        Crop crop = Invented.Crop(warmCelsius: 12, maturity: new DaysToMaturity(60), pruned: true);
        SeasonPlan plan = SeasonPlan.For(Invented.Pots(crop, Invented.Site(10)), Invented.Weather(factor: 0.3, addCelsius: 18));
        Assert.All(
            plan.Dates.Where(line => line.Step != PlanStep.Harvest),
            line =>
            {
                Assert.Null(line.Date);
                Assert.Equal(0, Assert.IsType<ColdNightsRare>(line.Reason).Share.Percent);
                Assert.Contains("any time", line.ToString(), StringComparison.Ordinal);
            });
        Assert.Empty(plan.Risks);
        Assert.Contains("\nRISKS in one season\n", plan.ToText(MeasurementSystem.Metric, null), StringComparison.Ordinal);
    }

    [Fact]
    public void For_FrostInFewerSeasonsThanAccepted_NeedsNoDate()
    {

        SeasonPlan plan = SeasonPlan.For(Invented.Pots(Invented.Crop(hurtAtCelsius: -16)), SeasonFiles.DemoWeather);
        ColdNightsRare rare = Assert.IsType<ColdNightsRare>(plan.Date(PlanStep.SetOutside).Reason);
        Assert.InRange(rare.Share.Percent, 0.1, 10);
    }

    [Fact]
    public void For_PlaceTooCoolForTheCrop_SaysThatThereIsNoDate()
    {
        Crop crop = Invented.Crop(warmCelsius: 25, maturity: new DaysToMaturity(60));
        SeasonPlan plan = SeasonPlan.For(Invented.Bed(crop), SeasonFiles.DemoWeather);
        Assert.IsType<WarmthNotReached>(plan.Date(PlanStep.PlantOut).Reason);
        Assert.Null(plan.Date(PlanStep.PlantOut).Date);
        Assert.Null(plan.Date(PlanStep.Harvest).Date);
    }

    [Fact]
    public void For_SumThatNoYearReaches_SaysThatThereIsNoDateAndCountsEveryYear()
    {
        Crop crop = Invented.Crop(maturity: new HeatToMaturity(ThermalTime.FromCelsiusDays(5000), new DegreeDayThresholds(Temperature.FromDegreesCelsius(10))));
        SeasonPlan plan = SeasonPlan.For(Invented.Bed(crop), SeasonFiles.DemoWeather);
        Assert.IsType<DateNotKnown>(plan.Date(PlanStep.Harvest).Reason);
        RiskLine risk = plan.Risks.Single(line => line.Risk == PlanRisk.TooLittleHeat);
        Assert.Equal(30, risk.Seasons);
        Assert.Equal(risk.Seasons, risk.Times);
    }

    [Fact]
    public void For_RecordOfOneDay_StillPlansWhatNeedsNoWeather()
    {
        DailyTemperatures day = DailyTemperatures.Create(new DateOnly(2025, 7, 1), [10], [20], TemperatureUnit.DegreeCelsius);
        Crop crop = Invented.Crop(warmCelsius: 13, maturity: Corn, pruned: true, raising: new Raising(Propagule.Seed, Ratio.FromPercent(80), 6));
        SeasonPlan plan = SeasonPlan.For(Invented.Pots(crop), day);
        Assert.All(plan.Dates, line => Assert.Null(line.Date));
        Assert.NotEmpty(plan.Supplies);
        Assert.Contains("no date", plan.ToText(MeasurementSystem.Metric, null), StringComparison.Ordinal);
    }

    [Fact]
    public void PlantOut_AtItsAcceptedChance_HasThatRisk()
    {
        SeasonPlan plan = SeasonPlan.For(Invented.Bed(Invented.Crop()), SeasonFiles.DemoWeather);
        RiskLine risk = plan.Risks.Single(line => line.Risk == PlanRisk.ColdAfterPlantingOut);
        Assert.InRange(risk.Chance!.Value.Percent, 9, 11); // A whole day is as near as a date can come to 10 %.
        Assert.InRange(risk.Times, 1, 5);
        Assert.Equal(30, risk.Seasons);
    }

    [Fact]
    public void For_Null_IsRefused()
    {
        Assert.Throws<ArgumentNullException>("garden", () => SeasonPlan.For(null!, SeasonFiles.Seattle));
        Assert.Throws<ArgumentNullException>("days", () => SeasonPlan.For(SeasonFiles.DemoGarden, null!));
    }
}
