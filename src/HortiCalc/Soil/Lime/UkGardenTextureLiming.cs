using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>See <see cref="LimingMethod.UkGardenTexture"/>.</summary>
internal sealed record UkGardenTextureLiming : TextureTableLiming
{
    private const string Light = "light soils (very sandy, low clay)";
    private const string Loams = "loams";
    private const string Heavy = "heavy soils (very high clay content)";

    private static readonly LimingFacts Known = new(
        new Method(
            "lime-uk-garden-texture",
            "UK garden table by texture",
            LimeSources.UkGardenTexture,
            new Domain(
                "ground chalk or limestone, to pH 6.5",
                new DomainLimit(nameof(SoilReport.PhInWater), 5, 6, "pH"),
                new DomainLimit("target", 6.5, 6.5, "pH"))),
        Depth: null,
        LimingMaterial.GroundLimestone,
        "ground chalk or limestone; no fineness stated");

    // Table 14.4, g/m² of ground chalk or limestone.
    private static readonly double[] PresentPh = [5.0, 5.5, 6.0];
    private static readonly double[] LightRates = [1000, 700, 400];
    private static readonly double[] LoamRates = [1200, 800, 500];
    private static readonly double[] HeavyRates = [1400, 1000, 600];

    internal override LimingFacts Facts => Known;

    private protected override ReadOnlySpan<double> Rows => PresentPh;

    private protected override double GramsPerSquareMetrePerPrintedUnit => 1;

    private protected override ReadOnlySpan<double> Column(string heading) => heading switch
    {
        Light => LightRates,
        Loams => LoamRates,
        _ => HeavyRates,
    };

    internal override string Heading(SoilTexture texture) => texture switch
    {
        SoilTexture.Sand or SoilTexture.LoamySand => Light,
        SoilTexture.SandyLoam or SoilTexture.Loam or SoilTexture.SiltLoam or SoilTexture.Silt => Loams,
        _ => Heavy,
    };

    internal override bool IsNamed(SoilTexture texture, string heading) => texture == SoilTexture.Loam;
}
