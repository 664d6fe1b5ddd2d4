using System.Globalization;
using System.Text.Json;
using HortiCalc.Climate;
using HortiCalc.Json;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

public class PlantLightEdges
{
    private static readonly PhotonFluxDensity Lamp = PhotonFluxDensity.FromMicromolesPerSquareMetreSecond(150);

    [Fact]
    public void PhotonFlux_FactorNotKnown_IsRefusedWithTheLamp()
    {
        ArgumentException refusal = Assert.Throws<ArgumentException>(
            "light", () => PlantLight.PhotonFlux(Irradiance.FromWattsPerSquareMeter(1), LightSource.LowPressureSodium));

        Assert.Contains("light was low-pressure sodium, whose factor for watts is not known", refusal.Message, StringComparison.Ordinal);
        LightSource led = new("led", "a LED", null, 5, LightSource.Sunlight.Source);
        Assert.Throws<ArgumentException>("light", () => PlantLight.Reading(Lamp, led));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(-1e-9)]
    public void Light_Negative_IsRefused(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>("reading", () => PlantLight.PhotonFlux(Illuminance.FromLux(value), LightSource.Sunlight));
        Assert.Throws<ArgumentOutOfRangeException>("power", () => PlantLight.PhotonFlux(Irradiance.FromWattsPerSquareMeter(value), LightSource.Sunlight));
        Assert.Throws<ArgumentOutOfRangeException>(
            "radiation", () => PlantLight.DailyIntegral(Irradiation.FromKilojoulesPerSquareMeter(value), SolarPhotonMethod.LightMaps));
        Assert.Throws<ArgumentOutOfRangeException>(
            "micromolesPerSquareMetreSecond", () => PlantLight.DailyIntegral([1, value], Duration.FromHours(1)));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Numbers_NegativeOrNotFinite_AreRefused(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>(
            "micromolesPerSquareMetreSecond", () => PlantLight.DailyIntegral([1, value], Duration.FromHours(1)));
        Assert.Throws<ArgumentOutOfRangeException>(nameof(value), () => PhotonFluxDensity.FromMicromolesPerSquareMetreSecond(value));
        Assert.Throws<ArgumentOutOfRangeException>(nameof(value), () => DailyLightIntegral.FromMolesPerSquareMetreDay(value));
        Assert.Throws<ArgumentOutOfRangeException>("luxPerMicromole", () => new LightSource("a", "a", value, null, LightSource.Sunlight.Source));
        Assert.Throws<ArgumentOutOfRangeException>("micromolesPerJoule", () => new LightSource("a", "a", null, value, LightSource.Sunlight.Source));
    }

    [Fact]
    public void DailyIntegral_LongerThanADayOrEmpty_IsRefused()
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(
            "time", () => PlantLight.DailyIntegral(Lamp, Duration.FromHours(25)));
        Assert.Contains("25 h; allowed: from 0 to 24 h", refusal.Message, StringComparison.Ordinal);
        Assert.Contains(
            "up to 8 h, a day by the number of readings",
            Assert.Throws<ArgumentOutOfRangeException>("step", () => PlantLight.DailyIntegral([1, 2, 3], Duration.FromHours(9))).Message,
            StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("micromolesPerSquareMetreSecond", () => PlantLight.DailyIntegral([], Duration.FromHours(1)));
        Assert.Equal(12.96, PlantLight.DailyIntegral(Lamp, Duration.FromHours(24)).MolesPerSquareMetreDay, 1e-9);
    }

    [Fact]
    public void LampHours_TooWeakALamp_SaysSo()
    {
        LampTime weak = PlantLight.LampHours(DailyLightIntegral.FromMolesPerSquareMetreDay(20), DailyLightIntegral.Zero, Lamp);

        Assert.False(weak.FitsInADay);
        Assert.Equal(37.037, weak.Time.Hours, 1e-3);
        Assert.StartsWith("not reached in 24 h (37 h a day): a stronger lamp is needed", weak.ToString(), StringComparison.Ordinal);
        Assert.Contains(weak.Cautions, caution => caution.Code == "light.long-day");
        Assert.Contains(weak.Cautions, caution => caution.Code == "light.electricity");
        Assert.Contains(weak.Cautions, caution => caution.Code == "light.eyes");
        Assert.Throws<ArgumentOutOfRangeException>(
            "lamp", () => PlantLight.LampHours(DailyLightIntegral.FromMolesPerSquareMetreDay(1), DailyLightIntegral.Zero, PhotonFluxDensity.Zero));
    }

    [Fact]
    public void LampHours_EighteenHoursOrLess_HaveNoCautionOfLongDays()
    {
        LampTime winter = PlantLight.LampHours(DailyLightIntegral.FromMolesPerSquareMetreDay(12), DailyLightIntegral.FromMolesPerSquareMetreDay(4), Lamp);

        Assert.Equal(["light.electricity", "light.eyes"], winter.Cautions.Select(caution => caution.Code));
        Assert.Equal("14.8 h a day, from 4 mol/(m²·d) to 12 mol/(m²·d) with 150 µmol/(m²·s); 2 cautions", winter.ToString());
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(101)]
    public void UnderShade_NoShare_IsRefused(double percent)
    {
        Assert.Contains(
            "from 0 to 100 %",
            Assert.Throws<ArgumentOutOfRangeException>("shade", () => PlantLight.UnderShade(Lamp, Ratio.FromPercent(percent))).Message,
            StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("shade", () => PlantLight.UnderShade(DailyLightIntegral.Zero, Ratio.FromPercent(percent)));
    }

    [Fact]
    public void ShadeNeeded_Darkness_IsNone() => Assert.Equal(0, PlantLight.ShadeNeeded(DailyLightIntegral.Zero, DailyLightIntegral.Zero).Percent);

    [Fact]
    public void Keys_Every_AreFoundAndOthersRefused()
    {
        Assert.All(LightSource.All, light => Assert.Same(light, LightSource.FromKey(light.Key)));
        Assert.All(SolarPhotonMethod.All, method => Assert.Same(method, SolarPhotonMethod.FromKey(method.Evidence.Key)));
        Assert.All(LightRequirements.All, one => Assert.Same(one, LightRequirements.Named(one.Subject)));
        Assert.Contains("sunlight", Assert.Throws<ArgumentException>(() => LightSource.FromKey("moon")).Message, StringComparison.Ordinal);
        Assert.Contains("African violet", Assert.Throws<ArgumentException>(() => LightRequirements.Named("moss")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Requirements_OutOfOrder_AreRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>("high", () => new LightRequirement(
            "a", DailyLightIntegral.FromMolesPerSquareMetreDay(5), DailyLightIntegral.FromMolesPerSquareMetreDay(4), LightSource.Sunlight.Source));
        Assert.Throws<ArgumentOutOfRangeException>("high", () => new MeterRequirement(
            "a", Illuminance.FromLux(5), Illuminance.FromLux(4), LightSource.Sunlight.Source));
    }

    [Fact]
    public void Quantities_TextAndParse_ComeBack()
    {
        Assert.Equal("150.3 µmol/(m²·s)", PhotonFluxDensity.FromMicromolesPerSquareMetreSecond(150.25).ToString());
        Assert.Equal("150,3 µmol/(m²·s)", PhotonFluxDensity.FromMicromolesPerSquareMetreSecond(150.25).ToString("U", CultureInfo.GetCultureInfo("de-DE")));
        Assert.Equal(Lamp, PhotonFluxDensity.Parse("150 umol/(m2.s)", null));
        Assert.Equal(DailyLightIntegral.FromMolesPerSquareMetreDay(12.5), DailyLightIntegral.Parse("12.5 mol/(m²·d)", null));
        Assert.False(DailyLightIntegral.TryParse("12", null, out _));
        Assert.False(PhotonFluxDensity.TryParse("-5 µmol/(m²·s)", null, out _));
        Assert.True(PhotonFluxDensity.Zero < Lamp && Lamp > PhotonFluxDensity.Zero && Lamp <= PhotonFluxDensity.Add(Lamp, PhotonFluxDensity.Zero) && Lamp >= PhotonFluxDensity.Zero);
        DailyLightIntegral huge = DailyLightIntegral.FromMolesPerSquareMetreDay(double.MaxValue);
        Assert.Throws<OverflowException>(() => huge + huge);
        PhotonFluxDensity blinding = PhotonFluxDensity.FromMicromolesPerSquareMetreSecond(double.MaxValue);
        Assert.Throws<OverflowException>(() => blinding + blinding);
        Assert.Equal("African violet: 4 to 6 mol/(m²·d) [Encyclopedia article, Daily light integral (no date)]", LightRequirements.All[0].ToString());
        Assert.StartsWith("most seedlings and flowering bulbs: 750 fc [", MeterRequirement.All[1].ToString("U", null), StringComparison.Ordinal);
        Assert.StartsWith("sun and sky, 54 lx per µmol/(m²·s), 4.57 µmol/J [HortScience", LightSource.Sunlight.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Json_EveryType_ComesBackEqual()
    {
        Assert.All(LightSource.All, RoundTrip);
        Assert.All(SolarPhotonMethod.All, RoundTrip);
        Assert.All(LightRequirements.All, RoundTrip);
        Assert.All(MeterRequirement.All, RoundTrip);
        RoundTrip(PlantLight.LampHours(DailyLightIntegral.FromMolesPerSquareMetreDay(20), DailyLightIntegral.Zero, Lamp));
        RoundTrip(PlantLight.Reading(Lamp, LightSource.Sunlight));
        RoundTrip(PlantLight.Power(Lamp, LightSource.Sunlight));
        RoundTrip(PlantLight.PhotonFlux(Illuminance.FromFootcandles(750), LightSource.Sunlight));
        RoundTrip(PlantLight.DailyIntegral(Irradiation.FromMegajoulesPerSquareMeter(20), SolarPhotonMethod.HalfOfEnergy));
    }

    private static void RoundTrip<T>(T value) => Assert.Equal(
        value, JsonSerializer.Deserialize<T>(JsonSerializer.Serialize(value, HortiCalcJson.Options), HortiCalcJson.Options));
}
