namespace HortiCalc.Soil;

/// <summary>The classes of salt-affected soils.</summary>
public enum SaltAffectedClass
{
    /// <summary>Neither saline nor sodic.</summary>
    NotAffected,

    /// <summary>Salty, with little sodium among the exchangeable cations.</summary>
    Saline,

    /// <summary>Salty, and with much sodium.</summary>
    SalineSodic,

    /// <summary>Not salty, with much sodium: the structure falls apart.</summary>
    Sodic,
}
