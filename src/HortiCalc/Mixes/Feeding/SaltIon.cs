using HortiCalc.Units;

namespace HortiCalc.Mixes;

/// <summary>How many of an ion one formula unit of a salt sets free.</summary>
public sealed record SaltIon
{
    /// <summary>States how many of an ion a salt sets free.</summary>
    /// <param name="ion">The ion.</param>
    /// <param name="count">Per formula unit; more than 0. Not always whole: see greenhouse calcium nitrate.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ion is not a defined one, or the count is not above 0.</exception>
    public SaltIon(SolutionIon ion, double count)
    {
        Ion = Guard.Defined(ion);
        Count = Guard.Positive(count, "per formula unit");
    }

    /// <summary>The ion.</summary>
    public SolutionIon Ion { get; }

    /// <summary>How many per formula unit.</summary>
    public double Count { get; }

    /// <summary>One line of text in metric units and invariant culture.</summary>
    /// <returns>For instance <c>2 nitrate</c>.</returns>
    public override string ToString() => $"{Guard.Number(Count)} {IonFacts.Of(Ion).Name}";
}
