using System.Globalization;
using HortiCalc.Climate;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

public class DegreeDayEdges
{
    private static readonly DegreeDayThresholds Base10 = new(Temperature.FromDegreesCelsius(10));
    private static readonly DegreeDayThresholds Base10To30 = new(Temperature.FromDegreesCelsius(10), Temperature.FromDegreesCelsius(30));

    public static TheoryData<string, UpperCutoff> EveryMethod()
    {
        TheoryData<string, UpperCutoff> data = [];
        foreach (DegreeDayMethod method in DegreeDayMethod.All)
        {
            foreach (UpperCutoff cutoff in method.Cutoffs)
                data.Add(method.Evidence.Key, cutoff);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(EveryMethod))]
    public void OfDay_FiftyDegreesFahrenheitAtBaseFifty_IsExactlyZero(string key, UpperCutoff cutoff)
    {
        DegreeDayThresholds thresholds = new(Temperature.FromDegreesFahrenheit(50), Temperature.FromDegreesFahrenheit(86));
        Temperature fifty = Temperature.FromDegreesFahrenheit(50);

        Assert.Equal(ThermalTime.Zero, DegreeDays.OfDay(fifty, fifty, thresholds, DegreeDayMethod.FromKey(key), cutoff));
    }

    [Fact]
    public void OfDay_MeanExactlyAtTheBaseInFahrenheit_IsExactlyZero()
    {
        // Among these are hundreds that the conversion to Celsius leaves some units of the last place above the base.
        foreach (int lower in new[] { 32, 40, 43, 48, 50, 55 })
        {
            DegreeDayThresholds thresholds = new(Temperature.FromDegreesFahrenheit(lower));
            for (int tenths = 0; tenths < 300; tenths++)
            {
                ThermalTime counted = DegreeDays.OfDay(
                    Temperature.FromDegreesFahrenheit(lower - tenths / 10.0),
                    Temperature.FromDegreesFahrenheit(lower + tenths / 10.0),
                    thresholds,
                    DegreeDayMethod.SimpleAverage,
                    UpperCutoff.None);

                Assert.Equal(0, counted.CelsiusDays);
            }
        }
    }

    [Theory]
    [MemberData(nameof(EveryMethod))]
    public void OfDay_ConstantDayBetweenTheThresholds_IsTheTemperatureLessTheBase(string key, UpperCutoff cutoff)
    {
        Temperature constant = Temperature.FromDegreesCelsius(17.5);

        Assert.Equal(7.5, DegreeDays.OfDay(constant, constant, Base10To30, DegreeDayMethod.FromKey(key), cutoff).CelsiusDays);
    }

    [Theory]
    [MemberData(nameof(EveryMethod))]
    public void OfDay_ConstantDayAtTheUpperThreshold_IsTheDistanceOfTheThresholds(string key, UpperCutoff cutoff)
    {
        Temperature constant = Temperature.FromDegreesCelsius(30);

        Assert.Equal(20, DegreeDays.OfDay(constant, constant, Base10To30, DegreeDayMethod.FromKey(key), cutoff).CelsiusDays);
    }

    [Theory]
    [InlineData("simple-average", 20)]
    [InlineData("clamped-average", 20)]
    [InlineData("single-triangle", 20)]
    [InlineData("single-sine", 20)]
    [InlineData("capped-maximum-average", 22)]
    [InlineData("capped-and-raised-average", 22)]
    public void OfDay_WhollyAboveTheUpperThreshold_IsAsDocumented(string key, double expected)
    {
        ThermalTime counted = DegreeDays.OfDay(
            Temperature.FromDegreesCelsius(34), Temperature.FromDegreesCelsius(42), Base10To30, DegreeDayMethod.FromKey(key), UpperCutoff.Horizontal);

        Assert.Equal(expected, counted.CelsiusDays, 1e-12);
    }

    [Theory]
    [InlineData(9.999999999, 10.000000001)]
    [InlineData(-60, 10.000001)]
    [InlineData(29.999999999, 30.000000001)]
    [InlineData(10, 30)]
    public void OfDay_CurveThatGrazesAThreshold_StaysWithinItsBounds(double minimum, double maximum)
    {
        foreach (DegreeDayMethod curve in new[] { DegreeDayMethod.SingleSine, DegreeDayMethod.SingleTriangle })
        {
            ThermalTime counted = DegreeDays.OfDay(
                Temperature.FromDegreesCelsius(minimum), Temperature.FromDegreesCelsius(maximum), Base10To30, curve, UpperCutoff.Horizontal);

            Assert.InRange(counted.CelsiusDays, 0, Math.Min(maximum, 30) - 10);
        }
    }

    [Fact]
    public void OfDay_CutoffNone_DoesNotUseTheUpperThreshold()
    {
        Temperature minimum = Temperature.FromDegreesCelsius(20);
        Temperature maximum = Temperature.FromDegreesCelsius(40);

        Assert.Equal(
            DegreeDays.OfDay(minimum, maximum, Base10, DegreeDayMethod.SingleSine, UpperCutoff.None),
            DegreeDays.OfDay(minimum, maximum, Base10To30, DegreeDayMethod.SingleSine, UpperCutoff.None));
    }

    [Fact]
    public void OfDay_MaximumBelowMinimum_IsRefused()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => DegreeDays.OfDay(
            Temperature.FromDegreesCelsius(12), Temperature.FromDegreesCelsius(11.5), Base10, DegreeDayMethod.SingleSine, UpperCutoff.None));

        Assert.Equal("maximum", refused.ParamName);
        Assert.Contains("11.5 °C; allowed: from 12 to 60 °C", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-90.5, 0, "minimum", "-90.5 °C; allowed: from -90 to 60 °C")]
    [InlineData(20, 60.5, "maximum", "60.5 °C; allowed: from 20 to 60 °C")]
    public void OfDay_NoTemperatureOfTheAir_IsRefused(double minimum, double maximum, string parameter, string message)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => DegreeDays.OfDay(
            Temperature.FromDegreesCelsius(minimum), Temperature.FromDegreesCelsius(maximum), Base10, DegreeDayMethod.SingleSine, UpperCutoff.None));

        Assert.Equal(parameter, refused.ParamName);
        Assert.Contains(message, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void OfDay_CutoffWithoutUpperThreshold_IsRefused()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => DegreeDays.OfDay(
            Temperature.FromDegreesCelsius(5), Temperature.FromDegreesCelsius(15), Base10, DegreeDayMethod.SingleSine, UpperCutoff.Horizontal));

        Assert.Equal("thresholds", refused.ParamName);
        Assert.Contains("Horizontal", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void OfDay_CutoffThatTheMethodIsNotDefinedFor_IsRefusedByName()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => DegreeDays.OfDay(
            Temperature.FromDegreesCelsius(5), Temperature.FromDegreesCelsius(15), Base10To30, DegreeDayMethod.CappedMaximumAverage, UpperCutoff.None));

        Assert.Equal("cutoff", refused.ParamName);
        Assert.Contains("cutoff was None; allowed with the method 'average with the maximum capped': Horizontal", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void OfDay_CutoffThatIsNone_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>("cutoff", () => DegreeDays.OfDay(
        Temperature.FromDegreesCelsius(5), Temperature.FromDegreesCelsius(15), Base10To30, DegreeDayMethod.SingleSine, (UpperCutoff)99));

    [Fact]
    public void OfDay_Null_IsRefused()
    {
        Temperature mild = Temperature.FromDegreesCelsius(15);

        Assert.Throws<ArgumentNullException>("thresholds", () => DegreeDays.OfDay(mild, mild, null!, DegreeDayMethod.SingleSine, UpperCutoff.None));
        Assert.Throws<ArgumentNullException>("method", () => DegreeDays.OfDay(mild, mild, Base10, null!, UpperCutoff.None));
        Assert.Throws<ArgumentNullException>("days", () => DegreeDays.Accumulate(null!, Base10, DegreeDayMethod.SingleSine, UpperCutoff.None));
    }

    [Theory]
    [InlineData(10, 10)]
    [InlineData(10, 9)]
    [InlineData(10, 61)]
    public void Thresholds_UpperNotAboveLowerOrNoTemperature_AreRefused(double lower, double upper)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => new DegreeDayThresholds(Temperature.FromDegreesCelsius(lower), Temperature.FromDegreesCelsius(upper)));

        Assert.Equal("upper", refused.ParamName);
        Assert.Contains($"upper was {upper} °C; allowed: above lower, 10 °C, and up to 60 °C", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Thresholds_GivenInAnotherUnit_AreEqual() => Assert.Equal(
        Base10To30, new DegreeDayThresholds(Temperature.FromDegreesFahrenheit(50), Temperature.FromDegreesFahrenheit(86)));

    [Fact]
    public void FromKey_Unknown_IsRefusedWithTheKnownOnes()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>("key", () => DegreeDayMethod.FromKey("triple-sine"));

        Assert.Contains("'triple-sine'; allowed: simple-average", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void All_Methods_HaveAKeyOfTheirOwnASourceAndACutoff()
    {
        Assert.Equal(DegreeDayMethod.All.Count, DegreeDayMethod.All.Select(method => method.Evidence.Key).Distinct().Count());
        Assert.All(DegreeDayMethod.All, method => Assert.NotEmpty(method.Cutoffs));
        Assert.All(DegreeDayMethod.All, method => Assert.NotNull(method.Evidence.Source.Address));
        Assert.All(DegreeDayMethod.All, method => Assert.Same(method, DegreeDayMethod.FromKey(method.Evidence.Key)));
    }

    [Theory]
    [InlineData(double.NaN, 20)]
    [InlineData(20, double.NaN)]
    [InlineData(double.NaN, double.NaN)]
    public void Kernels_MissingDay_StaysMissing(double minimum, double maximum)
    {
        foreach (DegreeDayMethod method in DegreeDayMethod.All)
        {
            double[] counted = [0];
            method.Count([minimum], [maximum], Base10To30, UpperCutoff.Horizontal, counted);
            Assert.True(double.IsNaN(counted[0]), method.ToString());
        }
    }

    [Fact]
    public void Accumulate_TooManyMissingDays_IsRefusedUnlessAllowed()
    {
        double[] minima = [5, double.NaN, 7, 8, 9, 10, 11, 12, 13, 14];
        double[] maxima = [15, 16, 17, 18, 19, 20, 21, 22, 23, 24];
        DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2020, 4, 1), minima, maxima, TemperatureUnit.DegreeCelsius);

        ArgumentException refused = Assert.Throws<ArgumentException>(
            "days", () => DegreeDays.Accumulate(days, Base10, DegreeDayMethod.SimpleAverage, UpperCutoff.None));
        DegreeDaySeries allowed = DegreeDays.Accumulate(
            days, Base10, DegreeDayMethod.SimpleAverage, UpperCutoff.None, maximumMissing: Ratio.FromPercent(10));

        Assert.Contains("1 of 10 missing from 2020-04-01 to 2020-04-10; allowed: up to 5 %", refused.Message, StringComparison.Ordinal);
        Assert.Equal([new DateOnly(2020, 4, 2)], allowed.Missing);
    }

    [Fact]
    public void Accumulate_ExactlyTheShareThatIsAllowed_IsCounted()
    {
        double[] minima = [.. Enumerable.Repeat(15.0, 19), double.NaN];
        double[] maxima = [.. Enumerable.Repeat(25.0, 20)];
        DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2020, 4, 1), minima, maxima, TemperatureUnit.DegreeCelsius);

        DegreeDaySeries series = DegreeDays.Accumulate(days, Base10, DegreeDayMethod.SimpleAverage, UpperCutoff.None);

        Assert.Equal(190, series.Total.CelsiusDays, 1e-9);
        Assert.Equal(1, series.LeftOutCount);
    }

    [Fact]
    public void Accumulate_NoKnownDay_IsRefusedWhateverIsAllowed()
    {
        DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2020, 4, 1), [double.NaN], [12], TemperatureUnit.DegreeCelsius);

        Assert.Throws<ArgumentException>("days", () => DegreeDays.Accumulate(
            days, Base10, DegreeDayMethod.SimpleAverage, UpperCutoff.None, maximumMissing: Ratio.FromPercent(100)));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(101)]
    public void Accumulate_ShareThatIsNoShare_IsRefused(double percent)
    {
        DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2020, 4, 1), [8], [12], TemperatureUnit.DegreeCelsius);

        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => DegreeDays.Accumulate(
            days, Base10, DegreeDayMethod.SimpleAverage, UpperCutoff.None, maximumMissing: Ratio.FromPercent(percent)));

        Assert.Equal("maximumMissing", refused.ParamName);
        Assert.Contains("from 0 to 100 %", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2020-03-31")]
    [InlineData("2020-04-02")]
    public void Accumulate_FromADayOutsideTheRecord_IsRefused(string outside)
    {
        DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2020, 4, 1), [8], [12], TemperatureUnit.DegreeCelsius);

        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>("from", () => DegreeDays.Accumulate(
            days, Base10, DegreeDayMethod.SimpleAverage, UpperCutoff.None, DateOnly.Parse(outside, null)));

        Assert.Contains($"from was {outside}; allowed: from 2020-04-01 to 2020-04-01", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void OfDay_TypedCall_AllocatesNothing()
    {
        Temperature minimum = Temperature.FromDegreesFahrenheit(48);
        Temperature maximum = Temperature.FromDegreesFahrenheit(91);
        double sum = DegreeDays.OfDay(minimum, maximum, Base10To30, DegreeDayMethod.SingleSine, UpperCutoff.Horizontal).CelsiusDays;

        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int call = 0; call < 1000; call++)
            sum += DegreeDays.OfDay(minimum, maximum, Base10To30, DegreeDayMethod.SingleSine, UpperCutoff.Horizontal).CelsiusDays;
        long allocated = GC.GetAllocatedBytesForCurrentThread() - before;

        Assert.True(sum > 0);
        Assert.Equal(0, allocated);
    }

    [Fact]
    public void Accumulate_WhereACommaIsTheDecimalSeparator_WritesAndRefusesAsAnywhere()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2020, 4, 1), [8.5], [14.25], TemperatureUnit.DegreeCelsius);

            Assert.Equal("2020-04-01 to 2020-04-01: 1 day, 0 missing, 8.5 °C to 14.3 °C", days.ToString());
            Assert.StartsWith(
                "1.4 °C·d", DegreeDays.Accumulate(days, Base10, DegreeDayMethod.SimpleAverage, UpperCutoff.None).ToString(), StringComparison.Ordinal);
            Assert.Contains(
                "was 60.5 °C",
                Assert.Throws<ArgumentOutOfRangeException>(() => DailyTemperatures.Create(days.Start, [8.5], [60.5], TemperatureUnit.DegreeCelsius)).Message,
                StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
