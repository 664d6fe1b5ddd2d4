using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The boron tolerances of crops of one list, in its order.</summary>
/// <remarks>The rows after cucumber were not seen in print; their source says so.</remarks>
public static class BoronTolerances
{
    private static readonly Source Seen = SaltSources.Boron;
    private static readonly Source Remembered = SaltSources.BoronFromMemory;

    /// <summary>Every row there is.</summary>
    public static IReadOnlyList<BoronTolerance> All { get; } = ValueList<BoronTolerance>.Of(
    [
        Row(Seen, BoronClass.VerySensitive, "Lemon", "Citrus limon", 0, 0.5, null),
        Row(Seen, BoronClass.VerySensitive, "Blackberry", "Rubus sp.", 0, 0.5, null),
        Row(Seen, BoronClass.Sensitive, "Avocado", "Persea americana", 0.5, 0.75, null),
        Row(Seen, BoronClass.Sensitive, "Grapefruit", "C. x paradisi", 0.5, 0.75, null),
        Row(Seen, BoronClass.Sensitive, "Orange", "C. sinensis", 0.5, 0.75, null),
        Row(Seen, BoronClass.Sensitive, "Apricot", "Prunus armeniaca", 0.5, 0.75, null),
        Row(Seen, BoronClass.Sensitive, "Peach", "P. persica", 0.5, 0.75, null),
        Row(Seen, BoronClass.Sensitive, "Cherry", "P. avium", 0.5, 0.75, null),
        Row(Seen, BoronClass.Sensitive, "Plum", "P. domestica", 0.5, 0.75, null),
        Row(Seen, BoronClass.Sensitive, "Persimmon", "Diospyros kaki", 0.5, 0.75, null),
        Row(Seen, BoronClass.Sensitive, "Fig, kadota", "Ficus carica", 0.5, 0.75, null),
        Row(Seen, BoronClass.Sensitive, "Grape", "Vitis vinifera", 0.5, 0.75, null),
        Row(Seen, BoronClass.Sensitive, "Walnut", "Juglans regia", 0.5, 0.75, null),
        Row(Seen, BoronClass.Sensitive, "Pecan", "Carya illinoinensis", 0.5, 0.75, null),
        Row(Seen, BoronClass.Sensitive, "Onion", "Allium cepa", 0.5, 0.75, null),
        Row(Seen, BoronClass.Sensitive, "Garlic", "A. sativum", 0.75, 1.0, null),
        Row(Seen, BoronClass.Sensitive, "Sweet potato", "Ipomoea batatas", 0.75, 1.0, null),
        Row(Seen, BoronClass.Sensitive, "Wheat", "Triticum aestivum", 0.75, 1.0, 3.3),
        Row(Seen, BoronClass.Sensitive, "Sunflower", "Helianthus annuus", 0.75, 1.0, null),
        Row(Seen, BoronClass.Sensitive, "Bean, mung", "Vigna radiata", 0.75, 1.0, null),
        Row(Seen, BoronClass.Sensitive, "Sesame", "Sesamum indicum", 0.75, 1.0, null),
        Row(Seen, BoronClass.Sensitive, "Lupine", "Lupinus hartwegii", 0.75, 1.0, null),
        Row(Seen, BoronClass.Sensitive, "Strawberry", "Fragaria sp.", 0.75, 1.0, null),
        Row(Seen, BoronClass.Sensitive, "Artichoke, Jerusalem", "Helianthus tuberosus", 0.75, 1.0, null),
        Row(Seen, BoronClass.Sensitive, "Bean, kidney", "Phaseolus vulgaris", 0.75, 1.0, null),
        Row(Seen, BoronClass.Sensitive, "Bean, snap", "P. vulgaris", 1.0, 1.0, 12),
        Row(Seen, BoronClass.Sensitive, "Bean, lima", "P. lunatus", 0.75, 1.0, null),
        Row(Seen, BoronClass.Sensitive, "Peanut", "Arachis hypogaea", 0.75, 1.0, null),
        Row(Seen, BoronClass.ModeratelySensitive, "Broccoli", "Brassica oleracea botrytis", 1.0, 1.0, 1.8),
        Row(Seen, BoronClass.ModeratelySensitive, "Pepper, red", "Capsicum annuum", 1.0, 2.0, null),
        Row(Seen, BoronClass.ModeratelySensitive, "Pea", "Pisum sativum", 1.0, 2.0, null),
        Row(Seen, BoronClass.ModeratelySensitive, "Carrot", "Daucus carota", 1.0, 2.0, null),
        Row(Seen, BoronClass.ModeratelySensitive, "Radish", "Raphanus sativus", 1.0, 1.0, 1.4),
        Row(Seen, BoronClass.ModeratelySensitive, "Potato", "Solanum tuberosum", 1.0, 2.0, null),
        Row(Seen, BoronClass.ModeratelySensitive, "Cucumber", "Cucumis sativus", 1.0, 2.0, null),
        Row(Remembered, BoronClass.ModeratelySensitive, "Lettuce", "Lactuca sativa", 1.3, 1.3, 1.7),
        Row(Remembered, BoronClass.ModeratelyTolerant, "Cabbage", "B. oleracea capitata", 2.0, 4.0, null),
        Row(Remembered, BoronClass.ModeratelyTolerant, "Turnip", "B. rapa", 2.0, 4.0, null),
        Row(Remembered, BoronClass.ModeratelyTolerant, "Bluegrass, Kentucky", "Poa pratensis", 2.0, 4.0, null),
        Row(Remembered, BoronClass.ModeratelyTolerant, "Barley", "Hordeum vulgare", 3.4, 3.4, 4.4),
        Row(Remembered, BoronClass.ModeratelyTolerant, "Cowpea", "Vigna unguiculata", 2.5, 2.5, 12),
        Row(Remembered, BoronClass.ModeratelyTolerant, "Oats", "Avena sativa", 2.0, 4.0, null),
        Row(Remembered, BoronClass.ModeratelyTolerant, "Corn", "Zea mays", 2.0, 4.0, null),
        Row(Remembered, BoronClass.ModeratelyTolerant, "Artichoke", "Cynara scolymus", 2.0, 4.0, null),
        Row(Remembered, BoronClass.ModeratelyTolerant, "Muskmelon", "Cucumis melo", 2.0, 4.0, null),
        Row(Remembered, BoronClass.ModeratelyTolerant, "Cauliflower", "B. oleracea botrytis", 4.0, 4.0, 1.9),
        Row(Remembered, BoronClass.Tolerant, "Alfalfa", "Medicago sativa", 4.0, 6.0, null),
        Row(Remembered, BoronClass.Tolerant, "Parsley", "Petroselinum crispum", 4.0, 6.0, null),
        Row(Remembered, BoronClass.Tolerant, "Beet, red", "Beta vulgaris", 4.0, 6.0, null),
        Row(Remembered, BoronClass.Tolerant, "Sugar beet", "B. vulgaris", 4.9, 4.9, 4.1),
        Row(Remembered, BoronClass.Tolerant, "Tomato", "Lycopersicon lycopersicum", 5.7, 5.7, 3.4),
        Row(Remembered, BoronClass.VeryTolerant, "Sorghum", "Sorghum bicolor", 7.4, 7.4, 4.7),
        Row(Remembered, BoronClass.VeryTolerant, "Cotton", "Gossypium hirsutum", 6.0, 10.0, null),
        Row(Remembered, BoronClass.VeryTolerant, "Celery", "Apium graveolens", 9.8, 9.8, 3.2),
        Row(Remembered, BoronClass.VeryTolerant, "Asparagus", "Asparagus officinalis", 10.0, 15.0, null),
    ]);

    /// <summary>The row of a crop.</summary>
    /// <param name="crop">The crop as the list names it, capitals or not: <c>Bean, snap</c>.</param>
    /// <returns>The row.</returns>
    /// <exception cref="ArgumentException">The list has no such crop, or the text is empty.</exception>
    /// <example><code>
    /// BoronTolerance bean = BoronTolerances.Named("bean, snap");
    /// Console.WriteLine(bean.RelativeYield(MassConcentration.FromMilligramsPerLiter(2)));   // 88 %
    /// </code></example>
    public static BoronTolerance Named(string crop)
    {
        Guard.NotBlank(crop);
        return All.FirstOrDefault(row => row.Crop.Equals(crop, StringComparison.OrdinalIgnoreCase))
            ?? throw new ArgumentException($"crop was '{crop}'; allowed: {string.Join("; ", All.Select(row => row.Crop))}.", nameof(crop));
    }

    /// <summary>The most sensitive class of crops that bears a boron content of the soil water.</summary>
    /// <remarks>The classes meet at 0.5, 1, 2, 4 and 6 mg/L; a content at a bound is borne by the class below it. Above 15 mg/L the method refuses: no crop of the list bears it.</remarks>
    /// <param name="boron">The boron in the soil water; from 0 to 15 mg/L.</param>
    /// <returns>The class: the crops of that class and of all more tolerant ones bear it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The content lies outside 0 to 15 mg/L.</exception>
    public static Estimate<BoronClass> Bearing(MassConcentration boron)
    {
        double content = Guard.Within(Boundary.MilligramsPerLitre(boron), 0, 15, "mg/L", nameof(boron));
        return new Estimate<BoronClass>(
            (BoronClass)Bounds.Count(bound => content > bound), SaltMethods.Tolerance, cautions: [SaltCautions.Boron, SaltCautions.BoronListsDiffer]);
    }

    private static double[] Bounds => [0.5, 1, 2, 4, 6];

    private static BoronTolerance Row(
        Source source, BoronClass group, string crop, string botanical, double low, double high, double? lossPercent) => new(
        crop,
        botanical,
        group,
        source,
        MassConcentration.FromMilligramsPerLiter(low),
        MassConcentration.FromMilligramsPerLiter(high),
        lossPercent is { } loss ? Ratio.FromPercent(loss) : null);
}
