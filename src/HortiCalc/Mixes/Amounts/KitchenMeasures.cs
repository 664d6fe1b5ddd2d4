using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>The measures of US, metric, imperial and Australian kitchens, and a syringe and jug with marks.</summary>
/// <remarks>
/// They are not the same: a US tablespoon holds 14.8 mL, a metric one 15 mL and an Australian one 20 mL; a US fluid ounce 29.6 mL and an
/// imperial one 28.4 mL; a US gallon 3.79 L and an imperial one 4.55 L. No standard settles an imperial spoon, so there is none here.
/// Exact by definition: NIST Handbook 44, Appendix C (gallon of 231 cubic inches), the imperial gallon of 4.54609 L.
/// </remarks>
public static class KitchenMeasures
{
    /// <summary>US teaspoon, tablespoon, fluid ounce, cup, quart and gallon.</summary>
    public static IReadOnlyList<KitchenMeasure> Us { get; } = ValueList<KitchenMeasure>.Of(
    [
        new KitchenMeasure("us-teaspoon", "US teaspoon", Volume.FromUsTeaspoons(1), 4, 2),
        new KitchenMeasure("us-tablespoon", "US tablespoon", Volume.FromUsTablespoons(1), 2, 4),
        new KitchenMeasure("us-fluid-ounce", "US fluid ounce", Volume.FromUsOunces(1), 2, 8),
        new KitchenMeasure("us-cup", "US cup", Volume.FromUsCustomaryCups(1), 4, 4),
        new KitchenMeasure("us-quart", "US quart", Volume.FromUsQuarts(1), 4, 4),
        new KitchenMeasure("us-gallon", "US gallon", Volume.FromUsGallons(1), 4, 100),
    ]);

    /// <summary>Metric teaspoon of 5 mL, tablespoon of 15 mL, cup of 250 mL and litre jug.</summary>
    public static IReadOnlyList<KitchenMeasure> Metric { get; } = ValueList<KitchenMeasure>.Of(
    [
        new KitchenMeasure("metric-teaspoon", "metric teaspoon", Volume.FromMetricTeaspoons(1), 4, 3),
        new KitchenMeasure("metric-tablespoon", "metric tablespoon", Volume.FromMetricTablespoons(1), 2, 6),
        new KitchenMeasure("metric-cup", "metric cup", Volume.FromMetricCups(1), 4, 4),
        new KitchenMeasure("litre", "litre jug", Volume.FromLiters(1), 10, 100),
    ]);

    /// <summary>Imperial fluid ounce, half-pint cup, pint, quart and gallon.</summary>
    public static IReadOnlyList<KitchenMeasure> Imperial { get; } = ValueList<KitchenMeasure>.Of(
    [
        new KitchenMeasure("imperial-fluid-ounce", "imperial fluid ounce", Volume.FromImperialOunces(1), 4, 10),
        new KitchenMeasure("imperial-half-pint", "imperial half-pint", Volume.FromImperialPints(0.5), 4, 2),
        new KitchenMeasure("imperial-pint", "imperial pint", Volume.FromImperialPints(1), 4, 8),
        new KitchenMeasure("imperial-gallon", "imperial gallon", Volume.FromImperialGallons(1), 4, 100),
    ]);

    /// <summary>Australian teaspoon of 5 mL, tablespoon of 20 mL, cup of 250 mL and litre jug.</summary>
    public static IReadOnlyList<KitchenMeasure> Australian { get; } = ValueList<KitchenMeasure>.Of(
    [
        new KitchenMeasure("metric-teaspoon", "metric teaspoon", Volume.FromMetricTeaspoons(1), 4, 4),
        new KitchenMeasure("australian-tablespoon", "Australian tablespoon", Volume.FromAuTablespoons(1), 2, 6),
        new KitchenMeasure("metric-cup", "metric cup", Volume.FromMetricCups(1), 4, 4),
        new KitchenMeasure("litre", "litre jug", Volume.FromLiters(1), 10, 100),
    ]);

    /// <summary>A syringe of 10 mL with marks each half millilitre, a cylinder of 100 mL each millilitre, a litre jug each 10 mL.</summary>
    public static IReadOnlyList<KitchenMeasure> Graduated { get; } = ValueList<KitchenMeasure>.Of(
    [
        new KitchenMeasure("syringe", "10 mL syringe", Volume.FromMilliliters(10), 20, 1),
        new KitchenMeasure("cylinder", "100 mL cylinder", Volume.FromMilliliters(100), 100, 1),
        new KitchenMeasure("jug", "1 L jug", Volume.FromLiters(1), 100, 100),
    ]);
}
