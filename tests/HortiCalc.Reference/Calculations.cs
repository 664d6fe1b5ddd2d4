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
        BedCalculations.All,
        ContainerCalculations.All,
        MixCalculations.All,
        SprayCalculations.All,
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
        "hazard.result", "stock-hazard.result",
        "bleach-storage.trade-percent", "chlorine-loss.use-within-h", "chlorine-loss.left-high-pct",
        "contact.level-mgL", "contact.level-high-mgL", "contact.minutes", "hot-water.F", "hot-water.minutes",
        "powder.low-g", "powder.high-g", "restricted-entry-h",
        "spray-limit.above-F", "spray-limit.below-F", "spray-limit.oil-sulfur-days",
        "huglin-class", "huglin-coefficient",
        "lime_fineness_class", "lime_fineness_weight", "lime_german_maintenance", "lime_german_most", "lime_german_target",
        "lime_iowa", "lime_oregon_sikora", "lime_range_high", "lime_range_low", "lime_sieve_opening",
        "lime_uk_per_ph_unit", "lime_us_per_ph_unit", "wood_ash_limit",
        "light-requirement-high", "light-requirement-low", "meter-requirement-high", "meter-requirement-low",
        "lime_au_garden", "lime_penn_state_turf", "lime_uk_garden", "lime_us_garden",
        "lime_credit_loss_per_month", "lime_north_carolina_material", "lime_penn_state_agronomic_depth",
        "lime_split_count", "lime_split_first", "lime_split_maximum", "lime_split_months",
        "mass_of_cubic_metre_t", "mass_of_cubic_yard_lb", "mass_of_us_bushel_lb",
        "normal-seedlings", "normal-seedlings-words",
        "packed-soil-conductivity", "packed-soil-diffusivity", "phyllochron",
        "pot_size_L", "pot_size_ft3", "pot_size_gal", "pot_size_in3", "pot_size_yd3",
        "root-killing-F",
        "recipe.amount-added", "recipe.amount-made-up", "recipe.contact-minutes", "recipe.water-made-up",
        "row-cover.high", "row-cover.low",
        "sprinkler-start.table", "sprinkling.depth-high", "sprinkling.depth-low",
        "winkler-region",
    };
}
