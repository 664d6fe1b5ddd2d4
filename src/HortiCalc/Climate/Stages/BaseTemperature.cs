using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>The temperatures between which a source counts the development of a crop or an insect, and by which method.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record BaseTemperature
{
    /// <summary>Describes what a source prints.</summary>
    /// <param name="subject">The crop or insect by its English name.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="thresholds">The base and, where one is printed, the upper threshold.</param>
    /// <param name="method">The method; <see langword="null"/> where the source does not say.</param>
    /// <param name="cutoff">What is done above the upper threshold.</param>
    /// <param name="source">Where it was published.</param>
    /// <exception cref="ArgumentException">The text is empty, something is missing, or the method is not defined for the cutoff.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The kind or the cutoff is none of the defined ones.</exception>
    public BaseTemperature(
        string subject, StageSubject kind, DegreeDayThresholds thresholds, DegreeDayMethod? method, UpperCutoff cutoff, Source source)
    {
        Subject = Guard.NotBlank(subject);
        Kind = Guard.Defined(kind);
        Thresholds = Guard.NotNull(thresholds);
        Method = method;
        Cutoff = Guard.Defined(cutoff);
        Source = Guard.NotNull(source);
        (method ?? DegreeDayMethod.SingleSine).Require(thresholds, cutoff);
    }

    /// <summary>The crop or insect by its English name.</summary>
    public string Subject { get; }

    /// <summary>What it is.</summary>
    public StageSubject Kind { get; }

    /// <summary>The base and, where one is printed, the upper threshold.</summary>
    public DegreeDayThresholds Thresholds { get; }

    /// <summary>The method; <see langword="null"/> where the source does not say.</summary>
    public DegreeDayMethod? Method { get; }

    /// <summary>What is done above the upper threshold.</summary>
    public UpperCutoff Cutoff { get; }

    /// <summary>Where it was published.</summary>
    public Source Source { get; }

    /// <summary>The temperatures in one line.</summary>
    /// <returns>Subject, thresholds, method and source.</returns>
    public override string ToString() =>
        $"{Subject}: {Thresholds}, {Method?.ToString() ?? "method not stated"}, cutoff {DegreeDayText.Of(Cutoff)} [{Source}]";
}
