namespace HortiCalc.Climate;

/// <summary>How the cold comes, which decides what helps against it.</summary>
public enum FrostType
{
    /// <summary>Neither picture fits.</summary>
    Unclear,

    /// <summary>The ground loses its warmth to a clear sky in still air; above it the air is warmer. Covers, water and stirring the air help.</summary>
    Radiation,

    /// <summary>Cold air blows in and replaces what was there. Little helps.</summary>
    Advection,
}
