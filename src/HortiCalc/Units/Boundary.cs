using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Units;

/// <summary>
/// Turns quantities into the plain numbers that the kernels work on. The units in common use are converted here by one
/// exact operation, without allocation; UnitsNet converts the rest. Nothing else in the library reads a quantity's number,
/// so a new major version of UnitsNet touches this file and <see cref="HouseUnits"/> alone.
/// </summary>
/// <remarks>
/// Factors: NIST Special Publication 811, Guide for the Use of the International System of Units, Appendix B, NIST, 2008,
/// https://www.nist.gov/pml/special-publication-811. Exact by definition: inch 0.0254 m, pound 0.45359237 kg,
/// US gallon 231 cubic inches, US bushel 2150.42 cubic inches, imperial gallon 4.54609 L. Some factors of UnitsNet are
/// rounded (the square foot of a number per area, pounds per cubic foot, pounds and ounces per gallon, the stone, the
/// acre-foot); those are exact here.
/// </remarks>
internal static class Boundary
{
    public const double MetresPerInch = 0.0254;
    public const double MetresPerFoot = 0.3048;
    public const double MetresPerYard = 0.9144;
    public const double MetresPerMile = 1609.344;
    public const double MetresPerNauticalMile = 1852;
    public const double SquareMetresPerSquareFoot = 0.09290304;
    public const double SquareMetresPerSquareYard = 0.83612736;
    public const double SquareMetresPerAcre = 4046.8564224;
    public const double KilogramsPerPound = 0.45359237;
    public const double KilogramsPerOunce = KilogramsPerPound / 16;
    public const double KilogramsPerStone = 6.35029318;
    public const double KilogramsPerShortTon = 907.18474;
    public const double KilogramsPerLongTon = 1016.0469088;
    public const double LitresPerCubicMetre = 1000;
    public const double LitresPerCubicInch = 0.016387064;
    public const double LitresPerCubicFoot = 28.316846592;
    public const double LitresPerCubicYard = 764.554857984;
    public const double LitresPerUsGallon = 3.785411784;
    public const double LitresPerUsBushel = 35.23907016688;
    public const double LitresPerImperialGallon = 4.54609;
    public const double LitresPerAcreInch = 102_790.15312896;
    public const double FahrenheitPerCelsius = 1.8;
    public const double FahrenheitAtZeroCelsius = 32;
    public const double KelvinAtZeroCelsius = 273.15;
    public const double KilopascalsPerMillimetreOfMercury = 0.133322387415;
    public const double KilopascalsPerInchOfMercury = KilopascalsPerMillimetreOfMercury * 25.4;
    public const double KilopascalsPerPsi = 6.894757293168361;

    public static double Metres(Length value) => value.Unit switch
    {
        LengthUnit.Meter => value.Value,
        LengthUnit.Centimeter => value.Value / 100,
        LengthUnit.Millimeter => value.Value / 1000,
        LengthUnit.Inch => value.Value * MetresPerInch,
        LengthUnit.Foot => value.Value * MetresPerFoot,
        LengthUnit.Yard => value.Value * MetresPerYard,
        LengthUnit.Kilometer => value.Value * 1000,
        LengthUnit.Mile => value.Value * MetresPerMile,
        _ => value.Meters,
    };

    public static double SquareMetres(Area value) => value.Unit switch
    {
        AreaUnit.SquareMeter => value.Value,
        AreaUnit.Hectare => value.Value * 10_000,
        AreaUnit.SquareFoot => value.Value * SquareMetresPerSquareFoot,
        AreaUnit.SquareYard => value.Value * SquareMetresPerSquareYard,
        AreaUnit.Acre => value.Value * SquareMetresPerAcre,
        AreaUnit.SquareCentimeter => value.Value / 10_000,
        _ => value.SquareMeters,
    };

    public static double Litres(Volume value) => value.Unit switch
    {
        VolumeUnit.Liter => value.Value,
        VolumeUnit.Milliliter => value.Value / 1000,
        VolumeUnit.CubicMeter => value.Value * LitresPerCubicMetre,
        VolumeUnit.CubicCentimeter => value.Value / 1000,
        VolumeUnit.CubicInch => value.Value * LitresPerCubicInch,
        VolumeUnit.CubicFoot => value.Value * LitresPerCubicFoot,
        VolumeUnit.CubicYard => value.Value * LitresPerCubicYard,
        VolumeUnit.AcreFoot => value.Value * 12 * LitresPerAcreInch,
        VolumeUnit.UsGallon => value.Value * LitresPerUsGallon,
        VolumeUnit.UsQuart => value.Value * LitresPerUsGallon / 4,
        VolumeUnit.UsPint => value.Value * LitresPerUsGallon / 8,
        VolumeUnit.UsCustomaryCup => value.Value * LitresPerUsGallon / 16,
        VolumeUnit.UsOunce => value.Value * LitresPerUsGallon / 128,
        VolumeUnit.UsTablespoon => value.Value * LitresPerUsGallon / 256,
        VolumeUnit.UsTeaspoon => value.Value * LitresPerUsGallon / 768,
        VolumeUnit.MetricCup => value.Value / 4,
        VolumeUnit.MetricTeaspoon => value.Value / 200,
        VolumeUnit.ImperialGallon => value.Value * LitresPerImperialGallon,
        VolumeUnit.ImperialQuart => value.Value * LitresPerImperialGallon / 4,
        VolumeUnit.ImperialPint => value.Value * LitresPerImperialGallon / 8,
        VolumeUnit.ImperialOunce => value.Value * LitresPerImperialGallon / 160,
        _ => value.Liters,
    };

    public static double CubicMetres(Volume value) => Litres(value) / LitresPerCubicMetre;

    public static double Kilograms(Mass value) => value.Unit switch
    {
        MassUnit.Kilogram => value.Value,
        MassUnit.Gram => value.Value / 1000,
        MassUnit.Milligram => value.Value / 1_000_000,
        MassUnit.Tonne => value.Value * 1000,
        MassUnit.Pound => value.Value * KilogramsPerPound,
        MassUnit.Ounce => value.Value * KilogramsPerOunce,
        MassUnit.Stone => value.Value * KilogramsPerStone,
        MassUnit.ShortTon => value.Value * KilogramsPerShortTon,
        MassUnit.LongTon => value.Value * KilogramsPerLongTon,
        _ => value.Kilograms,
    };

    public static double GramsPerSquareMetre(AreaDensity value) => value.Unit switch
    {
        AreaDensityUnit.GramPerSquareMeter => value.Value,
        AreaDensityUnit.KilogramPerSquareMeter => value.Value * 1000,
        AreaDensityUnit.MilligramPerSquareMeter => value.Value / 1000,
        _ => value.GramsPerSquareMeter,
    };

    public static double KilogramsPerCubicMetre(Density value) => value.Unit switch
    {
        DensityUnit.KilogramPerCubicMeter or DensityUnit.GramPerLiter => value.Value,
        DensityUnit.GramPerCubicCentimeter or DensityUnit.KilogramPerLiter => value.Value * 1000,
        DensityUnit.PoundPerCubicFoot => value.Value * KilogramsPerPound / LitresPerCubicFoot * 1000,
        DensityUnit.PoundPerCubicYard => value.Value * KilogramsPerPound / LitresPerCubicYard * 1000,
        DensityUnit.PoundPerUSGallon => value.Value * KilogramsPerPound / LitresPerUsGallon * 1000,
        DensityUnit.PoundPerImperialGallon => value.Value * KilogramsPerPound / LitresPerImperialGallon * 1000,
        DensityUnit.TonnePerCubicMeter => value.Value * 1000,
        _ => value.KilogramsPerCubicMeter,
    };

    public static double MilligramsPerLitre(MassConcentration value) => value.Unit switch
    {
        MassConcentrationUnit.MilligramPerLiter or MassConcentrationUnit.GramPerCubicMeter => value.Value,
        MassConcentrationUnit.GramPerLiter or MassConcentrationUnit.KilogramPerCubicMeter => value.Value * 1000,
        MassConcentrationUnit.OuncePerUSGallon => value.Value * KilogramsPerOunce * 1_000_000 / LitresPerUsGallon,
        MassConcentrationUnit.PoundPerUSGallon => value.Value * KilogramsPerPound * 1_000_000 / LitresPerUsGallon,
        MassConcentrationUnit.PoundPerCubicFoot => value.Value * KilogramsPerPound * 1_000_000 / LitresPerCubicFoot,
        MassConcentrationUnit.OuncePerImperialGallon => value.Value * KilogramsPerOunce * 1_000_000 / LitresPerImperialGallon,
        MassConcentrationUnit.PoundPerImperialGallon => value.Value * KilogramsPerPound * 1_000_000 / LitresPerImperialGallon,
        _ => value.MilligramsPerLiter,
    };

    public static double VolumeFraction(VolumeConcentration value) => value.Unit switch
    {
        VolumeConcentrationUnit.DecimalFraction => value.Value,
        VolumeConcentrationUnit.Percent => value.Value / 100,
        VolumeConcentrationUnit.MillilitersPerLiter => value.Value / 1000,
        VolumeConcentrationUnit.PartPerMillion => value.Value / 1_000_000,
        _ => value.DecimalFractions,
    };

    public static double MassFraction(MassFraction value) => value.Unit switch
    {
        MassFractionUnit.DecimalFraction => value.Value,
        MassFractionUnit.Percent => value.Value / 100,
        MassFractionUnit.GramPerKilogram => value.Value / 1000,
        MassFractionUnit.MilligramPerKilogram or MassFractionUnit.PartPerMillion => value.Value / 1_000_000,
        _ => value.DecimalFractions,
    };

    public static double Fraction(Ratio value) => value.Unit switch
    {
        RatioUnit.DecimalFraction => value.Value,
        RatioUnit.Percent => value.Value / 100,
        RatioUnit.PartPerMillion => value.Value / 1_000_000,
        _ => value.DecimalFractions,
    };

    public static double Celsius(Temperature value) => value.Unit switch
    {
        TemperatureUnit.DegreeCelsius => value.Value,
        TemperatureUnit.DegreeFahrenheit => CelsiusFromFahrenheit(value.Value),
        TemperatureUnit.Kelvin => value.Value - KelvinAtZeroCelsius,
        _ => value.DegreesCelsius,
    };

    public static double CelsiusFromFahrenheit(double degreesFahrenheit) =>
        (degreesFahrenheit - FahrenheitAtZeroCelsius) / FahrenheitPerCelsius;

    public static double FahrenheitFromCelsius(double degreesCelsius) =>
        degreesCelsius * FahrenheitPerCelsius + FahrenheitAtZeroCelsius;

    public static double CelsiusDegrees(TemperatureDelta value) => value.Unit switch
    {
        TemperatureDeltaUnit.DegreeCelsius or TemperatureDeltaUnit.Kelvin => value.Value,
        TemperatureDeltaUnit.DegreeFahrenheit => value.Value / FahrenheitPerCelsius,
        _ => value.DegreesCelsius,
    };

    public static double Days(Duration value) => value.Unit switch
    {
        DurationUnit.Day => value.Value,
        DurationUnit.Week => value.Value * 7,
        DurationUnit.Hour => value.Value / 24,
        DurationUnit.Minute => value.Value / 1440,
        DurationUnit.Second => value.Value / 86_400,
        _ => value.Days,
    };

    public static double Degrees(Angle value) => value.Unit == AngleUnit.Degree ? value.Value : value.Degrees;

    public static double PerSquareMetre(ReciprocalArea value) => value.Unit switch
    {
        ReciprocalAreaUnit.InverseSquareMeter => value.Value,
        ReciprocalAreaUnit.InverseSquareFoot => value.Value / SquareMetresPerSquareFoot,
        ReciprocalAreaUnit.InverseSquareYard => value.Value / SquareMetresPerSquareYard,
        ReciprocalAreaUnit.InverseSquareInch => value.Value / (MetresPerInch * MetresPerInch),
        _ => value.InverseSquareMeters,
    };

    public static double MolesPerLitre(Molarity value) => value.Unit switch
    {
        MolarityUnit.MolePerLiter => value.Value,
        MolarityUnit.MillimolePerLiter or MolarityUnit.MolePerCubicMeter => value.Value / 1000,
        _ => value.MolesPerLiter,
    };

    public static double WattsPerMetreKelvin(ThermalConductivity value) =>
        value.Unit == ThermalConductivityUnit.WattPerMeterKelvin ? value.Value : value.WattsPerMeterKelvin;

    public static double JoulesPerCubicMetreKelvin(VolumetricHeatCapacity value) =>
        value.Unit == VolumetricHeatCapacityUnit.JoulePerCubicMeterKelvin ? value.Value : value.JoulesPerCubicMeterKelvin;

    public static double Kilopascals(Pressure value) => value.Unit switch
    {
        PressureUnit.Kilopascal => value.Value,
        PressureUnit.Pascal => value.Value / 1000,
        PressureUnit.Hectopascal or PressureUnit.Millibar => value.Value / 10,
        PressureUnit.Bar => value.Value * 100,
        PressureUnit.MillimeterOfMercury => value.Value * KilopascalsPerMillimetreOfMercury,
        PressureUnit.InchOfMercury => value.Value * KilopascalsPerInchOfMercury,
        PressureUnit.PoundForcePerSquareInch => value.Value * KilopascalsPerPsi,
        _ => value.Kilopascals,
    };

    public static double Percent(RelativeHumidity value) => value.Unit == RelativeHumidityUnit.Percent ? value.Value : value.Percent;

    public static double MetresPerSecond(Speed value) => value.Unit switch
    {
        SpeedUnit.MeterPerSecond => value.Value,
        SpeedUnit.KilometerPerHour => value.Value / 3.6,
        SpeedUnit.MilePerHour => value.Value * MetresPerMile / 3600,
        SpeedUnit.Knot => value.Value * MetresPerNauticalMile / 3600,
        _ => value.MetersPerSecond,
    };

    public static double KilojoulesPerSquareMetre(Irradiation value) => value.Unit switch
    {
        IrradiationUnit.KilojoulePerSquareMeter => value.Value,
        IrradiationUnit.JoulePerSquareMeter => value.Value / 1000,
        IrradiationUnit.JoulePerSquareCentimeter => value.Value * 10,
        IrradiationUnit.WattHourPerSquareMeter => value.Value * 3.6,
        IrradiationUnit.KilowattHourPerSquareMeter => value.Value * 3600,
        _ => value.KilojoulesPerSquareMeter,
    };

    public static double MegajoulesPerSquareMetre(Irradiation value) => KilojoulesPerSquareMetre(value) / 1000;

    public static double WattsPerSquareMetre(Irradiance value) => value.Unit switch
    {
        IrradianceUnit.WattPerSquareMeter => value.Value,
        IrradianceUnit.KilowattPerSquareMeter => value.Value * 1000,
        _ => value.WattsPerSquareMeter,
    };

    public static double Lux(Illuminance value) => value.Unit switch
    {
        IlluminanceUnit.Lux => value.Value,
        IlluminanceUnit.Kilolux => value.Value * 1000,
        _ => value.Lux,
    };

    /// <summary>A decisiemens per metre is a millisiemens per centimetre.</summary>
    public static double DecisiemensPerMetre(ElectricConductivity value) => value.Unit switch
    {
        ElectricConductivityUnit.MillisiemensPerCentimeter => value.Value,
        ElectricConductivityUnit.MicrosiemensPerCentimeter => value.Value / 1000,
        ElectricConductivityUnit.SiemensPerMeter => value.Value * 10,
        _ => value.MillisiemensPerCentimeter,
    };

    public static double PerMetre(ReciprocalLength value) => value.Unit switch
    {
        ReciprocalLengthUnit.InverseMeter => value.Value,
        ReciprocalLengthUnit.InverseCentimeter => value.Value * 100,
        ReciprocalLengthUnit.InverseFoot => value.Value / MetresPerFoot,
        _ => value.InverseMeters,
    };

    public static double LitresPerMinute(VolumeFlow value) => value.Unit switch
    {
        VolumeFlowUnit.LiterPerMinute => value.Value,
        VolumeFlowUnit.LiterPerHour => value.Value / 60,
        VolumeFlowUnit.CubicMeterPerHour => value.Value * LitresPerCubicMetre / 60,
        VolumeFlowUnit.UsGallonPerMinute => value.Value * LitresPerUsGallon,
        VolumeFlowUnit.UsGallonPerHour => value.Value * LitresPerUsGallon / 60,
        _ => value.LitersPerMinute,
    };
}
