using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace HortiCalc.Climate;

/// <summary>
/// Humidity of each member of a series over water. No allocation, no state, the same bits whatever the split; a missing number (NaN) in, a
/// missing one out. Between processors and from one number alone the results may differ by some units of the last place.
/// </summary>
internal static class HumidityKernels
{
    /// <summary>The least relative humidity that has a dew point, in percent.</summary>
    private const double LeastPercent = 1e-9;

    /// <summary>Computes by the widest lanes that the processor itself has.</summary>
    /// <returns>Whether every input was missing or within its limits.</returns>
    public static bool Run<TFormula>(
        HumiditySeries series, TFormula formula, ReadOnlySpan<double> first, ReadOnlySpan<double> second, HumidityScale scale, Span<double> destination)
        where TFormula : struct, ISaturationFormula =>
        Vector512.IsHardwareAccelerated ? Run<Lanes512, TFormula>(series, formula, first, second, scale, destination)
        : Vector256.IsHardwareAccelerated ? Run<Lanes256, TFormula>(series, formula, first, second, scale, destination)
        : Vector128.IsHardwareAccelerated ? Run<Lanes128, TFormula>(series, formula, first, second, scale, destination)
        : Run<SingleLane, TFormula>(series, formula, first, second, scale, destination);

    /// <summary>Computes by lanes of one width.</summary>
    public static bool Run<TLanes, TFormula>(
        HumiditySeries series, TFormula formula, ReadOnlySpan<double> first, ReadOnlySpan<double> second, HumidityScale scale, Span<double> destination)
        where TLanes : struct, IExponentialLanes<TLanes>
        where TFormula : struct, ISaturationFormula => series switch
        {
            HumiditySeries.SaturationVapourPressure => Run<TLanes, Saturation<TLanes, TFormula>>(new(formula), first, second, scale, destination),
            HumiditySeries.VapourPressureDeficit => Run<TLanes, Deficit<TLanes, TFormula>>(new(formula), first, second, scale, destination),
            HumiditySeries.DewPoint => Run<TLanes, Dew<TLanes, TFormula>>(new(formula), first, second, scale, destination),
            _ => Run<TLanes, Humidity<TLanes, TFormula>>(new(formula), first, second, scale, destination),
        };

    private static bool Run<TLanes, TStep>(
        TStep step, ReadOnlySpan<double> first, ReadOnlySpan<double> second, HumidityScale scale, Span<double> destination)
        where TLanes : struct, IExponentialLanes<TLanes>
        where TStep : struct, IStep<TLanes>
    {
        ref double a = ref MemoryMarshal.GetReference(first);
        ref double b = ref MemoryMarshal.GetReference(second);
        ref double to = ref MemoryMarshal.GetReference(destination);
        Units<TLanes> units = new(scale);
        TLanes worst = TLanes.All(0);

        int place = 0;
        for (; place <= destination.Length - TLanes.Width; place += TLanes.Width)
            step.Compute(TLanes.Load(ref a, place), TLanes.Load(ref b, place), units, ref worst).Store(ref to, place);

        // What does not fill the lanes is done one by one by the same operations, so that a split changes no bit.
        for (; place < destination.Length; place++)
        {
            TLanes alone = step.Compute(TLanes.All(Unsafe.Add(ref a, place)), TLanes.All(Unsafe.Add(ref b, place)), units, ref worst);
            Unsafe.Add(ref to, place) = alone.First;
        }

        return !TLanes.AnyAbove(worst, SaturationCurve.HairCelsius);
    }

    private interface IStep<TLanes>
        where TLanes : struct, IExponentialLanes<TLanes>
    {
        /// <summary>One result a lane; <paramref name="worst"/> is by how much an input was out of its limits so far.</summary>
        TLanes Compute(TLanes first, TLanes second, in Units<TLanes> units, ref TLanes worst);
    }

    /// <summary>The units and limits, in every lane.</summary>
    private readonly struct Units<TLanes>(HumidityScale scale)
        where TLanes : struct, IExponentialLanes<TLanes>
    {
        private readonly TLanes perCelsius = TLanes.All(scale.PerCelsius);
        private readonly TLanes atZeroCelsius = TLanes.All(scale.AtZeroCelsius);
        private readonly TLanes lowest = TLanes.All(scale.Lowest);
        private readonly TLanes highest = TLanes.All(scale.Highest);

        public readonly TLanes PerKilopascal = TLanes.All(scale.PerKilopascal);

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public TLanes Celsius(TLanes degrees, ref TLanes worst)
        {
            TLanes celsius = (degrees - atZeroCelsius) / perCelsius;
            Check(celsius, ref worst);
            return celsius;
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public void Check(TLanes celsius, ref TLanes worst) => worst = TLanes.Greater(celsius - highest, TLanes.Greater(lowest - celsius, worst));

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public TLanes Degrees(TLanes celsius) => celsius * perCelsius + atZeroCelsius;

        /// <summary>The share of saturation, from percent.</summary>
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public static TLanes Share(TLanes percent, double least, ref TLanes worst)
        {
            // Unlike a temperature, a humidity below the least is out by any hair.
            worst = TLanes.Greater((TLanes.All(least) - percent) * TLanes.All(1e30), TLanes.Greater(percent - TLanes.All(100), worst));
            return percent / TLanes.All(100);
        }
    }

    private readonly struct Saturation<TLanes, TFormula>(TFormula formula) : IStep<TLanes>
        where TLanes : struct, IExponentialLanes<TLanes>
        where TFormula : struct, ISaturationFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public TLanes Compute(TLanes first, TLanes second, in Units<TLanes> units, ref TLanes worst) =>
            formula.Kilopascals(units.Celsius(first, ref worst)) * units.PerKilopascal;
    }

    private readonly struct Deficit<TLanes, TFormula>(TFormula formula) : IStep<TLanes>
        where TLanes : struct, IExponentialLanes<TLanes>
        where TFormula : struct, ISaturationFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public TLanes Compute(TLanes first, TLanes second, in Units<TLanes> units, ref TLanes worst)
        {
            TLanes missing = TLanes.All(1) - Units<TLanes>.Share(second, 0, ref worst);
            return formula.Kilopascals(units.Celsius(first, ref worst)) * missing * units.PerKilopascal;
        }
    }

    private readonly struct Dew<TLanes, TFormula>(TFormula formula) : IStep<TLanes>
        where TLanes : struct, IExponentialLanes<TLanes>
        where TFormula : struct, ISaturationFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public TLanes Compute(TLanes first, TLanes second, in Units<TLanes> units, ref TLanes worst)
        {
            TLanes share = Units<TLanes>.Share(second, LeastPercent, ref worst);
            TLanes dewPoint = formula.Celsius(formula.Kilopascals(units.Celsius(first, ref worst)) * share);
            units.Check(dewPoint, ref worst);
            return units.Degrees(dewPoint);
        }
    }

    private readonly struct Humidity<TLanes, TFormula>(TFormula formula) : IStep<TLanes>
        where TLanes : struct, IExponentialLanes<TLanes>
        where TFormula : struct, ISaturationFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public TLanes Compute(TLanes first, TLanes second, in Units<TLanes> units, ref TLanes worst)
        {
            TLanes celsius = units.Celsius(first, ref worst);
            TLanes dewPoint = units.Celsius(second, ref worst);
            worst = TLanes.Greater(dewPoint - celsius, worst);
            return TLanes.All(100) * formula.Kilopascals(dewPoint) / formula.Kilopascals(celsius);
        }
    }
}
