using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>Published degree days that the stages of insects last.</summary>
public static class DevelopmentTimes
{
    /// <summary>Every one there is, source by source.</summary>
    public static IReadOnlyList<DevelopmentTime> All { get; } =
        ValueList<DevelopmentTime>.Of([.. CalifornianInsects.Times, .. InsectPapers.Rows]);

    /// <summary>All that are printed for an insect.</summary>
    /// <param name="subject">The name as the source prints it, capitals or not, or a part of it.</param>
    /// <returns>The times; none where no source has it.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public static IReadOnlyList<DevelopmentTime> Of(string subject)
    {
        Guard.NotBlank(subject);
        return ValueList<DevelopmentTime>.Of(All.Where(row => row.Subject.Contains(subject, StringComparison.OrdinalIgnoreCase)));
    }
}
