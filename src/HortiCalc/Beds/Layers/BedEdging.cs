namespace HortiCalc.Beds;

/// <summary>What holds the soil of a bed at its edge.</summary>
public enum BedEdging
{
    /// <summary>Nothing, or soil alone.</summary>
    None,

    /// <summary>Timber without a preservative.</summary>
    Timber,

    /// <summary>Timber with a preservative, sleepers included.</summary>
    TreatedTimber,

    /// <summary>Stone, brick or concrete.</summary>
    Masonry,

    /// <summary>Metal.</summary>
    Metal,

    /// <summary>Plastic.</summary>
    Plastic,
}
