using FsCheck;
using HortiCalc.Evidence;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Soil;

/// <summary>What the tests of liming share: bounded numbers from generated ones, and reports of one kind.</summary>
internal static class SoilSamples
{
    public static readonly Ph Neutralish = new(6.5);

    /// <summary>A number from low to high, in a thousand steps.</summary>
    public static double Between(PositiveInt seed, double low, double high) => low + seed.Get % 1001 / 1000.0 * (high - low);

    public static SoilTexture Texture(PositiveInt seed) => (SoilTexture)(seed.Get % 12);

    public static SoilReport ByTexture(double ph, SoilTexture texture) => new() { PhInWater = new Ph(ph), Texture = texture };

    public static SoilReport ByAcidity(double ph, double meqPer100Grams) => new()
    {
        PhInWater = new Ph(ph),
        ExchangeableAcidity = ExchangeableCharge.FromMilliequivalentsPer100Grams(meqPer100Grams),
    };

    public static SoilReport ByBuffer(double ph, double meqPer100CubicCentimetres) => new()
    {
        PhInWater = new Ph(ph),
        BufferAcidity = VolumetricCharge.FromMilliequivalentsPer100CubicCentimetres(meqPer100CubicCentimetres),
    };

    /// <summary>A report that holds all that any method asks for.</summary>
    public static SoilReport Full(double ph, double acidity, SoilTexture texture) => new()
    {
        PhInWater = new Ph(ph),
        Texture = texture,
        ExchangeableAcidity = ExchangeableCharge.FromMilliequivalentsPer100Grams(acidity),
        BufferAcidity = VolumetricCharge.FromMilliequivalentsPer100CubicCentimetres(acidity),
        MehlichBufferPh = new Ph(6),
        SmpBufferPh = new Ph(6.2),
        SikoraBufferPh = new Ph(6.1),
        AdamsEvansBufferPh = new Ph(7.6),
        Cations = Cations(1, 0.5, 1, acidity),
        CationExchangeCapacity = ExchangeableCharge.FromMilliequivalentsPer100Grams(8),
        ExtractableCalcium = MassFraction.FromMilligramsPerKilogram(400),
        LimeBufferCapacity = MassFraction.FromMilligramsPerKilogram(400),
        BulkDensity = Density.FromKilogramsPerCubicMeter(1300),
    };

    public static SoilCations Cations(double calcium, double magnesium, double aluminium, double potentialAcidity) => new(
        VolumetricCharge.FromCentimolesPerLitre(calcium),
        VolumetricCharge.FromCentimolesPerLitre(magnesium),
        VolumetricCharge.FromCentimolesPerLitre(0),
        VolumetricCharge.FromCentimolesPerLitre(aluminium),
        VolumetricCharge.FromCentimolesPerLitre(potentialAcidity));

    public static LimeRequirement Given(double gramsPerSquareMetre, LimingMaterial? material = null, Length? depth = null) =>
        Liming.FromRecommendation(
            AreaDensity.FromGramsPerSquareMeter(gramsPerSquareMetre), material ?? LimingMaterial.GroundLimestone, "a laboratory", depth);

    public static LimingMaterial Product(double ccePercent) => new("product", Ratio.FromPercent(ccePercent));

    public static double GramsPerSquareMetre(SoilReport soil, double target, LimingMethod method) =>
        Liming.Requirement(soil, new Ph(target), method).Rate.Value.GramsPerSquareMeter;

    public static double Grams(this LimeRequirement need) => need.Rate.Value.GramsPerSquareMeter;

    public static IEnumerable<string> Codes(this Estimate<AreaDensity> rate) => rate.Cautions.Select(caution => caution.Code);

    public static bool Near(double left, double right) => Math.Abs(left - right) <= 1e-9 * (1 + Math.Abs(right));

    public static IReadOnlyList<LimeSplit> Splits { get; } =
    [
        LimeSplit.PennStateGarden, LimeSplit.PennStateLawn, LimeSplit.PennStateGreen, LimeSplit.NorthCarolinaLawn,
        LimeSplit.UkGrassland, LimeSplit.UkArable, LimeSplit.Ireland, LimeSplit.MissouriSurface,
        LimeSplit.PennStateForage, LimeSplit.OregonTopDressing, LimeSplit.GardenSite, LimeSplit.GermanSand, LimeSplit.GermanClay,
    ];
}
