using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Evidence;
using HortiCalc.Mixes;

namespace HortiCalc.Tests.Mixes;

/// <summary>What must never meet.</summary>
public class HazardTests
{
    private static readonly IReadOnlyList<MixIngredient> Known = MixIngredients.All;

    private static MixIngredient[] Some(int[] picks) => [.. picks.Select(pick => Known[(int)((uint)pick % Known.Count)])];

    [Theory]
    [InlineData("vinegar", "chlorine gas")]
    [InlineData("citric-acid", "chlorine gas")]
    [InlineData("nitric-acid", "chlorine gas")]
    [InlineData("ammonia", "chloramine")]
    [InlineData("ammonium-fertiliser", "chloramine")]
    [InlineData("rubbing-alcohol", "chloroform")]
    [InlineData("liquid-soap", "harmful vapours")]
    public void Of_BleachWithAnother_FindsTheDanger(string key, string result) => Assert.Contains(
        Hazards.Of(MixIngredients.HouseholdBleach, Known.Single(ingredient => ingredient.Key == key)), danger => danger.Pair.Result == result);

    /// <summary>A class that no pair knows and no ingredient has decides nothing.</summary>
    [Fact]
    public void Classes_EachOne_IsInAPairAndOnAnIngredient() => Assert.All(Enum.GetValues<IngredientClass>(), one =>
    {
        Assert.Contains(Hazards.Pairs.Concat(Hazards.PairsInStock), pair => pair.First == one || pair.Second == one);
        Assert.Contains(Known, ingredient => ingredient.Classes.Contains(one));
    });

    [Fact]
    public void Ingredients_EachKey_IsThereOnce() => Assert.Equal(Known.Count, Known.Select(ingredient => ingredient.Key).Distinct().Count());

    [Fact]
    public void Of_DryChlorine_FindsFireWithOilAndExplosionWithAnotherPoolChlorine()
    {
        Assert.Equal("fire", Assert.Single(Hazards.Of(MixIngredients.CalciumHypochlorite, MixIngredients.VegetableOil)).Pair.Result);
        Assert.Equal("fire or explosion", Assert.Single(Hazards.Of(MixIngredients.PoolChlorine, MixIngredients.CalciumHypochlorite)).Pair.Result);
        Assert.Empty(Hazards.Of(MixIngredients.HouseholdBleach, MixIngredients.VegetableOil));
    }

    [Theory]
    [InlineData("sulfuric-acid")]
    [InlineData("nitric-acid")]
    [InlineData("phosphoric-acid")]
    public void Of_AnAcidOfFeeding_MustNotMeetBleachNorLime(string key)
    {
        MixIngredient acid = Known.Single(ingredient => ingredient.Key == key);
        Assert.Equal("chlorine gas", Assert.Single(Hazards.Of(MixIngredients.HouseholdBleach, acid)).Pair.Result);
        Assert.Equal("violent heat", Assert.Single(Hazards.Of(MixIngredients.HydratedLime, acid)).Pair.Result);
    }

    [Fact]
    public void Of_PeroxideAndVinegar_FindsPeraceticAcid() => Assert.Equal(
        "hydrogen peroxide + vinegar: peracetic acid", Assert.Single(Hazards.Of(MixIngredients.Vinegar, MixIngredients.HydrogenPeroxide)).ToString());

    /// <summary>An acid brings its salt: calcium falls out of a stock with phosphoric or sulfuric acid, not with nitric.</summary>
    [Fact]
    public void OfStock_CalciumAndAnAcid_GoesByTheSaltOfTheAcid()
    {
        Assert.Equal("calcium phosphate", Assert.Single(Hazards.OfStock(MixIngredients.CalciumNitrate, MixIngredients.PhosphoricAcid)).Pair.Result);
        Assert.Equal("gypsum", Assert.Single(Hazards.OfStock(MixIngredients.CalciumNitrate, MixIngredients.SulfuricAcid)).Pair.Result);
        Assert.Empty(Hazards.OfStock(MixIngredients.CalciumNitrate, MixIngredients.NitricAcid));
    }

    [Fact]
    public void Of_PeroxideAndCitricAcid_FindsNothing() => Assert.Empty(Hazards.Of(MixIngredients.CitricAcid, MixIngredients.HydrogenPeroxide));

    [Theory]
    [InlineData("vinegar")]
    [InlineData("citric-acid")]
    public void Of_LimeSulfurAndAnAcid_FindsHydrogenSulfide(string key)
    {
        Danger danger = Assert.Single(Hazards.Of(MixIngredients.LimeSulfur, Known.Single(ingredient => ingredient.Key == key)));
        Assert.Equal("hydrogen sulfide", danger.Pair.Result);
        Assert.Equal(CautionLevel.Danger, danger.Pair.Caution.Level);
    }

    [Fact]
    public void Of_OilAndLimeSulfur_FindsBurntLeaves() => Assert.Equal(
        "burnt leaves", Assert.Single(Hazards.Of(MixIngredients.HorticulturalOil, MixIngredients.LimeSulfur)).Pair.Result);

    [Fact]
    public void Of_AListOfSeveral_GivesEveryDanger()
    {
        IReadOnlyList<Danger> dangers = Hazards.Of(
            MixIngredients.HouseholdBleach,
            MixIngredients.Vinegar,
            MixIngredients.HydrogenPeroxide,
            MixIngredients.HorticulturalOil,
            MixIngredients.WettableSulfur);
        Assert.Equal(
            [
                "a reaction with some pesticides",
                "a reaction with some pesticides",
                "burnt leaves",
                "chlorine gas",
                "harmful vapours",
                "peracetic acid",
            ],
            dangers.Select(danger => danger.Pair.Result).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Of_WaterWithAnything_FindsNothing() =>
        Assert.All(Known, ingredient => Assert.Empty(Hazards.Of(MixIngredients.Water, ingredient)));

    [Property]
    public bool Of_InAnyOrder_GivesTheSameDangers(int[] picks)
    {
        MixIngredient[] some = Some(picks);
        return Hazards.Of(some).SequenceEqual(Hazards.Of(some.Reverse()));
    }

    [Property]
    public bool Of_WithRepeats_GivesTheSameDangers(int[] picks)
    {
        MixIngredient[] some = Some(picks);
        return Hazards.Of(some).SequenceEqual(Hazards.Of(some.Concat(some)));
    }

    [Property]
    public bool Of_AddingAnIngredient_NeverTakesADangerAway(int[] picks, int pick)
    {
        MixIngredient[] some = Some(picks);
        return Hazards.Of(some).All(Hazards.Of([.. some, .. Some([pick])]).Contains);
    }

    [Property]
    public bool Of_AList_IsTheUnionOfItsPairs(int[] picks)
    {
        MixIngredient[] some = [.. Some(picks).Distinct()];
        int ofPairs = some.SelectMany((one, at) => some.Skip(at + 1).Select(other => Hazards.Of(one, other).Count)).Sum();
        return Hazards.Of(some).Count == ofPairs;
    }

    [Fact]
    public void Pairs_EachOne_IsSymmetricAndSourced() => Assert.All(Hazards.Pairs, pair =>
    {
        Assert.Equal(pair, new DangerousPair(pair.Second, pair.First, pair.Result, pair.Caution));
        Assert.Equal(SourceKind.Published, pair.Caution.Source.Kind);
        Assert.NotEmpty(pair.Caution.Source.Address!);
    });

    [Fact]
    public void Pairs_NoneIsListedTwice() =>
        Assert.Equal(Hazards.Pairs.Count, Hazards.Pairs.Select(pair => (pair.First, pair.Second)).Distinct().Count());

    [Fact]
    public void Danger_OfIngredientsThatThePairDoesNotJoin_IsRefused() => Assert.Equal("pair", Assert.Throws<ArgumentException>(() =>
        new Danger(MixIngredients.Water, MixIngredients.Vinegar, Hazards.Pairs[0])).ParamName);

    [Fact]
    public void Ingredient_OfAnUnknownClass_IsRefused() => Assert.Equal("classes", Assert.Throws<ArgumentOutOfRangeException>(() =>
        new MixIngredient("x", "x", (IngredientClass)999)).ParamName);

    [Fact]
    public void Of_ConcentratedPeroxideWithSprayOil_IsADanger() =>
        Assert.NotEmpty(Hazards.Of(MixIngredients.ConcentratedHydrogenPeroxide, MixIngredients.HorticulturalOil));

    [Fact]
    public void Of_BleachWithLimeSulfur_IsADanger() =>
        Assert.Equal(CautionLevel.Danger, Assert.Single(Hazards.Of(MixIngredients.HouseholdBleach, MixIngredients.LimeSulfur)).Pair.Caution.Level);
}
