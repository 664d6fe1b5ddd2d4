using HortiCalc.Reference;

namespace HortiCalc.Tests.Repository;

/// <summary>docs/validation.md says what the tests found, no more and no less.</summary>
public class ValidationPageTests
{
    [Fact]
    public void ValidationPage_OnDisk_IsCurrent()
    {
        string written = File.ReadAllText(ValidationPage.FilePath).ReplaceLineEndings("\n");

        Assert.True(
            written == ValidationPage.Write().ReplaceLineEndings("\n"),
            "docs/validation.md is stale; write it again with 'dotnet run docs/tools/write-validation.cs'.");
    }
}
