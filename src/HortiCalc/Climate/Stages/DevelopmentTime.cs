using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>The degree days that one stage of an insect lasts, as a source prints them: no date follows without knowing when it began.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record DevelopmentTime
{
    /// <summary>Describes how long a stage lasts.</summary>
    /// <param name="subject">The insect, by its English name or, where the source prints no other, its scientific one.</param>
    /// <param name="stage">The stage.</param>
    /// <param name="requirement">The degree days and how they were counted.</param>
    /// <exception cref="ArgumentException">A text is empty, or the requirement is missing.</exception>
    public DevelopmentTime(string subject, string stage, HeatRequirement requirement)
    {
        Subject = Guard.NotBlank(subject);
        Stage = Guard.NotBlank(stage);
        Requirement = Guard.NotNull(requirement);
    }

    /// <summary>The insect, by its English name or, where the source prints no other, its scientific one.</summary>
    public string Subject { get; }

    /// <summary>The stage.</summary>
    public string Stage { get; }

    /// <summary>The degree days and how they were counted.</summary>
    public HeatRequirement Requirement { get; }

    /// <summary>The time in one line.</summary>
    /// <returns>Subject, stage and requirement.</returns>
    public override string ToString() => $"{Subject}, {Stage}: {Requirement}";
}
