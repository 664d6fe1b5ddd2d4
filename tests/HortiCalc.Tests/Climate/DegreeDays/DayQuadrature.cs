using HortiCalc.Climate;
using MathNet.Numerics;
using MathNet.Numerics.RootFinding;

namespace HortiCalc.Tests.Climate;

/// <summary>
/// The degree days of a day by adaptive quadrature of half its course, from minimum to maximum (the other half mirrors it), between the
/// crossings of the thresholds, which are searched, not computed.
/// </summary>
internal static class DayQuadrature
{
    public static double Sine(double minimum, double maximum, double lower, double upper, UpperCutoff cutoff) => Area(
        time => (minimum + maximum) / 2 - (maximum - minimum) / 2 * Math.Cos(Math.PI * time), minimum, maximum, lower, upper, cutoff);

    public static double Triangle(double minimum, double maximum, double lower, double upper, UpperCutoff cutoff) =>
        Area(time => minimum + (maximum - minimum) * time, minimum, maximum, lower, upper, cutoff);

    private static double Area(
        Func<double, double> temperature, double minimum, double maximum, double lower, double upper, UpperCutoff cutoff)
    {
        double Crossing(double threshold) => threshold <= minimum ? 0
            : threshold >= maximum ? 1
            : Brent.FindRoot(time => temperature(time) - threshold, 0, 1, 1e-15, 1000);

        double rise = Crossing(lower);
        double top = Crossing(upper);
        double area = Part(time => temperature(time) - lower, maximum > lower ? rise : 1, maximum > upper ? top : 1);
        if (maximum > upper)
        {
            area += Part(
                time => cutoff switch
                {
                    UpperCutoff.None => temperature(time) - lower,
                    UpperCutoff.Horizontal => upper - lower,
                    UpperCutoff.Vertical => 0,
                    _ => upper - (temperature(time) - upper) - lower,
                },
                top,
                1);
        }

        return cutoff == UpperCutoff.Intermediate ? Math.Max(0, area) : area;
    }

    private static double Part(Func<double, double> rate, double from, double to) =>
        from < to ? Integrate.GaussKronrod(rate, from, to, 1e-13, 15, 21) : 0;
}
