using System.Globalization;

namespace HortiCalc.Units;

/// <summary>Exchangeable charge per volume of soil, as laboratories that scoop their samples report it.</summary>
/// <remarks>One centimole of charge per litre is one milliequivalent per 100 cubic centimetres. Never negative. The default value is zero.</remarks>
public readonly record struct VolumetricCharge : IComparable<VolumetricCharge>, IFormattable
{
    private VolumetricCharge(double centimolesPerLitre) => CentimolesPerLitre = centimolesPerLitre;

    /// <summary>Centimoles of charge per litre of soil, the same number as milliequivalents per 100 cubic centimetres.</summary>
    public double CentimolesPerLitre { get; }

    /// <summary>Milliequivalents per 100 cubic centimetres of soil, the same number as centimoles of charge per litre.</summary>
    public double MilliequivalentsPer100CubicCentimetres => CentimolesPerLitre;

    /// <summary>Makes a charge from centimoles per litre.</summary>
    /// <param name="value">Zero or more.</param>
    /// <returns>The charge.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static VolumetricCharge FromCentimolesPerLitre(double value) => new(Guard.NotNegative(value, "cmol(c)/L"));

    /// <summary>Makes a charge from milliequivalents per 100 cubic centimetres.</summary>
    /// <param name="value">Zero or more.</param>
    /// <returns>The charge.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static VolumetricCharge FromMilliequivalentsPer100CubicCentimetres(double value) => new(Guard.NotNegative(value, "meq/100 cm³"));

    /// <inheritdoc/>
    public int CompareTo(VolumetricCharge other) => CentimolesPerLitre.CompareTo(other.CentimolesPerLitre);

    /// <summary>The charge in invariant culture.</summary>
    /// <returns>For instance <c>5.2 cmol(c)/L</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The charge as text.</summary>
    /// <param name="format"><c>M</c> or nothing for cmol(c)/L, <c>U</c> for meq/100 cm³.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The number and the unit.</returns>
    public string ToString(string? format, IFormatProvider? formatProvider) =>
        CentimolesPerLitre.ToString("R", formatProvider ?? CultureInfo.InvariantCulture)
        + (format is "U" or "u" ? " meq/100 cm³" : " cmol(c)/L");

    /// <summary>Whether one charge is smaller than the other.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The comparison of the numbers.</returns>
    public static bool operator <(VolumetricCharge left, VolumetricCharge right) => left.CompareTo(right) < 0;

    /// <summary>Whether one charge is larger than the other.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The comparison of the numbers.</returns>
    public static bool operator >(VolumetricCharge left, VolumetricCharge right) => left.CompareTo(right) > 0;

    /// <summary>Whether one charge is at most the other.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The comparison of the numbers.</returns>
    public static bool operator <=(VolumetricCharge left, VolumetricCharge right) => left.CompareTo(right) <= 0;

    /// <summary>Whether one charge is at least the other.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The comparison of the numbers.</returns>
    public static bool operator >=(VolumetricCharge left, VolumetricCharge right) => left.CompareTo(right) >= 0;
}
