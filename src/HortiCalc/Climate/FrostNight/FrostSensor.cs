namespace HortiCalc.Climate;

/// <summary>Where a minimum is read.</summary>
public enum FrostSensor
{
    /// <summary>In the air, in a screen at 1.25 to 2 m.</summary>
    Air,

    /// <summary>At the tips of short grass, open to the sky.</summary>
    Grass,
}
