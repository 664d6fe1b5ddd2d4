using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using HortiCalc.Json;
using HortiCalc.Mixes;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>Every input and result of the room survives storage.</summary>
public class MixJsonTests
{
    private static readonly HypochloriteLabel Bleach =
        HypochloriteLabel.SodiumHypochlorite(MassFraction.FromPercent(8.25), HypochloriteDensities.EightAndAQuarterPercent);

    private static void RoundTrips<T>(T value, JsonTypeInfo<T> type)
    {
        string json = JsonSerializer.Serialize(value, type);
        Assert.Equal(value, JsonSerializer.Deserialize(json, type));
    }

    [Fact]
    public void Ratio_RoundTrips() => RoundTrips(MixRatio.OneIn(10), HortiCalcJsonContext.Default.MixRatio);

    [Fact]
    public void Ratio_ReadInEitherMeaning_IsTheSameMix()
    {
        Assert.Equal(MixRatio.OneIn(10), JsonSerializer.Deserialize("""{"value":9,"unit":"parts to 1"}""", HortiCalcJsonContext.Default.MixRatio));
        Assert.Equal(MixRatio.OneIn(10), JsonSerializer.Deserialize("""{"value":10,"unit":"one in"}""", HortiCalcJsonContext.Default.MixRatio));
        Assert.Contains(
            "1:N",
            Assert.Throws<JsonException>(() => JsonSerializer.Deserialize("""{"value":10,"unit":"1:N"}""", HortiCalcJsonContext.Default.MixRatio)).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Strengths_OnEveryBasis_RoundTrip()
    {
        RoundTrips<Strength>(Strength.ByVolume(VolumeConcentration.FromPercent(70), "alcohol"), HortiCalcJsonContext.Default.Strength);
        RoundTrips<Strength>(Strength.ByMass(MassFraction.FromPercent(6)), HortiCalcJsonContext.Default.Strength);
        RoundTrips<Strength>(Strength.ByMass(MassFraction.FromPercent(6), Density.FromKilogramsPerLiter(1.08)), HortiCalcJsonContext.Default.Strength);
        RoundTrips<Strength>(Strength.PerVolume(MassConcentration.FromMilligramsPerLiter(200)), HortiCalcJsonContext.Default.Strength);
    }

    [Fact]
    public void Batch_RoundTrips()
    {
        RoundTrips(Dilution.MakeUpTo(Volume.FromLiters(10), MixRatio.OneIn(10), Bleach.Strength), HortiCalcJsonContext.Default.MixBatch);
        RoundTrips(Dilution.MakeUpTo(Volume.FromLiters(10), MixRatio.OneIn(10)), HortiCalcJsonContext.Default.MixBatch);
    }

    [Fact]
    public void Label_RoundTrips()
    {
        RoundTrips(Bleach, HortiCalcJsonContext.Default.HypochloriteLabel);
        RoundTrips(HypochloriteLabel.Trade(Ratio.FromPercent(12.5)), HortiCalcJsonContext.Default.HypochloriteLabel);
    }

    [Fact]
    public void Answers_RoundTripWithTheirEvidence()
    {
        RoundTrips(
            Hypochlorite.MakeUpTo(Volume.FromLiters(10), Bleach, MassConcentration.FromMilligramsPerLiter(500)), HortiCalcJsonContext.Default.EstimateMixBatch);
        RoundTrips(Hypochlorite.StrengthOf(Bleach, MixRatio.OneIn(10)), HortiCalcJsonContext.Default.EstimateMassConcentration);
    }

    [Fact]
    public void Recipes_AndTheirBatches_RoundTrip() => Assert.All(SanitisingRecipes.All.Concat(FoliarRecipes.All), recipe =>
    {
        RoundTrips(recipe, HortiCalcJsonContext.Default.MixRecipe);
        RoundTrips(recipe.MakeUpTo(Volume.FromLiters(7)), HortiCalcJsonContext.Default.RecipeBatch);
    });

    [Fact]
    public void Hazards_RoundTrip()
    {
        RoundTrips(MixIngredients.Vinegar, HortiCalcJsonContext.Default.MixIngredient);
        Assert.All(Hazards.Pairs, pair => RoundTrips(pair, HortiCalcJsonContext.Default.DangerousPair));
        IReadOnlyList<Danger> dangers = Hazards.Of(MixIngredients.HouseholdBleach, MixIngredients.Vinegar);
        string json = JsonSerializer.Serialize(dangers, HortiCalcJsonContext.Default.Dangers);
        Assert.Equal(dangers, JsonSerializer.Deserialize(json, HortiCalcJsonContext.Default.Dangers)!);
    }

    [Fact]
    public void Recipe_WithADangerousPairInJson_IsRefused()
    {
        string json = JsonSerializer.Serialize(FoliarRecipes.SoapAndOilLeeCounty, HortiCalcJsonContext.Default.MixRecipe)
            .Replace("\"Soap\"", "\"Hypochlorite\"", StringComparison.Ordinal)
            .Replace("\"Oil\"", "\"Acid\"", StringComparison.Ordinal);
        Assert.Contains(
            "chlorine gas",
            Assert.Throws<ArgumentException>(() => JsonSerializer.Deserialize(json, HortiCalcJsonContext.Default.MixRecipe)).Message,
            StringComparison.Ordinal);
    }
}
