using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>How far a water is restricted by one hazard.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record WaterFinding
{
    /// <summary>Holds a finding.</summary>
    /// <param name="hazard">The hazard.</param>
    /// <param name="restriction">How far it restricts, with its evidence.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such hazard.</exception>
    /// <exception cref="ArgumentNullException">The restriction is <see langword="null"/>.</exception>
    public WaterFinding(WaterHazard hazard, Estimate<WaterRestriction> restriction)
    {
        Hazard = Guard.Defined(hazard);
        Restriction = Guard.NotNull(restriction);
    }

    /// <summary>The hazard.</summary>
    public WaterHazard Hazard { get; }

    /// <summary>How far it restricts, with its evidence.</summary>
    public Estimate<WaterRestriction> Restriction { get; }

    /// <summary>The hazard and the restriction.</summary>
    /// <returns>For instance <c>Salinity: SlightToModerate; ...</c>.</returns>
    public override string ToString() => $"{Hazard}: {Restriction}";
}
