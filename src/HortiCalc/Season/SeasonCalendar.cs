using HortiCalc.Climate;

namespace HortiCalc.Season;

/// <summary>Puts days of the year into one season: in the north all in one calendar year or nearly so, in the south across New Year.</summary>
/// <param name="SpringYear">The calendar year in which spring falls.</param>
/// <param name="Hemisphere">The hemisphere.</param>
internal sealed record SeasonCalendar(int SpringYear, Hemisphere Hemisphere)
{
    public static SeasonCalendar Of(Garden garden) => new(garden.SpringYear, Hemispheres.At(garden.Site.Latitude));

    /// <summary>Where cold seasons are cut: in the height of summer, as in the freeze climate.</summary>
    public MonthDay Cut => Hemisphere == Hemisphere.Northern ? new MonthDay(8, 1) : new MonthDay(2, 1);

    /// <summary>The first day of the cold season whose end is this spring.</summary>
    public DateOnly WinterBefore => Cut.InYear(Hemisphere == Hemisphere.Northern ? SpringYear - 1 : SpringYear);

    /// <summary>The first day of the cold season that follows this summer.</summary>
    public DateOnly WinterAfter => WinterBefore.AddYears(1);

    public DateOnly Spring(MonthDay day) => OnOrAfter(WinterBefore, day);

    public DateOnly Autumn(MonthDay day) => OnOrAfter(WinterAfter, day);

    private static DateOnly OnOrAfter(DateOnly start, MonthDay day)
    {
        DateOnly date = day.InYear(start.Year);
        return date >= start ? date : day.InYear(start.Year + 1);
    }
}
