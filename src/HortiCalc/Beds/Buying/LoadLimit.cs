namespace HortiCalc.Beds;

/// <summary>What a load of loose material is limited by.</summary>
public enum LoadLimit
{
    /// <summary>The payload is reached before the space is full.</summary>
    Weight,

    /// <summary>The space is full before the payload is reached.</summary>
    Space,
}
