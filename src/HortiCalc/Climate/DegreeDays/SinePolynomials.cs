using System.Runtime.CompilerServices;

namespace HortiCalc.Climate;

/// <summary>The two polynomials that stand for arc sine and cosine in the sine of a day, from t = 0 to 1.</summary>
/// <remarks>
/// Derived, rounded and measured by docs/tools/fit-sine-day.cs: the best of their degree by the greatest relative error. Even and odd
/// powers are summed apart, so that the processor works on both at once.
/// </remarks>
internal static class SinePolynomials<TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    /// <summary>(√(1 - x²) - x arccos x) / (π t√t), x = 1 - t.</summary>
    /// <remarks>Degree 17: off by a relative 5.72e-18 at most before rounding, and by 1.67 of the last place with it.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLanes Area(TLanes t)
    {
        TLanes square = t * t;
        TLanes even = TLanes.All(-6.95532303443632e-7);
        even = even * square + TLanes.All(-4.601798581509943e-6);
        even = even * square + TLanes.All(-6.259558155673449e-6);
        even = even * square + TLanes.All(-2.2178788938820395e-6);
        even = even * square + TLanes.All(1.8160077336611438e-6);
        even = even * square + TLanes.All(1.6261942575326325e-5);
        even = even * square + TLanes.All(0.00015541671681540452);
        even = even * square + TLanes.All(0.0024115615610214892);
        even = even * square + TLanes.All(0.3001054387190354);
        TLanes odd = TLanes.All(1.0167111663701822e-7);
        odd = odd * square + TLanes.All(2.2870238848947524e-6);
        odd = odd * square + TLanes.All(6.383953166592233e-6);
        odd = odd * square + TLanes.All(4.755201740468075e-6);
        odd = odd * square + TLanes.All(1.8635588594669205e-6);
        odd = odd * square + TLanes.All(5.851127130736647e-6);
        odd = odd * square + TLanes.All(4.841968512143482e-5);
        odd = odd * square + TLanes.All(0.0005582318475708609);
        odd = odd * square + TLanes.All(0.015005271935952852);
        return odd * t + even;
    }

    /// <summary>arccos(x) / (π √t), x = 1 - t.</summary>
    /// <remarks>Degree 19: off by a relative 2.47e-18 at most before rounding, and by 2.02 of the last place with it.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLanes Share(TLanes t)
    {
        TLanes square = t * t;
        TLanes even = TLanes.All(-8.025235472315061e-6);
        even = even * square + TLanes.All(-7.109835496580252e-5);
        even = even * square + TLanes.All(-0.0001357917826711687);
        even = even * square + TLanes.All(-8.115781769931801e-5);
        even = even * square + TLanes.All(-1.3629493908563836e-5);
        even = even * square + TLanes.All(1.904019336535445e-5);
        even = even * square + TLanes.All(0.00012202546586780683);
        even = even * square + TLanes.All(0.0008547923509938909);
        even = even * square + TLanes.All(0.008440465463859952);
        even = even * square + TLanes.All(0.4501581580785531);
        TLanes odd = TLanes.All(1.0096783089651127e-6);
        odd = odd * square + TLanes.All(3.0348617450080693e-5);
        odd = odd * square + TLanes.All(0.00011522009693465777);
        odd = odd * square + TLanes.All(0.00012094293508696524);
        odd = odd * square + TLanes.All(4.445266535078752e-5);
        odd = odd * square + TLanes.All(1.3964733322039906e-5);
        odd = odd * square + TLanes.All(4.93375760503457e-5);
        odd = odd * square + TLanes.All(0.0003147216910259926);
        odd = odd * square + TLanes.All(0.0025120432986670068);
        odd = odd * square + TLanes.All(0.03751317983988029);
        return odd * t + even;
    }
}
