using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>How much of a liming material passes each of some sieves: cumulative, as labels print it, never the share between two sieves.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
/// <example><code>
/// SieveAnalysis label = SieveAnalysis.OfMeshes((4, 100), (8, 90), (60, 55));
/// Console.WriteLine(FinenessScheme.Iowa.Fineness(label));   // 70 %
/// </code></example>
public sealed record SieveAnalysis
{
    // ServiTech, Crop File 2.03.011, Table 1: nominal openings in millimetres.
    private static readonly Dictionary<int, double> OpeningMillimetres = new()
    {
        [4] = 4.76,
        [8] = 2.38,
        [10] = 2.0,
        [20] = 0.841,
        [30] = 0.595,
        [40] = 0.42,
        [50] = 0.297,
        [60] = 0.25,
        [100] = 0.149,
    };

    /// <summary>Describes a sieve analysis.</summary>
    /// <param name="sieves">Sieves from the coarsest to the finest; at least one. What passes never rises.</param>
    /// <exception cref="ArgumentException">There is no sieve, or they are out of order, or a finer one lets more pass.</exception>
    public SieveAnalysis(IReadOnlyList<SievePassing> sieves)
    {
        Sieves = ValueList<SievePassing>.Of(Guard.NotNull(sieves));
        if (Sieves.Count == 0)
            throw new ArgumentException("sieves has no item; allowed: at least one.", nameof(sieves));
        for (int i = 1; i < Sieves.Count; i++)
        {
            if (!(Sieves[i].OpeningMillimetres < Sieves[i - 1].OpeningMillimetres && Sieves[i].Fraction <= Sieves[i - 1].Fraction))
            {
                throw new ArgumentException(
                    $"sieves has {Guard.Number(Sieves[i].Fraction * 100)} % through {Guard.Number(Sieves[i].OpeningMillimetres)} mm after "
                    + $"{Guard.Number(Sieves[i - 1].Fraction * 100)} % through {Guard.Number(Sieves[i - 1].OpeningMillimetres)} mm; "
                    + "allowed: from coarse to fine, and never more through the finer.",
                    nameof(sieves));
            }
        }
    }

    /// <summary>The sieves from the coarsest to the finest.</summary>
    public IReadOnlyList<SievePassing> Sieves { get; }

    /// <summary>A sieve analysis on sieves of the United States series.</summary>
    /// <param name="sieves">The number of each sieve and the percentage that passes it, from the coarsest to the finest.</param>
    /// <returns>The analysis.</returns>
    /// <exception cref="ArgumentException">See the constructor; or a sieve or share is impossible.</exception>
    public static SieveAnalysis OfMeshes(params IReadOnlyList<(int Mesh, double PercentPassing)> sieves) =>
        new([.. Guard.NotNull(sieves).Select(sieve => SievePassing.Mesh(sieve.Mesh, Ratio.FromPercent(sieve.PercentPassing)))]);

    /// <summary>The nominal opening of a sieve of the United States series.</summary>
    /// <param name="mesh">The number: 4, 8, 10, 20, 30, 40, 50, 60 or 100.</param>
    /// <returns>The opening.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The sieve is another one.</exception>
    public static Length OpeningOf(int mesh) => OpeningMillimetres.TryGetValue(mesh, out double millimetres)
        ? Length.FromMillimeters(millimetres)
        : throw Guard.Refused(nameof(mesh), mesh, "mesh", string.Join(", ", OpeningMillimetres.Keys.Select(known => Guard.Number(known))));

    /// <summary>The analysis in millimetres and invariant culture.</summary>
    /// <returns>For instance <c>100 % through 4.76 mm, 90 % through 2.38 mm</c>.</returns>
    public override string ToString() => string.Join(", ", Sieves);

    /// <summary>What passes a sieve; known where the sieve is in the analysis, or where all passes a finer one.</summary>
    internal double? FractionThrough(double millimetres)
    {
        foreach (SievePassing sieve in Sieves)
        {
            bool isSame = Math.Abs(sieve.OpeningMillimetres - millimetres) < 1e-6;
            if (isSame || (sieve.OpeningMillimetres < millimetres && sieve.Fraction == 1))
                return sieve.Fraction;
        }

        return null;
    }
}
