using System.Globalization;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Reference;

/// <summary>Soil tests, oxides, products, choices of products, and the nitrogen of manures and composts.</summary>
internal static class NutrientCalculations
{
    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["ion-mg-kg"] = inputs => Ion.FromKey(inputs["ion"]).Mass(ExchangeableCharge.FromMilliequivalentsPer100Grams(inputs.Number("meq_100g"))).MilligramsPerKilogram,
        ["furrow-slice-lb-acre"] = inputs =>
            (SoilLayer.FurrowSlice.PerArea(MassFraction.FromPartsPerMillion(inputs.Number("ppm"))) * Area.FromAcres(1)).Pounds,
        ["layer-mass"] = inputs => (new SoilLayer(
            Length.FromCentimeters(inputs.Number("depth_cm")),
            Density.FromGramsPerCubicCentimeter(inputs.Number("bulk_density_g_cm3"))).Soil * Area.FromSquareMeters(inputs.Number("area_m2"))).Kilograms,
        ["cation-lb-acre"] = inputs => Charge(Ion.FromKey(inputs["ion"]), inputs.Number("lb_acre")).CentimolesPerKilogram,
        ["cec-sum"] = inputs => Cations(inputs).Capacity.CentimolesPerKilogram,
        ["cec-bases"] = inputs => Cations(inputs).Bases.CentimolesPerKilogram,
        ["cec-base-saturation"] = inputs => Cations(inputs).BaseSaturation.Percent,
        ["oxide-factor"] = OxideFactor,
        ["oxide-factor-printed"] = OxideFactor,
        ["oxide-element"] = inputs =>
            OxideFactors.MolarMass.ToElement(Enum.Parse<Oxide>(inputs["oxide"]), MassFraction.FromPercent(inputs.Number("percent"))).Percent,
        ["fertilizer-content"] = inputs => Content(Fertilizers.Named(inputs["product"]), inputs["as"]),
        ["salt-index"] = inputs => SaltIndexes.Of(inputs["material"]).Single(row => row.Source.Key == inputs["source"]).Value,
        ["small-area-lb"] = inputs => SmallArea(inputs).Pounds,
        ["small-area-oz"] = inputs => SmallArea(inputs).Ounces,
        ["product-rate"] = inputs => Rate(inputs) is AreaDensity rate ? (rate * Area.FromSquareFeet(1000)).Pounds : 0,
        ["product-total"] = inputs => (Rate(inputs) * Area.FromSquareFeet(inputs.Number("area_ft2"))).Pounds,
        ["product-mass"] = inputs => Product(inputs).For(Nutrient.Nitrogen, Mass.FromPounds(inputs.Number("n_lb"))).Pounds,
        ["plan-met"] = inputs => Fertilizing.CanMeet(Needs(inputs), Offers(inputs)) ? "yes" : "no",
        ["plan-cost"] = inputs => (double)Fertilizing.Plan(Needs(inputs), Offers(inputs), FertilizerGoal.LeastCost).Cost(Area.FromSquareMeters(1000))!.Value,
        ["plan-excess"] = inputs => Given(inputs, FertilizerGoal.LeastExcess).Sum(share => share - 1),
        ["plan-distance"] = inputs => Given(inputs, FertilizerGoal.Closest).Sum(share => (share - 1) * (share - 1)),
        ["manure-share"] = inputs => OrganicNitrogen.ManureShare(
            Enum.Parse<ManureHandling>(inputs["handling"]), Enum.Parse<ManureSeason>(inputs["season"]), inputs["sandy"] == "yes").Value.Percent,
        ["manure-content"] = inputs => OrganicNitrogen.ManureContent(Enum.Parse<FarmyardManure>(inputs["manure"])).Value.GramsPerKilogram,
        ["manure-available"] = inputs =>
            OrganicNitrogen.ManureReadilyAvailable(Enum.Parse<FarmyardManure>(inputs["manure"]), inputs["fresh"] == "yes").Value.GramsPerKilogram,
        ["manure-release"] = inputs => OrganicNitrogen.OrganicReleased(
            Enum.Parse<ManureAnimal>(inputs["animal"]), Ratio.FromPercent(inputs.Number("dry_matter_percent")), (int)inputs.Number("years_ago")).Value.Percent,
        ["nitrogen-release"] = inputs => NitrogenReleases.All.Single(row =>
            row.Material == inputs["material"] && row.Pool == Enum.Parse<NitrogenPool>(inputs["pool"]) && row.Time.Days == inputs.Number("days")).Share.Percent,
        ["nitrogen-potential"] = inputs => Kinetics(inputs).Potential.MilligramsPerKilogram,
        ["nitrogen-rate"] = inputs => 1 / Kinetics(inputs).TimeConstant.Days,
        ["nitrogen-effect"] = inputs => OrganicNitrogen.Effect(inputs.Number("c_to_n")).Value.ToString(),
        ["saturation-ppm"] = inputs => Ion.FromKey(inputs["ion"]).Mass(
            ExchangeableCharge.FromMilliequivalentsPer100Grams(inputs.Number("cec_meq_100g")) * (inputs.Number("percent") / 100)).MilligramsPerKilogram,
        ["cation-ppm"] = inputs => OfPpm(inputs).MilliequivalentsPer100Grams,
        ["cation-saturation"] = inputs => OfPpm(inputs) / ExchangeableCharge.FromMilliequivalentsPer100Grams(inputs.Number("cec_meq_100g")) * 100,
        ["salt-ion-share"] = inputs =>
        {
            MassFraction of = OfOneCharge(inputs["of"]);
            return of.MilligramsPerKilogram / (OfOneCharge(inputs["cation"]).MilligramsPerKilogram + OfOneCharge(inputs["anion"]).MilligramsPerKilogram) * 100;
        },
        ["salt-equivalent"] = inputs => SaltOfOneCharge(inputs["cation"], inputs["anion"]) / SaltOfOneCharge(inputs["of"], inputs["anion"]),
        ["product-kg"] = inputs => Product(inputs).For(Nutrient.Nitrogen, Mass.FromKilograms(inputs.Number("kg"))).Kilograms,
        ["product-gives-kg"] = inputs =>
            (Product(inputs).Gives(Nutrient.Nitrogen, Mass.FromKilograms(inputs.Number("product_kg")) / Area.FromHectares(1)) * Area.FromHectares(1)).Kilograms,
        ["manure-units"] = inputs =>
            (Product(inputs).Gives(Nutrient.Nitrogen, Mass.FromKilograms(inputs.Number("manure_kg")) / Area.FromHectares(1)) * Area.FromHectares(1)).Kilograms
            / inputs.Number("unit_kg"),
        ["plan-product"] = inputs => Blend(inputs).Lines.Single(line => line.Offer.Product.Name == inputs["product"]).Rate.KilogramsPerHectare,
        ["plan-nitrogen-of"] = inputs =>
        {
            FertilizerLine line = Blend(inputs).Lines.Single(one => one.Offer.Product.Name == inputs["product"]);
            return line.Offer.Product.Gives(Nutrient.Nitrogen, line.Rate).KilogramsPerHectare;
        },
        ["manure-share-ireland"] = inputs => OrganicNitrogen.ManureShare(
            ManureGuide.Ireland, ManureHandling.Surface, Enum.Parse<ManureSeason>(inputs["season"]), sandy: false).Value.Percent,
        ["nitrogen-to-add-percent"] = inputs => NitrogenToAdd(inputs).Percent,
        ["nitrogen-to-add-kg"] = inputs => NitrogenToAdd(inputs).DecimalFractions * inputs.Number("material_kg"),
    };

    private static Computed OxideFactor(Inputs inputs)
    {
        OxideFactors factors = OxideFactors.FromKey(inputs["factors"]);
        Oxide oxide = Enum.Parse<Oxide>(inputs["oxide"]);
        return inputs["direction"] == "element" ? factors.ElementPerOxide(oxide) : factors.OxidePerElement(oxide);
    }

    private static readonly Nutrient[] Major = [Nutrient.Nitrogen, Nutrient.Phosphorus, Nutrient.Potassium];

    private static ExchangeableCharge Charge(Ion ion, double poundsPerAcre) =>
        ion.Charge(SoilLayer.FurrowSlice.Content(Mass.FromPounds(poundsPerAcre) / Area.FromAcres(1)));

    private static ExchangeableCations Cations(Inputs inputs) => new(
        Charge(Ion.Calcium, inputs.Number("ca_lb_acre")),
        Charge(Ion.Magnesium, inputs.Number("mg_lb_acre")),
        Charge(Ion.Potassium, inputs.Number("k_lb_acre")),
        Charge(Ion.Sodium, inputs.Number("na_lb_acre")),
        ExchangeableCharge.FromMilliequivalentsPer100Grams(inputs.Number("acidity_meq_100g")));

    private static double Content(Fertilizer product, string counted) => counted switch
    {
        "P2O5" => OxideFactors.MolarMass.ToOxide(Oxide.Phosphate, product.Available(Nutrient.Phosphorus)).Percent,
        "K2O" => OxideFactors.MolarMass.ToOxide(Oxide.Potash, product.Available(Nutrient.Potassium)).Percent,
        _ => product.Available(counted switch
        {
            "N" => Nutrient.Nitrogen,
            "P" => Nutrient.Phosphorus,
            "K" => Nutrient.Potassium,
            "Ca" => Nutrient.Calcium,
            "Mg" => Nutrient.Magnesium,
            "S" => Nutrient.Sulfur,
            "Cl" => Nutrient.Chloride,
            "Fe" => Nutrient.Iron,
            "Mn" => Nutrient.Manganese,
            "Zn" => Nutrient.Zinc,
            _ => throw new FormatException($"'{counted}' is no nutrient."),
        }).Percent,
    };

    private static ExchangeableCharge OfPpm(Inputs inputs) => Ion.FromKey(inputs["ion"]).Charge(MassFraction.FromPartsPerMillion(inputs.Number("ppm")));

    private static MassFraction OfOneCharge(string ion) => Ion.FromKey(ion).Mass(ExchangeableCharge.FromCentimolesPerKilogram(1));

    private static double SaltOfOneCharge(string cation, string anion) => OfOneCharge(cation).MilligramsPerKilogram + OfOneCharge(anion).MilligramsPerKilogram;

    private static MassFraction NitrogenToAdd(Inputs inputs) => OrganicNitrogen.NitrogenToAdd(
        MassFraction.FromPercent(inputs.Number("carbon_percent")), MassFraction.FromPercent(inputs.Number("nitrogen_percent")), inputs.Number("c_to_n"));

    /// <summary>Needs as labels count them, N|P2O5|K2O in kg/ha, met exactly by products given as NAME:N-P2O5-K2O.</summary>
    private static FertilizerPlan Blend(Inputs inputs)
    {
        double[] needs = inputs.Numbers("n_p2o5_k2o_kg_ha");
        AreaDensity[] elements =
        [
            AreaDensity.FromKilogramsPerHectare(needs[0]),
            OxideFactors.MolarMass.ToElement(Oxide.Phosphate, AreaDensity.FromKilogramsPerHectare(needs[1])),
            OxideFactors.MolarMass.ToElement(Oxide.Potash, AreaDensity.FromKilogramsPerHectare(needs[2])),
        ];
        return Fertilizing.Plan(
            [.. Major.Zip(elements).Where(pair => pair.Second.KilogramsPerHectare > 0).Select(pair => NutrientNeed.WithSlack(pair.First, pair.Second, Ratio.Zero))],
            [.. inputs["products"].Split('|').Select(Offer)],
            FertilizerGoal.LeastExcess);
    }

    private static FertilizerOffer Offer(string nameAndGrade)
    {
        string[] parts = nameAndGrade.Split(':');
        MassFraction[] grade = [.. parts[1].Split('-').Select(text => MassFraction.FromPercent(double.Parse(text, CultureInfo.InvariantCulture)))];
        return new FertilizerOffer(Fertilizer.OfGrade(parts[0], grade[0], grade[1], grade[2]));
    }

    private static Mass SmallArea(Inputs inputs) => Mass.FromPounds(inputs.Number("lb_acre")) / Area.FromAcres(1) * Area.FromSquareFeet(inputs.Number("area_ft2"));

    private static Fertilizer Product(Inputs inputs) => new("product", [new NutrientContent(Nutrient.Nitrogen, MassFraction.FromPercent(inputs.Number("percent")))]);

    private static AreaDensity Rate(Inputs inputs) =>
        Product(inputs).For(Nutrient.Nitrogen, Mass.FromPounds(inputs.Number("n_lb_1000ft2")) / Area.FromSquareFeet(1000));

    private static NitrogenMineralization Kinetics(Inputs inputs) => NitrogenReleases.Kinetics.Single(fit => fit.Material == inputs["material"]);

    private static NutrientNeed[] Needs(Inputs inputs) =>
    [
        .. inputs.Numbers("need_g_m2").Select((grams, i) => NutrientNeed.WithSlack(
            Major[i], AreaDensity.FromGramsPerSquareMeter(grams), Ratio.FromPercent(inputs.Number("slack_percent")))),
    ];

    private static FertilizerOffer[] Offers(Inputs inputs) =>
    [
        .. inputs.Numbers("price_25kg").Select((price, j) => new FertilizerOffer(
            new Fertilizer(
                $"product {j}",
                [
                    .. inputs.Numbers($"product{j}_percent").Select((percent, i) => (Nutrient: Major[i], Percent: percent)).Where(part => part.Percent > 0)
                        .Select(part => new NutrientContent(part.Nutrient, MassFraction.FromPercent(part.Percent))),
                ]),
            Mass.FromKilograms(25),
            (decimal)price)),
    ];

    private static IEnumerable<double> Given(Inputs inputs, FertilizerGoal goal) => Fertilizing.Plan(Needs(inputs), Offers(inputs), goal).Supplies
        .Select(supply => supply.Given.GramsPerSquareMeter / supply.Need.Least.GramsPerSquareMeter);
}
