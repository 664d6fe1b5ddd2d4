using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>The date waits for warmth: cold nights alone would have allowed an earlier one.</summary>
public sealed record WarmthReached : DateReason
{
    /// <summary>Names the warmth.</summary>
    /// <param name="mean">The mean temperature of a day that is waited for.</param>
    /// <param name="threshold">The night that hurts the crop: at this temperature or colder.</param>
    /// <param name="chanceOfColdLater">The chance of such a night from this day on, or <see langword="null"/> where there are too few seasons to tell.</param>
    public WarmthReached(Temperature mean, Temperature threshold, Ratio? chanceOfColdLater = null)
    {
        Mean = HouseUnits.Normalise(mean);
        Threshold = HouseUnits.Normalise(threshold);
        ChanceOfColdLater = chanceOfColdLater is Ratio chance ? HouseUnits.Normalise(chance) : null;
    }

    /// <summary>The mean temperature of a day that is waited for.</summary>
    public Temperature Mean { get; }

    /// <summary>The night that hurts the crop.</summary>
    public Temperature Threshold { get; }

    /// <summary>The chance of such a night from this day on.</summary>
    public Ratio? ChanceOfColdLater { get; }

    internal override string Text(PlanStep step, TextStyle style)
    {
        string mean = $"{QuantityText.Of(Mean, style)} mean";
        return ChanceOfColdLater is Ratio share
            ? $"{mean}; {PlanText.Chance(share, style)} chance of {QuantityText.Of(Threshold, style)} or colder"
            : $"{mean} reached; too few seasons for a chance of cold";
    }
}
