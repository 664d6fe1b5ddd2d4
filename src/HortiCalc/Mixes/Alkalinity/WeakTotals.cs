namespace HortiCalc.Mixes;

/// <summary>
/// The substances whose charge depends on pH, in moles per litre, and what stands beside them: the net charge of the strong ions and their share of the
/// ionic strength. With <see cref="OpenCarbonDioxideMolesPerLitre"/> the carbon is not given but follows from the air.
/// </summary>
internal readonly record struct WeakTotals(double StrongCharge, double StrongIonicStrength)
{
    public double Carbon { get; init; }

    public double Phosphate { get; init; }

    public double Citrate { get; init; }

    public double Sulfate { get; init; }

    public double Ammonia { get; init; }

    public double? OpenCarbonDioxideMolesPerLitre { get; init; }
}
