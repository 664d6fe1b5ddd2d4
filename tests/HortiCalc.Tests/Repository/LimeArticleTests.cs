using System.Globalization;
using System.Xml.Linq;
using HortiCalc.Pictures;
using HortiCalc.Reference;
using HortiCalc.Soil;

namespace HortiCalc.Tests.Repository;

/// <summary>The picture of docs/how-much-lime.md shows what the library answers, and the article speaks of the same figures.</summary>
public class LimeArticleTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static string Article { get; } =
        File.ReadAllText(Path.Combine(ReferenceLibrary.RepositoryRoot, "docs", "how-much-lime.md")).ReplaceLineEndings(" ");

    [Fact]
    public void Picture_OnDisk_IsCurrent() => Assert.True(
        File.ReadAllText(LimePicture.FilePath).ReplaceLineEndings("\n") == LimePicture.Write(),
        "docs/images/lime-methods.svg is stale; write it again with 'dotnet run docs/tools/draw-lime.cs'.");

    [Fact]
    public void Picture_ReadAloud_NamesEveryMethodThatAnswersOnce()
    {
        XElement picture = XElement.Parse(LimePicture.Write());
        string[] parts = [.. picture.Elements(Svg + "g").Select(group => group.Element(Svg + "title")!.Value)];
        string[] expected = [.. LimePicture.Comparison().Answers.Select(answer =>
            $"{answer.Rate.Method.Name}: {Math.Round(answer.Rate.Value.GramsPerSquareMeter, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture)} g/m²")];

        Assert.Equal(expected.Order(), parts.Order());
        Assert.NotEmpty(picture.Element(Svg + "title")!.Value);
        Assert.NotEmpty(picture.Element(Svg + "desc")!.Value);
        Assert.Contains("](images/lime-methods.svg)", Article, StringComparison.Ordinal);
    }

    /// <summary>Bold letters of 13 pixels are at most 7.6 pixels wide on the average, as drawn with DejaVu Sans, the widest of the fonts named.</summary>
    [Fact]
    public void Picture_NamesLeftOfThePlot_AreInsideThePicture() => Assert.All(
        XElement.Parse(LimePicture.Write()).Descendants(Svg + "text").Where(text => (string?)text.Attribute("text-anchor") == "end"),
        text => Assert.True((double)text.Attribute("x")! >= 7.6 * text.Value.Length, text.Value));

    [Fact]
    public void Article_CountAndSpan_AreThoseOfTheComparison()
    {
        LimeComparison comparison = LimePicture.Comparison();
        double[] grams = [.. comparison.Answers.Select(answer => answer.Rate.Value.GramsPerSquareMeter)];

        Assert.Equal(14, comparison.Answers.Count);
        Assert.Contains($"by fourteen methods: hollow dots as published, filled dots brought to 15 cm of soil, from {grams.Min():0} to {grams.Max():0} grams", Article, StringComparison.Ordinal);
        Assert.True(grams.Max() > 3 * grams.Min());
    }

    /// <summary>Those that aim at a saturation take no notice of the target, as the article says.</summary>
    [Fact]
    public void Article_SaturationMethods_TakeNoNoticeOfTheTarget() => Assert.All(
        LimingMethod.All.Where(method => !method.AimsAtPh && method != LimingMethod.GardenCalcium),
        method => Assert.Equal(
            Liming.Requirement(LimePicture.Soil(), new(6.0), method).Rate.Value, Liming.Requirement(LimePicture.Soil(), new(6.8), method).Rate.Value));
}
