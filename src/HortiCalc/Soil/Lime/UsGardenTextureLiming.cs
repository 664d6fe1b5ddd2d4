using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>See <see cref="LimingMethod.UsGardenTexture"/>.</summary>
internal sealed record UsGardenTextureLiming : TextureTableLiming
{
    private static readonly LimingFacts Known = new(
        new Method(
            "lime-us-garden-texture",
            "US garden table by texture",
            LimeSources.UsGardenTexture,
            new Domain(
                "ground limestone worked in as deeply as possible, to pH 6.5; sandy loam to clay loam",
                new DomainLimit(nameof(SoilReport.PhInWater), 4, 6, "pH"),
                new DomainLimit("target", 6.5, 6.5, "pH"))),
        Depth: null,
        LimingMaterial.GroundLimestone,
        "ground limestone; no fineness stated");

    // Pounds of ground limestone per 100 square feet.
    private static readonly double[] PresentPh = [4.0, 4.5, 5.0, 5.5, 6.0];
    private static readonly double[] SandyLoamRates = [11.5, 9.5, 8, 6, 3];
    private static readonly double[] LoamRates = [16, 13.5, 10.5, 8, 4];
    private static readonly double[] ClayLoamRates = [23, 19.5, 15, 10.5, 5.5];

    internal override LimingFacts Facts => Known;

    private protected override ReadOnlySpan<double> Rows => PresentPh;

    private protected override double GramsPerSquareMetrePerPrintedUnit => LimeUnits.GramsPerSquareMetrePerPoundPer100SquareFeet;

    private protected override ReadOnlySpan<double> Column(string heading) => heading switch
    {
        "sandy loam" => SandyLoamRates,
        "loam" => LoamRates,
        _ => ClayLoamRates,
    };

    internal override string? Heading(SoilTexture texture) => texture switch
    {
        SoilTexture.SandyLoam => "sandy loam",
        SoilTexture.Loam or SoilTexture.SiltLoam or SoilTexture.Silt => "loam",
        SoilTexture.SandyClayLoam or SoilTexture.ClayLoam or SoilTexture.SiltyClayLoam => "clay loam",
        _ => null,
    };
}
