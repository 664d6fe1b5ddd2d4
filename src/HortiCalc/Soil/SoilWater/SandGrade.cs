namespace HortiCalc.Soil;

/// <summary>The grade of the sand in a sand, loamy sand or sandy loam; finer sand holds more water.</summary>
public enum SandGrade
{
    /// <summary>Not stated, or medium: the class is named without a grade.</summary>
    Unstated,

    /// <summary>Coarse sand, 0.5 mm and more.</summary>
    Coarse,

    /// <summary>Fine sand, 0.1 to 0.25 mm.</summary>
    Fine,

    /// <summary>Very fine sand, 0.05 to 0.1 mm.</summary>
    VeryFine,
}
