using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Climate;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

[Properties(MaxTest = 40)]
public class HeatForecastProperties
{
    private static readonly DateOnly First = new(2003, 4, 1);
    private static readonly Ratio Half = Ratio.FromPercent(50);

    [Property]
    public void For_ConstantYears_GivesTheDatesOfTheClosedForm(int seed, PositiveInt need, PositiveInt days)
    {
        double[] years = Years(seed, 9);
        int soFar = 1 + days.Get % 40;
        double sum = 500 + need.Get % 900;

        HeatForecast forecast = Make(years, soFar, 8, sum);

        for (int year = 0; year < years.Length; year++)
        {
            int more = (int)Math.Ceiling((sum - soFar * 8) / years[year] - 1e-9);
            Assert.Equal(Present.AddDays(soFar + more - 1), forecast.Years[year].Date);
            Assert.Equal(Present.AddDays((int)Math.Ceiling(sum / years[year] - 1e-9) - 1), forecast.Years[year].UsualDate);
        }
    }

    [Property]
    public void For_MoreHeatSoFar_IsNotLater(int seed, PositiveInt more)
    {
        double[] years = Years(seed, 9);
        double warmer = 8 + more.Get % 60 / 10.0;

        Assert.True(Make(years, 30, warmer, 900).Middle.Date <= Make(years, 30, 8, 900).Middle.Date);
        Assert.True(Make(years, 30, warmer, 900).Late.Date <= Make(years, 30, 8, 900).Late.Date);
    }

    [Property]
    public void For_LargerRequirement_IsNotEarlier(int seed, PositiveInt more)
    {
        double[] years = Years(seed, 9);

        Assert.True(Make(years, 30, 8, 700 + more.Get % 300).Middle.Date >= Make(years, 30, 8, 700).Middle.Date);
    }

    [Property]
    public void For_AWarmerPastYear_MovesOnlyItsOwnDateAndNoQuantileLater(int seed, PositiveInt which)
    {
        double[] years = Years(seed, 9);
        int year = which.Get % 9;
        double[] warmer = [.. years];
        warmer[year] += 3;

        HeatForecast before = Make(years, 30, 8, 900);
        HeatForecast after = Make(warmer, 30, 8, 900);

        Assert.True(after.Years[year].Date < before.Years[year].Date);
        Assert.Equal(before.Years.Where((_, index) => index != year), after.Years.Where((_, index) => index != year));
        Assert.True(after.Middle.Date <= before.Middle.Date);
    }

    [Property]
    public void DateAt_HigherLevel_IsNotEarlier(int seed, PositiveInt one, PositiveInt other)
    {
        HeatForecast forecast = Make(Years(seed, 9), 30, 8, 900);
        Ratio low = Ratio.FromPercent(10 + Math.Min(one.Get % 81, other.Get % 81));
        Ratio high = Ratio.FromPercent(10 + Math.Max(one.Get % 81, other.Get % 81));

        Assert.True(forecast.DateAt(low)!.Value <= forecast.DateAt(high)!.Value);
        Assert.True(forecast.UsualDateAt(low)!.Value <= forecast.UsualDateAt(high)!.Value);
    }

    [Property]
    public void DateAt_AnyLevel_LiesBetweenTheExtremes(int seed, PositiveInt level)
    {
        HeatForecast forecast = Make(Years(seed, 9), 30, 8, 900);
        DateOnly date = forecast.DateAt(Ratio.FromPercent(10 + level.Get % 81))!.Value;

        Assert.InRange(date, forecast.Years.Min(year => year.Date!.Value), forecast.Years.Max(year => year.Date!.Value));
    }

    [Property]
    public void For_YearsThatAreAllTheSame_HaveOneDateHoweverMany(PositiveInt temperature, PositiveInt more)
    {
        double celsius = 6 + temperature.Get % 10;

        HeatForecast few = Make([.. Enumerable.Repeat(celsius, 5)], 30, 8, 900);
        HeatForecast many = Make([.. Enumerable.Repeat(celsius, 6 + more.Get % 12)], 30, 8, 900);

        Assert.Equal(few.Middle.Date, many.Middle.Date);
        Assert.Equal(few.Early.Date, many.Late.Date);
    }

    [Property]
    public void For_EveryYearTwice_HasTheSameMiddle(int seed)
    {
        double[] years = Years(seed, 7);

        Assert.Equal(Make(years, 30, 8, 900).Middle, Make([.. years, .. years], 30, 8, 900).Middle);
    }

    [Property]
    public void For_YearsInAnotherOrder_HasTheSameQuantilesAndSkill(int seed)
    {
        double[] years = Years(seed, 9);
        HeatForecast one = Make(years, 30, 8, 900);
        HeatForecast other = Make([.. years.Reverse()], 30, 8, 900);

        Assert.Equal((one.Early, one.Middle, one.Late), (other.Early, other.Middle, other.Late));
        Assert.Equal(one.Skill!.Coverage, other.Skill!.Coverage);
        Assert.Equal(one.Skill.MeanAbsoluteError.Days, other.Skill.MeanAbsoluteError.Days, 1e-9);
    }

    [Property]
    public void For_HalfAYearLater_MovesEveryDateWithTheSeason(int seed)
    {
        double[] years = Years(seed, 9);
        DateOnly south = new(2003, 10, 1);

        HeatForecast northern = Make(years, 30, 8, 700);
        HeatForecast southern = HeatForecast.For(
            ForecastRecords.Needs(700), ForecastRecords.SoFar(south.AddYears(9), 30, 8), ForecastRecords.Constant(south, years));

        // All dates come before the end of February, which leap years make longer.
        Assert.Equal(
            northern.Years.Select(year => year.Date!.Value.DayNumber - northern.Start.DayNumber),
            southern.Years.Select(year => year.Date!.Value.DayNumber - southern.Start.DayNumber));
    }

    [Property]
    public void For_FahrenheitRecordAndRequirement_GivesTheSameDates(int seed)
    {
        double[] years = Years(seed, 9);
        DailyTemperatures past = ForecastRecords.Constant(First, years);
        double[] minima = [.. Enumerable.Range(0, past.Count).Select(day => past.MinimaCelsius[day] * 1.8 + 32)];
        double[] maxima = [.. Enumerable.Range(0, past.Count).Select(day => past.MaximaCelsius[day] * 1.8 + 32)];
        DailyTemperatures fahrenheit = DailyTemperatures.Create(First, minima, maxima, TemperatureUnit.DegreeFahrenheit);
        HeatRequirement need = new(
            ThermalTime.FromFahrenheitDays(900 * 1.8),
            new DegreeDayThresholds(Temperature.FromDegreesFahrenheit(32)),
            DegreeDayMethod.SimpleAverage,
            UpperCutoff.None,
            ForecastRecords.Page);

        HeatForecast forecast = HeatForecast.For(need, ForecastRecords.SoFar(Present, 30, 8), fahrenheit);

        Assert.Equal(Make(years, 30, 8, 900).Years, forecast.Years);
    }

    [Property]
    public void For_ASeasonThatEndsEarlier_OnlyTurnsLateDatesIntoNone(int seed, PositiveInt days)
    {
        double[] years = Years(seed, 9);
        DateOnly last = Present.AddDays(40 + days.Get % 100);
        HeatForecast whole = Make(years, 30, 8, 900);
        HeatForecast cut = HeatForecast.For(
            ForecastRecords.Needs(900), ForecastRecords.SoFar(Present, 30, 8), ForecastRecords.Constant(First, years), last);

        Assert.Equal(whole.Years.Select(year => year.Date <= last ? year.Date : null), cut.Years.Select(year => year.Date));
        Assert.Equal(100.0 * cut.Years.Count(year => year.Date is null) / 9, cut.NeverShare.Percent, 1e-9);
    }

    [Property]
    public void Skill_PastYearsAllTheSame_IsWithoutError(PositiveInt temperature)
    {
        ForecastSkill skill = Make([.. Enumerable.Repeat(6.0 + temperature.Get % 10, 9)], 30, 8, 900).Skill!;

        Assert.Equal((0.0, 0.0, 0.0, 100.0), (skill.Bias.Days, skill.MeanAbsoluteError.Days, skill.UsualMeanAbsoluteError.Days, skill.Coverage.Percent));
    }

    [Property]
    public void For_AlreadyReached_HasOneDateAtEveryLevel(int seed, PositiveInt level)
    {
        HeatForecast forecast = Make(Years(seed, 9), 30, 8, 100);

        Assert.Equal(Present.AddDays(12), forecast.ReachedOn);
        Assert.Equal(forecast.ReachedOn, forecast.DateAt(Ratio.FromPercent(level.Get % 101))!.Value);
        Assert.Equal((forecast.ReachedOn, forecast.ReachedOn), (forecast.Early.Date, forecast.Late.Date));
    }

    private static DateOnly Present => First.AddYears(9);

    private static double[] Years(int seed, int count)
    {
        Random random = new(seed);
        return [.. Enumerable.Range(0, count).Select(_ => 5 + random.Next(100) / 10.0)];
    }

    // The present season is always that of one year, whatever the number of years before.
    private static HeatForecast Make(double[] years, int soFar, double celsius, double need) => HeatForecast.For(
        ForecastRecords.Needs(need),
        ForecastRecords.SoFar(Present, soFar, celsius),
        ForecastRecords.Constant(Present.AddYears(-years.Length), years));
}
