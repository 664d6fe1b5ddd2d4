using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>The cautions of soil water.</summary>
internal static class SoilWaterCautions
{
    public static readonly Caution Estimated = new(
        "soil-water.from-texture",
        CautionLevel.Note,
        "This is what soils of such a texture hold on average: structure, stones and how the ground was worked move it, so watch the soil itself before relying on it.",
        SoilWaterSources.SaxtonRawls);

    public static readonly Caution TableSpread = new(
        "soil-water.class-average",
        CautionLevel.Note,
        "A class of texture covers a wide span of soils: take the low end where plants must not wilt and the high end where leaching must be avoided.",
        SoilWaterSources.Fao56Table19);

    public static readonly Caution AustralianName = new(
        "soil-water.australian-texture",
        CautionLevel.Care,
        "This table names Australian field textures, which hold more clay than the USDA classes of the same name.",
        TextureEvidence.AustralianGrades);

    public static readonly Caution SaltsFromMemory = new(
        "soil-water.salts",
        CautionLevel.Care,
        "The pull of the salts is counted at 36 kPa for each dS/m, a figure not confirmed in print; harm by single ions is not counted at all.",
        SoilWaterSources.SaxtonRawlsSalts);

    public static readonly Caution Crust = new(
        "soil-water.crust",
        CautionLevel.Note,
        "A crust, a pan or a compacted layer can cut what the ground takes in to a quarter: give water below the printed rate and look for ponding.",
        SoilWaterSources.NationalAgronomyManual1);

    public static readonly Caution NothingLeft = new(
        "soil-water.nothing-available",
        CautionLevel.Care,
        "The salts alone hold the water as firmly as dry soil does: plants find nothing in it.",
        SoilWaterSources.SaxtonRawlsSalts);
}
