namespace HortiCalc.Climate;

/// <summary>Puts years together from months of a record and counts their freezes.</summary>
/// <param name="FirstByDay">How many years have their first freeze on each day from the cut on.</param>
/// <param name="LastByDay">How many years have their last freeze on each day from the cut on.</param>
/// <param name="YearsByLength">How many years have their longest run of days without freeze of each length, from 0 to 365 days.</param>
/// <param name="YearsWithFreeze">How many of the years have a freeze.</param>
internal sealed record ResampledYears(int[] FirstByDay, int[] LastByDay, int[] YearsByLength, int YearsWithFreeze)
{
    private const int Months = 12;
    private const int LargestShift = 14;

    /// <summary>Fewest runs of a month: ten years, each at one place alone.</summary>
    private const int FewestYears = FreezeEvidence.FewestSeasons;

    private readonly record struct Run(int Index, double MeanCelsius);

    /// <summary>Runs the simulation; <see langword="null"/> where a month has fewer than ten years without a gap.</summary>
    public static ResampledYears? Of(
        DateOnly recordStart, ReadOnlySpan<double> minimaCelsius, double thresholdCelsius, MonthDay seasonStart, Hemisphere hemisphere, ResampledYearsMethod method)
    {
        Run[][] runs = new Run[Months][];
        double[][] means = new double[Months][];
        int[] firstDay = new int[Months];
        int[] length = new int[Months];
        for (int month = 0; month < Months; month++)
        {
            DateOnly first = new(2001, month + 1, 1);
            firstDay[month] = first.DayOfYear - 1;
            length[month] = DateTime.DaysInMonth(2001, month + 1);
            (runs[month], means[month]) = RunsOf(recordStart, minimaCelsius, month + 1, length[month]);
            if (means[month].Length < FewestYears)
                return null;
        }

        // The longest run of a year is looked for from the middle of winter on, which is New Year in the north.
        int cut = seasonStart.DayOfYear - 1;
        int midwinter = hemisphere == Hemisphere.Northern ? 0 : new MonthDay(7, 1).DayOfYear - 1;
        int[] firstByDay = new int[MonthDay.DaysOfYear];
        int[] lastByDay = new int[MonthDay.DaysOfYear];
        int[] yearsByLength = new int[MonthDay.DaysOfYear + 1];
        int withFreeze = 0;
        bool[] frozen = new bool[MonthDay.DaysOfYear];
        SeededRandom random = new(method.Seed);
        for (int year = 0; year < method.Years; year++)
        {
            for (int month = 0; month < Months; month++)
            {
                Run run = runs[month][random.Below(runs[month].Length)];
                double meanCelsius = means[month][random.Below(means[month].Length)];
                double limitCelsius = thresholdCelsius + FreezeRecord.HalfATenthCelsius - meanCelsius + run.MeanCelsius;
                ReadOnlySpan<double> daysCelsius = minimaCelsius.Slice(run.Index, length[month]);
                for (int day = 0; day < daysCelsius.Length; day++)
                    frozen[firstDay[month] + day] = daysCelsius[day] < limitCelsius;
            }

            yearsByLength[LongestRun(frozen, midwinter)]++;
            int first = Find(frozen, cut, step: 1);
            if (first < 0)
                continue;
            withFreeze++;
            firstByDay[first]++;
            lastByDay[MonthDay.DaysOfYear - 1 - Find(frozen, cut + MonthDay.DaysOfYear - 1, step: -1)]++;
        }

        return new ResampledYears(firstByDay, lastByDay, yearsByLength, withFreeze);
    }

    /// <summary>All runs of a month's length without a gap that begin within two weeks of its first day, and the means of the whole months.</summary>
    private static (Run[] Runs, double[] MeansCelsius) RunsOf(DateOnly recordStart, ReadOnlySpan<double> minimaCelsius, int month, int length)
    {
        List<Run> runs = [];
        List<double> meansCelsius = [];
        DateOnly recordEnd = recordStart.AddDays(minimaCelsius.Length - 1);
        for (int year = recordStart.Year; year <= recordEnd.Year; year++)
        {
            int first = new DateOnly(year, month, 1).DayNumber - recordStart.DayNumber;
            for (int shift = -LargestShift; shift <= LargestShift; shift++)
            {
                int index = first + shift;
                if (index < 0 || index + length > minimaCelsius.Length)
                    continue;
                double meanCelsius = Mean(minimaCelsius.Slice(index, length));
                if (double.IsNaN(meanCelsius))
                    continue;
                runs.Add(new Run(index, meanCelsius));
                if (shift == 0)
                    meansCelsius.Add(meanCelsius);
            }
        }

        return ([.. runs], [.. meansCelsius]);
    }

    /// <summary>The mean; not a number where a day is missing.</summary>
    private static double Mean(ReadOnlySpan<double> celsius)
    {
        double sum = 0;
        foreach (double value in celsius)
            sum += value;
        return sum / celsius.Length;
    }

    /// <summary>How many days after a start the first frozen day comes, going round the year; -1 where there is none.</summary>
    private static int Find(bool[] frozen, int start, int step)
    {
        for (int offset = 0; offset < frozen.Length; offset++)
        {
            if (frozen[(start + step * offset + frozen.Length) % frozen.Length])
                return offset;
        }

        return -1;
    }

    private static int LongestRun(bool[] frozen, int start)
    {
        int longest = 0;
        int current = 0;
        for (int offset = 0; offset < frozen.Length; offset++)
        {
            current = frozen[(start + offset) % frozen.Length] ? 0 : current + 1;
            longest = Math.Max(longest, current);
        }

        return longest;
    }
}
