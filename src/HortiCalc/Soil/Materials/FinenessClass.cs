using System.Text.Json.Serialization;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A class of fineness that a law or a public office prints: what must pass which sieve at least.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
/// <example><code>
/// SieveAnalysis label = SieveAnalysis.OfMeshes((20, 96), (60, 62), (100, 48));
/// foreach (FinenessClass known in FinenessClass.All.Where(known => known.Meets(label) == true))
///     Console.WriteLine(known);
/// </code></example>
public sealed record FinenessClass
{
    private static readonly Source StateSpecifications = new(
        "spectrum-state-lime-specifications", "State Ag Limestone Classification Based on Standards of Fineness", "Spectrum Analytic", 2001,
        "https://www.spectrumanalytic.com/doc/library/articles/state_lime_specifications");

    private static readonly Source Florida = new(
        "hay-forage-lime", "Not all lime is created equal", "Hay and Forage Grower, quoting the University of Florida", null,
        "https://hayandforage.com/article-3524-Not-all-lime-is-created-equal.html");

    private FinenessClass(string jurisdiction, string name, Source source, params (int Mesh, double Percent)[] least)
        : this(
            jurisdiction,
            name,
            source,
            (IReadOnlyList<SievePassing>)[.. least.Select(sieve => SievePassing.Mesh(sieve.Mesh, Ratio.FromPercent(sieve.Percent)))])
    {
    }

    /// <summary>Describes a class of fineness.</summary>
    /// <param name="jurisdiction">Whose class it is.</param>
    /// <param name="name">The name of the class.</param>
    /// <param name="source">Where it is printed.</param>
    /// <param name="least">What must pass each sieve at least.</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentNullException">The source or the sieves are <see langword="null"/>.</exception>
    [JsonConstructor]
    public FinenessClass(string jurisdiction, string name, Source source, IReadOnlyList<SievePassing> least)
    {
        Jurisdiction = Guard.NotBlank(jurisdiction);
        Name = Guard.NotBlank(name);
        Source = Guard.NotNull(source);
        Least = ValueList<SievePassing>.Of(Guard.NotNull(least));
    }

    /// <summary>Every class, as printed.</summary>
    public static IReadOnlyList<FinenessClass> All { get; } = ValueList<FinenessClass>.Of(
    [
        new("Connecticut", "fine", StateSpecifications, (20, 95), (60, 60), (100, 50)),
        new("Connecticut", "medium", StateSpecifications, (20, 90), (60, 50), (100, 30)),
        new("Connecticut", "coarse", StateSpecifications, (20, 80), (100, 20)),
        new("Maine", "fine", StateSpecifications, (20, 95), (60, 60), (100, 50)),
        new("Maine", "medium", StateSpecifications, (20, 90), (60, 50), (100, 30)),
        new("Kentucky", "standard", StateSpecifications, (10, 90), (50, 35)),
        new("Florida", "minimum", Florida, (8, 90), (20, 80), (50, 50)),
        new("Missouri", "allowance", MaterialSources.Missouri, (8, 90)),
        new(
            "United Kingdom", "basis of the association's rates", LimeSources.AgriculturalLimeAssociation,
            (IReadOnlyList<SievePassing>)[new SievePassing(Length.FromMicrometers(150), Ratio.FromPercent(40))]),
    ]);

    /// <summary>Whose class it is.</summary>
    public string Jurisdiction { get; }

    /// <summary>The name of the class.</summary>
    public string Name { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>What must pass each sieve at least, from the coarsest to the finest.</summary>
    public IReadOnlyList<SievePassing> Least { get; }

    /// <summary>Whether a material is as fine as the class asks.</summary>
    /// <param name="sieves">Its sieve analysis.</param>
    /// <returns><see langword="null"/> where the analysis lacks a sieve of the class and the others do not decide.</returns>
    /// <exception cref="ArgumentNullException">The analysis is <see langword="null"/>.</exception>
    public bool? Meets(SieveAnalysis sieves)
    {
        Guard.NotNull(sieves);
        double?[] through = [.. Least.Select(least => sieves.FractionThrough(least.OpeningMillimetres))];
        if (Least.Zip(through).Any(pair => pair.Second < pair.First.Fraction))
            return false;
        return through.Any(share => share is null) ? null : true;
    }

    /// <summary>Whose class it is and its name.</summary>
    /// <returns>For instance <c>Maine, fine</c>.</returns>
    public override string ToString() => $"{Jurisdiction}, {Name}";
}
