using UnitsNet;

namespace HortiCalc.Units;

/// <summary>
/// Brings a quantity to the one unit that this library keeps it in, because UnitsNet's own equality tells one inch from
/// 25.4 millimetres. Values that are not quantities pass unchanged.
/// </summary>
internal static class HouseUnits
{
    public static T Normalise<T>(T value) => (T)Normalised(value!);

    private static object Normalised(object value) => value switch
    {
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
        _ => value,
    };
}
