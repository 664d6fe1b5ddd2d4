using System.Runtime.CompilerServices;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>
/// The form of Hyland and Wexler: ln p = c₁/T + c₂ + c₃T + c₄T² + c₅T³ + c₆T⁴ + c₇ ln T, with T in kelvins and p in pascals. Inverted by Newton's
/// method on ln p from a Magnus formula close by; the number of steps is fixed, so that plain numbers and lanes do the same.
/// </summary>
/// <param name="c1">Of 1/T.</param>
/// <param name="c2">The constant.</param>
/// <param name="c3">Of T.</param>
/// <param name="c4">Of T².</param>
/// <param name="c5">Of T³.</param>
/// <param name="c6">Of T⁴.</param>
/// <param name="c7">Of ln T.</param>
/// <param name="start">A formula that is within some degrees of this one.</param>
internal readonly struct HylandWexlerFormula(
    double c1, double c2, double c3, double c4, double c5, double c6, double c7, MagnusFormula start) : ISaturationFormula
{
    // The start is within 0.2 °C in the open and within 8 °C at 200 °C; the error squares with each step, times less than 0.01 per °C.
    private const int Steps = 5;

    private const double PascalsPerKilopascal = 1000;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TLanes Kilopascals<TLanes>(TLanes celsius)
        where TLanes : struct, IExponentialLanes<TLanes> =>
        TLanes.Exp(LogPascals(celsius + TLanes.All(Boundary.KelvinAtZeroCelsius))) / TLanes.All(PascalsPerKilopascal);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TLanes Celsius<TLanes>(TLanes kilopascals)
        where TLanes : struct, IExponentialLanes<TLanes>
    {
        TLanes target = TLanes.Log(kilopascals * TLanes.All(PascalsPerKilopascal));
        TLanes kelvin = start.Celsius(kilopascals) + TLanes.All(Boundary.KelvinAtZeroCelsius);
        for (int step = 0; step < Steps; step++)
            kelvin -= (LogPascals(kelvin) - target) / LogSlope(kelvin);
        return kelvin - TLanes.All(Boundary.KelvinAtZeroCelsius);
    }

    public double SlopeKilopascalsPerCelsius(double celsius)
    {
        SingleLane kelvin = new(celsius + Boundary.KelvinAtZeroCelsius);
        return Kilopascals(new SingleLane(celsius)).First * LogSlope(kelvin).First;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private TLanes LogPascals<TLanes>(TLanes kelvin)
        where TLanes : struct, IExponentialLanes<TLanes>
    {
        TLanes powers = ((TLanes.All(c6) * kelvin + TLanes.All(c5)) * kelvin + TLanes.All(c4)) * kelvin + TLanes.All(c3);
        return TLanes.All(c1) / kelvin + TLanes.All(c2) + powers * kelvin + TLanes.All(c7) * TLanes.Log(kelvin);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private TLanes LogSlope<TLanes>(TLanes kelvin)
        where TLanes : struct, IExponentialLanes<TLanes>
    {
        TLanes powers = ((TLanes.All(4 * c6) * kelvin + TLanes.All(3 * c5)) * kelvin + TLanes.All(2 * c4)) * kelvin + TLanes.All(c3);
        return powers + (TLanes.All(c7) - TLanes.All(c1) / kelvin) / kelvin;
    }
}
