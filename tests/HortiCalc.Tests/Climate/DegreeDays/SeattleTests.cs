using HortiCalc.Climate;
using HortiCalc.Reference;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

/// <summary>Four years of real days, each by quadrature of its course: sums to a billionth. The printed yearly sums are in shared/reference.</summary>
public class SeattleTests
{
    [Theory]
    [InlineData(5, UpperCutoff.None)]
    [InlineData(5, UpperCutoff.Horizontal)]
    [InlineData(10, UpperCutoff.Horizontal)]
    [InlineData(10, UpperCutoff.Intermediate)]
    [InlineData(10, UpperCutoff.Vertical)]
    public void Accumulate_FourYears_IsTheQuadratureOfEachDay(double lower, UpperCutoff cutoff)
    {
        DailyTemperatures days = Days();
        DegreeDayThresholds thresholds = new(Temperature.FromDegreesCelsius(lower), Temperature.FromDegreesCelsius(30));
        ReadOnlySpan<double> minima = days.MinimaCelsius;
        ReadOnlySpan<double> maxima = days.MaximaCelsius;
        double sine = 0;
        double triangle = 0;
        double doubleSine = 0;
        for (int day = 0; day < days.Count; day++)
        {
            double next = day + 1 < days.Count ? minima[day + 1] : minima[day];
            double up = DayQuadrature.Sine(minima[day], maxima[day], lower, 30, cutoff);
            sine += up;
            doubleSine += (up + DayQuadrature.Sine(Math.Min(next, maxima[day]), Math.Max(next, maxima[day]), lower, 30, cutoff)) / 2;
            triangle += DayQuadrature.Triangle(minima[day], maxima[day], lower, 30, cutoff);
        }

        Assert.Equal(sine, Total(DegreeDayMethod.SingleSine), 1e-9);
        Assert.Equal(doubleSine, Total(DegreeDayMethod.DoubleSine), 1e-9);
        Assert.Equal(triangle, Total(DegreeDayMethod.SingleTriangle), 1e-9);

        double Total(DegreeDayMethod method) => DegreeDays.Accumulate(days, thresholds, method, cutoff).Total.CelsiusDays;
    }

    private static DailyTemperatures Days()
    {
        string[][] rows = [.. File.ReadLines(Path.Combine(ReferenceLibrary.RepositoryRoot, "shared", "weather", "seattle-2012-2015.csv"))
            .Where(line => line.Length > 0 && char.IsDigit(line[0]))
            .Select(line => line.Split(','))];
        double[] Column(int index) => [.. rows.Select(row => double.Parse(row[index], System.Globalization.CultureInfo.InvariantCulture))];
        return DailyTemperatures.Create(new DateOnly(2012, 1, 1), Column(1), Column(2), TemperatureUnit.DegreeCelsius);
    }
}
