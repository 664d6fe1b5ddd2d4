using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Mixes;

/// <summary>What a publication wants in a feed for a crop, element by element.</summary>
public sealed record NutrientTarget
{
    /// <summary>Describes what a publication wants.</summary>
    /// <param name="key">A short stable name.</param>
    /// <param name="name">For what crop, and by whom.</param>
    /// <param name="source">Where it was printed.</param>
    /// <param name="elements">The ranges, each element once.</param>
    /// <exception cref="ArgumentException">A text is empty, or an element is named twice.</exception>
    public NutrientTarget(string key, string name, Source source, IReadOnlyList<NutrientRange> elements)
    {
        Key = Guard.NotBlank(key);
        Name = Guard.NotBlank(name);
        Source = Guard.NotNull(source);
        Elements = ValueList<NutrientRange>.Of(Guard.NotNull(elements));
        if (Elements.Select(range => range.Element).Distinct().Count() < Elements.Count)
            throw new ArgumentException($"{nameof(elements)} of '{name}' names an element twice; allowed: each once.", nameof(elements));
    }

    /// <summary>A short stable name.</summary>
    public string Key { get; }

    /// <summary>For what crop, and by whom.</summary>
    public string Name { get; }

    /// <summary>Where it was printed.</summary>
    public Source Source { get; }

    /// <summary>The ranges.</summary>
    public IReadOnlyList<NutrientRange> Elements { get; }

    /// <summary>The range of an element, or <see langword="null"/> where the publication has none.</summary>
    /// <param name="element">The element.</param>
    /// <returns>The range.</returns>
    public NutrientRange? Of(NutrientElement element) => Elements.FirstOrDefault(range => range.Element == element);

    /// <summary>The elements of which a solution holds too little or too much.</summary>
    /// <param name="solution">The solution.</param>
    /// <returns>The ranges it lies outside of; empty where it meets them all.</returns>
    /// <exception cref="ArgumentNullException">The solution is missing.</exception>
    public IReadOnlyList<NutrientRange> MissedBy(SolutionIons solution) =>
        ValueList<NutrientRange>.Of(Elements.Where(range => !range.Holds(Guard.NotNull(solution))));

    /// <summary>The name and the source.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => $"{Name} [{Source}]";
}
