using HortiCalc.Units;

namespace HortiCalc.Evidence;

/// <summary>What a method was published for: the limits of its inputs, and the conditions that no number expresses.</summary>
public sealed record Domain
{
    /// <summary>Describes what a method was published for.</summary>
    /// <param name="conditions">The conditions in words, for instance <c>mineral soil, worked in to 15 cm</c>; empty where there are none.</param>
    /// <param name="limits">The limits of the inputs.</param>
    /// <exception cref="ArgumentNullException">The conditions or the limits are missing.</exception>
    public Domain(string conditions, params IReadOnlyList<DomainLimit> limits)
    {
        Conditions = Guard.NotNull(conditions);
        Limits = ValueList<DomainLimit>.Of(Guard.NotNull(limits));
    }

    /// <summary>The conditions in words; empty where there are none.</summary>
    public string Conditions { get; }

    /// <summary>The limits of the inputs.</summary>
    public IReadOnlyList<DomainLimit> Limits { get; }

    /// <summary>Whether the method was published for this value of an input.</summary>
    /// <param name="parameter">The input, by the name of the parameter that takes it.</param>
    /// <param name="value">The value, in the unit of the limit.</param>
    /// <returns>
    /// <see langword="false"/> where a limit on that input excludes the value, as the method itself does; inputs without a limit take any value.
    /// </returns>
    public bool Contains(string parameter, double value)
    {
        foreach (DomainLimit limit in Limits)
        {
            if (limit.Parameter == parameter && !limit.Contains(value))
                return false;
        }

        return true;
    }

    /// <summary>The domain in words.</summary>
    /// <returns>The limits and the conditions in one line.</returns>
    public override string ToString() =>
        string.Join("; ", Limits.Select(limit => limit.ToString()).Append(Conditions).Where(text => text.Length > 0));
}
