using System.Diagnostics.CodeAnalysis;
using System.Numerics;
using UnitsNet;

namespace HortiCalc.Units;

/// <summary>A volume on an area: so much spray, or so much product, per hectare, acre or thousand square feet.</summary>
/// <remarks>Equal to twelve significant digits of L/ha. The default value is zero.</remarks>
/// <example><code>
/// VolumeRate spray = VolumeRate.FromUsGallonsPerAcre(43.56);
/// Console.WriteLine(spray.UsGallonsPerThousandSquareFeet);   // 1
/// </code></example>
public readonly record struct VolumeRate :
    IComparable<VolumeRate>,
    IComparisonOperators<VolumeRate, VolumeRate, bool>,
    IFormattable,
    ISpanParsable<VolumeRate>
{
    private const string LitresPerHectareUnit = "L/ha";
    private const string UsGallonsPerAcreUnit = "gal/acre";
    private const double SquareMetresPerHectare = 10_000;

    private const double LitresPerHectarePerGallonAnAcre =
        Boundary.LitresPerUsGallon * SquareMetresPerHectare / Boundary.SquareMetresPerAcre;

    private VolumeRate(double litresPerHectare)
    {
        double scale = litresPerHectare > 0 ? Math.Pow(10, 11 - Math.Floor(Math.Log10(litresPerHectare))) : 1;
        LitresPerHectare = double.IsFinite(scale) && scale > 0
            ? Math.Round(litresPerHectare * scale, MidpointRounding.ToEven) / scale
            : litresPerHectare;
    }

    /// <summary>The rate in litres a hectare.</summary>
    public double LitresPerHectare { get; }

    /// <summary>The rate in litres on a hundred square metres.</summary>
    public double LitresPerHundredSquareMetres => LitresPerHectare / 100;

    /// <summary>The rate in US gallons an acre.</summary>
    public double UsGallonsPerAcre => LitresPerHectare / LitresPerHectarePerGallonAnAcre;

    /// <summary>The rate in US gallons on a thousand square feet.</summary>
    public double UsGallonsPerThousandSquareFeet =>
        UsGallonsPerAcre * 1000 * Boundary.SquareMetresPerSquareFoot / Boundary.SquareMetresPerAcre;

    internal static QuantityNotation<VolumeRate> Notation { get; } = new(
        "volume on an area",
        1,
        new NotedUnit<VolumeRate>(LitresPerHectareUnit, value => value.LitresPerHectare, FromLitresPerHectare),
        new NotedUnit<VolumeRate>(UsGallonsPerAcreUnit, value => value.UsGallonsPerAcre, FromUsGallonsPerAcre));

    /// <summary>A rate in litres a hectare.</summary>
    /// <param name="value">0 or more.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static VolumeRate FromLitresPerHectare(double value) => new(Guard.NotNegative(value, LitresPerHectareUnit));

    /// <summary>A rate in US gallons an acre.</summary>
    /// <param name="value">0 or more.</param>
    /// <returns>The rate; 1 gal/acre is 9.35 L/ha.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static VolumeRate FromUsGallonsPerAcre(double value) =>
        new(Guard.NotNegative(value, UsGallonsPerAcreUnit) * LitresPerHectarePerGallonAnAcre);

    /// <summary>The rate of a volume on an area.</summary>
    /// <param name="volume">The volume; 0 or more.</param>
    /// <param name="area">The area; more than 0.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what is allowed.</exception>
    public static VolumeRate Of(Volume volume, Area area)
    {
        double litres = Guard.NotNegative(Boundary.Litres(volume), "L", nameof(volume));
        return new VolumeRate(litres / Guard.Positive(Boundary.SquareMetres(area), "m²", nameof(area)) * SquareMetresPerHectare);
    }

    /// <summary>The volume that an area takes.</summary>
    /// <param name="area">The area; 0 or more.</param>
    /// <returns>The volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The area is negative or not finite.</exception>
    public Volume Over(Area area) =>
        Volume.FromLiters(LitresPerHectare * Guard.NotNegative(Boundary.SquareMetres(area), "m²", nameof(area)) / SquareMetresPerHectare);

    /// <summary>The area that a volume covers.</summary>
    /// <param name="volume">The volume; 0 or more.</param>
    /// <returns>The area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative or not finite.</exception>
    /// <exception cref="InvalidOperationException">The rate is 0, so that no volume is used up.</exception>
    public Area CoveredBy(Volume volume)
    {
        double litres = Guard.NotNegative(Boundary.Litres(volume), "L", nameof(volume));
        return LitresPerHectare > 0
            ? Area.FromSquareMeters(litres * SquareMetresPerHectare / LitresPerHectare)
            : throw new InvalidOperationException("A rate of 0 L/ha covers any area; allowed: a rate greater than 0.");
    }

    /// <inheritdoc/>
    public static bool operator <(VolumeRate left, VolumeRate right) => left.CompareTo(right) < 0;

    /// <inheritdoc/>
    public static bool operator >(VolumeRate left, VolumeRate right) => left.CompareTo(right) > 0;

    /// <inheritdoc/>
    public static bool operator <=(VolumeRate left, VolumeRate right) => left.CompareTo(right) <= 0;

    /// <inheritdoc/>
    public static bool operator >=(VolumeRate left, VolumeRate right) => left.CompareTo(right) >= 0;

    /// <inheritdoc/>
    public int CompareTo(VolumeRate other) => LitresPerHectare.CompareTo(other.LitresPerHectare);

    /// <summary>The rate in litres a hectare, in invariant culture.</summary>
    /// <returns>For instance <c>200 L/ha</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The rate as text.</summary>
    /// <param name="format"><c>M</c> or nothing for L/ha and <c>U</c> for gal/acre, to one decimal; <c>R</c> for L/ha with every digit.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The number and the unit.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => Notation.Format(this, format, formatProvider);

    /// <summary>Reads a rate in L/ha or gal/acre.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">The culture, or <see langword="null"/> for the invariant one; never that of the machine.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="FormatException">The number or the unit cannot be read; the message says which.</exception>
    public static VolumeRate Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => Notation.Parse(s, provider);

    /// <inheritdoc cref="Parse(ReadOnlySpan{char}, IFormatProvider?)"/>
    /// <exception cref="ArgumentNullException">The text is <see langword="null"/>.</exception>
    public static VolumeRate Parse(string s, IFormatProvider? provider) => Notation.Parse(Guard.NotNull(s), provider);

    /// <summary>Reads a rate in L/ha or gal/acre, where the text is one.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">The culture, or <see langword="null"/> for the invariant one; never that of the machine.</param>
    /// <param name="result">The rate.</param>
    /// <returns>Whether the text is a rate.</returns>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out VolumeRate result) => Notation.TryParse(s, provider, out result);

    /// <inheritdoc cref="TryParse(ReadOnlySpan{char}, IFormatProvider?, out VolumeRate)"/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out VolumeRate result) =>
        Notation.TryParse(s, provider, out result);
}
