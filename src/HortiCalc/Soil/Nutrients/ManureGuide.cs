namespace HortiCalc.Soil;

/// <summary>Whose figures say how much of the nitrogen of manure the next crop gets.</summary>
public enum ManureGuide
{
    /// <summary>England and Wales: by season, soil and handling; for farmyard manure.</summary>
    EnglandAndWales,

    /// <summary>Ireland: a quarter in spring, and nothing to count on at any other time; for slurries and manures of the farm.</summary>
    Ireland,
}
