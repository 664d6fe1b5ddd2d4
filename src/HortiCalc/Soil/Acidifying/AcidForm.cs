namespace HortiCalc.Soil;

/// <summary>The chemical form of an acidifying material. It decides which cautions go with a dose of it.</summary>
public enum AcidForm
{
    /// <summary>Elemental sulfur: soil bacteria make sulfuric acid of it, which takes weeks to years. Its dust ignites.</summary>
    Sulfur,

    /// <summary>Aluminium sulfate: acts at once; its aluminium is toxic to plants in sour soil.</summary>
    AluminiumSulfate,

    /// <summary>Iron(II) sulfate, ferrous sulfate, sulfate of iron: acts within weeks; stains.</summary>
    IronSulfate,

    /// <summary>An ammonium fertiliser: acid forms as its ammonium turns to nitrate. It feeds nitrogen too.</summary>
    AmmoniumFertilizer,
}
