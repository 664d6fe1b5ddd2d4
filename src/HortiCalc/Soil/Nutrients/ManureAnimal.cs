namespace HortiCalc.Soil;

/// <summary>The animals of the release table of Cornell.</summary>
public enum ManureAnimal
{
    /// <summary>Cattle.</summary>
    Cow,

    /// <summary>Poultry.</summary>
    Poultry,

    /// <summary>Pigs.</summary>
    Swine,

    /// <summary>Horses.</summary>
    Horse,

    /// <summary>Sheep.</summary>
    Sheep,
}
