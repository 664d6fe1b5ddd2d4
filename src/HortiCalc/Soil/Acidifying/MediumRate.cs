using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A published rate of lime or sulfur for a volume of potting medium.</summary>
/// <remarks>Immutable; equal when all members are equal. Rates of mass per volume of medium, never per area.</remarks>
/// <example><code>
/// MediumRate peat = MediumRates.All.First(rate =&gt; rate.Medium.StartsWith("Peat H2", StringComparison.Ordinal));
/// Estimate&lt;Mass&gt; lime = peat.For(Volume.FromLiters(200));   // 0.4 kg, 0.4 to 0.6 kg
/// Console.WriteLine(lime);
/// </code></example>
public sealed record MediumRate
{
    /// <summary>Holds what a source prints.</summary>
    /// <param name="medium">The medium.</param>
    /// <param name="material">The material as the source names it.</param>
    /// <param name="purpose">What the rate is for.</param>
    /// <param name="low">The low end of the rate; zero or more.</param>
    /// <param name="high">The high end; not below the low one.</param>
    /// <param name="source">Where it was published.</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentNullException">The source is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The purpose is unknown, a rate negative, or the high end below the low one.</exception>
    public MediumRate(string medium, string material, MediumRatePurpose purpose, Density low, Density high, Source source)
    {
        Medium = Guard.NotBlank(medium);
        Material = Guard.NotBlank(material);
        Purpose = Guard.Defined(purpose);
        double least = Guard.NotNegative(Boundary.KilogramsPerCubicMetre(low), "kg/m³", nameof(low));
        Guard.AtLeast(Boundary.KilogramsPerCubicMetre(high), least, "kg/m³", nameof(high));
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
        Source = Guard.NotNull(source);
    }

    /// <summary>The medium.</summary>
    public string Medium { get; }

    /// <summary>The material as the source names it.</summary>
    public string Material { get; }

    /// <summary>What the rate is for.</summary>
    public MediumRatePurpose Purpose { get; }

    /// <summary>The low end of the rate.</summary>
    public Density Low { get; }

    /// <summary>The high end.</summary>
    public Density High { get; }

    /// <summary>Where it was published.</summary>
    public Source Source { get; }

    /// <summary>The mass of material for a volume of medium: the low end, because more can be added and none taken out.</summary>
    /// <param name="medium">The volume of medium as it is mixed; zero or more.</param>
    /// <returns>The mass, with the printed range and the cautions.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative.</exception>
    public Estimate<Mass> For(Volume medium)
    {
        double cubicMetres = Guard.NotNegative(Boundary.Litres(medium), "L", nameof(medium)) / 1000;
        Mass least = Mass.FromKilograms(Boundary.KilogramsPerCubicMetre(Low) * cubicMetres);
        Mass most = Mass.FromKilograms(Boundary.KilogramsPerCubicMetre(High) * cubicMetres);
        return new Estimate<Mass>(
            least,
            new Method("acid-medium-rate", $"{Material} in {Medium}", Source, new Domain("mixed evenly into the medium")),
            Boundary.KilogramsPerCubicMetre(Low) == Boundary.KilogramsPerCubicMetre(High) ? null : new EstimateRange<Mass>(least, most, "range printed by the source"),
            null,
            Purpose == MediumRatePurpose.TriedToLower
                ? [AcidCautions.MediumTrial, .. AcidCautions.Of(AcidifyingMaterial.ElementalSulfur)]
                : [AcidCautions.NotLinear, LimeCautions.Dust]);
    }

    /// <summary>The medium, the rate and the source, in invariant culture.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString()
    {
        string low = Guard.Number(Math.Round(Boundary.KilogramsPerCubicMetre(Low), 2, MidpointRounding.AwayFromZero));
        string high = Guard.Number(Math.Round(Boundary.KilogramsPerCubicMetre(High), 2, MidpointRounding.AwayFromZero));
        return $"{Medium}: {(low == high ? low : $"{low} to {high}")} kg/m³ of {Material} [{Source}]";
    }
}
