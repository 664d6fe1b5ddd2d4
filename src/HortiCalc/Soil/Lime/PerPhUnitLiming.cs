using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>A rule of so much lime for each pH unit, by texture. See <see cref="LimingMethod.UkPerPhUnit"/>, <see cref="LimingMethod.UsPerPhUnit"/>.</summary>
internal sealed record PerPhUnitLiming : TextureLiming
{
    private readonly LimingFacts facts;
    private readonly Func<SoilTexture, (string Heading, double GramsPerSquareMetre)?> column;

    public PerPhUnitLiming(LimingFacts facts, Func<SoilTexture, (string Heading, double GramsPerSquareMetre)?> column)
    {
        this.facts = facts;
        this.column = column;
    }

    internal override LimingFacts Facts => facts;

    internal override string? Heading(SoilTexture texture) => column(texture)?.Heading;

    private protected override (double GramsPerSquareMetre, Method? Reading) Read(string heading, double currentPh, double targetPh)
    {
        double units = targetPh - currentPh;
        double perUnit = Enum.GetValues<SoilTexture>().Select(texture => column(texture)).First(found => found?.Heading == heading)!.Value.GramsPerSquareMetre;
        return (units * perUnit, units == 1 ? null : LimeRules.WithinUnit);
    }
}
