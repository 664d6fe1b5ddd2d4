using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>What the methods have in common that aim at a saturation, whatever pH that brings. In cmol/dm³, of which one is a tonne per hectare and 20 cm.</summary>
internal abstract record SaturationLiming : LimingMethod
{
    private protected static readonly Length Layer = Length.FromCentimeters(20);

    private protected const double GramsPerSquareMetrePerCentimolePerLitre = 100;

    public override bool AimsAtPh => false;

    internal sealed override IEnumerable<string> Absent(SoilReport soil) => soil.Cations is { } cations ? AbsentIn(cations) : [nameof(SoilReport.Cations)];

    internal sealed override bool IsAtTarget(SoilReport soil, Ph target) =>
        soil.Cations is { } cations && !AbsentIn(cations).Any() && CentimolesPerLitre(cations) <= 0;

    internal sealed override ArgumentException? Outside(SoilReport soil, Ph target) => null;

    internal sealed override Estimate<AreaDensity> Rate(SoilReport soil, Ph target) =>
        Answer(CentimolesPerLitre(soil.Cations!) * GramsPerSquareMetrePerCentimolePerLitre);

    private protected virtual IEnumerable<string> AbsentIn(SoilCations cations) => [];

    /// <summary>The lime needed, not above zero where none is.</summary>
    private protected abstract double CentimolesPerLitre(SoilCations cations);
}
