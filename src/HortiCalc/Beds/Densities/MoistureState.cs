namespace HortiCalc.Beds;

/// <summary>How wet a material was when its bulk density was taken. The same sand weighs a third more wet than dry.</summary>
public enum MoistureState
{
    /// <summary>As it is handled or delivered; the source says nothing nearer.</summary>
    AsDelivered,

    /// <summary>Dry, as the source has it: air-dry for site materials, oven-dry for soils and media in a laboratory.</summary>
    Dry,

    /// <summary>Moist: the source says green, or with some moisture.</summary>
    Moist,

    /// <summary>Wet or saturated.</summary>
    Wet,
}
