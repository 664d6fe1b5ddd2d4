using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A requirement in the equal applications that a limit allows.</summary>
/// <remarks>Immutable; equal when the requirement and the limit are. The applications add up to the requirement.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record AcidSchedule : IFormattable, IDisplayable
{
    /// <summary>Shares a requirement out.</summary>
    /// <param name="requirement">The whole.</param>
    /// <param name="limit">The limit.</param>
    /// <exception cref="ArgumentNullException">The requirement or the limit is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The requirement would need more than a thousand applications.</exception>
    public AcidSchedule(AcidRequirement requirement, AcidLimit limit)
    {
        Requirement = Guard.NotNull(requirement);
        Limit = Guard.NotNull(limit);
        double sulfur = Boundary.GramsPerSquareMetre(requirement.Rate.Value) * requirement.Material.Fraction / AcidifyingMaterial.ElementalSulfur.Fraction;
        int count = limit.CountOf(sulfur);
        Rates = ValueList<Estimate<AreaDensity>>.Of(Enumerable.Repeat(0, count).Select(_ => requirement.Rate.AdjustedBy(
            limit.Method, rate => AreaDensity.FromGramsPerSquareMeter(Boundary.GramsPerSquareMetre(rate) / count))));
        Years = limit.YearsOf(count, sulfur / count);
    }

    /// <summary>The whole.</summary>
    public AcidRequirement Requirement { get; }

    /// <summary>The limit.</summary>
    public AcidLimit Limit { get; }

    /// <summary>The mass of material per area in each application, in order; none where nothing is needed.</summary>
    [JsonIgnore]
    public IReadOnlyList<Estimate<AreaDensity>> Rates { get; }

    /// <summary>How many applications there are.</summary>
    [JsonIgnore]
    public int Count => Rates.Count;

    /// <summary>How many years the applications reach into at the soonest, or <see langword="null"/> where the limit says nothing of time.</summary>
    [JsonIgnore]
    public int? Years { get; }

    /// <summary>The mass of material for an area in each application, in order.</summary>
    /// <param name="area">The area; zero or more.</param>
    /// <returns>One mass an application.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The area is negative.</exception>
    public IReadOnlyList<Estimate<Mass>> Over(Area area)
    {
        Guard.NotNegative(Boundary.SquareMetres(area), "m²", nameof(area));
        return ValueList<Estimate<Mass>>.Of(Rates.Select(rate => LimeRequirement.Over(rate, area)));
    }

    /// <summary>The applications in metric units and invariant culture.</summary>
    /// <returns>One line: the applications, the years, the limit with its source, and the whole.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The applications as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: the applications, the years, the limit with its source, and the whole.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(Title(style))
    {
        Rows = [new DisplayRow("limit", Limit.ToString()), .. ((IDisplayable)Requirement).ToDisplay(style).Rows],
    };

    private string ToString(TextStyle style) => $"{Title(style)}; {Limit}; in all {Requirement.ToString(style.Format, style.Culture)}";

    private string Title(TextStyle style)
    {
        if (Count == 0)
            return $"no application of {Requirement.Material.Name}";
        string times = Count == 1 ? "once" : $"{Guard.Number(Count)} times";
        string apart = Count > 1 && Limit.FewestMonths is { } months ? $", {Guard.Number(months)} months apart" : "";
        string years = Years is > 1 ? $", over {Guard.Number(Years.Value)} years" : "";
        return $"{times} {QuantityText.Of(Rates[0].Value, style)} of {Requirement.Material.Name}{apart}{years}";
    }
}
