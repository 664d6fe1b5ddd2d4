using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>The rules of salts that have no other to choose from.</summary>
internal static class SaltMethods
{
    public static Method MediumLevel { get; } = new(
        "medium-salt-level", "salt level of a soilless medium by its extract", SaltSources.MediumLevels, new Domain("soilless media of peat and bark"));

    public static Method MediumConversion { get; } = new(
        "medium-extract-by-level",
        "one extract of a soilless medium read as another, by salt level",
        SaltSources.MediumLevels,
        new Domain("soilless media; our reading: in proportion between the bounds of a level"));

    public static Method ExchangeableSodium { get; } = new(
        "exchangeable-sodium-from-sar",
        "exchangeable sodium from the sodium adsorption ratio",
        SaltSources.ExchangeableSodium,
        new Domain("saturated extracts", new DomainLimit("sodiumAdsorptionRatio", 0, 60, "")));

    public static Method AdjustedRatio { get; } = new(
        "adjusted-sar-suarez",
        "sodium adsorption ratio with the calcium that stays dissolved",
        SaltSources.Suarez,
        new Domain(
            "waters over lime, carbon dioxide of 0.07 kPa near the surface",
            new DomainLimit("bicarbonatePerCalcium", 0.05, 30, ""),
            new DomainLimit("conductivity", 0.1, 8, "dS/m")));

    public static Method SaltAffected { get; } = new(
        "salt-affected-class", "class of salt-affected soil", SaltSources.SaltAffected, new Domain("saturated extract"));

    public static Method SalinityRank { get; } = new(
        "salinity-rank", "rank of salinity", SaltSources.SalinityRanks, new Domain("saturated extract"));

    public static Method SoilSalinity { get; } = new(
        "salinity-from-leaching",
        "salinity of the soil under a leaching fraction",
        SaltSources.LeachingFraction,
        new Domain("steady state; water uptake of 40, 30, 20 and 10 % by quarters of the root zone", new DomainLimit("leachingFraction", 0.01, 1, "1")));

    public static Method Water { get; } = new(
        "irrigation-water-restriction", "restriction on the use of an irrigation water", SaltSources.WaterGuide, new Domain("irrigation water"));

    public static Method WaterInfiltration { get; } = new(
        "irrigation-water-infiltration",
        "restriction by infiltration, nitrogen and bicarbonate",
        SaltSources.WaterGuidelines,
        new Domain("irrigation water", new DomainLimit("sodiumAdsorptionRatio", 0, 40, "")));

    public static Method Tolerance { get; } = new(
        "boron-class", "the most sensitive crops that bear a boron content", SaltSources.Boron, new Domain("boron in the soil water"));

    /// <summary>The rule of threshold and slope, with the source of the crop's figures.</summary>
    public static Method Yield(Source source) => new(
        "yield-by-salt", "relative yield by threshold and slope", source, new Domain("average saturated extract of the root zone, steady through the season"));

    public static Method BoronYield(Source source) => new(
        "yield-by-boron", "relative yield by threshold and slope of boron", source, new Domain("boron in the soil water"));
}
