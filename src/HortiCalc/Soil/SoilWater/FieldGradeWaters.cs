using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The water that soils of the Australian field textures hold between two tensions, by the tables of Victoria and New South Wales.</summary>
/// <remarks>
/// The tables count a soil as full at 8 kPa, wetter than elsewhere. What they print down to a refill tension is readily available water for crops that
/// are watered at that tension; it is not the share of FAO-56.
/// </remarks>
public static class FieldGradeWaters
{
    /// <summary>Every row of both tables.</summary>
    public static IReadOnlyList<FieldGradeWater> All { get; } = ValueList<FieldGradeWater>.Of(
    [
        Between("sand", 20, 0.33),
        Between("sand", 40, 0.36),
        Between("sand", 60, 0.38),
        Between("sand", 200, 0.4),
        Between("sand", 1500, 0.62),
        Between("loamy sand", 20, 0.45),
        Between("loamy sand", 40, 0.52),
        Between("loamy sand", 60, 0.55),
        Between("loamy sand", 200, 0.58),
        Between("loamy sand", 1500, 0.87),
        Between("clayey sand", 40, 0.55),
        Between("clayey sand", 60, 0.6),
        Between("clayey sand", 200, 0.64),
        Between("clayey sand", 1500, 1.0),
        Between("sandy loam", 20, 0.46),
        Between("sandy loam", 40, 0.59),
        Between("sandy loam", 60, 0.65),
        Between("sandy loam", 200, 0.7),
        Between("sandy loam", 1500, 1.15),
        Between("light sandy clay loam", 20, 0.45),
        Between("light sandy clay loam", 40, 0.65),
        Between("light sandy clay loam", 60, 0.74),
        Between("light sandy clay loam", 200, 1.03),
        Between("light sandy clay loam", 1500, 1.37),
        Between("loam", 40, 0.69),
        Between("loam", 60, 0.84),
        Between("loam", 200, 1.0),
        Between("loam", 1500, 1.43),
        Between("sandy clay loam", 20, 0.39),
        Between("sandy clay loam", 40, 0.61),
        Between("sandy clay loam", 60, 0.71),
        Between("sandy clay loam", 200, 1.01),
        Between("sandy clay loam", 1500, 1.43),
        Between("clay loam", 20, 0.3),
        Between("clay loam", 40, 0.53),
        Between("clay loam", 60, 0.65),
        Between("clay loam", 200, 0.73),
        Between("clay loam", 1500, 1.48),
        Between("clays", 20, 0.37),
        Total("sand", 30, 49, 65),
        Total("sandy loam", 90, 106, 123),
        Total("loam", 155, 164, 172),
        Total("light clay loam", 172, 172, 180),
        Total("clay loam", 155, 164, 172),
        Total("heavy clay loam", 137, 147, 155),
    ]);

    /// <summary>The rows of a field texture.</summary>
    /// <param name="grade">The field texture, capitals or not, for instance <c>sandy loam</c>.</param>
    /// <returns>The rows; none where the tables do not have it.</returns>
    /// <exception cref="ArgumentException">The texture is empty.</exception>
    /// <example><code>
    /// FieldGradeWater first = FieldGradeWaters.Of("sandy loam")[0];
    /// Console.WriteLine(first);   // sandy loam: 4.6 % by volume from 8 to 20 kPa [...]
    /// </code></example>
    public static IReadOnlyList<FieldGradeWater> Of(string grade)
    {
        Guard.NotBlank(grade);
        return ValueList<FieldGradeWater>.Of(All.Where(row => row.Grade.Equals(grade, StringComparison.OrdinalIgnoreCase)));
    }

    // Printed as mm of water in a cm of soil, a tenth of which is the share.
    private static FieldGradeWater Between(string grade, double kilopascals, double millimetresPerCentimetre) => new(
        grade,
        VolumeConcentration.FromPercent(millimetresPerCentimetre * 10),
        SoilWaterSources.VictoriaField,
        fullAt: Pressure.FromKilopascals(8),
        refillAt: Pressure.FromKilopascals(kilopascals));

    // Printed as mm of water in a m of soil.
    private static FieldGradeWater Total(string grade, double low, double average, double high) => new(
        grade,
        VolumeConcentration.FromPercent(average / 10),
        SoilWaterSources.VictoriaTotal,
        low: VolumeConcentration.FromPercent(low / 10),
        high: VolumeConcentration.FromPercent(high / 10));
}
