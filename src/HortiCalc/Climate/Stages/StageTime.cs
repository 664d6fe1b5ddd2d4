using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>When a stage was reached in one season.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record StageTime
{
    /// <summary>Describes when a stage was reached.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="reached">When its sum, or the low end of its range, was reached; <see langword="null"/> where it is still to come.</param>
    /// <param name="passed">When the high end was reached; <see langword="null"/> where that is still to come or the end is open.</param>
    /// <exception cref="ArgumentNullException">The stage is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">It was passed without being reached, or before.</exception>
    public StageTime(HeatStage stage, TimeReached? reached, TimeReached? passed)
    {
        Stage = Guard.NotNull(stage);
        if (passed is not null && (reached is null || passed.Date < reached.Date))
            throw new ArgumentException($"passed was {passed}, reached {reached?.ToString() ?? "never"}; allowed: not before reached.", nameof(passed));
        Reached = reached;
        Passed = passed;
    }

    /// <summary>The stage.</summary>
    public HeatStage Stage { get; }

    /// <summary>When its sum, or the low end of its range, was reached; <see langword="null"/> where it is still to come.</summary>
    public TimeReached? Reached { get; }

    /// <summary>When the high end was reached; <see langword="null"/> where that is still to come or the end is open.</summary>
    public TimeReached? Passed { get; }

    /// <summary>The stage and when it was reached.</summary>
    /// <returns>For instance <c>crawlers: 225 °C·d, reached 2024-05-17, 40 % into the day</c>.</returns>
    public override string ToString() => $"{Stage}, {(Reached is null ? "to come" : $"reached {Reached}")}";
}
