namespace HortiCalc.Soil;

/// <summary>The regressions of Saxton and Rawls 2006, on plain numbers; equation numbers are those of the paper's table 1.</summary>
/// <remarks>Sand and clay are fractions, organic matter is per cent: the mixture is the paper's own. Water is in m³ a m³.</remarks>
internal static class SaxtonRawlsKernel
{
    public const double FieldCapacityKilopascals = 33;
    public const double WiltingPointKilopascals = 1500;
    public const double ParticleGramsPerCubicCentimetre = 2.65;

    public readonly record struct Soil(
        double WiltingPoint,
        double FieldCapacity,
        double Saturation,
        double AirEntryKilopascals,
        double BulkGramsPerCubicCentimetre)
    {
        /// <summary>The slope of the curve on logarithms, equation 15; its reciprocal is the pore size index of equation 18.</summary>
        public double B => Math.Log(WiltingPointKilopascals / FieldCapacityKilopascals) / Math.Log(FieldCapacity / WiltingPoint);
    }

    public static Soil Of(double sand, double clay, double organicPercent, double densityFactor)
    {
        // 1: moisture at 1500 kPa
        double first = -0.024 * sand + 0.487 * clay + 0.006 * organicPercent + 0.005 * sand * organicPercent
            - 0.013 * clay * organicPercent + 0.068 * sand * clay + 0.031;
        double wiltingPoint = first + (0.14 * first - 0.02);

        // 2: at 33 kPa
        first = -0.251 * sand + 0.195 * clay + 0.011 * organicPercent + 0.006 * sand * organicPercent
            - 0.027 * clay * organicPercent + 0.452 * sand * clay + 0.299;
        double fieldCapacity = first + (1.283 * first * first - 0.374 * first - 0.015);

        // 3: between saturation and 33 kPa
        first = 0.278 * sand + 0.034 * clay + 0.022 * organicPercent - 0.018 * sand * organicPercent
            - 0.027 * clay * organicPercent - 0.584 * sand * clay + 0.078;
        double drained = first + (0.636 * first - 0.107);

        // 5 and 6: saturation and normal density
        double saturation = fieldCapacity + drained - 0.097 * sand + 0.043;
        double normalDensity = (1 - saturation) * ParticleGramsPerCubicCentimetre;

        // 7 to 9: loose or compacted.
        double density = normalDensity * densityFactor;
        double adjustedSaturation = 1 - density / ParticleGramsPerCubicCentimetre;
        double adjustedFieldCapacity = fieldCapacity - 0.2 * (saturation - adjustedSaturation);

        // 10, as a change of equation 3, so that air entry does not jump where the soil is at its normal density.
        drained += adjustedSaturation - adjustedFieldCapacity - (saturation - fieldCapacity);

        // 4: tension at air entry
        first = -21.67 * sand - 27.93 * clay - 81.97 * drained + 71.12 * sand * drained + 8.29 * clay * drained + 14.05 * sand * clay + 27.16;
        double airEntryKilopascals = first + (0.02 * first * first - 0.113 * first - 0.70);
        return new Soil(wiltingPoint, adjustedFieldCapacity, adjustedSaturation, airEntryKilopascals, density);
    }

    /// <summary>Equations 11 and 14, from 33 to 1500 kPa.</summary>
    public static double DryTensionKilopascals(Soil soil, double water) => FieldCapacityKilopascals * Math.Pow(soil.FieldCapacity / water, soil.B);

    public static double DryWater(Soil soil, double tensionKilopascals) =>
        soil.FieldCapacity * Math.Pow(FieldCapacityKilopascals / tensionKilopascals, 1 / soil.B);

    /// <summary>Equation 12, a straight line from 33 kPa to air entry.</summary>
    public static double WetTensionKilopascals(Soil soil, double water) =>
        FieldCapacityKilopascals
        - (water - soil.FieldCapacity) * (FieldCapacityKilopascals - soil.AirEntryKilopascals) / (soil.Saturation - soil.FieldCapacity);

    public static double WetWater(Soil soil, double tensionKilopascals) =>
        soil.FieldCapacity
        + (FieldCapacityKilopascals - tensionKilopascals) * (soil.Saturation - soil.FieldCapacity) / (FieldCapacityKilopascals - soil.AirEntryKilopascals);

    /// <summary>Equation 16.</summary>
    public static double SaturatedMillimetresPerHour(Soil soil) => 1930 * Math.Pow(soil.Saturation - soil.FieldCapacity, 3 - 1 / soil.B);

    /// <summary>Equation 17; 2/λ is twice B.</summary>
    public static double MillimetresPerHour(Soil soil, double water) =>
        SaturatedMillimetresPerHour(soil) * Math.Pow(water / soil.Saturation, 3 + 2 * soil.B);

    /// <summary>Equation 19: gravel by volume from gravel by mass.</summary>
    public static double GravelVolume(Soil soil, double gravelMass)
    {
        double density = soil.BulkGramsPerCubicCentimetre / ParticleGramsPerCubicCentimetre;
        return density * gravelMass / (1 - gravelMass * (1 - density));
    }

    /// <summary>Equation 22: how far gravel slows the flow.</summary>
    public static double GravelConductivityShare(Soil soil, double gravelMass)
    {
        double density = soil.BulkGramsPerCubicCentimetre / ParticleGramsPerCubicCentimetre;
        return (1 - gravelMass) / (1 - gravelMass * (1 - 1.5 * density));
    }

    /// <summary>Equations 23 and 24: salts add 36 kPa a dS/m at saturation, and more as the soil dries and they concentrate.</summary>
    public static double OsmoticKilopascals(Soil soil, double decisiemensPerMetre, double water) =>
        36 * decisiemensPerMetre * soil.Saturation / water;
}
