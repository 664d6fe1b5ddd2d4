using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>A volume on an area: so much spray, or so much product, per hectare, acre or thousand square feet.</summary>
/// <remarks>Equal by value, to twelve significant digits of L/ha.</remarks>
/// <example><code>
/// VolumeRate spray = VolumeRate.FromUsGallonsPerAcre(43.56);
/// Console.WriteLine(spray.UsGallonsPerThousandSquareFeet);   // 1
/// </code></example>
public sealed record VolumeRate : IFormattable
{
    private const double LitresPerHectarePerGallonAnAcre = Boundary.LitresPerUsGallon * 10_000 / Boundary.SquareMetresPerAcre;

    /// <summary>States a rate.</summary>
    /// <param name="litresPerHectare">In litres a hectare; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rate is negative or not finite.</exception>
    public VolumeRate(double litresPerHectare)
    {
        Guard.NotNegative(litresPerHectare, "L/ha");
        double scale = litresPerHectare > 0 ? Math.Pow(10, 11 - Math.Floor(Math.Log10(litresPerHectare))) : 1;
        LitresPerHectare = double.IsFinite(scale) && scale > 0 && litresPerHectare * scale < 1e15
            ? Math.Round(litresPerHectare * scale, MidpointRounding.ToEven) / scale
            : litresPerHectare;
    }

    /// <summary>In litres a hectare.</summary>
    public double LitresPerHectare { get; }

    /// <summary>In litres on a hundred square metres.</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public double LitresPerHundredSquareMetres => LitresPerHectare / 100;

    /// <summary>In US gallons an acre.</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public double UsGallonsPerAcre => LitresPerHectare / LitresPerHectarePerGallonAnAcre;

    /// <summary>In US gallons on a thousand square feet.</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public double UsGallonsPerThousandSquareFeet => UsGallonsPerAcre * 1000 * Boundary.SquareMetresPerSquareFoot / Boundary.SquareMetresPerAcre;

    /// <summary>A rate in litres a hectare.</summary>
    /// <param name="value">0 or more.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static VolumeRate FromLitresPerHectare(double value) => new(Guard.NotNegative(value, "L/ha"));

    /// <summary>A rate in US gallons an acre.</summary>
    /// <param name="value">0 or more.</param>
    /// <returns>The rate; 1 gal/acre is 9.35 L/ha.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static VolumeRate FromUsGallonsPerAcre(double value) => new(Guard.NotNegative(value, "gal/acre") * LitresPerHectarePerGallonAnAcre);

    /// <summary>The rate of a volume on an area.</summary>
    /// <param name="volume">The volume; 0 or more.</param>
    /// <param name="area">The area; more than 0.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what is allowed.</exception>
    public static VolumeRate Of(Volume volume, Area area)
    {
        double litres = Guard.NotNegative(Boundary.Litres(volume), "L", nameof(volume));
        return new VolumeRate(litres / Guard.Positive(Boundary.SquareMetres(area), "m²", nameof(area)) * 10_000);
    }

    /// <summary>The volume that an area takes.</summary>
    /// <param name="area">The area; 0 or more.</param>
    /// <returns>The volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The area is negative or not finite.</exception>
    public Volume Over(Area area) =>
        Volume.FromLiters(LitresPerHectare * Guard.NotNegative(Boundary.SquareMetres(area), "m²", nameof(area)) / 10_000);

    /// <summary>The area that a volume covers.</summary>
    /// <param name="volume">The volume; 0 or more.</param>
    /// <returns>The area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative or not finite.</exception>
    /// <exception cref="InvalidOperationException">The rate is 0, so that no volume is used up.</exception>
    public Area CoveredBy(Volume volume)
    {
        double litres = Guard.NotNegative(Boundary.Litres(volume), "L", nameof(volume));
        return LitresPerHectare > 0
            ? Area.FromSquareMeters(litres * 10_000 / LitresPerHectare)
            : throw new InvalidOperationException("A rate of 0 L/ha covers any area; allowed: a rate greater than 0.");
    }

    /// <summary>The rate in L/ha, invariant culture.</summary>
    /// <returns>For instance <c>407 L/ha</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The rate as text.</summary>
    /// <param name="format"><c>M</c> or nothing for L/ha, <c>U</c> for US gallons an acre.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The number and the unit.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        return style.Units == MeasurementSystem.UsCustomary
            ? $"{QuantityText.Number(UsGallonsPerAcre, style)} gal (US)/acre"
            : $"{QuantityText.Number(LitresPerHectare, style)} L/ha";
    }
}
