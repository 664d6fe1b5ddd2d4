using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Beds;
using HortiCalc.Evidence;
using UnitsNet;
using static HortiCalc.Tests.Beds.Draw;

namespace HortiCalc.Tests.Beds;

/// <summary>What holds for every bulk density, published or one's own.</summary>
public class BulkDensityProperties
{
    [Property]
    public bool MassOf_TwoVolumes_IsTheSumOfBoth(NonNegativeInt which, PositiveInt first, PositiveInt second)
    {
        BulkDensity density = Pick(which);
        return Near(
            density.MassOf(Amount(first) + Amount(second)).Value.Kilograms,
            density.MassOf(Amount(first)).Value.Kilograms + density.MassOf(Amount(second)).Value.Kilograms);
    }

    [Property]
    public bool MassOf_WhereASpanIsPrinted_LiesInTheMiddleOfIt(NonNegativeInt which, PositiveInt volume)
    {
        Estimate<Mass> mass = Pick(which).MassOf(Amount(volume));
        return mass.Range is null || Near(mass.Value.Kilograms, (mass.Range.Low.Kilograms + mass.Range.High.Kilograms) / 2);
    }

    [Property]
    public bool VolumeOf_TheMassOfAVolume_IsThatVolumeWhereOneFigureIsPrinted(NonNegativeInt which, PositiveInt volume)
    {
        BulkDensity density = Pick(which);
        Estimate<Mass> mass = density.MassOf(Amount(volume));
        return mass.Range is not null || Near(density.VolumeOf(mass.Value).Value.Liters, Amount(volume).Liters);
    }

    [Property]
    public bool VolumeOf_WhereASpanIsPrinted_ContainsItsValue(NonNegativeInt which, PositiveInt kilograms)
    {
        Estimate<Volume> volume = Pick(which).VolumeOf(Mass.FromKilograms(1 + kilograms.Get % 1000));
        return volume.Range is null || (volume.Range.Low < volume.Value && volume.Value < volume.Range.High);
    }

    [Property]
    public bool MassOf_AGreaterVolume_NeverHasFewerCautions(NonNegativeInt which, PositiveInt volume, PositiveInt more)
    {
        BulkDensity density = Pick(which);
        IReadOnlyList<Caution> few = density.MassOf(Amount(volume)).Cautions;
        return few.All(density.MassOf(Amount(volume) + Amount(more)).Cautions.Contains);
    }

    [Property]
    public bool MassOf_EveryResult_NamesItsSource(NonNegativeInt which, PositiveInt volume)
    {
        BulkDensity density = Pick(which);
        return density.MassOf(Amount(volume)).Method.Source == density.Source;
    }

    [Property]
    public bool BulkDensity_PerCubicYardOrPerCubicMetre_IsTheSame(PositiveInt pounds)
    {
        double perYard = 1 + pounds.Get % 3000;
        Source source = Source.CommonPractice("test", "a test");
        BulkDensity ours = new("x", BulkMaterial.Soil, MoistureState.Dry, Density.FromPoundsPerCubicYard(perYard), source);
        return Near(ours.MassOf(Volume.FromCubicYards(1)).Value.Pounds, perYard)
            && Near(ours.Low.KilogramsPerCubicMeter, perYard * 0.593276, 1e-6);
    }

    private static BulkDensity Pick(NonNegativeInt which) => BulkDensities.Published[which.Get % BulkDensities.Published.Count];
}
