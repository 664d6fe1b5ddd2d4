using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Containers;

/// <summary>Published ratios of carbon to nitrogen, and what they mean for the nitrogen of a mix.</summary>
/// <remarks>Materials of one name differ widely: have the compost of a mix tested where it matters.</remarks>
/// <example><code>
/// foreach (CarbonRatio row in CarbonRatios.Naming("compost"))
///     Console.WriteLine(row);
/// Console.WriteLine(CarbonRatios.TurnAt(35));   // TiesUp
/// </code></example>
public static class CarbonRatios
{
    private const double ReleasesBelow = 20;
    private const double TiesUpAbove = 30;

    private static readonly Source SantaCruz = new(
        "santa-cruz-teaching-manual", "Teaching organic farming and gardening, unit 1.7", "University of California, Santa Cruz", null, "https://issuhub.com/view/index?id=3560&pageIndex=317");

    private static readonly Source Course = new(
        "compost-calculations-course", "Compost calculations", "course hand-out", null, "https://siteproxy.ruqli.workers.dev:443/https/www.scribd.com/document/475881217/compost-calculations");

    private static readonly Source Washington = new(
        "washington-too-much-compost", "Too much compost", "Washington State University Extension", 2016, "http://ext100.wsu.edu/gardentips/2016/08/02/too-much-compost/");

    /// <summary>Every ratio there is.</summary>
    public static IReadOnlyList<CarbonRatio> All { get; } = ValueList<CarbonRatio>.Of(
    [
        new("wood chips", 400, null, SantaCruz),
        new("straw", 70, null, SantaCruz),
        new("brown leaves", 40, null, SantaCruz),
        new("poultry manure", 6, 12, SantaCruz),
        new("horse manure", 20, null, SantaCruz),
        new("mature compost", 15, 20, Course),
        new("stable compost", 12, 15, Washington),
    ]);

    /// <summary>Where the two limits of <see cref="TurnAt"/> are printed.</summary>
    public static Source TurnSource { get; } = new(
        "alberta-nutrient-guide",
        "Nutrient management planning guide, chapter 4.3",
        "Alberta Agriculture",
        null,
        "http://www.agric.gov.ab.ca/flippingbook/agdex/400_28-3/html/files/assets/seo/page173.html");

    /// <summary>The rows whose material names a word.</summary>
    /// <param name="word">The word, capitals or not.</param>
    /// <returns>The rows; none where no source names it.</returns>
    /// <exception cref="ArgumentException">The word is empty.</exception>
    public static IReadOnlyList<CarbonRatio> Naming(string word)
    {
        Guard.NotBlank(word);
        return ValueList<CarbonRatio>.Of(All.Where(row => row.Material.Contains(word, StringComparison.OrdinalIgnoreCase)));
    }

    /// <summary>Which way the nitrogen of a material goes while it rots: below 20 it is released, above 30 it is tied up.</summary>
    /// <param name="carbonToNitrogen">Carbon to one of nitrogen by mass; zero or more.</param>
    /// <returns>The way.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is negative.</exception>
    public static NitrogenTurn TurnAt(double carbonToNitrogen) => Guard.NotNegative(carbonToNitrogen, "") switch
    {
        < ReleasesBelow => NitrogenTurn.Releases,
        > TiesUpAbove => NitrogenTurn.TiesUp,
        _ => NitrogenTurn.Balanced,
    };
}
