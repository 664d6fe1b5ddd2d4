using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The published van Genuchten curves: twelve USDA classes by Carsel and Parrish 1988, and 36 Dutch top and subsoils of the Staring series.</summary>
public static class VanGenuchtenSoils
{
    /// <summary>Every soil: the classes first, then the Dutch topsoils B01 to B18 and subsoils O01 to O18.</summary>
    public static IReadOnlyList<VanGenuchtenSoil> All { get; } = ValueList<VanGenuchtenSoil>.Of(
    [
        Class(SoilTexture.Sand, 712.8, 0.045, 0.43, 0.145, 2.68),
        Class(SoilTexture.LoamySand, 350.2, 0.057, 0.41, 0.125, 2.28),
        Class(SoilTexture.SandyLoam, 106.1, 0.065, 0.41, 0.075, 1.89),
        Class(SoilTexture.Loam, 24.96, 0.078, 0.43, 0.036, 1.56),
        Class(SoilTexture.Silt, 6, 0.034, 0.46, 0.016, 1.37),
        Class(SoilTexture.SiltLoam, 10.8, 0.067, 0.45, 0.02, 1.41),
        Class(SoilTexture.SandyClayLoam, 31.44, 0.1, 0.39, 0.059, 1.48),
        Class(SoilTexture.ClayLoam, 6.24, 0.095, 0.41, 0.019, 1.31),
        Class(SoilTexture.SiltyClayLoam, 1.68, 0.089, 0.43, 0.01, 1.23),
        Class(SoilTexture.SandyClay, 2.88, 0.1, 0.38, 0.027, 1.23),
        Class(SoilTexture.SiltyClay, 0.48, 0.07, 0.36, 0.005, 1.09),
        Class(SoilTexture.Clay, 4.8, 0.068, 0.38, 0.008, 1.09),
        Dutch("B01", "leemarm zeer fijn tot matig fijn zand", 31.23, 0.02, 0.427, 0.0217, 1.735, 0.981),
        Dutch("B02", "zwak lemig zeer fijn tot matig fijn zand", 83.24, 0.02, 0.434, 0.0216, 1.349, 7.202),
        Dutch("B03", "sterk lemig zeer fijn tot matig fijn zand", 19.08, 0.02, 0.443, 0.015, 1.505, 0.139),
        Dutch("B04", "zeer sterk lemig zeer fijn tot matig fijn zand", 34.88, 0.02, 0.462, 0.0149, 1.397, 0.295),
        Dutch("B05", "grof zand", 63.65, 0.01, 0.381, 0.0428, 1.808, 0.024),
        Dutch("B06", "keileem", 104.1, 0.01, 0.385, 0.0209, 1.242, -1.2),
        Dutch("B07", "zeer lichte zavel", 14.58, 0, 0.401, 0.0183, 1.248, 0.952),
        Dutch("B08", "matig lichte zavel", 3, 0.01, 0.433, 0.0105, 1.278, -1.919),
        Dutch("B09", "zware zavel", 1.75, 0, 0.43, 0.007, 1.267, -2.387),
        Dutch("B10", "lichte klei", 3.83, 0.01, 0.448, 0.0128, 1.135, 4.581),
        Dutch("B11", "matig zware klei", 6.31, 0.01, 0.591, 0.0216, 1.107, -5.549),
        Dutch("B12", "zeer zware klei", 2.25, 0.01, 0.53, 0.0166, 1.091, -4.494),
        Dutch("B13", "zandige leem", 29.83, 0.01, 0.416, 0.0084, 1.437, -1.357),
        Dutch("B14", "siltige leem", 0.9, 0.01, 0.417, 0.0054, 1.302, -0.335),
        Dutch("B15", "venig zand", 87.45, 0.01, 0.528, 0.0237, 1.282, null),
        Dutch("B16", "zandig veen en veen", 12.36, 0.01, 0.786, 0.0211, 1.279, null),
        Dutch("B17", "venige klei", 4.48, 0, 0.719, 0.0191, 1.137, 0),
        Dutch("B18", "kleiig veen", 13.14, 0, 0.765, 0.0205, 1.151, 0),
        Dutch("O01", "leemarm zeer fijn tot matig fijn zand", 22.32, 0.01, 0.366, 0.016, 2.163, 2.868),
        Dutch("O02", "zwak lemig zeer fijn tot matig fijn zand", 22.76, 0.02, 0.387, 0.0161, 1.524, 2.44),
        Dutch("O03", "sterk lemig zeer fijn tot matig fijn zand", 12.37, 0.01, 0.34, 0.0172, 1.703, 0),
        Dutch("O04", "zeer sterk lemig zeer fijn tot matig fijn zand", 25.81, 0.01, 0.364, 0.0136, 1.488, 2.179),
        Dutch("O05", "grof zand", 17.42, 0.01, 0.337, 0.0303, 2.888, 0.074),
        Dutch("O06", "keileem", 32.83, 0.01, 0.333, 0.016, 1.289, -1.01),
        Dutch("O07", "beekleem", 37.55, 0.01, 0.513, 0.012, 1.153, -2.013),
        Dutch("O08", "zeer lichte zavel", 8.64, 0, 0.454, 0.0113, 1.346, -0.904),
        Dutch("O09", "matig lichte zavel", 3.77, 0, 0.458, 0.0097, 1.376, -1.013),
        Dutch("O10", "zware zavel", 2.3, 0.01, 0.472, 0.01, 1.246, -0.793),
        Dutch("O11", "lichte klei", 2.12, 0, 0.444, 0.0143, 1.126, 2.357),
        Dutch("O12", "matig zware klei", 1.08, 0.01, 0.561, 0.0088, 1.158, -3.172),
        Dutch("O13", "zeer zware klei", 9.69, 0.01, 0.573, 0.0279, 1.08, -6.091),
        Dutch("O14", "zandige leem", 2.5, 0.01, 0.394, 0.0033, 1.617, 0.514),
        Dutch("O15", "siltige leem", 2.79, 0.01, 0.41, 0.0078, 1.287, 0),
        Dutch("O16", "oligotroof veen", 1.46, 0, 0.889, 0.0097, 1.364, -0.665),
        Dutch("O17", "mesotroof en eutroof veen", 3.4, 0.01, 0.849, 0.0119, 1.272, -1.249),
        Dutch("O18", "moerige tussenlaag", 35.95, 0.01, 0.58, 0.0127, 1.316, -0.786),
    ]);

    /// <summary>The curve of a USDA class.</summary>
    /// <param name="texture">The class.</param>
    /// <returns>Its curve, as Carsel and Parrish 1988 average it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The class is not one of the defined ones.</exception>
    /// <example><code>
    /// VanGenuchtenCurve loam = VanGenuchtenSoils.Of(SoilTexture.Loam).Curve;
    /// VolumeConcentration water = loam.WaterAt(Length.FromCentimeters(100));
    /// </code></example>
    public static VanGenuchtenSoil Of(SoilTexture texture)
    {
        Guard.Defined(texture);
        return All.Single(soil => soil.Texture == texture);
    }

    /// <summary>The soil of a name.</summary>
    /// <param name="name">The name of the class, for instance <c>SandyLoam</c>, or the code of the Staring series, for instance <c>B05</c>.</param>
    /// <returns>The soil.</returns>
    /// <exception cref="ArgumentException">There is none of that name, or it is empty.</exception>
    public static VanGenuchtenSoil Named(string name)
    {
        Guard.NotBlank(name);
        return All.FirstOrDefault(soil => soil.Name == name)
            ?? throw new ArgumentException($"name was '{name}'; allowed: {string.Join(", ", All.Select(soil => soil.Name))}.", nameof(name));
    }

    private static VanGenuchtenSoil Class(
        SoilTexture texture, double centimetresPerDay, double residual, double saturated, double alphaPerCentimetre, double n) =>
        new(texture.ToString(), Curve(centimetresPerDay, residual, saturated, alphaPerCentimetre, n, 0.5), SoilWaterSources.Hydrus, texture);

    // The open data lost the decimal point of l in two rows, where no conductivity is given rather than a guess.
    private static VanGenuchtenSoil Dutch(
        string code, string description, double centimetresPerDay, double residual, double saturated, double alphaPerCentimetre, double n, double? l) =>
        new(
            code,
            Curve(centimetresPerDay, residual, saturated, alphaPerCentimetre, n, l),
            SoilWaterSources.Staring,
            description: description,
            doubt: l is null ? "the exponent of pore connection lost its decimal point in the data" : null);

    private static VanGenuchtenCurve Curve(
        double centimetresPerDay, double residual, double saturated, double alphaPerCentimetre, double n, double? l) =>
        new(
            VolumeConcentration.FromPercent(residual * 100),
            VolumeConcentration.FromPercent(saturated * 100),
            ReciprocalLength.FromInverseCentimeters(alphaPerCentimetre),
            n,
            l is null ? null : WaterRate.FromCentimetresPerDay(centimetresPerDay),
            l ?? VanGenuchtenCurve.MualemExponent);
}
