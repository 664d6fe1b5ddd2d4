using HortiCalc.Climate;
using HortiCalc.Json;
using HortiCalc.Reference;
using HortiCalc.Season;

namespace HortiCalc.Tests.Season;

/// <summary>The files of the repository that these tests read, each once.</summary>
internal static class SeasonFiles
{
    private static readonly Lazy<DailyTemperatures> Invented = new(() => Weather("shared/demo/weather.csv"));
    private static readonly Lazy<DailyTemperatures> Real = new(() => Weather("shared/weather/seattle-2012-2015.csv"));
    private static readonly Lazy<string> Site = new(() => Text("shared/demo/site.json"));
    private static readonly Lazy<Garden> Garden = new(() => GardenFile.Read(DemoSite));
    private static readonly Lazy<SeasonPlan> Plan = new(() => SeasonPlan.For(DemoGarden, DemoWeather));

    /// <summary>Thirty invented years of a place with frost.</summary>
    public static DailyTemperatures DemoWeather => Invented.Value;

    /// <summary>Four real years of Seattle.</summary>
    public static DailyTemperatures Seattle => Real.Value;

    public static string DemoSite => Site.Value;

    public static Garden DemoGarden => Garden.Value;

    public static SeasonPlan DemoPlan => Plan.Value;

    public static string Text(string path) => File.ReadAllText(Path.Combine(ReferenceLibrary.RepositoryRoot, path));

    private static DailyTemperatures Weather(string path)
    {
        using StringReader reader = new(Text(path));
        return WeatherCsv.Read(reader);
    }
}
