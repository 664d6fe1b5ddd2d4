using HortiCalc.Evidence;
using HortiCalc.Units;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>A mixed normal distribution fitted to a printed table by least squares over the days.</summary>
/// <param name="Share">The share of seasons with a freeze.</param>
/// <param name="MeanDay">The mean, as a day of the year; not yet brought into the year.</param>
/// <param name="StandardDeviationDays">The standard deviation.</param>
/// <param name="RootMeanSquareDays">The root of the mean squared difference to the printed dates.</param>
/// <param name="LargestMissDays">The largest difference to a printed date.</param>
/// <param name="Dates">How many printed dates there were.</param>
/// <param name="ShareIsAssumed">Whether the table could not tell the share, so that 1 was taken.</param>
internal sealed record FreezeTableFit(
    double Share, double MeanDay, double StandardDeviationDays, double RootMeanSquareDays, double LargestMissDays, int Dates, bool ShareIsAssumed)
{
    // A table printed to whole days misses its own distribution by half a day; a further quarter is left to the fit.
    private const double PrintedDay = 0.75;
    private const int Steps = 500;
    private const int Rounds = 4;

    public Duration FitError => Duration.FromDays(RootMeanSquareDays);

    public NormalFreezeDates Spread => new(MeanDay, Duration.FromDays(StandardDeviationDays));

    public IReadOnlyList<Caution> Cautions =>
    [
        FreezeEvidence.TableFit(Dates, LargestMissDays),
        .. ShareIsAssumed ? [FreezeEvidence.AssumedShare] : (Caution[])[],
        .. FreezeEvidence.Always,
    ];

    /// <summary>Fits the dates; the share too, where it is not given and the dates can tell it.</summary>
    /// <param name="dates">The dates of the table.</param>
    /// <param name="share">The share of seasons with a freeze, above 0 up to 1, where it is known.</param>
    /// <param name="direction">-1 where a higher chance gives an earlier date (spring), 1 where it gives a later one (autumn).</param>
    public static FreezeTableFit Of(IReadOnlyList<TabulatedFreezeDate> dates, double? share, int direction)
    {
        Guard.NotNull(dates);
        (double[] chances, double[] days, double lowestWithout) = Unwrap(dates, direction);
        double highest = chances[^1];
        if (share is double given)
        {
            if (given <= highest || given > lowestWithout)
            {
                throw Guard.Refused(
                    nameof(share), given * 100, "%", $"above {Guard.Number(highest * 100)} % up to {Guard.Number(lowestWithout * 100)} %, as the dates of the table say");
            }

            return Line(chances, days, given, direction, assumed: false);
        }

        if (lowestWithout < 1 && chances.Length < 3)
        {
            throw new ArgumentException(
                "dates held two dates and levels without one; allowed: three dates or more, or give the share of seasons with a freeze.", nameof(dates));
        }

        if (lowestWithout >= 1)
        {
            FreezeTableFit every = Line(chances, days, 1, direction, assumed: true);
            if (every.LargestMissDays <= PrintedDay || chances.Length < 3)
                return every;
        }

        // One parameter that is not linear, and a valley that is wide and shallow: a grid cannot get lost, and each round
        // closes in on the neighbours of its best.
        double floor = highest + (lowestWithout - highest) / Steps;
        double low = floor;
        double high = lowestWithout;
        FreezeTableFit best = Best(low, high);
        for (int round = 1; round < Rounds; round++)
        {
            double width = (high - low) / Steps;
            low = Math.Max(floor, best.Share - width);
            high = Math.Min(lowestWithout, best.Share + width);
            best = Best(low, high);
        }

        return best;

        FreezeTableFit Best(double from, double to) => Enumerable.Range(0, Steps + 1)
            .Select(step => Line(chances, days, from + (to - from) * step / Steps, direction, assumed: false))
            .MinBy(fit => fit.RootMeanSquareDays)!;
    }

    /// <summary>Fits dates whose chances are given that a freeze comes: every season counted has one.</summary>
    /// <param name="dates">The dates of the table.</param>
    /// <param name="direction">-1 where a higher chance gives an earlier date (spring), 1 where it gives a later one (autumn).</param>
    public static FreezeTableFit GivenAFreeze(IReadOnlyList<TabulatedFreezeDate> dates, int direction)
    {
        foreach (TabulatedFreezeDate level in Guard.NotNull(dates))
        {
            if (Guard.NotNull(level, nameof(dates)).Date is null)
            {
                throw new ArgumentException(
                    $"dates held none at {Guard.Number(Boundary.Fraction(level.Chance) * 100)} %; allowed: a date at every chance, which chances given a freeze always have.",
                    nameof(dates));
            }
        }

        return Of(dates, share: 1, direction);
    }

    /// <summary>The line day = mean + standard deviation × normal score through the dates, at one share.</summary>
    private static FreezeTableFit Line(double[] chances, double[] days, double share, int direction, bool assumed)
    {
        int count = chances.Length;
        double[] scores = [.. chances.Select(chance => direction * Normal.InvCDF(0, 1, chance / share))];
        double meanScore = scores.Average();
        double meanDay = days.Average();
        double scoresByDays = 0;
        double scoresSquared = 0;
        for (int i = 0; i < count; i++)
        {
            scoresByDays += (scores[i] - meanScore) * (days[i] - meanDay);
            scoresSquared += (scores[i] - meanScore) * (scores[i] - meanScore);
        }

        double slope = scoresByDays / scoresSquared;
        double intercept = meanDay - slope * meanScore;
        double[] misses = [.. scores.Zip(days, (score, day) => Math.Abs(intercept + slope * score - day))];
        return new FreezeTableFit(
            share, intercept, slope, Math.Sqrt(misses.Sum(miss => miss * miss) / count), misses.Max(), count, assumed);
    }

    /// <summary>Sorts the levels by chance and lays the dates on a line of days that passes New Year.</summary>
    private static (double[] Chances, double[] Days, double LowestWithout) Unwrap(IReadOnlyList<TabulatedFreezeDate> dates, int direction)
    {
        foreach (TabulatedFreezeDate level in dates)
            Guard.NotNull(level, nameof(dates));
        (double Chance, MonthDay? Date)[] levels =
            [.. dates.Select(level => (Boundary.Fraction(level.Chance), level.Date)).OrderBy(level => level.Item1)];
        for (int i = 1; i < levels.Length; i++)
        {
            if (levels[i].Chance == levels[i - 1].Chance)
                throw new ArgumentException($"dates held {Guard.Number(levels[i].Chance * 100)} % twice; allowed: each chance once.", nameof(dates));
            if (levels[i].Date is not null && levels[i - 1].Date is null)
            {
                throw new ArgumentException(
                    $"dates held a date at {Guard.Number(levels[i].Chance * 100)} % but none at {Guard.Number(levels[i - 1].Chance * 100)} %; allowed: none only above the last date.",
                    nameof(dates));
            }
        }

        (double Chance, MonthDay? Date)[] printed = [.. levels.Where(level => level.Date is not null)];
        if (printed.Length < 2)
        {
            throw new ArgumentException(
                $"dates held {Guard.Number(printed.Length)} with a date; allowed: 2 or more.", nameof(dates));
        }

        double[] days = new double[printed.Length];
        days[0] = printed[0].Date!.Value.DayOfYear;
        for (int i = 1; i < printed.Length; i++)
        {
            double step = MonthDay.Wrapped(direction * (printed[i].Date!.Value.DayOfYear - days[i - 1]));
            days[i] = days[i - 1] + direction * step;
        }

        // A date out of order goes nearly once round the year.
        if (Math.Abs(days[^1] - days[0]) > MonthDay.DaysOfYear / 2.0)
        {
            throw new ArgumentException(
                $"dates were out of order; allowed: dates that become {(direction < 0 ? "earlier" : "later")} as the chance rises, within half a year.",
                nameof(dates));
        }

        double lowestWithout = levels.Where(level => level.Date is null).Select(level => level.Chance).DefaultIfEmpty(1).First();
        return ([.. printed.Select(level => level.Chance)], days, lowestWithout);
    }
}
