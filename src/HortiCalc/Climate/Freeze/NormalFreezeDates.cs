using System.Text.Json.Serialization;
using HortiCalc.Evidence;
using HortiCalc.Units;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Dates spread about their mean by the normal distribution.</summary>
/// <remarks>
/// Dates are counted in a year of 365 days, round New Year. A date is always taken in the year that has the mean at its
/// middle, so that 28 November lies 44 days before a mean of 11 January and not 321 days after it.
/// </remarks>
public sealed record NormalFreezeDates : FreezeDates
{
    private const double HalfYear = MonthDay.DaysOfYear / 2.0;

    private readonly double standardDeviationDays;

    /// <summary>Describes dates by their mean and standard deviation.</summary>
    /// <param name="meanDayOfYear">The mean as a day's number in a year of 365 days, with its fraction: 1 is 1 January. Any number is brought into the year.</param>
    /// <param name="standardDeviation">The standard deviation: zero or more, at most half a year.</param>
    /// <exception cref="ArgumentOutOfRangeException">The mean is not finite, or the standard deviation is not from 0 to 182.5 days.</exception>
    public NormalFreezeDates(double meanDayOfYear, Duration standardDeviation)
    {
        if (!double.IsFinite(meanDayOfYear))
            throw Guard.Refused(nameof(meanDayOfYear), meanDayOfYear, "", "a finite number");
        standardDeviationDays = Guard.Within(Boundary.Days(standardDeviation), 0, HalfYear, "days", nameof(standardDeviation));
        MeanDayOfYear = MonthDay.Wrapped(meanDayOfYear - 1) + 1;
        StandardDeviation = Duration.FromDays(standardDeviationDays);
    }

    /// <summary>The mean as a day's number in a year of 365 days, with its fraction; from 1 up to 366.</summary>
    public double MeanDayOfYear { get; }

    /// <summary>The standard deviation.</summary>
    public Duration StandardDeviation { get; }

    /// <summary>The mean as a day of the year.</summary>
    [JsonIgnore]
    public override MonthDay MiddleDate => MonthDay.Nearest(MeanDayOfYear);

    /// <summary>Dates spread about a day of the year.</summary>
    /// <param name="mean">The mean.</param>
    /// <param name="standardDeviation">The standard deviation: zero or more, at most half a year.</param>
    /// <returns>The spread of the dates.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The standard deviation is not from 0 to 182.5 days.</exception>
    public static NormalFreezeDates Around(MonthDay mean, Duration standardDeviation) => new(mean.DayOfYear, standardDeviation);

    /// <summary>The mean and the standard deviation.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => $"mean {MiddleDate}, standard deviation {Guard.Number(Math.Round(standardDeviationDays, 1, MidpointRounding.AwayFromZero))} days";

    internal override Method MethodOverAllSeasons => FreezeEvidence.MixedNormal;

    internal override Method MethodGivenAFreeze => FreezeEvidence.NormalGivenAFreeze;

    internal override double? DayOfChance(double chance, FreezeSide side, double share)
    {
        double deviations = standardDeviationDays == 0 ? 0 : Normal.InvCDF(0, 1, side == FreezeSide.Spring ? 1 - chance / share : chance / share);
        double fromMean = deviations * standardDeviationDays;
        return Math.Abs(fromMean) <= HalfYear ? MeanDayOfYear + fromMean : null;
    }

    internal override double ChanceBeyond(MonthDay date, FreezeSide side, double share)
    {
        double fromMean = MonthDay.Wrapped(date.DayOfYear - MeanDayOfYear + HalfYear) - HalfYear;
        double before = standardDeviationDays > 0 ? Normal.CDF(0, standardDeviationDays, fromMean) : fromMean > 0 ? 1 : 0;
        return share * (side == FreezeSide.Spring ? 1 - before : before);
    }
}
