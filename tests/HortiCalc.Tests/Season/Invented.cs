using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Season;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Season;

/// <summary>Invented crops, gardens and weather, with one thing changed at a time.</summary>
internal static class Invented
{
    public static Source Source { get; } = new("invented", "invented for a test", "the tests", null, null, SourceKind.Given);

    public static Spacing Spacing { get; } = new(Length.FromCentimeters(45), Length.FromCentimeters(60));

    public static Crop Crop(
        double hurtAtCelsius = 0,
        double? warmCelsius = null,
        Maturity? maturity = null,
        Raising? raising = null,
        bool pruned = false,
        double lowestPh = 6.0,
        double highestPh = 7.0) => new(
            "crop",
            new Ph(lowestPh),
            new Ph(highestPh),
            Temperature.FromDegreesCelsius(hurtAtCelsius),
            Spacing,
            [Source],
            warmCelsius is double warm ? Temperature.FromDegreesCelsius(warm) : null,
            maturity,
            raising,
            pruned);

    public static Site Site(double latitudeDegrees = 46, SoilReport? soil = null) =>
        new("a place", Angle.FromDegrees(latitudeDegrees), Source, soil);

    public static SoilReport Loam(double ph) => new() { PhInWater = new Ph(ph), Texture = SoilTexture.Loam };

    /// <summary>A garden with one bed.</summary>
    public static Garden Bed(Crop crop, Site? site = null, HortiCalc.Beds.Bed? shape = null, AcceptedChances? chances = null) => new(
        site ?? Site(),
        2027,
        [crop],
        [new BedPlan("bed", crop.Name, shape ?? HortiCalc.Beds.Bed.Rectangle(Length.FromMeters(1.2), Length.FromMeters(4)))],
        chances: chances);

    /// <summary>A garden with one lot of pots that winter indoors.</summary>
    public static Garden Pots(Crop crop, Site? site = null, int count = 3, AcceptedChances? chances = null) => new(
        site ?? Site(),
        2027,
        [crop],
        pots:
        [
            new PotPlan(
                "pots",
                crop.Name,
                HortiCalc.Containers.Container.Round(Length.FromCentimeters(20), Length.FromCentimeters(20)),
                count,
                Length.FromCentimeters(2),
                Ratio.FromPercent(10),
                "medium",
                Volume.FromLiters(20),
                wintersIndoors: true),
        ],
        chances: chances);

    public static AcceptedChances Chances(double everyPercent) => new(
        Ratio.FromPercent(everyPercent),
        Ratio.FromPercent(everyPercent),
        Ratio.FromPercent(everyPercent),
        Ratio.FromPercent(everyPercent),
        Ratio.FromPercent(everyPercent));

    /// <summary>The demo's weather with every day moved on, and its temperatures changed.</summary>
    public static DailyTemperatures Weather(int daysLater = 0, double factor = 1, double addCelsius = 0)
    {
        DailyTemperatures demo = SeasonFiles.DemoWeather;
        double[] minima = new double[demo.Count];
        double[] maxima = new double[demo.Count];
        for (int day = 0; day < demo.Count; day++)
        {
            bool isKnown = demo.TryGet(demo.Start.AddDays(day), out DailyTemperature? known);
            minima[day] = isKnown ? known!.Minimum.DegreesCelsius * factor + addCelsius : double.NaN;
            maxima[day] = isKnown ? known!.Maximum.DegreesCelsius * factor + addCelsius : double.NaN;
        }

        return DailyTemperatures.Create(demo.Start.AddDays(daysLater), minima, maxima, TemperatureUnit.DegreeCelsius);
    }

    public static DateLine Date(this SeasonPlan plan, PlanStep step) => plan.Dates.Single(line => line.Step == step);
}
