namespace HortiCalc.Mixes;

/// <summary>The most severe acute category, by skin or eye, of what is sprayed, as US labels are made by.</summary>
public enum ToxicityCategory
{
    /// <summary>Category III or IV.</summary>
    ThreeOrFour,

    /// <summary>Category II.</summary>
    Two,

    /// <summary>Category I.</summary>
    One,

    /// <summary>An organophosphate that inhibits cholinesterase, used outdoors where less than 25 inches of rain fall in a year.</summary>
    OrganophosphateInDryPlaces,
}
