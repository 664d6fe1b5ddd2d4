using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>How much of which liming material for which depth of soil, with what stands behind it.</summary>
/// <remarks>Immutable; equal when all members are equal. What is done to it is recorded in the adjustments of <see cref="Rate"/>.</remarks>
/// <example><code>
/// SoilReport soil = new() { PhInWater = new Ph(5.8), ExchangeableAcidity = ExchangeableCharge.FromMilliequivalentsPer100Grams(5.2) };
/// LimeRequirement need = Liming.Requirement(soil, new Ph(7.0), LimingMethod.PennStateAgronomic)
///     .ForDepth(Length.FromInches(4))
///     .As(new LimingMaterial("screened limestone", Ratio.FromPercent(88)));
/// Console.WriteLine($"{need:U}");
/// foreach (Estimate&lt;Mass&gt; dose in need.Split(LimeSplit.PennStateLawn).Over(Area.FromSquareFeet(600)))
///     Console.WriteLine($"{dose:U}");
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record LimeRequirement : IFormattable, IDisplayable
{
    /// <summary>Makes a lime requirement.</summary>
    /// <param name="rate">The mass of material per area; zero or more.</param>
    /// <param name="material">The material.</param>
    /// <param name="depth">The depth of soil it is for, or <see langword="null"/> where the source gives none.</param>
    /// <exception cref="ArgumentNullException">The rate or the material is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The rate is negative, or the depth is not above zero.</exception>
    public LimeRequirement(Estimate<AreaDensity> rate, LimingMaterial material, Length? depth = null)
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
    public LimingMaterial Material { get; }

    /// <summary>The depth of soil it is for, or <see langword="null"/> where the source gives none.</summary>
    public Length? Depth { get; }

    /// <summary>The element magnesium that the lime brings, or <see langword="null"/> where the material does not state its own.</summary>
    [JsonIgnore]
    public AreaDensity? MagnesiumSupplied => Material.Magnesium is { } share
        ? AreaDensity.FromGramsPerSquareMeter(Boundary.GramsPerSquareMetre(Rate.Value) * Boundary.MassFraction(share))
        : null;

    /// <summary>The same requirement for another depth of soil: the rate in proportion to the depth.</summary>
    /// <remarks>
    /// Rule: Castle Hill Quarry, for working deeper than 15 cm. Half the rate for 4 inches of one for 8 is printed too (Michigan State
    /// University Extension, Bulletin E-2567, 1995); to other depths it is custom.
    /// </remarks>
    /// <param name="depth">The depth that the lime is worked into; above zero.</param>
    /// <returns>The requirement for that depth, with the rule among its adjustments.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is not above zero.</exception>
    /// <exception cref="InvalidOperationException">
    /// <see cref="Depth"/> is <see langword="null"/>: there is nothing to scale from.
    /// </exception>
    public LimeRequirement ForDepth(Length depth)
    {
        double metres = Guard.Positive(Boundary.Metres(depth), "m", nameof(depth));
        if (Depth is not { } assumed)
        {
            throw new InvalidOperationException(
                $"'{Rate.Method.Name}' does not say which depth its rates are for, so they cannot be brought to another.");
        }

        double ratio = metres / Boundary.Metres(assumed);
        return new LimeRequirement(Scaled(LimeRules.Depth, ratio), Material, depth);
    }

    /// <summary>The requirement for lime that is left on the surface: the rate for the shallow depth that it will reach, with the caution <c>lime.surface</c>.</summary>
    /// <remarks>
    /// Iowa samples 2 to 3 inches where soil is not worked, because lime seldom changes the pH deeper there. Limits of one dressing are in
    /// <see cref="LimeSplit"/>.
    /// </remarks>
    /// <param name="depth">The depth that the lime will reach; above zero.</param>
    /// <returns>The requirement for that depth.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is not above zero.</exception>
    /// <exception cref="InvalidOperationException"><see cref="Depth"/> is <see langword="null"/>: there is nothing to scale from.</exception>
    public LimeRequirement OnSurface(Length depth)
    {
        LimeRequirement shallow = ForDepth(depth);
        return new LimeRequirement(shallow.Rate.WithCautions(LimeCautions.Surface), Material, shallow.Depth);
    }

    /// <summary>
    /// The same requirement in another material: the rate times the present calcium carbonate equivalent, divided by that of the
    /// material.
    /// </summary>
    /// <remarks>
    /// Rule: Penn State Agricultural Analytical Services Laboratory, Home Garden, for a recommendation of 100 %. It corrects for what the
    /// material can neutralise, not for coarseness or moisture. A caustic material brings its cautions.
    /// </remarks>
    /// <param name="material">The material at hand.</param>
    /// <returns>The requirement in that material, with the rule among its adjustments.</returns>
    /// <exception cref="ArgumentNullException">The material is <see langword="null"/>.</exception>
    public LimeRequirement As(LimingMaterial material)
    {
        Guard.NotNull(material);
        Estimate<AreaDensity> rate = Scaled(LimeRules.Material, Material.Fraction / material.Fraction);
        return new LimeRequirement(rate.WithCautions(Liming.MaterialCautions(rate, material)), material, Depth);
    }

    /// <summary>The mass of material for an area.</summary>
    /// <param name="area">The area; zero or more.</param>
    /// <returns>The mass, with the evidence of the rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The area is negative.</exception>
    public Estimate<Mass> Over(Area area) => Over(Rate, area);

    /// <summary>The applications that the requirement is best given in.</summary>
    /// <param name="split">The rule; maxima differ between sources, so choose the one for your ground.</param>
    /// <returns>The applications in order.</returns>
    /// <exception cref="ArgumentNullException">The rule is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The requirement would need more than a thousand applications.</exception>
    public LimeSchedule Split(LimeSplit split) => new(this, split);

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

    internal static Estimate<Mass> Over(Estimate<AreaDensity> rate, Area area)
    {
        double squareMetres = Guard.NotNegative(Boundary.SquareMetres(area), "m²", nameof(area));
        return rate.Select(perArea => Mass.FromKilograms(Boundary.GramsPerSquareMetre(perArea) * squareMetres / 1000));
    }

    internal LimeRequirement WithUnknownDepth() => new(Rate.WithCautions(LimeCautions.DepthUnknown), Material, Depth);

    private Estimate<AreaDensity> Scaled(Method rule, double ratio) =>
        Rate.AdjustedBy(rule, rate => AreaDensity.FromGramsPerSquareMeter(Boundary.GramsPerSquareMetre(rate) * ratio));

    private string ToString(TextStyle style) => $"{Material.Name}{ForDepthOf(style)}: {Rate.ToString(style.Format, style.Culture)}";

    private string ForDepthOf(TextStyle style) => Depth is { } depth ? $" for {QuantityText.Of(depth, style)} of soil" : "";
}
