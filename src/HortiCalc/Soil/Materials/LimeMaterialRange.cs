using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>What a source prints as the calcium carbonate equivalent of a kind of liming material; the product's label comes before it.</summary>
/// <remarks>Immutable; equal when all members are equal. The wrong values in circulation, 108.5 for magnesium carbonate and 132 for hydrated lime, are not here.</remarks>
/// <example><code>
/// foreach (LimeMaterialRange ash in LimeMaterialRange.Published.Where(range => range.Material.StartsWith("Wood ash", StringComparison.Ordinal)))
///     Console.WriteLine(ash);
/// </code></example>
public sealed record LimeMaterialRange
{
    /// <summary>Describes a printed range.</summary>
    /// <param name="material">The kind of material.</param>
    /// <param name="lowest">The lowest equivalent; above zero.</param>
    /// <param name="highest">The highest, or <see langword="null"/> where only a least is printed.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentException">The material is empty.</exception>
    /// <exception cref="ArgumentNullException">The source is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The lowest is not above zero, or the highest is below it.</exception>
    public LimeMaterialRange(string material, Ratio lowest, Ratio? highest, Source source)
    {
        Material = Guard.NotBlank(material);
        double low = Guard.Positive(Boundary.Fraction(lowest) * 100, "%", nameof(lowest));
        Lowest = HouseUnits.Normalise(lowest);
        if (highest is { } most)
        {
            Guard.AtLeast(Boundary.Fraction(most) * 100, low, "%", nameof(highest));
            Highest = HouseUnits.Normalise(most);
        }

        Source = Guard.NotNull(source);
    }

    /// <summary>Every range, as printed.</summary>
    public static IReadOnlyList<LimeMaterialRange> Published { get; } = ValueList<LimeMaterialRange>.Of(
    [
        Range("Calcium carbonate (pure)", 100, 100, "Lismore Dept. of Agriculture note (rfcarchives)", "http://rfcarchives.org.au/Next/CaringForTrees/LimeQuality9-86.htm"),
        Range("Magnesium carbonate (magnesite)", 119, 119, "Lismore Dept. of Agriculture note (rfcarchives)", "http://rfcarchives.org.au/Next/CaringForTrees/LimeQuality9-86.htm"),
        Range("Slaked lime", 135, 135, "Lismore Dept. of Agriculture note (rfcarchives)", "http://rfcarchives.org.au/Next/CaringForTrees/LimeQuality9-86.htm"),
        Range("Quick lime", 178, 178, "Lismore Dept. of Agriculture note (rfcarchives)", "http://rfcarchives.org.au/Next/CaringForTrees/LimeQuality9-86.htm"),
        Range("Quicklime/burnt lime (commercial, at least)", 140, null, "Clemson (hubcap.clemson.edu)", "http://hubcap.clemson.edu/~blpprt/bobweb/BOBWEB2.HTM"),
        Range("Hydrated/slaked/builder's lime (commercial, at least)", 110, null, "Clemson (hubcap.clemson.edu)", "http://hubcap.clemson.edu/~blpprt/bobweb/BOBWEB2.HTM"),
        Range("Certified calcitic or dolomitic limestone (about)", 100, 100, "Clemson (hubcap.clemson.edu)", "http://hubcap.clemson.edu/~blpprt/bobweb/BOBWEB2.HTM"),
        Range("Common ag lime, Florida", 75, 100, "Hay & Forage Grower quoting UF", "https://hayandforage.com/article-3524-Not-all-lime-is-created-equal.html"),
        Range("Ground calcitic lime", 98, 98, "norganics table", "http://norganics.com/index-2/technical-articles/acidityalkalinity-of-fertilizer-materials"),
        Range("Ground dolomitic lime", 100, 100, "norganics table", "http://norganics.com/index-2/technical-articles/acidityalkalinity-of-fertilizer-materials"),
        Range("Basic slag", 70, 70, "norganics table", "http://norganics.com/index-2/technical-articles/acidityalkalinity-of-fertilizer-materials"),
        Range("Wood ash", 60, 60, "norganics table", "http://norganics.com/index-2/technical-articles/acidityalkalinity-of-fertilizer-materials"),
        Range("Wood ash (book on organic orchards)", 25, 60, "Growing Organic Orchard Fruits", "http://what-when-how.com/Tutorial/topic-10555ph0f/Growing-Organic-Orchard-Fruits-125.html"),
        Range("Wood ash (extension note 1991)", 50, 75, "May 91 Wood Ashes as a Fertilizer/Lime Material", "http://sunsite.unc.edu/london/agriculture/general/1/msg00108.html"),
        Range("Wood ash (garden book: use twice the lime rate)", 50, 50, "The Mini Farming guide", "http://what-when-how.com/Tutorial/topic-1693vlp/The-MiniFarming-470.html"),
        Range("Magnesium oxide", 250, 250, "norganics table", "http://norganics.com/index-2/technical-articles/acidityalkalinity-of-fertilizer-materials"),
        Range("Phosphate rock", 10, 10, "norganics table", "http://norganics.com/index-2/technical-articles/acidityalkalinity-of-fertilizer-materials"),
        Range("Agricultural marl, Kentucky 1-ton equivalent 2400 lb", 75, null, "Spectrum Analytic state lime specifications (2001)", "https://www.spectrumanalytic.com/doc/library/articles/state_lime_specifications"),
        Range("NZ quarried lime CaCO3 content", 65, 99, "Ravensdown", "https://ravensdown.co.nz/expertise/science-of-lime-saves-wasting-time"),
    ]);

    /// <summary>The kind of material.</summary>
    public string Material { get; }

    /// <summary>The lowest equivalent.</summary>
    public Ratio Lowest { get; }

    /// <summary>The highest, or <see langword="null"/> where only a least is printed.</summary>
    public Ratio? Highest { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The material and the range.</summary>
    /// <returns>For instance <c>Wood ash: 25 to 60 %</c>.</returns>
    public override string ToString()
    {
        string low = Guard.Number(Boundary.Fraction(Lowest) * 100);
        return Highest is { } most
            ? $"{Material}: {(Boundary.Fraction(most) == Boundary.Fraction(Lowest) ? low : $"{low} to {Guard.Number(Boundary.Fraction(most) * 100)}")} %"
            : $"{Material}: at least {low} %";
    }

    private static LimeMaterialRange Range(string material, double lowest, double? highest, string title, string address) => new(
        material,
        Ratio.FromPercent(lowest),
        highest is { } most ? Ratio.FromPercent(most) : null,
        new Source("lime-range-" + Key(title), title, Publisher(address), null, address));

    private static string Key(string title) => string.Concat(title.ToLowerInvariant().Select(letter => char.IsAsciiLetterOrDigit(letter) ? letter : '-'));

    private static string Publisher(string address) => new Uri(address).Host;
}
