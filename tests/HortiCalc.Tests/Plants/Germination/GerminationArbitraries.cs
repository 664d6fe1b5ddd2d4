using FsCheck;
using FsCheck.Fluent;
using HortiCalc.Evidence;
using HortiCalc.Plants;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Plants;

/// <summary>A need of any shape with a temperature around its base, optimum and ceiling.</summary>
public sealed record AnyNeed(GerminationNeed Need, double Celsius)
{
    public double Base => Need.Temperatures.Base.DegreesCelsius;

    public double Optimum => Need.Temperatures.LowerOptimum!.Value.DegreesCelsius;

    public double UpperOptimum => Need.Temperatures.UpperOptimum!.Value.DegreesCelsius;

    public double Ceiling => Need.Temperatures.Ceiling!.Value.DegreesCelsius;

    public Temperature Soil => Temperature.FromDegreesCelsius(Celsius);

    public double Rate(double celsius) => Germination.ProgressPerDay(Temperature.FromDegreesCelsius(celsius), Need).Value.DecimalFractions;

    public AnyNeed With(GerminationResponse response, double times = 1) => this with
    {
        Need = new GerminationNeed(
            Need.Crop,
            Need.Condition,
            Need.Stage,
            Need.Share,
            response,
            response.AllowsSpan
                ? Need.Temperatures
                : new CardinalTemperatures(Need.Temperatures.Base, Need.Temperatures.LowerOptimum, null, Need.Temperatures.Ceiling),
            Need.Low * times,
            Need.High * times,
            Need.Source),
    };
}

/// <summary>Daily mean temperatures, of 1 to 60 days from -5 to 45 °C.</summary>
public sealed record AnySeedbed(double[] Celsius)
{
    public double[] Fahrenheit => [.. Celsius.Select(celsius => celsius * 1.8 + 32)];
}

/// <summary>A published table of emergence and a temperature within it.</summary>
public sealed record AnyEmergence(EmergenceTable Table, double Celsius);

public static class GerminationArbitraries
{
    private static readonly Source Own = Source.CommonPractice("own-trial", "own trial");

    public static Arbitrary<AnyNeed> Needs() => (
        from @base in Tenths(0, 15)
        from rise in Tenths(5, 25)
        from span in Tenths(0, 10)
        from fall in Tenths(2, 20)
        from low in Tenths(10, 300)
        from more in Gen.Elements(0.0, 0.0, 12.5)
        from response in Gen.Elements(GerminationResponse.All.ToArray())
        from part in Gen.Choose(-10, 110)
        select Made(@base, rise, response.AllowsSpan ? span : 0, fall, low, low + more, response, part)).ToArbitrary();

    public static Arbitrary<AnySeedbed> Seedbeds() => (
        from length in Gen.Choose(1, 60)
        from celsius in Tenths(-5, 45).ListOf(length)
        select new AnySeedbed([.. celsius])).ToArbitrary();

    public static Arbitrary<AnyEmergence> Emergences() => (
        from table in Gen.Elements(EmergenceTables.All.ToArray())
        from tenths in Gen.Choose(0, (int)table.Cells[^1].Soil.DegreesCelsius * 10)
        select new AnyEmergence(table, tenths / 10.0)).ToArbitrary();

    private static AnyNeed Made(
        double @base, double rise, double span, double fall, double low, double high, GerminationResponse response, int part)
    {
        CardinalTemperatures temperatures = new(
            Temperature.FromDegreesCelsius(@base),
            Tenth(@base + rise),
            Tenth(@base + rise + span),
            Tenth(@base + rise + span + fall));
        GerminationNeed need = new(
            "any", "any", GerminationStage.Emergence, Ratio.FromPercent(50), response, temperatures,
            ThermalTime.FromCelsiusDays(low), ThermalTime.FromCelsiusDays(high), Own);
        return new AnyNeed(need, Math.Round(@base + (rise + span + fall) * part / 100, 3, MidpointRounding.AwayFromZero));
    }

    // Without the hair of a sum, so that a day at the ceiling is at it in both units.
    private static Temperature Tenth(double celsius) => Temperature.FromDegreesCelsius(Math.Round(celsius, 1, MidpointRounding.AwayFromZero));

    private static Gen<double> Tenths(int low, int high) => Gen.Choose(low * 10, high * 10).Select(tenths => tenths / 10.0);
}
