namespace HortiCalc.Mixes;

/// <summary>What an ingredient is, as far as it decides what it must not meet.</summary>
public enum IngredientClass
{
    /// <summary>Bleach and other hypochlorites.</summary>
    Hypochlorite,

    /// <summary>Any acid: vinegar, citric acid, the acids of feeding, acid cleaners.</summary>
    Acid,

    /// <summary>Acetic acid, as in vinegar; an acid too.</summary>
    AceticAcid,

    /// <summary>Ammonia and what sets it free.</summary>
    Ammonia,

    /// <summary>Fertilisers that hold ammonium.</summary>
    AmmoniumFertiliser,

    /// <summary>Rubbing alcohol and other alcohols.</summary>
    Alcohol,

    /// <summary>Hydrogen peroxide of any strength.</summary>
    HydrogenPeroxide,

    /// <summary>Hydrogen peroxide as a concentrate.</summary>
    ConcentratedHydrogenPeroxide,

    /// <summary>Quaternary ammonium disinfectants.</summary>
    QuaternaryAmmonium,

    /// <summary>Soap.</summary>
    Soap,

    /// <summary>Horticultural or vegetable oil.</summary>
    Oil,

    /// <summary>Sulfur of any kind, lime sulfur among it.</summary>
    Sulfur,

    /// <summary>Lime sulfur, calcium polysulfide; a sulfur too.</summary>
    LimeSulfur,

    /// <summary>Bicarbonates.</summary>
    Bicarbonate,

    /// <summary>Fertilisers of any kind.</summary>
    Fertiliser,

    /// <summary>Pesticides of any kind.</summary>
    Pesticide,

    /// <summary>Cleaners and disinfectants of any kind.</summary>
    CleanerOrDisinfectant,
}
