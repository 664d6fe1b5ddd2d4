using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>How much of a material passes one sieve, by mass.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record SievePassing
{
    /// <summary>Describes how much passes a sieve.</summary>
    /// <param name="opening">The opening of the sieve; above zero.</param>
    /// <param name="passing">The share that passes; 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">The opening is not above zero, or the share not from 0 to 100 %.</exception>
    public SievePassing(Length opening, Ratio passing)
    {
        Guard.Positive(Boundary.Metres(opening) * 1000, "mm", nameof(opening));
        Opening = HouseUnits.Normalise(opening);
        Guard.Within(Boundary.Fraction(passing) * 100, 0, 100, "%", nameof(passing));
        Passing = HouseUnits.Normalise(passing);
    }

    /// <summary>The opening of the sieve.</summary>
    public Length Opening { get; }

    /// <summary>The share that passes.</summary>
    public Ratio Passing { get; }

    /// <summary>The share and the opening in millimetres, in invariant culture.</summary>
    /// <returns>For instance <c>90 % through 2.38 mm</c>.</returns>
    public override string ToString() => $"{Guard.Number(Fraction * 100)} % through {Guard.Number(OpeningMillimetres)} mm";

    internal double Fraction => Boundary.Fraction(Passing);

    internal double OpeningMillimetres => Boundary.Metres(Opening) * 1000;

    /// <summary>Describes how much passes a sieve of the United States series.</summary>
    /// <param name="mesh">The number of the sieve: 4, 8, 10, 20, 30, 40, 50, 60 or 100.</param>
    /// <param name="passing">The share that passes; 0 to 100 %.</param>
    /// <returns>The sieve with its opening and the share.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The sieve is another one, or the share not from 0 to 100 %.</exception>
    public static SievePassing Mesh(int mesh, Ratio passing) => new(SieveAnalysis.OpeningOf(mesh), passing);
}
