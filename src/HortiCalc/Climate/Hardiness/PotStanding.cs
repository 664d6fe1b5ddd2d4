namespace HortiCalc.Climate;

/// <summary>Where a pot loses its heat.</summary>
public enum PotStanding
{
    /// <summary>On the ground, which keeps its bottom as warm as it is: heat leaves by the side and the top.</summary>
    OnTheGround,

    /// <summary>On a bench, a grating or feet: heat leaves on all sides.</summary>
    InTheAir,
}
