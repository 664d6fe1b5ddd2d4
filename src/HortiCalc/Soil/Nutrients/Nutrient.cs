namespace HortiCalc.Soil;

/// <summary>The elements that fertilisers are counted by. Labels count some as oxides: see <see cref="Oxide"/>.</summary>
public enum Nutrient
{
    /// <summary>Nitrogen, N.</summary>
    Nitrogen,

    /// <summary>Phosphorus, P, the element.</summary>
    Phosphorus,

    /// <summary>Potassium, K, the element.</summary>
    Potassium,

    /// <summary>Calcium, Ca.</summary>
    Calcium,

    /// <summary>Magnesium, Mg.</summary>
    Magnesium,

    /// <summary>Sulfur, S.</summary>
    Sulfur,

    /// <summary>Chloride, Cl: needed in traces, counted to keep it low.</summary>
    Chloride,

    /// <summary>Sodium, Na: counted to keep it low.</summary>
    Sodium,

    /// <summary>Boron, B.</summary>
    Boron,

    /// <summary>Copper, Cu.</summary>
    Copper,

    /// <summary>Iron, Fe.</summary>
    Iron,

    /// <summary>Manganese, Mn.</summary>
    Manganese,

    /// <summary>Molybdenum, Mo.</summary>
    Molybdenum,

    /// <summary>Zinc, Zn.</summary>
    Zinc,
}
