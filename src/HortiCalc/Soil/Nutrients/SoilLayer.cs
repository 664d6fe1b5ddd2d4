using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A layer of soil: what turns a laboratory's parts per million into mass per area, by the layer's own depth and bulk density.</summary>
/// <remarks>Immutable; equal when depth and density are. The usual "times two" is <see cref="FurrowSlice"/> and no other layer.</remarks>
/// <example><code>
/// SoilLayer bed = new(Length.FromCentimeters(20), Density.FromGramsPerCubicCentimeter(1.2));
/// AreaDensity potassium = bed.PerArea(MassFraction.FromMilligramsPerKilogram(150));   // 360 kg/ha
/// Console.WriteLine(bed.Content(potassium));
/// </code></example>
public sealed record SoilLayer : IFormattable
{
    /// <summary>Describes a layer.</summary>
    /// <param name="depth">How deep it is; above zero.</param>
    /// <param name="bulkDensity">The mass of dry soil per volume; above 0 and up to 2650 kg/m³, the density of the grains themselves.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input lies outside what is said above.</exception>
    public SoilLayer(Length depth, Density bulkDensity)
    {
        Guard.Positive(Boundary.Metres(depth), "m", nameof(depth));
        double density = Boundary.KilogramsPerCubicMetre(bulkDensity);
        if (!(density > 0 && density <= 2650))
            throw Guard.Refused(nameof(bulkDensity), density, "kg/m³", "above 0 and up to 2650 kg/m³");
        Depth = HouseUnits.Normalise(depth);
        BulkDensity = HouseUnits.Normalise(bulkDensity);
    }

    /// <summary>
    /// The layer behind "parts per million times two is pounds per acre": two million pounds of soil on an acre, here as 6⅔ inches deep.
    /// Common practice; the density that it implies is 1.32 g/cm³.
    /// </summary>
    public static SoilLayer FurrowSlice { get; } = new(
        Length.FromInches(20.0 / 3),
        Density.FromKilogramsPerCubicMeter(
            2_000_000 * Boundary.KilogramsPerPound / Boundary.SquareMetresPerAcre / (20.0 / 3 * Boundary.MetresPerInch)));

    /// <summary>How deep it is.</summary>
    public Length Depth { get; }

    /// <summary>The mass of dry soil per volume.</summary>
    public Density BulkDensity { get; }

    /// <summary>The mass of dry soil in the layer.</summary>
    public AreaDensity Soil => AreaDensity.FromGramsPerSquareMeter(KilogramsPerSquareMetre * 1000);

    internal double KilogramsPerSquareMetre => Boundary.Metres(Depth) * Boundary.KilogramsPerCubicMetre(BulkDensity);

    /// <summary>The mass per area of what the soil holds by mass.</summary>
    /// <param name="content">The content: parts per million are milligrams per kilogram; from 0 to 100 %.</param>
    /// <returns>The mass per area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The content lies outside 0 to 100 %.</exception>
    public AreaDensity PerArea(MassFraction content) => AreaDensity.FromGramsPerSquareMeter(
        Guard.Within(Boundary.MassFraction(content) * 100, 0, 100, "%", nameof(content)) * 10 * KilogramsPerSquareMetre);

    /// <summary>The mass per area of what the soil holds by volume, as laboratories that scoop the soil report it; the density plays no part.</summary>
    /// <param name="content">The content in milligrams per litre of soil; zero or more.</param>
    /// <returns>The mass per area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The content is negative.</exception>
    public AreaDensity PerArea(MassConcentration content) => AreaDensity.FromGramsPerSquareMeter(
        Guard.NotNegative(Boundary.MilligramsPerLitre(content), "mg/L", nameof(content)) * Boundary.Metres(Depth));

    /// <summary>A content by volume of soil as one by mass, by the layer's own density.</summary>
    /// <param name="content">The content in milligrams per litre of soil; zero or more.</param>
    /// <returns>The content by mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The content is negative.</exception>
    public MassFraction Content(MassConcentration content) => MassFraction.FromMilligramsPerKilogram(
        Guard.NotNegative(Boundary.MilligramsPerLitre(content), "mg/L", nameof(content)) / Boundary.KilogramsPerCubicMetre(BulkDensity) * 1000);

    /// <summary>A content by mass of soil as one by volume, by the layer's own density.</summary>
    /// <param name="content">The content by mass; from 0 to 100 %.</param>
    /// <returns>The content in milligrams per litre of soil.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The content lies outside 0 to 100 %.</exception>
    public MassConcentration PerVolume(MassFraction content) => MassConcentration.FromMilligramsPerLiter(
        Guard.Within(Boundary.MassFraction(content) * 100, 0, 100, "%", nameof(content)) * 10 * Boundary.KilogramsPerCubicMetre(BulkDensity));

    /// <summary>The content by mass that an amount per area comes to, mixed through the layer.</summary>
    /// <param name="amount">The mass per area; zero or more.</param>
    /// <returns>The content.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative.</exception>
    public MassFraction Content(AreaDensity amount) => MassFraction.FromMilligramsPerKilogram(
        Guard.NotNegative(Boundary.GramsPerSquareMetre(amount), "g/m²", nameof(amount)) / KilogramsPerSquareMetre * 1000);

    /// <summary>The layer in metric units and invariant culture.</summary>
    /// <returns>For instance <c>20 cm of soil at 1,200 kg/m³</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The layer as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The depth and the density.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style) => $"{QuantityText.Of(Depth, style)} of soil at {QuantityText.Of(BulkDensity, style)}";
}
