using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>A mix by parts of loose volume, with where the recipe comes from.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. When coarse and fine are mixed, the fine falls between the coarse, and the
/// mix measures less than its components did. How much less is not published in a form this library has seen, and so the loss is
/// always the caller's: the share of the components' summed volume that is gone after mixing.
/// </remarks>
/// <example><code>
/// MediumRecipe recipe = MediumRecipes.JohnInnesPotting;
/// MediumBatch batch = recipe.ForBatch(Volume.FromLiters(120), mixingLoss: Ratio.Zero);
/// // loam 70 L, peat 30 L, sand 20 L
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record MediumRecipe : IFormattable, IDisplayable
{
    /// <summary>Describes a recipe.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="components">The components, each material once; at least one.</param>
    /// <param name="source">Where it comes from.</param>
    /// <exception cref="ArgumentException">The name is empty, or a material is there twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no component.</exception>
    public MediumRecipe(string name, IReadOnlyList<MediumComponent> components, Source source)
    {
        Name = Guard.NotBlank(name);
        Guard.AtLeast(Guard.NotNull(components).Count, 1, nameof(components));
        Components = ValueList<MediumComponent>.Of(components);
        Source = Guard.NotNull(source);
        string? twice = Components.GroupBy(component => component.Material).FirstOrDefault(group => group.Count() > 1)?.Key;
        if (twice is not null)
            throw new ArgumentException($"components name '{twice}' twice; allowed: each material once.", nameof(components));
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The components, in the order of the recipe.</summary>
    public IReadOnlyList<MediumComponent> Components { get; }

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }

    /// <summary>The share of one component in the summed loose volumes.</summary>
    /// <param name="material">The component.</param>
    /// <returns>Its parts over all parts.</returns>
    /// <exception cref="ArgumentException">The recipe has no such component; the message lists those it has.</exception>
    public Ratio ShareOf(string material) => Ratio.FromPercent(100 * Component(material).Parts / AllParts);

    /// <summary>The components of a batch.</summary>
    /// <param name="batch">The volume of the finished mix; zero or more.</param>
    /// <param name="mixingLoss">The share of the components' summed volume that is gone after mixing; zero where none is
    /// counted, below 100 %.</param>
    /// <returns>The volume of each component.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative, or the loss is outside its range.</exception>
    public MediumBatch ForBatch(Volume batch, Ratio mixingLoss) => new(this, batch, mixingLoss);

    /// <summary>The batch that uses up a volume of one component.</summary>
    /// <param name="material">The component.</param>
    /// <param name="available">How much of it there is; zero or more.</param>
    /// <param name="mixingLoss">The share of the components' summed volume that is gone after mixing; zero where none is
    /// counted, below 100 %.</param>
    /// <returns>The batch, with the volumes of the other components.</returns>
    /// <exception cref="ArgumentException">The recipe has no such component; the message lists those it has.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative, or the loss is outside its range.</exception>
    public MediumBatch BatchFrom(string material, Volume available, Ratio mixingLoss)
    {
        double parts = Component(material).Parts;
        double availableLitres = Guard.NotNegative(Boundary.Litres(available), "L", nameof(available));
        double keptShare = 1 - MediumBatch.Loss(mixingLoss);
        return new MediumBatch(this, Volume.FromLiters(availableLitres * AllParts / parts * keptShare), mixingLoss);
    }

    /// <summary>The recipe in one line.</summary>
    /// <returns>For instance <c>John Innes potting: 7 loam, 3 peat, 2 sand, parts by volume [source]</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The recipe in one line; parts read the same in all units.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The name, the components in parts and the source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        IEnumerable<string> parts = Components.Select(component => $"{QuantityText.Of(component.Parts, style)} {component.Material}");
        return $"{Name}: {string.Join(", ", parts)}, parts by volume [{Source}]";
    }

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(Name)
    {
        Rows =
        [
            .. Components.Select(component => new DisplayRow(
                component.Material, QuantityText.Of(component.Parts, style) + (component.Parts == 1 ? " part" : " parts"))),
            new DisplayRow("source", Source.ToString()),
        ],
    };

    internal double AllParts => Components.Sum(component => component.Parts);

    private MediumComponent Component(string material)
    {
        Guard.NotBlank(material);
        return Components.FirstOrDefault(component => component.Material == material)
            ?? throw new ArgumentException(
                $"material was '{material}'; allowed: {string.Join(", ", Components.Select(component => component.Material))}.",
                nameof(material));
    }
}
