using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>See <see cref="LimingMethod.AustralianGardenTexture"/>.</summary>
internal sealed record AustralianGardenTextureLiming : TextureLiming
{
    private const double LowestPh = 4.5;
    private const double MiddlePh = 5.5;
    private const double HighestPh = 6.5;

    private static readonly LimingFacts Known = new(
        new Method(
            "lime-australian-garden-texture",
            "Australian garden table by texture",
            LimeSources.AustralianGardenTexture,
            new Domain(
                "the top 10 cm of soil",
                new DomainLimit(nameof(SoilReport.PhInWater), LowestPh, HighestPh, "pH"),
                new DomainLimit("target", LowestPh, HighestPh, "pH"))),
        Length.FromCentimeters(10),
        LimingMaterial.GroundLimestone,
        "ground limestone or dolomite; no fineness stated");

    internal override LimingFacts Facts => Known;

    internal override string? Heading(SoilTexture texture) => texture switch
    {
        SoilTexture.Sand or SoilTexture.LoamySand => "sand/loamy sand",
        SoilTexture.SandyLoam => "sandy loam",
        SoilTexture.SiltLoam => "silty loam",
        SoilTexture.ClayLoam => "clay loam",
        _ => null,
    };

    // Every class that is not refused stands in a heading.
    internal override bool IsNamed(SoilTexture texture, string heading) => true;

    private protected override (double GramsPerSquareMetre, Method? Reading) Read(string heading, double currentPh, double targetPh)
    {
        // Grams per square metre for one pH unit: from 4.5 to 5.5, and from 5.5 to 6.5.
        (double lower, double upper) = heading switch
        {
            "sand/loamy sand" => (85.0, 110.0),
            "sandy loam" => (130.0, 195.0),
            "silty loam" => (280.0, 320.0),
            _ => (320.0, 410.0),
        };
        double lowerUnits = Math.Max(0, Math.Min(targetPh, MiddlePh) - currentPh);
        double upperUnits = Math.Max(0, targetPh - Math.Max(currentPh, MiddlePh));
        bool isPrinted = lowerUnits is 0 or 1 && upperUnits is 0 or 1;
        return (lowerUnits * lower + upperUnits * upper, isPrinted ? null : LimeRules.WithinUnit);
    }
}
