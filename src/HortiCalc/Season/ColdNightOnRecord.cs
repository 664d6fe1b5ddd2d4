using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>The date keeps clear of every cold night on record: there are too few seasons, or too few such nights, for a chance.</summary>
public sealed record ColdNightOnRecord : DateReason
{
    /// <summary>Names the record.</summary>
    /// <param name="threshold">A night at this temperature or colder counts.</param>
    /// <param name="seasons">How many seasons the record tells.</param>
    public ColdNightOnRecord(Temperature threshold, int seasons)
    {
        Threshold = HouseUnits.Normalise(threshold);
        Seasons = Guard.AtLeast(seasons, 1);
    }

    /// <summary>A night at this temperature or colder counts.</summary>
    public Temperature Threshold { get; }

    /// <summary>How many seasons the record tells.</summary>
    public int Seasons { get; }

    internal override string Text(PlanStep step, TextStyle style)
    {
        string cold = $"{QuantityText.Of(Threshold, style)} or colder";
        string seasons = QuantityText.Of(Seasons, style);
        return step switch
        {
            PlanStep.LastPruning => $"4 to 6 weeks before the earliest {cold} in {seasons} autumns; too few for a chance",
            _ when IsSpring(step) => $"after the latest {cold} in {seasons} springs; too few for a chance",
            _ => $"before the earliest {cold} in {seasons} autumns; too few for a chance",
        };
    }

    internal override string Text(TextStyle style) =>
        $"{QuantityText.Of(Threshold, style)} or colder in {QuantityText.Of(Seasons, style)} seasons; too few for a chance";
}
