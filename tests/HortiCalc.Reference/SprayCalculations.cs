using HortiCalc.Mixes;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Reference;

/// <summary>Chlorine in water, seed baths, measures of powder, calibration, limits and waiting times of sprays.</summary>
internal static class SprayCalculations
{
    private static readonly Dictionary<string, double> StorageDays = new(StringComparer.Ordinal)
    {
        ["1-day"] = 1,
        ["2-days"] = 2,
        ["3-days"] = 3,
        ["4-days"] = 4,
        ["5-days"] = 5,
        ["6-days"] = 6,
        ["1-week"] = 7,
        ["2-weeks"] = 14,
        ["3-weeks"] = 21,
        ["1-month"] = 365 / 12.0,
        ["2-months"] = 2 * 365 / 12.0,
        ["3-months"] = 3 * 365 / 12.0,
        ["4-months"] = 4 * 365 / 12.0,
        ["5-months"] = 5 * 365 / 12.0,
        ["6-months"] = 6 * 365 / 12.0,
    };

    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        // Chlorine in a line; the label's per cent as weight per volume, as the charts take it.
        ["chlorine-injection.gph"] = inputs => ChlorineInjection.Bleach(
            VolumeFlow.FromUsGallonsPerMinute(inputs.Number("gpm")),
            MassConcentration.FromMilligramsPerLiter(inputs.Number("level_ppm")),
            HypochloriteLabel.PercentAsWeightPerVolume(MassFraction.FromPercent(inputs.Number("label_pct")))).Value.UsGallonsPerHour,
        ["chlorine-injection.lb-per-day"] = inputs => ChlorineInjection.ChlorineFor(
            VolumeFlow.FromUsGallonsPerMinute(inputs.Number("gpm")),
            MassConcentration.FromMilligramsPerLiter(inputs.Number("level_ppm")),
            Duration.FromDays(1)).Pounds,

        // Hypochlorous acid.
        ["hypochlorous.share-pct"] = inputs => (inputs.Has("water_C")
            ? HypochlorousAcid.Share(new(inputs.Number("pH")), Temperature.FromDegreesCelsius(inputs.Number("water_C")))
            : HypochlorousAcid.Share(new(inputs.Number("pH")), ConstantOf(inputs))).Value.Percent,
        ["hypochlorous.pH"] = inputs =>
            HypochlorousAcid.PhFor(Ratio.FromPercent(inputs.Number("share_pct")), ConstantOf(inputs)).Value.Value,
        ["hypochlorous.umol-per-litre"] = inputs => HypochlorousAcid.Level(
            MassConcentration.FromMilligramsPerLiter(inputs.Number("chlorine_mgL")), new(inputs.Number("pH")), ConstantOf(inputs)).Value.MilligramsPerLiter / 70.906 * 1000,

        // What is left.
        ["bleach-storage.trade-percent"] = inputs => 12.5 * ChlorineLoss.InStore(
            Duration.FromDays(StorageDays[inputs["time"]]), Temperature.FromDegreesFahrenheit(inputs.Number("store_F"))).Value.DecimalFractions,
        ["chlorine-loss.after-dilution-pct"] = inputs => ChlorineLoss.AfterDilution(
            Duration.FromHours(inputs.Number("elapsed_h")), Duration.FromHours(inputs.Number("half_life_h"))).Value.Percent,
        ["chlorine-loss.use-within-h"] = _ => ChlorineLoss.UseWithin.Range!.High.Hours,
        ["chlorine-loss.left-high-pct"] = inputs => ChlorineLoss.Published.Single(record => record.Key == inputs["record"]).High.Percent,

        // Contact and seed.
        ["contact.level-mgL"] = inputs => Record(inputs).Low.MilligramsPerLiter,
        ["contact.level-high-mgL"] = inputs => Record(inputs).High.MilligramsPerLiter,
        ["contact.level-percent"] = inputs => Record(inputs).Low.GramsPerLiter / 10,
        ["contact.level-high-percent"] = inputs => Record(inputs).High.GramsPerLiter / 10,
        ["contact.minutes"] = inputs => Record(inputs).Time!.Value.Minutes,
        ["contact.hours"] = inputs => Record(inputs).Time!.Value.Hours,
        ["contact.seconds"] = inputs => Record(inputs).Time!.Value.Seconds,
        ["hot-water.F"] = inputs => Bath(inputs).Water.DegreesFahrenheit,
        ["hot-water.minutes"] = inputs => Bath(inputs).Time.Minutes,

        // Powders.
        ["powder.low-g"] = inputs => Powder(inputs).Low.Grams,
        ["powder.high-g"] = inputs => Powder(inputs).High.Grams,

        // Calibration.
        ["spray.course-ft"] = inputs => SprayerCalibration.CourseFor128thAcre(WidthOf(inputs)).Feet,
        ["spray.gpa-128th"] = inputs => SprayerCalibration.From128thAcre(Volume.FromUsOunces(inputs.Number("caught_floz"))).UsGallonsPerAcre,
        ["spray.gpa-boom"] = inputs => SprayerCalibration.FromBoom(
            Volume.FromUsOunces(inputs.Number("caught_floz")), Length.FromFeet(inputs.Number("distance_ft")), WidthOf(inputs)).UsGallonsPerAcre,
        ["spray.gpa-flow"] = inputs => SprayerCalibration.FromFlow(
            inputs.Has("gpm")
                ? VolumeFlow.FromUsGallonsPerMinute(inputs.Number("gpm"))
                : VolumeFlow.FromUsGallonsPerMinute(inputs.Number("floz_per_min") / 128),
            Speed.FromMilesPerHour(inputs.Number("mph")),
            WidthOf(inputs)).UsGallonsPerAcre,
        ["spray.gpa-at-other-speed"] = inputs => SprayerCalibration.FromFlow(
            SprayerCalibration.FlowFor(VolumeRate.FromUsGallonsPerAcre(inputs.Number("gpa")), Speed.FromMilesPerHour(inputs.Number("mph")), WidthOf(inputs)),
            Speed.FromMilesPerHour(inputs.Number("other_mph")),
            WidthOf(inputs)).UsGallonsPerAcre,
        ["spray.l-per-ha-flow"] = inputs => SprayerCalibration.FromFlow(
            VolumeFlow.FromLitersPerMinute(inputs.Number("L_per_min")),
            inputs.Has("m_per_min") ? Speed.FromMetersPerMinutes(inputs.Number("m_per_min")) : Speed.FromKilometersPerHour(inputs.Number("km_per_h")),
            Length.FromMeters(inputs.Number("width_m"))).LitresPerHectare,
        ["spray.l-per-ha-area"] = inputs =>
            VolumeRate.Of(Volume.FromLiters(inputs.Number("L")), Area.FromSquareMeters(inputs.Number("area_m2"))).LitresPerHectare,
        ["spray.gpa-area"] = inputs =>
            VolumeRate.Of(Volume.FromUsGallons(inputs.Number("gal")), Area.FromSquareFeet(inputs.Number("area_ft2"))).UsGallonsPerAcre,
        ["spray.gal-on-area"] = inputs =>
            VolumeRate.FromUsGallonsPerAcre(inputs.Number("gpa")).Over(Area.FromSquareFeet(inputs.Number("area_ft2"))).UsGallons,
        ["spray.product-floz"] = inputs => new SprayJob(
            Area.FromAcres(1), VolumeRate.FromUsGallonsPerAcre(inputs.Number("gpa")), Volume.FromUsGallons(inputs.Number("tank_gal"))).ProductIn(
                Volume.FromUsGallons(inputs.Number("tank_gal")),
                VolumeRate.FromUsGallonsPerAcre(inputs.Number("product_floz_per_acre") / 128)).UsOunces,
        ["spray.product-mL"] = inputs => inputs.Has("gpa")
            ? new SprayJob(
                Area.FromAcres(1), VolumeRate.FromUsGallonsPerAcre(inputs.Number("gpa")), Volume.FromUsGallons(inputs.Number("tank_gal"))).ProductIn(
                    Volume.FromUsGallons(inputs.Number("tank_gal")),
                    VolumeRate.FromUsGallonsPerAcre(inputs.Number("product_floz_per_acre") / 128)).Milliliters
            : new SprayJob(
                Area.FromHectares(1), VolumeRate.FromLitresPerHectare(inputs.Number("L_per_ha")), Volume.FromLiters(inputs.Number("tank_L"))).ProductIn(
                    Volume.FromLiters(inputs.Number("tank_L")), VolumeRate.FromLitresPerHectare(inputs.Number("product_L_per_ha"))).Milliliters,
        ["spray.flow-L-per-min"] = inputs => SprayerCalibration.FlowFor(
            VolumeRate.FromLitresPerHectare(inputs.Number("L_per_ha")),
            Speed.FromMetersPerMinutes(inputs.Number("m_per_min")),
            Length.FromMeters(inputs.Number("width_m"))).LitersPerMinute,
        ["spray.gpm-at-pressure"] = inputs => SprayerCalibration.FlowAtPressure(
            VolumeFlow.FromUsGallonsPerMinute(inputs.Number("gpm")),
            Pressure.FromPoundsForcePerSquareInch(inputs.Number("psi")),
            Pressure.FromPoundsForcePerSquareInch(inputs.Number("other_psi"))).Value.UsGallonsPerMinute,

        // Rows of trees.
        ["spray.tree-row-ft3"] = inputs => SprayerCalibration.TreeRowVolume(
            Area.FromAcres(inputs.Number("area_acre")),
            Length.FromFeet(inputs.Number("width_ft")),
            Length.FromFeet(inputs.Number("height_ft")),
            Length.FromFeet(inputs.Number("spacing_ft"))).CubicFeet,
        ["spray.tree-row-m3"] = inputs => SprayerCalibration.TreeRowVolume(
            Area.FromHectares(inputs.Number("area_ha")),
            Length.FromMeters(inputs.Number("width_m")),
            Length.FromMeters(inputs.Number("height_m")),
            Length.FromMeters(inputs.Number("spacing_m"))).CubicMeters,
        ["spray.gpa-tree-rows"] = inputs => SprayerCalibration.ForTreeRows(
            Length.FromFeet(inputs.Number("width_ft")),
            Length.FromFeet(inputs.Number("height_ft")),
            Length.FromFeet(inputs.Number("spacing_ft")),
            Enum.Parse<TreeRowRule>(inputs["rule"])).Value.UsGallonsPerAcre,
        ["spray.l-per-ha-tree-rows"] = inputs => SprayerCalibration.ForTreeRows(
            Length.FromMeters(inputs.Number("width_m")),
            Length.FromMeters(inputs.Number("height_m")),
            Length.FromMeters(inputs.Number("spacing_m")),
            Enum.Parse<TreeRowRule>(inputs["rule"])).Value.LitresPerHectare,
        ["spray.km-per-h"] = inputs => SprayerCalibration.SpeedOver(
            Length.FromMeters(inputs.Number("distance_m")), Duration.FromSeconds(inputs.Number("time_s"))).KilometersPerHour,
        ["spray.mph"] = inputs => SprayerCalibration.SpeedOver(
            Length.FromFeet(inputs.Number("distance_ft")), Duration.FromSeconds(inputs.Number("time_s"))).MilesPerHour,
        ["spray.seconds"] = inputs => SprayerCalibration.TimeOver(
            Length.FromFeet(inputs.Number("distance_ft")), Speed.FromMilesPerHour(inputs.Number("mph"))).Seconds,

        // Lime sulfur.
        ["lime-sulfur.gal"] = inputs => LimeSulfur.MakeUpTo(
            Volume.FromUsGallons(inputs.Number("total_gal")),
            Density.FromKilogramsPerLiter(inputs.Number("concentrate_kgL")),
            Density.FromKilogramsPerLiter(inputs.Number("spray_kgL"))).Value.Concentrate.UsGallons,
        ["baume.kg-per-litre"] = inputs => LimeSulfur.FromBaume(inputs.Number("degrees")).KilogramsPerLiter,
        ["baume.degrees"] = inputs => LimeSulfur.ToBaume(Density.FromKilogramsPerLiter(inputs.Number("density_kgL"))),

        // Limits and waits.
        ["spray-limit.above-F"] = inputs => Limit(inputs).Above!.Value.DegreesFahrenheit,
        ["spray-limit.rule"] = inputs => Limit(inputs).IsNever ? "never" : "limits",
        ["spray-limit.below-F"] = inputs => Limit(inputs).Below!.Value.DegreesFahrenheit,
        ["spray-limit.oil-sulfur-days"] = inputs => (SprayLimits.OilAndSulfurApart.EarliestAfter(
            new DateOnly(2027, 1, 1), inputs["source"] == "strictest").DayNumber - new DateOnly(2027, 1, 1).DayNumber) / inputs.Number("per"),
        ["restricted-entry-h"] = inputs => SprayCalendar.LeastRestrictedEntry(Enum.Parse<ToxicityCategory>(inputs["category"])).Value.Hours,
        ["spray-wait.entry-h"] = inputs => (SprayCalendar.After(
            new DateTime(2027, 6, 1),
            [.. inputs.Numbers("entry_h").Select((hours, i) => new SprayedProduct($"product {i}", Duration.FromHours(hours), (int)inputs.Numbers("harvest_d")[i]))])
            .EntryFrom - new DateTime(2027, 6, 1)).TotalHours,
        ["spray-wait.harvest-h"] = inputs => (SprayCalendar.After(
            new DateTime(2027, 6, 1),
            [.. inputs.Numbers("entry_h").Select((hours, i) => new SprayedProduct($"product {i}", Duration.FromHours(hours), (int)inputs.Numbers("harvest_d")[i]))])
            .HarvestFrom - new DateTime(2027, 6, 1)).TotalHours,
        ["stock-hazard.result"] = inputs => string.Join(
            "; ",
            Hazards.PairsInStock
                .Where(pair => pair.First == Enum.Parse<IngredientClass>(inputs["first"]) && pair.Second == Enum.Parse<IngredientClass>(inputs["second"]))
                .Select(pair => pair.Result)),
    };

    private static HypochlorousConstant ConstantOf(Inputs inputs) => Enum.Parse<HypochlorousConstant>(inputs["constant"]);

    private static ContactRecord Record(Inputs inputs) => ContactTimes.All.Single(record => record.Key == "contact." + inputs["record"]);

    private static HotWaterTreatment Bath(Inputs inputs) =>
        HotWaterTreatment.For(inputs["crop"]).Single(bath => bath.Source.Key == inputs["source"]);

    private static PowderMeasure Powder(Inputs inputs) =>
        PowderMeasures.All.Single(row => row.Material == inputs["material"] && row.Measure == inputs["measure"]);

    private static SprayLimit Limit(Inputs inputs) => SprayLimits.All.Single(limit =>
        limit.Subject == Enum.Parse<IngredientClass>(inputs["subject"])
        && limit.Source.Key == inputs["source"]
        && (inputs.Has("plants") ? limit.Plants.Contains(inputs["plants"], StringComparison.Ordinal) : limit.Plants.Length == 0));

    private static Length WidthOf(Inputs inputs) =>
        inputs.Has("width_ft") ? Length.FromFeet(inputs.Number("width_ft")) : Length.FromInches(inputs.Number("width_in"));
}
