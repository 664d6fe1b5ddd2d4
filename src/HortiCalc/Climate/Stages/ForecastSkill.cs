using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>How well a forecast would have done: each past year in turn taken as the present one, and forecast from the others.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. Every year is forecast from the same day of the year. Errors are those of the middle date, in
/// days, later than the truth above zero; beside them stand the errors of the usual date, which knows nothing of the season. Both are over
/// the same years: those whose date and whose two middle dates came within the season.
/// </remarks>
public sealed record ForecastSkill : IFormattable
{
    /// <summary>Holds the skill.</summary>
    /// <param name="years">How many years were forecast; at least one.</param>
    /// <param name="yearsCompared">In how many of them there is an error in days; at least one, and not more than <paramref name="years"/>.</param>
    /// <param name="bias">The mean error of the middle date.</param>
    /// <param name="meanAbsoluteError">The mean of its errors without their signs.</param>
    /// <param name="usualBias">The mean error of the usual date.</param>
    /// <param name="usualMeanAbsoluteError">The mean of its errors without their signs.</param>
    /// <param name="coverage">The share of the years whose date fell into the forecast's range.</param>
    /// <param name="expectedCoverage">The share that the levels of the range promise.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of the range above.</exception>
    public ForecastSkill(
        int years,
        int yearsCompared,
        Duration bias,
        Duration meanAbsoluteError,
        Duration usualBias,
        Duration usualMeanAbsoluteError,
        Ratio coverage,
        Ratio expectedCoverage)
    {
        Years = Guard.AtLeast(years, 1);
        Guard.Within(yearsCompared, 1, years, "");
        YearsCompared = yearsCompared;
        Guard.Finite(Boundary.Days(bias), "days", nameof(bias));
        Guard.NotNegative(Boundary.Days(meanAbsoluteError), "days", nameof(meanAbsoluteError));
        Guard.Finite(Boundary.Days(usualBias), "days", nameof(usualBias));
        Guard.NotNegative(Boundary.Days(usualMeanAbsoluteError), "days", nameof(usualMeanAbsoluteError));
        Guard.Within(Boundary.Fraction(coverage) * 100, 0, 100, "%", nameof(coverage));
        Guard.Within(Boundary.Fraction(expectedCoverage) * 100, 0, 100, "%", nameof(expectedCoverage));
        Bias = HouseUnits.Normalise(bias);
        MeanAbsoluteError = HouseUnits.Normalise(meanAbsoluteError);
        UsualBias = HouseUnits.Normalise(usualBias);
        UsualMeanAbsoluteError = HouseUnits.Normalise(usualMeanAbsoluteError);
        Coverage = HouseUnits.Normalise(coverage);
        ExpectedCoverage = HouseUnits.Normalise(expectedCoverage);
    }

    /// <summary>How many years were forecast: those whose requirement was not yet met on that day.</summary>
    public int Years { get; }

    /// <summary>In how many of them there is an error in days.</summary>
    public int YearsCompared { get; }

    /// <summary>The mean error of the middle date; above zero where it is too late.</summary>
    public Duration Bias { get; }

    /// <summary>The mean of the middle date's errors without their signs.</summary>
    public Duration MeanAbsoluteError { get; }

    /// <summary>The mean error of the usual date.</summary>
    public Duration UsualBias { get; }

    /// <summary>The mean of the usual date's errors without their signs.</summary>
    public Duration UsualMeanAbsoluteError { get; }

    /// <summary>The share of the years whose date fell into the range; a date that never came is in a range that ends with none.</summary>
    public Ratio Coverage { get; }

    /// <summary>The share that the levels of the range promise: 80 % from 10 to 90 %, less where there are few years.</summary>
    public Ratio ExpectedCoverage { get; }

    /// <summary>The days of error that knowing the season so far takes away; below zero where it adds some.</summary>
    [JsonIgnore]
    public Duration Gain => Duration.FromDays(Boundary.Days(UsualMeanAbsoluteError) - Boundary.Days(MeanAbsoluteError));

    /// <summary>The skill in invariant culture.</summary>
    /// <returns>One line: the error, that of the usual date, the bias, the coverage.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The skill as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones; there is no difference here.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: the error, that of the usual date, the bias, the coverage.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    internal string ToString(TextStyle style) =>
        $"off by {QuantityText.Of(MeanAbsoluteError, style)} (usual date {QuantityText.Of(UsualMeanAbsoluteError, style)}), "
        + $"bias {QuantityText.Of(Bias, style)}; {QuantityText.Of(Coverage, style)} within the range, {QuantityText.Of(ExpectedCoverage, style)} expected; "
        + $"{QuantityText.Of(Years, style)} years";
}
