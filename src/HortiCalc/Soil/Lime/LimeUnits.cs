using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>The units that lime rates are printed in, as grams per square metre; exact.</summary>
internal static class LimeUnits
{
    public const double GramsPerSquareMetrePerPoundPer1000SquareFeet = Boundary.KilogramsPerPound / Boundary.SquareMetresPerSquareFoot;
    public const double GramsPerSquareMetrePerPoundPer100SquareFeet = 10 * GramsPerSquareMetrePerPoundPer1000SquareFeet;
    public const double GramsPerSquareMetrePerPoundPerAcre = 1000 * Boundary.KilogramsPerPound / Boundary.SquareMetresPerAcre;

    /// <summary>The US ton of 2000 pounds: every ton per acre in a source of the United States is this one.</summary>
    public const double GramsPerSquareMetrePerShortTonPerAcre = 1000 * Boundary.KilogramsPerShortTon / Boundary.SquareMetresPerAcre;

    public const double GramsPerSquareMetrePerTonnePerHectare = 100;
}
