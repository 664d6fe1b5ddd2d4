using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>What the German scheme advises for a soil.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record GermanLimeAdvice
{
    /// <summary>Describes the advice.</summary>
    /// <param name="targetInCalciumChloride">The pH to aim at, in calcium chloride.</param>
    /// <param name="maintenance">The lime that keeps the soil there, or <see langword="null"/> where it was not seen.</param>
    /// <param name="mostPerYear">The most lime in a year.</param>
    /// <exception cref="ArgumentNullException">The most is <see langword="null"/>.</exception>
    public GermanLimeAdvice(Ph targetInCalciumChloride, LimeRequirement? maintenance, LimeRequirement mostPerYear)
    {
        TargetInCalciumChloride = targetInCalciumChloride;
        Maintenance = maintenance;
        MostPerYear = Guard.NotNull(mostPerYear);
    }

    /// <summary>The pH to aim at, in calcium chloride: not to be compared with a pH in water.</summary>
    public Ph TargetInCalciumChloride { get; }

    /// <summary>The lime, as calcium oxide, that keeps the soil there for a rotation; <see langword="null"/> where it was not seen.</summary>
    public LimeRequirement? Maintenance { get; }

    /// <summary>The most lime, as calcium oxide, in a year.</summary>
    public LimeRequirement MostPerYear { get; }

    /// <summary>The target and the maintenance in metric units and invariant culture.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        $"{TargetInCalciumChloride} in calcium chloride; maintenance {Maintenance?.ToString() ?? "not seen"}; at most {MostPerYear} a year";
}
