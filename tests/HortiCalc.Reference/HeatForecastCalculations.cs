using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Season;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Reference;

internal static class HeatForecastCalculations
{
    private static readonly Source Given = Source.CommonPractice("given", "a sum of heat as given");
    private static readonly Lazy<DailyTemperatures> Demo = new(ReadDemo);

    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["heat-forecast-early"] = inputs => Days(inputs, forecast => forecast.DateAt(Ratio.FromPercent(10))!.Value),
        ["heat-forecast-middle"] = inputs => Days(inputs, forecast => forecast.DateAt(Ratio.FromPercent(50))!.Value),
        ["heat-forecast-late"] = inputs => Days(inputs, forecast => forecast.DateAt(Ratio.FromPercent(90))!.Value),
        ["heat-forecast-usual"] = inputs => Days(inputs, forecast => forecast.UsualDateAt(Ratio.FromPercent(50))!.Value),
        ["heat-forecast-so-far"] = inputs => Of(inputs).SoFar.CelsiusDays,
        ["heat-forecast-bias"] = inputs => Of(inputs).Skill!.Bias.Days,
        ["heat-forecast-error"] = inputs => Of(inputs).Skill!.MeanAbsoluteError.Days,
        ["heat-forecast-usual-error"] = inputs => Of(inputs).Skill!.UsualMeanAbsoluteError.Days,
        ["heat-forecast-coverage"] = inputs => Of(inputs).Skill!.Coverage.Percent,
    };

    private static Computed Days(Inputs inputs, Func<HeatForecast, DateOnly> date) =>
        date(Of(inputs)).DayNumber - inputs.Date("first").DayNumber;

    private static HeatForecast Of(Inputs inputs) => HeatForecast.For(
        new HeatRequirement(
            ThermalTime.FromCelsiusDays(inputs.Number("sum_Cd")),
            new DegreeDayThresholds(Temperature.FromDegreesCelsius(inputs.Number("base_C"))),
            DegreeDayMethod.FromKey(inputs["method"]),
            UpperCutoff.None,
            Given),
        Demo.Value.Between(inputs.Date("first"), inputs.Date("today")),
        Demo.Value,
        inputs.Date("last"));

    private static DailyTemperatures ReadDemo()
    {
        using StreamReader reader = File.OpenText(Path.Combine(ReferenceLibrary.RepositoryRoot, "shared", "demo", "weather.csv"));
        return WeatherCsv.Read(reader);
    }
}
