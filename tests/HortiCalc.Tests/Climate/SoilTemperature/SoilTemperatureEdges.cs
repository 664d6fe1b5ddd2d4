using HortiCalc.Climate;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

public class SoilTemperatureEdges
{
    private static readonly AnnualWave Mild = new(
        Temperature.FromDegreesCelsius(12), TemperatureDelta.FromDegreesCelsius(8), Duration.FromDays(20));

    private static readonly ThermalDiffusivity Loam = ThermalDiffusivity.FromSquareMillimetresPerSecond(0.5);

    [Theory]
    [InlineData(-0.01)]
    [InlineData(30.1)]
    public void AtDepth_DepthOutsideTheDomain_IsRefused(double metres)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            "depth", () => SoilTemperature.On(Mild, Loam, Length.FromMeters(metres), new MonthDay(4, 1)));

        Assert.Contains("from 0 to 30 m", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.049)]
    [InlineData(21)]
    public void AtDepth_DiffusivityOfNoSoil_IsRefusedWithItsDomain(double squareMillimetresPerSecond)
    {
        ThermalDiffusivity diffusivity = ThermalDiffusivity.FromSquareMillimetresPerSecond(squareMillimetresPerSecond);

        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            "diffusivity", () => Mild.AtDepth(Length.FromMeters(1), diffusivity));

        Assert.Contains("from 0.05 to 5 mm²/s, which is what", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("diffusivity", () => SoilTemperature.DampingDepth(diffusivity, Duration.FromDays(1)));
    }

    [Fact]
    public void Diffusivity_NeverSet_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>("diffusivity", () => Mild.AtDepth(Length.FromMeters(1), default));

    [Theory]
    [InlineData(61, 5, 20, "mean")]
    [InlineData(10, -1, 20, "amplitude")]
    [InlineData(10, 5, 366, "coldest")]
    [InlineData(10, 5, -1, "coldest")]
    public void AnnualWave_ImpossiblePart_IsRefused(double mean, double amplitude, double coldest, string parameter) =>
        Assert.Throws<ArgumentOutOfRangeException>(parameter, () => new AnnualWave(
            Temperature.FromDegreesCelsius(mean), TemperatureDelta.FromDegreesCelsius(amplitude), Duration.FromDays(coldest)));

    [Fact]
    public void Wave_WithoutAmplitude_IsTheMeanEverywhere()
    {
        AnnualWave constant = new(Temperature.FromDegreesCelsius(12), TemperatureDelta.Zero, Duration.FromDays(0));

        Assert.Equal(12, constant.AtDepth(Length.FromMeters(2), Loam).On(new MonthDay(8, 1)).DegreesCelsius);
    }

    [Fact]
    public void Wave_ColdestAtTheEndOfTheYear_IsThatAtItsStart() => Assert.Equal(
        new AnnualWave(Mild.Mean, Mild.Amplitude, Duration.FromDays(0)), new AnnualWave(Mild.Mean, Mild.Amplitude, Duration.FromDays(365)));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(40_000)]
    public void DampingDepth_PeriodThatIsNone_IsRefused(double days) =>
        Assert.Throws<ArgumentOutOfRangeException>("period", () => SoilTemperature.DampingDepth(Loam, Duration.FromDays(days)));

    [Theory]
    [InlineData(10, 10, 5, "lower less upper")]
    [InlineData(10, 5, 5, "lower")]
    [InlineData(5, 10, 12, "lowerAmplitude")]
    [InlineData(5, 10, 0, "lowerAmplitude")]
    public void DiffusivityFromAmplitudes_NoDamping_IsRefused(double upperCm, double lowerCm, double lowerAmplitude, string parameter) =>
        Assert.Throws<ArgumentOutOfRangeException>(parameter, () => SoilTemperature.DiffusivityFromAmplitudes(
            Length.FromCentimeters(upperCm),
            TemperatureDelta.FromDegreesCelsius(10),
            Length.FromCentimeters(lowerCm),
            TemperatureDelta.FromDegreesCelsius(lowerAmplitude),
            Duration.FromDays(1)));

    [Fact]
    public void Fit_TooFewDaysOrASeasonMissing_IsRefusedWithTheCount()
    {
        double[] year = [.. Enumerable.Repeat(10.0, 365)];
        double[] withoutSummer = [.. year, .. year];
        for (int day = 0; day < withoutSummer.Length; day++)
        {
            if (new DateOnly(2021, 1, 1).AddDays(day).Month is 7 or 8 or 9)
                withoutSummer[day] = double.NaN;
        }

        ArgumentException few = Assert.Throws<ArgumentException>("days", () => AnnualWaveFit.FromDaily(Days(year[..300])));
        ArgumentException summer = Assert.Throws<ArgumentException>("days", () => AnnualWaveFit.FromDaily(Days(withoutSummer)));

        Assert.Contains("300 known days", few.Message, StringComparison.Ordinal);
        Assert.Contains("546 known days, 0 in the quarter", summer.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Fit_ConstantRecord_IsAWaveWithoutAmplitude()
    {
        AnnualWaveFit fit = AnnualWaveFit.FromDaily(Days([.. Enumerable.Repeat(10.0, 365)]));

        Assert.Equal(10, fit.Wave.Mean.DegreesCelsius, 9);
        Assert.Equal(0, fit.Wave.Amplitude.DegreesCelsius, 9);
        Assert.Equal(0, fit.ResidualError.DegreesCelsius, 9);
    }

    [Fact]
    public void FromMonthlyMeans_NotTwelve_IsRefused() => Assert.Contains(
        "means held 11 months; allowed: 12",
        Assert.Throws<ArgumentException>("means", () => AnnualWaveFit.FromMonthlyMeans([.. Enumerable.Repeat(Temperature.FromDegreesCelsius(9), 11)])).Message,
        StringComparison.Ordinal);

    [Theory]
    [InlineData(1500, 10, "dryDensity", "1300, 1600 or 1900 kg/m³")]
    [InlineData(1200, 10, "dryDensity", "from 1300 to 1900 kg/m³")]
    [InlineData(1600, 12, "moisture", "5, 10, 15, 20 %")]
    [InlineData(1900, 20, "moisture", "5, 10, 15 %")]
    [InlineData(1600, 25, "moisture", "from 5 to 20 %")]
    public void PackedSoil_BetweenTheCellsOrBlank_IsRefusedWithWhatThereIs(double density, double percent, string parameter, string allowed)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            parameter, () => PackedSoil.Diffusivity(SoilGrain.Sand, Density.FromKilogramsPerCubicMeter(density), Ratio.FromPercent(percent)));

        Assert.Contains(allowed, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void PackedSoil_DensityInPoundsPerCubicFoot_FindsItsCell() => Assert.Equal(
        PackedSoil.Conductivity(SoilGrain.Clay, Density.FromKilogramsPerCubicMeter(1600), Ratio.FromPercent(15)).Value,
        PackedSoil.Conductivity(
            SoilGrain.Clay, Density.FromGramsPerCubicCentimeter(1.6), Ratio.FromDecimalFractions(0.15)).Value);

    private static DailyTemperatures Days(double[] means) =>
        DailyTemperatures.Create(new DateOnly(2021, 1, 1), means, means, TemperatureUnit.DegreeCelsius);
}
