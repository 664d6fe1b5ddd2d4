namespace HortiCalc.Climate;

/// <summary>What a table of stages follows.</summary>
public enum StageSubject
{
    /// <summary>A crop.</summary>
    Crop,

    /// <summary>An insect or a mite: what comes of it is decided by looking, not by the sum.</summary>
    Insect,

    /// <summary>Plants and animals of the garden that tell how far the year is.</summary>
    Indicator,
}
