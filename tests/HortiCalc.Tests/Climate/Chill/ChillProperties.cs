using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using HortiCalc.Climate;
using MathNet.Numerics.OdeSolvers;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

/// <summary>Hours of a winter, from a few to a month, in degrees Celsius; tenths, so that readings on a limit are common.</summary>
public sealed record AnyHours(double[] Celsius)
{
    public HourlyTemperatures Series(int startHour = 0) =>
        HourlyTemperatures.Create(new DateTime(2024, 11, 1).AddHours(startHour), Celsius, TemperatureUnit.DegreeCelsius);
}

public static class ChillArbitraries
{
    public static Arbitrary<AnyHours> Hours() => (
        from length in Gen.Choose(1, 700)
        from mean in Gen.Choose(-50, 180)
        from swing in Gen.Choose(0, 90)
        from noise in Gen.Choose(-40, 40).ListOf(length)
        select new AnyHours([.. noise.Select((tenths, hour) =>
            Math.Round(mean + tenths - swing * Math.Cos(hour * Math.PI / 12), MidpointRounding.AwayFromZero) / 10)])).ToArbitrary();
}

[Properties(Arbitrary = [typeof(ChillArbitraries)], MaxTest = 200)]
public class ChillProperties
{
    private const double Rounding = 1e-9;

    [Property]
    public void Hours_AnyModel_AreNoMoreThanTheHours(AnyHours hours)
    {
        foreach (ChillModel model in ChillModel.All.Where(model => model.Unit == AccumulationUnit.ChillHours))
        {
            double total = Total(hours, model);
            Assert.InRange(total, 0, hours.Celsius.Length);
            Assert.Equal(Math.Floor(total), total);
        }
    }

    [Property]
    public void Hours_WithTheLimits_AreThoseWithoutAndThoseOnThem(AnyHours hours)
    {
        int onUpper = hours.Celsius.Count(celsius => celsius == 7.2);
        int onLower = hours.Celsius.Count(celsius => celsius == 0);
        int below = hours.Celsius.Count(celsius => celsius < 0);

        Assert.Equal(Total(hours, ChillModel.HoursToAndAt), Total(hours, ChillModel.HoursBelow) + onUpper);
        Assert.Equal(Total(hours, ChillModel.HoursFromZero), Total(hours, ChillModel.HoursWithin) + onUpper + onLower);
        Assert.Equal(Total(hours, ChillModel.HoursToAndAt), Total(hours, ChillModel.HoursFromZero) + below);
    }

    [Property]
    public void Hours_ToSeven_AreNoMoreThanTo45Fahrenheit(AnyHours hours)
    {
        Assert.True(Total(hours, ChillModel.HoursBelowSeven) <= Total(hours, ChillModel.HoursBelow));
        Assert.True(Total(hours, ChillModel.HoursBelow) <= Total(hours, ChillModel.HoursBelowFahrenheit));
    }

    [Property]
    public void Utah_Variants_AreOrdered(AnyHours hours)
    {
        double utah = Total(hours, ChillModel.UtahCelsius);
        double daily = Total(hours, ChillModel.PositiveUtahDaily);
        double hourly = Total(hours, ChillModel.PositiveUtahHourly);

        Assert.True(utah <= daily && daily <= hourly);
        Assert.InRange(utah, -hours.Celsius.Length, hours.Celsius.Length);
    }

    [Property]
    public void Utah_PrintedInTwoUnits_DiffersOnlyBetweenTheLimits(AnyHours hours)
    {
        int between = hours.Celsius.Count(celsius => new[] { (1.1, 1.4), (2.2, 2.4), (8.8, 9.1), (12.2, 12.4), (15.5, 15.9), (18.0, 18.4) }
            .Any(gap => celsius >= gap.Item1 && celsius <= gap.Item2));

        Assert.True(Math.Abs(Total(hours, ChillModel.UtahCelsius) - Total(hours, ChillModel.UtahFahrenheit)) <= 0.5 * between + Rounding);
    }

    [Property]
    public void PositiveUtahDaily_AnyDays_IsTheSumOfFlooredDays(AnyHours hours, byte startHour)
    {
        HourlyTemperatures series = hours.Series(startHour % 24);
        double expected = Enumerable.Range(0, series.Count).GroupBy(hour => series.Start.AddHours(hour).Date)
            .Sum(day => Math.Max(0, day.Sum(hour => Total(new AnyHours([hours.Celsius[hour]]), ChillModel.UtahCelsius))));

        Assert.Equal(expected, Chill.Accumulate(series, ChillModel.PositiveUtahDaily).Total, Rounding);
    }

    [Property]
    public void Dynamic_AnyHours_PortionsNeverFallAndNoneIsMoreThanThereCanBeOfTheProduct(AnyHours hours)
    {
        // The product moves towards the balance of the hour, and so is never more than the largest balance; no hour fixes more than there is.
        double most = hours.Celsius.Max(celsius => 139_500 / 2.567e18 * Math.Exp((12888.8 - 4153.5) / (celsius + 273)));
        HourlyAccumulation chill = Chill.Accumulate(hours.Series(), ChillModel.Dynamic);
        for (DateTime hour = chill.Start; hour <= chill.End; hour = hour.AddHours(1))
            Assert.InRange(chill[hour]!.Value, 0, most);

        // What is fixed was formed: at 139500 exp(-4153.5/K) an hour and no faster.
        Assert.True(chill.Total <= hours.Celsius.Sum(celsius => 139_500 * Math.Exp(-4153.5 / (celsius + 273))) + Rounding);
    }

    [Property]
    public void Dynamic_Recurrence_IsTheSolutionOfTheEquation(AnyHours hours)
    {
        double[] celsius = [.. hours.Celsius.Take(120)];
        double product = 0;
        double portions = 0;
        foreach (double degrees in celsius)
        {
            double kelvin = degrees + 273;
            product = RungeKutta.FourthOrder(
                product, 0, 1, 60, (_, left) => 139_500 * Math.Exp(-4153.5 / kelvin) - 2.567e18 * Math.Exp(-12888.8 / kelvin) * left)[^1];

            // An hour that decides by a hair is not what this is about.
            if (Math.Abs(product - 1) < 1e-9)
                return;
            if (product < 1)
                continue;
            double portion = product / (1 + Math.Exp(-1.6 * 277 * (kelvin - 277) / kelvin));
            portions += portion;
            product -= portion;
        }

        Assert.Equal(portions, Total(new AnyHours(celsius), ChillModel.Dynamic), 1e-7);
    }

    [Property]
    public void AnyModel_SplitAnywhereButTheDynamic_Adds(AnyHours hours, ushort cut)
    {
        if (hours.Celsius.Length < 49)
            return;
        int at = 24 * (1 + cut % (hours.Celsius.Length / 24 - 1));
        foreach (ChillModel model in ChillModel.All.Where(model => model != ChillModel.Dynamic))
        {
            Assert.Equal(
                Total(hours, model),
                Total(new AnyHours(hours.Celsius[..at]), model) + Total(new AnyHours(hours.Celsius[at..]), model),
                Rounding);
        }
    }

    [Property]
    public void AnyModel_RunningSum_EndsAtTheTotalAndReachesIt(AnyHours hours)
    {
        foreach (ChillModel model in ChillModel.All)
        {
            HourlyAccumulation chill = Chill.Accumulate(hours.Series(), model);
            Assert.Equal(chill.Total, chill.SumAt(chill.End));
            if (chill.Total > 0)
                Assert.True(chill.Reached(chill.Total) <= chill.End);
            Assert.True(chill.SumAt(chill.LowestSumAt) <= chill.SumAt(chill.Start));
        }
    }

    [Property]
    public void AnyModel_ReadingsInFahrenheit_CountTheSameOffTheLimits(AnyHours hours)
    {
        // Five hundredths off every limit, so that no rounding of the conversion decides.
        double[] celsius = [.. hours.Celsius.Select(degrees => degrees + 0.053)];
        double[] fahrenheit = [.. celsius.Select(degrees => degrees * 1.8 + 32)];
        HourlyTemperatures other = HourlyTemperatures.Create(new DateTime(2024, 11, 1), fahrenheit, TemperatureUnit.DegreeFahrenheit);
        foreach (ChillModel model in ChillModel.All.Where(model => model != ChillModel.Dynamic))
            Assert.Equal(Total(new AnyHours(celsius), model), Chill.Accumulate(other, model).Total, Rounding);
        Assert.Equal(Total(new AnyHours(celsius), ChillModel.Dynamic), Chill.Accumulate(other, ChillModel.Dynamic).Total, 1e-6);
        Assert.Equal(
            GrowingDegreeHours.Accumulate(new AnyHours(celsius).Series()).Total, GrowingDegreeHours.Accumulate(other).Total, 1e-6);
    }

    [Property]
    public void AnyModel_MissingHours_AreCountedAndAddNothing(AnyHours hours, byte which)
    {
        if (hours.Celsius.Length < 25)
            return;
        int gap = which % hours.Celsius.Length;
        double[] known = [.. hours.Celsius.Where((_, hour) => hour != gap)];
        double[] withGap = [.. hours.Celsius];
        withGap[gap] = double.NaN;
        foreach (ChillModel model in ChillModel.All.Where(model => model != ChillModel.PositiveUtahDaily))
        {
            HourlyAccumulation chill = Chill.Accumulate(new AnyHours(withGap).Series(), model);

            Assert.Equal(1, chill.MissingCount);
            Assert.Null(chill[chill.Start.AddHours(gap)]);
            Assert.Contains(chill.Cautions, caution => caution.Code == "hours.missing-left-out");
            Assert.Equal(Total(new AnyHours(known), model), chill.Total, Rounding);
        }
    }

    [Property]
    public void GrowingDegreeHours_AnyHour_IsBetweenNothingAnd21(short hundredths)
    {
        double celsius = hundredths % 6000 / 100.0;
        double one = GrowingDegreeHours.Accumulate(new AnyHours([celsius]).Series()).Total;

        Assert.InRange(one, 0, 21);
        if (celsius is <= 4 or >= 36)
            Assert.Equal(0, one);
    }

    [Property]
    public void GrowingDegreeHours_TowardsTheOptimum_NeverFall(byte first, byte second)
    {
        (double near, double far) = (Math.Min(first, second) / 255.0, Math.Max(first, second) / 255.0);

        Assert.True(Of(25 - 21 * near) >= Of(25 - 21 * far));
        Assert.True(Of(25 + 11 * near) >= Of(25 + 11 * far));

        static double Of(double celsius) => GrowingDegreeHours.Accumulate(new AnyHours([celsius]).Series()).Total;
    }

    private static double Total(AnyHours hours, ChillModel model) => Chill.Accumulate(hours.Series(), model).Total;
}
