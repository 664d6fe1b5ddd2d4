using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Units;

/// <summary>
/// Brings a quantity to the one unit that this library keeps it in, because UnitsNet's own equality tells one inch from
/// 25.4 millimetres. A quantity already in that unit passes unchanged, to the last digit; so do values that are not quantities.
/// </summary>
internal static class HouseUnits
{
    public static T Normalise<T>(T value) => (T)Normalised(value!);

    private static object Normalised(object value) => value switch
    {
        VolumeConcentration { Unit: VolumeConcentrationUnit.Percent } or MassFraction { Unit: MassFractionUnit.Percent }
            or Ratio { Unit: RatioUnit.Percent } => value,
        Length length => Length.FromMeters(Boundary.Metres(length)),
        Area area => Area.FromSquareMeters(Boundary.SquareMetres(area)),
        Volume volume => Volume.FromLiters(Boundary.Litres(volume)),
        Mass mass => Mass.FromKilograms(Boundary.Kilograms(mass)),
        AreaDensity rate => AreaDensity.FromGramsPerSquareMeter(Boundary.GramsPerSquareMetre(rate)),
        Density density => Density.FromKilogramsPerCubicMeter(Boundary.KilogramsPerCubicMetre(density)),
        MassConcentration strength => MassConcentration.FromMilligramsPerLiter(Boundary.MilligramsPerLitre(strength)),
        VolumeConcentration share => VolumeConcentration.FromPercent(Boundary.VolumeFraction(share) * 100),
        MassFraction share => MassFraction.FromPercent(Boundary.MassFraction(share) * 100),
        Ratio ratio => Ratio.FromPercent(Boundary.Fraction(ratio) * 100),
        Temperature temperature => Temperature.FromDegreesCelsius(Boundary.Celsius(temperature)),
        TemperatureDelta delta => TemperatureDelta.FromDegreesCelsius(Boundary.CelsiusDegrees(delta)),
        Duration duration => Duration.FromDays(Boundary.Days(duration)),
        Angle angle => Angle.FromDegrees(Boundary.Degrees(angle)),
        ReciprocalArea density => ReciprocalArea.FromInverseSquareMeters(Boundary.PerSquareMetre(density)),
        Molarity molarity => Molarity.FromMolesPerLiter(Boundary.MolesPerLitre(molarity)),
        IQuantity other => other.ToUnit(other.QuantityInfo.BaseUnitInfo.Value),
        _ => value,
    };
}
