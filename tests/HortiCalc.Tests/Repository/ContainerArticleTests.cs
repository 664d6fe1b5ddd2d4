using System.Xml.Linq;
using HortiCalc.Containers;
using HortiCalc.Pictures;
using HortiCalc.Reference;

namespace HortiCalc.Tests.Repository;

/// <summary>The picture of docs/containers-water-and-air.md shows what the library answers, and the article speaks of the same figures.</summary>
public class ContainerArticleTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static string Article { get; } =
        File.ReadAllText(Path.Combine(ReferenceLibrary.RepositoryRoot, "docs", "containers-water-and-air.md")).ReplaceLineEndings(" ");

    [Fact]
    public void Picture_OnDisk_IsCurrent() => Assert.True(
        File.ReadAllText(ContainerWaterPicture.FilePath).ReplaceLineEndings("\n") == ContainerWaterPicture.Write(),
        "docs/images/container-water.svg is stale; write it again with 'dotnet run docs/tools/draw-containers.cs'.");

    [Fact]
    public void Picture_ReadAloud_NamesNineColumnsWithTheirShares()
    {
        XElement picture = XElement.Parse(ContainerWaterPicture.Write());
        string[] parts = [.. picture.Elements(Svg + "g").Select(group => group.Element(Svg + "title")!.Value)];

        Assert.Equal(9, parts.Distinct().Count());
        Assert.All(parts, part => Assert.Contains(" % water, ", part, StringComparison.Ordinal));
        Assert.Contains("](images/container-water.svg)", Article, StringComparison.Ordinal);
    }

    [Fact]
    public void Article_PeatInTrayAndTallPot_HasTheAirThatItSays()
    {
        double tray = ContainerWaterPicture.Drained(0, 0).AirSpace.Percent;
        double tall = ContainerWaterPicture.Drained(0, 2).AirSpace.Percent;

        Assert.Contains($"has {tray:0} % air in a tray cell and {tall:0} % in a tall pot", Article, StringComparison.Ordinal);
    }

    /// <summary>Each medium is airier the taller the pot, as the article says.</summary>
    [Fact]
    public void Article_TallerPot_IsAirierInEveryMedium() => Assert.All(Enumerable.Range(0, 3), medium =>
    {
        DrainedMedium[] pots = [.. Enumerable.Range(0, 3).Select(pot => ContainerWaterPicture.Drained(medium, pot))];
        Assert.True(pots[0].AirSpace.Percent < pots[1].AirSpace.Percent && pots[1].AirSpace.Percent < pots[2].AirSpace.Percent);
    });
}
