using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Climate;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

[Properties(Arbitrary = [typeof(DegreeDayArbitraries)], MaxTest = 200)]
public class SumProperties
{
    private const double Rounding = 1e-9;

    // The day part's derivative, 3.33 - 0.168 (T - 10), is zero here.
    private const double PeakOfCornCelsius = 10 + 3.33 / 0.168;

    private static readonly DegreeDayThresholds AboveFive = new(Temperature.FromDegreesCelsius(5));

    [Property]
    public void CornHeatUnits_AnyMaximum_NeverGiveMoreThanAtThePeak(AnyDay day)
    {
        double high = Math.Max(day.Maximum, PeakOfCornCelsius);
        double atPeak = Corn(day.Minimum, Math.Max(PeakOfCornCelsius, day.Minimum), CornHeatUnitMethod.Canada);

        Assert.True(Corn(day.Minimum, high, CornHeatUnitMethod.Canada) <= atPeak + Rounding);
        Assert.True(Corn(Math.Min(day.Minimum, 20), day.Maximum, CornHeatUnitMethod.Canada)
            <= Corn(Math.Min(day.Minimum, 20), PeakOfCornCelsius, CornHeatUnitMethod.Canada) + Rounding);
    }

    [Property]
    public void CornHeatUnits_WarmerNight_GivesMoreByNineTenthsADegree(AnyDay day)
    {
        double warmer = day.Minimum + (day.Maximum - day.Minimum) / 2;

        Assert.Equal(
            0.9 * (warmer - day.Minimum),
            Corn(warmer, day.Maximum, CornHeatUnitMethod.Canada) - Corn(day.Minimum, day.Maximum, CornHeatUnitMethod.Canada),
            Rounding);
    }

    [Property]
    public void CornHeatUnits_Ontario_IsNeverBelowZeroNorBelowCanada(AnyDay day)
    {
        double ontario = Corn(day.Minimum, day.Maximum, CornHeatUnitMethod.Ontario);
        double canada = Corn(day.Minimum, day.Maximum, CornHeatUnitMethod.Canada);

        Assert.True(ontario >= 0);
        Assert.True(ontario >= canada);
        Assert.True(day.Minimum < 4.4 || day.Maximum < 10 || day.Maximum > 10 + 3.33 / 0.084 || Math.Abs(ontario - canada) < Rounding);
    }

    [Property]
    public void PhysiologicalDays_AnyTemperature_LieBetweenZeroAndTen(AnyDay day)
    {
        Assert.All(PhysiologicalDayMethod.All, method =>
        {
            Assert.InRange(Response(day.Minimum, method), 0, 10);
            Assert.InRange(PhysiologicalDays.OfDay(Celsius(day.Minimum), Celsius(day.Maximum), method), 0, 10);
        });
    }

    [Property]
    public void PhysiologicalDays_ConstantDay_IsTheResponse(AnyDay day) => Assert.All(
        PhysiologicalDayMethod.All,
        method => Assert.Equal(Response(day.Mean, method), PhysiologicalDays.OfDay(Celsius(day.Mean), Celsius(day.Mean), method), Rounding));

    [Property]
    public void PhysiologicalDays_TowardsTheOptimum_NeverFall(AnyDay day)
    {
        // Both optima, 70 °F and 21 °C, lie between 21 and 21.2 °C.
        double colder = Math.Min(day.Minimum, 21);
        double hotter = Math.Max(day.Maximum, 21.2);
        Assert.All(PhysiologicalDayMethod.All, method =>
        {
            Assert.True(Response((colder + 21) / 2, method) >= Response(colder, method) - Rounding);
            Assert.True(Response((hotter + 21.2) / 2, method) >= Response(hotter, method) - Rounding);
        });
    }

    [Property]
    public void Sums_SplitInTwo_AddUpToTheWhole(AnyRecord record, byte cut)
    {
        DateOnly second = record.Days.Start.AddDays(1 + cut % (record.Days.Count - 1));
        DateSpan whole = Whole(record.Days);
        DateSpan first = new(record.Days.Start, second.AddDays(-1));
        DateSpan rest = new(second, record.Days.End);

        Assert.All(Sums(), sum =>
        {
            // A part without a known day is refused.
            if (HasKnown(record.Days, first) && HasKnown(record.Days, rest))
                Assert.Equal(sum(record.Days, whole), sum(record.Days, first) + sum(record.Days, rest), 1e-7);
        });
    }

    [Property]
    public void Sums_InFahrenheit_AreTheSame(AnyRecord record)
    {
        double[] minima = [.. record.Days.MinimaCelsius.ToArray().Select(Boundary.FahrenheitFromCelsius)];
        double[] maxima = [.. record.Days.MaximaCelsius.ToArray().Select(Boundary.FahrenheitFromCelsius)];
        DailyTemperatures fahrenheit = DailyTemperatures.Create(record.Days.Start, minima, maxima, TemperatureUnit.DegreeFahrenheit);

        Assert.All(Sums(), sum => Assert.Equal(sum(record.Days, Whole(record.Days)), sum(fahrenheit, Whole(fahrenheit)), 1e-7));
    }

    [Property]
    public void Sums_MissingDays_AreListedAndLeftOut(AnyRecord record)
    {
        ClimateSum<double> sum = CornHeatUnits.Sum(record.Days, Whole(record.Days), CornHeatUnitMethod.Ontario, maximumMissing: Ratio.FromPercent(99));

        Assert.Equal(record.Days.Missing, sum.Missing);
        Assert.Equal(record.Days.MissingCount, sum.LeftOutCount);
        Assert.Equal(record.Days.MissingCount > 0, sum.Cautions.Any(caution => caution.Code == "climate-sum.missing-left-out"));
        double known = record.Days.KnownDays().Sum(day => CornHeatUnits.OfDay(day.Minimum, day.Maximum, CornHeatUnitMethod.Ontario));
        Assert.Equal(known, sum.Value, 1e-7);
    }

    [Property]
    public void Winkler_AnyRecord_IsDegreeDaysByTheSimpleAverage(AnyRecord record) => Assert.Equal(
        DegreeDays.Accumulate(
            record.Days, new DegreeDayThresholds(Celsius(10)), DegreeDayMethod.SimpleAverage, UpperCutoff.None, maximumMissing: Ratio.FromPercent(99)).Total.CelsiusDays,
        GrapeHeat.Winkler(record.Days, Whole(record.Days), maximumMissing: Ratio.FromPercent(99)).Value.CelsiusDays,
        1e-7);

    [Property]
    public void Huglin_AnyRecord_IsNotBelowWinklerWhereBothAreFloored(AnyRecord record)
    {
        // Its day is half way from the mean to the maximum, and its coefficient is 1 or more.
        double huglin = GrapeHeat.Huglin(
            record.Days, Whole(record.Days), Angle.FromDegrees(45), HuglinMethod.Floored, maximumMissing: Ratio.FromPercent(99)).Value.CelsiusDays;

        Assert.True(huglin >= GrapeHeat.Winkler(record.Days, Whole(record.Days), maximumMissing: Ratio.FromPercent(99)).Value.CelsiusDays - Rounding);
    }

    [Property]
    public void HuglinCoefficient_FartherFromTheEquator_NeverFallsAndIsTheSameInTheSouth(ushort hundredths, byte more)
    {
        double latitude = hundredths % 5001 / 100.0;
        double farther = Math.Min(50, latitude + more / 100.0);

        Assert.True(Coefficient(farther) >= Coefficient(latitude));
        Assert.Equal(Coefficient(latitude), Coefficient(-latitude));
        Assert.InRange(Coefficient(latitude), 1, 1.06);
    }

    [Property]
    public void WinklerRegion_LargerSum_IsNeverCooler(ushort sum, ushort more)
    {
        ThermalTime smaller = ThermalTime.FromCelsiusDays(sum / 20.0);
        ThermalTime larger = ThermalTime.FromCelsiusDays(sum / 20.0 + more / 20.0);

        Assert.All(Enum.GetValues<WinklerLimits>(), limits =>
            Assert.True(GrapeHeat.Region(larger, limits).Value >= GrapeHeat.Region(smaller, limits).Value));
        Assert.True(GrapeHeat.ClassOf(larger).Value >= GrapeHeat.ClassOf(smaller).Value);
    }

    [Property]
    public void PhotothermalUnits_ConstantDayLength_AreDegreeDaysTimesIt(AnyRecord record, byte quarterHours)
    {
        double hours = quarterHours % 97 / 4.0;

        ClimateSum<PhotothermalTime> sum = Photothermal(record.Days, hours);

        double degreeDays = DegreeDays.Accumulate(
            record.Days, AboveFive, DegreeDayMethod.SimpleAverage, UpperCutoff.None, maximumMissing: Ratio.FromPercent(99)).Total.CelsiusDays;
        Assert.Equal(degreeDays * hours, sum.Value.CelsiusDayHours, 1e-6);
    }

    [Property]
    public void HeatDays_AtOrAbove_AreThoseAboveAndThoseAtTheThreshold(AnyRecord record, byte degree)
    {
        double threshold = degree % 30;
        DateSpan span = Whole(record.Days);

        int above = HeatDays.Above(record.Days, span, Celsius(threshold), maximumMissing: Ratio.FromPercent(99)).Value;
        int atOrAbove = HeatDays.AtOrAbove(record.Days, span, Celsius(threshold), maximumMissing: Ratio.FromPercent(99)).Value;

        // A day whose minimum alone is missing counts; a hair of binary noise (9.999999999999998) is the threshold itself.
        const double hair = 1e-9;
        double[] maxima = record.Days.MaximaCelsius.ToArray();
        Assert.Equal(atOrAbove - above, maxima.Count(maximum => Math.Abs(maximum - threshold) <= hair));
        Assert.Equal(above, maxima.Count(maximum => maximum > threshold + hair));
    }

    [Property]
    public void StressDegreeDays_HigherThreshold_NeverGiveMore(AnyRecord record, byte degree, byte more)
    {
        double lower = degree % 30;
        double higher = Math.Min(60, lower + more / 10.0);

        double sumLower = Stress(record.Days, lower);
        double sumHigher = Stress(record.Days, higher);

        Assert.True(sumHigher <= sumLower + Rounding);
        Assert.True(sumLower - sumHigher <= (higher - lower) * record.Days.Count + Rounding);
    }

    [Property]
    public void LeafAppearance_LeavesAndThermalTime_AreInverse(ushort tenths)
    {
        ThermalTime sum = ThermalTime.FromCelsiusDays(tenths / 10.0);
        Assert.All(Phyllochrons.All, phyllochron =>
        {
            double leaves = LeafAppearance.Leaves(sum, phyllochron).Value;
            Assert.Equal(sum.CelsiusDays, LeafAppearance.ThermalTimeTo(leaves, phyllochron).Value.CelsiusDays, 1e-8);
        });
    }

    [Property]
    public void UntilReached_AnyRequirement_IsTheShortestSumThatHasIt(AnyRecord record, byte percent)
    {
        DateSpan whole = Whole(record.Days);
        if (record.Days.MissingCount > record.Days.Count / 20)
            return;
        double total = PhysiologicalDays.Sum(record.Days, whole, PhysiologicalDayMethod.Celsius).Value;
        double requirement = total * (percent / 200.0);
        ClimateSum<double>? reached;
        try
        {
            reached = PhysiologicalDays.UntilReached(record.Days, record.Days.Start, requirement, PhysiologicalDayMethod.Celsius);
        }
        catch (ArgumentException refused)
        {
            // Reached so early that a single missing day is more than a twentieth.
            Assert.Contains("missing", refused.Message, StringComparison.Ordinal);
            return;
        }

        if (reached is null)
        {
            Assert.True(total < requirement);
            return;
        }

        Assert.True(reached.Value >= requirement - Rounding);
        double dayBefore = reached.To == record.Days.Start ? -1
            : PhysiologicalDays.Sum(
                record.Days, new DateSpan(record.Days.Start, reached.To.AddDays(-1)), PhysiologicalDayMethod.Celsius, maximumMissing: Ratio.FromPercent(99)).Value;
        Assert.True(dayBefore < requirement);
    }

    private static IEnumerable<Func<DailyTemperatures, DateSpan, double>> Sums()
    {
        Ratio all = Ratio.FromPercent(99.9);
        yield return (days, span) => CornHeatUnits.Sum(days, span, CornHeatUnitMethod.Canada, maximumMissing: all).Value;
        yield return (days, span) => CornHeatUnits.Sum(days, span, CornHeatUnitMethod.Ontario, maximumMissing: all).Value;
        yield return (days, span) => PhysiologicalDays.Sum(days, span, PhysiologicalDayMethod.Celsius, maximumMissing: all).Value;
        yield return (days, span) => PhysiologicalDays.Sum(days, span, PhysiologicalDayMethod.Fahrenheit, maximumMissing: all).Value;
        yield return (days, span) => GrapeHeat.Winkler(days, span, maximumMissing: all).Value.CelsiusDays;
        yield return (days, span) => GrapeHeat.Huglin(days, span, Angle.FromDegrees(47), HuglinMethod.Printed, maximumMissing: all).Value.CelsiusDays;
        yield return (days, span) => GrapeHeat.Huglin(days, span, Angle.FromDegrees(47), HuglinMethod.Floored, maximumMissing: all).Value.CelsiusDays;
        yield return (days, span) => HeatDays.Above(days, span, Celsius(18), maximumMissing: all).Value;
        yield return (days, span) => HeatDays.AtOrAbove(days, span, Celsius(18), maximumMissing: all).Value;
        yield return (days, span) => StressDegreeDays.Sum(days, span, Celsius(18), maximumMissing: all).Value.CelsiusDays;
        yield return (days, span) => PhotothermalUnits.Sum(
            days, span, AboveFive, DegreeDayMethod.SingleSine, UpperCutoff.None, date => Duration.FromHours(8 + date.Month), maximumMissing: all).Value.CelsiusDayHours;
    }

    private static bool HasKnown(DailyTemperatures days, DateSpan span) => days.KnownDays().Any(day => day.Date >= span.From && day.Date <= span.To);

    private static DateSpan Whole(DailyTemperatures days) => new(days.Start, days.End);

    private static Temperature Celsius(double value) => Temperature.FromDegreesCelsius(value);

    private static double Corn(double minimum, double maximum, CornHeatUnitMethod method) => CornHeatUnits.OfDay(Celsius(minimum), Celsius(maximum), method);

    private static double Response(double celsius, PhysiologicalDayMethod method) => PhysiologicalDays.Response(Celsius(celsius), method);

    private static double Coefficient(double latitude) => GrapeHeat.HuglinCoefficient(Angle.FromDegrees(latitude)).Value;

    private static double Stress(DailyTemperatures days, double threshold) =>
        StressDegreeDays.Sum(days, Whole(days), Celsius(threshold), maximumMissing: Ratio.FromPercent(99)).Value.CelsiusDays;

    private static ClimateSum<PhotothermalTime> Photothermal(DailyTemperatures days, double hours) => PhotothermalUnits.Sum(
        days, Whole(days), AboveFive, DegreeDayMethod.SimpleAverage, UpperCutoff.None, _ => Duration.FromHours(hours), maximumMissing: Ratio.FromPercent(99));
}
