using System.Xml.Linq;
using HortiCalc.Climate;
using HortiCalc.Pictures;

namespace HortiCalc.Tests.Repository;

/// <summary>docs/degree-days.md and its picture show what the library counts.</summary>
public class DegreeDayArticleTests
{
    private const string HowTo = "write it again with 'dotnet run docs/tools/draw-degree-days.cs'.";

    /// <summary>Drawing measures every area against the library, and refuses where they differ.</summary>
    [Fact]
    public void Picture_OnDisk_IsCurrent()
    {
        string drawn = File.ReadAllText(DegreeDayPicture.FilePath).ReplaceLineEndings("\n");

        Assert.True(drawn == DegreeDayPicture.Write(), "docs/images/degree-day-methods.svg is stale; " + HowTo);
    }

    [Fact]
    public void Table_OfTheArticle_IsCurrent()
    {
        string article = File.ReadAllText(DegreeDayArticle.FilePath).ReplaceLineEndings("\n");

        Assert.True(article == DegreeDayArticle.WithTable(article), "The yearly sums of docs/degree-days.md are stale; " + HowTo);
        Assert.Contains("](images/degree-day-methods.svg)", article, StringComparison.Ordinal);
        Assert.All(DegreeDayMethod.All, method => Assert.Contains($"| {method} |", article, StringComparison.Ordinal));
    }

    /// <summary>The dates that the text below the table speaks of.</summary>
    [Theory]
    [InlineData("average of minimum and maximum", "27 June")]
    [InlineData("average with both extremes clamped", "15 June")]
    [InlineData("single sine", "22 June")]
    public void Table_DatesThatTheTextNames_AreInIt(string method, string date) => Assert.Contains(
        File.ReadLines(DegreeDayArticle.FilePath),
        line => line.StartsWith($"| {method} | none |", StringComparison.Ordinal) && line.EndsWith($"| {date} |", StringComparison.Ordinal));

    [Fact]
    public void Picture_ReadAloud_IsWellFormedAndNamesEveryPanel()
    {
        XNamespace svg = "http://www.w3.org/2000/svg";
        XElement picture = XElement.Parse(DegreeDayPicture.Write());
        List<string> panels = [.. picture.Elements(svg + "g").Select(group => group.Element(svg + "title")!.Value)];

        Assert.NotEmpty(picture.Element(svg + "title")!.Value);
        Assert.NotEmpty(picture.Element(svg + "desc")!.Value);
        Assert.Contains("single sine, cutoff horizontal: 10.4 °C·d  =  18.8 °F·d", panels);
        Assert.Contains("single sine, cutoff intermediate, below zero: −1.0 °C·d  =  −1.8 °F·d", panels);
        Assert.Equal(panels.Count, panels.Distinct().Count());
    }
}
