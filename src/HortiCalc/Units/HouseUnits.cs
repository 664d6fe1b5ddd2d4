using System.Globalization;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Units;

/// <summary>
/// Brings a quantity to the one unit that this library keeps it in, because UnitsNet's own equality tells one inch from
/// 25.4 millimetres. A quantity already in that unit passes unchanged, to the last digit; so do values that are not quantities.
/// </summary>
/// <remarks>
/// A converted number is rounded to fifteen significant digits, which drops the hair that binary fractions leave: 6 inches and
/// 15.24 centimetres are both 0.1524 metres.
/// </remarks>
internal static class HouseUnits
{
    public static T Normalise<T>(T value) => (T)Normalised(value!);

    private static object Normalised(object value) => value switch
    {
        Length { Unit: LengthUnit.Meter }
            or Area { Unit: AreaUnit.SquareMeter }
            or Volume { Unit: VolumeUnit.Liter }
            or Mass { Unit: MassUnit.Kilogram }
            or AreaDensity { Unit: AreaDensityUnit.GramPerSquareMeter }
            or Density { Unit: DensityUnit.KilogramPerCubicMeter }
            or MassConcentration { Unit: MassConcentrationUnit.MilligramPerLiter }
            or VolumeConcentration { Unit: VolumeConcentrationUnit.Percent }
            or MassFraction { Unit: MassFractionUnit.Percent }
            or Ratio { Unit: RatioUnit.Percent }
            or Temperature { Unit: TemperatureUnit.DegreeCelsius }
            or TemperatureDelta { Unit: TemperatureDeltaUnit.DegreeCelsius }
            or Duration { Unit: DurationUnit.Day }
            or Angle { Unit: AngleUnit.Degree }
            or ReciprocalArea { Unit: ReciprocalAreaUnit.InverseSquareMeter }
            or Molarity { Unit: MolarityUnit.MolePerLiter }
            or Speed { Unit: SpeedUnit.MeterPerSecond }
            or ThermalConductivity { Unit: ThermalConductivityUnit.WattPerMeterKelvin }
            or VolumetricHeatCapacity { Unit: VolumetricHeatCapacityUnit.JoulePerCubicMeterKelvin }
            or Pressure { Unit: PressureUnit.Kilopascal }
            or RelativeHumidity { Unit: RelativeHumidityUnit.Percent }
            or Irradiation { Unit: IrradiationUnit.KilojoulePerSquareMeter }
            or Irradiance { Unit: IrradianceUnit.WattPerSquareMeter }
            or Illuminance { Unit: IlluminanceUnit.Lux }
            or ElectricConductivity { Unit: ElectricConductivityUnit.MillisiemensPerCentimeter }
            or ReciprocalLength { Unit: ReciprocalLengthUnit.InverseMeter }
            or VolumeFlow { Unit: VolumeFlowUnit.LiterPerMinute } => value,
        Length length => Length.FromMeters(Settled(Boundary.Metres(length))),
        Area area => Area.FromSquareMeters(Settled(Boundary.SquareMetres(area))),
        Volume volume => Volume.FromLiters(Settled(Boundary.Litres(volume))),
        Mass mass => Mass.FromKilograms(Settled(Boundary.Kilograms(mass))),
        AreaDensity rate => AreaDensity.FromGramsPerSquareMeter(Settled(Boundary.GramsPerSquareMetre(rate))),
        Density density => Density.FromKilogramsPerCubicMeter(Settled(Boundary.KilogramsPerCubicMetre(density))),
        MassConcentration strength => MassConcentration.FromMilligramsPerLiter(Settled(Boundary.MilligramsPerLitre(strength))),
        VolumeConcentration share => VolumeConcentration.FromPercent(Settled(Boundary.VolumeFraction(share) * 100)),
        MassFraction share => MassFraction.FromPercent(Settled(Boundary.MassFraction(share) * 100)),
        Ratio ratio => Ratio.FromPercent(Settled(Boundary.Fraction(ratio) * 100)),
        Temperature temperature => Temperature.FromDegreesCelsius(Settled(Boundary.Celsius(temperature))),
        TemperatureDelta delta => TemperatureDelta.FromDegreesCelsius(Settled(Boundary.CelsiusDegrees(delta))),
        Duration duration => Duration.FromDays(Settled(Boundary.Days(duration))),
        Angle angle => Angle.FromDegrees(Settled(Boundary.Degrees(angle))),
        ReciprocalArea density => ReciprocalArea.FromInverseSquareMeters(Settled(Boundary.PerSquareMetre(density))),
        Speed speed => Speed.FromMetersPerSecond(Settled(Boundary.MetresPerSecond(speed))),
        Molarity molarity => Molarity.FromMolesPerLiter(Settled(Boundary.MolesPerLitre(molarity))),
        ThermalConductivity conductivity => ThermalConductivity.FromWattsPerMeterKelvin(Settled(Boundary.WattsPerMetreKelvin(conductivity))),
        VolumetricHeatCapacity capacity =>
            VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(Settled(Boundary.JoulesPerCubicMetreKelvin(capacity))),
        Pressure pressure => Pressure.FromKilopascals(Settled(Boundary.Kilopascals(pressure))),
        RelativeHumidity humidity => RelativeHumidity.FromPercent(Settled(Boundary.Percent(humidity))),
        Irradiation radiation => Irradiation.FromKilojoulesPerSquareMeter(Settled(Boundary.KilojoulesPerSquareMetre(radiation))),
        Irradiance power => Irradiance.FromWattsPerSquareMeter(Settled(Boundary.WattsPerSquareMetre(power))),
        Illuminance light => Illuminance.FromLux(Settled(Boundary.Lux(light))),
        ElectricConductivity conductivity =>
            ElectricConductivity.FromMillisiemensPerCentimeter(Settled(Boundary.DecisiemensPerMetre(conductivity))),
        VolumeFlow flow => VolumeFlow.FromLitersPerMinute(Settled(Boundary.LitresPerMinute(flow))),
        ReciprocalLength number => ReciprocalLength.FromInverseMeters(Settled(Boundary.PerMetre(number))),
        IQuantity other => other.ToUnit(other.QuantityInfo.BaseUnitInfo.Value),
        _ => value,
    };

    private static double Settled(double value)
    {
        Span<char> digits = stackalloc char[32];
        return value.TryFormat(digits, out int length, "G15", CultureInfo.InvariantCulture)
            ? double.Parse(digits[..length], NumberStyles.Float, CultureInfo.InvariantCulture)
            : value;
    }
}
