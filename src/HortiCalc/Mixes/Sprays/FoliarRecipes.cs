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
    ]);

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
