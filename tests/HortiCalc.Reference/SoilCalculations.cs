using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Reference;

internal static class SoilCalculations
{
    private static readonly Area SquareFoot = Area.FromSquareFeet(1);

    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["lime_uk_garden"] = inputs => Rate(
            Texture(inputs.Number("ph"), inputs["column"] switch
            {
                "light" => SoilTexture.LoamySand,
                "loam" => SoilTexture.Loam,
                "heavy" => SoilTexture.Clay,
                string other => throw new FormatException($"'{other}' is no column of the table."),
            }),
            6.5,
            LimingMethod.UkGardenTexture).GramsPerSquareMeter,
        ["lime_us_garden"] = inputs => PoundsPer(
            Rate(Texture(inputs.Number("ph"), TextureNamed(inputs["column"])), 6.5, LimingMethod.UsGardenTexture), Area.FromSquareFeet(100)),
        ["lime_au_garden"] = inputs => Rate(
            Texture(inputs.Number("ph"), TextureNamed(inputs["texture"])), inputs.Number("target_ph"), LimingMethod.AustralianGardenTexture).GramsPerSquareMeter,
        ["lime_penn_state_turf"] = inputs => PoundsPer(
            Rate(Acid(inputs), inputs.Number("goal_ph"), LimingMethod.PennStateTurf), Area.FromSquareFeet(1000)),
        ["lime_penn_state_agronomic"] = inputs => PennStateAgronomic(inputs),
        ["lime_penn_state_agronomic_per_meq"] = inputs => PennStateAgronomic(inputs) / inputs.Number("exchangeable_acidity_meq_100g"),
        ["lime_penn_state_agronomic_depth"] = _ => LimingMethod.PennStateAgronomic.Depth!.Value.Inches,
        ["lime_north_carolina"] = inputs => NorthCarolina(
            new SoilReport
            {
                PhInWater = new Ph(inputs.Number("ph")),
                BufferAcidity = VolumetricCharge.FromMilliequivalentsPer100CubicCentimetres(inputs.Number("acidity_meq_100cm3")),
            },
            inputs.Number("target_ph")),

        // To its own pole the factor of the formula is 1, so that the rate in tons is the acidity.
        ["lime_north_carolina_acidity_per_buffer_unit"] = _ => NorthCarolina(new SoilReport { PhInWater = new Ph(5), MehlichBufferPh = new Ph(5.6) }, 6.6),
        ["lime_north_carolina_material"] = _ => LimingMethod.NorthCarolina().Material.CalciumCarbonateEquivalent.Percent,
        ["lime_credit_loss_per_month"] = inputs =>
        {
            ResidualLime lime = new(AreaDensity.FromGramsPerSquareMeter(100), 1, Enum.Parse<NorthCarolinaSoilClass>(inputs["soil_class"]));
            return 100 - lime.Credit.GramsPerSquareMeter;
        },
        ["lime_cce"] = inputs => Material(inputs).CalciumCarbonateEquivalent.Percent,
        ["lime_equal_to"] = inputs =>
            Given(PoundsPerSquareFoot(inputs.Number("limestone_lb"))).As(Material(inputs)).Over(SquareFoot).Value.Pounds,
        ["lime_material_saving"] = inputs =>
            100 - Given(AreaDensity.FromGramsPerSquareMeter(100)).As(Material(inputs)).Rate.Value.GramsPerSquareMeter,
        ["lime_product_excess"] = inputs =>
            Given(AreaDensity.FromGramsPerSquareMeter(100), Product(inputs.Number("instead_of_cce_percent"))).As(Material(inputs)).Rate.Value.GramsPerSquareMeter - 100,
        ["lime_limestone_equal_to"] = inputs =>
            Given(PoundsPerSquareFoot(inputs.Number("material_lb")), Material(inputs)).As(LimingMaterial.GroundLimestone).Over(SquareFoot).Value.Pounds,
        ["lime_limestone_equal_to_per_acre"] = inputs =>
            Given(Mass.FromPounds(inputs.Number("material_lb_1000ft2")) / Area.FromSquareFeet(1000), Material(inputs))
                .As(LimingMaterial.GroundLimestone).Over(Area.FromAcres(1)).Value.Pounds,
        ["lime_mass"] = inputs => inputs switch
        {
            _ when inputs.Has("area_m2") => Given(GivenRate(inputs)).Over(Area.FromSquareMeters(inputs.Number("area_m2"))).Value.Kilograms,
            _ when inputs.Has("area_acre") => Given(GivenRate(inputs)).Over(Area.FromAcres(inputs.Number("area_acre"))).Value.Tonnes,
            _ when inputs.Has("rate_lb_acre") => Given(GivenRate(inputs)).Over(Area.FromSquareFeet(inputs.Number("area_ft2"))).Value.Ounces,
            _ => Given(GivenRate(inputs)).Over(Area.FromSquareFeet(inputs.Number("area_ft2"))).Value.Pounds,
        },
        ["lime_depth_ratio"] = inputs =>
        {
            LimeRequirement given = Liming.FromRecommendation(
                AreaDensity.FromGramsPerSquareMeter(100), LimingMaterial.GroundLimestone, "reference", Length.FromInches(inputs.Number("depth_in")));
            return given.ForDepth(Length.FromInches(inputs.Number("to_depth_in"))).Rate.Value.GramsPerSquareMeter / 100;
        },
        ["lime_split_count"] = inputs => Given(GivenRate(inputs)).Split(Split(inputs)).Count,
        ["lime_split_first"] = inputs => InGivenUnit(inputs, Given(GivenRate(inputs)).Split(Split(inputs)).Rates[0].Value),
        ["lime_split_maximum"] = inputs => PoundsPer(Split(inputs).Maximum, Area.FromSquareFeet(1000)),
        ["lime_split_months"] = inputs => Split(inputs).FewestMonths!.Value,
    };

    private static AreaDensity Rate(SoilReport soil, double target, LimingMethod method) => Liming.Requirement(soil, new Ph(target), method).Rate.Value;

    private static SoilReport Texture(double ph, SoilTexture texture) => new() { PhInWater = new Ph(ph), Texture = texture };

    // A pH below every goal: the tables by acidity depend on it only through being below.
    private static SoilReport Acid(Inputs inputs) => new()
    {
        PhInWater = new Ph(5),
        ExchangeableAcidity = ExchangeableCharge.FromMilliequivalentsPer100Grams(inputs.Number("exchangeable_acidity_meq_100g")),
    };

    private static double PennStateAgronomic(Inputs inputs) =>
        PoundsPer(Rate(Acid(inputs), inputs.Number("goal_ph"), LimingMethod.PennStateAgronomic), Area.FromAcres(1));

    private static double NorthCarolina(SoilReport soil, double target) => (Rate(soil, target, LimingMethod.NorthCarolina()) * Area.FromAcres(1)).ShortTons;

    private static LimeRequirement Given(AreaDensity rate, LimingMaterial? material = null) =>
        Liming.FromRecommendation(rate, material ?? LimingMaterial.GroundLimestone, "reference");

    private static AreaDensity GivenRate(Inputs inputs) => inputs switch
    {
        _ when inputs.Has("rate_lb_acre") => Mass.FromPounds(inputs.Number("rate_lb_acre")) / Area.FromAcres(1),
        _ when inputs.Has("rate_lb_100ft2") => Mass.FromPounds(inputs.Number("rate_lb_100ft2")) / Area.FromSquareFeet(100),
        _ when inputs.Has("rate_lb_1000ft2") => Mass.FromPounds(inputs.Number("rate_lb_1000ft2")) / Area.FromSquareFeet(1000),
        _ when inputs.Has("rate_t_ha") => Mass.FromTonnes(inputs.Number("rate_t_ha")) / Area.FromHectares(1),
        _ => Mass.FromShortTons(inputs.Number("rate_us_ton_acre")) / Area.FromAcres(1),
    };

    private static double InGivenUnit(Inputs inputs, AreaDensity rate) => inputs switch
    {
        _ when inputs.Has("rate_lb_1000ft2") => PoundsPer(rate, Area.FromSquareFeet(1000)),
        _ when inputs.Has("rate_t_ha") => (rate * Area.FromHectares(1)).Tonnes,
        _ => (rate * Area.FromAcres(1)).ShortTons,
    };

    private static LimeSplit Split(Inputs inputs) => inputs["rule"] switch
    {
        nameof(LimeSplit.PennStateGarden) => LimeSplit.PennStateGarden,
        nameof(LimeSplit.PennStateLawn) => LimeSplit.PennStateLawn,
        nameof(LimeSplit.PennStateGreen) => LimeSplit.PennStateGreen,
        nameof(LimeSplit.NorthCarolinaLawn) => LimeSplit.NorthCarolinaLawn,
        nameof(LimeSplit.UkGrassland) => LimeSplit.UkGrassland,
        nameof(LimeSplit.UkArable) => LimeSplit.UkArable,
        nameof(LimeSplit.Ireland) => LimeSplit.Ireland,
        nameof(LimeSplit.MissouriSurface) => LimeSplit.MissouriSurface,
        nameof(LimeSplit.PennStateForage) => LimeSplit.PennStateForage,
        nameof(LimeSplit.OregonTopDressing) => LimeSplit.OregonTopDressing,
        nameof(LimeSplit.GardenSite) => LimeSplit.GardenSite,
        nameof(LimeSplit.GermanSand) => LimeSplit.GermanSand,
        nameof(LimeSplit.GermanClay) => LimeSplit.GermanClay,
        string other => throw new FormatException($"'{other}' is no rule."),
    };

    private static LimingMaterial Material(Inputs inputs) => inputs.Has("cce_percent")
        ? Product(inputs.Number("cce_percent"))
        : inputs["material"] switch
        {
            "calcium carbonate" => LimingMaterial.CalciumCarbonate,
            "magnesium carbonate" => LimingMaterial.MagnesiumCarbonate,
            "dolomite" => LimingMaterial.Dolomite,
            "calcium hydroxide" => LimingMaterial.CalciumHydroxide,
            "magnesium hydroxide" => LimingMaterial.MagnesiumHydroxide,
            "calcium oxide" => LimingMaterial.CalciumOxide,
            "magnesium oxide" => LimingMaterial.MagnesiumOxide,
            string other => throw new FormatException($"'{other}' is no material."),
        };

    private static LimingMaterial Product(double ccePercent) => new("product", Ratio.FromPercent(ccePercent));

    private static SoilTexture TextureNamed(string words) => Enum.Parse<SoilTexture>(words.Replace(" ", "", StringComparison.Ordinal), ignoreCase: true);

    private static AreaDensity PoundsPerSquareFoot(double pounds) => Mass.FromPounds(pounds) / SquareFoot;

    private static double PoundsPer(AreaDensity rate, Area area) => (rate * area).Pounds;
}
