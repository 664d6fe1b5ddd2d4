using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>What is printed on a bag of growing medium, and what it fills.</summary>
/// <remarks>
/// In Europe the quantity on a bag of growing medium or soil improver is a volume found from the mass and the bulk density by EN 12580, at
/// the time of packing; it does not hold for media with more than a tenth of pieces above 60 mm, nor for slabs and blocks. In pots the
/// medium lies denser than in the measuring cylinder, so that 100 L fill less than 100 L of pots: the potting reference is the part
/// that they fill.
/// </remarks>
/// <example><code>
/// Volume pots = PackedVolume.Filled(Volume.FromLiters(100), pottingReference: Ratio.FromPercent(80)); // 80 L
/// Volume toBuy = PackedVolume.ToFill(Volume.FromLiters(120), pottingReference: Ratio.FromPercent(80)); // 150 L
/// </code></example>
public static class PackedVolume
{
    private static readonly Source Rhp = new(
        "rhp-filling-density", "Potting reference of growing media", "Acta Horticulturae 1168, International Society for Horticultural Science", 2017, "https://www.ishs.org/ishs-article/1168_14");

    private static readonly Method InPots = new(
        "density-in-pots",
        "density in pots as 105 to 155 % of the density by EN 12580, middle of the range",
        Rhp,
        new Domain("growing media filled into pots"));

    /// <summary>The volume by EN 12580 of a mass.</summary>
    /// <param name="mass">The mass at packing; zero or more.</param>
    /// <param name="density">The bulk density by EN 12580; greater than zero.</param>
    /// <returns>The volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is negative, or the density is not greater than zero.</exception>
    public static Volume FromMass(Mass mass, Density density) => Volume.FromLiters(
        1000 * Guard.NotNegative(Boundary.Kilograms(mass), "kg", nameof(mass))
        / Guard.Positive(Boundary.KilogramsPerCubicMetre(density), "kg/m³", nameof(density)));

    /// <summary>The volume of pots that a delivered volume fills.</summary>
    /// <param name="delivered">The volume printed or delivered; zero or more.</param>
    /// <param name="pottingReference">The part of it that it fills; greater than zero, up to 100 %.</param>
    /// <returns>The volume filled.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative, or the reference is out of range.</exception>
    public static Volume Filled(Volume delivered, Ratio pottingReference) => Volume.FromLiters(
        Guard.NotNegative(Boundary.Litres(delivered), "L", nameof(delivered)) * Share(pottingReference));

    /// <summary>The volume to buy that fills a volume of pots.</summary>
    /// <param name="filled">The volume to fill; zero or more.</param>
    /// <param name="pottingReference">The part of a delivered volume that it fills; greater than zero, up to 100 %.</param>
    /// <returns>The volume to buy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative, or the reference is out of range.</exception>
    public static Volume ToFill(Volume filled, Ratio pottingReference) => Volume.FromLiters(
        Guard.NotNegative(Boundary.Litres(filled), "L", nameof(filled)) / Share(pottingReference));

    /// <summary>The density in pots of a medium whose density by EN 12580 is known.</summary>
    /// <param name="density">The bulk density by EN 12580; greater than zero.</param>
    /// <returns>The middle of the published range, with the range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The density is not greater than zero.</exception>
    public static Estimate<Density> DensityInPots(Density density)
    {
        double kilogramsPerCubicMetre = Guard.Positive(Boundary.KilogramsPerCubicMetre(density), "kg/m³", nameof(density));
        return new Estimate<Density>(
            Times(1.3), InPots, new EstimateRange<Density>(Times(1.05), Times(1.55), "range printed by the source"));

        Density Times(double factor) => Density.FromKilogramsPerCubicMeter(factor * kilogramsPerCubicMetre);
    }

    private static double Share(Ratio pottingReference)
    {
        double percent = Boundary.Fraction(pottingReference) * 100;
        return percent is > 0 and <= 100
            ? percent / 100
            : throw Guard.Refused(nameof(pottingReference), percent, "%", "greater than 0 %, up to 100 %");
    }
}
