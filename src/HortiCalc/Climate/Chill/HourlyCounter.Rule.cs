using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace HortiCalc.Climate;

/// <summary>Counts one rule.</summary>
/// <param name="rule">What an hour adds.</param>
/// <param name="flooredByDay">Whether a day that adds less than nothing adds nothing.</param>
internal sealed class HourlyCounter<TRule>(TRule rule, bool flooredByDay) : HourlyCounter
    where TRule : struct, IHourlyRule
{
    public override void Series(ReadOnlySpan<double> celsius, int firstHourOfDay, Span<double> additions)
    {
        Stations1 state = Stations1.All(0);
        double day = 0;
        int lastKnown = -1;
        for (int hour = 0; hour < celsius.Length; hour++)
        {
            double addition = double.IsNaN(celsius[hour]) ? double.NaN : rule.Add(Stations1.All(celsius[hour]), ref state).Value;
            additions[hour] = addition;
            if (!flooredByDay)
                continue;

            // The whole of the day is added with its last known hour.
            if (!double.IsNaN(addition))
            {
                day += addition;
                additions[hour] = 0;
                lastKnown = hour;
            }

            if (lastKnown >= 0 && ((firstHourOfDay + hour) % 24 == 23 || hour == celsius.Length - 1))
            {
                additions[lastKnown] = Math.Max(0, day);
                day = 0;
                lastKnown = -1;
            }
        }
    }

    public override void Stations(
        ReadOnlySpan<double> temperatures,
        int stations,
        double shift,
        double factor,
        int firstHourOfDay,
        Span<double> totals,
        Span<int> missingHours)
    {
        int done = 0;
        if (Vector512.IsHardwareAccelerated)
        {
            // An hour of many stations is far from the next in memory: the more of it is read at once, the better memory keeps up. A rule that
            // computes much would only run out of registers.
            if (TRule.WaitsForMemory)
                done = Blocks<StationPair<StationPair<Stations512>>>(temperatures, stations, done, shift, factor, firstHourOfDay, totals, missingHours);
            done = Blocks<StationPair<Stations512>>(temperatures, stations, done, shift, factor, firstHourOfDay, totals, missingHours);
            done = Blocks<Stations512>(temperatures, stations, done, shift, factor, firstHourOfDay, totals, missingHours);
        }

        if (Vector256.IsHardwareAccelerated)
        {
            done = Blocks<StationPair<Stations256>>(temperatures, stations, done, shift, factor, firstHourOfDay, totals, missingHours);
            done = Blocks<Stations256>(temperatures, stations, done, shift, factor, firstHourOfDay, totals, missingHours);
        }

        Blocks<Stations1>(temperatures, stations, done, shift, factor, firstHourOfDay, totals, missingHours);
    }

    /// <summary>Counts as many whole blocks of stations as there are; says which station comes next.</summary>
    internal int Blocks<TLanes>(
        ReadOnlySpan<double> temperatures,
        int stations,
        int next,
        double shift,
        double factor,
        int firstHourOfDay,
        Span<double> totals,
        Span<int> missingHours)
        where TLanes : struct, IStationLanes<TLanes>
    {
        int hours = stations == 0 ? 0 : temperatures.Length / stations;
        Span<double> gaps = stackalloc double[TLanes.Width];
        ref double first = ref MemoryMarshal.GetReference(temperatures);
        TLanes zero = TLanes.All(0);
        TLanes one = TLanes.All(1);

        // Out of the object and into registers.
        TRule counted = rule;
        bool floored = flooredByDay;
        for (; next + TLanes.Width <= stations; next += TLanes.Width)
        {
            TLanes state = zero;
            TLanes total = zero;
            TLanes day = zero;
            TLanes missing = zero;
            for (int hour = 0; hour < hours; hour++)
            {
                TLanes celsius = TLanes.Load(ref Unsafe.Add(ref first, (nint)hour * stations + next));
                if (shift != 0)
                    celsius = (celsius - TLanes.All(shift)) / TLanes.All(factor);
                TLanes before = state;
                TLanes addition = TLanes.WhereKnown(celsius, counted.Add(celsius, ref state), zero);
                if (TRule.KeepsState)
                    state = TLanes.WhereKnown(celsius, state, before);
                missing += TLanes.WhereKnown(celsius, zero, one);
                if (!floored)
                {
                    total += addition;
                    continue;
                }

                day += addition;
                if ((firstHourOfDay + hour) % 24 != 23 && hour != hours - 1)
                    continue;
                total += TLanes.Larger(day, zero);
                day = zero;
            }

            TLanes.Store(total, ref totals[next]);
            TLanes.Store(missing, ref gaps[0]);
            for (int lane = 0; lane < TLanes.Width; lane++)
                missingHours[next + lane] = (int)gaps[lane];
        }

        return next;
    }
}
