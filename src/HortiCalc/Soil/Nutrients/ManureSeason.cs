namespace HortiCalc.Soil;

/// <summary>When manure is spread.</summary>
public enum ManureSeason
{
    /// <summary>August to October in Britain.</summary>
    Autumn,

    /// <summary>November to January in Britain.</summary>
    Winter,

    /// <summary>February to April in Britain.</summary>
    Spring,

    /// <summary>In summer on grass.</summary>
    SummerGrass,
}
