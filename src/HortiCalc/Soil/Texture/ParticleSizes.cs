using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The shares of sand, silt and clay in the mineral part of a soil below 2 mm.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. The three must make 100 % within the rounding of three whole per cents, from 99 to 101 %; they
/// are kept as given. Where they do not make 100 % exactly, sand and clay decide and silt is taken as the rest. Where silt ends is a matter of
/// the laboratory: at 50 µm in the United States, 60 or 63 µm in Britain, 20 µm in Australia.
/// </remarks>
/// <example><code>
/// ParticleSizes garden = new(sand: MassFraction.FromPercent(40), silt: MassFraction.FromPercent(42), clay: MassFraction.FromPercent(18));
/// Console.WriteLine(SoilTextures.Classify(garden).Value);      // Loam
/// </code></example>
public sealed record ParticleSizes : IFormattable
{
    private const double Rounding = 1;

    /// <summary>Holds the shares of a report.</summary>
    /// <param name="sand">The share of sand, from 0 to 100 %.</param>
    /// <param name="silt">The share of silt, from 0 to 100 %.</param>
    /// <param name="clay">The share of clay, from 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share is not from 0 to 100 %, or the three make less than 99 or more than 101 %.</exception>
    public ParticleSizes(MassFraction sand, MassFraction silt, MassFraction clay)
    {
        Sand = HouseUnits.Normalise(sand);
        Silt = HouseUnits.Normalise(silt);
        Clay = HouseUnits.Normalise(clay);
        SandPercent = Guard.Within(Boundary.MassFraction(Sand) * 100, 0, 100, "%", nameof(sand));
        double siltPercent = Guard.Within(Boundary.MassFraction(Silt) * 100, 0, 100, "%", nameof(silt));
        ClayPercent = Guard.Within(Boundary.MassFraction(Clay) * 100, 0, 100, "%", nameof(clay));
        double rest = 100 - SandPercent - ClayPercent;
        if (!(Math.Abs(siltPercent - rest) <= Rounding + Hair))
            throw Guard.Refused(
                nameof(silt),
                siltPercent,
                "%",
                $"{Guard.Number(rest)} % beside {Guard.Number(SandPercent)} % of sand and {Guard.Number(ClayPercent)} % of clay, within 1 %, so that they make 100 %");
    }

    /// <summary>The share of sand.</summary>
    public MassFraction Sand { get; }

    /// <summary>The share of silt, as given.</summary>
    public MassFraction Silt { get; }

    /// <summary>The share of clay.</summary>
    public MassFraction Clay { get; }

    // Decimals of a report leave a hair in 100 - sand - clay; a class must not hang on it.
    internal const double Hair = 1e-9;

    internal double SandPercent { get; }

    internal double ClayPercent { get; }

    internal double SiltPercent => Math.Max(0, Math.Round(100 - SandPercent - ClayPercent, 9, MidpointRounding.AwayFromZero));

    /// <summary>The shares where a report gives sand and clay alone; silt is the rest.</summary>
    /// <param name="sand">The share of sand, from 0 to 100 %.</param>
    /// <param name="clay">The share of clay, from 0 to 100 % less the sand.</param>
    /// <returns>The shares.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A share is negative, or the two are more than 100 %.</exception>
    public static ParticleSizes FromSandAndClay(MassFraction sand, MassFraction clay)
    {
        double sandPercent = Guard.Within(Boundary.MassFraction(sand) * 100, 0, 100, "%", nameof(sand));
        double clayPercent = Guard.Within(Boundary.MassFraction(clay) * 100, 0, 100 - sandPercent + Hair, "%", nameof(clay));
        return new ParticleSizes(sand, MassFraction.FromPercent(Math.Max(0, Math.Round(100 - sandPercent - clayPercent, 9, MidpointRounding.AwayFromZero))), clay);
    }

    /// <summary>The shares in invariant culture.</summary>
    /// <returns>For instance <c>sand 40 %, silt 42 %, clay 18 %</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The shares as one line of text.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The three shares.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style) =>
        $"sand {Share(Sand, style)}, silt {Share(Silt, style)}, clay {Share(Clay, style)}";

    private static string Share(MassFraction share, TextStyle style) => $"{QuantityText.Number(Boundary.MassFraction(share) * 100, style)} %";
}
