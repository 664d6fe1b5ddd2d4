namespace HortiCalc.Climate;

/// <summary>How near the sea a place is, for <see cref="SolarRadiation.FromTemperature"/>.</summary>
public enum LandSetting
{
    /// <summary>Land decides the weather; no large water body acts on it.</summary>
    Interior,

    /// <summary>On or beside the coast of a large land mass, where air masses come from a nearby sea.</summary>
    Coastal,
}
