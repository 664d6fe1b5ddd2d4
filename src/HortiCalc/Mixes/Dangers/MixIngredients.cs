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
        "calcium-hypochlorite", "calcium hypochlorite", IngredientClass.Hypochlorite);

    /// <summary>Vinegar.</summary>
    public static MixIngredient Vinegar { get; } = new("vinegar", "vinegar", IngredientClass.Acid, IngredientClass.AceticAcid);

    /// <summary>Citric acid.</summary>
    public static MixIngredient CitricAcid { get; } = new("citric-acid", "citric acid", IngredientClass.Acid);

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
    public static MixIngredient HorticulturalOil { get; } = new("horticultural-oil", "horticultural oil", IngredientClass.Oil);

    /// <summary>Vegetable oil from the kitchen.</summary>
    public static MixIngredient VegetableOil { get; } = new("vegetable-oil", "vegetable oil", IngredientClass.Oil);

    /// <summary>Wettable sulfur.</summary>
    public static MixIngredient WettableSulfur { get; } = new(
        "wettable-sulfur", "wettable sulfur", IngredientClass.Sulfur, IngredientClass.Pesticide);

    /// <summary>Lime sulfur: calcium polysulfide in water.</summary>
    public static MixIngredient LimeSulfur { get; } = new(
        "lime-sulfur", "lime sulfur", IngredientClass.Sulfur, IngredientClass.LimeSulfur, IngredientClass.Pesticide);

    /// <summary>Baking soda, sodium bicarbonate.</summary>
    public static MixIngredient BakingSoda { get; } = new("baking-soda", "baking soda (sodium bicarbonate)", IngredientClass.Bicarbonate);
}
