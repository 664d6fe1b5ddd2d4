using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>What every method that answers asks for one soil and target, side by side in elemental sulfur, and why the others do not answer.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. A rate whose source names its depth is brought to the depth asked for; one without stays as printed,
/// and its <see cref="AcidRequirement.Depth"/> is <see langword="null"/>: that is one reason why they differ.
/// </remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record AcidComparison : IFormattable, IDisplayable
{
    /// <summary>Puts requirements side by side.</summary>
    /// <param name="soil">What is known of the soil.</param>
    /// <param name="target">The pH in water wanted.</param>
    /// <param name="requirements">What each method asks, of one material.</param>
    /// <param name="refusals">The methods that do not answer.</param>
    /// <exception cref="ArgumentNullException">The report or a list is <see langword="null"/>.</exception>
    public AcidComparison(SoilReport soil, Ph target, IReadOnlyList<AcidRequirement> requirements, IReadOnlyList<AcidRefusal> refusals)
    {
        Soil = Guard.NotNull(soil);
        Target = target;
        Requirements = ValueList<AcidRequirement>.Of(Guard.NotNull(requirements));
        Refusals = ValueList<AcidRefusal>.Of(Guard.NotNull(refusals));
    }

    /// <summary>What is known of the soil.</summary>
    public SoilReport Soil { get; }

    /// <summary>The pH in water wanted.</summary>
    public Ph Target { get; }

    /// <summary>What each method asks, in elemental sulfur.</summary>
    public IReadOnlyList<AcidRequirement> Requirements { get; }

    /// <summary>The methods that do not answer, and why.</summary>
    public IReadOnlyList<AcidRefusal> Refusals { get; }

    /// <summary>From the smallest rate to the largest; <see langword="null"/> where no method answers.</summary>
    [JsonIgnore]
    public EstimateRange<AreaDensity>? Spread
    {
        get
        {
            double[] rates = [.. Requirements.Select(need => Boundary.GramsPerSquareMetre(need.Rate.Value)).Order()];
            return rates.Length == 0
                ? null
                : new EstimateRange<AreaDensity>(
                    AreaDensity.FromGramsPerSquareMeter(rates[0]), AreaDensity.FromGramsPerSquareMeter(rates[^1]), "smallest and largest of the methods");
        }
    }

    /// <summary>The comparison in metric units and invariant culture.</summary>
    /// <returns>One line: the soil, the target, how many methods answer, and the spread.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The comparison as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: the soil, the target, how many methods answer, and the spread.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(ToString(style))
    {
        Rows =
        [
            .. Requirements.Select(need => new DisplayRow(need.Rate.Method.Name, QuantityText.Of(need.Rate.Value, style) + DepthOf(need, style))),
            .. Refusals.Select(refusal => new DisplayRow("no answer", refusal.Reason)),
        ],
    };

    private static string DepthOf(AcidRequirement need, TextStyle style) =>
        need.Depth is { } depth ? $" for {QuantityText.Of(depth, style)} of soil" : ", no depth stated";

    private string ToString(TextStyle style)
    {
        string spread = Spread is null ? "" : $", {Spread.ToString(style)} of elemental sulfur";
        return $"{Soil} to {Target.ToString(style.Format, style.Culture)}: {QuantityText.Of(Requirements.Count, style)} of "
            + $"{QuantityText.Of(Requirements.Count + Refusals.Count, style)} methods answer{spread}";
    }
}
