namespace HortiCalc.Climate;

/// <summary>
/// What a kernel counts: as many minima, maxima and places as days, and next minima where the rule looks at them; the thresholds, and the
/// limits of what can be a temperature of the air. All in one unit.
/// </summary>
internal readonly ref struct DayRun
{
    public required ReadOnlySpan<double> Minima { get; init; }

    public required ReadOnlySpan<double> Maxima { get; init; }

    public required ReadOnlySpan<double> NextMinima { get; init; }

    public required Span<double> Destination { get; init; }

    public required double Lower { get; init; }

    public required double Upper { get; init; }

    public required double Lowest { get; init; }

    public required double Highest { get; init; }

    /// <summary>The same without an upper threshold.</summary>
    public DayRun WithoutUpper() => new()
    {
        Minima = Minima,
        Maxima = Maxima,
        NextMinima = NextMinima,
        Destination = Destination,
        Lower = Lower,
        Upper = double.PositiveInfinity,
        Lowest = Lowest,
        Highest = Highest,
    };
}
