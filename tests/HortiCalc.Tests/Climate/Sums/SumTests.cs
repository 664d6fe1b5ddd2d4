using System.Globalization;
using System.Text.Json;
using HortiCalc.Climate;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

public class SumTests
{
    private static readonly HortiCalcJsonContext Json = HortiCalcJsonContext.Default;

    private static readonly DailyTemperatures ThreeDays = DailyTemperatures.Create(
        new DateOnly(2024, 7, 1), [15, 17, 14], [30, 32, 27], TemperatureUnit.DegreeCelsius);

    private static readonly DateSpan AllThree = new(new DateOnly(2024, 7, 1), new DateOnly(2024, 7, 3));

    [Fact]
    public void CornHeatUnits_DayPart_PeaksAtTwentyNinePointEight()
    {
        double[] maxima = [.. Enumerable.Range(200, 200).Select(tenths => tenths / 10.0)];

        double warmest = maxima.MaxBy(maximum => CornHeatUnits.OfDay(Celsius(5), Celsius(maximum), CornHeatUnitMethod.Canada));

        Assert.Equal(29.8, warmest);
    }

    [Fact]
    public void CornHeatUnits_ColdDay_CountsBelowZeroInCanadaAndZeroInOntario()
    {
        Assert.Equal((1.8 * -9.4 + 3.33 * -5 - 0.084 * 25) / 2, CornHeatUnits.OfDay(Celsius(-5), Celsius(5), CornHeatUnitMethod.Canada), 12);
        Assert.Equal(0, CornHeatUnits.OfDay(Celsius(-5), Celsius(5), CornHeatUnitMethod.Ontario));
    }

    [Fact]
    public void CornHeatUnits_Seasons_AreThoseOfTheSources()
    {
        Assert.Equal(new DateSpan(new DateOnly(2024, 4, 1), new DateOnly(2024, 10, 31)), CornHeatUnitMethod.Canada.Season.StartingIn(2024));
        Assert.Equal(new DateOnly(2024, 5, 1), CornHeatUnitMethod.Ontario.Season.StartingIn(2024).From);
    }

    [Fact]
    public void OntarioSeason_FirstMinusTwoOfAutumn_EndsIt()
    {
        double[] minima = [.. Enumerable.Repeat(8.0, 366)];
        double[] maxima = [.. Enumerable.Repeat(20.0, 366)];
        minima[new DateOnly(2024, 5, 3).DayOfYear - 1] = -3;    // spring
        minima[new DateOnly(2024, 9, 20).DayOfYear - 1] = -1.9;  // not cold enough
        minima[new DateOnly(2024, 9, 28).DayOfYear - 1] = -2;
        minima[new DateOnly(2024, 10, 9).DayOfYear - 1] = -6;
        DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2024, 1, 1), minima, maxima, TemperatureUnit.DegreeCelsius);

        Assert.Equal(new DateSpan(new DateOnly(2024, 5, 1), new DateOnly(2024, 9, 28)), CornHeatUnits.OntarioSeason(days, 2024));
    }

    [Fact]
    public void OntarioSeason_NoFrost_LastsToTheEndOfTheYear()
    {
        double[] mild = [.. Enumerable.Repeat(8.0, 366)];
        DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2024, 1, 1), mild, mild, TemperatureUnit.DegreeCelsius);

        Assert.Equal(new DateOnly(2024, 12, 31), CornHeatUnits.OntarioSeason(days, 2024).To);
        Assert.Throws<ArgumentOutOfRangeException>("year", () => CornHeatUnits.OntarioSeason(days, 2023));
    }

    [Theory]
    [InlineData(44, 0)]
    [InlineData(44.5, 0)] // the print, made for whole degrees, would give less than zero
    [InlineData(45, 0)]
    [InlineData(70, 10)]
    [InlineData(86, 0)]
    [InlineData(87, 0)]
    public void PhysiologicalDays_Fahrenheit_IsZeroAtItsEndsAndTenAtItsOptimum(double fahrenheit, double expected) =>
        Assert.Equal(expected, PhysiologicalDays.Response(Temperature.FromDegreesFahrenheit(fahrenheit), PhysiologicalDayMethod.Fahrenheit), 9);

    [Theory]
    [InlineData(57, 10 * (1 - 169.0 / 625))]
    [InlineData(78, 10 * (1 - 64.0 / 256))]
    [InlineData(85, 10 * (1 - 225.0 / 256))]
    public void PhysiologicalDays_Fahrenheit_FollowsThePrintedParabolas(double fahrenheit, double expected) =>
        Assert.Equal(expected, PhysiologicalDays.Response(Temperature.FromDegreesFahrenheit(fahrenheit), PhysiologicalDayMethod.Fahrenheit), 9);

    [Fact]
    public void PhysiologicalDays_OfDay_WeighsFourTemperatures()
    {
        double P(double celsius) => PhysiologicalDays.Response(Celsius(celsius), PhysiologicalDayMethod.Celsius);

        Assert.Equal(
            (5 * P(10) + 8 * P(14) + 8 * P(18) + 3 * P(22)) / 24,
            PhysiologicalDays.OfDay(Celsius(10), Celsius(22), PhysiologicalDayMethod.Celsius),
            12);
    }

    [Fact]
    public void PhysiologicalDays_TheTwoPrints_DifferByLittle()
    {
        // 44.6 or 45, 69.8 or 70 °F: the largest difference is on the steep end.
        double largest = Enumerable.Range(0, 400).Select(tenths => tenths / 10.0)
            .Max(celsius => Math.Abs(PhysiologicalDays.Response(Celsius(celsius), PhysiologicalDayMethod.Celsius)
                - PhysiologicalDays.Response(Celsius(celsius), PhysiologicalDayMethod.Fahrenheit)));

        Assert.InRange(largest, 0.2, 0.4);
    }

    [Fact]
    public void GrapeSeasons_SouthAndNorth_AreThePrintedOnes()
    {
        Assert.Equal("2026-10-01 to 2027-04-30", GrapeHeat.WinklerSeason(Hemisphere.Southern).StartingIn(2026).ToString());
        Assert.Equal("2026-04-01 to 2026-10-31", GrapeHeat.WinklerSeason(Hemisphere.Northern).StartingIn(2026).ToString());
        Assert.Equal("2026-10-01 to 2027-03-31", GrapeHeat.HuglinSeason(Hemisphere.Southern).StartingIn(2026).ToString());
        Assert.Equal("2026-04-01 to 2026-09-30", GrapeHeat.HuglinSeason(Hemisphere.Northern).StartingIn(2026).ToString());
    }

    [Fact]
    public void GrapeSums_SouthernYear_AreThoseOfTheNorthernWithTheSameWeather()
    {
        // The same weather, day for day, of seasons of 213 days from 1 April and of 212 from 1 October: the last day is cut off.
        double[] minima = [.. Enumerable.Range(0, 212).Select(day => 8 + 6 * Math.Sin(day * Math.PI / 212))];
        double[] maxima = [.. minima.Select(minimum => minimum + 11)];
        DailyTemperatures north = DailyTemperatures.Create(new DateOnly(2026, 4, 1), minima, maxima, TemperatureUnit.DegreeCelsius);
        DailyTemperatures south = DailyTemperatures.Create(new DateOnly(2026, 10, 1), minima, maxima, TemperatureUnit.DegreeCelsius);

        ThermalTime northern = GrapeHeat.Winkler(north, GrapeHeat.WinklerSeason(Hemisphere.Northern).StartingIn(2026)).Value;
        ThermalTime southern = GrapeHeat.Winkler(south, GrapeHeat.WinklerSeason(Hemisphere.Southern).StartingIn(2026)).Value;

        Assert.Equal(northern.CelsiusDays, southern.CelsiusDays, 1e-9);
        ThermalTime huglinNorth = GrapeHeat.Huglin(north, new DateSpan(north.Start, north.End), Angle.FromDegrees(45), HuglinMethod.Printed).Value;
        ThermalTime huglinSouth = GrapeHeat.Huglin(south, new DateSpan(south.Start, south.End), Angle.FromDegrees(-45), HuglinMethod.Printed).Value;
        Assert.Equal(huglinNorth, huglinSouth);
    }

    [Theory]
    [InlineData(840, WinklerRegion.TooCool, WinklerRegion.Ia)]
    [InlineData(2710, WinklerRegion.TooHot, WinklerRegion.V)]
    public void WinklerRegion_BetweenTheOuterLimitsOfTheUnits_IsDecidedByTheGivenOnesWithACaution(
        double celsiusDays, WinklerRegion celsius, WinklerRegion fahrenheit)
    {
        ThermalTime sum = ThermalTime.FromCelsiusDays(celsiusDays);

        Assert.Equal(celsius, GrapeHeat.Region(sum, WinklerLimits.Celsius).Value);
        Assert.Equal(fahrenheit, GrapeHeat.Region(sum, WinklerLimits.Fahrenheit).Value);
        Assert.Equal("winkler.outer-limits", Assert.Single(GrapeHeat.Region(sum, WinklerLimits.Celsius).Cautions).Code);
        Assert.Empty(GrapeHeat.Region(ThermalTime.FromCelsiusDays(1500), WinklerLimits.Celsius).Cautions);
    }

    [Fact]
    public void Huglin_ColdDay_TakesFromThePrintedSumAlone()
    {
        DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2024, 4, 1), [0, 10], [4, 20], TemperatureUnit.DegreeCelsius);
        DateSpan span = new(days.Start, days.End);

        Assert.Equal(-7 + 7.5, GrapeHeat.Huglin(days, span, Angle.FromDegrees(38), HuglinMethod.Printed).Value.CelsiusDays, 12);
        Assert.Equal(7.5, GrapeHeat.Huglin(days, span, Angle.FromDegrees(38), HuglinMethod.Floored).Value.CelsiusDays, 12);
    }

    [Fact]
    public void HeatDays_ExactlyAtAThresholdGivenInFahrenheit_CountOnlyAtOrAbove()
    {
        Temperature threshold = Temperature.FromDegreesFahrenheit(86);

        Assert.Equal(1, HeatDays.Above(ThreeDays, AllThree, threshold).Value);
        Assert.Equal(2, HeatDays.AtOrAbove(ThreeDays, AllThree, threshold).Value);
    }

    [Fact]
    public void StressDegreeDays_OneHundredFahrenheit_GiveFourteen()
    {
        DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2024, 7, 1), [70, 71], [100, 84], TemperatureUnit.DegreeFahrenheit);

        Assert.Equal(14, StressDegreeDays.Sum(days, new DateSpan(days.Start, days.End)).Value.FahrenheitDays, 9);
    }

    [Fact]
    public void UntilReached_Requirement_GivesTheDayAndTheSum()
    {
        ClimateSum<double>? reached = CornHeatUnits.UntilReached(ThreeDays, ThreeDays.Start, 30, CornHeatUnitMethod.Ontario);

        Assert.Equal(new DateOnly(2024, 7, 2), reached?.To);
        Assert.Null(CornHeatUnits.UntilReached(ThreeDays, ThreeDays.Start, 300, CornHeatUnitMethod.Ontario));
    }

    [Fact]
    public void LeafAppearance_MaizeCollars_HasTheRangeOfItsPrint()
    {
        Estimate<double> leaves = LeafAppearance.Leaves(ThermalTime.FromFahrenheitDays(300), Phyllochrons.MaizeLeafCollars);

        Assert.Equal(5, leaves.Range!.Low, 9);
        Assert.Equal(6, leaves.Range.High, 9);
        Assert.InRange(leaves.Value, 5, 6);
        Assert.Equal("leaf-appearance.phyllochron-varies", Assert.Single(leaves.Cautions).Code);
    }

    [Fact]
    public void ToString_Sum_SaysValueDaysGapsRuleAndSource()
    {
        // By hand: 26.04 + 27.642 + 24.807.
        ClimateSum<double> sum = CornHeatUnits.Sum(ThreeDays, AllThree, CornHeatUnitMethod.Canada);

        Assert.Equal(
            "78.5 corn heat units from 2024-07-01 to 2024-07-03, 0 of 3 days missing; "
            + "corn heat units, parts below zero counted [Agriculture and Agri-Food Canada, Crop (corn) heat units (2017)]",
            sum.ToString());
        Assert.StartsWith(
            "67.5 °F·d from", GrapeHeat.Winkler(ThreeDays, AllThree).ToString("U", CultureInfo.InvariantCulture), StringComparison.Ordinal);
        Assert.StartsWith("78,5 corn", sum.ToString("M", CultureInfo.GetCultureInfo("de-DE")), StringComparison.Ordinal);
        Assert.Throws<FormatException>(() => sum.ToString("X", null));
    }

    [Fact]
    public void ToDisplay_Sum_ShowsItsRows()
    {
        string text = DisplayText.Plain(((IDisplayable)GrapeHeat.Winkler(ThreeDays, AllThree)).ToDisplay(TextStyle.Default));

        Assert.StartsWith("37.5 °C·d", text, StringComparison.Ordinal);
        Assert.Contains("0 of 3 days", text, StringComparison.Ordinal);
        Assert.Contains("The Oxford Companion to Wine", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_SumsOfEveryKind_ComeBackEqual()
    {
        DailyTemperatures gap = DailyTemperatures.Create(
            ThreeDays.Start, [15, double.NaN, 14], [30, 32, 27], TemperatureUnit.DegreeCelsius);
        Ratio half = Ratio.FromPercent(50);

        RoundTrip(CornHeatUnits.Sum(gap, AllThree, CornHeatUnitMethod.Canada, maximumMissing: half));
        RoundTrip(HeatDays.Above(gap, AllThree, Celsius(29), MissingDays.Interpolated, half));
        RoundTrip(GrapeHeat.Huglin(gap, AllThree, Angle.FromDegrees(-38), HuglinMethod.Printed, maximumMissing: half));
        RoundTrip(PhotothermalUnits.Sum(
            gap, AllThree, new DegreeDayThresholds(Celsius(5)), DegreeDayMethod.SimpleAverage, UpperCutoff.None, _ => Duration.FromHours(15.25), maximumMissing: half));
        RoundTrip(GrapeHeat.Region(ThermalTime.FromCelsiusDays(840), WinklerLimits.Celsius));
        RoundTrip(GrapeHeat.ClassOf(ThermalTime.FromCelsiusDays(1840)));
        RoundTrip(GrapeHeat.HuglinCoefficient(Angle.FromDegrees(-45)));
        RoundTrip(AllThree);
        RoundTrip(GrapeHeat.WinklerSeason(Hemisphere.Southern));
        RoundTrip(Phyllochrons.MaizeLeafCollars);
        RoundTrip(LeafAppearance.Leaves(ThermalTime.FromCelsiusDays(300), Phyllochrons.MaizeLeafCollars));
    }

    [Fact]
    public void Json_GrowingSeason_ComesBackEqual()
    {
        double[] warm = [.. Enumerable.Repeat(9.0, 365)];
        double[] cold = [.. Enumerable.Repeat(0.0, 365)];

        Assert.All(new[] { warm, cold }, year => RoundTrip(GrowingSeason.Of(
            DailyTemperatures.Create(new DateOnly(2023, 1, 1), year, year, TemperatureUnit.DegreeCelsius), 2023, Hemisphere.Northern, GrowingSeasonMethod.Etccdi)));
    }

    [Fact]
    public void Json_Methods_AreTheirKeys()
    {
        Assert.All(CornHeatUnitMethod.All, RoundTrip);
        Assert.All(PhysiologicalDayMethod.All, RoundTrip);
        Assert.All(HuglinMethod.All, RoundTrip);
        Assert.All(GrowingSeasonMethod.All, RoundTrip);
        Assert.Equal("\"corn-heat-units.canada\"", JsonSerializer.Serialize(CornHeatUnitMethod.Canada, Json.CornHeatUnitMethod));
        JsonException refused = Assert.Throws<JsonException>(() => JsonSerializer.Deserialize("\"corn\"", Json.CornHeatUnitMethod));
        Assert.Contains("corn-heat-units.canada, corn-heat-units.ontario", refused.Message, StringComparison.Ordinal);
        Assert.Throws<JsonException>(() => JsonSerializer.Deserialize("3", Json.HuglinMethod));
    }

    private static void RoundTrip<T>(T value)
    {
        string json = JsonSerializer.Serialize(value, HortiCalcJson.Options);
        Assert.Equal(value, JsonSerializer.Deserialize<T>(json, HortiCalcJson.Options));
    }

    private static Temperature Celsius(double value) => Temperature.FromDegreesCelsius(value);
}
