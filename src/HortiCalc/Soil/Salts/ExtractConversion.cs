using System.Text.Json.Serialization;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A straight line from the conductivity of a thin extract of soil to that of the saturated extract, on which all tolerances rest.</summary>
/// <remarks>
/// <para>Immutable; equal when all members are equal. The published lines stand in <see cref="ExtractConversions"/>; a laboratory's own can be made.</para>
/// <para>
/// Lines of negative intercept would make the saturated extract of a weak soil thinner than the thin one, which cannot be, and then fall below zero; the
/// reading must lie at or above the point where both are the same, <see cref="LowestReading"/>.
/// </para>
/// </remarks>
/// <example><code>
/// ExtractConversion line = ExtractConversions.FromKey("extract-1-1-60-medium");
/// Estimate&lt;ElectricConductivity&gt; saturated = line.SaturatedExtract(ElectricConductivity.FromMillisiemensPerCentimeter(1.2));
/// Console.WriteLine(saturated);
/// </code></example>
public sealed record ExtractConversion
{
    /// <summary>Describes a line.</summary>
    /// <param name="method">The line's key, name, source and domain.</param>
    /// <param name="extract">The extract that it starts from.</param>
    /// <param name="texture">The soils that it was measured on.</param>
    /// <param name="slope">What one unit of the reading comes to; above zero.</param>
    /// <param name="intercept">What is added, as conductivity; negative for most lines.</param>
    /// <param name="determination">The share of the scatter that the line explains, r², from 0 to 1, or <see langword="null"/> where none is printed.</param>
    /// <exception cref="ArgumentNullException">The method is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An enumeration has no such value, or a number lies outside what is said above.</exception>
    public ExtractConversion(
        Method method,
        SoilExtract extract,
        ExtractTexture texture,
        double slope,
        ElectricConductivity intercept,
        double? determination = null)
    {
        Method = Guard.NotNull(method);
        Extract = Guard.Defined(extract);
        Texture = Guard.Defined(texture);
        Slope = Guard.Positive(slope, "");
        Guard.Finite(Boundary.DecisiemensPerMetre(intercept), "dS/m", nameof(intercept));
        Intercept = HouseUnits.Normalise(intercept);
        Determination = determination is { } share ? Guard.Within(share, 0, 1, "", nameof(determination)) : null;
    }

    /// <summary>The line's key, name, source and domain.</summary>
    public Method Method { get; }

    /// <summary>The extract that it starts from.</summary>
    public SoilExtract Extract { get; }

    /// <summary>The soils that it was measured on.</summary>
    public ExtractTexture Texture { get; }

    /// <summary>What one unit of the reading comes to.</summary>
    public double Slope { get; }

    /// <summary>What is added.</summary>
    public ElectricConductivity Intercept { get; }

    /// <summary>The share of the scatter that the line explains, r²; <see langword="null"/> where none is printed.</summary>
    public double? Determination { get; }

    /// <summary>The weakest reading that the line answers for: below it the thin extract would hold more salt than the saturated one.</summary>
    [JsonIgnore]
    public ElectricConductivity LowestReading =>
        ElectricConductivity.FromMillisiemensPerCentimeter(LowestDecisiemens(Slope, Boundary.DecisiemensPerMetre(Intercept)));

    /// <summary>The conductivity of the saturated extract from that of the thin one.</summary>
    /// <param name="measured">The reading; <see cref="LowestReading"/> or more.</param>
    /// <returns>The conductivity of the saturated extract, with its cautions.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The reading lies outside the line's domain.</exception>
    public Estimate<ElectricConductivity> SaturatedExtract(ElectricConductivity measured)
    {
        double reading = Guard.AtLeast(Boundary.DecisiemensPerMetre(measured), Boundary.DecisiemensPerMetre(LowestReading), "dS/m", nameof(measured));
        return Answer(Math.Max(0, Slope * reading + Boundary.DecisiemensPerMetre(Intercept)));
    }

    /// <summary>The reading that the thin extract would give: the line backwards.</summary>
    /// <param name="saturated">The conductivity of the saturated extract; not below the intercept, and <see cref="LowestReading"/> or more.</param>
    /// <returns>The conductivity of the thin extract.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The conductivity lies outside the line's domain.</exception>
    public Estimate<ElectricConductivity> ThinExtract(ElectricConductivity saturated)
    {
        double intercept = Boundary.DecisiemensPerMetre(Intercept);
        double value = Guard.AtLeast(Boundary.DecisiemensPerMetre(saturated), Math.Max(Boundary.DecisiemensPerMetre(LowestReading), intercept), "dS/m", nameof(saturated));
        return Answer((value - intercept) / Slope);
    }

    /// <summary>The line and its source.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Method.ToString();

    internal static double LowestDecisiemens(double slope, double intercept) => Math.Max(0, slope > 1 ? -intercept / (slope - 1) : -intercept / slope);

    private Estimate<ElectricConductivity> Answer(double decisiemensPerMetre) => new(
        ElectricConductivity.FromMillisiemensPerCentimeter(decisiemensPerMetre), Method, cautions: [SaltCautions.Converted, SaltCautions.Laboratory]);
}
