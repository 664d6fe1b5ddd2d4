using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Mixes;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>Published recipes brought to a batch.</summary>
public class RecipeTests
{
    public static TheoryData<string> All() => [.. Recipes.Select(recipe => recipe.Key)];

    private static IEnumerable<MixRecipe> Recipes => SanitisingRecipes.All.Concat(FoliarRecipes.All);

    private static MixRecipe Find(string key) => Recipes.Single(recipe => recipe.Key == key);

    private static MixRecipe Any(PositiveInt value) => Recipes.ElementAt(value.Get % Recipes.Count());

    private static MixRecipe AnyWithWater(PositiveInt value)
    {
        MixRecipe[] known = [.. Recipes.Where(recipe => recipe.Doses is not [VolumeDose { Low.Percent: 100 }])];
        return known[value.Get % known.Length];
    }

    private static Volume Litres(PositiveInt value) => Volume.FromLiters(0.1 + (value.Get % 5_000 / 10.0));

    private static double LiquidLitres(RecipeBatch batch, bool high) => batch.Amounts.OfType<VolumeAmount>()
        .Where(amount => !batch.Recipe.Doses.OfType<SpoonDose>().Any(powder => powder.Ingredient == amount.Ingredient))
        .Sum(amount => (high ? amount.High : amount.Low).Liters);

    [Fact]
    public void MakeUpTo_PennStateTenLitres_IsOneLitreAndNine()
    {
        RecipeBatch batch = SanitisingRecipes.PotsAndToolsPennState.MakeUpTo(Volume.FromLiters(10));
        VolumeAmount bleach = Assert.IsType<VolumeAmount>(Assert.Single(batch.Amounts));
        Assert.Equal(1, bleach.Low.Liters, 12);
        Assert.Equal(bleach.Low, bleach.High);
        Assert.Equal(9, batch.Water.Low.Liters, 12);
        Assert.Equal(10, batch.ContactTime!.Value.Minutes, 10);
        Assert.Equal(
            "1 L of household bleach and 9 L of water make 10 L; leave for at least 10 min; bleach, 1 part to 9 of water (Penn State) "
            + "[Penn State Extension, Disinfecting Tools, Equipment, Pots, Flats and Benches (no date)]; 13 cautions",
            batch.ToString());
    }

    [Fact]
    public void MakeUpTo_ARecipeWithARange_GivesTheRangeOfAmountsAndWater()
    {
        RecipeBatch batch = FoliarRecipes.DormantOilRutgers.MakeUpTo(Volume.FromLiters(10));
        VolumeAmount oil = Assert.IsType<VolumeAmount>(Assert.Single(batch.Amounts));
        Assert.Equal(0.2, oil.Low.Liters, 12);
        Assert.Equal(0.4, oil.High.Liters, 12);
        Assert.Equal(9.6, batch.Water.Low.Liters, 12);
        Assert.Equal(9.8, batch.Water.High.Liters, 12);
        Assert.Equal(batch.TotalLow, batch.TotalHigh);
    }

    [Fact]
    public void AddTo_ARecipeWithARange_GivesTheRangeOfTheTotal()
    {
        RecipeBatch batch = FoliarRecipes.DormantOilRutgers.AddTo(Volume.FromLiters(96));
        Assert.Equal(100, batch.TotalHigh.Liters, 10);
        Assert.Equal(96 / 0.98, batch.TotalLow.Liters, 10);
        Assert.Equal(96, batch.Water.High.Liters, 12);
    }

    [Fact]
    public void AddTo_TeaspoonOfBakingSoda_IsCommonPracticeAndAddsNoVolume()
    {
        RecipeBatch batch = FoliarRecipes.BakingSodaTeaspoon.AddTo(Volume.FromUsQuarts(1));
        VolumeAmount soda = Assert.IsType<VolumeAmount>(Assert.Single(batch.Amounts));
        Assert.Equal(4.93, soda.Low.Milliliters, 2);
        Assert.Equal(0.946, batch.TotalHigh.Liters, 3);
        Assert.Equal(SourceKind.CommonPractice, batch.Recipe.Source.Kind);
        Assert.Contains(batch.Cautions, caution => caution.Code == "mix.spoon-varies");
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Recipes_EachOne_NamesASourceAndDefersToTheLabel(string key)
    {
        MixRecipe recipe = Find(key);
        Assert.False(string.IsNullOrWhiteSpace(recipe.Source.Title));
        Assert.Contains(recipe.Cautions, caution => caution.Code == "mix.label-decides");
        Assert.Contains(recipe.Cautions, caution => caution.Code == "mix.protect-skin-and-eyes");
        Assert.Equal(recipe.Cautions.Count, recipe.Cautions.Select(caution => caution.Code).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Recipes_EachOne_HasTheCautionsOfItsKind(string key)
    {
        string[] codes = [.. Find(key).Cautions.Select(caution => caution.Code)];
        IngredientClass[] classes = [.. Find(key).Doses.SelectMany(dose => dose.Ingredient.Classes)];
        if (Find(key).Uses.Contains(MixUse.Foliage))
            Assert.Equal(3, codes.Intersect(["foliar.test-first", "foliar.no-heat-or-drought", "foliar.bees"]).Count());
        else
            Assert.Contains("mix.ventilate", codes);
        Assert.Equal(
            classes.Contains(IngredientClass.Hypochlorite) ? 5 : 0,
            codes.Intersect(
                ["bleach.never-with-acid", "bleach.never-with-ammonia", "bleach.never-with-others", "bleach.make-fresh", "bleach.corrodes"]).Count());
        Assert.Equal(
            (classes.Contains(IngredientClass.Alcohol), classes.Intersect([IngredientClass.Alcohol, IngredientClass.Hypochlorite]).Any()),
            (codes.Contains("alcohol.flammable"), codes.Contains("bleach.never-with-alcohol")));
        Assert.Equal(classes.Contains(IngredientClass.Oil) ? 2 : 0, codes.Intersect(["foliar.oil-and-sulfur", "foliar.oil-in-cold"]).Count());
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Recipes_OfBleachForPotsToolsOrBenches_SayToRinseWhatPlantsTouch(string key)
    {
        MixRecipe recipe = Find(key);
        bool meetsPlants = recipe.Uses.Intersect([MixUse.Pots, MixUse.Tools, MixUse.Benches]).Any();
        bool isBleach = recipe.Doses[0].Ingredient == MixIngredients.HouseholdBleach;
        Assert.Equal(meetsPlants && isBleach, recipe.Cautions.Any(caution => caution.Code == "mix.rinse"));
    }

    [Fact]
    public void MakeUpTo_AlcoholForTools_TakesNoWaterAndSaysSo()
    {
        RecipeBatch batch = SanitisingRecipes.ToolsAlcoholPennState.MakeUpTo(Volume.FromMilliliters(500));
        Assert.Equal(0, batch.Water.High.Liters);
        Assert.StartsWith("500 mL of rubbing alcohol make 500 mL; 70 % alcohol, undiluted (Penn State) [", batch.ToString(), StringComparison.Ordinal);
        IReadOnlyList<DisplayRow> rows = ((IDisplayable)batch).ToDisplay(TextStyle.Default).Rows;
        Assert.DoesNotContain(rows, row => row.Label == "water");
        Assert.Contains(rows, row => row is { Label: "afterwards", Text: "let it dry, do not rinse" });
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Recipes_EachOne_HoldsNothingDangerousTogether(string key) =>
        Assert.Empty(Hazards.Of(Find(key).Doses.Select(dose => dose.Ingredient).Append(MixIngredients.Water)));

    [Property]
    public bool MakeUpTo_AnyRecipe_ConservesVolume(PositiveInt recipe, PositiveInt volume)
    {
        RecipeBatch batch = Any(recipe).MakeUpTo(Litres(volume));
        return Near.Equal(LiquidLitres(batch, false) + batch.Water.High.Liters, Litres(volume).Liters)
            && Near.Equal(LiquidLitres(batch, true) + batch.Water.Low.Liters, Litres(volume).Liters);
    }

    [Property]
    public bool AddTo_AnyRecipeWithWater_ConservesVolume(PositiveInt recipe, PositiveInt volume)
    {
        RecipeBatch batch = AnyWithWater(recipe).AddTo(Litres(volume));
        return Near.Equal(LiquidLitres(batch, false) + Litres(volume).Liters, batch.TotalLow.Liters)
            && Near.Equal(LiquidLitres(batch, true) + Litres(volume).Liters, batch.TotalHigh.Liters);
    }

    [Property]
    public bool MakeUpTo_TwiceTheVolume_TakesTwiceOfEach(PositiveInt recipe, PositiveInt volume)
    {
        RecipeBatch one = Any(recipe).MakeUpTo(Litres(volume));
        RecipeBatch two = Any(recipe).MakeUpTo(Litres(volume) * 2);
        return one.Amounts.Zip(two.Amounts).All(pair => (pair.First, pair.Second) switch
        {
            (VolumeAmount first, VolumeAmount second) => Near.Equal(second.High.Liters, 2 * first.High.Liters),
            (MassAmount first, MassAmount second) => Near.Equal(second.High.Grams, 2 * first.High.Grams),
            _ => false,
        });
    }

    [Property]
    public bool AddTo_TheWaterOfABatchWithoutARange_GivesThatBatch(PositiveInt volume)
    {
        MixRecipe recipe = FoliarRecipes.SoapAndOilLeeCounty;
        RecipeBatch made = recipe.MakeUpTo(Litres(volume));
        RecipeBatch added = recipe.AddTo(made.Water.Low);
        return Near.Equal(added.TotalLow.Liters, Litres(volume).Liters);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-2)]
    public void Batches_VolumeNotAboveZero_AreRefused(double litres)
    {
        MixRecipe recipe = SanitisingRecipes.PotsAndToolsPennState;
        Assert.Equal("total", Assert.Throws<ArgumentOutOfRangeException>(() => recipe.MakeUpTo(Volume.FromLiters(litres))).ParamName);
        Assert.Equal("water", Assert.Throws<ArgumentOutOfRangeException>(() => recipe.AddTo(Volume.FromLiters(litres))).ParamName);
    }

    [Fact]
    public void Recipe_OfBleachAndVinegar_IsRefusedWithTheReason()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(
            () => Recipe(DoseBasis.Water, Part(MixIngredients.HouseholdBleach, 1), Part(MixIngredients.Vinegar, 1)));
        Assert.Equal("doses", refused.ParamName);
        Assert.Contains("chlorine gas", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Recipe_OfMoreThanTheWhole_IsRefused() => Assert.Contains(
        "120 %",
        Assert.Throws<ArgumentException>(
            () => Recipe(DoseBasis.FinishedMix, Part(MixIngredients.LiquidSoap, 60), Part(MixIngredients.VegetableOil, 60))).Message,
        StringComparison.Ordinal);

    [Fact]
    public void AddTo_ARecipeUsedUndiluted_IsRefused()
    {
        MixRecipe neat = Recipe(DoseBasis.FinishedMix, Part(MixIngredients.RubbingAlcohol, 100));
        Assert.Equal(0, neat.MakeUpTo(Volume.FromLiters(1)).Water.High.Liters, 12);
        Assert.Throws<InvalidOperationException>(() => neat.AddTo(Volume.FromLiters(1)));
    }

    [Fact]
    public void Recipe_WithoutDosesOrUses_IsRefused()
    {
        Assert.Equal("doses", Assert.Throws<ArgumentException>(() => Recipe(DoseBasis.Water)).ParamName);
        Assert.Equal("uses", Assert.Throws<ArgumentException>(() => new MixRecipe(
            "k", "n", [], DoseBasis.Water, [Part(MixIngredients.LiquidSoap, 1)], null, RinseAdvice.NotStated, Source.CommonPractice("k", "t"), [])).ParamName);
    }

    [Fact]
    public void Dose_HighBelowLow_IsRefused() => Assert.Equal("high", Assert.Throws<ArgumentOutOfRangeException>(() =>
        new VolumeDose(MixIngredients.LiquidSoap, VolumeConcentration.FromPercent(3), VolumeConcentration.FromPercent(2))).ParamName);

    [Fact]
    public void Display_OfABleachBatch_ShowsDangersBeforeAmounts()
    {
        IDisplayable displayable = SanitisingRecipes.PotsAndBenchesMassachusetts.MakeUpTo(Volume.FromLiters(5));
        IReadOnlyList<DisplayRow> rows = displayable.ToDisplay(TextStyle.Default).Rows;
        Assert.Equal("danger", rows[0].Label);
        Assert.True(rows.ToList().FindLastIndex(row => row.Label == "danger") < rows.ToList().FindIndex(row => row.Label == "household bleach"));
        Assert.Contains(rows, row => row.Label == "leave for at least" && row.Text == "30 min");
        Assert.Contains(rows, row => row.Label == "afterwards" && row.Text == "rinse with clean water");
    }

    private static MixRecipe Recipe(DoseBasis basis, params RecipeDose[] doses) => new(
        "test", "test", [MixUse.Surfaces], basis, doses, null, RinseAdvice.NotStated, Source.CommonPractice("test", "test"), []);

    private static VolumeDose Part(MixIngredient ingredient, double percent) =>
        new(ingredient, VolumeConcentration.FromPercent(percent), VolumeConcentration.FromPercent(percent));
}
