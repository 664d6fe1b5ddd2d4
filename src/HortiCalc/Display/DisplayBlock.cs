namespace HortiCalc.Display;

/// <summary>What a result shows: a title line and rows below it.</summary>
internal sealed record DisplayBlock(string Title)
{
    public IReadOnlyList<DisplayRow> Rows { get; init; } = [];
}
