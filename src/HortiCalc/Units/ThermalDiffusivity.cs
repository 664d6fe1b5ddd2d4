using System.Diagnostics.CodeAnalysis;
using System.Numerics;
using UnitsNet;

namespace HortiCalc.Units;

/// <summary>How fast a material levels out differences of temperature: its conductivity divided by its heat capacity by volume.</summary>
/// <remarks>Soils have 0.1 to 1.2 mm²/s. Sources print it in m²/s or in m² a day. The default value is zero, which no material has.</remarks>
/// <example><code>
/// ThermalDiffusivity loam = ThermalDiffusivity.FromSquareMetresPerSecond(0.5e-6); // 0.5 mm²/s
/// </code></example>
public readonly record struct ThermalDiffusivity :
    IComparable<ThermalDiffusivity>,
    IComparisonOperators<ThermalDiffusivity, ThermalDiffusivity, bool>,
    IFormattable,
    ISpanParsable<ThermalDiffusivity>
{
    private const string SquareMillimetresPerSecondUnit = "mm²/s";
    private const string SquareFeetPerDayUnit = "ft²/d";
    private const double SecondsPerDay = 86_400;
    private const double SquareMillimetresPerSquareMetre = 1_000_000;

    private ThermalDiffusivity(double squareMillimetresPerSecond) => SquareMillimetresPerSecond = squareMillimetresPerSecond;

    /// <summary>The diffusivity in square millimetres a second.</summary>
    public double SquareMillimetresPerSecond { get; }

    /// <summary>The diffusivity in square metres a second.</summary>
    public double SquareMetresPerSecond => SquareMillimetresPerSecond / SquareMillimetresPerSquareMetre;

    /// <summary>The diffusivity in square metres a day.</summary>
    public double SquareMetresPerDay => SquareMetresPerSecond * SecondsPerDay;

    /// <summary>The diffusivity in square feet a day.</summary>
    public double SquareFeetPerDay => SquareMetresPerDay / Boundary.SquareMetresPerSquareFoot;

    internal static QuantityNotation<ThermalDiffusivity> Notation { get; } = new(
        "thermal diffusivity",
        3,
        new NotedUnit<ThermalDiffusivity>(
            SquareMillimetresPerSecondUnit, value => value.SquareMillimetresPerSecond, FromSquareMillimetresPerSecond),
        new NotedUnit<ThermalDiffusivity>(
            SquareFeetPerDayUnit,
            value => value.SquareFeetPerDay,
            value => FromSquareMetresPerDay(value * Boundary.SquareMetresPerSquareFoot)));

    /// <summary>A diffusivity in square millimetres a second.</summary>
    /// <param name="value">Greater than 0.</param>
    /// <returns>The diffusivity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not greater than 0.</exception>
    public static ThermalDiffusivity FromSquareMillimetresPerSecond(double value) => new(Guard.Positive(value, SquareMillimetresPerSecondUnit));

    /// <summary>A diffusivity in square metres a second.</summary>
    /// <param name="value">Greater than 0.</param>
    /// <returns>The diffusivity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not greater than 0.</exception>
    public static ThermalDiffusivity FromSquareMetresPerSecond(double value) =>
        new(Guard.Positive(value, "m²/s") * SquareMillimetresPerSquareMetre);

    /// <summary>A diffusivity in square metres a day.</summary>
    /// <param name="value">Greater than 0.</param>
    /// <returns>The diffusivity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not greater than 0.</exception>
    public static ThermalDiffusivity FromSquareMetresPerDay(double value) =>
        new(Guard.Positive(value, "m²/d") * SquareMillimetresPerSquareMetre / SecondsPerDay);

    /// <summary>The diffusivity of a material from its conductivity and its heat capacity.</summary>
    /// <param name="conductivity">How well it conducts heat; greater than 0.</param>
    /// <param name="heatCapacity">The heat that warms a volume of it by a degree; greater than 0.</param>
    /// <returns>The conductivity divided by the heat capacity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">One is not greater than 0.</exception>
    public static ThermalDiffusivity From(ThermalConductivity conductivity, VolumetricHeatCapacity heatCapacity)
    {
        double wattsPerMetreKelvin = Guard.Positive(Boundary.WattsPerMetreKelvin(conductivity), "W/(m·K)", nameof(conductivity));
        double joulesPerCubicMetreKelvin = Guard.Positive(Boundary.JoulesPerCubicMetreKelvin(heatCapacity), "J/(m³·K)", nameof(heatCapacity));
        return FromSquareMetresPerSecond(wattsPerMetreKelvin / joulesPerCubicMetreKelvin);
    }

    /// <inheritdoc/>
    public static bool operator <(ThermalDiffusivity left, ThermalDiffusivity right) => left.CompareTo(right) < 0;

    /// <inheritdoc/>
    public static bool operator >(ThermalDiffusivity left, ThermalDiffusivity right) => left.CompareTo(right) > 0;

    /// <inheritdoc/>
    public static bool operator <=(ThermalDiffusivity left, ThermalDiffusivity right) => left.CompareTo(right) <= 0;

    /// <inheritdoc/>
    public static bool operator >=(ThermalDiffusivity left, ThermalDiffusivity right) => left.CompareTo(right) >= 0;

    /// <inheritdoc/>
    public int CompareTo(ThermalDiffusivity other) => SquareMillimetresPerSecond.CompareTo(other.SquareMillimetresPerSecond);

    /// <summary>The diffusivity in square millimetres a second, in invariant culture.</summary>
    /// <returns>For instance <c>0.5 mm²/s</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The diffusivity as text.</summary>
    /// <param name="format"><c>M</c> or nothing for mm²/s and <c>U</c> for ft²/d, to three decimals; <c>R</c> for mm²/s with every digit.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The number and the unit.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => Notation.Format(this, format, formatProvider);

    /// <summary>Reads a diffusivity in mm²/s or ft²/d (or mm2/s, ft2/d).</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">The culture, or <see langword="null"/> for the invariant one; never that of the machine.</param>
    /// <returns>The diffusivity.</returns>
    /// <exception cref="FormatException">The number or the unit cannot be read; the message says which.</exception>
    public static ThermalDiffusivity Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => Notation.Parse(s, provider);

    /// <inheritdoc cref="Parse(ReadOnlySpan{char}, IFormatProvider?)"/>
    /// <exception cref="ArgumentNullException">The text is <see langword="null"/>.</exception>
    public static ThermalDiffusivity Parse(string s, IFormatProvider? provider) => Notation.Parse(Guard.NotNull(s), provider);

    /// <summary>Reads a diffusivity in mm²/s or ft²/d, where the text is one.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">The culture, or <see langword="null"/> for the invariant one; never that of the machine.</param>
    /// <param name="result">The diffusivity.</param>
    /// <returns>Whether the text is a diffusivity.</returns>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out ThermalDiffusivity result) =>
        Notation.TryParse(s, provider, out result);

    /// <inheritdoc cref="TryParse(ReadOnlySpan{char}, IFormatProvider?, out ThermalDiffusivity)"/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out ThermalDiffusivity result) =>
        Notation.TryParse(s, provider, out result);
}
