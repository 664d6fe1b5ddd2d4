namespace HortiCalc.Mixes;

/// <summary>What an ingredient is, as far as it decides what it must not meet.</summary>
public enum IngredientClass
{
    /// <summary>Bleach and everything else that brings free chlorine.</summary>
    Hypochlorite,

    /// <summary>Calcium hypochlorite as powder, granules or tablets; a hypochlorite too.</summary>
    DryHypochlorite,

    /// <summary>Pool chlorine of isocyanurates, trichlor and dichlor; counted as a hypochlorite too.</summary>
    ChlorinatedIsocyanurate,

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

    /// <summary>Fertilisers of any kind.</summary>
    Fertiliser,

    /// <summary>Pesticides of any kind.</summary>
    Pesticide,

    /// <summary>Cleaners and disinfectants of any kind.</summary>
    CleanerOrDisinfectant,

    /// <summary>Fertilisers that hold soluble calcium, such as calcium nitrate.</summary>
    CalciumFertiliser,

    /// <summary>Fertilisers that hold sulfate.</summary>
    SulfateFertiliser,

    /// <summary>Fertilisers that hold phosphate, phosphoric acid among them.</summary>
    PhosphateFertiliser,

    /// <summary>Fertilisers that hold magnesium.</summary>
    MagnesiumFertiliser,

    /// <summary>Ammonium phosphates; a phosphate fertiliser too.</summary>
    AmmoniumPhosphate,

    /// <summary>Ammonium sulfate; a sulfate fertiliser too.</summary>
    AmmoniumSulfate,

    /// <summary>Potassium nitrate, chloride and other potassium salts.</summary>
    PotassiumFertiliser,

    /// <summary>Iron as a plain salt, not chelated.</summary>
    IronFertiliser,

    /// <summary>Lime and other alkalis.</summary>
    Alkali,

    /// <summary>An acid as a concentrate; an acid too.</summary>
    ConcentratedAcid,
}
