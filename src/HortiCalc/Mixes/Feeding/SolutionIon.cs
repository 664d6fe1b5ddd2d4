namespace HortiCalc.Mixes;

/// <summary>What is dissolved in a feed or a water: the ions, and two nutrients without charge.</summary>
public enum SolutionIon
{
    /// <summary>Ammonium, NH₄⁺; with any ammonia of the solution.</summary>
    Ammonium,

    /// <summary>Potassium, K⁺.</summary>
    Potassium,

    /// <summary>Sodium, Na⁺.</summary>
    Sodium,

    /// <summary>Calcium, Ca²⁺.</summary>
    Calcium,

    /// <summary>Magnesium, Mg²⁺.</summary>
    Magnesium,

    /// <summary>Hydrogen, H⁺, as an acid brings it.</summary>
    Hydrogen,

    /// <summary>Nitrate, NO₃⁻.</summary>
    Nitrate,

    /// <summary>Dihydrogen phosphate, H₂PO₄⁻: phosphate as it is at the pH of a feed, 4 to 6.</summary>
    DihydrogenPhosphate,

    /// <summary>Sulfate, SO₄²⁻.</summary>
    Sulfate,

    /// <summary>Chloride, Cl⁻.</summary>
    Chloride,

    /// <summary>Bicarbonate, HCO₃⁻: the alkalinity of a water; for a pH, all inorganic carbon.</summary>
    Bicarbonate,

    /// <summary>Iron that is not chelated, Fe²⁺.</summary>
    Iron,

    /// <summary>Iron chelated by EDTA, (Fe-EDTA)⁻; one iron to one charge.</summary>
    IronChelate,

    /// <summary>Manganese, Mn²⁺.</summary>
    Manganese,

    /// <summary>Zinc, Zn²⁺.</summary>
    Zinc,

    /// <summary>Copper, Cu²⁺.</summary>
    Copper,

    /// <summary>Boric acid, H₃BO₃: without charge at the pH of a feed.</summary>
    BoricAcid,

    /// <summary>Molybdate, MoO₄²⁻.</summary>
    Molybdate,

    /// <summary>Urea, CO(NH₂)₂: nitrogen without charge.</summary>
    Urea,

    /// <summary>Dihydrogen citrate, C₆H₇O₇⁻: for a pH, all citric acid.</summary>
    DihydrogenCitrate,
}
