namespace HortiCalc.Containers;

/// <summary>How a figure lies to a range.</summary>
public enum RangeFinding
{
    /// <summary>Below it.</summary>
    Below,

    /// <summary>In it, the ends too.</summary>
    Within,

    /// <summary>Above it.</summary>
    Above,
}
