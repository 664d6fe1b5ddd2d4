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

        ["feed.rate-oz"] = inputs => RateOf(inputs, Volume.FromUsGallons(inputs.Number("feed_gal"))).Ounces,
        ["feed.stock-mL"] = inputs =>
        {
            MassConcentration rate = Feeding.RateFor(
                FeedGrade.Parse(inputs["grade"]), NutrientElement.Nitrogen, MassConcentration.FromMilligramsPerLiter(inputs.Number("target_mgL")));
            return 1000 * inputs.Number("feed_L") * rate.GramsPerLiter / inputs.Number("stock_gL");
        },

        // Products by label, grade:g/1000 L (or oxide in percent:g/1000 L), joined by a bar, to milliequivalents.
        ["feed.products-meqL"] = inputs =>
        {
            SolutionIon ion = Parse<SolutionIon>(inputs, "ion");
            double milligramsPerLitre = Parts(inputs["products"]).Sum(product => inputs.Has("oxide")
                ? product.Number * NutrientOxides.ToElement(Parse<NutrientOxide>(inputs, "oxide"), MassFraction.FromPercent(Number(product.Name))).DecimalFractions
                : ElementOf(Feeding.StrengthOf(FeedGrade.Parse(product.Name), MassConcentration.FromMilligramsPerLiter(product.Number)), ion));
            return ChargeOf(IonConcentration.FromElement(ion, MassConcentration.FromMilligramsPerLiter(milligramsPerLitre)), inputs);
        },

        // Salts by molar mass.
        ["salt.recipe-meqL"] = inputs =>
        {
            SolutionIons solution = NutrientSolution.IonsOf([.. Parts(inputs["salts"]).Select(one =>
                new SaltAmount(NutrientSalts.FromKey(one.Name), MassConcentration.FromMilligramsPerLiter(one.Number)))]);
            SolutionIon ion = Parse<SolutionIon>(inputs, "ion");
            return ChargeOf(new IonConcentration(ion, solution[ion]), inputs);
        },
        ["plan.salt-g-per-1000L"] = inputs => NutrientSolution
            .Plan(Ions(inputs), [.. inputs["salts"].Split('|').Select(salt => new SaltOffer(NutrientSalts.FromKey(salt)))])
            .Amounts.Single(amount => amount.Salt.Key == inputs["salt"]).For(Volume.FromCubicMeters(1)).Grams,
        ["salt.ion-mmolL"] = inputs => NutrientSolution
            .IonsOf([new SaltAmount(Salt(inputs), MassConcentration.FromMilligramsPerLiter(inputs.Number("salt_mgL")))])[Parse<SolutionIon>(inputs, "ion")]
            .MillimolesPerLiter,
        ["salt.rate-gL"] = inputs => inputs.Number("target_mgL") / 1000 / Share(inputs, Salt(inputs), "element"),
        ["salt.element-beside-mgL"] = inputs =>
            inputs.Number("target_mgL") / Share(inputs, Salt(inputs), "element") * Share(inputs, Salt(inputs), "beside"),
        ["salt.element-of-mass-mgL"] = inputs => NutrientSolution
            .IonsOf([new SaltAmount(Salt(inputs), MassConcentration.FromMilligramsPerLiter(inputs.Number("salt_mgL")))])
            .Element(Parse<NutrientElement>(inputs, "element")).MilligramsPerLiter,
        ["salt.grams-for-ion"] = inputs => new SaltAmount(
            Salt(inputs),
            MassConcentration.FromMilligramsPerLiter(
                IonConcentration.FromMass(Parse<SolutionIon>(inputs, "ion"), MassConcentration.FromMilligramsPerLiter(inputs.Number("target_mgL")))
                    .OfElement.MilligramsPerLiter / Share(inputs, Salt(inputs), "element")))
            .For(Volume.FromLiters(inputs.Number("volume_L"))).Grams,
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

    private static NutrientSalt Salt(Inputs inputs)
    {
        NutrientSalt salt = NutrientSalts.FromKey(inputs["salt"]);

        // Another formula of the same ions, as without its water.
        if (inputs.Has("formula"))
            salt = new NutrientSalt(salt.Key, salt.Name, inputs["formula"], salt.Ions, salt.Purity);
        return inputs.Has("purity_pct") ? salt.WithPurity(MassFraction.FromPercent(inputs.Number("purity_pct"))) : salt;
    }

    private static double Share(Inputs inputs, NutrientSalt salt, string name) => salt.Share(Parse<NutrientElement>(inputs, name)).DecimalFractions;

    private static Mass RateOf(Inputs inputs, Volume feed) => Mass.FromKilograms(feed.CubicMeters * Feeding.RateFor(
        FeedGrade.Parse(inputs["grade"]), NutrientElement.Nitrogen, MassConcentration.FromMilligramsPerLiter(inputs.Number("target_mgL"))).KilogramsPerCubicMeter);

    private static IEnumerable<(string Name, double Number)> Parts(string text) =>
        text.Split('|').Select(one => one.Split(':')).Select(one => (one[0], Number(one[1])));

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static double ElementOf(FeedStrength feed, SolutionIon ion) => ion switch
    {
        SolutionIon.Nitrate => feed.Nitrogen.MilligramsPerLiter,
        SolutionIon.DihydrogenPhosphate => feed.Phosphorus.MilligramsPerLiter,
        _ => feed.Potassium.MilligramsPerLiter,
    };

    // Some tables count phosphate as PO4, three to the mole.
    private static double ChargeOf(IonConcentration ion, Inputs inputs) =>
        ion.Charge.MilliequivalentsPerLitre * (inputs.Has("phosphate_counted_as") ? inputs.Number("phosphate_counted_as") : 1);

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
