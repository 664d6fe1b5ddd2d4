using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>One saturation curve, over water or over ice, with what it was published for.</summary>
internal abstract class SaturationCurve
{
    /// <summary>
    /// A temperature converted from another unit, or found by inversion, may be off its limit by this much and counts as on it.
    /// </summary>
    public const double HairCelsius = 1e-9;

    /// <param name="evidence">The method. Its limit on temperature, in °C, is where the curve holds; without one, so does air in the open.</param>
    protected SaturationCurve(Method evidence)
    {
        Evidence = evidence;
        DomainLimit? limit = evidence.Domain.Limits.SingleOrDefault(one => one.Parameter == "temperature");
        LowestCelsius = limit?.Low ?? AirTemperature.LowestCelsius;
        HighestCelsius = limit?.High ?? AirTemperature.HighestCelsius;
    }

    public Method Evidence { get; }

    public double LowestCelsius { get; }

    public double HighestCelsius { get; }

    public bool Holds(double celsius) => celsius >= LowestCelsius - HairCelsius && celsius <= HighestCelsius + HairCelsius;

    /// <summary>The temperature, where the curve holds; on a limit, where a hair is all that parts it from it.</summary>
    public double Require(double celsius, string parameter) => Holds(celsius)
        ? Math.Clamp(celsius, LowestCelsius, HighestCelsius)
        : throw Guard.Refused(
            parameter,
            celsius,
            "°C",
            $"from {Guard.Number(LowestCelsius)} to {Guard.Number(HighestCelsius)} °C, which is what '{Evidence.Name}' was published for");

    /// <summary>The temperature at which this vapour pressure saturates, where that is one at which the curve holds.</summary>
    public double RequireCelsius(double kilopascals, string parameter)
    {
        double celsius = Celsius(kilopascals);
        return Holds(celsius)
            ? Math.Clamp(celsius, LowestCelsius, HighestCelsius)
            : throw Guard.Refused(
                parameter,
                kilopascals,
                "kPa",
                $"from {Guard.Number(Kilopascals(LowestCelsius))} to {Guard.Number(Kilopascals(HighestCelsius))} kPa, saturated "
                + $"from {Guard.Number(LowestCelsius)} to {Guard.Number(HighestCelsius)} °C, which is what '{Evidence.Name}' was published for");
    }

    public abstract double Kilopascals(double celsius);

    public abstract double Celsius(double kilopascals);

    public abstract double SlopeKilopascalsPerCelsius(double celsius);

    /// <summary>Computes a series; see <see cref="HumidityKernels"/>.</summary>
    /// <returns>Whether every input was missing or within its limits.</returns>
    public abstract bool Run(HumiditySeries series, ReadOnlySpan<double> first, ReadOnlySpan<double> second, HumidityScale scale, Span<double> destination);
}
