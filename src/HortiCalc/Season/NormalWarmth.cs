using HortiCalc.Climate;

namespace HortiCalc.Season;

/// <summary>The mean temperature of each day of the year over all years of a record, smoothed over fifteen days.</summary>
internal sealed class NormalWarmth
{
    private const int HalfWindow = 7;

    private readonly double[] meanCelsius;
    private readonly int coldest;

    public NormalWarmth(DailyTemperatures days)
    {
        double[] sums = new double[MonthDay.DaysOfYear];
        int[] counts = new int[MonthDay.DaysOfYear];
        for (int index = 0; index < days.Count; index++)
        {
            double meanOfDay = (days.MinimaCelsius[index] + days.MaximaCelsius[index]) / 2;
            if (double.IsNaN(meanOfDay))
                continue;
            int day = MonthDay.From(days.Start.AddDays(index)).DayOfYear - 1;
            sums[day] += meanOfDay;
            counts[day]++;
        }

        meanCelsius = new double[MonthDay.DaysOfYear];
        for (int day = 0; day < meanCelsius.Length; day++)
        {
            double sum = 0;
            int count = 0;
            for (int offset = -HalfWindow; offset <= HalfWindow; offset++)
            {
                int other = (day + offset + MonthDay.DaysOfYear) % MonthDay.DaysOfYear;
                sum += sums[other];
                count += counts[other];
            }

            meanCelsius[day] = count > 0 ? sum / count : double.NaN;
        }

        IsWholeYear = meanCelsius.All(double.IsFinite);
        coldest = IsWholeYear ? Array.IndexOf(meanCelsius, meanCelsius.Min()) : 0;
    }

    /// <summary>Whether there is a mean for every day of the year.</summary>
    public bool IsWholeYear { get; }

    /// <summary>The coldest day of the year.</summary>
    public MonthDay ColdestDay => MonthDay.Nearest(coldest + 1);

    /// <summary>How many days after the coldest of the year the mean is first as warm as that; none where no day is.</summary>
    public int? DaysUntilAsWarmAs(double celsius)
    {
        for (int offset = 0; offset < meanCelsius.Length; offset++)
        {
            if (meanCelsius[(coldest + offset) % meanCelsius.Length] >= celsius)
                return offset;
        }

        return null;
    }
}
