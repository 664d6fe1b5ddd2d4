using System.Globalization;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Reference;

internal static class SunCalculations
{
    private static readonly DateOnly CommonYear = new(2001, 1, 1);

    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["sunrise-min"] = inputs => Minutes(inputs, times => times.Sunrise!.Value),
        ["solar-noon-min"] = inputs => Minutes(inputs, times => times.SolarNoon),
        ["sunset-min"] = inputs => Minutes(inputs, times => times.Sunset!.Value),
        ["day-length-min"] = inputs => Times(inputs).DayLength.Hours * 60,
        ["sun-elevation-deg"] = inputs => Position(inputs).Elevation.Degrees,
        ["sun-azimuth-deg"] = inputs => Position(inputs).Azimuth.Degrees,
        ["sun-declination-deg"] = inputs => Daylight.Declination(inputs.Date("date"), DaylightMethod.FromKey(inputs["method"])).Value.Degrees,
        ["extraterrestrial-MJ"] = inputs => SolarRadiation.Extraterrestrial(Latitude(inputs), Day(inputs)).Value.MegajoulesPerSquareMeter,
        ["extraterrestrial-hour-MJ"] = inputs => SolarRadiation.ExtraterrestrialOfPeriod(
            Where(inputs),
            new DateTimeOffset(inputs.Date("date"), TimeOnly.MinValue, TimeSpan.FromHours(inputs.Number("utc_offset_h"))).AddHours(inputs.Number("from_h")),
            Duration.FromHours(1)).Value.MegajoulesPerSquareMeter,
        ["clear-sky-MJ"] = inputs => SolarRadiation.ClearSky(
            Latitude(inputs), Day(inputs), Length.FromMeters(inputs.Number("altitude_m"))).Value.MegajoulesPerSquareMeter,
        ["clear-sky-fitted-MJ"] = inputs => SolarRadiation.ClearSky(
            Latitude(inputs), Day(inputs), AngstromCoefficients.Fao56).Value.MegajoulesPerSquareMeter,
        ["radiation-from-sunshine-MJ"] = inputs => SolarRadiation.FromSunshine(
            Latitude(inputs), Day(inputs), Duration.FromHours(inputs.Number("sunshine_h"))).Value.MegajoulesPerSquareMeter,
        ["radiation-from-temperature-MJ"] = inputs => SolarRadiation.FromTemperature(
            Latitude(inputs),
            Day(inputs),
            TemperatureDelta.FromDegreesCelsius(inputs.Number("range_C")),
            Enum.Parse<LandSetting>(inputs["setting"])).Value.MegajoulesPerSquareMeter,
        ["light-factor-watt"] = inputs => PlantLight.PhotonFlux(Irradiance.FromWattsPerSquareMeter(1), Light(inputs)).Value.MicromolesPerSquareMetreSecond,
        ["light-factor-lux"] = inputs => PlantLight.Reading(PhotonFluxDensity.FromMicromolesPerSquareMetreSecond(1), Light(inputs)).Value.Lux,
        ["lux-of-ppfd"] = inputs => PlantLight.Reading(Flux(inputs), Light(inputs)).Value.Lux,
        ["footcandles-of-ppfd"] = inputs => PlantLight.Reading(Flux(inputs), Light(inputs)).Value.Footcandles,
        ["ppfd-of-lux"] = inputs => PlantLight.PhotonFlux(
            Illuminance.FromLux(inputs.Number("lux")), Light(inputs)).Value.MicromolesPerSquareMetreSecond,
        ["ppfd-of-footcandles"] = inputs => PlantLight.PhotonFlux(
            Illuminance.FromFootcandles(inputs.Number("footcandles")), Light(inputs)).Value.MicromolesPerSquareMetreSecond,
        ["dli-of-ppfd"] = inputs => PlantLight.DailyIntegral(Flux(inputs), Duration.FromHours(inputs.Number("hours"))).MolesPerSquareMetreDay,
        ["dli-of-radiation"] = inputs => PlantLight.DailyIntegral(
            Irradiation.FromKilowattHoursPerSquareMeter(inputs.Number("radiation_kWh")),
            SolarPhotonMethod.FromKey(inputs["method"])).Value.MolesPerSquareMetreDay,
        ["photosynthetic-share-percent"] = PhotosyntheticShare,
        ["lamp-hours"] = inputs => PlantLight.LampHours(Moles(inputs, "needed"), Moles(inputs, "natural"), Flux(inputs)).Time.Hours,
        ["light-requirement-low"] = inputs => LightRequirements.Named(inputs["subject"]).Low!.Value.MolesPerSquareMetreDay,
        ["light-requirement-high"] = inputs => LightRequirements.Named(inputs["subject"]).High.MolesPerSquareMetreDay,
        ["meter-requirement-low"] = inputs => Meter(inputs).Low.Footcandles,
        ["meter-requirement-high"] = inputs => Meter(inputs).High.Footcandles,
    };

    private static Computed PhotosyntheticShare(Inputs inputs)
    {
        Estimate<DailyLightIntegral> light = PlantLight.DailyIntegral(Irradiation.FromMegajoulesPerSquareMeter(1), SolarPhotonMethod.HalfOfEnergy);
        DailyLightIntegral moles = inputs["part"] switch
        {
            "low" => light.Range!.Low,
            "high" => light.Range!.High,
            _ => light.Value,
        };
        return 100 * moles.MolesPerSquareMetreDay / LightSource.Sunlight.MicromolesPerJoule!.Value;
    }

    private static Computed Minutes(Inputs inputs, Func<SunTimes, DateTimeOffset> which)
    {
        DateTimeOffset midnight = new(inputs.Date("date"), TimeOnly.MinValue, TimeSpan.FromHours(inputs.Number("utc_offset_h")));
        return (which(Times(inputs)) - midnight).TotalMinutes;
    }

    private static SunTimes Times(Inputs inputs) => Daylight.On(
        Where(inputs),
        inputs.Date("date"),
        TimeSpan.FromHours(inputs.Number("utc_offset_h")),
        DaylightMethod.FromKey(inputs["method"])).Value;

    private static SunPosition Position(Inputs inputs) => Daylight.Position(
        Where(inputs),
        DateTimeOffset.ParseExact(inputs["time_utc"], "yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal)).Value;

    private static Place Where(Inputs inputs) => new(Latitude(inputs), Angle.FromDegrees(inputs.Number("longitude_deg")));

    private static Angle Latitude(Inputs inputs) => Angle.FromDegrees(inputs.Number("latitude_deg"));

    private static DateOnly Day(Inputs inputs) => CommonYear.AddDays((int)inputs.Number("day_of_year") - 1);

    private static LightSource Light(Inputs inputs) => LightSource.FromKey(inputs["source"]);

    private static PhotonFluxDensity Flux(Inputs inputs) => PhotonFluxDensity.FromMicromolesPerSquareMetreSecond(inputs.Number("ppfd"));

    private static DailyLightIntegral Moles(Inputs inputs, string name) => DailyLightIntegral.FromMolesPerSquareMetreDay(inputs.Number(name));

    private static MeterRequirement Meter(Inputs inputs) => MeterRequirement.All.Single(one => one.Plants == inputs["plants"]);
}
