using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>What level measures of fertilisers, lime, ash and organic matter weigh, as a popular reference prints it.</summary>
/// <remarks>
/// Not a standard: bulk densities of powders vary by a fifth and more with grain and damp, and some figures contradict others of the same
/// page, which is then said in <see cref="PowderMeasure.Doubt"/>. Weigh where it matters.
/// </remarks>
public static class PowderMeasures
{
    /// <summary>Where they were seen.</summary>
    public static Source Source { get; } = new(
        "household-measures-of-fertiliser",
        "Household measures of fertilisers and organic matter",
        "gardening reference (Russia)",
        null,
        "http://domir.ru/house/udobrenie6.html");

    /// <summary>All of them, as printed.</summary>
    public static IReadOnlyList<PowderMeasure> All { get; } = ValueList<PowderMeasure>.Of(
    [
        Of("ammonium nitrate", "glass", 200, 170, 170),
        Of("ammonium sulfate", "glass", 200, 180, 180),
        Of("superphosphate", "glass", 200, 200, 200),
        Of("potassium chloride", "glass", 200, 190, 190),
        Of("potassium sulfate", "glass", 200, 260, 260),
        Of("wood ash", "glass", 200, 100, 120),
        Of("ammonium nitrate", "matchbox", 20, 17, 17),
        Of("ammonium sulfate", "matchbox", 20, 18, 18),
        Of("urea", "matchbox", 20, 15, 15),
        Of("superphosphate, powder", "matchbox", 20, 24, 24, "glass row of the same page gives 1.0 g/mL"),
        Of("superphosphate, granular", "matchbox", 20, 22, 22),
        Of("potassium chloride", "matchbox", 20, 18, 18, "glass gives 0.95"),
        Of("potassium sulfate", "matchbox", 20, 25, 25, "glass gives 1.30"),
        Of("wood ash", "matchbox", 20, 10, 10),
        Of("hydrated lime", "matchbox", 20, 11, 11),
        Of("ammonium nitrate", "tablespoon", 15, 13, 13, "the page does not say what the spoon holds; 15 mL was taken"),
        Of("superphosphate, powder", "tablespoon", 15, 15, 15, "the page does not say what the spoon holds; 15 mL was taken"),
        Of("nitrophoska NPK", "tablespoon", 15, 22, 22, "the page does not say what the spoon holds; 15 mL was taken; implies 1.47 g/mL: heaped?"),
        Of("double superphosphate, granular", "tablespoon", 15, 20, 20, "the page does not say what the spoon holds; 15 mL was taken"),
        Of("potassium chloride", "tablespoon", 15, 28, 28, "the page does not say what the spoon holds; 15 mL was taken; 28 g is not possible in 15 mL level"),
        Of("horse manure, fresh", "10 L bucket", 10000, 8000, 8000),
        Of("horse manure on sawdust", "10 L bucket", 10000, 5000, 5000),
        Of("cow manure, fresh", "10 L bucket", 10000, 9000, 9000),
        Of("poultry manure", "10 L bucket", 10000, 5000, 5000),
        Of("humus", "10 L bucket", 10000, 7000, 7000),
        Of("slurry", "10 L bucket", 10000, 12000, 12000, "1.2 kg/L is high for slurry"),
        Of("dry peat", "10 L bucket", 10000, 5000, 5000),
        Of("turf soil", "10 L bucket", 10000, 12000, 12000),
        Of("wood ash", "10 L bucket", 10000, 5000, 5000),
    ]);

    private static PowderMeasure Of(string material, string measure, double millilitres, double lowGrams, double highGrams, string doubt = "") =>
        new(material, measure, Volume.FromMilliliters(millilitres), Mass.FromGrams(lowGrams), Mass.FromGrams(highGrams), Source, doubt);
}
