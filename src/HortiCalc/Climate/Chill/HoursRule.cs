using System.Runtime.CompilerServices;

namespace HortiCalc.Climate;

/// <summary>
/// One for an hour above a limit and not above another, else nothing. The weights of <see cref="BandRule"/> for the two limits that it knows
/// beforehand, so that they stay in registers.
/// </summary>
internal readonly struct HoursRule(double aboveCelsius, double upToCelsius) : IHourlyRule
{
    public static bool KeepsState => false;

    public static bool WaitsForMemory => true;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TLanes Add<TLanes>(TLanes celsius, ref TLanes state)
        where TLanes : struct, IStationLanes<TLanes>
    {
        TLanes zero = TLanes.All(0);
        TLanes notTooWarm = TLanes.WhereAbove(celsius, TLanes.All(upToCelsius), zero, TLanes.All(1));
        return TLanes.WhereAbove(celsius, TLanes.All(aboveCelsius), notTooWarm, zero);
    }
}
