using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>When oil, soap and sulfur burn leaves: published limits of heat, cold and drought, and the interval between oil and sulfur.</summary>
/// <remarks>Sources disagree: sulfur stops at 80, 85 or 90 °F, and oil and sulfur stay two weeks or a month apart. All are asked; the strictest wins.</remarks>
/// <example><code>
/// IReadOnlyList&lt;SprayLimit&gt; against = SprayLimits.Against(
///     MixIngredients.HorticulturalOil, Temperature.FromDegreesFahrenheit(92), areShortOfWater: false);   // too hot
/// DateOnly sulfur = SprayLimits.OilAndSulfurApart.EarliestAfter(new DateOnly(2027, 5, 1), strictest: false);   // 15 May
/// </code></example>
public static class SprayLimits
{
    /// <summary>All limits.</summary>
    public static IReadOnlyList<SprayLimit> All { get; } = ValueList<SprayLimit>.Of(
    [
        new SprayLimit(IngredientClass.Oil, "", Fahrenheit(90), null, true, SpraySources.CaliforniaMildewGarden),
        new SprayLimit(IngredientClass.Sulfur, "", Fahrenheit(90), null, false, SpraySources.CaliforniaMildewGarden),
        new SprayLimit(IngredientClass.Sulfur, "caneberry and strawberry", Fahrenheit(80), null, false, MixSources.CaliforniaOilAndSulfur),
        new SprayLimit(IngredientClass.Sulfur, "apricot", null, null, false, MixSources.CaliforniaOilAndSulfur),
        new SprayLimit(IngredientClass.Sulfur, "", Fahrenheit(85), Fahrenheit(65), false, SpraySources.MildewColumn),
        new SprayLimit(IngredientClass.Sulfur, "", Fahrenheit(80), null, false, SpraySources.LiquidSulfurSeller),
        new SprayLimit(IngredientClass.Soap, "", Fahrenheit(90), null, false, MixSources.LeeCountySoap),
        new SprayLimit(IngredientClass.Oil, "", Fahrenheit(90), null, false, MixSources.LeeCountySoap),
        new SprayLimit(IngredientClass.Oil, "", null, Fahrenheit(40), false, MixSources.OilInCold),
    ]);

    /// <summary>How far oil and sulfur stay apart, in either order: two weeks by the University of California, a month by a seller.</summary>
    public static SprayInterval OilAndSulfurApart { get; } = new(
        IngredientClass.Oil, IngredientClass.Sulfur, 14, 30, MixSources.CaliforniaOilAndSulfur, SpraySources.LiquidSulfurSeller);

    /// <summary>The limits that forbid spraying an ingredient now.</summary>
    /// <param name="ingredient">What is sprayed.</param>
    /// <param name="air">The temperature of the air.</param>
    /// <param name="areShortOfWater">Whether the plants are short of water.</param>
    /// <returns>Every limit that does, those for certain plants too (<see cref="SprayLimit.Plants"/>); empty where none does, which is no promise: the label decides.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not finite.</exception>
    public static IReadOnlyList<SprayLimit> Against(MixIngredient ingredient, Temperature air, bool areShortOfWater)
    {
        Guard.NotNull(ingredient);
        Guard.Finite(Boundary.Celsius(air), "°C", nameof(air));
        return ValueList<SprayLimit>.Of(All.Where(limit => ingredient.Classes.Contains(limit.Subject) && limit.Forbids(air, areShortOfWater)));
    }

    private static Temperature Fahrenheit(double degrees) => Temperature.FromDegreesFahrenheit(degrees);
}
