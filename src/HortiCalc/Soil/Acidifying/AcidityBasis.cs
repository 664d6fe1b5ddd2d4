namespace HortiCalc.Soil;

/// <summary>What an acidity of a fertiliser is counted by.</summary>
public enum AcidityBasis
{
    /// <summary>By mass of the fertiliser itself.</summary>
    Material,

    /// <summary>By mass of the nitrogen in it.</summary>
    Nitrogen,
}
