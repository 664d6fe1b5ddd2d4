using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Reference;

/// <summary>Extracts, sodium, leaching, gypsum, tolerances of salt and boron, and the fitness of waters.</summary>
internal static class SaltCalculations
{
    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["extract-slope"] = inputs => ExtractConversions.FromKey(inputs["line"]).Slope,
        ["extract-intercept"] = inputs => Decisiemens(ExtractConversions.FromKey(inputs["line"]).Intercept),
        ["extract-determination"] = inputs => ExtractConversions.FromKey(inputs["line"]).Determination!.Value,
        ["extract-slavich-rise"] = _ => ExtractConversions.SlavichPetterson(Ratio.FromPercent(50)).Slope - ExtractConversions.SlavichPetterson(Ratio.FromPercent(100)).Slope,
        ["extract-slavich-constant"] = _ =>
            2 * ExtractConversions.SlavichPetterson(Ratio.FromPercent(100)).Slope - ExtractConversions.SlavichPetterson(Ratio.FromPercent(50)).Slope,
        ["medium-level"] = inputs => Salts.MediumLevel(Ec(inputs, "ec_ds_m"), Enum.Parse<MediumExtract>(inputs["extract"])).Value.ToString(),
        ["ion-meq-L"] = inputs => Ion.FromKey(inputs["ion"]).Charge(MassConcentration.FromMilligramsPerLiter(inputs.Number("mg_L"))).CentimolesPerLitre * 10,
        ["sar"] = inputs => Salts.SodiumAdsorptionRatio(Charge(inputs, "na_meq_L"), Charge(inputs, "ca_meq_L"), Charge(inputs, "mg_meq_L")),
        ["exchangeable-sodium-slope"] = _ => (SodiumToOthers(20) - SodiumToOthers(10)) / 10,
        ["exchangeable-sodium-intercept"] = _ => 2 * SodiumToOthers(10) - SodiumToOthers(20),
        ["solids"] = inputs => Salts.DissolvedSolids(Ec(inputs, "ec_ds_m"), DissolvedSolidsMethod.FromKey(inputs["method"])).Value.MilligramsPerLiter,
        ["solids-back"] = inputs => Decisiemens(Salts.ConductivityOfSolids(
            MassConcentration.FromMilligramsPerLiter(inputs.Number("mg_L")), DissolvedSolidsMethod.FromKey(inputs["method"])).Value),
        ["salt-class"] = inputs => (inputs.Has("sar")
            ? Salts.Class(Ec(inputs, "ec_ds_m"), inputs.Number("sar"))
            : Salts.Class(Ec(inputs, "ec_ds_m"), Ratio.FromPercent(inputs.Number("esp_percent")))).Value.ToString(),
        ["salinity-rank"] = inputs => Salts.Rank(Ec(inputs, "ec_ds_m")).Value.ToString(),
        ["gypsum-sodium"] = inputs => Salts.SodiumToReplace(
            ExchangeableCharge.FromMilliequivalentsPer100Grams(inputs.Number("cec_meq_100g")),
            Ratio.FromPercent(inputs.Number("esp_percent")),
            Ratio.FromPercent(inputs.Number("target_percent"))).CentimolesPerKilogram,
        ["gypsum-allowance"] = inputs => inputs.Number("exact_t_ha") * Gypsum(GypsumMethod.FromKey(inputs["method"])) / Gypsum(GypsumMethod.Exact),
        ["leaching"] = inputs => Salts.LeachingRequirement(
            Ec(inputs, "water_ds_m"), Ec(inputs, "allowed_ds_m"), LeachingMethod.FromKey(inputs["method"])).Value.Percent,
        ["soil-salinity"] = inputs => Decisiemens(Salts.SoilSalinity(Ec(inputs, "ec_ds_m"), Ratio.FromPercent(inputs.Number("lf_percent"))).Value),
        ["salt-yield"] = inputs => Stated(inputs).RelativeYield(Ec(inputs, "ec_ds_m")).Value.Percent,
        ["salt-threshold"] = inputs => Decisiemens(Tolerance(inputs).Threshold!.Value),
        ["salt-threshold-high"] = inputs => Decisiemens(Tolerance(inputs).ThresholdHigh!.Value),
        ["salt-loss"] = inputs => Tolerance(inputs).Loss!.Value.Percent,
        ["salt-loss-high"] = inputs => Tolerance(inputs).LossHigh!.Value.Percent,
        ["salt-rating"] = inputs => Tolerance(inputs).Rating!.Value.ToString(),
        ["boron-threshold"] = inputs => BoronTolerances.Named(inputs["crop"]).Threshold.MilligramsPerLiter,
        ["boron-threshold-high"] = inputs => BoronTolerances.Named(inputs["crop"]).ThresholdHigh.MilligramsPerLiter,
        ["boron-class"] = inputs => BoronTolerances.Named(inputs["crop"]).Group.ToString(),
        ["boron-loss"] = inputs => BoronTolerances.Named(inputs["crop"]).Loss!.Value.Percent,
        ["water-restriction"] = inputs => Water(inputs).Findings
            .Single(finding => finding.Hazard == Enum.Parse<WaterHazard>(inputs["hazard"])).Restriction.Value.ToString(),
    };

    private static double SodiumToOthers(double sodiumAdsorptionRatio) =>
        Salts.ExchangeableSodium(sodiumAdsorptionRatio).Value.DecimalFractions is double share ? share / (1 - share) : 0;

    private static double Decisiemens(ElectricConductivity conductivity) => conductivity.MillisiemensPerCentimeter;

    private static ElectricConductivity Ec(Inputs inputs, string name) => ElectricConductivity.FromMillisiemensPerCentimeter(inputs.Number(name));

    private static VolumetricCharge Charge(Inputs inputs, string name) => VolumetricCharge.FromCentimolesPerLitre(inputs.Number(name) / 10);

    private static SaltTolerance Tolerance(Inputs inputs) => SaltTolerances.Named(inputs["source"], inputs["crop"]);

    private static SaltTolerance Stated(Inputs inputs) => new(
        "crop", "crop", new("stated", "stated with the example", "the source", null, null), Ec(inputs, "threshold_ds_m"), Ec(inputs, "threshold_ds_m"),
        Ratio.FromPercent(inputs.Number("loss_percent")), Ratio.FromPercent(inputs.Number("loss_percent")));

    private static double Gypsum(GypsumMethod method) => Salts.GypsumRequirement(
        ExchangeableCharge.FromMilliequivalentsPer100Grams(4.4),
        new SoilLayer(Length.FromCentimeters(30), Density.FromGramsPerCubicCentimeter(1.4)),
        Ratio.FromPercent(100),
        method).Value.KilogramsPerSquareMeter;

    private static IrrigationWater Water(Inputs inputs) => new()
    {
        Conductivity = inputs.Has("ec_ds_m") ? Ec(inputs, "ec_ds_m") : null,
        DissolvedSolids = inputs.Has("tds_mg_L") ? MassConcentration.FromMilligramsPerLiter(inputs.Number("tds_mg_L")) : null,
        Chloride = inputs.Has("cl_meq_L") ? Charge(inputs, "cl_meq_L") : null,
        Bicarbonate = inputs.Has("hco3_meq_L") ? Charge(inputs, "hco3_meq_L") : null,
        Boron = inputs.Has("b_mg_L") ? MassConcentration.FromMilligramsPerLiter(inputs.Number("b_mg_L")) : null,
        NitrateNitrogen = inputs.Has("no3n_mg_L") ? MassConcentration.FromMilligramsPerLiter(inputs.Number("no3n_mg_L")) : null,

        // With 1 meq/L each of calcium and magnesium the ratio is the sodium in meq/L.
        Sodium = inputs.Has("sar") ? Charge(inputs, "sar") : inputs.Has("na_meq_L") ? Charge(inputs, "na_meq_L") : null,
        Calcium = inputs.Has("sar") ? VolumetricCharge.FromCentimolesPerLitre(0.1) : null,
        Magnesium = inputs.Has("sar") ? VolumetricCharge.FromCentimolesPerLitre(0.1) : null,
    };
}
