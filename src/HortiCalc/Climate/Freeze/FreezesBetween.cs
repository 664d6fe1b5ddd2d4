using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>In how many years of a record at least one freeze comes between two days of the year.</summary>
/// <remarks>
/// For what first and last freezes cannot tell: whether it freezes while blossom is open, or in the weeks a tunnel stands empty.
/// Counted, not fitted. Immutable; equal when all members are equal.
/// </remarks>
/// <example><code>
/// double[] minima = [.. Enumerable.Range(0, 30 * 365).Select(day => 5 - 9 * Math.Cos(day * Math.Tau / 365) + day * 7919 % 11 - 5)];
/// DailyTemperatures days = DailyTemperatures.FromMinima(new DateOnly(1991, 1, 1), minima, TemperatureUnit.DegreeCelsius);
/// FreezesBetween blossom = FreezesBetween.FromDaily(
///     days, Temperature.FromDegreesCelsius(0), first: new MonthDay(4, 15), last: new MonthDay(5, 5));
/// Estimate&lt;Ratio&gt; inAYear = blossom.ChanceOfFreezeBetween();
/// Estimate&lt;Ratio&gt; inTenYears = blossom.ChanceOfFreezeBetweenInAnyOf(years: 10);
/// </code></example>
public sealed record FreezesBetween
{
    /// <summary>Describes the years of a record.</summary>
    /// <param name="threshold">The temperature at or below which a day counts.</param>
    /// <param name="first">The first day of the span.</param>
    /// <param name="last">The last day of the span; in the next year where it comes before <paramref name="first"/> in the calendar.</param>
    /// <param name="yearsWithFreeze">In which years, by the year of the first day, a freeze came.</param>
    /// <param name="yearsWithout">In which years none came and no day was missing.</param>
    /// <param name="leftOut">Which years are left out, because a day is missing and no freeze is known.</param>
    public FreezesBetween(
        Temperature threshold,
        MonthDay first,
        MonthDay last,
        IReadOnlyList<int> yearsWithFreeze,
        IReadOnlyList<int> yearsWithout,
        IReadOnlyList<int> leftOut)
    {
        Threshold = HouseUnits.Normalise(threshold);
        First = first;
        Last = last;
        YearsWithFreeze = ValueList<int>.Of(Guard.NotNull(yearsWithFreeze));
        YearsWithout = ValueList<int>.Of(Guard.NotNull(yearsWithout));
        LeftOut = ValueList<int>.Of(Guard.NotNull(leftOut));
    }

    /// <summary>The temperature at or below which a day counts.</summary>
    public Temperature Threshold { get; }

    /// <summary>The first day of the span.</summary>
    public MonthDay First { get; }

    /// <summary>The last day of the span.</summary>
    public MonthDay Last { get; }

    /// <summary>In which years a freeze came, by the year of the first day.</summary>
    public IReadOnlyList<int> YearsWithFreeze { get; }

    /// <summary>In which years none came and no day was missing.</summary>
    public IReadOnlyList<int> YearsWithout { get; }

    /// <summary>Which years are left out.</summary>
    public IReadOnlyList<int> LeftOut { get; }

    /// <summary>How many years count.</summary>
    [JsonIgnore]
    public int Years => YearsWithFreeze.Count + YearsWithout.Count;

    /// <summary>Counts the years of a record.</summary>
    /// <remarks>
    /// A day counts as in <see cref="FreezeClimate.FromDaily"/>. A year with a missing day in the span and no freeze known is left out,
    /// which makes freezes look a little more frequent where days are missing.
    /// </remarks>
    /// <param name="days">The record; minima are enough.</param>
    /// <param name="threshold">The temperature at or below which a day counts, from -60 °C to 30 °C.</param>
    /// <param name="first">The first day of the span.</param>
    /// <param name="last">The last day of the span; in the next year where it comes before <paramref name="first"/> in the calendar.</param>
    /// <returns>The years with and without.</returns>
    /// <exception cref="ArgumentNullException">The days are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The threshold is not from -60 °C to 30 °C.</exception>
    public static FreezesBetween FromDaily(DailyTemperatures days, Temperature threshold, MonthDay first, MonthDay last)
    {
        Guard.NotNull(days);
        double thresholdCelsius = Guard.Within(Boundary.Celsius(threshold), -60, 30, "°C", nameof(threshold));
        List<int> with = [];
        List<int> without = [];
        List<int> leftOut = [];
        foreach (DailyTemperatures span in days.Seasons(first, last))
        {
            bool hasFreeze = FreezeRecord.HasFreeze(span.MinimaCelsius, thresholdCelsius);
            (hasFreeze ? with : span.MissingMinimaCount == 0 ? without : leftOut).Add(span.Start.Year);
        }

        return new FreezesBetween(threshold, first, last, with, without, leftOut);
    }

    /// <summary>The chance that a year has at least one freeze between the two days, both included.</summary>
    /// <returns>The share of the years, with the exact interval of 95 % for its range.</returns>
    /// <exception cref="InvalidOperationException">No year counts.</exception>
    public Estimate<Ratio> ChanceOfFreezeBetween() => Years == 0
        ? throw new InvalidOperationException("The record holds no whole span between the two days.")
        : new Estimate<Ratio>(
            Ratio.FromPercent(100.0 * YearsWithFreeze.Count / Years),
            FreezeEvidence.CountedYears,
            BinomialBounds.Range(YearsWithFreeze.Count, Years),
            cautions: FreezeEvidence.Always);

    /// <summary>The chance that at least one of so many years has a freeze between the two days.</summary>
    /// <param name="years">How many years, 1 or more.</param>
    /// <returns>The chance, 1 - (1 - p)^n, and its range from the interval of 95 % of a single year.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The years are fewer than 1.</exception>
    /// <exception cref="InvalidOperationException">No year counts.</exception>
    public Estimate<Ratio> ChanceOfFreezeBetweenInAnyOf(int years) => YearlyChance.AtLeastOnceIn(years, ChanceOfFreezeBetween());

    /// <summary>The span and the count.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        $"freezes at {QuantityText.Of(Threshold, TextStyle.Default)} or below from {First} to {Last}: in {Guard.Number(YearsWithFreeze.Count)} of {Guard.Number(Years)} years; {Guard.Number(LeftOut.Count)} left out";
}
