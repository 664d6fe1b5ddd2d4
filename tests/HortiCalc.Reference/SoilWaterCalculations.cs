using HortiCalc.Evidence;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Reference;

/// <summary>Soil water and texture: what the published values of these are computed with.</summary>
internal static class SoilWaterCalculations
{
    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["texture-usda"] = inputs => SoilTextures.Classify(Particles(inputs)).Value.ToString(),

        ["saxton-rawls-wilting-point"] = inputs => Hydraulics(inputs).WiltingPoint.Percent,
        ["saxton-rawls-field-capacity"] = inputs => Hydraulics(inputs).FieldCapacity.Percent,
        ["saxton-rawls-saturation"] = inputs => Hydraulics(inputs).Saturation.Percent,
        ["saxton-rawls-available"] = inputs => Hydraulics(inputs).AvailableWater.Value.Percent,
        ["saxton-rawls-conductivity"] = inputs => Hydraulics(inputs).SaturatedConductivity.MillimetresPerHour,
        ["saxton-rawls-conductivity-cm-s"] = inputs => Hydraulics(inputs).SaturatedConductivity.CentimetresPerHour / 3600,
        ["saxton-rawls-density"] = inputs => Hydraulics(inputs).BulkDensity.GramsPerCubicCentimeter,
        ["saxton-rawls-air-entry"] = inputs => Hydraulics(inputs).AirEntry!.Value.Kilopascals,
        ["saxton-rawls-gravel-volume"] = inputs => Hydraulics(inputs).GravelVolume.Percent,
        ["saxton-rawls-gravel-conductivity"] = inputs => Hydraulics(inputs).SaturatedConductivityWithGravel.MillimetresPerHour,
        ["saxton-rawls-gravel-density"] = inputs => Hydraulics(inputs).BulkDensityWithGravel.GramsPerCubicCentimeter,
        ["saxton-rawls-tension"] = inputs => Hydraulics(inputs).TensionAt(VolumeConcentration.FromPercent(inputs.Number("water_percent"))).Kilopascals,
        ["saxton-rawls-conductivity-at"] = inputs =>
            Hydraulics(inputs).ConductivityAt(VolumeConcentration.FromPercent(inputs.Number("water_percent"))).MillimetresPerHour,
        ["saxton-rawls-available-salts"] = inputs => Hydraulics(inputs).AvailableWaterWithSalts.Value.Percent,

        ["available-water"] = inputs => Holding(inputs).Available.Value.DecimalFractions,
        ["available-water-low"] = inputs => Holding(inputs).Available.Range!.Low.DecimalFractions,
        ["available-water-high"] = inputs => Holding(inputs).Available.Range!.High.DecimalFractions,
        ["field-capacity-low"] = inputs => Holding(inputs).FieldCapacity!.Low.DecimalFractions,
        ["field-capacity-high"] = inputs => Holding(inputs).FieldCapacity!.High.DecimalFractions,
        ["wilting-point-low"] = inputs => Holding(inputs).WiltingPoint!.Low.DecimalFractions,
        ["wilting-point-high"] = inputs => Holding(inputs).WiltingPoint!.High.DecimalFractions,
        ["available-water-in-ft"] = inputs => Holding(inputs).In(Length.FromFeet(1)).Value.Inches,
        ["available-water-in-ft-low"] = inputs => Holding(inputs).In(Length.FromFeet(1)).Range!.Low.Inches,
        ["available-water-in-ft-high"] = inputs => Holding(inputs).In(Length.FromFeet(1)).Range!.High.Inches,

        ["field-grade-water-mm-cm"] = inputs =>
            FieldGradeWaters.Of(inputs["grade"]).Single(row => row.RefillAt?.Kilopascals == inputs.Number("refill_kpa")).Water.DecimalFractions * 10,
        ["field-grade-water-mm-m"] = inputs => Total(inputs).Water.DecimalFractions * 1000,
        ["field-grade-water-low-mm-m"] = inputs => Total(inputs).Low!.Value.DecimalFractions * 1000,
        ["field-grade-water-high-mm-m"] = inputs => Total(inputs).High!.Value.DecimalFractions * 1000,

        ["average-soil"] = inputs => AverageColumn(AverageSoils.Of(Texture(inputs)), inputs["column"]),
        ["average-soil-texture"] = inputs =>
        {
            AverageSoil soil = AverageSoils.Of(Texture(inputs));
            return SoilTextures.Classify(ParticleSizes.FromSandAndClay(soil.Sand, soil.Clay)).Value.ToString();
        },
        ["average-soil-porosity"] = inputs =>
            SoilDensity.Porosity(AverageSoils.Of(Texture(inputs)).BulkDensity, SoilDensity.MineralParticles.Value).DecimalFractions,

        ["root-depth-low-m"] = inputs => Root(inputs).Low.Meters,
        ["root-depth-high-m"] = inputs => Root(inputs).High.Meters,
        ["root-depth-low-ft"] = inputs => Root(inputs).Low.Feet,
        ["root-depth-high-ft"] = inputs => Root(inputs).High.Feet,
        ["depletion-share"] = inputs => Root(inputs).Depletion!.Value.DecimalFractions,
        ["refill-high-demand-cm"] = inputs => CentimetresOfWater(Refill(inputs).AtHighDemand),
        ["refill-low-demand-cm"] = inputs => CentimetresOfWater(Refill(inputs).AtLowDemand),

        ["profile-available-in"] = inputs => Profile(inputs).AvailableWater(Profile(inputs).Depth).Inches,
        ["profile-refill-in"] = inputs =>
            OneFoot(inputs.Number("available_in")).Refill(Length.FromFeet(1), Ratio.FromPercent(inputs.Number("remaining_percent"))).Inches,
        ["water-in-per-ft"] = inputs => OneFoot(VolumeConcentration.FromPercent(inputs.Number("water_percent"))).AvailableWater(Length.FromFeet(1)).Inches,
        ["water-percent"] = inputs => OneFoot(inputs.Number("in_per_ft")).Horizons[0].AvailableWater.Percent,
        ["available-between-in-per-ft"] = inputs => new SoilProfile(
        [
            SoilHorizon.Between(
                Length.FromFeet(1),
                VolumeConcentration.FromPercent(inputs.Number("field_capacity_percent")),
                VolumeConcentration.FromPercent(inputs.Number("wilting_point_percent"))),
        ]).AvailableWater(Length.FromFeet(1)).Inches,
        ["net-depth-mm"] = inputs =>
        {
            Density bulk = Density.FromGramsPerCubicCentimeter(inputs.Number("bulk_density_g_cm3"));
            Length depth = Length.FromMeters(inputs.Number("depth_m"));
            return new SoilProfile(
            [
                SoilHorizon.Between(
                    depth,
                    SoilDensity.WaterByVolume(Ratio.FromPercent(inputs.Number("field_capacity_mass_percent")), bulk),
                    SoilDensity.WaterByVolume(Ratio.FromPercent(inputs.Number("wilting_point_mass_percent")), bulk)),
            ]).AvailableWater(depth).Millimeters;
        },

        ["bulk-density"] = inputs => SoilDensity.OfCore(Dry(inputs), Core(inputs)).GramsPerCubicCentimeter,
        ["bulk-density-from-porosity"] = inputs => SoilDensity.FromPorosity(
            VolumeConcentration.FromPercent(inputs.Number("porosity_percent")),
            Density.FromGramsPerCubicCentimeter(inputs.Number("particle_density"))).GramsPerCubicCentimeter,
        ["porosity"] = inputs => SoilDensity.Porosity(
            Density.FromGramsPerCubicCentimeter(inputs.Number("bulk_density")),
            Density.FromGramsPerCubicCentimeter(inputs.Number("particle_density"))).Percent,
        ["porosity-from-water"] = inputs => SoilDensity.PorosityFromWater(
            Mass.FromGrams(inputs.Number("wet_g") - inputs.Number("water_g")),
            Mass.FromGrams(inputs.Number("water_g")),
            Ratio.FromPercent(inputs.Number("saturation_percent")),
            Density.FromGramsPerCubicCentimeter(inputs.Number("particle_density"))).Percent,
        ["moisture-by-mass"] = inputs => SoilDensity.Moisture(Mass.FromGrams(inputs.Number("wet_g")), Mass.FromGrams(inputs.Number("dry_g"))).Percent,
        ["water-by-volume"] = inputs => SoilDensity.WaterByVolume(
            SoilDensity.Moisture(Mass.FromGrams(inputs.Number("wet_g")), Mass.FromGrams(inputs.Number("dry_g"))),
            SoilDensity.OfCore(Mass.FromGrams(inputs.Number("dry_g")), Core(inputs))).Percent,

        ["typical-bulk-density"] = inputs => SoilDensity.Typical.Single(row => row.Texture == Texture(inputs)).Density.GramsPerCubicCentimeter,
        ["root-density-limit"] = inputs => Limit(inputs).RestrictsAt.GramsPerCubicCentimeter,
        ["root-density-ideal"] = inputs => Limit(inputs).IdealBelow!.Value.GramsPerCubicCentimeter,
        ["infiltration-low-in-h"] = inputs => Infiltration(inputs).Low.InchesPerHour,
        ["infiltration-high-in-h"] = inputs => Infiltration(inputs).High!.Value.InchesPerHour,
        ["infiltration-low-mm-h"] = inputs => Infiltration(inputs).Low.MillimetresPerHour,
        ["infiltration-high-mm-h"] = inputs => Infiltration(inputs).High!.Value.MillimetresPerHour,

        ["van-genuchten-parameter"] = inputs => Parameter(Curve(inputs), inputs["parameter"]),
        ["van-genuchten-water"] = inputs => Curve(inputs).WaterAt(Length.FromCentimeters(inputs.Number("suction_cm"))).DecimalFractions,
        ["van-genuchten-suction"] = inputs => Curve(inputs).SuctionAt(VolumeConcentration.FromDecimalFractions(inputs.Number("water"))).Centimeters,
        ["van-genuchten-capacity"] = inputs => Curve(inputs).CapacityAt(Length.FromCentimeters(inputs.Number("suction_cm"))).InverseCentimeters,
        ["van-genuchten-conductivity"] = inputs =>
        {
            VanGenuchtenCurve curve = Curve(inputs);
            return curve.ConductivityAt(curve.WaterAt(Length.FromCentimeters(inputs.Number("suction_cm")))).CentimetresPerDay;
        },

        ["green-ampt-cumulative-cm"] = inputs => Model(inputs).CumulativeAfter(Duration.FromHours(inputs.Number("hours"))).Centimeters,
        ["green-ampt-rate-cm-h"] = inputs =>
            Model(inputs).RateAt(Model(inputs).CumulativeAfter(Duration.FromHours(inputs.Number("hours")))).CentimetresPerHour,
        ["green-ampt-ponding-h"] = inputs => Model(inputs).PondingTime(WaterRate.FromCentimetresPerHour(inputs.Number("rain_cm_h")))!.Value.Hours,
        ["green-ampt-under-rain-cm"] = inputs => Model(inputs).InfiltratedUnder(
            WaterRate.FromCentimetresPerHour(inputs.Number("rain_cm_h")), Duration.FromHours(inputs.Number("hours"))).Centimeters,
        ["green-ampt-deficit"] = inputs => GreenAmptSoils.Of(Texture(inputs)).From(Ratio.FromDecimalFractions(inputs.Number("effective_saturation"))).Deficit.DecimalFractions,
        ["green-ampt-parameter"] = inputs => GreenAmptColumn(GreenAmptSoils.Of(Texture(inputs)), inputs["column"], inputs["end"]),
    };

    private static SoilTexture Texture(Inputs inputs) => Enum.Parse<SoilTexture>(inputs["texture"]);

    private static ParticleSizes Particles(Inputs inputs) =>
        ParticleSizes.FromSandAndClay(MassFraction.FromPercent(inputs.Number("sand_percent")), MassFraction.FromPercent(inputs.Number("clay_percent")));

    private static SoilHydraulics Hydraulics(Inputs inputs) => new(SoilComposition.FromParticles(
        Particles(inputs),
        MassFraction.FromPercent(inputs.Number("organic_percent")),
        inputs.Has("gravel_percent") ? MassFraction.FromPercent(inputs.Number("gravel_percent")) : null,
        inputs.Has("density_factor") ? Ratio.FromPercent(inputs.Number("density_factor") * 100) : null,
        inputs.Has("salinity_ds_m") ? ElectricConductivity.FromMillisiemensPerCentimeter(inputs.Number("salinity_ds_m")) : null));

    private static WaterHolding Holding(Inputs inputs) => AvailableWater.Of(
        new SoilComposition(Texture(inputs), sandGrade: inputs.Has("sand_grade") ? Enum.Parse<SandGrade>(inputs["sand_grade"]) : SandGrade.Unstated),
        AvailableWaterMethod.FromKey(inputs["method"]));

    private static FieldGradeWater Total(Inputs inputs) => FieldGradeWaters.Of(inputs["grade"]).Single(row => row.RefillAt is null);

    private static double AverageColumn(AverageSoil soil, string column) => column switch
    {
        "sand" => soil.Sand.Percent,
        "clay" => soil.Clay.Percent,
        "density" => soil.BulkDensity.GramsPerCubicCentimeter,
        "field-capacity" => soil.FieldCapacity.DecimalFractions,
        "wilting-point" => soil.WiltingPoint.DecimalFractions,
        "porosity" => soil.Porosity.DecimalFractions,
        "conductivity" => soil.SaturatedConductivity.CentimetresPerHour,
        "slope" => soil.Slope,
        _ => throw new FormatException($"'{column}' is no column."),
    };

    private static CropRootZone Root(Inputs inputs) => RootZones.All.Single(row => row.Source.Key == inputs["source"] && row.Crop == inputs["crop"]);

    private static RefillTension Refill(Inputs inputs) => RefillTensions.All.Single(row => row.Crop == inputs["crop"] && row.Use == inputs["use"]);

    // By standard gravity and 1000 kg/m³; the metre of head of UnitsNet is of warmer water.
    private static double CentimetresOfWater(Pressure tension) => tension.Kilopascals / 9.80665 * 100;

    private static SoilProfile Profile(Inputs inputs) => new(
    [
        .. inputs.Numbers("layers_ft").Zip(inputs.Numbers("available_in_ft"), (feet, inches) =>
            new SoilHorizon(Length.FromFeet(feet), VolumeConcentration.FromDecimalFractions(inches / 12))),
    ]);

    private static SoilProfile OneFoot(double inches) => OneFoot(VolumeConcentration.FromDecimalFractions(inches / 12));

    private static SoilProfile OneFoot(VolumeConcentration available) => new([new SoilHorizon(Length.FromFeet(1), available)]);

    private static Mass Dry(Inputs inputs) => inputs switch
    {
        _ when inputs.Has("dry_g") => Mass.FromGrams(inputs.Number("dry_g")),
        _ when inputs.Has("water_g") => Mass.FromGrams(inputs.Number("wet_g") - inputs.Number("water_g")),
        _ => SoilDensity.DryMass(Mass.FromGrams(inputs.Number("wet_g")), Ratio.FromPercent(inputs.Number("moisture_percent"))),
    };

    private static Volume Core(Inputs inputs) => inputs switch
    {
        _ when inputs.Has("diameter_cm") =>
            Volume.FromCubicCentimeters(Math.PI / 4 * inputs.Number("diameter_cm") * inputs.Number("diameter_cm") * inputs.Number("height_cm")),
        _ when inputs.Has("length_cm") => Volume.FromCubicCentimeters(inputs.Number("length_cm") * inputs.Number("width_cm") * inputs.Number("height_cm")),
        _ => Volume.FromCubicCentimeters(inputs.Number("volume_cm3")),
    };

    private static RootDensityLimit Limit(Inputs inputs) =>
        RootDensityLimits.All.Single(row => row.Source.Key == inputs["source"] && row.Printed == inputs["soils"].Replace('/', ';'));

    private static InfiltrationRate Infiltration(Inputs inputs) =>
        InfiltrationRates.All.Single(row => row.Source.Key == inputs["source"] && row.Printed == inputs["soil"]);

    private static VanGenuchtenCurve Curve(Inputs inputs) => VanGenuchtenSoils.Named(inputs["soil"]).Curve;

    private static double Parameter(VanGenuchtenCurve curve, string parameter) => parameter switch
    {
        "k_s" => curve.SaturatedConductivity!.Value.CentimetresPerDay,
        "theta_r" => curve.Residual.DecimalFractions,
        "theta_s" => curve.Saturated.DecimalFractions,
        "alpha" => curve.Alpha.InverseCentimeters,
        "n" => curve.N,
        "l" => curve.PoreConnection,
        _ => throw new FormatException($"'{parameter}' is no parameter."),
    };

    private static GreenAmpt Model(Inputs inputs) => inputs.Has("texture")
        ? GreenAmptSoils.Of(Texture(inputs)).From(Ratio.FromDecimalFractions(inputs.Number("effective_saturation")))
        : new GreenAmpt(
            WaterRate.FromCentimetresPerHour(inputs.Number("k_cm_h")),
            Length.FromCentimeters(inputs.Number("suction_cm")),
            VolumeConcentration.FromDecimalFractions(inputs.Number("deficit")));

    private static double GreenAmptColumn(GreenAmptSoil soil, string column, string end) => column switch
    {
        "porosity" => End(soil.Porosity, end).DecimalFractions,
        "effective" => End(soil.EffectivePorosity, end).DecimalFractions,
        "suction" => End(soil.Suction, end).Inches,
        "conductivity" => soil.Conductivity.InchesPerHour,
        _ => throw new FormatException($"'{column}' is no column."),
    };

    private static T End<T>(Estimate<T> value, string end)
        where T : notnull => end switch
        {
            "low" => value.Range!.Low,
            "high" => value.Range!.High,
            _ => value.Value,
        };
}
