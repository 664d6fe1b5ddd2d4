using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using FsCheck.Xunit;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Json;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

[Properties(MaxTest = 200)]
public class HardinessTests
{
    [Property]
    public void ClassOf_WithinTheZones_HoldsTheTemperature(ushort tenths)
    {
        double fahrenheit = -60 + tenths % 1300 / 10.0;

        HardinessClass zone = HardinessScheme.UsdaZones.ClassOf(Temperature.FromDegreesFahrenheit(fahrenheit)).Value;

        Assert.True(zone.From!.Value.DegreesFahrenheit <= fahrenheit + 1e-9 && fahrenheit < zone.To!.Value.DegreesFahrenheit + 1e-9);
    }

    [Property]
    public void ClassOf_WholeFahrenheitGivenInCelsius_IsTheSame(byte degrees)
    {
        double fahrenheit = -60 + degrees % 130;
        Temperature given = Temperature.FromDegreesFahrenheit(fahrenheit);

        Assert.Equal(
            HardinessScheme.UsdaZones.ClassOf(given).Value,
            HardinessScheme.UsdaZones.ClassOf(Temperature.FromDegreesCelsius(given.DegreesCelsius)).Value);
    }

    [Property]
    public void ClassOf_Warmer_IsNeverAColderClass(ushort a, byte b)
    {
        foreach (HardinessScheme scheme in HardinessScheme.All)
        {
            DomainLimit limit = scheme.Evidence.Domain.Limits[0];
            double low = limit.Low + (limit.High - limit.Low) * a / 70000;
            double high = Math.Min(limit.High, low + b / 10.0);
            int Rank(double celsius) => scheme.Classes.ToList().IndexOf(scheme.ClassOf(Temperature.FromDegreesCelsius(celsius)).Value);

            Assert.True(Rank(low) <= Rank(high));
        }
    }

    [Fact]
    public void ClassOf_PrintedCelsiusOfABound_IsNotTheBound()
    {
        // -17.8 °C is printed for 0 °F, but is 0.04 °F colder: the bound is in °F.
        Assert.Equal("6b", HardinessScheme.UsdaZones.ClassOf(Temperature.FromDegreesCelsius(-17.8)).Value.Name);
        Assert.Equal("7a", HardinessScheme.UsdaZones.ClassOf(Temperature.FromDegreesFahrenheit(0)).Value.Name);
    }

    [Fact]
    public void ClassOf_AtABound_SaysSo()
    {
        Assert.Contains(
            HardinessScheme.RhsRatings.ClassOf(Temperature.FromDegreesCelsius(-10)).Cautions, caution => caution.Code == "hardiness.at-a-bound");
        Assert.DoesNotContain(
            HardinessScheme.RhsRatings.ClassOf(Temperature.FromDegreesCelsius(-9)).Cautions, caution => caution.Code == "hardiness.at-a-bound");
    }

    [Theory]
    [InlineData(-61)]
    [InlineData(70.1)]
    public void ClassOf_BeyondTheZones_IsRefused(double fahrenheit)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => HardinessScheme.UsdaZones.ClassOf(Temperature.FromDegreesFahrenheit(fahrenheit)));

        Assert.Equal("temperature", refused.ParamName);
        Assert.Contains("from -51.11111111 to 21.11111111 °C", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ClassOf_OutermostRatings_HaveNoOuterBound()
    {
        Assert.Null(HardinessScheme.RhsRatings.ClassOf(Temperature.FromDegreesCelsius(-60)).Value.From);
        Assert.Null(HardinessScheme.RhsRatings.ClassOf(Temperature.FromDegreesCelsius(25)).Value.To);
    }

    [Fact]
    public void FromDaily_ColdSpellOverNewYear_CountsOnce()
    {
        // The spell of 2005 is the lowest of one winter; calendar years would take it twice.
        WinterMinima winters = WinterMinima.FromDaily(Years(12, date =>
            date == new DateOnly(2005, 12, 31) || date == new DateOnly(2006, 1, 1) ? -30 : Cold(date)), Hemisphere.Northern);

        Assert.Equal(11, winters.Winters.Count);
        Assert.Equal(1, winters.Winters.Count(winter => winter.Lowest.DegreesCelsius == -30));
        Assert.Equal(new DateOnly(2005, 12, 31), winters.Winters.Single(winter => winter.Lowest.DegreesCelsius == -30).Date);
    }

    [Fact]
    public void FromDaily_WintersOfTheRecordsEnds_AreLeftOut() =>
        Assert.Equal([1999, 2011], WinterMinima.FromDaily(Years(12, Cold), Hemisphere.Northern).LeftOut);

    [Fact]
    public void FromDaily_Southern_CutsInFebruary()
    {
        WinterMinima north = WinterMinima.FromDaily(Years(12, Cold), Hemisphere.Northern);
        WinterMinima south = WinterMinima.FromDaily(Years(12, date => Cold(date.AddDays(182))), Hemisphere.Southern);

        Assert.Equal(12, south.Winters.Count);
        Assert.All(south.Winters, winter => Assert.InRange(winter.Date.Month, 6, 8));
        Assert.Equal(north.MeanLowest.Value.DegreesCelsius, south.MeanLowest.Value.DegreesCelsius, 0.01);
    }

    [Fact]
    public void FromDaily_ElevenMissingWinterDays_DropTheWinter()
    {
        DailyTemperatures Gap(int days) => Years(13, date =>
            date >= new DateOnly(2004, 12, 1) && date < new DateOnly(2004, 12, 1).AddDays(days) ? double.NaN : Cold(date));

        Assert.DoesNotContain(2004, WinterMinima.FromDaily(Gap(10), Hemisphere.Northern).LeftOut);
        Assert.Contains(2004, WinterMinima.FromDaily(Gap(11), Hemisphere.Northern).LeftOut);
    }

    [Property]
    public void MeanLowest_ShiftedRecord_IsShifted(sbyte tenths)
    {
        double shift = tenths / 10.0;
        double before = WinterMinima.FromDaily(Years(12, Cold), Hemisphere.Northern).MeanLowest.Value.DegreesCelsius;
        double after = WinterMinima.FromDaily(Years(12, date => Cold(date) + shift), Hemisphere.Northern).MeanLowest.Value.DegreesCelsius;

        Assert.Equal(before + shift, after, 1e-9);
    }

    [Property]
    public void ShareAtOrBelow_Warmer_IsNeverLess(short a, byte b)
    {
        WinterMinima winters = WinterMinima.FromDaily(Years(14, date => Cold(date) - date.Year % 5), Hemisphere.Northern);
        double low = a / 1000.0;

        Assert.True(
            winters.ShareAtOrBelow(Temperature.FromDegreesCelsius(low)).Percent
            <= winters.ShareAtOrBelow(Temperature.FromDegreesCelsius(low + b / 10.0)).Percent);
    }

    [Fact]
    public void ShareAtOrBelow_Extremes_AreNoneAndAll()
    {
        WinterMinima winters = WinterMinima.FromDaily(Years(12, Cold), Hemisphere.Northern);

        Assert.Equal(0, winters.ShareAtOrBelow(Temperature.FromDegreesCelsius(-40)).Percent);
        Assert.Equal(100, winters.ShareAtOrBelow(Temperature.FromDegreesCelsius(0)).Percent);
    }

    [Fact]
    public void FromDaily_NineWinters_IsRefused() => Assert.Equal(
        "days", Assert.Throws<ArgumentException>(() => WinterMinima.FromDaily(Years(10, Cold), Hemisphere.Northern)).ParamName);

    [Fact]
    public void HeatZone_FromDaily_IsThatOfTheMeanNumberOfHotDays()
    {
        // 12 years: 40 hot days in each odd year, 50 in each even one: 45 on the mean, the upper bound of zone 5.
        DailyTemperatures days = YearsOfMaxima(12, date => date.DayOfYear <= (date.Year % 2 == 0 ? 50 : 40) ? 30.1 : 30.0);

        Assert.Equal(5, HeatZone.FromDaily(days).Value);
        Assert.DoesNotContain(HeatZone.FromDaily(days).Cautions, caution => caution.Code == "heat-zone.few-years");
        Assert.Contains(
            HeatZone.FromDaily(days.Between(days.Start, new DateOnly(2004, 12, 31))).Cautions, caution => caution.Code == "heat-zone.few-years");
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(366.1)]
    [InlineData(double.NaN)]
    public void HeatZone_NoNumberOfDays_IsRefused(double days) =>
        Assert.Equal("hotDaysAYear", Assert.Throws<ArgumentOutOfRangeException>(() => HeatZone.Of(days)).ParamName);

    [Property]
    public void CanadianIndex_Terms_HaveTheirSigns(byte a, byte b)
    {
        double frostFree = 60 + a % 100;
        double gust = 60 + b % 60;
        double Index(double cold, double days, double wind) => CanadianHardiness.Index(
            Temperature.FromDegreesCelsius(cold),
            Duration.FromDays(days),
            Length.FromMillimeters(400),
            Temperature.FromDegreesCelsius(24),
            Length.Zero,
            Length.FromCentimeters(20),
            Speed.FromKilometersPerHour(wind)).Value;

        Assert.Equal(1.734, Index(-14, frostFree, gust) - Index(-15, frostFree, gust), 1e-9);
        Assert.Equal(0.1868, Index(-15, frostFree + 1, gust) - Index(-15, frostFree, gust), 1e-9);
        Assert.Equal(-0.01832, Index(-15, frostFree, gust + 1) - Index(-15, frostFree, gust), 1e-9);
    }

    [Fact]
    public void CanadianIndex_NoRainAndNoSnow_IsTheRest() => Assert.Equal(
        -67.62 + 1.734 * -10 + 0.1868 * 100 + 1.256 * 20 + 0.006119 * 10 * 5 - 0.01832 * 100,
        CanadianHardiness.Index(
            Temperature.FromDegreesCelsius(-10),
            Duration.FromDays(100),
            Length.Zero,
            Temperature.FromDegreesCelsius(20),
            Length.FromMillimeters(5),
            Length.Zero,
            Speed.FromKilometersPerHour(100)).Value,
        1e-9);

    [Theory]
    [InlineData(-1)]
    [InlineData(94.5)]
    public void CanadianZone_BeyondTheZones_IsRefused(double index) =>
        Assert.Equal("index", Assert.Throws<ArgumentOutOfRangeException>(() => CanadianHardiness.ZoneOf(index)).ParamName);

    [Fact]
    public void FrostTolerances_Parsnip_ShowsTheDisagreement() => Assert.Equal(
        [
            "parsnip: withstands light frost [garden centre handout, Frost tolerance in vegetables (no date)]",
            "parsnip: withstands -17.8 °C [Minnesota garden group, Winter vegetables and the coldest temperature they withstand (no date)]",
        ],
        FrostTolerances.For("Parsnip").Select(statement => statement.ToString()));

    [Fact]
    public void WinterRule_ThreeDaysInARow_AreNeededAndAGapBreaksThem()
    {
        DailyTemperatures soil = DailyTemperatures.Create(
            new DateOnly(2026, 11, 1), [2, 2, 2, 2, 2, 2, 2], [4, 4.4, 5, 4.4, 4.4, 4.4, 6], TemperatureUnit.DegreeCelsius);

        Assert.Equal(new DateOnly(2026, 11, 6), WinterRules.MulchStrawberriesBySoil.FirstDue(soil, soil.Start));
        Assert.Null(WinterRules.MulchStrawberriesBySoil.FirstDue(soil, new DateOnly(2026, 11, 5)));
    }

    [Fact]
    public void WinterRule_FahrenheitThreshold_CountsTheRoundedNight()
    {
        // 45 °F is 7.22 °C; a record in tenths has it as 7.2.
        DailyTemperatures nights = DailyTemperatures.FromMinima(new DateOnly(2026, 9, 1), [9, 7.3, 7.2], TemperatureUnit.DegreeCelsius);

        Assert.Equal(new DateOnly(2026, 9, 3), WinterRules.MoveBegoniaIndoors.FirstDue(nights, nights.Start));
    }

    [Fact]
    public void Json_EveryType_ComesBack()
    {
        RoundTrip(HardinessScheme.RhsRatings);
        RoundTrip(HardinessScheme.UsdaZones.ClassOf(Temperature.FromDegreesFahrenheit(7)));
        RoundTrip(WinterMinima.FromDaily(Years(12, Cold), Hemisphere.Northern));
        RoundTrip(CanadianHardiness.ZoneOf(42));
        RoundTrip(FrostTolerances.All[0]);
        RoundTrip(RootHardiness.All[0]);
        RoundTrip(WinterRules.MulchStrawberriesBySoil);
        PotCooling pot = new(
            Length.FromCentimeters(30), Length.FromCentimeters(28), SoilMaterials.PeatSoilMoist, PotExposure.Severe, PotStanding.InTheAir);
        RoundTrip(pot);
        RoundTrip(pot.Follow(
            HourlyTemperatures.Create(new DateTime(2026, 1, 1), [1, 0, -1.5], TemperatureUnit.DegreeCelsius), Temperature.FromDegreesCelsius(2)));
    }

    private static void RoundTrip<T>(T value)
    {
        JsonTypeInfo<T> type = HortiCalcJson.TypeInfo<T>();

        Assert.Equal(value, JsonSerializer.Deserialize(JsonSerializer.Serialize(value, type), type));
    }

    private static double Cold(DateOnly date) => Math.Round(3 - 12 * Math.Cos((date.DayOfYear - 20) * Math.Tau / 365.25), 1, MidpointRounding.ToEven);

    private static DailyTemperatures Years(int years, Func<DateOnly, double> minimum)
    {
        DateOnly start = new(2000, 1, 1);
        int count = start.AddYears(years).DayNumber - start.DayNumber;
        return DailyTemperatures.FromMinima(
            start, [.. Enumerable.Range(0, count).Select(day => minimum(start.AddDays(day)))], TemperatureUnit.DegreeCelsius);
    }

    private static DailyTemperatures YearsOfMaxima(int years, Func<DateOnly, double> maximum)
    {
        DateOnly start = new(2000, 1, 1);
        double[] maxima = [.. Enumerable.Range(0, start.AddYears(years).DayNumber - start.DayNumber).Select(day => maximum(start.AddDays(day)))];
        return DailyTemperatures.Create(start, [.. maxima.Select(high => high - 10)], maxima, TemperatureUnit.DegreeCelsius);
    }
}
