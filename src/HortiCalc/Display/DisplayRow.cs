namespace HortiCalc.Display;

/// <summary>One line of a result: what it is, and its text.</summary>
internal sealed record DisplayRow(string Label, string Text);
