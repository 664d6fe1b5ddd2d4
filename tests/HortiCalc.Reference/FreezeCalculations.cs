using System.Globalization;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Reference;

internal static class FreezeCalculations
{
    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        // Dates of a printed table, chance over all seasons; the others of its row must follow.
        ["freeze.last-date-from-table"] = inputs =>
            Of(LastSpringFreeze.FromTable(Table(inputs), Share(inputs)).DateWithChanceOfLaterFreeze(Percent(inputs, "chance_pct"))),
        ["freeze.first-date-from-table"] = inputs =>
            Of(FirstAutumnFreeze.FromTable(Table(inputs), Share(inputs)).DateWithChanceOfEarlierFreeze(Percent(inputs, "chance_pct"))),

        // So many events in a record: the chance of one or more in the years to come.
        ["freeze.chance-over-years"] = inputs => YearlyChance.AtLeastOnceIn(
            (int)inputs.Number("years"), Ratio.FromDecimalFractions(inputs.Number("events") / inputs.Number("record_years"))).DecimalFractions,

        // Printed lengths between two printed dates.
        ["freeze.season-length"] = inputs => Of(new FreezeFreePeriod(
            new DateOnly(inputs.Date("last").Year, 8, 1), inputs.Date("last"), inputs.Date("first"))),
    };

    private static List<TabulatedFreezeDate> Table(Inputs inputs) =>
    [
        .. inputs["table_pct"].Split('|').Select(level => level.Split(':')).Select(pair => new TabulatedFreezeDate(
            Ratio.FromPercent(double.Parse(pair[0], CultureInfo.InvariantCulture)), pair[1] == "none" ? null : MonthDay.Parse(pair[1]))),
    ];

    private static Ratio? Share(Inputs inputs) => inputs.Has("share_pct") ? Percent(inputs, "share_pct") : null;

    private static Ratio Percent(Inputs inputs, string name) => Ratio.FromPercent(inputs.Number(name));

    private static Computed Of(FreezeFreePeriod period) => period.Length.Days;

    private static Computed Of(Estimate<MonthDay>? date) => date is null ? new Computed(double.NaN, "none") : date.Value.InYear(2001);
}
