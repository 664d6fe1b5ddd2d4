using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Reference;

/// <summary>Acidifying, the acidity of fertilisers, and lime and acid in potting media.</summary>
internal static class AcidifyingCalculations
{
    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["acid-michigan"] = inputs => Rate(AcidifyingMethod.Michigan, inputs, 4.5).PoundsPerAcre,
        ["acid-rhs"] = inputs => Rate(AcidifyingMethod.Rhs, inputs).GramsPerSquareMeter,
        ["acid-rhs-iron"] = inputs =>
            Need(AcidifyingMethod.Rhs, inputs).As(AcidEquivalent.FromKey("acid-equivalent-rhs-iron-sulfate")).Rate.Value.GramsPerSquareMeter,
        ["acid-australian"] = inputs => Rate(AcidifyingMethod.Australian, inputs).GramsPerSquareMeter,
        ["acid-blueberry"] = inputs => Rate(AcidifyingMethod.Blueberry, inputs).PoundsPerHundredSquareFeet,
        ["acid-garden-soil"] = inputs => Rate(AcidifyingMethod.GardenSoil, inputs).PoundsPerThousandSquareFeet,
        ["acid-any-soil"] = inputs => Rate(AcidifyingMethod.AnySoil, inputs).PoundsPerHundredSquareFeet / 10,
        ["acid-any-soil-equivalent"] = inputs =>
            Need(AcidifyingMethod.AnySoil, inputs).As(AcidEquivalent.FromKey(inputs["equivalent"])).Rate.Value.PoundsPerHundredSquareFeet / 10,
        ["acid-aluminium"] = inputs => Acidifying.Requirement(
                new SoilReport { PhInWater = new Ph(7), Texture = Texture(inputs["texture"]) }, new Ph(6.5), AcidifyingMethod.AluminiumSulfate)
            .Over(Area.FromSquareFeet(inputs.Number("area_ft2"))).Value.Pounds,
        ["acid-depth-cm"] = inputs => AcidifyingMethod.FromKey(inputs["method"]).Depth!.Value.Centimeters,
        ["acid-carbonate-lb-acre"] = inputs => Carbonate(inputs).PoundsPerAcre,
        ["acid-carbonate-ton-acre"] = inputs => Carbonate(inputs).ShortTonsPerAcre,
        ["acid-free-carbonate-ton-acre"] = inputs => Acidifying.FreeCarbonate(
            MassFraction.FromPercent(inputs.Number("carbonate_percent")), Length.FromInches(inputs.Number("depth_in")), BulkDensity(inputs)).Rate.Value.ShortTonsPerAcre,
        ["acid-carbonate-per-sulfur"] = _ => AcidifyingMaterial.ElementalSulfur.CarbonateNeutralised.DecimalFractions,
        ["acid-carbonate-per-sulfur-100"] = _ => AcidifyingMaterial.ElementalSulfur.CarbonateNeutralised.Percent,
        ["acid-equivalent"] = inputs => AcidEquivalent.FromKey(inputs["key"]).PartsPerSulfur,
        ["acid-equivalent-mass"] = inputs => AcidEquivalent.FromKey(inputs["key"]).PartsPerSulfur * inputs.Number("sulfur_lb"),
        ["acid-equivalent-percent"] = inputs => 100 / AcidEquivalent.FromKey(inputs["key"]).PartsPerSulfur,
        ["acid-equivalent-percent-molar"] = _ => 100 / AcidEquivalent.ByMolarMass(AcidifyingMaterial.AmmoniumSulfate).PartsPerSulfur,
        ["acid-equivalent-molar"] = inputs => AcidEquivalent.ByMolarMass(inputs["material"] == "iron sulfate"
            ? AcidifyingMaterial.IronSulfate((int)inputs.Number("waters"))
            : AcidifyingMaterial.AluminiumSulfate((int)inputs.Number("waters"))).PartsPerSulfur,
        ["acid-limit"] = inputs => Limit(inputs).Maximum.PoundsPerThousandSquareFeet,
        ["acid-limit-100"] = inputs => Limit(inputs).Maximum.PoundsPerHundredSquareFeet,
        ["acid-limit-lb-acre"] = inputs => Limit(inputs).Maximum.PoundsPerAcre,
        ["acid-limit-t-ha"] = inputs => Limit(inputs).Maximum.TonnesPerHectare,
        ["acid-limit-year"] = inputs => Limit(inputs).MaximumPerYear!.Value.PoundsPerHundredSquareFeet,
        ["acid-limit-year-1000"] = inputs => Limit(inputs).MaximumPerYear!.Value.PoundsPerThousandSquareFeet,
        ["acid-limit-months"] = inputs => Limit(inputs).FewestMonths!.Value,
        ["acid-reaction-low-days"] = inputs => Time(inputs).Low.Days,
        ["acid-reaction-high-days"] = inputs => Time(inputs).High.Days,
        ["acid-reaction-low-weeks"] = inputs => Time(inputs).Low.Days / 7,
        ["acid-reaction-high-weeks"] = inputs => Time(inputs).High.Days / 7,

        // The tables print acid as negative; ours is the lime that makes it good.
        ["fertiliser-acidity"] = inputs => 0 - Acidity(inputs).LimeFor(Mass.FromPounds(100)).Value.Pounds,
        ["fertiliser-nitrogen"] = inputs => Acidity(inputs).Nitrogen!.Value.Percent,
        ["fertiliser-acidity-per-n"] = inputs => Acidity(inputs).By(AcidityBasis.Nitrogen).LimeFor(Mass.FromPounds(1)).Value.Pounds,
        ["fertiliser-lime-for-n"] = inputs =>
            Acidity(inputs).By(AcidityBasis.Nitrogen).LimeFor(AreaDensity.FromPoundsPerAcre(inputs.Number("n_lb_acre"))).Value.PoundsPerAcre,
        ["medium-rate"] = inputs => Medium(inputs).Low.KilogramsPerCubicMeter,
        ["medium-rate-high"] = inputs => Medium(inputs).High.KilogramsPerCubicMeter,
        ["medium-rate-lb"] = inputs => Medium(inputs).For(Volume.FromCubicYards(1)).Value.Pounds,
        ["medium-mass-g"] = inputs => Medium(inputs).For(Volume.FromLiters(inputs.Number("volume_L"))).Value.Grams,
    };

    private static SoilTexture Texture(string words) => Enum.Parse<SoilTexture>(words.Replace(" ", "", StringComparison.Ordinal), ignoreCase: true);

    private static AcidRequirement Need(AcidifyingMethod method, Inputs inputs, double? target = null) => Acidifying.Requirement(
        new SoilReport { PhInWater = new Ph(inputs.Number("ph")), Texture = inputs.Has("texture") ? Texture(inputs["texture"]) : null },
        new Ph(target ?? inputs.Number("target_ph")),
        method);

    private static AreaDensity Rate(AcidifyingMethod method, Inputs inputs, double? target = null) => Need(method, inputs, target).Rate.Value;

    private static Density BulkDensity(Inputs inputs) =>
        Mass.FromPounds(inputs.Number("soil_lb_acre")) / (Area.FromAcres(1) * Length.FromInches(inputs.Number("depth_in")));

    private static AreaDensity Carbonate(Inputs inputs) => Acidifying.CarbonatePerArea(
        MassFraction.FromPercent(inputs.Number("carbonate_percent")), Length.FromInches(inputs.Number("depth_in")), BulkDensity(inputs));

    private static AcidLimit Limit(Inputs inputs) => inputs["limit"] switch
    {
        "purdue" => AcidLimit.PurdueTurf,
        "clemson" => AcidLimit.ClemsonLawn,
        "garden" => AcidLimit.GardenBed,
        "blueberry" => AcidLimit.BlueberrySurface,
        "british columbia" => AcidLimit.BritishColumbia,
        string other => throw new FormatException($"'{other}' is no limit."),
    };

    private static AcidReactionTime Time(Inputs inputs) => AcidReactionTime.Published.Single(time => time.Source.Key == inputs["source"]);

    private static FertilizerAcidity Acidity(Inputs inputs) => FertilizerAcidities.Named(inputs["source"], inputs["material"]);

    private static MediumRate Medium(Inputs inputs) => MediumRates.All.Single(
        rate => rate.Medium == inputs["medium"] && (!inputs.Has("material") || rate.Material == inputs["material"]));
}
