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

public class SoilTemperatureTests
{
    private static readonly AnnualWave Exercise = new(
        Temperature.FromDegreesCelsius(15), TemperatureDelta.FromDegreesCelsius(15), Duration.FromDays(10));

    private static readonly ThermalDiffusivity Slow = ThermalDiffusivity.FromSquareMetresPerDay(0.05);

    [Fact]
    public void AtDepth_OneMetreOfTheExercise_IsDampedAndADampingDepthLater()
    {
        // d = sqrt(0.05 * 365 / π) = 2.410 m; lag = 365/2π * 1/2.410 = 24.1 d.
        AnnualWave below = Exercise.AtDepth(Length.FromMeters(1), Slow);

        Assert.Equal(15 + 15 * Math.Exp(-1 / Math.Sqrt(0.05 * 365 / Math.PI)), below.Maximum.DegreesCelsius, 5);
        Assert.Equal(34.1, below.Coldest.Days, 0.01);
        Assert.Equal(new MonthDay(8, 5), below.WarmestDay);
    }

    [Fact]
    public void On_AnyAnswer_CarriesMethodAndCautions()
    {
        Estimate<Temperature> bed = SoilTemperature.On(Exercise, Slow, Length.FromCentimeters(10), new MonthDay(4, 20));

        Assert.Equal("soil-temperature.annual-wave", bed.Method.Key);
        Assert.Equal(["soil-temperature.surface", "soil-temperature.measure"], bed.Cautions.Select(caution => caution.Code));
    }

    [Fact]
    public void On_AWaveBelowFreezing_SaysThatFreezingIsNotReckonedWith()
    {
        AnnualWave cold = new(Temperature.FromDegreesCelsius(5), TemperatureDelta.FromDegreesCelsius(12), Duration.FromDays(20));

        Assert.Contains(
            SoilTemperature.On(cold, Slow, Length.FromCentimeters(10), new MonthDay(1, 20)).Cautions,
            caution => caution.Code == "soil-temperature.freezing");
    }

    [Fact]
    public void At_MorningInTheGround_IsWarmerThanTheSurface()
    {
        DailyWave surface = new(Temperature.FromDegreesCelsius(20), TemperatureDelta.FromDegreesCelsius(7), Duration.FromHours(5));
        TimeOnly dawn = new(5, 0);

        Estimate<Temperature> below = SoilTemperature.At(surface, SoilMaterials.ClaySoilMoist.Diffusivity, Length.FromCentimeters(10), dawn);

        Assert.Equal(13, surface.At(dawn).DegreesCelsius, 9);
        Assert.True(below.Value > surface.At(dawn));
        Assert.Equal("soil-temperature.daily-wave", below.Method.Key);
    }

    [Fact]
    public void On_SouthernWave_IsWarmestInJanuary()
    {
        AnnualWave southern = new(Temperature.FromDegreesCelsius(15), TemperatureDelta.FromDegreesCelsius(7), Duration.FromDays(200));

        Assert.Equal(1, southern.WarmestDay.Month);
        Assert.True(southern.On(new MonthDay(1, 20)) > southern.On(new MonthDay(7, 20)));
    }

    [Fact]
    public void On_LeapDay_IsAsTheDayBefore() => Assert.Equal(Exercise.On(new MonthDay(2, 28)), Exercise.On(new MonthDay(2, 29)));

    [Fact]
    public void Fit_DayToDayWeather_IsTheResidualError()
    {
        // A wave with 2 °C more and less on alternate days: the root mean square is 2.
        double[] means = [.. Enumerable.Range(1, 730).Select(day => 10 - 9 * Math.Cos((day - 20) * 2 * Math.PI / 365) + (day % 2 == 0 ? 2 : -2))];
        double[] minima = [.. means.Select(mean => mean - 5)];
        double[] maxima = [.. means.Select(mean => mean + 5)];
        minima[100] = double.NaN;
        AnnualWaveFit fit = AnnualWaveFit.FromDaily(
            DailyTemperatures.Create(new DateOnly(2021, 1, 1), minima, maxima, TemperatureUnit.DegreeCelsius));

        Assert.Equal(10, fit.Wave.Mean.DegreesCelsius, 0.01);
        Assert.Equal(9, fit.Wave.Amplitude.DegreesCelsius, 0.02);
        Assert.Equal(2, fit.ResidualError.DegreesCelsius, 0.01);
        Assert.Equal((729, 1), (fit.Count, fit.MissingCount));
        Assert.Equal(new MonthDay(1, 20), fit.Wave.ColdestDay);
    }

    [Fact]
    public void Fit_MonthlyMeansOfAWave_FindItsPhase()
    {
        Temperature[] means =
        [
            .. Enumerable.Range(1, 12).Select(month => Temperature.FromDegreesCelsius(12 - 8 * Math.Cos((AnnualWaveFit.MiddleOfMonth(month) - 25) * 2 * Math.PI / 365))),
        ];

        AnnualWaveFit fit = AnnualWaveFit.FromMonthlyMeans(means);

        Assert.Equal(12, fit.Wave.Mean.DegreesCelsius, 9);
        Assert.Equal(8, fit.Wave.Amplitude.DegreesCelsius, 9);
        Assert.Equal(25, fit.Wave.Coldest.Days, 6);
        Assert.Equal(12, fit.Count);
    }

    [Fact]
    public void Materials_PrintedDiffusivities_AreTheQuotientsOfTheOthersWithinTheirPrint() => Assert.All(
        SoilMaterials.All.Where(material => material.Name != "fresh snow"),
        material => Assert.InRange(
            ThermalDiffusivity.From(material.Conductivity, material.HeatCapacity).SquareMillimetresPerSecond / material.Diffusivity.SquareMillimetresPerSecond,
            0.95,
            1.05));

    [Fact]
    public void Materials_EachWetness_IsThereOnce()
    {
        Assert.Equal(21, SoilMaterials.All.Count);
        Assert.Equal(21, SoilMaterials.All.Select(material => (material.Name, material.Water)).Distinct().Count());
    }

    [Fact]
    public void PackedSoil_ACell_IsTheMiddleOfItsRange()
    {
        Estimate<ThermalDiffusivity> sand = PackedSoil.Diffusivity(
            SoilGrain.Sand, Density.FromKilogramsPerCubicMeter(1600), Ratio.FromPercent(10));

        Assert.Equal((0.089 + 0.11) / 2, sand.Value.SquareMetresPerDay, 12);
        Assert.Equal("printed range of five methods of prediction", sand.Range!.Meaning);
    }

    [Fact]
    public void ToString_WavesFitsAndMaterials_AreOneHonestLine()
    {
        Assert.Equal("15 °C ± 15 °C, coldest around 10 Jan", Exercise.ToString());
        Assert.Equal("59 °F ± 27 °F, coldest around Jan 10", Exercise.ToString("U", CultureInfo.InvariantCulture));
        Assert.Equal(
            "20 °C ± 7 °C, coldest at 05:00",
            new DailyWave(Temperature.FromDegreesCelsius(20), TemperatureDelta.FromDegreesCelsius(7), Duration.FromHours(5)).ToString());
        Assert.StartsWith("clay soil, water 20 % by volume: 0.4 mm²/s [", SoilMaterials.ClaySoilMoist.ToString(), StringComparison.Ordinal);
        AnnualWaveFit fit = new(Exercise, TemperatureDelta.FromDegreesCelsius(2.5), 365, 3);
        Assert.Equal("15 °C ± 15 °C, coldest around 10 Jan; residual error 2.5 °C over 365 values, 3 missing", fit.ToString());
        Assert.Contains("2,5 °C", fit.ToString("M", CultureInfo.GetCultureInfo("de-DE")), StringComparison.Ordinal);
        Assert.Contains("residual error", DisplayText.Plain(((IDisplayable)fit).ToDisplay(TextStyle.Default)), StringComparison.Ordinal);
        Assert.Contains("0.9 W/(m·K)", DisplayText.Plain(((IDisplayable)SoilMaterials.ClaySoilMoist).ToDisplay(TextStyle.Default)), StringComparison.Ordinal);
    }

    [Fact]
    public void Json_WavesFitsMaterialsAndEstimates_ComeBackEqual()
    {
        DailyWave day = new(Temperature.FromDegreesCelsius(20), TemperatureDelta.FromDegreesCelsius(7), Duration.FromHours(5));
        Density packed = Density.FromKilogramsPerCubicMeter(1300);

        RoundTrip(Exercise);
        RoundTrip(day);
        RoundTrip<TemperatureWave>(Exercise);
        RoundTrip<TemperatureWave>(day);
        RoundTrip(new AnnualWaveFit(Exercise, TemperatureDelta.FromDegreesCelsius(2.5), 365, 3));
        Assert.All(SoilMaterials.All, RoundTrip);
        RoundTrip(PackedSoil.Diffusivity(SoilGrain.Clay, packed, Ratio.FromPercent(5)));
        RoundTrip(PackedSoil.Conductivity(SoilGrain.Clay, packed, Ratio.FromPercent(5)));
    }

    private static void RoundTrip<T>(T value)
    {
        string json = JsonSerializer.Serialize(value, HortiCalcJson.Options);
        Assert.Equal(value, JsonSerializer.Deserialize<T>(json, HortiCalcJson.Options));
    }
}
