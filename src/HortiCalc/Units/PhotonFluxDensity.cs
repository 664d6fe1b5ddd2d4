using System.Diagnostics.CodeAnalysis;
using System.Numerics;

namespace HortiCalc.Units;

/// <summary>How much light that plants can use falls on a place at a moment: photons of 400 to 700 nm on an area in a time, PPFD in print.</summary>
/// <remarks>Full sun at noon is about 2000 µmol/(m²·s), a bright window sill 100 to 300. The default value is zero.</remarks>
/// <example><code>
/// PhotonFluxDensity lamp = PhotonFluxDensity.FromMicromolesPerSquareMetreSecond(150);
/// </code></example>
public readonly record struct PhotonFluxDensity :
    IComparable<PhotonFluxDensity>,
    IComparisonOperators<PhotonFluxDensity, PhotonFluxDensity, bool>,
    IAdditionOperators<PhotonFluxDensity, PhotonFluxDensity, PhotonFluxDensity>,
    IFormattable,
    ISpanParsable<PhotonFluxDensity>
{
    private const string Unit = "µmol/(m²·s)";

    private PhotonFluxDensity(double micromolesPerSquareMetreSecond) => MicromolesPerSquareMetreSecond = micromolesPerSquareMetreSecond;

    /// <summary>No light.</summary>
    public static PhotonFluxDensity Zero => default;

    /// <summary>The light in micromoles of photons a square metre and second.</summary>
    public double MicromolesPerSquareMetreSecond { get; }

    internal static QuantityNotation<PhotonFluxDensity> Notation { get; } = new(
        "photon flux density", 1, new NotedUnit<PhotonFluxDensity>(Unit, light => light.MicromolesPerSquareMetreSecond, FromMicromolesPerSquareMetreSecond));

    /// <summary>Light in micromoles of photons a square metre and second.</summary>
    /// <param name="value">0 or more.</param>
    /// <returns>The light.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static PhotonFluxDensity FromMicromolesPerSquareMetreSecond(double value) => new(Guard.NotNegative(value, Unit));

    /// <summary>Adds the light of two sources that shine on the same place.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The total.</returns>
    /// <exception cref="OverflowException">The total is too large for a number.</exception>
    public static PhotonFluxDensity operator +(PhotonFluxDensity left, PhotonFluxDensity right)
    {
        double total = left.MicromolesPerSquareMetreSecond + right.MicromolesPerSquareMetreSecond;
        return double.IsFinite(total) ? new PhotonFluxDensity(total) : throw new OverflowException("A photon flux density is too large for a number.");
    }

    /// <inheritdoc cref="op_Addition"/>
    public static PhotonFluxDensity Add(PhotonFluxDensity left, PhotonFluxDensity right) => left + right;

    /// <inheritdoc/>
    public static bool operator <(PhotonFluxDensity left, PhotonFluxDensity right) => left.MicromolesPerSquareMetreSecond < right.MicromolesPerSquareMetreSecond;

    /// <inheritdoc/>
    public static bool operator >(PhotonFluxDensity left, PhotonFluxDensity right) => left.MicromolesPerSquareMetreSecond > right.MicromolesPerSquareMetreSecond;

    /// <inheritdoc/>
    public static bool operator <=(PhotonFluxDensity left, PhotonFluxDensity right) => left.MicromolesPerSquareMetreSecond <= right.MicromolesPerSquareMetreSecond;

    /// <inheritdoc/>
    public static bool operator >=(PhotonFluxDensity left, PhotonFluxDensity right) => left.MicromolesPerSquareMetreSecond >= right.MicromolesPerSquareMetreSecond;

    /// <inheritdoc/>
    public int CompareTo(PhotonFluxDensity other) => MicromolesPerSquareMetreSecond.CompareTo(other.MicromolesPerSquareMetreSecond);

    /// <summary>The light in µmol/(m²·s), in invariant culture.</summary>
    /// <returns>For instance <c>150 µmol/(m²·s)</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The light as text; the unit is the same in every country.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing for a rounded number; <c>R</c> for every digit.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The number and the unit.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => Notation.Format(this, format, formatProvider);

    /// <summary>Reads light in µmol/(m²·s) (or umol/(m2.s)).</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">The culture, or <see langword="null"/> for the invariant one; never that of the machine.</param>
    /// <returns>The light.</returns>
    /// <exception cref="FormatException">The number or the unit cannot be read; the message says which.</exception>
    public static PhotonFluxDensity Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => Notation.Parse(s, provider);

    /// <inheritdoc cref="Parse(ReadOnlySpan{char}, IFormatProvider?)"/>
    /// <exception cref="ArgumentNullException">The text is <see langword="null"/>.</exception>
    public static PhotonFluxDensity Parse(string s, IFormatProvider? provider) => Notation.Parse(Guard.NotNull(s), provider);

    /// <summary>Reads light in µmol/(m²·s), where the text is that.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">The culture, or <see langword="null"/> for the invariant one; never that of the machine.</param>
    /// <param name="result">The light.</param>
    /// <returns>Whether the text is an amount of light.</returns>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out PhotonFluxDensity result) =>
        Notation.TryParse(s, provider, out result);

    /// <inheritdoc cref="TryParse(ReadOnlySpan{char}, IFormatProvider?, out PhotonFluxDensity)"/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out PhotonFluxDensity result) =>
        Notation.TryParse(s, provider, out result);
}
