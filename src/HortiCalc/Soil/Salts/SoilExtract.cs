namespace HortiCalc.Soil;

/// <summary>How much water a soil was stirred with before its salts were measured, by mass.</summary>
public enum SoilExtract
{
    /// <summary>One of soil to one of water.</summary>
    OneToOne,

    /// <summary>One of soil to two of water.</summary>
    OneToTwo,

    /// <summary>One of soil to five of water, as in Australia.</summary>
    OneToFive,
}
