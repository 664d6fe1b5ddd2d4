using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>A published response of the potato to temperature, from 0 at a minimum and a maximum to 10 at an optimum.</summary>
/// <remarks>
/// Two parabolas that meet at the optimum: P = 10 (1 − ((T − optimum)/(optimum − minimum))²) below it, with the maximum above it. Both prints
/// count a day as (5 P(T1) + 8 P(T2) + 8 P(T3) + 3 P(T4)) / 24, with T1 the day's minimum, T4 its maximum and T2, T3 a third and two thirds
/// between. The weights and the Celsius response are repeated by two public programs of the University of Wisconsin, though those put the minimum in
/// the place of T4.
/// </remarks>
public sealed record PhysiologicalDayMethod
{
    private static readonly Source CropWatch = new(
        "nebraska-physiological-days",
        "Physiological days",
        "University of Nebraska-Lincoln, CropWatch",
        null,
        "https://cropwatch.unl.edu/potato/physiological_days");

    private static readonly Source Pscheidt = new(
        "pscheidt-stevenson-1986",
        "Comparison of forecasting methods for control of potato early blight in Wisconsin",
        "Plant Disease 70:915-920",
        1986,
        "http://www.apsnet.org/publications/PlantDisease/BackIssues/Documents/1986Abstracts/PD_70_915.htm",
        SourceKind.FromMemory);

    private readonly double minimum;
    private readonly double optimum;
    private readonly double maximum;
    private readonly bool isFahrenheit;

    private PhysiologicalDayMethod(string key, string name, Source source, double minimum, double optimum, double maximum, bool isFahrenheit)
    {
        Evidence = new Method(key, name, source, new Domain("potato, shaded air temperature"));
        this.minimum = minimum;
        this.optimum = optimum;
        this.maximum = maximum;
        this.isFahrenheit = isFahrenheit;
    }

    /// <summary>
    /// As the University of Nebraska prints it: 45, 70 and 86 °F. The print is for whole degrees: between 44 and 45 °F its tests let the
    /// parabola go below zero, and between 85 and 86 °F they cut it off. Here it is zero below 45 °F and follows the parabola to its zero at 86 °F;
    /// on whole degrees that is the same.
    /// </summary>
    public static PhysiologicalDayMethod Fahrenheit { get; } = new(
        "physiological-days.fahrenheit", "physiological days of potato, 45, 70 and 86 °F", CropWatch, 45, 70, 86, isFahrenheit: true);

    /// <summary>The same response with 7, 21 and 30 °C (44.6, 69.8 and 86 °F), as most papers have it; from memory.</summary>
    public static PhysiologicalDayMethod Celsius { get; } = new(
        "physiological-days.celsius", "physiological days of potato, 7, 21 and 30 °C", Pscheidt, 7, 21, 30, isFahrenheit: false);

    /// <summary>Every method there is.</summary>
    public static IReadOnlyList<PhysiologicalDayMethod> All { get; } = ValueList<PhysiologicalDayMethod>.Of([Fahrenheit, Celsius]);

    /// <summary>The method's key, name and source.</summary>
    public Method Evidence { get; }

    /// <summary>Finds a method by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentException">There is no such method, or the key is empty.</exception>
    public static PhysiologicalDayMethod FromKey(string key) => Keyed.Find(All, method => method.Evidence.Key, key);

    /// <summary>The method's name.</summary>
    /// <returns>For instance <c>physiological days of potato, 7, 21 and 30 °C</c>.</returns>
    public override string ToString() => Evidence.Name;

    internal double Response(double celsius)
    {
        double temperature = isFahrenheit ? Boundary.FahrenheitFromCelsius(celsius) : celsius;
        double share = temperature < optimum ? (optimum - temperature) / (optimum - minimum) : (temperature - optimum) / (maximum - optimum);
        return share < 1 ? 10 * (1 - share * share) : 0;
    }

    internal double Days(double minimumCelsius, double maximumCelsius) =>
        (5 * Response(minimumCelsius)
            + 8 * Response((2 * minimumCelsius + maximumCelsius) / 3)
            + 8 * Response((minimumCelsius + 2 * maximumCelsius) / 3)
            + 3 * Response(maximumCelsius)) / 24;
}
