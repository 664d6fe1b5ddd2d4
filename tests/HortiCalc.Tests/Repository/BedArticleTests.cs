using System.Xml.Linq;
using HortiCalc.Beds;
using HortiCalc.Pictures;
using HortiCalc.Reference;
using UnitsNet;

namespace HortiCalc.Tests.Repository;

/// <summary>The picture of docs/beds-and-containers.md shows what the library answers.</summary>
public class BedArticleTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void Picture_OnDisk_IsCurrent() => Assert.True(
        File.ReadAllText(BedPlanPicture.FilePath).ReplaceLineEndings("\n") == BedPlanPicture.Write(),
        "docs/images/bed-plan.svg is stale; write it again with 'dotnet run docs/tools/draw-beds.cs'.");

    [Fact]
    public void Picture_ReadAloud_HasTitleAndDescriptionAndStandsInTheArticle()
    {
        XElement picture = XElement.Parse(BedPlanPicture.Write());
        List<string> parts = [.. picture.Elements(Svg + "g").Select(group => group.Element(Svg + "title")!.Value)];

        Assert.NotEmpty(picture.Element(Svg + "title")!.Value);
        Assert.NotEmpty(picture.Element(Svg + "desc")!.Value);
        Assert.Equal(parts.Count, parts.Distinct().Count());
        Assert.Contains("](images/bed-plan.svg)", Article, StringComparison.Ordinal);
    }

    /// <summary>The figures that are written into the picture, worked out another way than by the types it draws.</summary>
    [Fact]
    public void Picture_ItsFigures_AreThoseOfTheShapes()
    {
        List<string> words = [.. XElement.Parse(BedPlanPicture.Write()).Descendants(Svg + "text").Select(text => text.Value)];

        Assert.Contains("path 6.48 m²", words); // (1.2 + 1.2) (3 + 1.2) - 1.2 x 3
        Assert.Contains("buy 475 L", words);    // 3.6 m² x 12 cm x 1.1
        Assert.Contains("buy 198 L", words);    // 3.6 m² x 5 cm x 1.1
        Assert.Contains("2.64 m²", words);      // pi x 1.2 x 0.7
        Assert.Contains(words, word => word.Contains("INVENTED", StringComparison.Ordinal));
        Assert.Equal(1, BedPlanPicture.Kitchen.BelowRim.Centimeters, 1e-9);
    }

    /// <summary>What the article says of loss and allowance.</summary>
    [Fact]
    public void Article_FiguresInTheText_AreThoseOfTheLibrary()
    {
        Assert.Equal(17.6, Settling.AllowanceFor(Ratio.FromPercent(15)).Percent, 0.05);
        Assert.Contains("needs 17.6 % more", Article, StringComparison.Ordinal);
        Assert.Equal([1, 40], ((double[])[NitrogenShares.Published.Min(share => share.Low.Percent), Math.Ceiling(CompostReleases.Published.Max(release => release.Share.Percent) / 10) * 10]));
        Assert.Contains("from one percent to almost forty", Article, StringComparison.Ordinal);
    }

    private static string Article => File.ReadAllText(Path.Combine(ReferenceLibrary.RepositoryRoot, "docs", "beds-and-containers.md")).ReplaceLineEndings(" ");
}
