using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Reference;

/// <summary>Lime by buffers, cations and rules per pH unit, and what liming materials are worth.</summary>
internal static class LimeCalculations
{
    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["lime_oregon_sikora"] = inputs => ShortTonsPerAcre(
            Rate(new SoilReport { SikoraBufferPh = new Ph(inputs.Number("buffer_ph")) }, inputs.Number("target_ph"), LimingMethod.OregonSikora)),
        ["lime_iowa"] = inputs => PoundsPerAcre(
            Rate(new SoilReport { SmpBufferPh = new Ph(inputs.Number("buffer_ph")) }, inputs.Number("target_ph"), LimingMethod.Iowa)),
        ["lime_teagasc"] = inputs => TonnesPerHectare(Rate(new SoilReport { SmpBufferPh = new Ph(inputs.Number("buffer_ph")) }, 6.3, LimingMethod.Teagasc)),
        ["lime_uk_per_ph_unit"] = inputs => TonnesPerHectare(Rate(
            new SoilReport { PhInWater = new Ph(inputs.Number("ph")), Texture = Texture(inputs) }, inputs.Number("target_ph"), LimingMethod.UkPerPhUnit)),
        ["lime_us_per_ph_unit"] = inputs => (Rate(
            new SoilReport { PhInWater = new Ph(inputs.Number("ph")), Texture = Texture(inputs) }, inputs.Number("target_ph"), LimingMethod.UsPerPhUnit)
            * Area.FromSquareFeet(1000)).Pounds,
        ["lime_brazil_base_saturation"] = inputs =>
        {
            double capacity = inputs.Number("capacity_cmol_dm3");
            double bases = capacity * inputs.Number("present_percent") / 100;
            SoilCations cations = new(
                Charge(bases), Charge(0), Charge(0), Charge(0), VolumetricCharge.FromCentimolesPerLitre(capacity - bases));
            LimingMethod method = LimingMethod.BrazilBaseSaturation(Ratio.FromPercent(inputs.Number("target_percent")));
            LimingMaterial product = new("product", Ratio.FromPercent(inputs.Number("prnt_percent")));
            return TonnesPerHectare(Liming.Requirement(new SoilReport { Cations = cations }, new Ph(6.5), method).As(product).Rate.Value);
        },

        // With no calcium at all the rule's pounds per 1000 square feet are the optimum times 4 / 43.
        ["lime_optimum_calcium"] = inputs => (Rate(
            new SoilReport
            {
                CationExchangeCapacity = ExchangeableCharge.FromMilliequivalentsPer100Grams(inputs.Number("cec_meq_100g")),
                ExtractableCalcium = MassFraction.Zero,
            },
            6.5,
            LimingMethod.GardenCalcium) * Area.FromSquareFeet(1000)).Pounds * 43 / 4,
        ["reserve_acidity_adams_evans"] = inputs => ReserveAcidity.AdamsEvans(new Ph(inputs.Number("buffer_ph"))).Value.MilliequivalentsPer100Grams,
        ["reserve_acidity_mehlich"] = inputs => ReserveAcidity.Mehlich(new Ph(inputs.Number("buffer_ph"))).Value.MilliequivalentsPer100CubicCentimetres,
        ["reserve_acidity_spectrum"] = inputs => ReserveAcidity.Spectrum(new Ph(inputs.Number("buffer_ph"))).Value.MilliequivalentsPer100Grams,
        ["lime_german_target"] = inputs => German(inputs).TargetInCalciumChloride.Value,
        ["lime_german_maintenance"] = inputs => German(inputs).Maintenance!.Rate.Value.GramsPerSquareMeter * 10,
        ["lime_german_most"] = inputs => German(inputs).MostPerYear.Rate.Value.GramsPerSquareMeter * 10,
        ["lime_fineness"] = inputs => Scheme(inputs).Fineness(Sieves(inputs)).Value.Percent,

        // A weight is what a material is worth that lies in one class alone.
        ["lime_fineness_weight"] = inputs => Scheme(inputs).Fineness(Sieves(inputs)).Value.DecimalFractions,
        ["lime_effective_percent"] = inputs => Product(inputs).EffectiveEquivalent(Scheme(inputs)).Value.Percent,
        ["lime_effective_pounds"] = inputs => LimeIndexes.FromEffective(
            Product(inputs).EffectiveEquivalent(Scheme(inputs)).Value, LimeIndex.EffectiveCalciumCarbonateEquivalentPounds),
        ["lime_index"] = inputs => LimeIndexes.Convert(
            inputs.Number("value"), Enum.Parse<LimeIndex>(inputs["from"]), Enum.Parse<LimeIndex>(inputs["to"])),
        ["lime_tons_for_index"] = inputs => inputs.Number("rate_us_ton")
            / LimeIndexes.ToEffective(inputs.Number("value"), Enum.Parse<LimeIndex>(inputs["index"])).DecimalFractions,
        ["lime_price_per_effective"] = inputs => (double)new LimingProduct(
            new LimingMaterial("product", Ratio.FromPercent(inputs.Number("cce_percent"))),
            SieveAnalysis.OfMeshes((100, 100)),
            pricePerTonne: (decimal)inputs.Number("price_per_t")).PricePerEffectiveTonne(FinenessScheme.NewYork)!.Value,
        ["lime_range_low"] = inputs => Range(inputs).Lowest.Percent,
        ["lime_range_high"] = inputs => Range(inputs).Highest!.Value.Percent,
        ["lime_sieve_opening"] = inputs => SieveAnalysis.OpeningOf((int)inputs.Number("mesh")).Millimeters,
        ["lime_fineness_class"] = inputs => FinenessClass.All
            .Single(known => known.Jurisdiction == inputs["jurisdiction"] && known.Name == inputs["class"])
            .Least.Single(least => least.Opening.Millimeters.Equals(SievePassing.Mesh((int)inputs.Number("mesh"), Ratio.Zero).Opening.Millimeters)).Passing.Percent,
        ["wood_ash_limit"] = inputs => (WoodAsh.MostPerYear(new Ph(inputs.Number("ph"))).Value * Area.FromSquareFeet(1000)).Pounds,
    };

    private static AreaDensity Rate(SoilReport soil, double target, LimingMethod method) => Liming.Requirement(soil, new Ph(target), method).Rate.Value;

    private static double ShortTonsPerAcre(AreaDensity rate) => (rate * Area.FromAcres(1)).ShortTons;

    private static double PoundsPerAcre(AreaDensity rate) => (rate * Area.FromAcres(1)).Pounds;

    private static double TonnesPerHectare(AreaDensity rate) => (rate * Area.FromHectares(1)).Tonnes;

    private static VolumetricCharge Charge(double centimolesPerLitre) => VolumetricCharge.FromCentimolesPerLitre(centimolesPerLitre);

    private static SoilTexture Texture(Inputs inputs) => Enum.Parse<SoilTexture>(inputs["texture"]);

    private static GermanLimeAdvice German(Inputs inputs) => GermanLiming.Advice(
        Enum.Parse<GermanSoilGroup>(inputs["group"]), Enum.Parse<GermanLandUse>(inputs["use"]), MassFraction.FromPercent(inputs.Number("humus_percent")));

    private static FinenessScheme Scheme(Inputs inputs) => FinenessScheme.FromKey("fineness-" + inputs["scheme"]);

    // By mesh where the sieves have numbers, by opening where they have none.
    private static SieveAnalysis Sieves(Inputs inputs)
    {
        double[] passing = inputs.Numbers("passing_percent");
        return inputs.Has("mesh")
            ? SieveAnalysis.OfMeshes([.. inputs.Numbers("mesh").Zip(passing, (mesh, percent) => ((int)mesh, percent))])
            : new SieveAnalysis([.. inputs.Numbers("opening_um").Zip(passing, (opening, percent) =>
                new SievePassing(Length.FromMicrometers(opening), Ratio.FromPercent(percent)))]);
    }

    private static LimingProduct Product(Inputs inputs) => new(
        new LimingMaterial("product", Ratio.FromPercent(inputs.Number("cce_percent"))), Sieves(inputs), MassFraction.FromPercent(inputs.Number("moisture_percent")));

    private static LimeMaterialRange Range(Inputs inputs) => LimeMaterialRange.Published.Single(range => range.Material == inputs["material"]);
}
