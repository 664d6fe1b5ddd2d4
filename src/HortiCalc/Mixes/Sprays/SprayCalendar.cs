using System.Globalization;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Dates of sprays: when again, when to go in, when to pick. The later of all labels counts.</summary>
/// <remarks>
/// Re-entry and days to harvest are two clocks, and both come from the label. With several products the longest of each counts, and nobody picks
/// before entry is allowed (Washington State University).
/// </remarks>
/// <example><code>
/// SprayWait wait = SprayCalendar.After(
///     new DateTime(2027, 6, 1, 18, 0, 0),
///     new SprayedProduct("sulfur", Duration.FromHours(24), daysToHarvest: 0),
///     new SprayedProduct("soap", Duration.FromHours(12), daysToHarvest: 1));
/// Console.WriteLine(wait.EntryFrom);     // 2 June, 18:00, and harvest from then on too
/// </code></example>
public static class SprayCalendar
{
    private static readonly Method Categories = new(
        "restricted-entry.by-category",
        "least restricted entry interval by acute category",
        SpraySources.EntryByCategory,
        new Domain("US labels that give no other; the label's own interval decides"));

    /// <summary>The least interval of restricted entry by the category of what is sprayed.</summary>
    /// <param name="category">The category.</param>
    /// <returns>12, 24, 48 or 72 hours; the label's own interval decides.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The category is not one of the defined ones.</exception>
    public static Estimate<Duration> LeastRestrictedEntry(ToxicityCategory category) => new(
        Duration.FromHours(Guard.Defined(category) switch
        {
            ToxicityCategory.ThreeOrFour => 12,
            ToxicityCategory.Two => 24,
            ToxicityCategory.One => 48,
            _ => 72,
        }),
        Categories,
        cautions: [MixCautions.LabelDecides]);

    /// <summary>When to go in and when to pick after a spray of one or several products.</summary>
    /// <param name="end">When spraying ended.</param>
    /// <param name="products">What was sprayed; at least one.</param>
    /// <returns>
    /// Entry after the longest interval; harvest after the longest number of days, of 24 hours each from the end of spraying, and never before
    /// entry.
    /// </returns>
    /// <exception cref="ArgumentException">There is no product.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The time is too late for the calendar.</exception>
    public static SprayWait After(DateTime end, params IReadOnlyList<SprayedProduct> products)
    {
        if (Guard.NotNull(products).Count == 0)
            throw new ArgumentException("products was empty; allowed: at least one.", nameof(products));
        DateTime entry = end.AddTicks(products.Max(EntryTicks));
        DateTime harvest = end.AddDays(products.Max(product => product.DaysToHarvest));
        return new SprayWait(entry, harvest > entry ? harvest : entry);
    }

    /// <summary>The last moment at which spraying may end before a harvest that is planned; the inverse of <see cref="After"/>.</summary>
    /// <param name="harvest">The moment at which harvest begins.</param>
    /// <param name="products">What will be sprayed; at least one.</param>
    /// <returns>The moment: harvest less the longest days to harvest, of 24 hours each, or the longest re-entry, whichever is more.</returns>
    /// <exception cref="ArgumentException">There is no product.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The time is too early for the calendar.</exception>
    /// <example><code>
    /// DateTime end = SprayCalendar.LastEndBefore(
    ///     new DateTime(2027, 6, 8, 9, 0, 0), new SprayedProduct("soap", Duration.FromHours(12), daysToHarvest: 1));   // 7 June, 9:00
    /// </code></example>
    public static DateTime LastEndBefore(DateTime harvest, params IReadOnlyList<SprayedProduct> products)
    {
        if (Guard.NotNull(products).Count == 0)
            throw new ArgumentException("products was empty; allowed: at least one.", nameof(products));
        return harvest.AddTicks(-products.Max(product => Math.Max(EntryTicks(product), product.DaysToHarvest * TimeSpan.TicksPerDay)));
    }

    /// <summary>The last day to spray before a harvest that is planned, by whole days.</summary>
    /// <remarks>
    /// The hour counts too: whoever ends at six in the evening of this day picks from six in the evening of the day of harvest.
    /// <see cref="LastEndBefore"/> takes the hour.
    /// </remarks>
    /// <param name="harvest">The day of harvest.</param>
    /// <param name="products">What will be sprayed; at least one.</param>
    /// <returns>The day: harvest less the longest days to harvest or the whole days that re-entry takes, whichever is more.</returns>
    /// <exception cref="ArgumentException">There is no product.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The day is too early for the calendar.</exception>
    public static DateOnly LastDayBefore(DateOnly harvest, params IReadOnlyList<SprayedProduct> products)
    {
        if (Guard.NotNull(products).Count == 0)
            throw new ArgumentException("products was empty; allowed: at least one.", nameof(products));
        int days = products.Max(product => Math.Max(product.DaysToHarvest, (int)Math.Ceiling(Boundary.Days(product.RestrictedEntry) - 1e-9)));
        return harvest.AddDays(-days);
    }

    /// <summary>The days of a spray that is repeated.</summary>
    /// <param name="first">The first day.</param>
    /// <param name="days">Days between two; 1 or more.</param>
    /// <param name="last">No spray after this day; not before the first.</param>
    /// <param name="most">The most sprays that the label allows; 1 or more.</param>
    /// <returns>The days, in order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number or the last day is outside what is allowed.</exception>
    public static IReadOnlyList<DateOnly> Repeat(DateOnly first, int days, DateOnly last, int most)
    {
        Guard.AtLeast(days, 1);
        Guard.AtLeast(most, 1);
        if (last < first)
        {
            throw new ArgumentOutOfRangeException(
                nameof(last),
                string.Create(CultureInfo.InvariantCulture, $"last was {last:yyyy-MM-dd}; allowed: {first:yyyy-MM-dd} or later."));
        }

        int count = (int)Math.Min(most, ((last.DayNumber - first.DayNumber) / days) + 1L);
        return ValueList<DateOnly>.Of(Enumerable.Range(0, count).Select(spray => first.AddDays(spray * days)));
    }

    private static long EntryTicks(SprayedProduct product) => (long)Math.Ceiling((Boundary.Days(product.RestrictedEntry) * TimeSpan.TicksPerDay) - 0.5);
}
