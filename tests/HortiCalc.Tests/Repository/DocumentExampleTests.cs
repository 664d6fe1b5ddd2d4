using System.Text.RegularExpressions;
using HortiCalc.Reference;

namespace HortiCalc.Tests.Repository;

/// <summary>
/// The examples of the README and of the articles compile, run, and print what the page says. A block marked
/// <c>csharp</c> is an example; a <c>text</c> block right behind it is its output; <c>csharp fragment</c> is neither.
/// </summary>
[Collection(nameof(RedirectsConsole))]
public partial class DocumentExampleTests
{
    public static TheoryData<string, int> Examples()
    {
        TheoryData<string, int> data = [];
        foreach (string page in Pages())
        {
            for (int index = 0; index < Blocks(page).Count; index++)
                data.Add(page, index);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Example_OnAPage_CompilesAndPrintsWhatThePageSays(string page, int index)
    {
        (string code, string? output) = Blocks(page)[index];

        Assert.Empty(ExampleProgram.Problems(code));
        string printed = ExampleProgram.Run(code);
        if (output is not null)
            Assert.Equal(output, printed);
    }

    [Fact]
    public void Readme_FirstExample_ShowsItsOutput() => Assert.NotNull(Blocks("README.md")[0].Output);

    private static IEnumerable<string> Pages() => Directory.EnumerateFiles(ReferenceLibrary.RepositoryRoot, "*.md")
        .Concat(Directory.EnumerateFiles(Path.Combine(ReferenceLibrary.RepositoryRoot, "docs"), "*.md", SearchOption.AllDirectories))
        .Select(file => Path.GetRelativePath(ReferenceLibrary.RepositoryRoot, file))
        .Where(page => !page.Contains("_site", StringComparison.Ordinal))
        .Order(StringComparer.Ordinal);

    private static List<(string Code, string? Output)> Blocks(string page)
    {
        string text = File.ReadAllText(Path.Combine(ReferenceLibrary.RepositoryRoot, page)).ReplaceLineEndings("\n");
        return [.. Block().Matches(text).Select(match => (
            match.Groups["code"].Value,
            match.Groups["output"].Success ? match.Groups["output"].Value.TrimEnd() : null))];
    }

    [GeneratedRegex(@"^```csharp\n(?<code>.*?)^```\n(?:\s*^```text\n(?<output>.*?)^```$)?", RegexOptions.Singleline | RegexOptions.Multiline)]
    private static partial Regex Block();
}
