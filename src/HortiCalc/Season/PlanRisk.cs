namespace HortiCalc.Season;

/// <summary>Something that can go wrong with a crop in a season.</summary>
public enum PlanRisk
{
    /// <summary>A night that hurts the crop comes after it is planted out or set outside.</summary>
    ColdAfterPlantingOut,

    /// <summary>A night that hurts the crop comes in autumn before the first harvest.</summary>
    ColdBeforeHarvest,

    /// <summary>The season does not bring the warmth that the crop needs before such a night, or before a year is over.</summary>
    TooLittleHeat,

    /// <summary>A night that hurts the plant comes before it is brought indoors.</summary>
    ColdBeforeIndoors,
}
