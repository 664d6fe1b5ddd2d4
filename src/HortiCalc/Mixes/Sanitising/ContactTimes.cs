using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Published levels and contact times: pots, tools, benches, food surfaces, seed and the irrigation line.</summary>
/// <remarks>
/// Chlorine levels are free or available chlorine; peroxide by per cent is taken as grams in 100 mL, as bottles of 3 % are labelled (30 mg/mL).
/// A time belongs to its own level and was often taken on clean things in the laboratory. Clean first: soil and plant remains use the disinfectant up. On seed, chlorine reaches only
/// what sits on the coat (Ohio State HYG-5818). The label decides wherever there is one.
/// </remarks>
/// <example><code>
/// foreach (ContactRecord record in ContactTimes.For(MixUse.IrrigationLine))
///     Console.WriteLine($"{record.Name}: {record.Low} [{record.Source}]");
/// </code></example>
public static class ContactTimes
{
    /// <summary>All records.</summary>
    public static IReadOnlyList<ContactRecord> All { get; } = ValueList<ContactRecord>.Of(
    [
        Chlorine("pots-umass", "pots and benches, one part of 5.25 % bleach to nine", MixUse.Pots, 5250, 30, RinseAdvice.Rinse, MixSources.UniversityOfMassachusetts),
        Chlorine("tools-phytosphere", "clean tools and benches, 0.525 %", MixUse.Tools, 5250, 1, RinseAdvice.NotStated, MixSources.Phytosphere),
        Chlorine("benches-who-wiping", "clean surfaces, wiped", MixUse.Benches, 500, 10, RinseAdvice.NotStated, MixSources.WorldHealthOrganization),
        Chlorine("tools-who-immersion", "clean things, soaked", MixUse.Tools, 500, 30, RinseAdvice.NotStated, MixSources.WorldHealthOrganization),
        Chlorine("line-phytophthora-infestans", "Phytophthora infestans in water", MixUse.IrrigationLine, 1, 3, RinseAdvice.NotStated, SanitisingSources.FivePathogens),
        Chlorine("line-phytophthora-cactorum", "Phytophthora cactorum in water", MixUse.IrrigationLine, 0.3, 6, RinseAdvice.NotStated, SanitisingSources.FivePathogens),
        Chlorine("line-pythium-aphanidermatum", "Pythium aphanidermatum in water", MixUse.IrrigationLine, 2, 3, RinseAdvice.NotStated, SanitisingSources.FivePathogens),
        Chlorine("line-fusarium-oxysporum", "Fusarium oxysporum in water", MixUse.IrrigationLine, 14, 6, RinseAdvice.NotStated, SanitisingSources.FivePathogens),
        Chlorine("line-rhizoctonia-solani", "Rhizoctonia solani in water", MixUse.IrrigationLine, 12, 10, RinseAdvice.NotStated, SanitisingSources.FivePathogens),
        Chlorine("line-phytophthora-zoospores", "zoospores of seven kinds of Phytophthora in water", MixUse.IrrigationLine, 2, 2, RinseAdvice.NotStated, SanitisingSources.Phytophthora),
        Chlorine("line-niasa", "irrigation water of nurseries, free chlorine left after the time", MixUse.IrrigationLine, 2, 20, RinseAdvice.NotStated, SanitisingSources.AustralianNurseries),
        Chlorine("seed-pacific-bulb", "seed, one part of 5 % bleach to nineteen", MixUse.Seed, 2500, 10, RinseAdvice.Rinse, SanitisingSources.BulbSeed),
        Chlorine("food-california", "food surfaces, by law", MixUse.FoodSurfaces, 100, 0.5, RinseAdvice.NotStated, SanitisingSources.CaliforniaFoodLaw),
        Chlorine(
            "food-maine",
            "food surfaces, pH 10 or less and 38 °C, or pH 8 or less and 24 °C",
            MixUse.FoodSurfaces,
            50,
            7.0 / 60,
            RinseAdvice.NotStated,
            SanitisingSources.MaineFoodCode),
        Of("food-quaternary-california", "food surfaces, quaternary ammonium, by law", MixUse.FoodSurfaces, MixIngredients.QuaternaryAmmonium, 200, 200, Duration.FromMinutes(1), SanitisingSources.CaliforniaFoodLaw),
        Of("food-quaternary-iowa", "food surfaces, quaternary ammonium", MixUse.FoodSurfaces, MixIngredients.QuaternaryAmmonium, 200, 400, Duration.FromSeconds(30), SanitisingSources.QuaternaryIowa),
        Of("food-quaternary", "food surfaces, quaternary ammonium", MixUse.FoodSurfaces, MixIngredients.QuaternaryAmmonium, 200, 400, null, SanitisingSources.Alaska),
        Of("wash-peracetic", "produce wash, peracetic acid", MixUse.FoodSurfaces, MixIngredients.PeraceticAcid, 27, 96, null, SanitisingSources.VermontSanitisers),
        Of("hard-peracetic", "hard surfaces, peracetic acid", MixUse.Surfaces, MixIngredients.PeraceticAcid, 147, 500, null, SanitisingSources.VermontSanitisers),
        Conidia("botrytis-100", "Botrytis cinerea", 100, Duration.FromMinutes(5.4)),
        Conidia("penicillium-100", "Penicillium digitatum", 100, Duration.FromMinutes(2.4)),
        Conidia("botrytis-500", "Botrytis cinerea", 500, Duration.FromSeconds(17.2)),
        Conidia("penicillium-500", "Penicillium digitatum", 500, Duration.FromSeconds(9.8)),
        Of("seed-peracetic", "watermelon seed, dried at 40 °C afterwards", MixUse.Seed, MixIngredients.PeraceticAcid, 1600, 1600, Duration.FromMinutes(30), SanitisingSources.PeraceticOnSeed),
        Of("tools-quaternary", "Fusarium wilt of banana on tools and boots", MixUse.Tools, MixIngredients.QuaternaryAmmonium, 1200, 1200, Duration.FromSeconds(30), SanitisingSources.QuaternaryOnFusarium),
        Peroxide("food-peroxide-warm", "food surfaces, cleaned, peroxide of 3 % at 55 °C", MixUse.FoodSurfaces, 3, Duration.FromMinutes(1), SanitisingSources.PeroxideInKitchen),
        Peroxide("food-peroxide", "food surfaces, cleaned, peroxide of 3 % not heated; Listeria survives", MixUse.FoodSurfaces, 3, Duration.FromMinutes(10), SanitisingSources.PeroxideInKitchen),
        Peroxide("seed-peroxide-fir", "Douglas-fir seed against Fusarium on the coat", MixUse.Seed, 3, Duration.FromHours(4), SanitisingSources.PeroxideOnFirSeed),
        Peroxide("seed-peroxide-alfalfa", "alfalfa seed, Salmonella a thousandfold less but not gone", MixUse.Seed, 6, Duration.FromMinutes(10), SanitisingSources.PeroxideOnSproutSeed),
        Of(
            "benches-peroxide",
            "work surfaces, hydrogen peroxide of 3 to 6 %, slow to act",
            MixUse.Benches,
            MixIngredients.HydrogenPeroxide,
            30_000,
            60_000,
            null,
            SanitisingSources.PeroxideOnBenches,
            RinseAdvice.Rinse),
        Of(
            "line-peroxide",
            "lines and mats, hydrogen peroxide once a week, borne by most plants in tests",
            MixUse.IrrigationLine,
            MixIngredients.HydrogenPeroxide,
            200,
            200,
            null,
            SanitisingSources.PeroxideInWater),
    ]);

    /// <summary>What seed treatment with chlorine and heat reaches.</summary>
    public static Caution SeedSurfaceOnly => MixCautions.SeedSurfaceOnly;

    /// <summary>The records for a use.</summary>
    /// <param name="use">The use.</param>
    /// <returns>All of them; none where nothing is held.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The use is not one of the defined ones.</exception>
    public static IReadOnlyList<ContactRecord> For(MixUse use)
    {
        Guard.Defined(use);
        return ValueList<ContactRecord>.Of(All.Where(record => record.Use == use));
    }

    private static ContactRecord Chlorine(string key, string name, MixUse use, double milligramsPerLitre, double minutes, RinseAdvice rinse, Source source)
    {
        MassConcentration level = MassConcentration.FromMilligramsPerLiter(milligramsPerLitre);
        return new ContactRecord("contact." + key, name, use, MixIngredients.HouseholdBleach, level, level, Duration.FromMinutes(minutes), rinse, source);
    }

    private static ContactRecord Peroxide(string key, string name, MixUse use, double percent, Duration time, Source source) =>
        Of(key, name, use, MixIngredients.HydrogenPeroxide, percent * 10_000, percent * 10_000, time, source);

    private static ContactRecord Conidia(string key, string kind, double milligramsPerLitre, Duration time) => Of(
        "peracetic-" + key,
        $"conidia of {kind}, 95 % dead",
        MixUse.Surfaces,
        MixIngredients.PeraceticAcid,
        milligramsPerLitre,
        milligramsPerLitre,
        time,
        SanitisingSources.PeraceticConidia);

    private static ContactRecord Of(
        string key,
        string name,
        MixUse use,
        MixIngredient agent,
        double lowMilligramsPerLitre,
        double highMilligramsPerLitre,
        Duration? time,
        Source source,
        RinseAdvice rinse = RinseAdvice.NotStated) => new(
            "contact." + key,
            name,
            use,
            agent,
            MassConcentration.FromMilligramsPerLiter(lowMilligramsPerLitre),
            MassConcentration.FromMilligramsPerLiter(highMilligramsPerLitre),
            time,
            rinse,
            source);
}
