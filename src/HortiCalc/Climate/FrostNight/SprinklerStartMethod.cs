using HortiCalc.Evidence;
using HortiCalc.Units;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>How the air temperature is found at which the wet bulb falls to the critical temperature, so that water must run.</summary>
public sealed record SprinklerStartMethod
{
    private const double LowestCriticalCelsius = -10;
    private const double HighestCriticalCelsius = 5;

    // Air without any vapour at 50 kPa cools by no more than this to a wet bulb of 5 °C.
    private const double DeepestDepressionCelsius = 40;

    private readonly Func<SprinklerStartMethod, double, double, double, double> startCelsius;

    private SprinklerStartMethod(Method evidence, Func<SprinklerStartMethod, double, double, double, double> startCelsius)
    {
        Evidence = evidence;
        this.startCelsius = startCelsius;
    }

    /// <summary>
    /// The root of the psychrometric equation, for a ventilated wet bulb over water. The default: it holds for any critical temperature, dew point
    /// and altitude, and the tables follow it. Strictly the bulb freezes below 0 °C; the difference is lost in the other errors of a night.
    /// </summary>
    public static SprinklerStartMethod Psychrometric { get; } = new(
        new Method(
            "sprinkler-start.psychrometric",
            "psychrometric equation",
            FrostNightSources.Fao,
            new Domain(
                "ventilated wet bulb over water",
                new DomainLimit("criticalTemperature", LowestCriticalCelsius, HighestCriticalCelsius, "°C"),
                new DomainLimit("dewPoint", -40, 60, "°C"),
                new DomainLimit("airPressure", 50, 110, "kPa"))),
        Root);

    /// <summary>A third of the way from air to dew point: wet bulb = T − (T − dew point)/3, near 0 °C.</summary>
    public static SprinklerStartMethod OneThirdRule { get; } = new(
        new Method(
            "sprinkler-start.one-third",
            "one-third rule of the wet bulb",
            FrostNightSources.Knox,
            new Domain(
                "moist air near 0 °C",
                new DomainLimit("criticalTemperature", LowestCriticalCelsius, HighestCriticalCelsius, "°C"))),
        static (_, dewPoint, critical, _) => Math.Max(critical, (3 * critical - dewPoint) / 2));

    /// <summary>The table of Ontario, for a wet bulb of 0 °C; between its lines on a straight line.</summary>
    public static SprinklerStartMethod OntarioTable { get; } = Table(
        "sprinkler-start.ontario",
        "starting temperatures of Ontario",
        FrostNightSources.OntarioStart,
        [-8.3, -6.7, -5.5, -4.4, -3.8, -2.8, -1.7, -1.1],
        [4.4, 3.8, 3.3, 2.7, 1.6, 1.1, 0.5, 0]);

    /// <summary>
    /// The table of an American grower's article, for a wet bulb of 0 °C, printed in °F: it starts 1.1 to 1.4 °C warmer than the equation.
    /// </summary>
    public static SprinklerStartMethod GrowerArticleTable { get; } = Table(
        "sprinkler-start.grower-article",
        "starting temperatures of a grower's article",
        FrostNightSources.GrowerArticleStart,
        [.. ((double[])[26, 28, 29, 31, 32]).Select(Boundary.CelsiusFromFahrenheit)],
        [.. ((double[])[38, 37, 36, 35, 34]).Select(Boundary.CelsiusFromFahrenheit)]);

    /// <summary>Every method there is.</summary>
    public static IReadOnlyList<SprinklerStartMethod> All { get; } =
        ValueList<SprinklerStartMethod>.Of([Psychrometric, OneThirdRule, OntarioTable, GrowerArticleTable]);

    /// <summary>The method's key, name, source and domain.</summary>
    public Method Evidence { get; }

    /// <summary>Finds a method by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentException">There is no such method, or the key is empty.</exception>
    public static SprinklerStartMethod FromKey(string key) => Keyed.Find(All, method => method.Evidence.Key, key);

    /// <summary>The method's name.</summary>
    /// <returns>For instance <c>psychrometric equation</c>.</returns>
    public override string ToString() => Evidence.Name;

    internal double StartCelsius(double dewPointCelsius, double criticalCelsius, double airKilopascals) =>
        startCelsius(this, dewPointCelsius, criticalCelsius, airKilopascals);

    private static double Root(SprinklerStartMethod method, double dewPoint, double critical, double airKilopascals)
    {
        // Air that is as moist as that is saturated when it comes down to the critical temperature: bulb and air are one.
        if (dewPoint >= critical)
            return critical;
        Pressure pressure = Pressure.FromKilopascals(airKilopascals);
        Temperature dew = Temperature.FromDegreesCelsius(dewPoint);
        return Brent.FindRoot(
            air => Boundary.Celsius(MoistAir.FromDewPoint(Temperature.FromDegreesCelsius(air), dew, pressure).WetBulb()) - critical,
            critical,
            critical + DeepestDepressionCelsius,
            1e-10,
            200);
    }

    private static SprinklerStartMethod Table(string key, string name, Source source, double[] dewPoints, double[] starts) => new(
        new Method(
            key,
            name,
            source,
            new Domain(
                "strawberries, wet bulb of 0 °C",
                new DomainLimit("criticalTemperature", 0, 0, "°C"),
                new DomainLimit("dewPoint", dewPoints[0], dewPoints[^1], "°C"))),
        (_, dewPoint, _, _) =>
        {
            int above = Math.Clamp(Array.FindIndex(dewPoints, printed => printed >= dewPoint), 1, dewPoints.Length - 1);
            double way = (dewPoint - dewPoints[above - 1]) / (dewPoints[above] - dewPoints[above - 1]);
            return starts[above - 1] + (starts[above] - starts[above - 1]) * way;
        });
}
