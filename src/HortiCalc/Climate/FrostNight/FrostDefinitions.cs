using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Published definitions of frost, side by side: services and authors do not mean the same.</summary>
public static class FrostDefinitions
{
    /// <summary>Every definition there is.</summary>
    public static IReadOnlyList<FrostDefinition> All { get; } = ValueList<FrostDefinition>.Of(
    [
        Fahrenheit("light freeze", 32, 29, FrostNightSources.Almanac),
        Fahrenheit("moderate freeze", 28, 25, FrostNightSources.Almanac),
        Fahrenheit("severe freeze", 24, null, FrostNightSources.Almanac),
        Fahrenheit("frost advisory", 36, 33, FrostNightSources.NorthDakota),
        Fahrenheit("freeze warning", 32, 29, FrostNightSources.NorthDakota),
        Fahrenheit("hard freeze warning", 28, null, FrostNightSources.NorthDakota),
        Fahrenheit("frost", 36, null, FrostNightSources.Jackson),
        Fahrenheit("freeze", 32, null, FrostNightSources.Jackson),
        Fahrenheit("hard freeze", 28, null, FrostNightSources.Jackson),
        Fahrenheit("light frost", 32, 28, FrostNightSources.GardenHandout),
        new FrostDefinition(
            "hard frost", FrostSensor.Air, Temperature.FromDegreesFahrenheit(28), false, null, isInWholeFahrenheit: true, FrostNightSources.GardenHandout),
        Celsius("air frost", FrostSensor.Air, 0, isIncluded: false, FrostNightSources.MetOfficeGlossary),
        Celsius("day with ground frost", FrostSensor.Grass, -0.9, isIncluded: true, FrostNightSources.AmsFrostDay),
        new FrostDefinition(
            "ground frost, 1906 to 1960",
            FrostSensor.Grass,
            Temperature.FromDegreesFahrenheit(30),
            true,
            null,
            isInWholeFahrenheit: true,
            FrostNightSources.MetOfficeStatistics),
        Celsius("ground frost, since 1961", FrostSensor.Grass, 0, isIncluded: false, FrostNightSources.MetOfficeStatistics),
    ]);

    /// <summary>The definitions that cover a minimum.</summary>
    /// <param name="minimum">The minimum.</param>
    /// <param name="sensor">Where it was read.</param>
    /// <returns>Those for that sensor which cover it, each with its source; none where it is warmer than all.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The minimum is outside -90 to 60 °C, or the sensor is not one of the defined ones.</exception>
    /// <example><code>
    /// foreach (FrostDefinition word in FrostDefinitions.Covering(Temperature.FromDegreesCelsius(-1), FrostSensor.Air))
    ///     Console.WriteLine(word.Term); // light freeze, freeze warning, frost, freeze, light frost, air frost
    /// </code></example>
    public static IReadOnlyList<FrostDefinition> Covering(Temperature minimum, FrostSensor sensor)
    {
        Guard.Defined(sensor);
        NightCelsius.Air(minimum, nameof(minimum));
        return ValueList<FrostDefinition>.Of([.. All.Where(definition => definition.Sensor == sensor && definition.Covers(minimum))]);
    }

    private static FrostDefinition Fahrenheit(string term, double warmest, double? coldest, Source source) => new(
        term,
        FrostSensor.Air,
        Temperature.FromDegreesFahrenheit(warmest),
        true,
        coldest is double low ? Temperature.FromDegreesFahrenheit(low) : null,
        isInWholeFahrenheit: true,
        source);

    private static FrostDefinition Celsius(string term, FrostSensor sensor, double warmest, bool isIncluded, Source source) =>
        new(term, sensor, Temperature.FromDegreesCelsius(warmest), isIncluded, null, isInWholeFahrenheit: false, source);
}
