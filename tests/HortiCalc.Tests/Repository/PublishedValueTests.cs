using HortiCalc.Reference;

namespace HortiCalc.Tests.Repository;

/// <summary>Every value of shared/reference against the library.</summary>
public class PublishedValueTests
{
    public static TheoryData<string> Files() => [.. ReferenceLibrary.Files().Select(file => Path.GetRelativePath(ReferenceLibrary.RepositoryRoot, file))];

    [Theory]
    [MemberData(nameof(Files))]
    public void PublishedValues_OfASource_ComeOutAsRecorded(string file)
    {
        List<string> surprises = [];
        foreach (ReferenceValue value in ReferenceLibrary.Load(Path.Combine(ReferenceLibrary.RepositoryRoot, file)))
        {
            Comparison comparison = Comparison.Run(value);
            if (!comparison.IsAsRecorded)
                surprises.Add(comparison.ToString());
        }

        Assert.True(surprises.Count == 0, $"{surprises.Count} not as recorded:\n" + string.Join("\n", surprises));
    }

    [Fact]
    public void PublishedValues_AllFiles_HaveUniqueKeysAndReasonsWhereTheyDeviate()
    {
        Assert.NotEmpty(ReferenceLibrary.Values);
        Assert.Empty(ReferenceLibrary.Values.GroupBy(value => value.Key).Where(group => group.Count() > 1).Select(group => group.Key));
        Assert.DoesNotContain(
            ReferenceLibrary.Values,
            value => value.Note.Length == 0 && (value.Step.Length > 0 || value.Gap.Length > 0 || value.Status != ReferenceStatus.Agrees));
    }

    [Fact]
    public void Calculations_ReadBackFromATable_AreCalculationsInUse() =>
        Assert.Empty(Calculations.ReadBack.Except(ReferenceLibrary.Values.Select(value => value.Calculation)));
}
