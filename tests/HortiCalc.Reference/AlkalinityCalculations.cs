using HortiCalc.Mixes;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Reference;

internal static class AlkalinityCalculations
{
    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        // Alkalinity in its three ways.
        ["alkalinity.meqL-from-caco3"] = inputs =>
            WaterAlkalinity.FromCalciumCarbonate(MassConcentration.FromMilligramsPerLiter(inputs.Number("caco3_mgL"))).MilliequivalentsPerLitre,
        ["alkalinity.caco3-from-meqL"] = inputs =>
            WaterAlkalinity.ToCalciumCarbonate(VolumetricCharge.FromMilliequivalentsPerLitre(inputs.Number("meqL"))).MilligramsPerLiter,
        ["alkalinity.hco3-from-meqL"] = inputs =>
            WaterAlkalinity.ToBicarbonate(VolumetricCharge.FromMilliequivalentsPerLitre(inputs.Number("meqL"))).MilligramsPerLiter,
        ["alkalinity.hco3-from-caco3"] = inputs =>
            WaterAlkalinity.ToBicarbonate(WaterAlkalinity.FromCalciumCarbonate(MassConcentration.FromMilligramsPerLiter(inputs.Number("caco3_mgL")))).MilligramsPerLiter,
        ["alkalinity.caco3-from-carbonates"] = inputs => WaterAlkalinity.ToCalciumCarbonate(
            WaterAlkalinity.FromCarbonate(MassConcentration.FromMilligramsPerLiter(inputs.Number("co3_mgL")))
            + WaterAlkalinity.FromBicarbonate(MassConcentration.FromMilligramsPerLiter(inputs.Number("hco3_mgL")))).MilligramsPerLiter,
        ["alkalinity.caco3-from-titration"] = inputs => WaterAlkalinity.ToCalciumCarbonate(WaterAlkalinity.FromTitration(
            Volume.FromMilliliters(inputs.Number("acid_mL")),
            VolumetricCharge.FromMilliequivalentsPerLitre(inputs.Number("acid_meqL")),
            Volume.FromMilliliters(inputs.Number("sample_mL")))).MilligramsPerLiter,
        ["alkalinity.meqL-from-german-degrees"] = inputs => GermanDegrees(inputs).MilliequivalentsPerLitre,
        ["alkalinity.hco3-from-german-degrees"] = inputs => WaterAlkalinity.ToBicarbonate(GermanDegrees(inputs)).MilligramsPerLiter,
        ["alkalinity.caco3-from-german-degrees"] = inputs => WaterAlkalinity.ToCalciumCarbonate(GermanDegrees(inputs)).MilligramsPerLiter,
        ["alkalinity.german-degrees-from-caco3"] = inputs => WaterAlkalinity.ToCalciumOxide(
            WaterAlkalinity.FromCalciumCarbonate(MassConcentration.FromMilligramsPerLiter(inputs.Number("caco3_mgL")))).MilligramsPerLiter / 10,
        ["alkalinity-target.low-meqL"] = inputs => Target(inputs).Low.MilliequivalentsPerLitre,
        ["alkalinity-target.high-meqL"] = inputs => Target(inputs).High.MilliequivalentsPerLitre,
        ["alkalinity-target.low-caco3"] = inputs => Target(inputs).LowAsCalciumCarbonate.MilligramsPerLiter,
        ["alkalinity-target.high-caco3"] = inputs => Target(inputs).HighAsCalciumCarbonate.MilligramsPerLiter,

        ["source-water.most-mgL"] = inputs => SourceWaterLimits.Hydroponics
            .Single(limit => limit.Ion == FeedingCalculations.Parse<SolutionIon>(inputs, "ion")).Most.MilligramsPerLiter,

        // Constants and known solutions.
        ["water.pkw"] = inputs => WaterChemistry.PkOfWater(Celsius(inputs)),
        ["water.pk1"] = inputs => WaterChemistry.FirstPkOfCarbonicAcid(Celsius(inputs)),
        ["water.pk2"] = inputs => WaterChemistry.SecondPkOfCarbonicAcid(Celsius(inputs)),
        ["water.log-k-of-carbon-dioxide"] = inputs =>
            WaterChemistry.FirstPkOfCarbonicAcid(Celsius(inputs)) + WaterChemistry.SecondPkOfCarbonicAcid(Celsius(inputs)),
        ["water.share-pct"] = inputs =>
        {
            CarbonateShares shares = WaterChemistry.SharesOfCarbon(
                new Ph(inputs.Number("ph")), Celsius(inputs), Molarity.FromMolesPerLiter(inputs.Has("ionic_strength_molL") ? inputs.Number("ionic_strength_molL") : 0));
            return inputs["form"] switch
            {
                "gas" => shares.CarbonDioxide.Percent,
                "bicarbonate" => shares.Bicarbonate.Percent,
                _ => shares.Carbonate.Percent,
            };
        },
        ["water.ph"] = inputs => WaterChemistry.PhOf(
            FeedingCalculations.Ions(inputs), Celsius(inputs), inputs.Has("open") ? GasExchange.OpenToAir : GasExchange.Closed).Value.Value,

        // Acids.
        ["acid.floz-per-100gal-for-alkalinity"] = inputs => ToAlkalinity(inputs).VolumeFor(Volume.FromUsGallons(100)).UsOunces,
        ["acid.ml-per-100gal-for-alkalinity"] = inputs => ToAlkalinity(inputs).VolumeFor(Volume.FromUsGallons(100)).Milliliters,
        ["acid.alkalinity-taken-mgL"] = inputs =>
        {
            SourceWater water = Water(inputs);
            AcidDose dose = AcidInjection.AddVolume(
                water,
                Acid(inputs),
                VolumeConcentration.FromDecimalFractions(Volume.FromUsOunces(inputs.Number("acid_floz")).Liters / Volume.FromUsGallons(inputs.Number("water_gal")).Liters),
                GasExchange.Closed);
            return inputs.Number("water_mgL") - WaterAlkalinity.ToCalciumCarbonate(dose.Alkalinity).MilligramsPerLiter;
        },
        ["acid.element-mgL"] = inputs => ElementOf(AcidInjection.AddVolume(
            Water(inputs),
            Acid(inputs),
            VolumeConcentration.FromDecimalFractions(Volume.FromUsOunces(inputs.Number("acid_floz")).Liters / Volume.FromUsGallons(inputs.Number("water_gal")).Liters),
            GasExchange.Closed)),
        ["acid.element-for-alkalinity-mgL"] = inputs => ElementOf(ToAlkalinity(inputs)),
        ["acid.element-of-product-gL"] = inputs => GramsOfElementPerMole(inputs) * Acid(inputs).Molarity!.Value.MolesPerLiter,
        ["acid.element-of-product-pct"] = inputs =>
        {
            AcidDose dose = AcidInjection.Add(Water(inputs), Acid(inputs), Molarity.FromMillimolesPerLiter(1), GasExchange.Closed);
            return 100 * ElementOf(dose) / dose.ProductMass.MilligramsPerLiter;
        },
        ["acid.hydrogens"] = inputs => Acid(inputs).HydrogensPerMole(
            new Ph(inputs.Number("ph")), Celsius(inputs), Molarity.FromMolesPerLiter(inputs.Number("ionic_strength_molL"))),
        ["acid.mmol-to-ph"] = inputs => AcidInjection.ToPh(
            Water(inputs), Acid(inputs), new Ph(inputs.Number("target_ph")), Exchange(inputs)).Amount.MillimolesPerLiter,
        ["acid.mmol-to-alkalinity"] = inputs => ToAlkalinity(inputs).Amount.MillimolesPerLiter,
        ["acid.ph-after"] = inputs => AcidInjection.Add(
            Water(inputs), Acid(inputs), Molarity.FromMillimolesPerLiter(inputs.Number("acid_mmolL")), Exchange(inputs)).Ph.Value,
    };

    private static VolumetricCharge GermanDegrees(Inputs inputs) =>
        WaterAlkalinity.FromCalciumOxide(MassConcentration.FromMilligramsPerLiter(10 * inputs.Number("degrees")));

    private static GasExchange Exchange(Inputs inputs) => inputs.Has("open") ? GasExchange.OpenToAir : GasExchange.Closed;

    private static Temperature Celsius(Inputs inputs) => Temperature.FromDegreesCelsius(inputs.Number("t_C"));

    private static AlkalinityTarget Target(Inputs inputs) => AlkalinityTargets.All.Single(one => one.Container == inputs["container"]);

    private static SourceWater Water(Inputs inputs) => new(
        inputs.Has("water_meqL")
            ? VolumetricCharge.FromMilliequivalentsPerLitre(inputs.Number("water_meqL"))
            : WaterAlkalinity.FromCalciumCarbonate(MassConcentration.FromMilligramsPerLiter(inputs.Number("water_mgL"))),
        new Ph(inputs.Number("water_ph")),
        inputs.Has("t_C") ? Celsius(inputs) : Temperature.FromDegreesCelsius(25),
        inputs.Has("ionic_strength_molL") ? Molarity.FromMolesPerLiter(inputs.Number("ionic_strength_molL")) : null);

    private static AcidProduct Acid(Inputs inputs) => new(
        FeedingCalculations.Parse<WaterAcid>(inputs, "acid"),
        MassFraction.FromPercent(inputs.Has("strength_pct") ? inputs.Number("strength_pct") : 100),
        inputs.Has("density_kgL") ? Density.FromKilogramsPerLiter(inputs.Number("density_kgL")) : null);

    private static AcidDose ToAlkalinity(Inputs inputs) => AcidInjection.ToAlkalinity(
        Water(inputs),
        Acid(inputs),
        inputs.Has("target_meqL")
            ? VolumetricCharge.FromMilliequivalentsPerLitre(inputs.Number("target_meqL"))
            : WaterAlkalinity.FromCalciumCarbonate(MassConcentration.FromMilligramsPerLiter(inputs.Number("target_mgL"))),
        Exchange(inputs));

    private static double ElementOf(AcidDose dose) =>
        dose.Nitrogen.MilligramsPerLiter + dose.Phosphorus.MilligramsPerLiter + dose.Sulfur.MilligramsPerLiter;

    /// <summary>Grams of the acid's nutrient in a mole, taken from a dose.</summary>
    private static double GramsOfElementPerMole(Inputs inputs)
    {
        SourceWater water = new(VolumetricCharge.FromMilliequivalentsPerLitre(5), new Ph(8), Temperature.FromDegreesCelsius(25));
        AcidDose dose = AcidInjection.Add(water, Acid(inputs), Molarity.FromMillimolesPerLiter(1), GasExchange.Closed);
        return ElementOf(dose);
    }
}
