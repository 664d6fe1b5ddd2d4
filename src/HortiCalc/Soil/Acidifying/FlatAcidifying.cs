using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>One rate for sandy soil and one for clay, whatever the change of pH within what the source was printed for.</summary>
internal sealed record FlatAcidifying(AcidifyingFacts Known, double SandGramsPerSquareMetre, double ClayGramsPerSquareMetre) : AcidifyingMethod
{
    private const string Sandy = "sandy soil";

    internal override AcidifyingFacts Facts => Known;

    private protected override string? Heading(SoilTexture texture) => texture switch
    {
        _ when AcidTextures.IsSand(texture) => Sandy,
        _ when AcidTextures.IsClay(texture) => AcidTextures.Clay,
        _ => null,
    };

    private protected override (double GramsPerSquareMetre, Method? Reading) Read(string heading, double currentPh, double targetPh) =>
        (heading == Sandy ? SandGramsPerSquareMetre : ClayGramsPerSquareMetre, null);
}
