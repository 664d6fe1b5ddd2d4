using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A published limit or range of the electrical conductivity of soil or compost.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. A conductivity means nothing without the way the extract was made: the same compost reads
/// several times higher in a saturated paste than in five parts of water.
/// </remarks>
public sealed record SaltLimit
{
    /// <summary>Describes a limit.</summary>
    /// <param name="subject">What is limited, in the source's words or near them.</param>
    /// <param name="extract">How the extract is made; empty where the source does not say.</param>
    /// <param name="low">The low end; zero or more; equal to the high end where one figure is printed.</param>
    /// <param name="high">The high end; not below <paramref name="low"/>.</param>
    /// <param name="source">Where it comes from.</param>
    /// <exception cref="ArgumentException">The subject is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The low end is negative, or the high end is below it.</exception>
    public SaltLimit(string subject, string extract, ElectricConductivity low, ElectricConductivity high, Source source)
    {
        Subject = Guard.NotBlank(subject);
        Extract = Guard.NotNull(extract);
        double lowDecisiemens = Guard.NotNegative(Boundary.DecisiemensPerMetre(low), "dS/m", nameof(low));
        Guard.AtLeast(Boundary.DecisiemensPerMetre(high), lowDecisiemens, "dS/m", nameof(high));
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
        Source = Guard.NotNull(source);
    }

    /// <summary>What is limited.</summary>
    public string Subject { get; }

    /// <summary>How the extract is made; empty where the source does not say.</summary>
    public string Extract { get; }

    /// <summary>The low end.</summary>
    public ElectricConductivity Low { get; }

    /// <summary>The high end.</summary>
    public ElectricConductivity High { get; }

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }

    /// <summary>One line in metric units and invariant culture.</summary>
    /// <returns>For instance <c>saline soil: 4 dS/m [source]</c>.</returns>
    public override string ToString() =>
        $"{Subject}{(Extract.Length == 0 ? "" : $" ({Extract})")}: {PublishedSpan.Text(Low, High, TextStyle.Default)} [{Source}]";
}
