using HortiCalc.Mixes;
using UnitsNet;

namespace HortiCalc.Reference;

internal static class FeedingCalculations
{
    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        // Oxides of labels.
        ["feed.oxide-to-element"] = inputs =>
            NutrientOxides.ToElement(Parse<NutrientOxide>(inputs, "oxide"), MassFraction.FromPercent(inputs.Number("share_pct"))).Percent,
        ["feed.oxide-to-element-factor"] = inputs =>
            NutrientOxides.ToElement(Parse<NutrientOxide>(inputs, "oxide"), MassFraction.FromPercent(100)).DecimalFractions,
        ["feed.element-to-oxide-factor"] = inputs =>
            NutrientOxides.FromElement(Parse<NutrientOxide>(inputs, "oxide"), MassFraction.FromPercent(100)).DecimalFractions,

        // Products by grade.
        ["feed.rate-gL"] = inputs => Feeding.RateFor(
            FeedGrade.Parse(inputs["grade"]), Parse<NutrientElement>(inputs, "element"), MassConcentration.FromMilligramsPerLiter(inputs.Number("target_mgL")))
            .GramsPerLiter,
        ["feed.stock-oz"] = inputs => Feeding.Stock(
            FeedGrade.Parse(inputs["grade"]),
            NutrientElement.Nitrogen,
            MassConcentration.FromMilligramsPerLiter(inputs.Number("target_mgL")),
            MixRatio.OneIn(inputs.Number("one_in")),
            Volume.FromUsGallons(inputs.Number("stock_gal"))).Product.Ounces,
        ["feed.nitrogen-of-two"] = inputs =>
            Feeding.StrengthOf(FeedGrade.Parse(inputs["first"]), MassConcentration.FromGramsPerLiter(inputs.Number("first_gL"))).Nitrogen.MilligramsPerLiter
            + Feeding.StrengthOf(FeedGrade.Parse(inputs["second"]), MassConcentration.FromGramsPerLiter(inputs.Number("second_gL"))).Nitrogen.MilligramsPerLiter,
        ["feed.conductivity-by-label"] = inputs => Feeding.ConductivityOf(
            new FeedConductivity(
                MassConcentration.FromMilligramsPerLiter(inputs.Number("label_mgL")),
                ElectricConductivity.FromMillisiemensPerCentimeter(inputs.Number("label_mScm"))),
            MassConcentration.FromMilligramsPerLiter(inputs.Number("nitrogen_mgL")),
            ElectricConductivity.Zero).Value.MillisiemensPerCentimeter,

        // Salts by molar mass.
        ["salt.share-pct"] = inputs => Salt(inputs).Share(Parse<NutrientElement>(inputs, "element")).Percent,
        ["salt.share-as-oxide-pct"] = inputs => NutrientOxides.FromElement(
            Parse<NutrientOxide>(inputs, "oxide"), Salt(inputs).Share(Parse<NutrientElement>(inputs, "element"))).Percent,
        ["salt.molar-stock-g"] = inputs => SaltAmount
            .FromMolarity(Salt(inputs), Molarity.FromMolesPerLiter(inputs.Number("molarity")))
            .For(Volume.FromLiters(inputs.Number("volume_L"))).Grams,
        ["salt.ion-mgL"] = inputs =>
        {
            double milligramsPerLitre = inputs.Number("mass_g") * 1000 / Volume.FromUsGallons(inputs.Number("volume_gal")).Liters;
            SolutionIons ions = NutrientSolution.IonsOf([new SaltAmount(Salt(inputs), MassConcentration.FromMilligramsPerLiter(milligramsPerLitre))]);
            SolutionIon ion = Parse<SolutionIon>(inputs, "ion");
            return ions.Concentrations.Single(one => one.Ion == ion).Mass.MilligramsPerLiter;
        },
        ["formula.element-mgL"] = inputs => Formula(inputs).Ions.Element(Parse<NutrientElement>(inputs, "element")).MilligramsPerLiter,
        ["formula.macro-element-mgL"] = inputs => Formula(inputs).Macronutrients.Element(Parse<NutrientElement>(inputs, "element")).MilligramsPerLiter,

        // Conductivity at 25 °C. Ions in mmol/L: name:amount, joined by a bar.
        ["conductivity.of-ions"] = inputs => SolutionConductivity
            .Of(Ions(inputs), inputs.Has("method") ? ConductivityMethod.FromKey(inputs["method"]) : null).Value.MillisiemensPerCentimeter,
        ["conductivity.of-ions-uScm"] = inputs => SolutionConductivity
            .Of(Ions(inputs), inputs.Has("method") ? ConductivityMethod.FromKey(inputs["method"]) : null).Value.MicrosiemensPerCentimeter,
        ["conductivity.of-salt"] = inputs => SolutionConductivity
            .Of(NutrientSolution.IonsOf([new SaltAmount(Salt(inputs), MassConcentration.FromMilligramsPerLiter(inputs.Number("salt_mgL")))]))
            .Value.MillisiemensPerCentimeter,
        ["conductivity.limiting-Scm2mol"] = inputs =>
            SolutionConductivity.LimitingPerMillimole(Parse<SolutionIon>(inputs, "ion"))!.Value.MicrosiemensPerCentimeter,

        // Tables held as printed.
        ["solubility.gL"] = inputs => FertiliserSolubilities.All.Single(one => one.Key == inputs["salt"])
            .At(Temperature.FromDegreesCelsius(inputs.Number("t_C"))).Value.GramsPerLiter,
        ["standard-solution.element-mgL"] = inputs => NutrientFormulas.TwelveStandard[(int)inputs.Number("solution") - 1]
            .Concentrations.Where(one => one.Ion == Parse<SolutionIon>(inputs, "ion")).Sum(one => one.OfElement.MilligramsPerLiter),
        ["nutrient-target.low-mgL"] = inputs => Target(inputs).Low.MilligramsPerLiter,
        ["nutrient-target.high-mgL"] = inputs => Target(inputs).High.MilligramsPerLiter,
        ["conductivity-target.low-mScm"] = inputs => ConductivityTargetOf(inputs).Low.MillisiemensPerCentimeter,
        ["conductivity-target.high-mScm"] = inputs => ConductivityTargetOf(inputs).High.MillisiemensPerCentimeter,
    };

    internal static SolutionIons Ions(Inputs inputs)
    {
        IEnumerable<(SolutionIon Ion, double Amount)> named = inputs["ions"].Split('|').Select(one => one.Split(':')).Select(
            one => (Enum.Parse<SolutionIon>(one[0]), double.Parse(one[1], System.Globalization.CultureInfo.InvariantCulture)));

        // A molality times the mass of water in a litre of a dilute solution.
        double factor = inputs.Has("water_kgL") ? inputs.Number("water_kgL") : 1;
        return new SolutionIons([.. named.Select(one => inputs.Has("ions_in") && inputs["ions_in"] == "mgL"
            ? IonConcentration.FromMass(one.Ion, MassConcentration.FromMilligramsPerLiter(one.Amount))
            : new IonConcentration(one.Ion, Molarity.FromMillimolesPerLiter(one.Amount * factor)))]);
    }

    internal static T Parse<T>(Inputs inputs, string name)
        where T : struct, Enum => Enum.Parse<T>(inputs[name]);

    private static NutrientSalt Salt(Inputs inputs) => inputs.Has("purity_pct")
        ? NutrientSalts.FromKey(inputs["salt"]).WithPurity(MassFraction.FromPercent(inputs.Number("purity_pct")))
        : NutrientSalts.FromKey(inputs["salt"]);

    private static NutrientFormula Formula(Inputs inputs) => inputs["formula"] switch
    {
        "hoagland-1" => NutrientFormulas.HoaglandOne,
        "hoagland-2" => NutrientFormulas.HoaglandTwo,
        _ => throw new FormatException($"'{inputs["formula"]}' is not a formula."),
    };

    private static ConductivityTarget ConductivityTargetOf(Inputs inputs) =>
        (inputs["list"] == "hydroponics" ? ConductivityTargets.Hydroponics : ConductivityTargets.SaturatedMedia).Single(one => one.Crop == inputs["crop"]);

    private static NutrientRange Target(Inputs inputs) => NutrientTargets.All.Single(one => one.Key == inputs["target"])
        .Of(Parse<NutrientElement>(inputs, "element"))!;
}
