using HortiCalc.Beds;
using HortiCalc.Climate;
using HortiCalc.Containers;
using HortiCalc.Season;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Season;

public sealed class SeasonEdges
{
    [Theory]
    [InlineData(1.2, 4, 16)] // rows along: 8 plants in 2 rows; across: 2 plants in 6 rows
    [InlineData(0.9, 0.9, 2)] // 2 plants in 1 row
    [InlineData(0.3, 4.5, 10)] // too narrow for a row's distance: one row
    [InlineData(0.1, 0.1, 1)]
    [InlineData(1.8, 1.35, 9)] // 1.8 / 0.6 and 1.35 / 0.45 are whole only but for rounding
    public void PlantGrid_Rectangle_CountsWholePlants(double widthMetres, double lengthMetres, int plants) =>
        Assert.Equal(plants, PlantGrid.Count(Bed.Rectangle(Length.FromMeters(widthMetres), Length.FromMeters(lengthMetres)), Invented.Spacing));

    [Fact]
    public void PlantGrid_Circle_CountsByArea() =>
        Assert.Equal(11, PlantGrid.Count(Bed.Circle(Length.FromMeters(2)), Invented.Spacing)); // 3.14 m² of 0.27 m² each

    [Theory]
    [InlineData(1, 0.5, 0.5, 1)] // one of two halves is enough half the time
    [InlineData(1, 0.5, 0.1, 4)] // 1/16 is below 10 %, 1/8 is not
    [InlineData(2, 0.5, 0.25, 5)] // of 5 tosses fewer than 2 heads: 6/32
    [InlineData(7, 1.0, 0.01, 7)]
    public void StartsNeeded_CoinTosses_AreAsCountedByHand(int plants, double success, double accepted, int starts) =>
        Assert.Equal(starts, StartsNeeded.For(plants, success, accepted));

    [Theory]
    [InlineData(2027, 46, 5, 9, "2027-05-09")]
    [InlineData(2027, 46, 12, 9, "2026-12-09")]
    [InlineData(2027, 46, 2, 29, "2027-02-28")]
    [InlineData(2027, -46, 11, 9, "2027-11-09")]
    [InlineData(2027, -46, 1, 9, "2028-01-09")]
    [InlineData(2028, 0, 2, 29, "2028-02-29")]
    public void Calendar_SpringDay_FallsInItsSeason(int year, double latitudeDegrees, int month, int day, string date)
    {
        Garden garden = new(Invented.Site(latitudeDegrees), year, [Invented.Crop()]);
        Assert.Equal(date, SeasonCalendar.Of(garden).Spring(new MonthDay(month, day)).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
    }

    [Theory]
    [InlineData(2027, 46, 10, 9, "2027-10-09")]
    [InlineData(2027, 46, 1, 9, "2028-01-09")]
    [InlineData(2027, -46, 4, 9, "2028-04-09")]
    [InlineData(2027, -46, 12, 9, "2028-12-09")]
    public void Calendar_AutumnDay_FallsInItsSeason(int year, double latitudeDegrees, int month, int day, string date)
    {
        Garden garden = new(Invented.Site(latitudeDegrees), year, [Invented.Crop()]);
        Assert.Equal(date, SeasonCalendar.Of(garden).Autumn(new MonthDay(month, day)).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(100)]
    [InlineData(-1)]
    public void AcceptedChances_NotBetweenNoneAndAll_IsRefused(double percent)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>("coldAfterPlantingOut", () => Invented.Chances(percent));
        Assert.Contains("above 0 and below 100 %", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Crop_NoSources_IsRefused() => Assert.Throws<ArgumentException>("sources", () => new Crop(
        "crop", new Ph(6), new Ph(7), Temperature.FromDegreesCelsius(0), Invented.Spacing, []));

    [Theory]
    [InlineData(-41)]
    [InlineData(21)]
    public void Crop_HurtAtNoNightsTemperature_IsRefused(double celsius)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>("hurtAt", () => Invented.Crop(celsius));
        Assert.Contains("from -40 to 20 °C", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Crop_RangeUpsideDown_IsRefused()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>("highestPh", () => Invented.Crop(lowestPh: 7, highestPh: 6));
        Assert.Contains("highestPh was 6 pH; allowed: above the lowest, 7 pH", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(101)]
    public void Raising_SuccessNoShare_IsRefused(double percent) =>
        Assert.Throws<ArgumentOutOfRangeException>("success", () => new Raising(Propagule.Seed, Ratio.FromPercent(percent), 6));

    [Fact]
    public void Raising_PottedOnAfterPlantingOut_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>("weeksToPotOn", () => new Raising(Propagule.Seed, Ratio.FromPercent(80), 6, 7));

    [Fact]
    public void Heat_MethodWithoutItsUpperThreshold_IsRefused() => Assert.Throws<ArgumentException>(() => new HeatToMaturity(
        ThermalTime.FromCelsiusDays(500), new DegreeDayThresholds(Temperature.FromDegreesCelsius(10)), DegreeDayMethod.CappedMaximumAverage));

    [Fact]
    public void Pots_HeadspaceOfTheWholePot_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>("headspace", () => new PotPlan(
        "pots", "crop", Container.Round(Length.FromCentimeters(20), Length.FromCentimeters(20)), 1, Length.FromCentimeters(20), Ratio.Zero, "medium"));

    [Fact]
    public void Garden_NameTwice_IsRefused()
    {
        BedPlan bed = new("bed", "crop", Bed.Circle(Length.FromMeters(1)));
        Assert.Throws<ArgumentException>("beds", () => new Garden(Invented.Site(), 2027, [Invented.Crop()], [bed, bed]));
        Assert.Throws<ArgumentException>("crops", () => new Garden(Invented.Site(), 2027, [Invented.Crop(), Invented.Crop()]));
    }

    [Fact]
    public void Mix_UnknownRecipe_IsRefusedWithTheKnownOnes()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>("recipe", () => new MixPlan("mix", "nothing", Volume.FromLiters(1)));
        Assert.Contains("sanitise.penn-state", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Garden_SameInOtherUnits_IsEqual() => Assert.Equal(
        Invented.Bed(Invented.Crop(), shape: Bed.Rectangle(Length.FromMeters(1.2192), Length.FromMeters(3.048))),
        Invented.Bed(Invented.Crop(), shape: Bed.Rectangle(Length.FromFeet(4), Length.FromFeet(10))));

    [Fact]
    public void MalformedInput_NoLine_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>("line", () => new MalformedInputException(0, 1, "problem"));
}
