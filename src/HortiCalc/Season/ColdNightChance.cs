using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>The date has the accepted chance of a cold night: later in spring, earlier in autumn. Seasons without one count.</summary>
public sealed record ColdNightChance : DateReason
{
    /// <summary>Names the chance.</summary>
    /// <param name="threshold">A night at this temperature or colder counts.</param>
    /// <param name="chance">The chance in one season.</param>
    /// <param name="seasons">How many seasons it rests on.</param>
    /// <param name="weeksBefore">How many weeks before the day with that chance the job is done: from these, or none.</param>
    /// <param name="weeksBeforeUntil">To these, or none.</param>
    public ColdNightChance(Temperature threshold, Ratio chance, int seasons, int? weeksBefore = null, int? weeksBeforeUntil = null)
    {
        Threshold = HouseUnits.Normalise(threshold);
        Chance = HouseUnits.Normalise(chance);
        Seasons = Guard.AtLeast(seasons, 1);
        WeeksBefore = weeksBefore;
        WeeksBeforeUntil = weeksBeforeUntil;
    }

    /// <summary>A night at this temperature or colder counts.</summary>
    public Temperature Threshold { get; }

    /// <summary>The chance in one season.</summary>
    public Ratio Chance { get; }

    /// <summary>How many seasons it rests on.</summary>
    public int Seasons { get; }

    /// <summary>The most weeks before the day with that chance.</summary>
    public int? WeeksBefore { get; }

    /// <summary>The fewest weeks before the day with that chance.</summary>
    public int? WeeksBeforeUntil { get; }

    internal override string Text(PlanStep step, TextStyle style)
    {
        string chance = Text(style);
        if (WeeksBefore is int from && WeeksBeforeUntil is int to)
            return $"{to} to {from} weeks before a {chance}";
        return IsSpring(step) ? $"{chance} afterwards" : $"{chance} by next day";
    }

    internal override string Text(TextStyle style) => $"{QuantityText.Of(Chance, style)} chance of {QuantityText.Of(Threshold, style)} or colder";
}
