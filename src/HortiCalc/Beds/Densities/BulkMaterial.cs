namespace HortiCalc.Beds;

/// <summary>What kind of material a bulk density belongs to, so that the figures of several sources can be set side by
/// side.</summary>
public enum BulkMaterial
{
    /// <summary>Soil and topsoil, and blends that are mostly soil.</summary>
    Soil,

    /// <summary>Sand.</summary>
    Sand,

    /// <summary>Gravel, crushed stone and aggregate.</summary>
    Stone,

    /// <summary>Compost, finished or not.</summary>
    Compost,

    /// <summary>Manure and litter of animals.</summary>
    Manure,

    /// <summary>Mulch and bark.</summary>
    Mulch,

    /// <summary>Wood: chips, sawdust, brush, cordwood.</summary>
    Wood,

    /// <summary>Wood ash.</summary>
    Ash,

    /// <summary>Leaves, grass and other loose green waste.</summary>
    GreenWaste,

    /// <summary>Peat.</summary>
    Peat,

    /// <summary>Coir and media that are mostly coir.</summary>
    Coir,

    /// <summary>Expanded minerals such as perlite.</summary>
    ExpandedMineral,
}
