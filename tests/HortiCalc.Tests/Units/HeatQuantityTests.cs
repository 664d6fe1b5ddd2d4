using System.Globalization;
using System.Text.Json;
using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Json;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Units;

/// <summary>Photothermal time and thermal diffusivity.</summary>
public class HeatQuantityTests
{
    [Property]
    public void PhotothermalTime_EveryUnit_ComesBack(PositiveInt tenths)
    {
        double value = tenths.Get / 10.0;

        Assert.Equal(value * 1.8, PhotothermalTime.FromCelsiusDayHours(value).FahrenheitDayHours, 1e-6);
        Assert.Equal(value, PhotothermalTime.FromFahrenheitDayHours(value).FahrenheitDayHours, 1e-6);
    }

    [Property]
    public void ThermalDiffusivity_EveryUnit_ComesBack(PositiveInt thousandths)
    {
        double value = thousandths.Get / 1000.0;

        Assert.Equal(1, ThermalDiffusivity.FromSquareMetresPerSecond(value).SquareMetresPerSecond / value, 1e-12);
        Assert.Equal(1, ThermalDiffusivity.FromSquareMetresPerDay(value).SquareMetresPerDay / value, 1e-12);
        Assert.Equal(1, ThermalDiffusivity.FromSquareMillimetresPerSecond(value).SquareMillimetresPerSecond / value, 1e-12);
    }

    [Fact]
    public void PhotothermalTime_From_IsTheProduct()
    {
        PhotothermalTime day = PhotothermalTime.From(ThermalTime.FromCelsiusDays(12), Duration.FromHours(15.5));

        Assert.Equal(186, day.CelsiusDayHours, 9);
        Assert.Equal(372, (day + day).CelsiusDayHours, 9);
        Assert.True(PhotothermalTime.Zero < day && day >= PhotothermalTime.Zero && day > PhotothermalTime.Zero && PhotothermalTime.Zero <= day);
    }

    [Fact]
    public void ThermalDiffusivity_From_IsConductivityByHeatCapacity()
    {
        ThermalDiffusivity clay = ThermalDiffusivity.From(
            ThermalConductivity.FromWattsPerMeterKelvin(0.9), VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(2.27e6));

        Assert.Equal(0.9 / 2.27, clay.SquareMillimetresPerSecond, 12);
        Assert.True(clay < ThermalDiffusivity.FromSquareMillimetresPerSecond(1) && clay >= ThermalDiffusivity.FromSquareMillimetresPerSecond(0.1));
    }

    [Fact]
    public void ToStringAndParse_BothUnits_ComeBack()
    {
        PhotothermalTime time = PhotothermalTime.FromCelsiusDayHours(18600);
        ThermalDiffusivity clay = ThermalDiffusivity.FromSquareMillimetresPerSecond(0.4);

        Assert.Equal("18600 °C·d·h", time.ToString());
        Assert.Equal("33480 °F·d·h", time.ToString("U", null));
        Assert.Equal("0,4 mm²/s", clay.ToString("M", CultureInfo.GetCultureInfo("de-DE")));
        Assert.Equal("0.372 ft²/d", clay.ToString("U", null));
        Assert.Equal(time, PhotothermalTime.Parse("18600 degC.d.h", null));
        Assert.Equal(clay, ThermalDiffusivity.Parse("0.4 mm2/s", null));
        Assert.False(ThermalDiffusivity.TryParse("-0.4 mm²/s", null, out _));
        Assert.False(PhotothermalTime.TryParse("5 °C·d", null, out _));
    }

    [Fact]
    public void Json_Quantities_ComeBackEqual()
    {
        Assert.Equal(
            """{"value":0.4,"unit":"mm²/s"}""",
            JsonSerializer.Serialize(ThermalDiffusivity.FromSquareMillimetresPerSecond(0.4), HortiCalcJsonContext.Default.ThermalDiffusivity));
        Assert.Equal(
            PhotothermalTime.FromCelsiusDayHours(12.5),
            JsonSerializer.Deserialize("""{"value":12.5,"unit":"°C·d·h"}""", HortiCalcJsonContext.Default.PhotothermalTime));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void ThermalDiffusivity_NotGreaterThanZero_IsRefused(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>(nameof(value), () => ThermalDiffusivity.FromSquareMetresPerSecond(value));
        Assert.Throws<ArgumentOutOfRangeException>(nameof(value), () => ThermalDiffusivity.FromSquareMetresPerDay(value));
        Assert.Throws<ArgumentOutOfRangeException>("conductivity", () => ThermalDiffusivity.From(
            ThermalConductivity.FromWattsPerMeterKelvin(value), VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(1)));
    }

    [Fact]
    public void PhotothermalTime_TooLarge_IsRefused()
    {
        PhotothermalTime huge = PhotothermalTime.FromCelsiusDayHours(double.MaxValue);

        Assert.Throws<OverflowException>(() => huge + huge);
        Assert.Throws<ArgumentOutOfRangeException>("value", () => PhotothermalTime.FromCelsiusDayHours(double.NaN));
    }
}
