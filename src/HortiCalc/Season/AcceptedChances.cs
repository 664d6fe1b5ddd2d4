using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>How much risk the grower accepts: each a chance in one year, above 0 and below 100 %.</summary>
/// <remarks>
/// <see cref="Usual"/> is custom, not science. One year in ten is the first level that freeze tables print; a grower who cannot
/// cover or replace plants takes less, one who can takes more. One year in five for the harvest is the custom of planning
/// for four years out of five.
/// </remarks>
public sealed record AcceptedChances
{
    /// <summary>Says how much risk the grower accepts.</summary>
    /// <param name="coldAfterPlantingOut">That a night which hurts the crop comes after planting out.</param>
    /// <param name="freezeBeforePruningHeals">That the first freeze of autumn comes before the weeks allowed after the last pruning are over.</param>
    /// <param name="coldBeforeIndoors">That a night which hurts the plant comes before it is brought indoors.</param>
    /// <param name="laterHarvest">That the first harvest comes later than the date given.</param>
    /// <param name="tooFewPlants">That fewer seeds or cuttings succeed than there are places for.</param>
    /// <exception cref="ArgumentOutOfRangeException">A chance is not above 0 and below 100 %.</exception>
    public AcceptedChances(
        Ratio coldAfterPlantingOut, Ratio freezeBeforePruningHeals, Ratio coldBeforeIndoors, Ratio laterHarvest, Ratio tooFewPlants)
    {
        ColdAfterPlantingOut = Checked(coldAfterPlantingOut, nameof(coldAfterPlantingOut));
        FreezeBeforePruningHeals = Checked(freezeBeforePruningHeals, nameof(freezeBeforePruningHeals));
        ColdBeforeIndoors = Checked(coldBeforeIndoors, nameof(coldBeforeIndoors));
        LaterHarvest = Checked(laterHarvest, nameof(laterHarvest));
        TooFewPlants = Checked(tooFewPlants, nameof(tooFewPlants));
    }

    /// <summary>One year in ten for each, and one year in five for the harvest.</summary>
    public static AcceptedChances Usual { get; } = new(
        coldAfterPlantingOut: Ratio.FromPercent(10),
        freezeBeforePruningHeals: Ratio.FromPercent(10),
        coldBeforeIndoors: Ratio.FromPercent(10),
        laterHarvest: Ratio.FromPercent(20),
        tooFewPlants: Ratio.FromPercent(10));

    /// <summary>That a night which hurts the crop comes after planting out.</summary>
    public Ratio ColdAfterPlantingOut { get; }

    /// <summary>That the first freeze of autumn comes before the weeks allowed after the last pruning are over.</summary>
    public Ratio FreezeBeforePruningHeals { get; }

    /// <summary>That a night which hurts the plant comes before it is brought indoors.</summary>
    public Ratio ColdBeforeIndoors { get; }

    /// <summary>That the first harvest comes later than the date given.</summary>
    public Ratio LaterHarvest { get; }

    /// <summary>That fewer seeds or cuttings succeed than there are places for.</summary>
    public Ratio TooFewPlants { get; }

    internal string ToString(TextStyle style) =>
        $"cold after planting {QuantityText.Of(ColdAfterPlantingOut, style)}, freeze before pruning heals {QuantityText.Of(FreezeBeforePruningHeals, style)}, "
        + $"cold before indoors {QuantityText.Of(ColdBeforeIndoors, style)}, later harvest {QuantityText.Of(LaterHarvest, style)}, "
        + $"too few plants {QuantityText.Of(TooFewPlants, style)}";

    private static Ratio Checked(Ratio chance, string parameter)
    {
        Guard.Between(Boundary.Fraction(chance) * 100, 0, 100, "%", parameter);
        return HouseUnits.Normalise(chance);
    }

    /// <summary>The chances in invariant culture.</summary>
    /// <returns>For instance <c>cold after planting 10 %, freeze before pruning heals 10 %, ...</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);
}
