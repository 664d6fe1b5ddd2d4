using System.Text.Json;
using FsCheck.Xunit;
using HortiCalc.Climate;
using HortiCalc.Json;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

[Properties(Arbitrary = [typeof(DegreeDayArbitraries)])]
public class DailyTemperaturesProperties
{
    [Property]
    public void Json_AnyRecord_ComesBackEqual(AnyRecord record)
    {
        string json = JsonSerializer.Serialize(record.Days, HortiCalcJsonContext.Default.DailyTemperatures);

        Assert.Equal(record.Days, JsonSerializer.Deserialize(json, HortiCalcJsonContext.Default.DailyTemperatures));
    }

    [Property]
    public void FromDays_KnownDaysInAnyOrder_GiveThemBack(AnyRecord record, int seed)
    {
        DailyTemperature[] days = [.. record.Days.KnownDays()];
        new Random(seed).Shuffle(days);

        DailyTemperatures back = DailyTemperatures.FromDays(days);

        Assert.Equal((record.Days.Start, record.Days.End), (back.Start, back.End));
        Assert.Equal(record.Days.KnownDays(), back.KnownDays());
        Assert.Equal(record.Days.Missing, back.Missing);
    }

    [Property]
    public void Missing_AnyRecord_AreTheDaysThatAreNotKnown(AnyRecord record)
    {
        Assert.Equal(record.Days.MissingCount, record.Days.Missing.Count);
        Assert.Equal(record.Days.Count, record.Days.MissingCount + record.Days.KnownDays().Count());
        Assert.All(record.Days.Missing, date => Assert.Null(record.Days[date]));
        Assert.All(record.Days.Missing, date => Assert.True(record.Days.MinimumOn(date) is null || record.Days.MaximumOn(date) is null));
        Assert.InRange(
            record.Days.MissingCount,
            Math.Max(record.Days.MissingMinimaCount, record.Days.MissingMaximaCount),
            record.Days.MissingMinimaCount + record.Days.MissingMaximaCount);
    }

    [Property]
    public void Between_TwoParts_HoldTheDaysOfTheWhole(AnyRecord record, byte cut)
    {
        DateOnly second = record.Days.Start.AddDays(1 + cut % (record.Days.Count - 1));

        DailyTemperatures before = record.Days.Between(record.Days.Start, second.AddDays(-1));
        DailyTemperatures after = record.Days.Between(second, record.Days.End);

        Assert.Equal(record.Days.KnownDays(), before.KnownDays().Concat(after.KnownDays()));
        Assert.Equal(record.Days.MissingCount, before.MissingCount + after.MissingCount);
    }

    [Property]
    public void Between_OfAPart_IsTheSameAsOfTheWhole(AnyRecord record, byte cut)
    {
        DateOnly first = record.Days.Start.AddDays(cut % record.Days.Count);

        DailyTemperatures once = record.Days.Between(first, first);
        DailyTemperatures twice = record.Days.Between(first, record.Days.End).Between(first, first);

        Assert.Equal(once, twice);
        Assert.Equal(once.GetHashCode(), twice.GetHashCode());
    }

    [Property]
    public void Create_InKelvinOrFahrenheit_AgreesWithCelsius(AnyRecord record)
    {
        double[] minimaKelvin = [.. record.Days.MinimaCelsius.ToArray().Select(celsius => celsius + 273.15)];
        double[] maximaKelvin = [.. record.Days.MaximaCelsius.ToArray().Select(celsius => celsius + 273.15)];
        double[] minimaFahrenheit = [.. record.Days.MinimaCelsius.ToArray().Select(celsius => celsius * 1.8 + 32)];
        double[] maximaFahrenheit = [.. record.Days.MaximaCelsius.ToArray().Select(celsius => celsius * 1.8 + 32)];

        DailyTemperatures kelvin = DailyTemperatures.Create(record.Days.Start, minimaKelvin, maximaKelvin, TemperatureUnit.Kelvin);
        DailyTemperatures fahrenheit = DailyTemperatures.Create(record.Days.Start, minimaFahrenheit, maximaFahrenheit, TemperatureUnit.DegreeFahrenheit);

        Assert.Equal(record.Days.Missing, kelvin.Missing);
        for (int day = 0; day < record.Days.Count; day++)
        {
            Assert.Equal(record.Days.MinimaCelsius[day], kelvin.MinimaCelsius[day], 1e-10);
            Assert.Equal(record.Days.MaximaCelsius[day], fahrenheit.MaximaCelsius[day], 1e-10);
        }
    }
}
