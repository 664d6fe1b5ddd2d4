using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>See <see cref="LimingMethod.BufferCapacity"/>.</summary>
internal sealed record BufferCapacityLiming : LimingMethod
{
    private const double LayerMetres = 0.15;

    private static readonly LimingFacts Known = new(
        new Method(
            "lime-buffer-capacity",
            "lime buffer capacity",
            LimeMethodSources.LimeBufferCapacity,
            new Domain("by definition; over the pH range in which the capacity was measured")),
        Length.FromMeters(LayerMetres),
        LimingMaterial.CalciumCarbonate,
        "pure reagent; aglime was 73 % as effective on soils of Georgia");

    internal override LimingFacts Facts => Known;

    internal override IEnumerable<string> Absent(SoilReport soil)
    {
        if (soil.PhInWater is null)
            yield return nameof(SoilReport.PhInWater);
        if (soil.LimeBufferCapacity is null)
            yield return nameof(SoilReport.LimeBufferCapacity);
        if (soil.BulkDensity is null)
            yield return nameof(SoilReport.BulkDensity);
    }

    internal override ArgumentException? Outside(SoilReport soil, Ph target) => null;

    internal override Estimate<AreaDensity> Rate(SoilReport soil, Ph target)
    {
        double milligramsPerKilogram = Boundary.MassFraction(soil.LimeBufferCapacity!.Value) * 1e6 * (target - soil.PhInWater!.Value);
        double kilogramsPerSquareMetre = Boundary.KilogramsPerCubicMetre(soil.BulkDensity!.Value) * LayerMetres;
        return Answer(milligramsPerKilogram * kilogramsPerSquareMetre / 1000);
    }
}
