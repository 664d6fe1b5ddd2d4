using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

public class SumEdges
{
    private static readonly DailyTemperatures TwoDays = DailyTemperatures.Create(
        new DateOnly(2024, 7, 1), [15, 17], [30, 32], TemperatureUnit.DegreeCelsius);

    private static readonly DateSpan Both = new(new DateOnly(2024, 7, 1), new DateOnly(2024, 7, 2));

    [Theory]
    [InlineData(-91, 20, "minimum")]
    [InlineData(-1e300, 20, "minimum")]
    [InlineData(15, 14.9, "maximum")]
    [InlineData(15, 60.1, "maximum")]
    public void OfDay_ImpossibleTemperature_IsRefused(double minimum, double maximum, string parameter)
    {
        ArgumentOutOfRangeException corn = Assert.Throws<ArgumentOutOfRangeException>(
            parameter, () => CornHeatUnits.OfDay(Celsius(minimum), Celsius(maximum), CornHeatUnitMethod.Canada));
        Assert.Throws<ArgumentOutOfRangeException>(
            parameter, () => PhysiologicalDays.OfDay(Celsius(minimum), Celsius(maximum), PhysiologicalDayMethod.Celsius));

        Assert.Contains("60 °C", corn.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(50.01)]
    [InlineData(-51)]
    public void Huglin_LatitudeBeyondThePrint_IsRefusedWithItsDomain(double latitude)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            nameof(latitude), () => GrapeHeat.Huglin(TwoDays, Both, Angle.FromDegrees(latitude), HuglinMethod.Printed));

        Assert.Contains("from -50 to 50 °", refused.Message, StringComparison.Ordinal);
        Assert.False(HuglinMethod.Printed.Evidence.Domain.Contains(nameof(latitude), latitude));
    }

    [Fact]
    public void Region_NegativeSumOrUnknownLimits_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>("sum", () => GrapeHeat.Region(ThermalTime.FromCelsiusDays(-1), WinklerLimits.Celsius));
        Assert.Throws<ArgumentOutOfRangeException>("limits", () => GrapeHeat.Region(ThermalTime.Zero, (WinklerLimits)7));
        Assert.Throws<ArgumentOutOfRangeException>("hemisphere", () => GrapeHeat.WinklerSeason((Hemisphere)2));
    }

    [Fact]
    public void DateSpan_LastBeforeFirst_IsRefused()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>("to", () => new DateSpan(Both.To, Both.From));

        Assert.Contains("to was 2024-07-01; allowed: not before from, 2024-07-02", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void CountingSeason_LeapDayAndTheEndOfTheCalendar_AreKept()
    {
        Assert.Equal("2023-02-28 to 2023-03-31", new CountingSeason(new MonthDay(2, 29), new MonthDay(3, 31)).StartingIn(2023).ToString());
        Assert.Equal("2024-02-29 to 2024-03-31", new CountingSeason(new MonthDay(2, 29), new MonthDay(3, 31)).StartingIn(2024).ToString());
        Assert.Throws<ArgumentOutOfRangeException>("year", () => GrapeHeat.WinklerSeason(Hemisphere.Southern).StartingIn(9999));
        Assert.Throws<ArgumentOutOfRangeException>("year", () => GrapeHeat.WinklerSeason(Hemisphere.Northern).StartingIn(0));
    }

    [Fact]
    public void Sum_SpanBeyondTheRecord_CountsThoseDaysAsMissing()
    {
        DateSpan longer = new(Both.From.AddDays(-1), Both.To.AddDays(1));

        ArgumentException refused = Assert.Throws<ArgumentException>("days", () => GrapeHeat.Winkler(TwoDays, longer));
        ClimateSum<ThermalTime> allowed = GrapeHeat.Winkler(TwoDays, longer, maximumMissing: Ratio.FromPercent(50));

        Assert.Contains("2 of 4 missing from 2024-06-30 to 2024-07-03; allowed: up to 5 %", refused.Message, StringComparison.Ordinal);
        Assert.Equal([longer.From, longer.To], allowed.Missing);
        Assert.Equal(2, allowed.LeftOutCount);
    }

    [Fact]
    public void Sum_NoKnownDay_IsRefusedWhateverIsAllowed() => Assert.Throws<ArgumentException>("days", () => CornHeatUnits.Sum(
        TwoDays, new DateSpan(new DateOnly(2023, 7, 1), new DateOnly(2023, 7, 2)), CornHeatUnitMethod.Canada, maximumMissing: Ratio.FromPercent(100)));

    [Theory]
    [InlineData(-1)]
    [InlineData(101)]
    public void Sum_ShareThatIsNoShare_IsRefused(double percent) => Assert.Throws<ArgumentOutOfRangeException>(
        "maximumMissing", () => StressDegreeDays.Sum(TwoDays, Both, maximumMissing: Ratio.FromPercent(percent)));

    [Fact]
    public void Sum_Interpolated_FillsInOnlyBetweenKnownDays()
    {
        DailyTemperatures days = DailyTemperatures.Create(
            new DateOnly(2024, 7, 1), [double.NaN, 14, double.NaN, 18], [26, 24, 26, 28], TemperatureUnit.DegreeCelsius);

        ClimateSum<ThermalTime> sum = GrapeHeat.Winkler(
            days, new DateSpan(days.Start, days.End), MissingDays.Interpolated, Ratio.FromPercent(50));

        Assert.Equal(9 + 11 + 13, sum.Value.CelsiusDays, 9);
        Assert.Equal(2, sum.Missing.Count);
        Assert.Equal(1, sum.LeftOutCount);
        Assert.Contains("2 of 4 days (1 filled in)", sum.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void HeatDays_ADayWithoutItsMinimum_CountsByItsMaximum()
    {
        DailyTemperatures days = DailyTemperatures.Create(
            new DateOnly(2024, 7, 1), [double.NaN, 17], [33, double.NaN], TemperatureUnit.DegreeCelsius);
        DateSpan span = new(days.Start, days.End);

        ClimateSum<int> hot = HeatDays.Above(days, span, Celsius(30), maximumMissing: Ratio.FromPercent(50));

        Assert.Equal(1, hot.Value);
        Assert.Equal([days.End], hot.Missing);
        Assert.Equal(3, StressDegreeDays.Sum(days, span, maximumMissing: Ratio.FromPercent(50)).Value.CelsiusDays, 9);
        Assert.Throws<ArgumentException>("days", () => GrapeHeat.Winkler(days, span, maximumMissing: Ratio.FromPercent(50)));
    }

    [Theory]
    [InlineData(24.1)]
    [InlineData(-0.1)]
    public void PhotothermalUnits_DayLengthThatIsNone_IsRefusedWithItsDate(double hours)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => PhotothermalUnits.Sum(
            TwoDays, Both, new DegreeDayThresholds(Celsius(5)), DegreeDayMethod.SingleSine, UpperCutoff.None, _ => Duration.FromHours(hours)));

        Assert.Contains("dayLength on 2024-07-01", refused.Message, StringComparison.Ordinal);
        Assert.Contains("from 0 to 24 h", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Null_MethodDaysOrDayLength_IsRefused()
    {
        Assert.Throws<ArgumentNullException>("method", () => CornHeatUnits.Sum(TwoDays, Both, null!));
        Assert.Throws<ArgumentNullException>("days", () => CornHeatUnits.Sum(null!, Both, CornHeatUnitMethod.Canada));
        Assert.Throws<ArgumentNullException>("method", () => PhysiologicalDays.Response(Celsius(20), null!));
        Assert.Throws<ArgumentNullException>("phyllochron", () => LeafAppearance.Leaves(ThermalTime.Zero, null!));
        Assert.Throws<ArgumentNullException>("dayLength", () => PhotothermalUnits.Sum(
            TwoDays, Both, new DegreeDayThresholds(Celsius(5)), DegreeDayMethod.SingleSine, UpperCutoff.None, null!));
    }

    [Fact]
    public void UntilReached_NegativeRequirementOrDayOutsideTheRecord_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(
            "requirement", () => CornHeatUnits.UntilReached(TwoDays, TwoDays.Start, -1, CornHeatUnitMethod.Canada));
        Assert.Throws<ArgumentOutOfRangeException>(
            "from", () => PhysiologicalDays.UntilReached(TwoDays, TwoDays.End.AddDays(1), 5, PhysiologicalDayMethod.Celsius));
    }

    [Fact]
    public void LeafAppearance_NegativeOrInfinite_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(
            "sinceEmergence", () => LeafAppearance.Leaves(ThermalTime.FromCelsiusDays(-1), Phyllochrons.WinterCereals));
        Assert.Throws<ArgumentOutOfRangeException>("leaves", () => LeafAppearance.ThermalTimeTo(double.PositiveInfinity, Phyllochrons.WinterCereals));
        Assert.Equal(0, LeafAppearance.Leaves(ThermalTime.Zero, Phyllochrons.WinterCereals).Value);
    }

    [Fact]
    public void ClimateSum_ContradictoryParts_AreRefused()
    {
        Method method = CornHeatUnitMethod.Canada.Evidence;

        Assert.Throws<ArgumentOutOfRangeException>("leftOutCount", () => new ClimateSum<double>(1, "units", Both.From, Both.To, [], 1, method));
        Assert.Throws<ArgumentException>("missing", () => new ClimateSum<double>(1, "units", Both.From, Both.To, [Both.To.AddDays(1)], 1, method));
        Assert.Throws<ArgumentException>("missing", () => new ClimateSum<double>(1, "units", Both.From, Both.To, [Both.To, Both.From], 2, method));
        Assert.Throws<ArgumentOutOfRangeException>("to", () => new ClimateSum<double>(1, "units", Both.To, Both.From, [], 0, method));
    }

    [Fact]
    public void GrowingSeason_ContradictoryParts_AreRefused()
    {
        ClimateSum<int> two = new(2, "days", Both.From, Both.To, [], 0, GrowingSeasonMethod.Defra.Evidence);

        Assert.Equal(2, new GrowingSeason(two, Both.From, Both.To, GrowingSeasonEnding.ColdRun).Length.Value);
        Assert.Throws<ArgumentException>("length", () => new GrowingSeason(two, Both.From, Both.From, GrowingSeasonEnding.ColdRun));
        Assert.Throws<ArgumentException>("length", () => new GrowingSeason(two, null, null, GrowingSeasonEnding.NeverBegan));
        Assert.Throws<ArgumentException>("length", () => new GrowingSeason(two, Both.From, Both.To, GrowingSeasonEnding.NeverBegan));
    }

    [Fact]
    public void FromKey_Unknown_IsRefusedWithTheKnownOnes()
    {
        Assert.Contains("growing-season.etccdi", Assert.Throws<ArgumentException>("key", () => GrowingSeasonMethod.FromKey("x")).Message, StringComparison.Ordinal);
        Assert.Contains("huglin.printed", Assert.Throws<ArgumentException>("key", () => HuglinMethod.FromKey("x")).Message, StringComparison.Ordinal);
        Assert.Contains("physiological-days.celsius", Assert.Throws<ArgumentException>("key", () => PhysiologicalDayMethod.FromKey("x")).Message, StringComparison.Ordinal);
    }

    private static Temperature Celsius(double value) => Temperature.FromDegreesCelsius(value);
}
