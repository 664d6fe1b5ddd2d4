namespace HortiCalc.Mixes;

/// <summary>An element that a feed or a water brings, as analyses list it.</summary>
public enum NutrientElement
{
    /// <summary>Nitrogen, N: nitrate, ammonium and urea together.</summary>
    Nitrogen,

    /// <summary>Phosphorus, P: the element, not the oxide of labels.</summary>
    Phosphorus,

    /// <summary>Potassium, K: the element, not the oxide of labels.</summary>
    Potassium,

    /// <summary>Calcium, Ca.</summary>
    Calcium,

    /// <summary>Magnesium, Mg.</summary>
    Magnesium,

    /// <summary>Sulfur, S: the element, not the sulfate.</summary>
    Sulfur,

    /// <summary>Iron, Fe.</summary>
    Iron,

    /// <summary>Manganese, Mn.</summary>
    Manganese,

    /// <summary>Zinc, Zn.</summary>
    Zinc,

    /// <summary>Copper, Cu.</summary>
    Copper,

    /// <summary>Boron, B.</summary>
    Boron,

    /// <summary>Molybdenum, Mo.</summary>
    Molybdenum,

    /// <summary>Chlorine as chloride, Cl.</summary>
    Chlorine,

    /// <summary>Sodium, Na.</summary>
    Sodium,
}
