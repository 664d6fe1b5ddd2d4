using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Units;

/// <summary>One quantity at the boundary: how it is made in any of its units, the unit of the kernels, and our conversion to it.</summary>
public sealed record BoundaryQuantity(QuantityInfo Info, Enum HouseUnit, Func<IQuantity, double> Convert)
{
    public static IReadOnlyList<BoundaryQuantity> All { get; } =
    [
        new(Length.Info, LengthUnit.Meter, quantity => Boundary.Metres((Length)quantity)),
        new(Area.Info, AreaUnit.SquareMeter, quantity => Boundary.SquareMetres((Area)quantity)),
        new(Volume.Info, VolumeUnit.Liter, quantity => Boundary.Litres((Volume)quantity)),
        new(Mass.Info, MassUnit.Kilogram, quantity => Boundary.Kilograms((Mass)quantity)),
        new(AreaDensity.Info, AreaDensityUnit.GramPerSquareMeter, quantity => Boundary.GramsPerSquareMetre((AreaDensity)quantity)),
        new(Density.Info, DensityUnit.KilogramPerCubicMeter, quantity => Boundary.KilogramsPerCubicMetre((Density)quantity)),
        new(MassConcentration.Info, MassConcentrationUnit.MilligramPerLiter, quantity => Boundary.MilligramsPerLitre((MassConcentration)quantity)),
        new(VolumeConcentration.Info, VolumeConcentrationUnit.DecimalFraction, quantity => Boundary.VolumeFraction((VolumeConcentration)quantity)),
        new(MassFraction.Info, MassFractionUnit.DecimalFraction, quantity => Boundary.MassFraction((MassFraction)quantity)),
        new(Ratio.Info, RatioUnit.DecimalFraction, quantity => Boundary.Fraction((Ratio)quantity)),
        new(Temperature.Info, TemperatureUnit.DegreeCelsius, quantity => Boundary.Celsius((Temperature)quantity)),
        new(TemperatureDelta.Info, TemperatureDeltaUnit.DegreeCelsius, quantity => Boundary.CelsiusDegrees((TemperatureDelta)quantity)),
        new(Duration.Info, DurationUnit.Day, quantity => Boundary.Days((Duration)quantity)),
        new(Angle.Info, AngleUnit.Degree, quantity => Boundary.Degrees((Angle)quantity)),
        new(ReciprocalArea.Info, ReciprocalAreaUnit.InverseSquareMeter, quantity => Boundary.PerSquareMetre((ReciprocalArea)quantity)),
        new(Pressure.Info, PressureUnit.Kilopascal, quantity => Boundary.Kilopascals((Pressure)quantity)),
        new(Molarity.Info, MolarityUnit.MolePerLiter, quantity => Boundary.MolesPerLitre((Molarity)quantity)),
        new(Irradiation.Info, IrradiationUnit.KilojoulePerSquareMeter, quantity => Boundary.KilojoulesPerSquareMetre((Irradiation)quantity)),
        new(Irradiance.Info, IrradianceUnit.WattPerSquareMeter, quantity => Boundary.WattsPerSquareMetre((Irradiance)quantity)),
        new(Illuminance.Info, IlluminanceUnit.Lux, quantity => Boundary.Lux((Illuminance)quantity)),
    ];

    public string Name => Info.Name;

    public IEnumerable<Enum> Units => Info.UnitInfos.Select(unit => unit.Value);

    public override string ToString() => Name;
}
