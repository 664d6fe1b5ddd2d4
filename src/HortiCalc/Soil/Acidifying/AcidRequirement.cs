using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>How much of which acidifying material for which depth of soil, with what stands behind it.</summary>
/// <remarks>Immutable; equal when all members are equal. What is done to it is recorded in the adjustments of <see cref="Rate"/>.</remarks>
/// <example><code>
/// SoilReport soil = new() { PhInWater = new Ph(7.2), Texture = SoilTexture.SandyLoam };
/// AcidRequirement sulfur = Acidifying.Requirement(soil, new Ph(6.5), AcidifyingMethod.Rhs).ForDepth(Length.FromCentimeters(20));
/// Console.WriteLine(sulfur.As(AcidifyingMaterial.IronSulfate(7)));              // by molar masses
/// Console.WriteLine(sulfur.As(AcidEquivalent.FromKey("acid-equivalent-rhs-iron-sulfate")));   // as the RHS prints it
/// Console.WriteLine(sulfur.Split(AcidLimit.GardenBed));
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record AcidRequirement : IFormattable, IDisplayable
{
    /// <summary>Makes a requirement.</summary>
    /// <param name="rate">The mass of material per area; zero or more.</param>
    /// <param name="material">The material.</param>
    /// <param name="depth">The depth of soil it is for, or <see langword="null"/> where the source gives none.</param>
    /// <exception cref="ArgumentNullException">The rate or the material is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The rate is negative, or the depth is not above zero.</exception>
    public AcidRequirement(Estimate<AreaDensity> rate, AcidifyingMaterial material, Length? depth = null)
    {
        Rate = Guard.NotNull(rate);
        Guard.NotNegative(Boundary.GramsPerSquareMetre(rate.Value), "g/m²", nameof(rate));
        Material = Guard.NotNull(material);
        if (depth is { } given)
        {
            Guard.Positive(Boundary.Metres(given), "m", nameof(depth));
            Depth = HouseUnits.Normalise(given);
        }
    }

    /// <summary>The mass of material per area.</summary>
    public Estimate<AreaDensity> Rate { get; }

    /// <summary>The material.</summary>
    public AcidifyingMaterial Material { get; }

    /// <summary>The depth of soil it is for, or <see langword="null"/> where the source gives none.</summary>
    public Length? Depth { get; }

    /// <summary>The same requirement for another depth of soil: the rate in proportion to the depth; custom.</summary>
    /// <param name="depth">The depth that the material is worked into; above zero.</param>
    /// <returns>The requirement for that depth, with the rule among its adjustments.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is not above zero.</exception>
    /// <exception cref="InvalidOperationException"><see cref="Depth"/> is <see langword="null"/>: there is nothing to scale from.</exception>
    public AcidRequirement ForDepth(Length depth)
    {
        double metres = Guard.Positive(Boundary.Metres(depth), "m", nameof(depth));
        if (Depth is not { } assumed)
        {
            throw new InvalidOperationException(
                $"'{Rate.Method.Name}' does not say which depth its rates are for, so they cannot be brought to another.");
        }

        return new AcidRequirement(Scaled(AcidRules.Depth, metres / Boundary.Metres(assumed)), Material, depth);
    }

    /// <summary>The same requirement in another material, by what both neutralise; for the pure compounds that is by molar masses.</summary>
    /// <param name="material">The material at hand, its hydrate named.</param>
    /// <returns>The requirement in that material, with the rule among its adjustments and the material's cautions.</returns>
    /// <exception cref="ArgumentNullException">The material is <see langword="null"/>.</exception>
    public AcidRequirement As(AcidifyingMaterial material) =>
        In(Guard.NotNull(material), AcidRules.ByMolarMass, Material.Fraction / material.Fraction);

    /// <summary>The same requirement in another material, by a factor in print.</summary>
    /// <param name="equivalent">The factor, from <see cref="AcidEquivalent.Published"/> or one's own.</param>
    /// <returns>The requirement in the material of the factor, with who says so among its adjustments and the material's cautions.</returns>
    /// <exception cref="ArgumentNullException">The factor is <see langword="null"/>.</exception>
    /// <exception cref="InvalidOperationException">The requirement is not one of pure elemental sulfur, which the factors start from.</exception>
    public AcidRequirement As(AcidEquivalent equivalent)
    {
        Guard.NotNull(equivalent);
        if (Material != AcidifyingMaterial.ElementalSulfur)
        {
            throw new InvalidOperationException(
                $"The factor is for elemental sulfur, and this is a requirement of {Material.Name}; bring it to elemental sulfur first.");
        }

        return In(equivalent.Material, equivalent.Method, equivalent.PartsPerSulfur);
    }

    /// <summary>The mass of material for an area.</summary>
    /// <param name="area">The area; zero or more.</param>
    /// <returns>The mass, with the evidence of the rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The area is negative.</exception>
    public Estimate<Mass> Over(Area area) => LimeRequirement.Over(Rate, area);

    /// <summary>The applications that the requirement is to be given in.</summary>
    /// <param name="limit">How much one application and one year may hold; limits differ by ground.</param>
    /// <returns>The applications in order.</returns>
    /// <exception cref="ArgumentNullException">The limit is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The requirement would need more than a thousand applications.</exception>
    public AcidSchedule Split(AcidLimit limit) => new(this, limit);

    /// <summary>The requirement in metric units and invariant culture.</summary>
    /// <returns>One line: material, depth, rate, method, source, number of cautions.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The requirement as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: material, depth, rate, method, source, number of cautions.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"{QuantityText.Of(Rate.Value, style)} of {Material.Name}{ForDepthOf(style)}")
    {
        Rows = ((IDisplayable)Rate).ToDisplay(style).Rows,
    };

    internal bool IsZero => Boundary.GramsPerSquareMetre(Rate.Value) == 0;

    // What belongs to the old material goes, so that iron sulfate is not called flammable.
    private AcidRequirement In(AcidifyingMaterial material, Method rule, double ratio)
    {
        Estimate<AreaDensity> scaled = Scaled(rule, ratio);
        IReadOnlyList<Caution> old = AcidCautions.Of(Material);
        IEnumerable<Caution> cautions = scaled.Cautions.Where(caution => !old.Contains(caution)).Concat(IsZero ? [] : AcidCautions.Of(material));
        return new AcidRequirement(
            new Estimate<AreaDensity>(scaled.Value, scaled.Method, scaled.Range, scaled.Adjustments, [.. cautions]), material, Depth);
    }

    private Estimate<AreaDensity> Scaled(Method rule, double ratio) =>
        Rate.AdjustedBy(rule, rate => AreaDensity.FromGramsPerSquareMeter(Boundary.GramsPerSquareMetre(rate) * ratio));

    private string ToString(TextStyle style) => $"{Material.Name}{ForDepthOf(style)}: {Rate.ToString(style.Format, style.Culture)}";

    private string ForDepthOf(TextStyle style) => Depth is { } depth ? $" for {QuantityText.Of(depth, style)} of soil" : "";
}
