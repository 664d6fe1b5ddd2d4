using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A published way to judge how much of a liming material is fine enough to act.</summary>
/// <remarks>
/// Immutable. Most weigh the share between two sieves; Iowa weighs what passes each sieve, whose weights add up to 1. The two are kept apart:
/// the weights of one kind do not fit the shares of the other.
/// </remarks>
public sealed record FinenessScheme
{
    private readonly (double Millimetres, double Weight)[] weights;

    private FinenessScheme(string key, string name, Source source, string basis, bool isCumulative, params (int Mesh, double Weight)[] weights)
        : this(key, name, source, basis, isCumulative, [.. weights.Select(weight => (SieveAnalysis.OpeningOf(weight.Mesh).Millimeters, weight.Weight))])
    {
    }

    private FinenessScheme(string key, string name, Source source, string basis, bool isCumulative, (double Millimetres, double Weight)[] weights)
    {
        Evidence = new Method(key, name, source, new Domain(basis));
        IsCumulative = isCumulative;
        this.weights = weights;
    }

    /// <summary>New York: between 20 and 60 mesh 0.40, between 60 and 100 mesh 0.80, through 100 mesh 1; within a year.</summary>
    public static FinenessScheme NewYork { get; } = new(
        "fineness-new-york", "effective neutralizing value, New York", MaterialSources.CornellEnv, "what reacts within a year", false, (20, 0.40), (60, 0.80), (100, 1));

    /// <summary>Missouri: between 8 and 40 mesh 0.25, between 40 and 60 mesh 0.60, through 60 mesh 1.</summary>
    public static FinenessScheme Missouri { get; } = new(
        "fineness-missouri", "effective neutralizing material, Missouri", MaterialSources.Missouri, "agricultural lime", false, (8, 0.25), (40, 0.60), (60, 1));

    /// <summary>Iowa: 0.1 of what passes 4 mesh, 0.3 of what passes 8 and 0.6 of what passes 60; cumulative.</summary>
    public static FinenessScheme Iowa { get; } = new(
        "fineness-iowa", "effective calcium carbonate equivalent, Iowa", MaterialSources.Iowa, "agricultural lime", true, (4, 0.1), (8, 0.3), (60, 0.6));

    /// <summary>Mississippi P3762: between 10 and 50 mesh 0.5, through 50 mesh 1.</summary>
    public static FinenessScheme Mississippi { get; } = new(
        "fineness-mississippi", "relative neutralizing value, Mississippi", MaterialSources.Mississippi, "agricultural lime", false, (10, 0.5), (50, 1));

    /// <summary>Another page of Mississippi State University: between 10 and 60 mesh 0.5, through 60 mesh 1.</summary>
    public static FinenessScheme MississippiSixtyMesh { get; } = new(
        "fineness-mississippi-60", "relative neutralizing value, Mississippi, 60 mesh", MaterialSources.MississippiSixty, "agricultural lime", false, (10, 0.5), (60, 1));

    /// <summary>Ohio, as British Columbia prints it: between 8 and 20 mesh 0.20, between 20 and 60 mesh 0.60, through 60 mesh 1.</summary>
    public static FinenessScheme Ohio { get; } = new(
        "fineness-ohio", "fineness by the Ohio method", MaterialSources.Ohio, "agricultural lime", false, (8, 0.2), (20, 0.6), (60, 1));

    /// <summary>Ontario: between 10 and 60 mesh 0.40, through 60 mesh 1.</summary>
    public static FinenessScheme Ontario { get; } = new(
        "fineness-ontario", "fineness rating, Ontario", MaterialSources.Ontario, "agricultural lime", false, (10, 0.4), (60, 1));

    /// <summary>Peat media, calcitic carbonate, after seven days: six fractions from 2000 to 45 micrometres.</summary>
    public static FinenessScheme PeatMedia { get; } = new(
        "fineness-peat-media", "effective carbonate in peat media after seven days", MaterialSources.PeatMedia, "calcitic carbonate in peat, day 7", false,
        [(2.0, 0.13), (0.85, 0.40), (0.25, 0.78), (0.15, 0.97), (0.075, 1), (0.045, 1)]);

    /// <summary>Every scheme there is.</summary>
    public static IReadOnlyList<FinenessScheme> All { get; } = ValueList<FinenessScheme>.Of(
        [NewYork, Missouri, Iowa, Mississippi, MississippiSixtyMesh, Ohio, Ontario, PeatMedia]);

    /// <summary>The scheme's key, name and source.</summary>
    public Method Evidence { get; }

    /// <summary>Whether the weights are of all that passes a sieve, rather than of the share between two.</summary>
    public bool IsCumulative { get; }

    /// <summary>The sieves that the scheme asks for, from the coarsest to the finest.</summary>
    public IReadOnlyList<Length> Sieves => ValueList<Length>.Of([.. weights.Select(weight => HouseUnits.Normalise(Length.FromMillimeters(weight.Millimetres)))]);

    /// <summary>Finds a scheme by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>.</param>
    /// <returns>The scheme.</returns>
    /// <exception cref="ArgumentException">There is no such scheme, or the key is empty.</exception>
    public static FinenessScheme FromKey(string key)
    {
        Guard.NotBlank(key);
        return All.FirstOrDefault(scheme => scheme.Evidence.Key == key)
            ?? throw new ArgumentException($"key was '{key}'; allowed: {string.Join(", ", All.Select(scheme => scheme.Evidence.Key))}.", nameof(key));
    }

    /// <summary>How much of a material is fine enough to act.</summary>
    /// <param name="sieves">The sieve analysis. It must hold the sieves of the scheme, save coarse ones that all passes.</param>
    /// <returns>The share that acts, 0 to 100 %.</returns>
    /// <exception cref="ArgumentNullException">The analysis is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The analysis lacks a sieve of the scheme; between sieves nothing is guessed.</exception>
    public Estimate<Ratio> Fineness(SieveAnalysis sieves) => new(Ratio.FromPercent(100 * Fraction(sieves)), Evidence);

    /// <summary>The scheme's name.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Evidence.Name;

    internal double Fraction(SieveAnalysis sieves)
    {
        Guard.NotNull(sieves);
        double[] passing = [.. weights.Select(weight => sieves.FractionThrough(weight.Millimetres) ?? throw Lacking(weight.Millimetres, sieves))];
        double sum = 0;
        for (int i = 0; i < passing.Length; i++)
        {
            double finer = IsCumulative || i == passing.Length - 1 ? 0 : passing[i + 1];
            sum += weights[i].Weight * (passing[i] - finer);
        }

        return sum;
    }

    private ArgumentException Lacking(double millimetres, SieveAnalysis sieves) => new(
        $"sieves has no sieve of {Guard.Number(millimetres)} mm; '{Evidence.Name}' needs {string.Join(", ", weights.Select(weight => Guard.Number(weight.Millimetres)))} mm.",
        nameof(sieves));
}
