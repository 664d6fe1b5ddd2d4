using FsCheck.Xunit;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Plants;
using UnitsNet;

namespace HortiCalc.Tests.Plants;

[Properties(Arbitrary = [typeof(GerminationArbitraries)], MaxTest = 300)]
public class EmergenceProperties
{
    private const double Rounding = 1e-9;

    [Property]
    public void At_AnyTemperature_GivesDaysOnlyBetweenPrintedDays(AnyEmergence any)
    {
        (EmergenceCell below, EmergenceCell above) = Around(any);
        EmergenceReading reading = At(any);

        bool printed = below.Low is not null && above.Low is not null;
        Assert.Equal(printed, reading.Finding == EmergenceFinding.Emerges);
        Assert.Equal(printed, reading.Days is not null);
        bool untested = below.Finding == EmergenceFinding.NotTested || above.Finding == EmergenceFinding.NotTested;
        Assert.Equal(untested, reading.Finding == EmergenceFinding.NotTested);
    }

    [Property]
    public void At_BetweenTwoTemperatures_LiesBetweenTheirDays(AnyEmergence any)
    {
        if (At(any).Days is not Estimate<Duration> days)
            return;
        (EmergenceCell below, EmergenceCell above) = Around(any);

        Assert.InRange(
            days.Value.Days,
            Math.Min(below.Low!.Value.Days, above.Low!.Value.Days) - Rounding,
            Math.Max(below.High!.Value.Days, above.High!.Value.Days) + Rounding);
    }

    [Property]
    public void At_BetweenTwoTemperatures_RunsStraightInTheRateAndIsNeverLaterThanStraightInTheDays(AnyEmergence any)
    {
        (EmergenceCell below, EmergenceCell above) = Around(any);
        if (below.Low is not Duration low || above.Low is not Duration high || below.High!.Value.Days > low.Days || above.High!.Value.Days > high.Days)
            return;
        double span = above.Soil.DegreesCelsius - below.Soil.DegreesCelsius;
        double part = span == 0 ? 0 : (any.Celsius - below.Soil.DegreesCelsius) / span;
        double days = At(any).Days!.Value.Days;

        Assert.Equal(1 / low.Days + (1 / high.Days - 1 / low.Days) * part, 1 / days, Rounding);
        Assert.True(days <= low.Days + (high.Days - low.Days) * part + Rounding);
    }

    [Property]
    public void At_InFahrenheit_IsTheSame(AnyEmergence any)
    {
        EmergenceReading celsius = At(any);
        EmergenceReading fahrenheit = Emergence.At(Temperature.FromDegreesFahrenheit(any.Celsius * 1.8 + 32), any.Table);

        Assert.Equal(celsius.Finding, fahrenheit.Finding);
        Assert.Equal(celsius.Days?.Value.Days ?? 0, fahrenheit.Days?.Value.Days ?? 0, 1e-6);
    }

    [Property]
    public void Compare_AnyCrop_HoldsTheReadingOfEachTable(AnyEmergence any)
    {
        IReadOnlyList<EmergenceReading> readings = Emergence.Compare(Temperature.FromDegreesCelsius(any.Celsius), any.Table.Crop.ToUpperInvariant());

        Assert.Contains(At(any), readings);
        Assert.All(readings, reading => Assert.Equal(any.Table.Crop, reading.Crop));
        Assert.Equal(readings.Count, readings.Select(reading => reading.Source.Key).Distinct().Count());
    }

    [Property]
    public void NormalSeedlings_AnyTemperature_LieBetweenTheirNeighboursOrAreMissing(AnyEmergence any)
    {
        foreach (NormalSeedlingTable table in NormalSeedlings.All)
        {
            NormalSeedlingCell below = table.Cells.Last(cell => cell.Soil.DegreesCelsius <= any.Celsius);
            NormalSeedlingCell above = table.Cells.First(cell => cell.Soil.DegreesCelsius >= any.Celsius);
            Estimate<Ratio>? share = NormalSeedlings.At(Temperature.FromDegreesCelsius(any.Celsius), table);

            Assert.Equal(below.Share is null || above.Share is null, share is null);
            if (share is not null)
            {
                Assert.InRange(
                    share.Value.Percent,
                    Math.Min(below.Share!.Value.Percent, above.Share!.Value.Percent) - Rounding,
                    Math.Max(below.Share!.Value.Percent, above.Share!.Value.Percent) + Rounding);
                double span = above.Soil.DegreesCelsius - below.Soil.DegreesCelsius;
                double part = span == 0 ? 0 : (any.Celsius - below.Soil.DegreesCelsius) / span;
                Assert.Equal((1 - part) * below.Share!.Value.Percent + part * above.Share!.Value.Percent, share.Value.Percent, 1e-7);
            }
        }
    }

    [Property]
    public void Json_WrittenAndRead_IsEqual(AnyEmergence any)
    {
        EmergenceReading reading = At(any);

        Assert.Equal(any.Table, HortiCalcJson.Deserialize<EmergenceTable>(HortiCalcJson.Serialize(any.Table)));
        Assert.Equal(reading, HortiCalcJson.Deserialize<EmergenceReading>(HortiCalcJson.Serialize(reading)));
    }

    private static EmergenceReading At(AnyEmergence any) => Emergence.At(Temperature.FromDegreesCelsius(any.Celsius), any.Table);

    private static (EmergenceCell Below, EmergenceCell Above) Around(AnyEmergence any) => (
        any.Table.Cells.Last(cell => cell.Soil.DegreesCelsius <= any.Celsius),
        any.Table.Cells.First(cell => cell.Soil.DegreesCelsius >= any.Celsius));
}
