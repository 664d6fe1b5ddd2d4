using System.Globalization;
using HortiCalc.Climate;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Reference;

internal static class DegreeDayCalculations
{
    private static readonly Lazy<DailyTemperatures> Seattle = new(ReadSeattle);

    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["degree-days-seattle-year"] = SeattleYear,
    };

    /// <summary>One calendar year out of the whole record, so that the double methods see the first day of the next.</summary>
    private static Computed SeattleYear(Inputs inputs)
    {
        int year = (int)inputs.Number("year");
        DegreeDayThresholds thresholds = new(
            Temperature.FromDegreesCelsius(inputs.Number("lower_C")),
            inputs.Has("upper_C") ? Temperature.FromDegreesCelsius(inputs.Number("upper_C")) : null);
        UpperCutoff cutoff = Enum.Parse<UpperCutoff>(inputs["cutoff"], ignoreCase: true);
        DegreeDaySeries series = DegreeDays.Accumulate(Seattle.Value, thresholds, DegreeDayMethod.FromKey(inputs["method"]), cutoff);
        return series.SumBetween(new DateOnly(year, 1, 1), new DateOnly(year, 12, 31)).CelsiusDays;
    }

    private static DailyTemperatures ReadSeattle()
    {
        string path = Path.Combine(ReferenceLibrary.RepositoryRoot, "shared", "weather", "seattle-2012-2015.csv");
        List<double> minima = [];
        List<double> maxima = [];
        foreach (string line in File.ReadLines(path).Where(line => line.Length > 0 && char.IsDigit(line[0])))
        {
            string[] cells = line.Split(',');
            minima.Add(double.Parse(cells[1], CultureInfo.InvariantCulture));
            maxima.Add(double.Parse(cells[2], CultureInfo.InvariantCulture));
        }

        return DailyTemperatures.Create(new DateOnly(2012, 1, 1), minima.ToArray(), maxima.ToArray(), TemperatureUnit.DegreeCelsius);
    }
}
