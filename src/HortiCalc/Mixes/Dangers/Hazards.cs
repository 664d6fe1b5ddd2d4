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
            IngredientClass.DryHypochlorite,
            IngredientClass.ChlorinatedIsocyanurate,
            "fire or explosion",
            new Caution(
                "hazard.two-pool-chlorines",
                CautionLevel.Danger,
                "Calcium hypochlorite and pool chlorine of isocyanurates (trichlor, dichlor) burn or explode together, all the more when damp: "
                + "never in one scoop, bucket or store.",
                MixSources.PoolChlorine)),
        new DangerousPair(
            IngredientClass.DryHypochlorite,
            IngredientClass.Oil,
            "fire",
            new Caution(
                "hazard.dry-chlorine-and-oil",
                CautionLevel.Danger,
                "Dry calcium hypochlorite sets oil and grease on fire: keep it from sprayers, rags and hands that hold any.",
                MixSources.PoolChlorine)),
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
        new DangerousPair(IngredientClass.LimeSulfur, IngredientClass.Acid, "hydrogen sulfide", MixCautions.LimeSulfurNeverWithAcid),
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

    /// <summary>Refuses a list in which a danger was found, with every one and its reason.</summary>
    internal static void Refuse(IReadOnlyList<Danger> dangers, string parameter)
    {
        if (dangers.Count > 0)
        {
            string reasons = string.Join(" ", dangers.Select(danger => $"{danger}. {danger.Pair.Caution.Sentence}").Distinct());
            throw new ArgumentException($"{parameter} held what must not meet; allowed: ingredients that may. {reasons}", parameter);
        }
    }

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
