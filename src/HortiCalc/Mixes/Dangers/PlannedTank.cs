using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Mixes;

/// <summary>A tank of a plan and what goes into it. Two ingredients that must not meet are refused.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. That no published pair is found does not make a mix safe: the labels decide.
/// </remarks>
/// <example><code>
/// PlannedTank a = new("A", isStock: true, [MixIngredients.CalciumNitrate, MixIngredients.PotassiumNitrate]);
/// PlannedTank b = new("B", isStock: true, [MixIngredients.MagnesiumSulfate, MixIngredients.MonopotassiumPhosphate]);
/// // Calcium nitrate and magnesium sulfate in one stock tank throw: gypsum falls out.
/// </code></example>
public sealed record PlannedTank
{
    /// <summary>Plans a tank.</summary>
    /// <param name="name">Its name: <c>A</c>, <c>sprayer</c>.</param>
    /// <param name="isStock">Whether it is a concentrated stock, in which fertiliser salts fall out that stay dissolved in a feed.</param>
    /// <param name="ingredients">What goes into it; at least one.</param>
    /// <exception cref="ArgumentException">
    /// The name or the list is empty, or two ingredients must not meet; the message gives every such pair and why.
    /// </exception>
    public PlannedTank(string name, bool isStock, IReadOnlyList<MixIngredient> ingredients)
    {
        Name = Guard.NotBlank(name);
        IsStock = isStock;
        Ingredients = ValueList<MixIngredient>.Of(Guard.NotNull(ingredients));
        if (Ingredients.Count == 0)
            throw new ArgumentException("ingredients was empty; allowed: at least one.", nameof(ingredients));
        Hazards.Refuse(isStock ? Hazards.OfStock(Ingredients) : Hazards.Of(Ingredients), nameof(ingredients));
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Whether it is a concentrated stock.</summary>
    public bool IsStock { get; }

    /// <summary>What goes into it.</summary>
    public IReadOnlyList<MixIngredient> Ingredients { get; }

    /// <summary>The tank and what goes into it.</summary>
    /// <returns>For instance <c>A: calcium nitrate, potassium nitrate</c>.</returns>
    public override string ToString() => $"{Name}: {string.Join(", ", Ingredients)}";
}
