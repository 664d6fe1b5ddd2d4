using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>What to take care of with a liming material before anything is measured out.</summary>
/// <example><code>
/// foreach (Caution caution in LimeSafety.Of(LimingMaterial.CalciumHydroxide))
///     Console.WriteLine(caution);
/// </code></example>
public static class LimeSafety
{
    /// <summary>The cautions of handling a material. The label and local rules come before them.</summary>
    /// <param name="material">The material.</param>
    /// <returns>The cautions, the gravest first.</returns>
    /// <exception cref="ArgumentNullException">The material is <see langword="null"/>.</exception>
    public static IReadOnlyList<Caution> Of(LimingMaterial material)
    {
        Guard.NotNull(material);
        bool isCaustic = material.Form != LimeForm.Carbonate || material.IsTooStrongForACarbonate;
        return ValueList<Caution>.Of(
        [
            .. LimeCautions.Of(material),
            .. isCaustic ? [LimeCautions.BrushOff, LimeCautions.ExposureLimit, LimeCautions.NearPlants] : (Caution[])[],
            LimeCautions.Manure, LimeCautions.Dust, LimeCautions.Retest, LimeCautions.Laboratory,
        ]);
    }
}
