using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>The acidity that a soil holds in reserve, from the pH of a buffer it was stirred in. Buffers are not interchangeable.</summary>
/// <remarks>The factor of a unit of buffer pH is 8 for Adams-Evans, 4 for Mehlich per volume, and 12 in a laboratory's capacity by summation.</remarks>
/// <example><code>
/// Console.WriteLine(ReserveAcidity.AdamsEvans(new Ph(7.8)));
/// </code></example>
public static class ReserveAcidity
{
    private static readonly Method ByAdamsEvans = new(
        "reserve-acidity-adams-evans",
        "acidity by the Adams-Evans buffer",
        LimeMethodSources.AdamsEvansAcidity,
        new Domain("", new DomainLimit("bufferPh", 0, 8.0, "pH")));

    private static readonly Method ByMehlich = new(
        "reserve-acidity-mehlich",
        "acidity by the Mehlich buffer",
        LimeMethodSources.MehlichAcidity,
        new Domain("", new DomainLimit("bufferPh", 3.0, 6.6, "pH")));

    private static readonly Method BySpectrum = new(
        "reserve-acidity-spectrum",
        "acidity term of the exchange capacity by summation",
        LimeMethodSources.SpectrumAcidity,
        new Domain("soil pH up to 6.4; none from a buffer pH of 7.0 up"));

    /// <summary>(8.00 − buffer pH) × 8 meq/100 g: University of Georgia.</summary>
    /// <param name="bufferPh">The pH in the Adams-Evans buffer; up to 8.0.</param>
    /// <returns>The exchangeable acidity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pH is above that of the buffer itself.</exception>
    public static Estimate<ExchangeableCharge> AdamsEvans(Ph bufferPh) => new(
        ExchangeableCharge.FromMilliequivalentsPer100Grams((8 - ByAdamsEvans.Require(bufferPh.Value, "pH", nameof(bufferPh))) * 8), ByAdamsEvans);

    /// <summary>(6.6 − buffer pH) × 4 meq/100 cm³: North Carolina.</summary>
    /// <param name="bufferPh">The pH in the Mehlich buffer; 3.0 to 6.6.</param>
    /// <returns>The acidity per volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pH is outside what the buffer is linear in.</exception>
    public static Estimate<VolumetricCharge> Mehlich(Ph bufferPh) => new(
        VolumetricCharge.FromMilliequivalentsPer100CubicCentimetres((6.6 - ByMehlich.Require(bufferPh.Value, "pH", nameof(bufferPh))) * 4), ByMehlich);

    /// <summary>12 × (7 − buffer pH) meq/100 g, and nothing from 7.0 up: Spectrum Analytic, for soils up to pH 6.4.</summary>
    /// <param name="bufferPh">The buffer pH.</param>
    /// <returns>The acidity term of the exchange capacity.</returns>
    public static Estimate<ExchangeableCharge> Spectrum(Ph bufferPh) =>
        new(ExchangeableCharge.FromMilliequivalentsPer100Grams(Math.Max(0, 7 - bufferPh.Value) * 12), BySpectrum);
}
