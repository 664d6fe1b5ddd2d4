using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A layer of an analysed compost: what it brings to each area, and the dose that keeps a limit. Exact balances of mass.</summary>
/// <remarks>
/// Immutable; equal when analysis and depth are equal. All of it is brought, not all of it is of use in the first year: see
/// <see cref="CompostNitrogen"/>. Phosphorus stays, which is why compost given by its nitrogen year after year piles phosphorus up.
/// </remarks>
/// <example><code>
/// CompostAnalysis analysis = new(
///     Density.FromPoundsPerCubicYard(1000), water: Ratio.FromPercent(50), organicMatter: MassFraction.FromPercent(50),
///     nitrogen: MassFraction.FromPercent(1.5), phosphorus: MassFraction.FromPercent(0.4));
/// CompostDose dose = new(analysis, Length.FromCentimeters(2));
/// AreaDensity nitrogen = dose.Nitrogen; // 89 g/m²
/// MassFraction raised = dose.OrganicMatterAfter(
///     Length.FromCentimeters(15), Density.FromKilogramsPerCubicMeter(1300), current: MassFraction.FromPercent(2)); // 3.4 %
/// CompostDose byPhosphorus = CompostDose.ForPhosphorus(analysis, AreaDensity.FromGramsPerSquareMeter(3));
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record CompostDose : IFormattable, IDisplayable
{
    // Atomic weights 30.974 (P) and 15.999 (O): P2O5 per P2.
    private const double PhosphatePerPhosphorus = (2 * 30.974 + 5 * 15.999) / (2 * 30.974);

    /// <summary>Describes a dose by its loose depth.</summary>
    /// <param name="analysis">What is known of the compost.</param>
    /// <param name="depth">The loose depth; zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The depth is negative.</exception>
    public CompostDose(CompostAnalysis analysis, Length depth)
    {
        Analysis = Guard.NotNull(analysis);
        Depth = Dimension.NotNegativeKept(depth, nameof(depth));
    }

    /// <summary>What is known of the compost.</summary>
    public CompostAnalysis Analysis { get; }

    /// <summary>The loose depth.</summary>
    public Length Depth { get; }

    /// <summary>The compost as it is spread, water included.</summary>
    [JsonIgnore]
    public AreaDensity Wet => PerArea(Boundary.KilogramsPerCubicMetre(Analysis.Density));

    /// <summary>The dry matter.</summary>
    [JsonIgnore]
    public AreaDensity Dry => PerArea(Analysis.DryKilogramsPerCubicMetre);

    /// <summary>The organic matter.</summary>
    [JsonIgnore]
    public AreaDensity OrganicMatter => OfDry(Analysis.OrganicMatter);

    /// <summary>The total nitrogen.</summary>
    [JsonIgnore]
    public AreaDensity Nitrogen => OfDry(Analysis.Nitrogen);

    /// <summary>The total phosphorus as the element.</summary>
    [JsonIgnore]
    public AreaDensity Phosphorus => OfDry(Analysis.Phosphorus);

    /// <summary>The total phosphorus as phosphate, P₂O₅.</summary>
    [JsonIgnore]
    public AreaDensity Phosphate => AreaDensity.FromGramsPerSquareMeter(Boundary.GramsPerSquareMetre(Phosphorus) * PhosphatePerPhosphorus);

    /// <summary>What to take care of: salts where they were not measured, are high, or are more than the strictest extract allows; and dust.</summary>
    [JsonIgnore]
    public IReadOnlyList<Caution> Cautions => ValueList<Caution>.Of(Analysis.Conductivity is not ElectricConductivity salts || IsAbove(salts, SaltLimits.AvoidCompost)
        ? [BedCautions.Salts, BedCautions.Dust]
        : IsAbove(salts, SaltLimits.Desired) ? [BedCautions.SaltsAboveDesired, BedCautions.Dust] : [BedCautions.Dust]);

    /// <summary>The dose that brings a soil from one share of organic matter to another.</summary>
    /// <param name="analysis">What is known of the compost.</param>
    /// <param name="soilDepth">The depth of soil it is worked into, itself not counted; greater than zero.</param>
    /// <param name="soilDensity">The dry bulk density of that soil; greater than zero.</param>
    /// <param name="current">The soil's organic matter now, of its dry mass.</param>
    /// <param name="wanted">The share wanted; not below <paramref name="current"/>, below the compost's own.</param>
    /// <returns>The dose.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static CompostDose ForOrganicMatter(
        CompostAnalysis analysis, Length soilDepth, Density soilDensity, MassFraction current, MassFraction wanted)
    {
        Guard.NotNull(analysis);
        double soilKilograms = SoilKilogramsPerSquareMetre(soilDepth, soilDensity);
        double currentPercent = Guard.Within(Boundary.MassFraction(current) * 100, 0, 100, "%", nameof(current));
        double wantedPercent = Guard.AtLeast(Boundary.MassFraction(wanted) * 100, currentPercent, "%", nameof(wanted));
        double ownPercent = Boundary.MassFraction(analysis.OrganicMatter) * 100;
        if (wantedPercent >= ownPercent)
            throw Guard.Refused(nameof(wanted), wantedPercent, "%", $"below the compost's own, {Guard.Number(ownPercent)} %");
        double dryKilograms = soilKilograms * (wantedPercent - currentPercent) / (ownPercent - wantedPercent);
        return new CompostDose(analysis, Length.FromMeters(dryKilograms / analysis.DryKilogramsPerCubicMetre));
    }

    /// <summary>The dose that brings as much phosphorus as is allowed: what the crop takes away, or what a rule grants.</summary>
    /// <param name="analysis">What is known of the compost, with phosphorus in it.</param>
    /// <param name="allowed">The phosphorus allowed, as the element; zero or more.</param>
    /// <returns>The largest dose.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative, or the compost has no phosphorus to limit it.</exception>
    public static CompostDose ForPhosphorus(CompostAnalysis analysis, AreaDensity allowed) =>
        For(Guard.NotNull(analysis), Boundary.MassFraction(analysis.Phosphorus), allowed, nameof(allowed), "phosphorus");

    /// <summary>The dose that brings an amount of total nitrogen.</summary>
    /// <param name="analysis">What is known of the compost, with nitrogen in it.</param>
    /// <param name="total">The total nitrogen; zero or more. For a need of available nitrogen, divide by the share that becomes available.</param>
    /// <returns>The dose.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative, or the compost has no nitrogen.</exception>
    public static CompostDose ForNitrogen(CompostAnalysis analysis, AreaDensity total) =>
        For(Guard.NotNull(analysis), Boundary.MassFraction(analysis.Nitrogen), total, nameof(total), "nitrogen");

    /// <summary>The soil's organic matter when the compost is worked in, by balance of mass, before any of it rots.</summary>
    /// <param name="soilDepth">The depth of soil it is worked into, itself not counted; greater than zero.</param>
    /// <param name="soilDensity">The dry bulk density of that soil; greater than zero.</param>
    /// <param name="current">The soil's organic matter now, of its dry mass.</param>
    /// <returns>The organic matter of soil and compost together, of their dry mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public MassFraction OrganicMatterAfter(Length soilDepth, Density soilDensity, MassFraction current)
    {
        double soilKilograms = SoilKilogramsPerSquareMetre(soilDepth, soilDensity);
        double currentPercent = Guard.Within(Boundary.MassFraction(current) * 100, 0, 100, "%", nameof(current));
        double dryKilograms = Boundary.GramsPerSquareMetre(Dry) / 1000;
        return MassFraction.FromPercent(
            (soilKilograms * currentPercent + dryKilograms * Boundary.MassFraction(Analysis.OrganicMatter) * 100) / (soilKilograms + dryKilograms));
    }

    /// <summary>The dose in metric units and invariant culture.</summary>
    /// <returns>For instance <c>compost 2 cm deep: 11,866 g/m², of it 89 g/m² nitrogen and 23.7 g/m² phosphorus</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The dose as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The depth and what it brings.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"compost {QuantityText.Of(Depth, style)} deep")
    {
        Rows =
        [
            new DisplayRow("wet", QuantityText.Of(Wet, style)),
            new DisplayRow("dry", QuantityText.Of(Dry, style)),
            new DisplayRow("organic matter", QuantityText.Of(OrganicMatter, style)),
            new DisplayRow("nitrogen", QuantityText.Of(Nitrogen, style)),
            new DisplayRow("phosphorus", QuantityText.Of(Phosphorus, style)),
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
        ],
    };

    private static CompostDose For(CompostAnalysis analysis, double share, AreaDensity amount, string parameter, string nutrient)
    {
        double grams = Guard.NotNegative(Boundary.GramsPerSquareMetre(amount), "g/m²", parameter);
        return share > 0
            ? new CompostDose(analysis, Length.FromMeters(grams / 1000 / share / analysis.DryKilogramsPerCubicMetre))
            : throw Guard.Refused(nameof(analysis), 0, "%", $"a compost with {nutrient}, which then sets the dose");
    }

    private static double SoilKilogramsPerSquareMetre(Length soilDepth, Density soilDensity) =>
        Dimension.Positive(soilDepth, nameof(soilDepth))
        * Guard.Positive(Boundary.KilogramsPerCubicMetre(soilDensity), "kg/m³", nameof(soilDensity));

    private AreaDensity PerArea(double kilogramsPerCubicMetre) =>
        AreaDensity.FromGramsPerSquareMeter(kilogramsPerCubicMetre * Boundary.Metres(Depth) * 1000);

    private static bool IsAbove(ElectricConductivity salts, SaltLimit limit) =>
        Boundary.DecisiemensPerMetre(salts) > Boundary.DecisiemensPerMetre(limit.High);

    private AreaDensity OfDry(MassFraction share) => PerArea(Analysis.DryKilogramsPerCubicMetre * Boundary.MassFraction(share));

    private string ToString(TextStyle style) =>
        $"compost {QuantityText.Of(Depth, style)} deep: {QuantityText.Of(Wet, style)}, of it {QuantityText.Of(Nitrogen, style)} nitrogen"
        + $" and {QuantityText.Of(Phosphorus, style)} phosphorus";
}
