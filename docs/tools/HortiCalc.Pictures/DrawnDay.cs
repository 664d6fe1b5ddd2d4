using HortiCalc.Climate;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Pictures;

/// <summary>A day with its thresholds, in °C, as it is drawn: coldest at hour 0, warmest at hour 12.</summary>
internal sealed record DrawnDay(double Minimum, double Maximum, double NextMinimum, double Lower, double Upper)
{
    public double Mean => (Minimum + Maximum) / 2;

    /// <summary>The maximum, or as far below the upper threshold as it is above.</summary>
    public double ReflectedMaximum => Math.Min(Maximum, 2 * Upper - Maximum);

    /// <summary>What the library counts.</summary>
    public ThermalTime Count(DegreeDayMethod method, UpperCutoff cutoff) => DegreeDays.OfDay(
        Temperature.FromDegreesCelsius(Minimum),
        Temperature.FromDegreesCelsius(Maximum),
        new DegreeDayThresholds(Temperature.FromDegreesCelsius(Lower), Temperature.FromDegreesCelsius(Upper)),
        method,
        cutoff,
        Temperature.FromDegreesCelsius(NextMinimum));

    /// <summary>The temperature at an hour, by the course that a method draws through the extremes.</summary>
    public double At(double hour, DegreeDayMethod method)
    {
        bool twice = method == DegreeDayMethod.DoubleSine || method == DegreeDayMethod.DoubleTriangle;
        bool straight = method == DegreeDayMethod.SingleTriangle || method == DegreeDayMethod.DoubleTriangle;
        double low = twice && hour > 12 ? NextMinimum : Minimum;
        double share = straight ? 1 - Math.Abs(hour - 12) / 12 : (1 - Math.Cos(hour * Math.PI / 12)) / 2;
        return low + (Maximum - low) * share;
    }
}
