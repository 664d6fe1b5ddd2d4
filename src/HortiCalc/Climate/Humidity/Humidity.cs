using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Climate;

/// <summary>Humidity of series and of grids, and the wet bulb by a published fit. For the air at one time and place see <see cref="MoistAir"/>.</summary>
/// <remarks>
/// A series allocates nothing and uses the vectors of the processor. Its results agree with those for one number within 10⁻¹² of the pressure
/// and 10⁻¹⁰ °C; between processors they may differ in the last digits. A number that is missing (NaN) gives a missing one. All are over water.
/// </remarks>
public static class Humidity
{
    private static readonly Method FittedWetBulb = new(
        "wet-bulb.fit",
        "wet bulb by a fit",
        HumiditySources.Stull2011,
        new Domain(
            "sea level; not where it is cold and dry at once",
            new DomainLimit("temperature", -20, 50, "°C"),
            new DomainLimit("relativeHumidity", 5, 99, "%")));

    /// <summary>The wet bulb at sea level by a fitted formula, without solving the psychrometric equation.</summary>
    /// <param name="temperature">The temperature, from −20 to 50 °C.</param>
    /// <param name="relativeHumidity">The relative humidity, from 5 to 99 %.</param>
    /// <returns>The wet bulb, with the largest errors that the source found. <see cref="MoistAir.WetBulb"/> is exact, at any pressure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is outside what the fit was published for.</exception>
    /// <example><code>
    /// Estimate&lt;Temperature&gt; wet = Humidity.FittedWetBulbAt(Temperature.FromDegreesCelsius(20), RelativeHumidity.FromPercent(50));
    /// Console.WriteLine($"{wet.Value.DegreesCelsius:F1} °C"); // 13.7 °C
    /// </code></example>
    public static Estimate<Temperature> FittedWetBulbAt(Temperature temperature, RelativeHumidity relativeHumidity)
    {
        double celsius = FittedWetBulb.Require(Boundary.Celsius(temperature), "°C", nameof(temperature));
        double percent = FittedWetBulb.Require(Boundary.Percent(relativeHumidity), "%", nameof(relativeHumidity));

        // Stull 2011, equation 1; the errors of his fit run from −1 to 0.65 °C.
        double wetCelsius = celsius * Math.Atan(0.151977 * Math.Sqrt(percent + 8.313659))
            + Math.Atan(celsius + percent)
            - Math.Atan(percent - 1.676331)
            + 0.00391838 * Math.Pow(percent, 1.5) * Math.Atan(0.023101 * percent)
            - 4.686035;
        return new Estimate<Temperature>(
            Temperature.FromDegreesCelsius(wetCelsius),
            FittedWetBulb,
            new EstimateRange<Temperature>(
                Temperature.FromDegreesCelsius(wetCelsius - 0.65), Temperature.FromDegreesCelsius(wetCelsius + 1), "largest errors of the fit"));
    }

    /// <summary>The saturation vapour pressure over water of many temperatures.</summary>
    /// <param name="temperatures">The temperatures, in <paramref name="unit"/>; not a number where one is missing.</param>
    /// <param name="unit">°C, °F or K.</param>
    /// <param name="saturation">The formula.</param>
    /// <param name="pressureUnit">The unit of the result: Pa, hPa, mbar, kPa, mmHg, inHg or psi.</param>
    /// <param name="destination">As many as <paramref name="temperatures"/>. May be the same memory, but not overlap it otherwise.</param>
    /// <exception cref="ArgumentNullException">The formula is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A temperature is outside what the formula was published for, or a unit is another one; the destination then holds nothing of use.
    /// </exception>
    /// <example><code>
    /// double[] pressures = new double[3];
    /// Humidity.SaturationVapourPressures(
    ///     [10, 20, 30], TemperatureUnit.DegreeCelsius, SaturationVapourPressure.Fao, PressureUnit.Kilopascal, pressures);
    /// Console.WriteLine($"{pressures[1]:F3} kPa"); // 2.338 kPa
    /// </code></example>
    public static void SaturationVapourPressures(
        ReadOnlySpan<double> temperatures,
        TemperatureUnit unit,
        SaturationVapourPressure saturation,
        PressureUnit pressureUnit,
        Span<double> destination)
    {
        SaturationCurve curve = Guard.NotNull(saturation).Water;
        HumidityScale scale = Scale(unit, pressureUnit);
        RequireLength(destination.Length, temperatures.Length, nameof(destination));
        if (!curve.Run(HumiditySeries.SaturationVapourPressure, temperatures, temperatures, scale, destination))
            throw HumidityFaults.Temperature(curve, unit, temperatures, scale, nameof(temperatures));
    }

    /// <summary>The vapour pressure deficit over water of many temperatures and relative humidities.</summary>
    /// <param name="temperatures">The temperatures, in <paramref name="unit"/>; not a number where one is missing.</param>
    /// <param name="unit">°C, °F or K.</param>
    /// <param name="relativeHumidities">As many relative humidities over water, in percent from 0 to 100; not a number where one is missing.</param>
    /// <param name="saturation">The formula.</param>
    /// <param name="pressureUnit">The unit of the result: Pa, hPa, mbar, kPa, mmHg, inHg or psi.</param>
    /// <param name="destination">As many as <paramref name="temperatures"/>. May be the memory of an input, but not overlap one otherwise.</param>
    /// <exception cref="ArgumentNullException">The formula is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An input is out of its range, or a unit is another one; the destination then holds nothing of use.
    /// </exception>
    public static void VapourPressureDeficits(
        ReadOnlySpan<double> temperatures,
        TemperatureUnit unit,
        ReadOnlySpan<double> relativeHumidities,
        SaturationVapourPressure saturation,
        PressureUnit pressureUnit,
        Span<double> destination)
    {
        SaturationCurve curve = Guard.NotNull(saturation).Water;
        HumidityScale scale = Scale(unit, pressureUnit);
        RequireLength(relativeHumidities.Length, temperatures.Length, nameof(relativeHumidities));
        RequireLength(destination.Length, temperatures.Length, nameof(destination));
        if (!curve.Run(HumiditySeries.VapourPressureDeficit, temperatures, relativeHumidities, scale, destination))
            throw HumidityFaults.Pair(curve, unit, temperatures, relativeHumidities, scale, mayBeZero: true);
    }

    /// <summary>The dew point of many temperatures and relative humidities.</summary>
    /// <param name="temperatures">The temperatures, in <paramref name="unit"/>; not a number where one is missing.</param>
    /// <param name="unit">°C, °F or K, of the result too.</param>
    /// <param name="relativeHumidities">
    /// As many relative humidities over water, in percent, above 0 and up to 100; not a number where one is missing.
    /// </param>
    /// <param name="saturation">The formula.</param>
    /// <param name="destination">As many as <paramref name="temperatures"/>. May be the memory of an input, but not overlap one otherwise.</param>
    /// <exception cref="ArgumentNullException">The formula is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An input is out of its range, a dew point outside what the formula was published for, or the unit is another one; the destination then
    /// holds nothing of use.
    /// </exception>
    public static void DewPoints(
        ReadOnlySpan<double> temperatures,
        TemperatureUnit unit,
        ReadOnlySpan<double> relativeHumidities,
        SaturationVapourPressure saturation,
        Span<double> destination)
    {
        SaturationCurve curve = Guard.NotNull(saturation).Water;
        HumidityScale scale = Scale(unit, PressureUnit.Kilopascal);
        RequireLength(relativeHumidities.Length, temperatures.Length, nameof(relativeHumidities));
        RequireLength(destination.Length, temperatures.Length, nameof(destination));
        if (!curve.Run(HumiditySeries.DewPoint, temperatures, relativeHumidities, scale, destination))
            throw HumidityFaults.Pair(curve, unit, temperatures, relativeHumidities, scale, mayBeZero: false);
    }

    /// <summary>The relative humidity over water of many temperatures and dew points.</summary>
    /// <param name="temperatures">The temperatures, in <paramref name="unit"/>; not a number where one is missing.</param>
    /// <param name="dewPoints">As many dew points, in <paramref name="unit"/>, none above its temperature; not a number where one is missing.</param>
    /// <param name="unit">°C, °F or K.</param>
    /// <param name="saturation">The formula.</param>
    /// <param name="destination">
    /// As many as <paramref name="temperatures"/>, in percent. May be the memory of an input, but not overlap one otherwise.
    /// </param>
    /// <exception cref="ArgumentNullException">The formula is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A temperature is outside what the formula was published for, a dew point is above its temperature, or the unit is another one; the
    /// destination then holds nothing of use.
    /// </exception>
    public static void RelativeHumidities(
        ReadOnlySpan<double> temperatures,
        ReadOnlySpan<double> dewPoints,
        TemperatureUnit unit,
        SaturationVapourPressure saturation,
        Span<double> destination)
    {
        SaturationCurve curve = Guard.NotNull(saturation).Water;
        HumidityScale scale = Scale(unit, PressureUnit.Kilopascal);
        RequireLength(dewPoints.Length, temperatures.Length, nameof(dewPoints));
        RequireLength(destination.Length, temperatures.Length, nameof(destination));
        if (!curve.Run(HumiditySeries.RelativeHumidity, temperatures, dewPoints, scale, destination))
            throw HumidityFaults.DewPoint(curve, unit, temperatures, dewPoints, scale);
    }

    private static HumidityScale Scale(TemperatureUnit unit, PressureUnit pressureUnit)
    {
        double perKilopascal = pressureUnit switch
        {
            PressureUnit.Kilopascal => 1,
            PressureUnit.Pascal => 1000,
            PressureUnit.Hectopascal or PressureUnit.Millibar => 10,
            PressureUnit.MillimeterOfMercury => 1 / Boundary.KilopascalsPerMillimetreOfMercury,
            PressureUnit.InchOfMercury => 1 / Boundary.KilopascalsPerInchOfMercury,
            PressureUnit.PoundForcePerSquareInch => 1 / Boundary.KilopascalsPerPsi,
            _ => throw new ArgumentOutOfRangeException(
                nameof(pressureUnit),
                $"pressureUnit was {pressureUnit}; allowed: {PressureUnit.Pascal}, {PressureUnit.Hectopascal}, {PressureUnit.Millibar}, "
                + $"{PressureUnit.Kilopascal}, {PressureUnit.MillimeterOfMercury}, {PressureUnit.InchOfMercury}, {PressureUnit.PoundForcePerSquareInch}."),
        };
        DegreeDayUnit degrees = DegreeDayUnit.Of(unit);
        return new HumidityScale(degrees.PerCelsius, degrees.AtZeroCelsius, perKilopascal);
    }

    private static void RequireLength(int length, int allowed, string parameter)
    {
        if (length != allowed)
            throw new ArgumentException($"{parameter} held {Guard.Number(length)}; allowed: {Guard.Number(allowed)}, as many as temperatures.", parameter);
    }
}
