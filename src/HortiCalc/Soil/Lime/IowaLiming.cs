using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>See <see cref="LimingMethod.Iowa"/>.</summary>
internal sealed record IowaLiming : BufferTableLiming
{
    private static readonly LimingFacts Known = new(
        new Method(
            "lime-iowa-pm-1688",
            "Iowa table by buffer pH",
            LimeMethodSources.IowaPm1688,
            new Domain(
                "soils of Iowa; targets of pH 6.5 and 6.9 only",
                new DomainLimit(nameof(SoilReport.SmpBufferPh), 5.8, 7.0, "pH"),
                new DomainLimit("target", 6.5, 6.9, "pH"))),
        Length.FromInches(6),
        new LimingMaterial("lime of 100 % effective equivalent", Ratio.FromPercent(100), source: LimeMethodSources.IowaPm1688),
        "an effective equivalent of 100 %: fineness and moisture are in it");

    // Pounds of calcium carbonate per acre. The 10 600 breaks the otherwise even steps, as printed.
    private static readonly double[] BufferPhs = [5.8, 6.0, 6.2, 6.4, 6.6, 6.8, 7.0];
    private static readonly double[] To65 = [7900, 6400, 5000, 3500, 2100, 600, 0];
    private static readonly double[] To69 = [10600, 9300, 7700, 6000, 4400, 2700, 1100];

    internal override LimingFacts Facts => Known;

    private protected override ReadOnlySpan<double> Goals => [6.5, 6.9];

    private protected override ReadOnlySpan<double> Rows => BufferPhs;

    private protected override double GramsPerSquareMetrePerPrintedUnit => LimeUnits.GramsPerSquareMetrePerPoundPerAcre;

    private protected override string Member => nameof(SoilReport.SmpBufferPh);

    private protected override Ph? BufferPh(SoilReport soil) => soil.SmpBufferPh;

    private protected override ReadOnlySpan<double> Column(double goal) => goal == 6.5 ? To65 : To69;
}
