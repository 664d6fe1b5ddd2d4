namespace HortiCalc.Soil;

/// <summary>How the salts of a soilless medium were measured.</summary>
public enum MediumExtract
{
    /// <summary>One of medium stirred with two of water, by volume.</summary>
    OneToTwo,

    /// <summary>The extract of the medium saturated with water.</summary>
    SaturatedMedium,

    /// <summary>What runs out of a moist pot when a little water is poured on: pour-through.</summary>
    PourThrough,
}
