using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>How much risk the grower accepts: each a chance in one year, above 0 and below 100 %.</summary>
/// <remarks>
/// The defaults are custom, not science. One year in ten is the first level that freeze tables print; a grower who cannot
/// cover or replace plants takes less, one who can takes more. One year in five for the harvest is the custom of planning
/// for four years out of five.
/// </remarks>
public sealed record AcceptedChances
{
    /// <summary>Says how much risk the grower accepts.</summary>
    /// <param name="coldAfterPlantingOut">That a night which hurts the crop comes after planting out. Default 10 %.</param>
    /// <param name="freezeBeforePruningHeals">That the first freeze of autumn comes before the weeks allowed after the last pruning are over. Default 10 %.</param>
    /// <param name="coldBeforeIndoors">That a night which hurts the plant comes before it is brought indoors. Default 10 %.</param>
    /// <param name="laterHarvest">That the first harvest comes later than the date given. Default 20 %.</param>
    /// <param name="tooFewPlants">That fewer seeds or cuttings succeed than there are places for. Default 10 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">A chance is not above 0 and below 100 %.</exception>
    public AcceptedChances(
        Ratio? coldAfterPlantingOut = null,
        Ratio? freezeBeforePruningHeals = null,
        Ratio? coldBeforeIndoors = null,
        Ratio? laterHarvest = null,
        Ratio? tooFewPlants = null)
    {
        ColdAfterPlantingOut = Checked(coldAfterPlantingOut, 10, nameof(coldAfterPlantingOut));
        FreezeBeforePruningHeals = Checked(freezeBeforePruningHeals, 10, nameof(freezeBeforePruningHeals));
        ColdBeforeIndoors = Checked(coldBeforeIndoors, 10, nameof(coldBeforeIndoors));
        LaterHarvest = Checked(laterHarvest, 20, nameof(laterHarvest));
        TooFewPlants = Checked(tooFewPlants, 10, nameof(tooFewPlants));
    }

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

    private static Ratio Checked(Ratio? chance, double defaultPercent, string parameter)
    {
        if (chance is not Ratio given)
            return Ratio.FromPercent(defaultPercent);
        Guard.Between(Boundary.Fraction(given) * 100, 0, 100, "%", parameter);
        return HouseUnits.Normalise(given);
    }
}
