using HortiCalc.Climate;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>What the daily record tells, worked out once for each temperature that is asked for.</summary>
internal sealed class SeasonClimate(DailyTemperatures days, SeasonCalendar calendar)
{
    private readonly Dictionary<double, ColdNights> nights = [];
    private NormalWarmth? warmth;

    public DailyTemperatures Days => days;

    public SeasonCalendar Calendar => calendar;

    public NormalWarmth Warmth => warmth ??= new NormalWarmth(days);

    public ColdNights NightsAt(Temperature threshold)
    {
        double celsius = Units.Boundary.Celsius(threshold);
        if (!nights.TryGetValue(celsius, out ColdNights? known))
            nights[celsius] = known = new ColdNights(days, threshold, calendar);
        return known;
    }
}
