namespace HortiCalc.Beds;

/// <summary>What a water content by mass is a share of. Fifty percent of the one is a hundred percent of the other.</summary>
public enum MoistureBasis
{
    /// <summary>Of the dry mass, as soil science prints it; can exceed 100 %.</summary>
    OfDryMass,

    /// <summary>Of the wet mass, as compost laboratories print it; below 100 %.</summary>
    OfWetMass,
}
