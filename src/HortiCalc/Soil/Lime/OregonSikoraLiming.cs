using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>See <see cref="LimingMethod.OregonSikora"/>.</summary>
internal sealed record OregonSikoraLiming : BufferTableLiming
{
    private static readonly LimingFacts Known = new(
        new Method(
            "lime-oregon-sikora",
            "Oregon table by Sikora buffer",
            LimeMethodSources.OregonSikora,
            new Domain(
                "soils of Oregon; targets of pH 5.6, 6.0, 6.4, 6.8 and 7.2 only",
                new DomainLimit(nameof(SoilReport.SikoraBufferPh), 4.8, 6.9, "pH"),
                new DomainLimit("target", 5.6, 7.2, "pH"))),
        Length.FromInches(6),
        new LimingMaterial("lime of score 100", Ratio.FromPercent(100), source: LimeMethodSources.OregonSikora),
        "a lime score of 100: equivalent, fineness and dryness are in the score");

    // Table 1: buffer pH, then US tons per acre of lime of score 100 to each target. The slope breaks between 5.8 and 5.7.
    private static readonly double[] BufferPhs =
    [
        4.8, 4.9, 5.0, 5.1, 5.2, 5.3, 5.4, 5.5, 5.6, 5.7, 5.8,
        5.9, 6.0, 6.1, 6.2, 6.3, 6.4, 6.5, 6.6, 6.7, 6.8, 6.9,
    ];

    private static readonly double[] To56 =
    [
        6.1, 5.7, 5.3, 5, 4.6, 4.2, 3.8, 3.5, 3.1, 2.7, 2.2,
        1.9, 1.7, 1.5, 1.3, 1.1, 0.9, 0.7, 0.4, 0.2, 0, 0,
    ];

    private static readonly double[] To60 =
    [
        8.9, 8.4, 7.8, 7.3, 6.7, 6.2, 5.6, 5.1, 4.5, 4, 3.1,
        2.8, 2.5, 2.3, 2, 1.7, 1.5, 1.2, 0.9, 0.7, 0.4, 0,
    ];

    private static readonly double[] To64 =
    [
        12.2, 11.5, 10.7, 10, 9.2, 8.5, 7.7, 7, 6.2, 5.5, 4.1,
        3.8, 3.5, 3.1, 2.8, 2.5, 2.1, 1.8, 1.5, 1.1, 0.8, 0.5,
    ];

    private static readonly double[] To68 =
    [
        16.3, 15, 14, 13, 12.3, 11.3, 10.3, 9.3, 8.3, 7.2, 5.4,
        5, 4.6, 4.2, 3.7, 3.3, 2.9, 2.5, 2.1, 1.6, 1.2, 0.8,
    ];

    private static readonly double[] To72 =
    [
        23.2, 21.7, 20.2, 18.7, 17.3, 15.8, 14.3, 12.9, 11.4, 9.9, 7.1,
        6.6, 6, 5.5, 4.9, 4.4, 3.8, 3.3, 2.7, 2.2, 1.6, 1,
    ];

    internal override LimingFacts Facts => Known;

    private protected override ReadOnlySpan<double> Goals => [5.6, 6.0, 6.4, 6.8, 7.2];

    private protected override ReadOnlySpan<double> Rows => BufferPhs;

    private protected override double GramsPerSquareMetrePerPrintedUnit => LimeUnits.GramsPerSquareMetrePerShortTonPerAcre;

    private protected override string Member => nameof(SoilReport.SikoraBufferPh);

    private protected override Ph? BufferPh(SoilReport soil) => soil.SikoraBufferPh;

    private protected override ReadOnlySpan<double> Column(double goal) => goal switch
    {
        5.6 => To56,
        6.0 => To60,
        6.4 => To64,
        6.8 => To68,
        _ => To72,
    };
}
