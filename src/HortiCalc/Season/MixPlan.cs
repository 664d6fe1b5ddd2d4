using HortiCalc.Display;
using HortiCalc.Mixes;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>A published mix that the grower wants, and how much of it.</summary>
public sealed record MixPlan
{
    /// <summary>Describes a mix that the grower wants.</summary>
    /// <param name="name">What it is for, in a few words.</param>
    /// <param name="recipe">The key of a recipe of <see cref="SanitisingRecipes"/> or <see cref="FoliarRecipes"/>.</param>
    /// <param name="batch">The volume of the finished mix, more than zero.</param>
    /// <exception cref="ArgumentException">A text is empty, or there is no such recipe.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not more than zero.</exception>
    public MixPlan(string name, string recipe, Volume batch)
    {
        Name = Guard.NotBlank(name);
        Recipe = Guard.NotBlank(recipe);
        Known = Recipes.FirstOrDefault(known => known.Key == recipe) ?? throw new ArgumentException(
            $"recipe was '{recipe}'; allowed: {string.Join(", ", Recipes.Select(known => known.Key))}.", nameof(recipe));
        Guard.Positive(Boundary.Litres(batch), "L", nameof(batch));
        Batch = HouseUnits.Normalise(batch);
    }

    /// <summary>What it is for, in a few words.</summary>
    public string Name { get; }

    /// <summary>The key of the recipe.</summary>
    public string Recipe { get; }

    /// <summary>The volume of the finished mix.</summary>
    public Volume Batch { get; }

    internal MixRecipe Known { get; }

    private static IEnumerable<MixRecipe> Recipes => SanitisingRecipes.All.Concat(FoliarRecipes.All);

    /// <summary>The mix, its batch and its recipe, in metric units and invariant culture.</summary>
    /// <returns>For instance <c>pots and tools: 10 L of bleach-penn-state</c>.</returns>
    public override string ToString() => $"{Name}: {QuantityText.Of(Batch, TextStyle.Default)} of {Recipe}";
}
