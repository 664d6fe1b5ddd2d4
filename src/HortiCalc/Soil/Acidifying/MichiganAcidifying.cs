using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>See <see cref="AcidifyingMethod.Michigan"/>.</summary>
internal sealed record MichiganAcidifying : AcidifyingMethod
{
    private static readonly AcidifyingFacts Known = new(
        new Method(
            "acid-michigan",
            "sulfur to pH 4.5 by texture, with data of Michigan State University",
            AcidSources.Michigan,
            new Domain(
                "elemental sulfur, to pH 4.5",
                new DomainLimit(nameof(SoilReport.PhInWater), 4.5, 7, "pH"),
                new DomainLimit("target", 4.5, 4.5, "pH"))),
        null,
        AcidifyingMaterial.ElementalSulfur);

    // Pounds of sulfur per acre. The first row is ours: at the target nothing is needed.
    private static readonly double[] PresentPh = [4.5, 5.0, 5.5, 6.0, 6.5, 7.0];
    private static readonly double[] SandRates = [0, 175, 350, 530, 660, 840];
    private static readonly double[] LoamRates = [0, 530, 1030, 1540, 2020, 2560];
    private static readonly double[] ClayRates = [0, 800, 1600, 2300, 3030, 3830];

    internal override AcidifyingFacts Facts => Known;

    private protected override string Heading(SoilTexture texture) => AcidTextures.SandLoamOrClay(texture);

    private protected override (double GramsPerSquareMetre, Method? Reading) Read(string heading, double currentPh, double targetPh)
    {
        double[] rates = heading switch
        {
            AcidTextures.Sand => SandRates,
            AcidTextures.Loam => LoamRates,
            _ => ClayRates,
        };
        (double poundsPerAcre, bool isBetweenRows) = LimeInterpolation.Linear(PresentPh, rates, currentPh);
        return (poundsPerAcre * LimeUnits.GramsPerSquareMetrePerPoundPerAcre, isBetweenRows ? AcidRules.BetweenRows : null);
    }
}
