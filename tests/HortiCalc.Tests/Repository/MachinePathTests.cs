using System.Text.RegularExpressions;
using HortiCalc.Reference;

namespace HortiCalc.Tests.Repository;

/// <summary>No file of the project names a place on somebody's machine.</summary>
public partial class MachinePathTests
{
    private static readonly string[] NotOurs = [".git", "bin", "obj", "artifacts", "_site", "api", "TestResults", "BenchmarkDotNet.Artifacts"];

    private static readonly string[] Read = [".cs", ".csproj", ".props", ".targets", ".json", ".md", ".csv", ".txt", ".sln", ".yml", ".sh", ".ipynb", ""];

    [Fact]
    public void Files_OfTheRepository_NameNoMachinePath()
    {
        List<string> files = [.. OurFiles(new DirectoryInfo(ReferenceLibrary.RepositoryRoot))];

        Assert.Contains(files, file => file.EndsWith("MachinePathTests.cs", StringComparison.Ordinal));
        Assert.Empty(files.SelectMany(file => File.ReadLines(file)
            .Select((line, index) => (Line: line, Number: index + 1))
            .Where(at => MachinePath().IsMatch(at.Line))
            .Select(at => $"{Path.GetRelativePath(ReferenceLibrary.RepositoryRoot, file)}:{at.Number}: {at.Line.Trim()}")));
    }

    [Theory]
    [InlineData('/', "home", "someone")]
    [InlineData('/', "root", "x")]
    [InlineData('/', "Users", "someone")]
    public void Pattern_APathOfAMachine_IsSeen(char separator, string first, string second) =>
        Assert.Matches(MachinePath(), $"see {separator}{first}{separator}{second}");

    private static IEnumerable<string> OurFiles(DirectoryInfo folder) => folder.EnumerateFiles()
        .Where(file => Read.Contains(file.Extension))
        .Select(file => file.FullName)
        .Concat(folder.EnumerateDirectories().Where(sub => !NotOurs.Contains(sub.Name)).SelectMany(OurFiles));

    [GeneratedRegex(@"(?<![\w.:/~-])/(?:home|root|Users|work|mnt|opt|var|tmp)/\w|(?<!\w)[A-Za-z]:\\\w")]
    private static partial Regex MachinePath();
}
