using HortiCalc.Mixes;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Reference;

internal static class MixCalculations
{
    // The ends of input names, and the values of the input "in".
    private static readonly Dictionary<string, VolumeUnit> Volumes = new()
    {
        ["mL"] = VolumeUnit.Milliliter,
        ["L"] = VolumeUnit.Liter,
        ["kL"] = VolumeUnit.CubicMeter,
        ["tsp"] = VolumeUnit.UsTeaspoon,
        ["tbsp"] = VolumeUnit.UsTablespoon,
        ["floz"] = VolumeUnit.UsOunce,
        ["cup"] = VolumeUnit.UsCustomaryCup,
        ["pt"] = VolumeUnit.UsPint,
        ["qt"] = VolumeUnit.UsQuart,
        ["gal"] = VolumeUnit.UsGallon,
        ["impfloz"] = VolumeUnit.ImperialOunce,
        ["impgal"] = VolumeUnit.ImperialGallon,
    };

    private static readonly Dictionary<string, MassUnit> Masses = new()
    {
        ["mg"] = MassUnit.Milligram,
        ["g"] = MassUnit.Gram,
        ["oz"] = MassUnit.Ounce,
        ["lb"] = MassUnit.Pound,
    };

    private static readonly Dictionary<string, MassConcentrationUnit> Concentrations = new()
    {
        ["mgL"] = MassConcentrationUnit.MilligramPerLiter,
        ["gL"] = MassConcentrationUnit.GramPerLiter,
        ["lbgal"] = MassConcentrationUnit.PoundPerUSGallon,
        ["ozgal"] = MassConcentrationUnit.OuncePerUSGallon,
    };

    private static readonly Dictionary<string, MixRecipe> Recipes =
        SanitisingRecipes.All.Concat(FoliarRecipes.All).ToDictionary(recipe => recipe.Key);

    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        // Ratios: concentrate_parts and diluent_parts, or one_in.
        ["mix.concentrate-to-make-up"] = inputs => In(inputs, Dilution.MakeUpTo(VolumeOf(inputs, "total"), RatioOf(inputs)).Concentrate),
        ["mix.concentrate-to-add"] = inputs => In(inputs, Dilution.AddTo(VolumeOf(inputs, "water"), RatioOf(inputs)).Concentrate),
        ["mix.share-percent"] = inputs => RatioOf(inputs).ShareOfConcentrate.Percent,
        ["mix.strength"] = inputs => Figure(inputs, Dilution.StrengthOf(RatioOf(inputs), StrengthOf(inputs, "stock"))),

        // Strengths: C1 V1 = C2 V2.
        ["mix.parts-of-water"] = inputs => Dilution.RatioFor(StrengthOf(inputs, "stock"), StrengthOf(inputs, "target")).PartsOfDiluent,
        ["mix.factor"] = inputs => Dilution.RatioFor(StrengthOf(inputs, "stock"), StrengthOf(inputs, "target")).Factor,
        ["mix.stock-to-make-up"] = inputs =>
            In(inputs, Dilution.MakeUpTo(VolumeOf(inputs, "total"), StrengthOf(inputs, "stock"), StrengthOf(inputs, "target")).Concentrate),
        ["mix.total-from-stock"] = inputs =>
            In(inputs, Dilution.UseUp(VolumeOf(inputs, "available"), StrengthOf(inputs, "stock"), StrengthOf(inputs, "target")).Total),
        ["mix.strength-made-up"] = inputs => Figure(
            inputs,
            Dilution.Combine(
                VolumeOf(inputs, "concentrate"),
                VolumeOf(inputs, "total") - VolumeOf(inputs, "concentrate"),
                StrengthOf(inputs, "stock")).Strength!),
        ["mix.strength-added"] = inputs => Figure(
            inputs, Dilution.Combine(VolumeOf(inputs, "concentrate"), VolumeOf(inputs, "water"), StrengthOf(inputs, "stock")).Strength!),

        // Powders and active ingredients.
        ["mix.powder"] = inputs => In(inputs, Dilution.PowderFor(VolumeOf(inputs, "total"), PowderOf(inputs), Stock(inputs))),
        ["mix.strength-of-powder"] = inputs =>
            Figure(inputs, Dilution.StrengthOfPowder(MassOf(inputs, "powder"), PowderOf(inputs), VolumeOf(inputs, "total"))),
        ["mix.liquid-holding-active"] = inputs =>
            In(inputs, Dilution.ProductHolding(ActiveOf(inputs), (StrengthPerVolume)StrengthOf(inputs, "stock"))),
        ["mix.powder-holding-active"] = inputs => In(inputs, Dilution.ProductHolding(ActiveOf(inputs), PowderOf(inputs))),

        // Rates brought to a batch.
        ["mix.liquid-rate"] = inputs => In(
            inputs, Dilution.ProductFor(Dilution.RateOf(VolumeOf(inputs, "product"), VolumeOf(inputs, "per")), VolumeOf(inputs, "batch"))),
        ["mix.powder-rate"] = inputs => In(
            inputs, Dilution.ProductFor(Dilution.RateOf(MassOf(inputs, "product"), VolumeOf(inputs, "per")), VolumeOf(inputs, "batch"))),
        ["mix.rate-percent"] = inputs => Dilution.RateOf(VolumeOf(inputs, "product"), VolumeOf(inputs, "per")).Percent,
        ["mix.rate-factor"] = inputs =>
            MixRatio.FromShare(Dilution.RateOf(VolumeOf(inputs, "product"), VolumeOf(inputs, "per"))).Factor,
        ["mix.volume"] = inputs => In(inputs, VolumeOf(inputs, "volume")),

        // Bleach.
        ["hypochlorite.chlorine-by-mass"] = inputs =>
            Hypochlorite.AvailableChlorineByMass(MassFraction.FromPercent(inputs.Number("hypochlorite_pct"))).Percent,
        ["hypochlorite.hypochlorite-by-mass"] = inputs =>
            Hypochlorite.SodiumHypochloriteByMass(MassFraction.FromPercent(inputs.Number("chlorine_pct"))).Percent,
        ["hypochlorite.trade-to-chlorine-by-mass"] = inputs => HypochloriteLabel
            .Trade(Ratio.FromPercent(inputs.Number("trade_pct")), Density.FromKilogramsPerLiter(inputs.Number("density_kgL")))
            .AvailableChlorineByMass!.Value.Percent,
        ["hypochlorite.hypochlorite-to-trade"] = inputs => HypochloriteLabel
            .SodiumHypochlorite(MassFraction.FromPercent(inputs.Number("hypochlorite_pct")), Density.FromKilogramsPerLiter(inputs.Number("density_kgL")))
            .TradePercentage.Percent,
        ["hypochlorite.convention-level-made-up"] = inputs => Hypochlorite.StrengthOf(
            ConventionOf(inputs), MixRatio.OneIn(VolumeOf(inputs, "total") / VolumeOf(inputs, "bleach"))).Value.MilligramsPerLiter,
        ["hypochlorite.convention-level-added"] = inputs => Hypochlorite.StrengthOf(
            ConventionOf(inputs), MixRatio.PartsToParts(VolumeOf(inputs, "bleach").Liters, VolumeOf(inputs, "water").Liters)).Value.MilligramsPerLiter,
        ["hypochlorite.convention-bleach-to-make-up"] = inputs => In(
            inputs,
            Hypochlorite.MakeUpTo(
                VolumeOf(inputs, "total"),
                ConventionOf(inputs),
                MassConcentration.FromMilligramsPerLiter(inputs.Number("target_mgL"))).Value.Concentrate),
        ["hypochlorite.chlorometric-gL"] = inputs =>
            HypochloriteLabel.ChlorometricDegrees(inputs.Number("degrees")).AvailableChlorine.GramsPerLiter,
        ["hypochlorite.chlorometric-bleach-mL"] = inputs => Hypochlorite.MakeUpTo(
            VolumeOf(inputs, "total"),
            HypochloriteLabel.ChlorometricDegrees(inputs.Number("degrees")),
            MassConcentration.FromMilligramsPerLiter(inputs.Number("target_mgL"))).Value.Concentrate.Milliliters,
        ["hypochlorite.trade-bleach-to-make-up"] = inputs => In(
            inputs,
            Hypochlorite.MakeUpTo(
                VolumeOf(inputs, "total"),
                HypochloriteLabel.Trade(Ratio.FromPercent(inputs.Number("trade_pct"))),
                MassConcentration.FromMilligramsPerLiter(inputs.Number("target_mgL"))).Value.Concentrate),
        ["hypochlorite.powder"] = inputs => In(
            inputs,
            Hypochlorite.PowderFor(
                VolumeOf(inputs, "total"),
                MassFraction.FromPercent(inputs.Number("powder_pct")),
                MassConcentration.FromMilligramsPerLiter(inputs.Number("target_mgL"))).Value),

        // Recipes.
        ["recipe.amount-made-up"] = inputs => Amount(inputs, Recipes[inputs["recipe"]].MakeUpTo(VolumeOf(inputs, "total"))),
        ["recipe.amount-added"] = inputs => Amount(inputs, Recipes[inputs["recipe"]].AddTo(VolumeOf(inputs, "water"))),
        ["recipe.water-made-up"] = inputs => In(inputs, Recipes[inputs["recipe"]].MakeUpTo(VolumeOf(inputs, "total")).Water.High),
        ["recipe.contact-minutes"] = inputs => Recipes[inputs["recipe"]].ContactTime!.Value.Minutes,

        // What must not meet.
        ["hazard.result"] = inputs => string.Join(
            "; ",
            Hazards.Pairs
                .Where(pair => (pair.First, pair.Second) == Ordered(
                    Enum.Parse<IngredientClass>(inputs["first"]), Enum.Parse<IngredientClass>(inputs["second"])))
                .Select(pair => pair.Result)),
    };

    private static (IngredientClass First, IngredientClass Second) Ordered(IngredientClass one, IngredientClass other) =>
        one <= other ? (one, other) : (other, one);

    private static MixRatio RatioOf(Inputs inputs) => inputs.Has("one_in")
        ? MixRatio.OneIn(inputs.Number("one_in"))
        : MixRatio.PartsToParts(inputs.Number("concentrate_parts"), inputs.Number("diluent_parts"));

    private static Volume VolumeOf(Inputs inputs, string name)
    {
        foreach ((string end, VolumeUnit unit) in Volumes)
        {
            if (inputs.Has($"{name}_{end}"))
                return new Volume(inputs.Number($"{name}_{end}"), unit);
        }

        throw new FormatException($"'{inputs}' has no volume '{name}'.");
    }

    private static Mass MassOf(Inputs inputs, string name)
    {
        foreach ((string end, MassUnit unit) in Masses)
        {
            if (inputs.Has($"{name}_{end}"))
                return new Mass(inputs.Number($"{name}_{end}"), unit);
        }

        throw new FormatException($"'{inputs}' has no mass '{name}'.");
    }

    /// <summary>
    /// A strength by the end of its name: % by volume, % taken as weight per volume, ppm in dilute water, % by mass with a density, or
    /// mass per volume.
    /// </summary>
    private static Strength StrengthOf(Inputs inputs, string name)
    {
        foreach ((string end, MassConcentrationUnit unit) in Concentrations)
        {
            if (inputs.Has($"{name}_{end}"))
                return Strength.PerVolume(new MassConcentration(inputs.Number($"{name}_{end}"), unit));
        }

        if (inputs.Has($"{name}_pct_v"))
            return Strength.ByVolume(VolumeConcentration.FromPercent(inputs.Number($"{name}_pct_v")));
        if (inputs.Has($"{name}_pct_wv"))
            return Strength.PercentAsWeightPerVolume(MassFraction.FromPercent(inputs.Number($"{name}_pct_wv")));
        if (inputs.Has($"{name}_ppm"))
            return Strength.PartsPerMillionInDiluteWater(MassFraction.FromPartsPerMillion(inputs.Number($"{name}_ppm")));
        if (inputs.Has($"{name}_pct_m"))
        {
            return Strength.ByMass(
                MassFraction.FromPercent(inputs.Number($"{name}_pct_m")), new Density(inputs.Number("density_lbgal"), DensityUnit.PoundPerUSGallon));
        }

        throw new FormatException($"'{inputs}' has no strength '{name}'.");
    }

    private static StrengthByMass PowderOf(Inputs inputs) => Strength.ByMass(MassFraction.FromPercent(inputs.Number("active_pct")));

    /// <summary>The strength of a solution, or of the stock that an injector brings to it.</summary>
    private static StrengthPerVolume Stock(Inputs inputs)
    {
        StrengthPerVolume target = (StrengthPerVolume)StrengthOf(inputs, "target");
        return inputs.Has("injector_one_in") ? Dilution.StockFor(target, MixRatio.OneIn(inputs.Number("injector_one_in"))) : target;
    }

    /// <summary>A mass of active ingredient, or a rate per acre on an area.</summary>
    private static Mass ActiveOf(Inputs inputs) => inputs.Has("area_ft2")
        ? MassOf(inputs, "active") * (inputs.Number("area_ft2") / 43_560)
        : MassOf(inputs, "active");

    private static HypochloriteLabel ConventionOf(Inputs inputs) =>
        HypochloriteLabel.PercentAsWeightPerVolume(MassFraction.FromPercent(inputs.Number("label_pct")));

    private static double In(Inputs inputs, Volume volume) => volume.As(Volumes[inputs["in"]]);

    private static double In(Inputs inputs, Mass mass) => mass.As(Masses[inputs["in"]]);

    private static double Figure(Inputs inputs, Strength strength) => (strength, inputs["in"]) switch
    {
        (StrengthByVolume volume, "pct") => volume.Share.Percent,
        (StrengthPerVolume mass, "pct") => mass.Concentration.GramsPerLiter / 10,
        (StrengthPerVolume mass, "mgL") => mass.Concentration.MilligramsPerLiter,
        (StrengthPerVolume mass, "lb100gal") => mass.Concentration.As(MassConcentrationUnit.PoundPerUSGallon) * 100,
        _ => throw new FormatException($"'{inputs}' asks for a figure that {strength} does not have."),
    };

    private static double Amount(Inputs inputs, RecipeBatch batch)
    {
        bool high = inputs.Has("end") && inputs["end"] == "high";
        return batch.Amounts[inputs.Has("dose") ? (int)inputs.Number("dose") - 1 : 0] switch
        {
            VolumeAmount amount => In(inputs, high ? amount.High : amount.Low),
            MassAmount amount => In(inputs, high ? amount.High : amount.Low),
            _ => throw new FormatException($"'{inputs}' asks for an amount that is neither a volume nor a mass."),
        };
    }
}
