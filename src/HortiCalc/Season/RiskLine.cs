using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>How likely something is to go wrong in one season: by the distribution of past seasons, by counting them, or both.</summary>
public sealed record RiskLine : PlanLine
{
    /// <summary>Says how likely something is to go wrong.</summary>
    /// <param name="place">The bed or the pots.</param>
    /// <param name="crop">The crop.</param>
    /// <param name="risk">What can go wrong.</param>
    /// <param name="threshold">The night temperature that hurts.</param>
    /// <param name="evidence">The methods it rests on; at least one.</param>
    /// <param name="chance">The chance in one season by the distribution of past seasons, or <see langword="null"/> where there are too few.</param>
    /// <param name="times">In how many of the seasons on record it would have gone wrong.</param>
    /// <param name="seasons">How many seasons on record were counted; 0 where none can be.</param>
    /// <param name="date">The day that the risk is counted from or up to.</param>
    /// <exception cref="ArgumentOutOfRangeException">More seasons went wrong than were counted, or a number is negative.</exception>
    public RiskLine(
        string place,
        string crop,
        PlanRisk risk,
        Temperature threshold,
        IReadOnlyList<Method> evidence,
        Ratio? chance,
        int times,
        int seasons,
        DateOnly? date = null)
        : base(place, evidence)
    {
        Crop = Guard.NotBlank(crop);
        Risk = Guard.Defined(risk);
        Threshold = HouseUnits.Normalise(threshold);
        Chance = chance is Ratio share ? HouseUnits.Normalise(share) : null;
        Seasons = Guard.AtLeast(seasons, 0);
        Times = (int)Guard.Within(times, 0, seasons, "seasons");
        Date = date;
    }

    /// <summary>The crop.</summary>
    public string Crop { get; }

    /// <summary>What can go wrong.</summary>
    public PlanRisk Risk { get; }

    /// <summary>The night temperature that hurts.</summary>
    public Temperature Threshold { get; }

    /// <summary>The chance in one season by the distribution of past seasons.</summary>
    public Ratio? Chance { get; }

    /// <summary>In how many of the seasons on record it would have gone wrong.</summary>
    public int Times { get; }

    /// <summary>How many seasons on record were counted.</summary>
    public int Seasons { get; }

    /// <summary>The day that the risk is counted from or up to.</summary>
    public DateOnly? Date { get; }

    internal override IReadOnlyList<string> Cells(TextStyle style)
    {
        string counted = Seasons > 0 ? $"{QuantityText.Of(Times, style)} of {QuantityText.Of(Seasons, style)}" : "-";
        return [Chance is Ratio share ? PlanText.Chance(share, style) : "-", counted, $"{Crop}, {Place}", Event(style)];
    }

    private string Event(TextStyle style)
    {
        string cold = $"{QuantityText.Of(Threshold, style)} or colder";
        string day = Date is DateOnly date ? $" {QuantityText.Of(date, style)}" : "";
        return Risk switch
        {
            PlanRisk.ColdAfterPlantingOut => $"{cold} outside, from{day} on",
            PlanRisk.ColdBeforeHarvest => $"{cold} before the harvest,{day}",
            PlanRisk.TooLittleHeat => $"too cool to ripen before {cold}",
            _ => $"{cold} before it comes in,{day}",
        };
    }
}
