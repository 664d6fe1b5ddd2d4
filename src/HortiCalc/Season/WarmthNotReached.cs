using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>There is no date: no day of the year is warm enough for the crop.</summary>
public sealed record WarmthNotReached : DateReason
{
    /// <summary>Names the warmth.</summary>
    /// <param name="mean">The mean temperature of a day that is waited for.</param>
    public WarmthNotReached(Temperature mean) => Mean = HouseUnits.Normalise(mean);

    /// <summary>The mean temperature of a day that is waited for.</summary>
    public Temperature Mean { get; }

    internal override string Text(PlanStep step, TextStyle style) =>
        $"no day of the year has a mean of {QuantityText.Of(Mean, style)}, which the crop needs";
}
