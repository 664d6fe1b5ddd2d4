using System.Runtime.CompilerServices;

namespace HortiCalc.Climate;

/// <summary>
/// The form of Magnus and Tetens, a·exp(b·t/(c + t)), and Buck's extension of it, a·exp((b − t/d)·t/(c + t)). Both are inverted in closed form.
/// </summary>
/// <param name="a">The pressure at 0 °C, in kPa.</param>
/// <param name="b">The first coefficient of the exponent.</param>
/// <param name="c">The temperature in the exponent, in °C.</param>
/// <param name="bend">Buck's 1/d, per °C; 0 for Magnus.</param>
internal readonly struct MagnusFormula(double a, double b, double c, double bend) : ISaturationFormula
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TLanes Kilopascals<TLanes>(TLanes celsius)
        where TLanes : struct, IExponentialLanes<TLanes> =>
        TLanes.All(a) * TLanes.Exp((TLanes.All(b) - TLanes.All(bend) * celsius) * celsius / (TLanes.All(c) + celsius));

    // With y = ln(e/a): bend·t² + (y − b)·t + y·c = 0. The root near zero, in the form that does not cancel and holds for a bend of 0.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TLanes Celsius<TLanes>(TLanes kilopascals)
        where TLanes : struct, IExponentialLanes<TLanes>
    {
        TLanes y = TLanes.Log(kilopascals / TLanes.All(a));
        TLanes p = TLanes.All(b) - y;
        TLanes root = TLanes.Root(p * p - TLanes.All(4 * bend * c) * y);
        return TLanes.All(2 * c) * y / (p + root);
    }

    public double SlopeKilopascalsPerCelsius(double celsius)
    {
        double pressure = a * Math.Exp((b - bend * celsius) * celsius / (c + celsius));
        return pressure * ((b - 2 * bend * celsius) * (c + celsius) - (b - bend * celsius) * celsius) / ((c + celsius) * (c + celsius));
    }
}
