using System.Runtime.CompilerServices;

namespace HortiCalc.Climate;

/// <summary>
/// A weight an hour by bands of temperature: the weight of the lowest band, and at each limit a step. A limit belongs to the band below it;
/// <see cref="At"/> moves it to the band above.
/// </summary>
internal readonly struct BandRule(double lowestWeight, params (double LimitCelsius, double Weight)[] bands) : IHourlyRule
{
    private readonly double lowestWeight = lowestWeight;
    private readonly double[] limitsCelsius = [.. bands.Select(band => band.LimitCelsius)];
    private readonly double[] steps = [.. bands.Select((band, index) => band.Weight - (index == 0 ? lowestWeight : bands[index - 1].Weight))];

    /// <summary>The limit just below a temperature, so that the temperature itself is above it.</summary>
    public static double At(double celsius) => Math.BitDecrement(celsius);

    public static bool KeepsState => false;

    public static bool WaitsForMemory => true;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TLanes Add<TLanes>(TLanes celsius, ref TLanes state)
        where TLanes : struct, IStationLanes<TLanes>
    {
        TLanes weight = TLanes.All(lowestWeight);
        for (int band = 0; band < limitsCelsius.Length; band++)
            weight += TLanes.WhereAbove(celsius, TLanes.All(limitsCelsius[band]), TLanes.All(steps[band]), TLanes.All(0));
        return weight;
    }
}
