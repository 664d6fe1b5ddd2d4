namespace HortiCalc.Reference;

/// <summary>The head of a file of published values.</summary>
public sealed record ReferenceSource(string Room, string Key, string Title, string Publisher, string Year, string Url, ReferenceKind Kind);
