using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Mixes;

/// <summary>What must never meet: the published dangerous pairs, and the dangers in a list of ingredients.</summary>
/// <remarks>An empty answer means that none of these published pairs was found, not that a mix is safe: the labels decide.</remarks>
/// <example><code>
/// foreach (Danger danger in Hazards.Of(MixIngredients.HouseholdBleach, MixIngredients.Vinegar))
///     Console.WriteLine(danger);   // household bleach + vinegar: chlorine gas
/// </code></example>
public static class Hazards
{
    /// <summary>The published pairs.</summary>
    public static IReadOnlyList<DangerousPair> Pairs { get; } = ValueList<DangerousPair>.Of(
    [
        new DangerousPair(IngredientClass.Hypochlorite, IngredientClass.Acid, "chlorine gas", MixCautions.NeverWithAcid),
        new DangerousPair(IngredientClass.Hypochlorite, IngredientClass.Ammonia, "chloramine", MixCautions.NeverWithAmmonia),
        new DangerousPair(
            IngredientClass.Hypochlorite,
            IngredientClass.AmmoniumFertiliser,
            "free chlorine lost to combined chlorine",
            new Caution(
                "hazard.chlorine-and-ammonium-fertiliser",
                CautionLevel.Care,
                "Ammonium in feed turns free chlorine into combined chlorine, and the treatment fails.",
                MixSources.CombinedChlorine)),
        new DangerousPair(IngredientClass.Hypochlorite, IngredientClass.Alcohol, "chloroform", MixCautions.NeverWithAlcohol),
        new DangerousPair(
            IngredientClass.Hypochlorite, IngredientClass.CleanerOrDisinfectant, "harmful vapours", MixCautions.NeverWithOthers),
        new DangerousPair(
            IngredientClass.Hypochlorite,
            IngredientClass.Pesticide,
            "a reaction with some pesticides",
            MixCautions.NeverWithPesticides),
        new DangerousPair(
            IngredientClass.HydrogenPeroxide,
            IngredientClass.AceticAcid,
            "peracetic acid",
            MixCautions.PeroxideAndVinegar),
        new DangerousPair(
            IngredientClass.ConcentratedHydrogenPeroxide,
            IngredientClass.Pesticide,
            "a strong oxidiser on organic matter",
            MixCautions.ConcentratedPeroxide),
        new DangerousPair(
            IngredientClass.ConcentratedHydrogenPeroxide,
            IngredientClass.Fertiliser,
            "a strong oxidiser on organic matter",
            MixCautions.ConcentratedPeroxide),
        new DangerousPair(
            IngredientClass.Soap,
            IngredientClass.QuaternaryAmmonium,
            "the disinfectant is inactivated",
            MixCautions.SoapAndQuaternaryAmmonium),
        new DangerousPair(
            IngredientClass.LimeSulfur,
            IngredientClass.Acid,
            "hydrogen sulfide",
            new Caution(
                "hazard.lime-sulfur-and-acid",
                CautionLevel.Danger,
                "Lime sulfur and any acid give off hydrogen sulfide, a gas that kills and that the nose soon no longer smells.",
                MixSources.LimeSulfur)),
        new DangerousPair(IngredientClass.Oil, IngredientClass.Sulfur, "burnt leaves", MixCautions.OilAndSulfur),
        new DangerousPair(
            IngredientClass.AmmoniumFertiliser,
            IngredientClass.Alkali,
            "ammonia gas",
            new Caution(
                "hazard.ammonium-and-alkali",
                CautionLevel.Danger,
                "Ammonium fertilisers and lime or other alkalis give off ammonia gas, and the nitrogen is lost.",
                MixSources.FertiliserMixing)),
        new DangerousPair(
            IngredientClass.ConcentratedAcid,
            IngredientClass.Alkali,
            "violent heat",
            new Caution(
                "hazard.acid-and-alkali",
                CautionLevel.Danger,
                "A concentrated acid and lime or another alkali boil and spatter when they meet.",
                MixSources.AcidIntoWater)),
    ]);

    /// <summary>The published pairs of fertiliser salts that fall out of a concentrated stock; diluted as a feed they stay in solution.</summary>
    public static IReadOnlyList<DangerousPair> PairsInStock { get; } = ValueList<DangerousPair>.Of(
    [
        InStock(IngredientClass.CalciumFertiliser, IngredientClass.SulfateFertiliser, "gypsum", "calcium-and-sulfate", "Calcium and sulfate"),
        InStock(IngredientClass.CalciumFertiliser, IngredientClass.PhosphateFertiliser, "calcium phosphate", "calcium-and-phosphate", "Calcium and phosphate"),
        InStock(
            IngredientClass.MagnesiumFertiliser, IngredientClass.AmmoniumPhosphate, "magnesium phosphate", "magnesium-and-phosphate", "Magnesium and ammonium phosphate"),
        InStock(IngredientClass.AmmoniumSulfate, IngredientClass.PotassiumFertiliser, "potassium sulfate", "ammonium-sulfate-and-potassium", "Ammonium sulfate and potassium salts"),
        InStock(IngredientClass.PhosphateFertiliser, IngredientClass.IronFertiliser, "iron phosphate", "phosphate-and-iron", "Phosphate and iron"),
    ]);

    /// <summary>Pouring water into an acid is a danger that no list of ingredients shows.</summary>
    public static Caution AcidIntoWater { get; } = new(
        "hazard.acid-into-water",
        CautionLevel.Danger,
        "Add acid to water, never water to acid: it boils and spatters.",
        MixSources.AcidIntoWater);

    /// <summary>Every danger in a list of ingredients.</summary>
    /// <param name="ingredients">The ingredients, in any order; repeats do not matter.</param>
    /// <returns>All dangers, the same for every order of the ingredients; empty where no published pair was found.</returns>
    /// <exception cref="ArgumentNullException">The list is <see langword="null"/>.</exception>
    public static IReadOnlyList<Danger> Of(params IEnumerable<MixIngredient> ingredients) => Among(ingredients, Pairs);

    /// <summary>Every danger in a list of ingredients of one concentrated stock, fertiliser salts that fall out included.</summary>
    /// <param name="ingredients">The ingredients, in any order; repeats do not matter.</param>
    /// <returns>All dangers, the same for every order of the ingredients; empty where no published pair was found.</returns>
    /// <exception cref="ArgumentNullException">The list is <see langword="null"/>.</exception>
    public static IReadOnlyList<Danger> OfStock(params IEnumerable<MixIngredient> ingredients) => Among(ingredients, [.. Pairs, .. PairsInStock]);

    private static ValueList<Danger> Among(IEnumerable<MixIngredient> ingredients, IReadOnlyList<DangerousPair> pairs)
    {
        MixIngredient[] sorted = [.. Guard.NotNull(ingredients).Distinct().OrderBy(ingredient => ingredient.Key, StringComparer.Ordinal)];
        List<Danger> dangers = [];
        for (int one = 0; one < sorted.Length; one++)
        {
            for (int other = one + 1; other < sorted.Length; other++)
            {
                dangers.AddRange(pairs
                    .Where(pair => pair.Joins(sorted[one], sorted[other]))
                    .Select(pair => new Danger(sorted[one], sorted[other], pair)));
            }
        }

        return ValueList<Danger>.Of(dangers);
    }

    private static DangerousPair InStock(IngredientClass first, IngredientClass second, string solid, string code, string subject) => new(
        first,
        second,
        solid,
        new Caution(
            "stock." + code,
            CautionLevel.Care,
            $"{subject} in one stock tank make {solid}, which falls out and blocks the lines: keep them in two tanks.",
            MixSources.StockCompatibility));
}
