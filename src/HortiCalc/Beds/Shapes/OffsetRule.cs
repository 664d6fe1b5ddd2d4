namespace HortiCalc.Beds;

/// <summary>How an edge is taken to run between the places where it was measured.</summary>
public enum OffsetRule
{
    /// <summary>Straight from one to the next.</summary>
    Trapezoid,

    /// <summary>As a parabola through each three in turn; needs an odd number of offsets. Nearer the truth where the edge is a smooth
    /// curve.</summary>
    Simpson,
}
