using HortiCalc.Units;
using UnitsNet;
using AirHumidity = UnitsNet.RelativeHumidity;

namespace HortiCalc.Climate;

/// <content>Moist air by what was measured of it.</content>
public sealed partial record MoistAir
{
    /// <summary>Moist air by its relative humidity over water, as hygrometers and weather services show it.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <param name="relativeHumidity">The share of saturation over water, above 0, up to 100 %. Air without any vapour has no dew point.</param>
    /// <param name="airPressure">The pressure that a barometer shows there, from 10 to 120 kPa.</param>
    /// <param name="saturation">The formula of saturation; <see cref="SaturationVapourPressure.Wmo"/> where it is <see langword="null"/>.</param>
    /// <returns>The air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range, or the formula was not published for the temperature.</exception>
    /// <example><code>
    /// MoistAir night = MoistAir.FromRelativeHumidity(
    ///     Temperature.FromDegreesFahrenheit(38), RelativeHumidity.FromPercent(60), Pressure.FromInchesOfMercury(29.9));
    /// Console.WriteLine($"{night.DewPoint().DegreesFahrenheit:F0} °F"); // 25 °F
    /// </code></example>
    public static MoistAir FromRelativeHumidity(
        Temperature temperature, AirHumidity relativeHumidity, Pressure airPressure, SaturationVapourPressure? saturation = null)
    {
        Given given = Given.Of(temperature, airPressure, saturation ?? SaturationVapourPressure.Wmo);
        SaturationCurve water = given.Saturation.Water;
        double share = Share(relativeHumidity, nameof(relativeHumidity));
        return new MoistAir(given, share * water.Kilopascals(water.Require(given.Celsius, nameof(temperature))), nameof(relativeHumidity));
    }

    /// <summary>Moist air below freezing by its relative humidity over ice, as engineers' charts have it.</summary>
    /// <param name="temperature">The temperature, at most 0 °C.</param>
    /// <param name="relativeHumidity">The share of saturation over ice, above 0, up to 100 %.</param>
    /// <param name="airPressure">The pressure that a barometer shows there, from 10 to 120 kPa.</param>
    /// <param name="saturation">The formula of saturation; <see cref="SaturationVapourPressure.Wmo"/> where it is <see langword="null"/>.</param>
    /// <returns>The air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range, or the formula was not published for the temperature.</exception>
    /// <exception cref="NotSupportedException">The source of the formula has none over ice.</exception>
    public static MoistAir FromRelativeHumidityOverIce(
        Temperature temperature, AirHumidity relativeHumidity, Pressure airPressure, SaturationVapourPressure? saturation = null)
    {
        Given given = Given.Of(temperature, airPressure, saturation ?? SaturationVapourPressure.Wmo);
        SaturationCurve ice = given.Saturation.RequireIce();
        double share = Share(relativeHumidity, nameof(relativeHumidity));
        return new MoistAir(given, share * ice.Kilopascals(ice.Require(given.Celsius, nameof(temperature))), nameof(relativeHumidity));
    }

    /// <summary>Moist air by its dew point.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <param name="dewPoint">The temperature at which dew forms, over water, at most that of the air.</param>
    /// <param name="airPressure">The pressure that a barometer shows there, from 10 to 120 kPa.</param>
    /// <param name="saturation">The formula of saturation; <see cref="SaturationVapourPressure.Wmo"/> where it is <see langword="null"/>.</param>
    /// <returns>The air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range, or the formula was not published for a temperature.</exception>
    public static MoistAir FromDewPoint(
        Temperature temperature, Temperature dewPoint, Pressure airPressure, SaturationVapourPressure? saturation = null)
    {
        Given given = Given.Of(temperature, airPressure, saturation ?? SaturationVapourPressure.Wmo);
        return given.SaturatedAt(given.Saturation.Water, dewPoint, nameof(dewPoint));
    }

    /// <summary>Moist air by its frost point.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <param name="frostPoint">The temperature at which hoar frost forms, over ice, at most 0 °C and that of the air.</param>
    /// <param name="airPressure">The pressure that a barometer shows there, from 10 to 120 kPa.</param>
    /// <param name="saturation">The formula of saturation; <see cref="SaturationVapourPressure.Wmo"/> where it is <see langword="null"/>.</param>
    /// <returns>The air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range, or the formula was not published for a temperature.</exception>
    /// <exception cref="NotSupportedException">The source of the formula has none over ice.</exception>
    public static MoistAir FromFrostPoint(
        Temperature temperature, Temperature frostPoint, Pressure airPressure, SaturationVapourPressure? saturation = null)
    {
        Given given = Given.Of(temperature, airPressure, saturation ?? SaturationVapourPressure.Wmo);
        return given.SaturatedAt(given.Saturation.RequireIce(), frostPoint, nameof(frostPoint));
    }

    /// <summary>Moist air by what a wet thermometer reads, with water on the bulb.</summary>
    /// <param name="temperature">The temperature, that of the dry thermometer.</param>
    /// <param name="wetBulb">The reading of the wet thermometer, at most that of the dry one.</param>
    /// <param name="airPressure">The pressure that a barometer shows there, from 10 to 120 kPa.</param>
    /// <param name="psychrometer">How the thermometer is aired; <see cref="Psychrometer.Ventilated"/> where it is <see langword="null"/>.</param>
    /// <param name="saturation">The formula of saturation; <see cref="SaturationVapourPressure.Wmo"/> where it is <see langword="null"/>.</param>
    /// <returns>The air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is out of its range, the wet bulb is lower than even dry air would cool it, or the formula was not published for a temperature.
    /// </exception>
    /// <example><code>
    /// MoistAir screen = MoistAir.FromWetBulb(
    ///     Temperature.FromDegreesCelsius(25.6), Temperature.FromDegreesCelsius(19.5), Pressure.FromKilopascals(87.9),
    ///     Psychrometer.Ventilated, SaturationVapourPressure.Fao);
    /// Console.WriteLine($"{screen.VapourPressure.Kilopascals:F2} kPa"); // 1.91 kPa
    /// </code></example>
    public static MoistAir FromWetBulb(
        Temperature temperature,
        Temperature wetBulb,
        Pressure airPressure,
        Psychrometer? psychrometer = null,
        SaturationVapourPressure? saturation = null)
    {
        Given given = Given.Of(temperature, airPressure, saturation ?? SaturationVapourPressure.Wmo);
        SaturationCurve water = given.Saturation.Water;
        double wetCelsius = given.NotAbove(water, wetBulb, nameof(wetBulb));
        double vapour = (psychrometer ?? Psychrometer.Ventilated)
            .Kilopascals(water.Kilopascals(wetCelsius), given.Celsius, wetCelsius, given.AirKilopascals);
        return new MoistAir(given, given.NotDry(vapour, wetCelsius, nameof(wetBulb)), nameof(wetBulb));
    }

    /// <summary>Moist air by what a wet thermometer reads, with ice on the bulb.</summary>
    /// <param name="temperature">The temperature, that of the dry thermometer.</param>
    /// <param name="iceBulb">The reading of the thermometer under ice, at most 0 °C and that of the dry one.</param>
    /// <param name="airPressure">The pressure that a barometer shows there, from 10 to 120 kPa.</param>
    /// <param name="psychrometer">How the thermometer is aired; <see cref="Psychrometer.Ventilated"/> where it is <see langword="null"/>.</param>
    /// <param name="saturation">The formula of saturation; <see cref="SaturationVapourPressure.Wmo"/> where it is <see langword="null"/>.</param>
    /// <returns>The air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is out of its range, the ice bulb is lower than even dry air would cool it, or the formula was not published for a temperature.
    /// </exception>
    /// <exception cref="NotSupportedException">The source of the psychrometer or of the saturation has no formula for ice.</exception>
    public static MoistAir FromIceBulb(
        Temperature temperature,
        Temperature iceBulb,
        Pressure airPressure,
        Psychrometer? psychrometer = null,
        SaturationVapourPressure? saturation = null)
    {
        Given given = Given.Of(temperature, airPressure, saturation ?? SaturationVapourPressure.Wmo);
        SaturationCurve ice = given.Saturation.RequireIce();
        Psychrometer aired = psychrometer ?? Psychrometer.Ventilated;
        aired.RequireIce();
        double wetCelsius = given.NotAbove(ice, iceBulb, nameof(iceBulb));
        double vapour = aired.KilopascalsOverIce(ice.Kilopascals(wetCelsius), given.Celsius, wetCelsius, given.AirKilopascals);
        return new MoistAir(given, given.NotDry(vapour, wetCelsius, nameof(iceBulb)), nameof(iceBulb));
    }

    /// <summary>Moist air by the mass of water for a mass of dry air.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <param name="mixingRatio">The mass of water for a mass of dry air, above 0: 7.5 g/kg is 0.0075.</param>
    /// <param name="airPressure">The pressure that a barometer shows there, from 10 to 120 kPa.</param>
    /// <param name="saturation">The formula of saturation; <see cref="SaturationVapourPressure.Wmo"/> where it is <see langword="null"/>.</param>
    /// <returns>The air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range, or the formula was not published for the temperature.</exception>
    public static MoistAir FromMixingRatio(
        Temperature temperature, Ratio mixingRatio, Pressure airPressure, SaturationVapourPressure? saturation = null)
    {
        Given given = Given.Of(temperature, airPressure, saturation ?? SaturationVapourPressure.Wmo);
        double ratio = Guard.Positive(Boundary.Fraction(mixingRatio), "kg/kg", nameof(mixingRatio));
        return new MoistAir(given, MoistAirKernels.VapourKilopascals(ratio, given.AirKilopascals), nameof(mixingRatio));
    }

    /// <summary>Moist air by the mass of water in a mass of it.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <param name="specificHumidity">The mass of water in a mass of moist air, above 0 and below 1.</param>
    /// <param name="airPressure">The pressure that a barometer shows there, from 10 to 120 kPa.</param>
    /// <param name="saturation">The formula of saturation; <see cref="SaturationVapourPressure.Wmo"/> where it is <see langword="null"/>.</param>
    /// <returns>The air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range, or the formula was not published for the temperature.</exception>
    public static MoistAir FromSpecificHumidity(
        Temperature temperature, MassFraction specificHumidity, Pressure airPressure, SaturationVapourPressure? saturation = null)
    {
        Given given = Given.Of(temperature, airPressure, saturation ?? SaturationVapourPressure.Wmo);
        double share = Guard.Between(Boundary.MassFraction(specificHumidity), 0, 1, "kg/kg", nameof(specificHumidity));
        return new MoistAir(given, MoistAirKernels.VapourKilopascals(share / (1 - share), given.AirKilopascals), nameof(specificHumidity));
    }

    /// <summary>Moist air by the mass of water in a volume of it.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <param name="absoluteHumidity">The mass of water in a volume of air, above 0.</param>
    /// <param name="airPressure">The pressure that a barometer shows there, from 10 to 120 kPa.</param>
    /// <param name="saturation">The formula of saturation; <see cref="SaturationVapourPressure.Wmo"/> where it is <see langword="null"/>.</param>
    /// <returns>The air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range, or the formula was not published for the temperature.</exception>
    public static MoistAir FromAbsoluteHumidity(
        Temperature temperature, MassConcentration absoluteHumidity, Pressure airPressure, SaturationVapourPressure? saturation = null)
    {
        Given given = Given.Of(temperature, airPressure, saturation ?? SaturationVapourPressure.Wmo);
        double grams = Guard.Positive(Boundary.MilligramsPerLitre(absoluteHumidity), "g/m³", nameof(absoluteHumidity));
        return new MoistAir(given, MoistAirKernels.VapourKilopascalsOf(grams, given.Celsius), nameof(absoluteHumidity));
    }

    private static double Share(AirHumidity relativeHumidity, string parameter)
    {
        double percent = Boundary.Percent(relativeHumidity);
        return percent > 0 && percent <= 100 ? percent / 100 : throw Guard.Refused(parameter, percent, "%", "above 0, up to 100 %");
    }

    /// <summary>What every factory is given: the temperature, the barometer and the formula, checked once.</summary>
    private readonly struct Given
    {
        public required Temperature Temperature { get; init; }

        public required Pressure AirPressure { get; init; }

        public required SaturationVapourPressure Saturation { get; init; }

        public required double Celsius { get; init; }

        public required double AirKilopascals { get; init; }

        /// <summary>The vapour pressure of saturation: over water, or over ice where the source has nothing over water that cold.</summary>
        public required double SaturationKilopascals { get; init; }

        public static Given Of(Temperature temperature, Pressure airPressure, SaturationVapourPressure saturation)
        {
            SaturationCurve curve = Guard.NotNull(saturation).Water;
            Temperature air = HouseUnits.Normalise(temperature);
            double celsius = Boundary.Celsius(air);
            if (!curve.Holds(celsius) && saturation.Ice?.Holds(celsius) == true)
                curve = saturation.Ice;
            double saturationCelsius = curve.Require(celsius, nameof(temperature));
            Pressure barometer = HouseUnits.Normalise(airPressure);
            return new Given
            {
                Temperature = air,
                AirPressure = barometer,
                Saturation = saturation,
                Celsius = celsius,
                AirKilopascals = Guard.Within(
                    Boundary.Kilopascals(barometer), LowestAirKilopascals, HighestAirKilopascals, "kPa", nameof(airPressure)),
                SaturationKilopascals = curve.Kilopascals(saturationCelsius),
            };
        }

        public MoistAir SaturatedAt(SaturationCurve curve, Temperature point, string parameter) =>
            new(this, curve.Kilopascals(NotAbove(curve, point, parameter)), parameter);

        /// <summary>A temperature that is at most that of the air.</summary>
        public double NotAbove(SaturationCurve curve, Temperature value, string parameter)
        {
            double celsius = Boundary.Celsius(value);
            return celsius <= Celsius + SaturationCurve.HairCelsius
                ? Math.Min(Celsius, curve.Require(celsius, parameter))
                : throw Guard.Refused(parameter, celsius, "°C", $"not above the air's {Guard.Number(Celsius)} °C");
        }

        /// <summary>A vapour pressure that a psychrometer gave, where its bulb is not too cold for any air.</summary>
        public double NotDry(double vapourKilopascals, double wetCelsius, string parameter) => vapourKilopascals > 0
            ? vapourKilopascals
            : throw Guard.Refused(
                parameter,
                wetCelsius,
                "°C",
                $"above what it would be in air of {Guard.Number(Celsius)} °C without any vapour, at {Guard.Number(AirKilopascals)} kPa");
    }
}
