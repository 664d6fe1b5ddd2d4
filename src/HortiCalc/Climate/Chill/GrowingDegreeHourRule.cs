using System.Runtime.CompilerServices;

namespace HortiCalc.Climate;

/// <summary>
/// Growing degree hours between 4, 25 and 36 °C: a half cosine up to the optimum and a quarter one down, 21 an hour at the optimum.
/// </summary>
internal readonly struct GrowingDegreeHourRule : IHourlyRule
{
    public const double BaseCelsius = 4;
    public const double OptimumCelsius = 25;
    public const double CriticalCelsius = 36;
    private const double RiseCelsius = OptimumCelsius - BaseCelsius;
    private const double FallCelsius = CriticalCelsius - OptimumCelsius;

    public static bool KeepsState => false;

    public static bool WaitsForMemory => false;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TLanes Add<TLanes>(TLanes celsius, ref TLanes state)
        where TLanes : struct, IStationLanes<TLanes>
    {
        // Below the optimum 21/2 (1 + cos(pi + pi (T-4)/21)); above it 21 (1 + cos(pi/2 + pi/2 (T-25)/11)).
        TLanes optimum = TLanes.All(OptimumCelsius);
        TLanes angle = TLanes.WhereAbove(
            celsius,
            optimum,
            TLanes.All(Math.PI / 2) + TLanes.All(Math.PI / 2 / FallCelsius) * (celsius - optimum),
            TLanes.All(Math.PI) + TLanes.All(Math.PI / RiseCelsius) * (celsius - TLanes.All(BaseCelsius)));
        TLanes half = TLanes.WhereAbove(celsius, optimum, TLanes.All(RiseCelsius), TLanes.All(RiseCelsius / 2));
        TLanes hours = half * (TLanes.All(1) + TLanes.Cos(angle));
        TLanes zero = TLanes.All(0);
        return TLanes.WhereAbove(celsius, TLanes.All(BaseCelsius), TLanes.WhereAbove(TLanes.All(CriticalCelsius), celsius, hours, zero), zero);
    }
}
