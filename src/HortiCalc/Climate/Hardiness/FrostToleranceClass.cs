namespace HortiCalc.Climate;

/// <summary>What frost a crop stands, least hardy first.</summary>
public enum FrostToleranceClass
{
    /// <summary>Damaged by a light frost, from -2 to 0 °C (28 to 32 °F).</summary>
    DamagedByLightFrost,

    /// <summary>Withstands a light frost, from -2 to 0 °C (28 to 32 °F).</summary>
    WithstandsLightFrost,

    /// <summary>Withstands a hard frost, below -2 °C (28 °F).</summary>
    WithstandsHardFrost,
}
