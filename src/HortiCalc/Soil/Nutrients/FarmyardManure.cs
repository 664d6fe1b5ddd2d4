namespace HortiCalc.Soil;

/// <summary>The farmyard manures of the British table.</summary>
public enum FarmyardManure
{
    /// <summary>Of cattle.</summary>
    Cattle,

    /// <summary>Of pigs.</summary>
    Pig,

    /// <summary>Of sheep.</summary>
    Sheep,

    /// <summary>Of ducks.</summary>
    Duck,

    /// <summary>Of horses.</summary>
    Horse,
}
