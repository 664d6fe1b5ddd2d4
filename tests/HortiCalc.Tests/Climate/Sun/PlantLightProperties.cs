using FsCheck.Xunit;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

[Properties(MaxTest = 200)]
public class PlantLightProperties
{
    private const double Rounding = 1e-9;

    [Property]
    public void Lux_ThereAndBack_IsTheSame(ushort tenths)
    {
        foreach (LightSource light in LightSource.All)
        {
            PhotonFluxDensity flux = PlantLight.PhotonFlux(Illuminance.FromLux(tenths / 10.0), light).Value;
            Assert.Equal(tenths / 10.0, PlantLight.Reading(flux, light).Value.Lux, 1e-6);
        }
    }

    [Property]
    public void Watts_ThereAndBack_AreTheSame(ushort tenths)
    {
        foreach (LightSource light in LightSource.All.Where(light => light.MicromolesPerJoule is not null))
        {
            PhotonFluxDensity flux = PlantLight.PhotonFlux(Irradiance.FromWattsPerSquareMeter(tenths / 10.0), light).Value;
            Assert.Equal(tenths / 10.0, PlantLight.Power(flux, light).Value.WattsPerSquareMeter, 1e-6);
        }
    }

    [Property]
    public void PhotonFlux_FootcandlesAndLux_AreTheSame(ushort footcandles) => Assert.Equal(
        PlantLight.PhotonFlux(Illuminance.FromLux(footcandles / 0.09290304), LightSource.Sunlight).Value.MicromolesPerSquareMetreSecond,
        PlantLight.PhotonFlux(Illuminance.FromFootcandles(footcandles), LightSource.Sunlight).Value.MicromolesPerSquareMetreSecond,
        1e-6);

    [Property]
    public void PhotonFlux_TwiceTheReading_IsTwice(ushort lux)
    {
        double one = PlantLight.PhotonFlux(Illuminance.FromLux(lux), LightSource.MetalHalide).Value.MicromolesPerSquareMetreSecond;

        Assert.Equal(2 * one, PlantLight.PhotonFlux(Illuminance.FromKilolux(lux / 500.0), LightSource.MetalHalide).Value.MicromolesPerSquareMetreSecond, 1e-6);
    }

    [Property]
    public void DailyIntegral_TwoLamps_Add(ushort a, ushort b, byte hours)
    {
        Duration time = Time(hours);

        Assert.Equal(
            (PlantLight.DailyIntegral(Flux(a), time) + PlantLight.DailyIntegral(Flux(b), time)).MolesPerSquareMetreDay,
            PlantLight.DailyIntegral(Flux(a) + Flux(b), time).MolesPerSquareMetreDay,
            Rounding);
    }

    [Property]
    public void DailyIntegral_SteadyReadings_AreTheLamp(ushort a, byte count)
    {
        int steps = count % 48 + 1;
        double[] readings = [.. Enumerable.Repeat(Flux(a).MicromolesPerSquareMetreSecond, steps)];

        Assert.Equal(
            PlantLight.DailyIntegral(Flux(a), Duration.FromMinutes(30 * steps)).MolesPerSquareMetreDay,
            PlantLight.DailyIntegral(readings, Duration.FromMinutes(30)).MolesPerSquareMetreDay,
            Rounding);
    }

    [Property]
    public void DailyIntegral_OrderOfReadings_DoesNotMatter(ushort a, ushort b, ushort c) => Assert.Equal(
        PlantLight.DailyIntegral([a, b, c], Duration.FromHours(8)).MolesPerSquareMetreDay,
        PlantLight.DailyIntegral([c, a, b], Duration.FromHours(8)).MolesPerSquareMetreDay,
        1e-6);

    [Property]
    public void DailyIntegral_OfRadiation_IsInProportionInEveryUnit(ushort joules)
    {
        foreach (SolarPhotonMethod method in SolarPhotonMethod.All)
        {
            double moles = PlantLight.DailyIntegral(Irradiation.FromJoulesPerSquareCentimeter(joules), method).Value.MolesPerSquareMetreDay;
            Assert.Equal(joules / 100.0 * method.MolesPerMegajoule, moles, 1e-6);
            Assert.Equal(
                moles,
                PlantLight.DailyIntegral(Irradiation.FromKilowattHoursPerSquareMeter(joules / 360.0), method).Value.MolesPerSquareMetreDay,
                1e-6);
        }
    }

    [Property]
    public void DailyIntegral_ThreeMethods_AgreeWithinASixth(ushort joules)
    {
        double[] moles = [.. SolarPhotonMethod.All.Select(method =>
            PlantLight.DailyIntegral(Irradiation.FromJoulesPerSquareCentimeter(joules + 1.0), method).Value.MolesPerSquareMetreDay)];

        Assert.InRange(moles.Max() / moles.Min(), 1, 7 / 6.0);
    }

    [Property]
    public void DailyIntegral_Range_HoldsTheValue(ushort joules)
    {
        Estimate<DailyLightIntegral> half = PlantLight.DailyIntegral(Irradiation.FromJoulesPerSquareCentimeter(joules + 1.0), SolarPhotonMethod.HalfOfEnergy);

        Assert.True(half.Range!.Low < half.Value && half.Value < half.Range.High);
    }

    [Property]
    public void LampHours_BurntSoLong_GiveWhatIsNeeded(ushort needed, ushort natural, ushort lamp)
    {
        DailyLightIntegral want = Moles(needed);
        DailyLightIntegral have = Moles(natural);
        LampTime time = PlantLight.LampHours(want, have, Flux(lamp) + PhotonFluxDensity.FromMicromolesPerSquareMetreSecond(1));

        if (have >= want)
        {
            Assert.Equal(0, time.Time.Hours);
            Assert.Empty(time.Cautions);
        }
        else if (time.FitsInADay)
        {
            Assert.Equal(want.MolesPerSquareMetreDay, (have + PlantLight.DailyIntegral(time.Lamp, time.Time)).MolesPerSquareMetreDay, 1e-6);
            Assert.Contains(time.Cautions, caution => caution.Level == CautionLevel.Danger);
        }
        else
        {
            Assert.True((have + PlantLight.DailyIntegral(time.Lamp, Duration.FromHours(24))).MolesPerSquareMetreDay < want.MolesPerSquareMetreDay + 1e-9);
        }
    }

    [Property]
    public void LampHours_StrongerLamp_BurnsShorterInProportion(ushort needed, ushort lamp)
    {
        PhotonFluxDensity one = Flux(lamp) + PhotonFluxDensity.FromMicromolesPerSquareMetreSecond(1);

        Assert.Equal(
            PlantLight.LampHours(Moles(needed), DailyLightIntegral.Zero, one).Time.Hours,
            2 * PlantLight.LampHours(Moles(needed), DailyLightIntegral.Zero, one + one).Time.Hours,
            1e-6);
    }

    [Property]
    public void Shade_Needed_BringsTheLightDown(ushort outside, ushort wanted)
    {
        Ratio shade = PlantLight.ShadeNeeded(Moles(outside), Moles(wanted));

        Assert.InRange(shade.Percent, 0, 100);
        Assert.Equal(
            Math.Min(Moles(outside).MolesPerSquareMetreDay, Moles(wanted).MolesPerSquareMetreDay),
            PlantLight.UnderShade(Moles(outside), shade).MolesPerSquareMetreDay,
            1e-9);
    }

    [Property]
    public void Shade_TwoLayers_AreOneOfTheProduct(ushort flux, byte first, byte second)
    {
        double left = (1 - first / 255.0) * (1 - second / 255.0);
        PhotonFluxDensity twice = PlantLight.UnderShade(PlantLight.UnderShade(Flux(flux), Ratio.FromPercent(first / 2.55)), Ratio.FromPercent(second / 2.55));

        Assert.Equal(PlantLight.UnderShade(Flux(flux), Ratio.FromDecimalFractions(1 - left)).MicromolesPerSquareMetreSecond, twice.MicromolesPerSquareMetreSecond, 1e-6);
    }

    private static PhotonFluxDensity Flux(ushort tenths) => PhotonFluxDensity.FromMicromolesPerSquareMetreSecond(tenths / 10.0);

    private static DailyLightIntegral Moles(ushort thousandths) => DailyLightIntegral.FromMolesPerSquareMetreDay(thousandths / 1000.0);

    private static Duration Time(byte part) => Duration.FromHours(24.0 * part / byte.MaxValue);
}
