using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>No date is needed: cold nights come in no season, or in fewer than the accepted share of them.</summary>
public sealed record ColdNightsRare : DateReason
{
    /// <summary>Names the share of seasons.</summary>
    /// <param name="threshold">A night at this temperature or colder counts.</param>
    /// <param name="share">The share of seasons with such a night.</param>
    /// <param name="seasons">How many seasons the record tells.</param>
    public ColdNightsRare(Temperature threshold, Ratio share, int seasons)
    {
        Threshold = HouseUnits.Normalise(threshold);
        Share = HouseUnits.Normalise(share);
        Seasons = Guard.AtLeast(seasons, 1);
    }

    /// <summary>A night at this temperature or colder counts.</summary>
    public Temperature Threshold { get; }

    /// <summary>The share of seasons with such a night.</summary>
    public Ratio Share { get; }

    /// <summary>How many seasons the record tells.</summary>
    public int Seasons { get; }

    internal override string Text(PlanStep step, TextStyle style)
    {
        string cold = $"{QuantityText.Of(Threshold, style)} or colder";
        string seasons = QuantityText.Of(Seasons, style);
        return Boundary.Fraction(Share) == 0
            ? $"no night of {cold} in {seasons} seasons"
            : $"{cold} in {QuantityText.Of(Share, style)} of {seasons} seasons, which is accepted";
    }
}
