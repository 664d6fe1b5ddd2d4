using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Mixes;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>Laws of calibration, of tanks for an area, of lime sulfur and of waiting times.</summary>
public class SprayProperties
{
    private static Length Width(PositiveInt value) => Length.FromMeters(0.2 + (value.Get % 300 / 10.0));

    private static Speed Speed(PositiveInt value) => UnitsNet.Speed.FromKilometersPerHour(0.5 + (value.Get % 150 / 10.0));

    private static VolumeRate Rate(PositiveInt value) => VolumeRate.FromLitresPerHectare(1 + (value.Get % 30_000 / 10.0));

    private static Volume Litres(PositiveInt value) => Volume.FromLiters(0.5 + (value.Get % 5000 / 10.0));

    [Property]
    public bool FromFlow_OfTheFlowForARate_IsThatRate(PositiveInt rate, PositiveInt speed, PositiveInt width) => Near.Equal(
        SprayerCalibration.FromFlow(SprayerCalibration.FlowFor(Rate(rate), Speed(speed), Width(width)), Speed(speed), Width(width)).LitresPerHectare,
        Rate(rate).LitresPerHectare);

    [Property]
    public bool FromFlow_TwiceTheSpeed_IsHalfTheRate(PositiveInt flow, PositiveInt speed, PositiveInt width)
    {
        VolumeFlow given = VolumeFlow.FromLitersPerMinute(0.1 + (flow.Get % 500));
        return Near.Equal(
            SprayerCalibration.FromFlow(given, Speed(speed) * 2, Width(width)).LitresPerHectare * 2,
            SprayerCalibration.FromFlow(given, Speed(speed), Width(width)).LitresPerHectare);
    }

    [Property]
    public bool Course_TimesWidth_IsAHundredAndTwentyEighthOfAnAcre(PositiveInt width) =>
        Near.Equal(SprayerCalibration.CourseFor128thAcre(Width(width)).Feet * Width(width).Feet, 43_560 / 128.0);

    [Property]
    public bool Caught_OnTheCourse_IsGallonsAnAcreByOunces(PositiveInt ounces, PositiveInt width)
    {
        Volume caught = Volume.FromUsOunces(0.5 + (ounces.Get % 1000 / 10.0));
        double fromBoom = SprayerCalibration.FromBoom(caught, SprayerCalibration.CourseFor128thAcre(Width(width)), Width(width)).UsGallonsPerAcre;
        return Near.Equal(SprayerCalibration.From128thAcre(caught).UsGallonsPerAcre, caught.UsOunces) && Near.Equal(fromBoom, caught.UsOunces);
    }

    [Property]
    public bool Boom_AndFlow_AgreeOverATimedDistance(PositiveInt flow, PositiveInt speed, PositiveInt width, PositiveInt distance)
    {
        VolumeFlow given = VolumeFlow.FromLitersPerMinute(0.1 + (flow.Get % 500 / 10.0));
        Length course = Length.FromMeters(5 + (distance.Get % 500));
        Duration time = SprayerCalibration.TimeOver(course, Speed(speed));
        Volume caught = Volume.FromLiters(given.LitersPerMinute * time.Minutes);
        return Near.Equal(
            SprayerCalibration.FromBoom(caught, course, Width(width)).LitresPerHectare,
            SprayerCalibration.FromFlow(given, Speed(speed), Width(width)).LitresPerHectare);
    }

    [Property]
    public bool SpeedOver_TheTimeOver_IsTheSpeed(PositiveInt distance, PositiveInt speed)
    {
        Length course = Length.FromMeters(1 + (distance.Get % 1000));
        return Near.Equal(
            SprayerCalibration.SpeedOver(course, SprayerCalibration.TimeOver(course, Speed(speed))).MetersPerSecond, Speed(speed).MetersPerSecond);
    }

    [Property]
    public bool Job_TanksAndTheLast_AreAllTheSpray(PositiveInt area, PositiveInt rate, PositiveInt tank)
    {
        SprayJob job = new(Area.FromSquareMeters(1 + (area.Get % 20_000)), Rate(rate), Litres(tank));
        return Near.Equal((job.FullTanks * job.Tank.Liters) + job.LastTank.Liters, job.Total.Liters)
            && job.LastTank.Liters < job.Tank.Liters
            && Near.Equal(job.Rate.CoveredBy(job.Total).SquareMeters, job.Area.SquareMeters);
    }

    [Property]
    public bool Job_ProductInAllTanks_IsTheRateOnTheArea(PositiveInt area, PositiveInt rate, PositiveInt tank, PositiveInt product)
    {
        SprayJob job = new(Area.FromSquareMeters(1 + (area.Get % 20_000)), Rate(rate), Litres(tank));
        double inTanks = (job.FullTanks * job.ProductIn(job.Tank, Rate(product)).Liters) + job.ProductIn(job.LastTank, Rate(product)).Liters;
        return Near.Equal(inTanks, Rate(product).Over(job.Area).Liters);
    }

    [Property]
    public bool Baume_ThereAndBack_IsTheSame(PositiveInt degrees)
    {
        double value = degrees.Get % 6901 / 100.0;
        return Math.Abs(LimeSulfur.ToBaume(LimeSulfur.FromBaume(value)) - value) < 1e-9;
    }

    [Property]
    public bool LimeSulfur_AnyBatch_HoldsTheExcessDensityOfTheSpray(PositiveInt total, PositiveInt concentrate, PositiveInt spray)
    {
        double strong = 1201 + (concentrate.Get % 99);
        double weak = 1001 + (spray.Get % 49);
        MixBatch batch = LimeSulfur.MakeUpTo(
            Litres(total), Density.FromKilogramsPerCubicMeter(strong), Density.FromKilogramsPerCubicMeter(weak)).Value;
        double mass = (batch.Concentrate.Liters * strong) + (batch.Water.Liters * 1000);
        return Near.Equal(mass / batch.Total.Liters, weak);
    }

    [Property]
    public bool After_MoreProducts_NeverWaitsLess(PositiveInt one, PositiveInt other, byte days, byte more)
    {
        DateTime end = new(2027, 6, 1, 18, 30, 0);
        SprayedProduct first = new("first", Duration.FromHours(one.Get % 96), days % 30);
        SprayedProduct second = new("second", Duration.FromHours(other.Get % 96), more % 30);
        SprayWait alone = SprayCalendar.After(end, first);
        SprayWait both = SprayCalendar.After(end, first, second);
        return both.EntryFrom >= alone.EntryFrom && both.HarvestFrom >= alone.HarvestFrom && both.HarvestFrom >= both.EntryFrom
            && both == SprayCalendar.After(end, second, first);
    }

    [Property]
    public bool LastDayBefore_AHarvest_LeavesTheWaitBeforeIt(PositiveInt hours, byte days)
    {
        SprayedProduct product = new("product", Duration.FromHours(hours.Get % 96), days % 30);
        DateOnly harvest = new(2028, 3, 10);
        DateOnly last = SprayCalendar.LastDayBefore(harvest, product);
        SprayWait wait = SprayCalendar.After(last.ToDateTime(TimeOnly.MinValue), product);
        return DateOnly.FromDateTime(wait.HarvestFrom) <= harvest;
    }

    [Property]
    public bool LastEndBefore_AnyHour_IsTheInverseOfAfter(PositiveInt hours, byte days, PositiveInt other, ushort minute)
    {
        SprayedProduct[] products = [new("one", Duration.FromHours(hours.Get % 960 / 10.0), days % 30), new("other", Duration.FromHours(other.Get % 96), 2)];
        DateTime harvest = new DateTime(2028, 3, 10).AddMinutes(minute);
        DateTime end = SprayCalendar.LastEndBefore(harvest, products);
        return SprayCalendar.After(end, products).HarvestFrom == harvest && SprayCalendar.After(end.AddTicks(1), products).HarvestFrom > harvest;
    }

    [Property]
    public bool Repeat_AnyCalendar_KeepsTheIntervalTheLastDayAndTheMost(byte days, byte span, byte most)
    {
        DateOnly first = new(2028, 2, 20);
        DateOnly last = first.AddDays(span);
        IReadOnlyList<DateOnly> dates = SprayCalendar.Repeat(first, 1 + (days % 30), last, 1 + (most % 12));
        return dates[0] == first && dates.Count <= 1 + (most % 12) && dates[^1] <= last
            && dates.Zip(dates.Skip(1)).All(pair => pair.Second.DayNumber - pair.First.DayNumber == 1 + (days % 30));
    }

    [Property]
    public bool OilAndSulfur_TheStrictest_IsNotBeforeTheOther(short day)
    {
        DateOnly last = new DateOnly(2027, 1, 1).AddDays(day);
        return SprayLimits.OilAndSulfurApart.EarliestAfter(last, strictest: true) >= SprayLimits.OilAndSulfurApart.EarliestAfter(last, strictest: false);
    }

    [Property]
    public bool Against_WarmerAboveTheCold_NeverAllowsMore(byte celsius)
    {
        double cool = 19 + (celsius % 25);
        return SprayLimits.Against(MixIngredients.WettableSulfur, Temperature.FromDegreesCelsius(cool + 1), false).Count
            >= SprayLimits.Against(MixIngredients.WettableSulfur, Temperature.FromDegreesCelsius(cool), false).Count;
    }

    [Property]
    public bool TreeRows_TwiceTheHeight_TakesTwiceTheSpray(PositiveInt width, PositiveInt height, PositiveInt spacing)
    {
        double Litres(double metres) => SprayerCalibration.ForTreeRows(
            Width(width), Length.FromMeters(metres), Width(spacing), TreeRowRule.Nursery).Value.LitresPerHectare;
        double tall = 0.5 + (height.Get % 60 / 10.0);
        return Near.Equal(Litres(2 * tall), 2 * Litres(tall));
    }

    [Property]
    public bool TreeRows_ByFoliage_AreTheirVolumeTimesTheRule(PositiveInt width, PositiveInt height, PositiveInt spacing)
    {
        Length tall = Length.FromMeters(0.5 + (height.Get % 60 / 10.0));
        double cubicFeet = SprayerCalibration.TreeRowVolume(Area.FromAcres(1), Width(width), tall, Width(spacing)).CubicFeet;
        double Gallons(TreeRowRule rule) => SprayerCalibration.ForTreeRows(Width(width), tall, Width(spacing), rule).Value.UsGallonsPerAcre;
        return Near.Equal(0.7 * cubicFeet / 1000, Gallons(TreeRowRule.WellPrunedOrchard))
            && Near.Equal(cubicFeet / 1000, Gallons(TreeRowRule.DenseOrchard));
    }

    [Property]
    public bool PressureForFlow_OfTheFlowAtAPressure_IsThatPressure(PositiveInt flow, PositiveInt pressure, PositiveInt other)
    {
        VolumeFlow measured = VolumeFlow.FromLitersPerMinute(0.1 + (flow.Get % 100 / 10.0));
        Pressure from = Pressure.FromBars(0.5 + (pressure.Get % 100 / 10.0));
        Pressure to = Pressure.FromBars(0.5 + (other.Get % 100 / 10.0));
        return Near.Equal(
            SprayerCalibration.PressureForFlow(measured, from, SprayerCalibration.FlowAtPressure(measured, from, to).Value).Value.Bars, to.Bars);
    }
}
