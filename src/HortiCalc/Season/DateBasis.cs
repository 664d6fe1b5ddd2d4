namespace HortiCalc.Season;

/// <summary>What the date of a job rests on.</summary>
public enum DateBasis
{
    /// <summary>The accepted chance of a cold night, from the distribution of past seasons.</summary>
    ColdNightChance,

    /// <summary>The latest, or earliest, cold night on record, because there are too few for a chance.</summary>
    ColdNightOnRecord,

    /// <summary>So few seasons have such a night, or none, that the accepted chance is kept without a date.</summary>
    ColdNightsTooRare,

    /// <summary>The mean warmth of the season; cold nights would have allowed an earlier day.</summary>
    MeanWarmth,

    /// <summary>Weeks counted back from planting out.</summary>
    WeeksBeforePlantingOut,

    /// <summary>Weeks counted on from sowing or taking cuttings.</summary>
    WeeksAfterStart,

    /// <summary>Days counted on from planting out.</summary>
    DaysAfterPlantingOut,

    /// <summary>The sum of warmth since planting out, in past years.</summary>
    HeatSum,

    /// <summary>There is no date: another date it would be counted from is missing, or the record gives none.</summary>
    NotKnown,
}
