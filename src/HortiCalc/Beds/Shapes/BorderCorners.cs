namespace HortiCalc.Beds;

/// <summary>How a border or path goes round an outward corner.</summary>
public enum BorderCorners
{
    /// <summary>Its outer edge keeps the corner, as slabs and boards are laid.</summary>
    Sharp,

    /// <summary>Its outer edge is everywhere as far from the bed as the border is wide, so that corners are round.</summary>
    Round,
}
