using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>The date is when past years had brought the crop the warmth it needs.</summary>
public sealed record HeatReached : DateReason
{
    /// <summary>Names the warmth and the years.</summary>
    /// <param name="heat">The sum since planting out.</param>
    /// <param name="years">How many years were counted.</param>
    /// <param name="later">The share of years in which it came later, or <see langword="null"/> where there are too few to tell: the date is then the latest.</param>
    public HeatReached(ThermalTime heat, int years, Ratio? later = null)
    {
        Heat = heat;
        Years = Guard.AtLeast(years, 1);
        Later = later is Ratio share ? HouseUnits.Normalise(share) : null;
    }

    /// <summary>The sum since planting out.</summary>
    public ThermalTime Heat { get; }

    /// <summary>How many years were counted.</summary>
    public int Years { get; }

    /// <summary>The share of years in which it came later.</summary>
    public Ratio? Later { get; }

    internal override string Text(PlanStep step, TextStyle style)
    {
        string heat = QuantityText.Of(Heat, style);
        string years = QuantityText.Of(Years, style);
        return Later is Ratio share
            ? $"{heat}; later in {QuantityText.Of(share, style)} of {years} years"
            : $"{heat}; the latest of {years} years, too few for a chance";
    }
}
