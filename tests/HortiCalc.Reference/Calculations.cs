namespace HortiCalc.Reference;

/// <summary>The calculations that published values are checked against, by the name used in the files; one class a subject.</summary>
public static class Calculations
{
    public static IReadOnlyDictionary<string, Func<Inputs, Computed>> All { get; } = new[]
    {
        UnitCalculations.All,
        SoilCalculations.All,
        LimeCalculations.All,
        AcidifyingCalculations.All,
        ReactionCalculations.All,
        SoilWaterCalculations.All,
        SaltCalculations.All,
        NutrientCalculations.All,
        BedCalculations.All,
        ContainerCalculations.All,
        MediumPhysicsCalculations.All,
        MixCalculations.All,
        HeatCalculations.All,
        DegreeDayCalculations.All,
        FreezeCalculations.All,
        FrostNightCalculations.All,
        ChillCalculations.All,
        SumCalculations.All,
        SoilTemperatureCalculations.All,
        HeatForecastCalculations.All,
        SunCalculations.All,
        GerminationCalculations.All,
        StageCalculations.All,
        HumidityCalculations.All,
        HardinessCalculations.All,
    }.SelectMany(subject => subject).ToDictionary(StringComparer.Ordinal);

    /// <summary>
    /// Calculations that bring a table which the library holds as printed to the unit asked for: their values guard the typing, and
    /// say nothing of a formula. The validation page counts them apart.
    /// </summary>
    public static IReadOnlySet<string> ReadBack { get; } = new HashSet<string>(StringComparer.Ordinal)
    {
        "acid-australian", "acid-depth-cm", "acid-garden-soil", "acid-michigan", "acid-rhs",
        "acid-equivalent", "acid-limit", "acid-limit-100", "acid-limit-lb-acre", "acid-limit-months", "acid-limit-t-ha", "acid-limit-year",
        "acid-limit-year-1000",
        "acid-reaction-high-days", "acid-reaction-high-weeks", "acid-reaction-low-days", "acid-reaction-low-weeks",
        "cardinal-temperature",
        "crop-ph-four", "crop-ph-minimum", "crop-ph-minimum-high", "crop-ph-optimum-high", "crop-ph-optimum-low", "crop-ph-target",
        "fertiliser-acidity", "fertiliser-nitrogen", "medium-rate", "medium-rate-high", "medium-rate-lb",
        "base-temperature", "development-threshold", "development-time", "stage-high", "stage-low", "upper-temperature",
        "chill-requirement-high", "chill-requirement-low", "chill-requirement-words",
        "critical-temperature.bud-need-high", "critical-temperature.bud-need-low",
        "critical-temperature.high", "critical-temperature.low", "critical-temperature.ninety-percent", "critical-temperature.ten-percent",
        "frost-definition.covers", "frost-rule.outlook", "frost-type",
        "emergence-days", "emergence-days-high", "emergence-days-low", "emergence-finding",
        "germination-range", "germination-thermal-time",
        "frost-tolerance-class", "frost-tolerance-killed-C", "frost-tolerance-killed-F", "frost-tolerance-withstands-C", "frost-tolerance-withstands-F",
        "hardiness-bound-high-C", "hardiness-bound-high-F", "hardiness-bound-low-C", "hardiness-bound-low-F",
        "hazard.result",
        "huglin-class", "huglin-coefficient",
        "lime_fineness_class", "lime_fineness_weight", "lime_german_maintenance", "lime_german_most", "lime_german_target",
        "lime_iowa", "lime_oregon_sikora", "lime_range_high", "lime_range_low", "lime_sieve_opening",
        "lime_uk_per_ph_unit", "lime_us_per_ph_unit", "wood_ash_limit",
        "light-requirement-high", "light-requirement-low", "meter-requirement-high", "meter-requirement-low",
        "lime_au_garden", "lime_penn_state_turf", "lime_uk_garden", "lime_us_garden",
        "lime_credit_loss_per_month", "lime_north_carolina_material", "lime_penn_state_agronomic_depth",
        "lime_split_count", "lime_split_first", "lime_split_maximum", "lime_split_months",
        "medium-range-high", "medium-range-low", "peat-point", "porometer-density", "retention-parameter",
        "mass_of_cubic_metre_t", "mass_of_cubic_yard_lb", "mass_of_us_bushel_lb",
        "normal-seedlings", "normal-seedlings-words",
        "packed-soil-conductivity", "packed-soil-diffusivity", "phyllochron",
        "pot_size_L", "pot_size_ft3", "pot_size_gal", "pot_size_in3", "pot_size_yd3",
        "root-killing-F",
        "recipe.amount-added", "recipe.amount-made-up", "recipe.contact-minutes", "recipe.water-made-up",
        "row-cover.high", "row-cover.low",
        "sprinkler-start.table", "sprinkling.depth-high", "sprinkling.depth-low",
        "available-water-low", "available-water-high", "available-water-in-ft",
        "field-capacity-low", "field-capacity-high", "wilting-point-low", "wilting-point-high",
        "field-grade-water-mm-cm", "field-grade-water-mm-m", "field-grade-water-low-mm-m", "field-grade-water-high-mm-m",
        "average-soil", "root-depth-low-m", "root-depth-high-m", "root-depth-low-ft", "root-depth-high-ft", "depletion-share",
        "refill-high-demand-cm", "refill-low-demand-cm", "typical-bulk-density", "root-density-limit", "root-density-ideal",
        "infiltration-low-in-h", "infiltration-high-in-h", "infiltration-low-mm-h", "infiltration-high-mm-h",
        "van-genuchten-parameter", "green-ampt-parameter",
        "fertilizer-content", "salt-index",
        "manure-available", "manure-content", "manure-release", "manure-share", "nitrogen-potential", "nitrogen-rate", "nitrogen-release",
        "salt-loss", "salt-loss-high", "salt-rating", "salt-threshold", "salt-threshold-high",
        "boron-class", "boron-loss", "boron-threshold", "boron-threshold-high",
        "extract-determination", "extract-intercept", "extract-slope",
        "winkler-region",
    };
}
