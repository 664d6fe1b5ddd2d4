using System.Runtime.CompilerServices;
using HortiCalc.Units;

namespace HortiCalc.Evidence;

/// <summary>A published way to reach a number: its name, where it comes from and what it was published for.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record Method
{
    /// <summary>Describes a method.</summary>
    /// <param name="key">A short stable name, for translation and storage.</param>
    /// <param name="name">The name in plain English.</param>
    /// <param name="source">Where the method and its coefficients come from.</param>
    /// <param name="domain">What the method was published for.</param>
    /// <exception cref="ArgumentException">A text is empty, or the source or the domain is missing.</exception>
    public Method(string key, string name, Source source, Domain domain)
    {
        Key = Guard.NotBlank(key);
        Name = Guard.NotBlank(name);
        Source = Guard.NotNull(source);
        Domain = Guard.NotNull(domain);
    }

    /// <summary>A short stable name, for translation and storage.</summary>
    public string Key { get; }

    /// <summary>The name in plain English.</summary>
    public string Name { get; }

    /// <summary>Where the method and its coefficients come from.</summary>
    public Source Source { get; }

    /// <summary>What the method was published for.</summary>
    public Domain Domain { get; }

    /// <summary>The method with its source.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => $"{Name} [{Source}]";

    /// <summary>Refuses a value that the method was not published for; returns any other.</summary>
    /// <remarks>The limit is the one whose <see cref="DomainLimit.Parameter"/> is the parameter's name.</remarks>
    internal double Require(double value, string unit, [CallerArgumentExpression(nameof(value))] string parameter = "")
    {
        foreach (DomainLimit limit in Domain.Limits)
        {
            if (limit.Parameter == parameter && !limit.Contains(value))
                throw Guard.Refused(parameter, value, unit, $"{limit.Span}, which is what '{Name}' was published for");
        }

        return value;
    }
}
