using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A lime requirement in the applications that a rule asks for.</summary>
/// <remarks>Immutable; equal when the requirement and the rule are. The applications add up to the requirement.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record LimeSchedule : IFormattable, IDisplayable
{
    /// <summary>Shares a requirement out.</summary>
    /// <param name="requirement">The whole.</param>
    /// <param name="split">The rule.</param>
    /// <exception cref="ArgumentNullException">The requirement or the rule is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The requirement would need more than a thousand applications.</exception>
    public LimeSchedule(LimeRequirement requirement, LimeSplit split)
    {
        Requirement = Guard.NotNull(requirement);
        Split = Guard.NotNull(split);
        double carbonate = Boundary.GramsPerSquareMetre(requirement.Rate.Value) * requirement.Material.Fraction;
        Rates = ValueList<Estimate<AreaDensity>>.Of(split.SharesOf(carbonate).Select(share => requirement.Rate.AdjustedBy(
            split.Method, rate => AreaDensity.FromGramsPerSquareMeter(Boundary.GramsPerSquareMetre(rate) * share))));
    }

    /// <summary>The whole.</summary>
    public LimeRequirement Requirement { get; }

    /// <summary>The rule.</summary>
    public LimeSplit Split { get; }

    /// <summary>The mass of material per area in each application, in order; none where no lime is needed.</summary>
    [JsonIgnore]
    public IReadOnlyList<Estimate<AreaDensity>> Rates { get; }

    /// <summary>How many applications there are.</summary>
    [JsonIgnore]
    public int Count => Rates.Count;

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
    /// <returns>One line: the rates, the interval, the rule with its source, and the whole.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The applications as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: the rates, the interval, the rule with its source, and the whole.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(Title(style))
    {
        Rows =
        [
            new DisplayRow("split", Split.ToString()),
            .. ((IDisplayable)Requirement).ToDisplay(style).Rows,
        ],
    };

    private string ToString(TextStyle style) => $"{Title(style)}; {Split}; in all {Requirement.ToString(style.Format, style.Culture)}";

    private string Title(TextStyle style)
    {
        if (Count == 0)
            return $"no application of {Requirement.Material.Name}";
        string interval = Count == 1 || Split.Interval.Length == 0 ? "" : ", " + Split.Interval;
        return $"{string.Join(", then ", Rates.Select(rate => QuantityText.Of(rate.Value, style)))} of {Requirement.Material.Name}{interval}";
    }
}
