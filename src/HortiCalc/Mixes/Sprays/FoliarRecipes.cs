using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Mild mixes for leaves, at the rates their sources print.</summary>
/// <remarks>A home-made spray has no label, and in some places may not be used on plants at all: local rules decide.</remarks>
public static class FoliarRecipes
{
    /// <summary>Insecticidal soap of 2 % by volume. Colorado State University Extension.</summary>
    public static MixRecipe SoapColorado { get; } = new(
        "foliar.soap-colorado",
        "insecticidal soap, 2 % (Colorado State)",
        [MixUse.Foliage],
        DoseBasis.FinishedMix,
        [Dose(MixIngredients.LiquidSoap, VolumeConcentration.FromPercent(2))],
        null,
        RinseAdvice.NotStated,
        MixSources.ColoradoSoap,
        MixCautions.Foliar);

    /// <summary>2.5 US tablespoons each of dish soap and vegetable oil to a US gallon of warm water. Lee County, Florida.</summary>
    public static MixRecipe SoapAndOilLeeCounty { get; } = new(
        "foliar.soap-and-oil-lee-county",
        "soap and oil, 2.5 tablespoons each to a gallon (Lee County)",
        [MixUse.Foliage],
        DoseBasis.Water,
        [
            Dose(MixIngredients.LiquidSoap, PerGallon(Volume.FromUsTablespoons(2.5))),
            Dose(MixIngredients.VegetableOil, PerGallon(Volume.FromUsTablespoons(2.5))),
        ],
        null,
        RinseAdvice.NotStated,
        MixSources.LeeCountySoap,
        MixCautions.Oil);

    /// <summary>Horticultural oil of 2 to 4 % on dormant plants. Rutgers Plant &amp; Pest Advisory.</summary>
    public static MixRecipe DormantOilRutgers { get; } = new(
        "foliar.dormant-oil-rutgers",
        "horticultural oil on dormant plants, 2 to 4 % (Rutgers)",
        [MixUse.Foliage],
        DoseBasis.FinishedMix,
        [new VolumeDose(MixIngredients.HorticulturalOil, VolumeConcentration.FromPercent(2), VolumeConcentration.FromPercent(4))],
        null,
        RinseAdvice.NotStated,
        MixSources.RutgersOil,
        MixCautions.Oil);

    /// <summary>Horticultural oil of 1 to 2 % by volume in the growing season. Custom of fruit growers.</summary>
    public static MixRecipe SummerOilFruitGrowers { get; } = new(
        "foliar.summer-oil-fruit-growers",
        "horticultural oil in leaf, 1 to 2 % (fruit growers)",
        [MixUse.Foliage],
        DoseBasis.FinishedMix,
        [new VolumeDose(MixIngredients.HorticulturalOil, VolumeConcentration.FromPercent(1), VolumeConcentration.FromPercent(2))],
        null,
        RinseAdvice.NotStated,
        MixSources.FruitGrowersOil,
        MixCautions.Oil);

    /// <summary>An ounce of baking soda to a US gallon of water, after Hottes (1933). NCAT/ATTRA.</summary>
    public static MixRecipe BakingSodaHottes { get; } = OfBakingSoda(
        "foliar.baking-soda-hottes", "baking soda, 1 oz to a gallon (Hottes 1933)", Mass.FromOunces(1));

    /// <summary>A quarter of an ounce of baking soda to a US gallon of water, weekly, after trials in Japan (1985). NCAT/ATTRA.</summary>
    public static MixRecipe BakingSodaJapan { get; } = OfBakingSoda(
        "foliar.baking-soda-japan", "baking soda, 1/4 oz to a gallon, weekly (Japan 1985)", Mass.FromOunces(0.25));

    /// <summary>A level US teaspoon of baking soda to a US quart of water, about 5 mL in 0.95 L. Common practice.</summary>
    public static MixRecipe BakingSodaTeaspoon { get; } = new(
        "foliar.baking-soda-teaspoon",
        "baking soda, a teaspoon to a quart (common practice)",
        [MixUse.Foliage],
        DoseBasis.Water,
        [new SpoonDose(MixIngredients.BakingSoda, Dilution.RateOf(Volume.FromUsTeaspoons(1), Volume.FromUsQuarts(1)))],
        null,
        RinseAdvice.NotStated,
        MixSources.Custom,
        [.. MixCautions.Foliar, MixCautions.SpoonVaries]);

    /// <summary>Bordeaux 10-10-100: 10 lb of copper sulfate and 10 lb of hydrated lime in 100 US gallons. University of California text.</summary>
    public static MixRecipe BordeauxCalifornia { get; } = Bordeaux(
        "foliar.bordeaux-california", "Bordeaux 10-10-100 (California)", Mass.FromPounds(10), Mass.FromPounds(10), Volume.FromUsGallons(100), SpraySources.CaliforniaBordeaux);

    /// <summary>Bordeaux 5-5-50 of fruit growers: 5 lb of each in 50 US gallons.</summary>
    public static MixRecipe BordeauxFruit { get; } = Bordeaux(
        "foliar.bordeaux-5-5-50", "Bordeaux 5-5-50 (Manual of Fruit Diseases)", Mass.FromPounds(5), Mass.FromPounds(5), Volume.FromUsGallons(50), SpraySources.FruitDiseases);

    /// <summary>Bordeaux 3-3-50, the weaker one: 3 lb of each in 50 US gallons.</summary>
    public static MixRecipe BordeauxFruitWeaker { get; } = Bordeaux(
        "foliar.bordeaux-3-3-50", "Bordeaux 3-3-50 (Manual of Fruit Diseases)", Mass.FromPounds(3), Mass.FromPounds(3), Volume.FromUsGallons(50), SpraySources.FruitDiseases);

    /// <summary>Bordeaux of 1 %: 100 g of copper sulfate and 100 g of slaked lime in 10 L. Common practice in Australia.</summary>
    public static MixRecipe BordeauxOnePercent { get; } = Bordeaux(
        "foliar.bordeaux-one-percent", "Bordeaux of 1 % (common practice)", Mass.FromGrams(100), Mass.FromGrams(100), Volume.FromLiters(10), SpraySources.AustralianBordeaux);

    /// <summary>Bordeaux by level tablespoons of 15 mL: 3½ of copper sulfate and 10 of hydrated lime to 4 L. Common practice in New Zealand.</summary>
    public static MixRecipe BordeauxBySpoons { get; } = new(
        "foliar.bordeaux-by-spoons",
        "Bordeaux by spoons (common practice)",
        [MixUse.Foliage],
        DoseBasis.Water,
        [
            new SpoonDose(MixIngredients.CopperSulfate, Dilution.RateOf(Volume.FromMilliliters(3.5 * 15), Volume.FromLiters(4))),
            new SpoonDose(MixIngredients.HydratedLime, Dilution.RateOf(Volume.FromMilliliters(10 * 15), Volume.FromLiters(4))),
        ],
        null,
        RinseAdvice.NotStated,
        SpraySources.BordeauxBySpoons,
        [.. MixCautions.Foliar, MixCautions.LimeBurns, MixCautions.CopperStays, MixCautions.SpoonVaries]);

    /// <summary>Two US tablespoons of castile soap to a US gallon. Common practice.</summary>
    public static MixRecipe CastileSoap { get; } = Single(
        "foliar.castile-soap", "castile soap, 2 tablespoons to a gallon (common practice)", MixIngredients.LiquidSoap, PerGallon(Volume.FromUsTablespoons(2)), MixCautions.Foliar, SpraySources.Castile);

    /// <summary>A US teaspoon of neem oil to a US quart, half a per cent. Common practice.</summary>
    public static MixRecipe NeemTeaspoon { get; } = Single(
        "foliar.neem-teaspoon", "neem oil, a teaspoon to a quart (common practice)", MixIngredients.NeemOil, Dilution.RateOf(Volume.FromUsTeaspoons(1), Volume.FromUsQuarts(1)), MixCautions.Oil, SpraySources.NeemTeaspoon);

    /// <summary>A US fluid ounce of neem oil to a US gallon. Common practice.</summary>
    public static MixRecipe NeemOunce { get; } = Single(
        "foliar.neem-ounce", "neem oil, an ounce to a gallon (common practice)", MixIngredients.NeemOil, PerGallon(Volume.FromUsOunces(1)), MixCautions.Oil, SpraySources.NeemOunce);

    /// <summary>A tablespoon each of baking soda and vegetable oil and half of soap to 4 L of water. OISAT, common practice.</summary>
    public static MixRecipe BakingSodaOisat { get; } = new(
        "foliar.baking-soda-oisat",
        "baking soda, oil and soap to 4 L (OISAT)",
        [MixUse.Foliage],
        DoseBasis.Water,
        [
            new SpoonDose(MixIngredients.BakingSoda, Dilution.RateOf(Volume.FromMilliliters(15), Volume.FromLiters(4))),
            Dose(MixIngredients.VegetableOil, Dilution.RateOf(Volume.FromMilliliters(15), Volume.FromLiters(4))),
            Dose(MixIngredients.LiquidSoap, Dilution.RateOf(Volume.FromMilliliters(7.5), Volume.FromLiters(4))),
        ],
        null,
        RinseAdvice.NotStated,
        SpraySources.Oisat,
        [.. MixCautions.Oil, MixCautions.SpoonVaries]);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<MixRecipe> All { get; } = ValueList<MixRecipe>.Of(
    [
        SoapColorado,
        SoapAndOilLeeCounty,
        DormantOilRutgers,
        SummerOilFruitGrowers,
        BakingSodaHottes,
        BakingSodaJapan,
        BakingSodaTeaspoon,
        BakingSodaOisat,
        CastileSoap,
        NeemTeaspoon,
        NeemOunce,
        BordeauxCalifornia,
        BordeauxFruit,
        BordeauxFruitWeaker,
        BordeauxOnePercent,
        BordeauxBySpoons,
    ]);

    private static MixRecipe Bordeaux(string key, string name, Mass copperSulfate, Mass lime, Volume total, Source source) => new(
        key,
        name,
        [MixUse.Foliage],
        DoseBasis.FinishedMix,
        [
            new MassDose(MixIngredients.CopperSulfate, Dilution.RateOf(copperSulfate, total), Dilution.RateOf(copperSulfate, total)),
            new MassDose(MixIngredients.HydratedLime, Dilution.RateOf(lime, total), Dilution.RateOf(lime, total)),
        ],
        null,
        RinseAdvice.NotStated,
        source,
        [.. MixCautions.Foliar, MixCautions.LimeBurns, MixCautions.CopperStays]);

    private static MixRecipe Single(
        string key, string name, MixIngredient ingredient, VolumeConcentration rate, IReadOnlyList<Caution> cautions, Source source) => new(
            key, name, [MixUse.Foliage], DoseBasis.Water, [Dose(ingredient, rate)], null, RinseAdvice.NotStated, source, cautions);

    private static MixRecipe OfBakingSoda(string key, string name, Mass perGallon)
    {
        MassConcentration rate = Dilution.RateOf(perGallon, Volume.FromUsGallons(1));
        return new MixRecipe(
            key,
            name,
            [MixUse.Foliage],
            DoseBasis.Water,
            [new MassDose(MixIngredients.BakingSoda, rate, rate)],
            null,
            RinseAdvice.NotStated,
            MixSources.BakingSoda,
            MixCautions.Foliar);
    }

    private static VolumeDose Dose(MixIngredient ingredient, VolumeConcentration rate) => new(ingredient, rate, rate);

    private static VolumeConcentration PerGallon(Volume product) => Dilution.RateOf(product, Volume.FromUsGallons(1));
}
