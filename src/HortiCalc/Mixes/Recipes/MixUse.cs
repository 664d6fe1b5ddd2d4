namespace HortiCalc.Mixes;

/// <summary>What a mix is for.</summary>
public enum MixUse
{
    /// <summary>Pots, flats and trays.</summary>
    Pots,

    /// <summary>Hand tools.</summary>
    Tools,

    /// <summary>Benches.</summary>
    Benches,

    /// <summary>Other hard surfaces.</summary>
    Surfaces,

    /// <summary>Surfaces that touch food.</summary>
    FoodSurfaces,

    /// <summary>Leaves and shoots.</summary>
    Foliage,

    /// <summary>Seed.</summary>
    Seed,

    /// <summary>Pipes, drippers and the water in them.</summary>
    IrrigationLine,
}
