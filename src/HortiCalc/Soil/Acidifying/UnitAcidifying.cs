using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>A rate for one pH unit by the heading of the texture, or one for any soil; in proportion to the units.</summary>
internal sealed record UnitAcidifying(
    AcidifyingFacts Known,
    double GramsPerSquareMetrePerPrintedUnit,
    Func<SoilTexture, string?>? HeadingOf,
    Func<string, double> PrintedRate) : AcidifyingMethod
{
    internal override AcidifyingFacts Facts => Known;

    private protected override bool NeedsTexture => HeadingOf is not null;

    private protected override string? Heading(SoilTexture texture) => HeadingOf!(texture);

    private protected override (double GramsPerSquareMetre, Method? Reading) Read(string heading, double currentPh, double targetPh)
    {
        double units = currentPh - targetPh;
        return (units * PrintedRate(heading) * GramsPerSquareMetrePerPrintedUnit, units == 1 ? null : AcidRules.WithinUnit);
    }
}
