using HortiCalc.Evidence;

namespace HortiCalc.Mixes;

/// <summary>Common ingredients with their classes. Make your own <see cref="MixIngredient"/> for a product, from its label.</summary>
public static class MixIngredients
{
    /// <summary>Water.</summary>
    public static MixIngredient Water { get; } = new("water", "water");

    /// <summary>Household bleach: sodium hypochlorite in water.</summary>
    public static MixIngredient HouseholdBleach { get; } = new("bleach", "household bleach", IngredientClass.Hypochlorite);

    /// <summary>Calcium hypochlorite, as powder or granules.</summary>
    public static MixIngredient CalciumHypochlorite { get; } = new(
        "calcium-hypochlorite", "calcium hypochlorite", IngredientClass.Hypochlorite, IngredientClass.DryHypochlorite);

    /// <summary>Pool chlorine of isocyanurates: trichlor tablets, dichlor granules.</summary>
    public static MixIngredient PoolChlorine { get; } = new(
        "pool-chlorine",
        "pool chlorine (trichlor, dichlor)",
        IngredientClass.Hypochlorite,
        IngredientClass.ChlorinatedIsocyanurate);

    /// <summary>Vinegar.</summary>
    public static MixIngredient Vinegar { get; } = new("vinegar", "vinegar", IngredientClass.Acid, IngredientClass.AceticAcid);

    /// <summary>Citric acid.</summary>
    public static MixIngredient CitricAcid { get; } = new("citric-acid", "citric acid", IngredientClass.Acid);

    /// <summary>Sulfuric acid as a concentrate, battery acid among it; for licensed or trained users only.</summary>
    public static MixIngredient SulfuricAcid { get; } = new(
        "sulfuric-acid",
        "sulfuric acid",
        IngredientClass.Acid,
        IngredientClass.ConcentratedAcid,
        IngredientClass.SulfateFertiliser);

    /// <summary>Nitric acid as a concentrate.</summary>
    public static MixIngredient NitricAcid { get; } = new(
        "nitric-acid", "nitric acid", IngredientClass.Acid, IngredientClass.ConcentratedAcid, IngredientClass.Fertiliser);

    /// <summary>Phosphoric acid as a concentrate.</summary>
    public static MixIngredient PhosphoricAcid { get; } = new(
        "phosphoric-acid",
        "phosphoric acid",
        IngredientClass.Acid,
        IngredientClass.ConcentratedAcid,
        IngredientClass.PhosphateFertiliser,
        IngredientClass.Fertiliser);

    /// <summary>Ammonia, as in window cleaners.</summary>
    public static MixIngredient Ammonia { get; } = new(
        "ammonia", "ammonia", IngredientClass.Ammonia, IngredientClass.CleanerOrDisinfectant);

    /// <summary>A fertiliser that holds ammonium.</summary>
    public static MixIngredient AmmoniumFertiliser { get; } = new(
        "ammonium-fertiliser",
        "ammonium fertiliser",
        IngredientClass.Ammonia,
        IngredientClass.AmmoniumFertiliser,
        IngredientClass.Fertiliser);

    /// <summary>Rubbing alcohol.</summary>
    public static MixIngredient RubbingAlcohol { get; } = new(
        "rubbing-alcohol", "rubbing alcohol", IngredientClass.Alcohol, IngredientClass.CleanerOrDisinfectant);

    /// <summary>Hydrogen peroxide of household strength.</summary>
    public static MixIngredient HydrogenPeroxide { get; } = new(
        "hydrogen-peroxide", "hydrogen peroxide", IngredientClass.HydrogenPeroxide, IngredientClass.CleanerOrDisinfectant);

    /// <summary>A concentrate of hydrogen peroxide.</summary>
    public static MixIngredient ConcentratedHydrogenPeroxide { get; } = new(
        "concentrated-hydrogen-peroxide",
        "concentrated hydrogen peroxide",
        IngredientClass.HydrogenPeroxide,
        IngredientClass.ConcentratedHydrogenPeroxide,
        IngredientClass.CleanerOrDisinfectant);

    /// <summary>A quaternary ammonium disinfectant.</summary>
    public static MixIngredient QuaternaryAmmonium { get; } = new(
        "quaternary-ammonium",
        "quaternary ammonium disinfectant",
        IngredientClass.QuaternaryAmmonium,
        IngredientClass.CleanerOrDisinfectant);

    /// <summary>Liquid soap, insecticidal or plain.</summary>
    public static MixIngredient LiquidSoap { get; } = new(
        "liquid-soap", "liquid soap", IngredientClass.Soap, IngredientClass.CleanerOrDisinfectant);

    /// <summary>Horticultural oil.</summary>
    public static MixIngredient HorticulturalOil { get; } = new(
        "horticultural-oil", "horticultural oil", IngredientClass.Oil, IngredientClass.Pesticide);

    /// <summary>Vegetable oil from the kitchen.</summary>
    public static MixIngredient VegetableOil { get; } = new("vegetable-oil", "vegetable oil", IngredientClass.Oil);

    /// <summary>Wettable sulfur.</summary>
    public static MixIngredient WettableSulfur { get; } = new(
        "wettable-sulfur", "wettable sulfur", IngredientClass.Sulfur, IngredientClass.Pesticide);

    /// <summary>Lime sulfur: calcium polysulfide in water.</summary>
    public static MixIngredient LimeSulfur { get; } = new(
        "lime-sulfur", "lime sulfur", IngredientClass.Sulfur, IngredientClass.LimeSulfur, IngredientClass.Pesticide);

    /// <summary>Baking soda, sodium bicarbonate.</summary>
    public static MixIngredient BakingSoda { get; } = new("baking-soda", "baking soda (sodium bicarbonate)");

    /// <summary>Peracetic acid with hydrogen peroxide, as sold for washing produce and surfaces.</summary>
    public static MixIngredient PeraceticAcid { get; } = new(
        "peracetic-acid",
        "peracetic acid",
        IngredientClass.Acid,
        IngredientClass.HydrogenPeroxide,
        IngredientClass.CleanerOrDisinfectant);

    /// <summary>Copper sulfate, bluestone.</summary>
    public static MixIngredient CopperSulfate { get; } = new(
        "copper-sulfate", "copper sulfate (bluestone)", IngredientClass.Pesticide);

    /// <summary>Hydrated lime, calcium hydroxide.</summary>
    public static MixIngredient HydratedLime { get; } = new("hydrated-lime", "hydrated lime", IngredientClass.Alkali);

    /// <summary>A neem oil product.</summary>
    public static MixIngredient NeemOil { get; } = new("neem-oil", "neem oil", IngredientClass.Oil, IngredientClass.Pesticide);

    /// <summary>Calcium nitrate.</summary>
    public static MixIngredient CalciumNitrate { get; } = new(
        "calcium-nitrate", "calcium nitrate", IngredientClass.CalciumFertiliser, IngredientClass.Fertiliser);

    /// <summary>Magnesium sulfate, Epsom salt.</summary>
    public static MixIngredient MagnesiumSulfate { get; } = new(
        "magnesium-sulfate",
        "magnesium sulfate (Epsom salt)",
        IngredientClass.MagnesiumFertiliser,
        IngredientClass.SulfateFertiliser,
        IngredientClass.Fertiliser);

    /// <summary>Potassium sulfate.</summary>
    public static MixIngredient PotassiumSulfate { get; } = new(
        "potassium-sulfate",
        "potassium sulfate",
        IngredientClass.PotassiumFertiliser,
        IngredientClass.SulfateFertiliser,
        IngredientClass.Fertiliser);

    /// <summary>Potassium nitrate.</summary>
    public static MixIngredient PotassiumNitrate { get; } = new(
        "potassium-nitrate", "potassium nitrate", IngredientClass.PotassiumFertiliser, IngredientClass.Fertiliser);

    /// <summary>Monopotassium phosphate.</summary>
    public static MixIngredient MonopotassiumPhosphate { get; } = new(
        "monopotassium-phosphate",
        "monopotassium phosphate",
        IngredientClass.PotassiumFertiliser,
        IngredientClass.PhosphateFertiliser,
        IngredientClass.Fertiliser);

    /// <summary>Monoammonium phosphate.</summary>
    public static MixIngredient MonoammoniumPhosphate { get; } = new(
        "monoammonium-phosphate",
        "monoammonium phosphate",
        IngredientClass.Ammonia,
        IngredientClass.AmmoniumFertiliser,
        IngredientClass.PhosphateFertiliser,
        IngredientClass.AmmoniumPhosphate,
        IngredientClass.Fertiliser);

    /// <summary>Ammonium sulfate.</summary>
    public static MixIngredient AmmoniumSulfate { get; } = new(
        "ammonium-sulfate",
        "ammonium sulfate",
        IngredientClass.Ammonia,
        IngredientClass.AmmoniumFertiliser,
        IngredientClass.AmmoniumSulfate,
        IngredientClass.SulfateFertiliser,
        IngredientClass.Fertiliser);

    /// <summary>Iron sulfate.</summary>
    public static MixIngredient IronSulfate { get; } = new(
        "iron-sulfate", "iron sulfate", IngredientClass.IronFertiliser, IngredientClass.SulfateFertiliser, IngredientClass.Fertiliser);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<MixIngredient> All { get; } = ValueList<MixIngredient>.Of(
    [
        Water,
        HouseholdBleach,
        CalciumHypochlorite,
        PoolChlorine,
        Vinegar,
        CitricAcid,
        SulfuricAcid,
        NitricAcid,
        PhosphoricAcid,
        Ammonia,
        AmmoniumFertiliser,
        RubbingAlcohol,
        HydrogenPeroxide,
        ConcentratedHydrogenPeroxide,
        QuaternaryAmmonium,
        LiquidSoap,
        HorticulturalOil,
        VegetableOil,
        WettableSulfur,
        LimeSulfur,
        BakingSoda,
        PeraceticAcid,
        CopperSulfate,
        HydratedLime,
        NeemOil,
        CalciumNitrate,
        MagnesiumSulfate,
        PotassiumSulfate,
        PotassiumNitrate,
        MonopotassiumPhosphate,
        MonoammoniumPhosphate,
        AmmoniumSulfate,
        IronSulfate,
    ]);
}
