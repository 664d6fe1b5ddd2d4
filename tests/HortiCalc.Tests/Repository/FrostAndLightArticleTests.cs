using System.Xml.Linq;
using HortiCalc.Climate;
using HortiCalc.Pictures;
using HortiCalc.Reference;
using UnitsNet;

namespace HortiCalc.Tests.Repository;

/// <summary>The pictures of docs/frost-and-light.md show what the library answers.</summary>
public class FrostAndLightArticleTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Pictures => ["frost-dates.svg", "frost-night.svg", "day-length.svg"];

    [Theory]
    [MemberData(nameof(Pictures))]
    public void Picture_OnDisk_IsCurrent(string name)
    {
        string stored = File.ReadAllText(PathOf(name)).ReplaceLineEndings("\n");

        Assert.True(stored == Drawn(name), $"docs/images/{name} is stale; write it again with 'dotnet run docs/tools/draw-frost-and-light.cs'.");
    }

    [Theory]
    [MemberData(nameof(Pictures))]
    public void Picture_ReadAloud_HasTitleAndDescriptionAndStandsInTheArticle(string name)
    {
        XElement picture = XElement.Parse(Drawn(name));
        List<string> parts = [.. picture.Elements(Svg + "g").Select(group => group.Element(Svg + "title")!.Value)];

        Assert.NotEmpty(picture.Element(Svg + "title")!.Value);
        Assert.NotEmpty(picture.Element(Svg + "desc")!.Value);
        Assert.True(parts.Count >= 2, "A picture names its parts.");
        Assert.Equal(parts.Count, parts.Distinct().Count());
        Assert.Contains($"](images/{name})", File.ReadAllText(Path.Combine(ReferenceLibrary.RepositoryRoot, "docs", "frost-and-light.md")), StringComparison.Ordinal);
    }

    [Fact]
    public void FrostDates_TheDatesAtTheDots_AreThoseOfTheClimate()
    {
        FreezeClimate climate = FrostDatesPicture.Climate();
        List<string> words = [.. Words("frost-dates.svg")];

        Assert.Contains(climate.LastInSpring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(10))!.Value.ToString(), words);
        Assert.Contains(climate.FirstInAutumn.DateWithChanceOfEarlierFreeze(Ratio.FromPercent(10))!.Value.ToString(), words);
        Assert.Contains(words, word => word.StartsWith("INVENTED", StringComparison.Ordinal));
    }

    /// <summary>The article lays the length of the season beside the days between both dates; it speaks of these figures.</summary>
    [Fact]
    public void Article_LengthAgainstDifferenceOfDates_IsAsTheTextSays()
    {
        FreezeClimate climate = FrostDatesPicture.Climate();
        Ratio tenPercent = Ratio.FromPercent(10);
        DateOnly last = climate.LastInSpring.DateWithChanceOfLaterFreeze(tenPercent)!.Value.InYear(2027);
        DateOnly first = climate.FirstInAutumn.DateWithChanceOfEarlierFreeze(tenPercent)!.Value.InYear(2027);
        double reliable = climate.SeasonWithoutFreeze.LengthWithChanceOfLongerSeason(Ratio.FromPercent(90)).Value.Days;
        string article = File.ReadAllText(Path.Combine(ReferenceLibrary.RepositoryRoot, "docs", "frost-and-light.md")).ReplaceLineEndings(" ");

        Assert.Contains($"{first.DayNumber - last.DayNumber} days lie between", article, StringComparison.Ordinal);
        Assert.Contains($"nine years in ten have {Math.Round(reliable, MidpointRounding.AwayFromZero)} days or more", article, StringComparison.Ordinal);
    }

    [Fact]
    public void FrostNight_TheHarmItTells_IsThatOfTheNight()
    {
        FrostNight night = FrostNightPicture.Night();

        Assert.Contains(Words("frost-night.svg"), word => word.StartsWith($"Harm from {night.TimeOfHarm:HH:mm}, for ", StringComparison.Ordinal));
    }

    /// <summary>By symmetry, and by what a polar circle is.</summary>
    [Fact]
    public void DayLength_OfTheYear_IsWhatLatitudeMakesOfIt()
    {
        Assert.All(DayLengthPicture.Hours(0), hours => Assert.InRange(hours, 12.05, 12.2));
        Assert.Equal(24, DayLengthPicture.Hours(70).Max());
        Assert.Equal(0, DayLengthPicture.Hours(70).Min());
        Assert.InRange(DayLengthPicture.Hours(60).Max(), 18.5, 19);
        Assert.True(DayLengthPicture.Hours(-35)[171] < 10 && DayLengthPicture.Hours(-35)[354] > 14, "The south has its short day in June.");
    }

    private static string PathOf(string name) => Path.Combine(ReferenceLibrary.RepositoryRoot, "docs", "images", name);

    private static string Drawn(string name) => name switch
    {
        "frost-dates.svg" => FrostDatesPicture.Write(),
        "frost-night.svg" => FrostNightPicture.Write(),
        _ => DayLengthPicture.Write(),
    };

    private static IEnumerable<string> Words(string name) => XElement.Parse(Drawn(name)).Descendants(Svg + "text").Select(text => text.Value);
}
