using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>When the last freeze of the cold season comes, in or before spring: the date tender plants wait for.</summary>
/// <remarks>See <see cref="FreezeDateDistribution"/> for the two kinds of chance.</remarks>
/// <example><code>
/// LastSpringFreeze spring = LastSpringFreeze.FromTable(
/// [
///     new TabulatedFreezeDate(Ratio.FromPercent(10), new MonthDay(5, 10)),
///     new TabulatedFreezeDate(Ratio.FromPercent(50), new MonthDay(4, 25)),
///     new TabulatedFreezeDate(Ratio.FromPercent(90), new MonthDay(4, 10)),
/// ]);
/// Estimate&lt;MonthDay&gt;? plantOut = spring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(5));
/// Estimate&lt;Ratio&gt; risk = spring.ChanceOfFreezeAfter(new MonthDay(5, 1));
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record LastSpringFreeze : FreezeDateDistribution
{
    /// <summary>Puts a distribution together.</summary>
    /// <param name="shareOfSeasonsWithFreeze">The share of the seasons that have a freeze, from 0 % to 100 %.</param>
    /// <param name="givenAFreeze">The dates of the seasons with a freeze, for instance <see cref="NormalFreezeDates"/>; none where they are not known.</param>
    /// <param name="seasons">How many seasons it rests on, or <see langword="null"/> where that is not known.</param>
    /// <param name="fitError">The root mean square difference to a table it was fitted to.</param>
    /// <param name="cautions">What to take care of; <see langword="null"/> for the usual cautions.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is not from 0 % to 100 %, the seasons are fewer than 1, or the error is negative.</exception>
    /// <exception cref="ArgumentException">There are dates although no season has a freeze.</exception>
    public LastSpringFreeze(
        Ratio shareOfSeasonsWithFreeze,
        FreezeDates? givenAFreeze,
        int? seasons = null,
        Duration? fitError = null,
        IReadOnlyList<Caution>? cautions = null)
        : base(shareOfSeasonsWithFreeze, givenAFreeze, seasons, fitError, cautions)
    {
    }

    private protected override FreezeSide Side => FreezeSide.Spring;

    private protected override string Subject => "last freeze in spring";

    /// <summary>
    /// Continues a published table whose chances count all seasons, as the older national tables do: the chance that a freeze
    /// comes on the printed date or later.
    /// </summary>
    /// <param name="dates">Two or more dates of one threshold, in any order; levels printed without a date tell about the share and may be given too.</param>
    /// <param name="share">
    /// The share of seasons with a freeze, where it is known. Else it is estimated with the dates from three of them on, and
    /// taken as 100 % where the dates fit that to within 0.75 days, as far as whole days can tell.
    /// </param>
    /// <returns>The distribution through all dates by least squares, with the error of the fit.</returns>
    /// <exception cref="ArgumentNullException">The dates are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">
    /// There are fewer than two dates, a chance comes twice, the dates do not become earlier as the chance rises, or the table
    /// has levels without a date, two dates and no share.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">The share contradicts the table.</exception>
    public static LastSpringFreeze FromTable(IReadOnlyList<TabulatedFreezeDate> dates, Ratio? share = null)
    {
        FreezeTableFit fit = FreezeTableFit.Of(dates, share is Ratio given ? Boundary.Fraction(given) : null, direction: -1);
        return new LastSpringFreeze(Ratio.FromPercent(fit.Share * 100), fit.Spread, null, fit.FitError, fit.Cautions);
    }

    /// <summary>
    /// Continues a published table whose chances are given that the season has a freeze, as the 1981-2010 normals of the United
    /// States are.
    /// </summary>
    /// <param name="dates">Two or more dates of one threshold, in any order.</param>
    /// <param name="share">The share of seasons with a freeze, which such a table does not tell; above 0 %.</param>
    /// <returns>The distribution through all dates by least squares, with the error of the fit.</returns>
    /// <exception cref="ArgumentNullException">The dates are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">
    /// There are fewer than two dates, a level has none, a chance comes twice, or the dates do not become earlier as the chance rises.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">The share is not above 0 % and at most 100 %.</exception>
    public static LastSpringFreeze FromTableGivenAFreeze(IReadOnlyList<TabulatedFreezeDate> dates, Ratio share)
    {
        FreezeTableFit fit = FreezeTableFit.GivenAFreeze(dates, direction: -1);
        Guard.Positive(Boundary.Fraction(share) * 100, "%", nameof(share));
        return new LastSpringFreeze(share, fit.Spread, null, fit.FitError, fit.Cautions);
    }

    /// <summary>The date after which a freeze still comes in a given share of all seasons.</summary>
    /// <param name="chance">The chance, above 0 % and below 100 %, that the season has a freeze on the date or later. Seasons without a freeze count.</param>
    /// <returns>
    /// The date; <see langword="null"/> where there is none: so many seasons do not have a freeze at all
    /// (<paramref name="chance"/> is <see cref="FreezeDateDistribution.ShareOfSeasonsWithFreeze"/> or more, to a millionth), or the
    /// date would lie more than half a year from the middle one.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">The chance is not above 0 % and below 100 %.</exception>
    /// <exception cref="InvalidOperationException">The dates are not known; <see cref="FreezeDateDistribution.HasDates"/> is <see langword="false"/>.</exception>
    public Estimate<MonthDay>? DateWithChanceOfLaterFreeze(Ratio chance) => DateOverAllSeasons(chance);

    /// <summary>The date after which a freeze still comes in a given share of the seasons that have a freeze.</summary>
    /// <param name="chance">The chance, above 0 % and below 100 %, that the last freeze comes on the date or later, given that the season has one.</param>
    /// <returns>The date; <see langword="null"/> where no season has a freeze, or it would lie more than half a year from the middle one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The chance is not above 0 % and below 100 %.</exception>
    /// <exception cref="InvalidOperationException">The dates are not known; <see cref="FreezeDateDistribution.HasDates"/> is <see langword="false"/>.</exception>
    public Estimate<MonthDay>? DateWithChanceOfLaterFreezeGivenAFreeze(Ratio chance) => DateGivenAFreeze(chance);

    /// <summary>The chance that a season has a freeze on a day or later. Seasons without a freeze count.</summary>
    /// <param name="date">The day, taken in the year around the middle date.</param>
    /// <returns>The chance over all seasons.</returns>
    /// <exception cref="InvalidOperationException">The dates are not known; <see cref="FreezeDateDistribution.HasDates"/> is <see langword="false"/>.</exception>
    public Estimate<Ratio> ChanceOfFreezeAfter(MonthDay date) => ChanceOverAllSeasons(date);

    /// <summary>The chance that the last freeze comes on a day or later, given that the season has one.</summary>
    /// <param name="date">The day, taken in the year around the middle date.</param>
    /// <returns>The chance over the seasons with a freeze; <see langword="null"/> where no season has one.</returns>
    /// <exception cref="InvalidOperationException">The dates are not known; <see cref="FreezeDateDistribution.HasDates"/> is <see langword="false"/>.</exception>
    public Estimate<Ratio>? ChanceOfFreezeAfterGivenAFreeze(MonthDay date) => ChanceGivenAFreeze(date);

    /// <summary>The chance that at least one of so many seasons has a freeze on a day or later. Seasons without a freeze count.</summary>
    /// <param name="date">The day, taken in the year around the middle date.</param>
    /// <param name="years">How many years, 1 or more.</param>
    /// <returns>The chance over all those seasons, 1 - (1 - p)^n, alike and independent of one another.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The years are fewer than 1.</exception>
    /// <exception cref="InvalidOperationException">The dates are not known; <see cref="FreezeDateDistribution.HasDates"/> is <see langword="false"/>.</exception>
    public Estimate<Ratio> ChanceOfFreezeAfterInAnyOf(MonthDay date, int years) => OverYears(date, years);

    /// <summary>The earliest date to plant out tender plants: a freeze still comes on it or later in no more than the accepted share of all seasons.</summary>
    /// <param name="acceptedChance">The chance of a freeze after planting that is accepted, above 0 % and below 100 %.</param>
    /// <returns>The date; <see langword="null"/> where no date need be waited for, because a freeze is as rare as that all year.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The chance is not above 0 % and below 100 %.</exception>
    /// <exception cref="InvalidOperationException">The dates are not known; <see cref="FreezeDateDistribution.HasDates"/> is <see langword="false"/>.</exception>
    public Estimate<MonthDay>? EarliestSafePlanting(Ratio acceptedChance) => DateOverAllSeasons(acceptedChance);

    private protected override IEnumerable<DisplayRow> ChanceRows(TextStyle style) => !HasDates ? [] : FreezeDisplay.Rows(
        "chance of a freeze on or after", chance => DateWithChanceOfLaterFreeze(chance), style);
}
