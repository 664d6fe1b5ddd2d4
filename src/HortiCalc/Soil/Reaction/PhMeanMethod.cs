using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>A way to take the mean of pH readings. Which is right depends on what was read, so the caller names it.</summary>
/// <remarks>Immutable; equal when of the same key. A closed set: the values are the static members.</remarks>
public sealed class PhMeanMethod
{
    private PhMeanMethod(Method method) => Method = method;

    /// <summary>By hydrogen activity, for solutions: irrigation water, leachate, canned food. U.S. Food and Drug Administration.</summary>
    public static PhMeanMethod Solutions { get; } = new(new Method(
        "ph-mean-solutions", "mean of hydrogen activities", ReactionSources.Fda, new Domain("readings of solutions")));

    /// <summary>The plain mean, for soil samples that stand for one bed: soil is buffered. Conyers 2026.</summary>
    public static PhMeanMethod SoilSamples { get; } = new(new Method(
        "ph-mean-soil-samples", "plain mean of pH", ReactionSources.Conyers2026, new Domain("soil samples, all read in the same way")));

    /// <summary>Both ways.</summary>
    public static IReadOnlyList<PhMeanMethod> All { get; } = ValueList<PhMeanMethod>.Of([Solutions, SoilSamples]);

    /// <summary>The way, with its source.</summary>
    public Method Method { get; }

    /// <summary>The way of a key.</summary>
    /// <param name="key">The <see cref="Method.Key"/>, for instance <c>ph-mean-solutions</c>.</param>
    /// <returns>The way.</returns>
    /// <exception cref="ArgumentException">There is none of that key.</exception>
    public static PhMeanMethod FromKey(string key)
    {
        Guard.NotBlank(key);
        return All.FirstOrDefault(one => one.Method.Key == key)
            ?? throw new ArgumentException($"key was '{key}'; allowed: {string.Join(", ", All.Select(one => one.Method.Key))}.", nameof(key));
    }

    /// <summary>Equal when of the same key.</summary>
    /// <param name="obj">The other.</param>
    /// <returns>Whether both are the same way.</returns>
    public override bool Equals(object? obj) => obj is PhMeanMethod other && other.Method.Key == Method.Key;

    /// <inheritdoc/>
    public override int GetHashCode() => Method.Key.GetHashCode(StringComparison.Ordinal);

    /// <summary>The name and source.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Method.ToString();
}
