using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>A liming method that gives no answer for a report, with the reason.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record LimeRefusal
{
    /// <summary>Describes why a method gives no answer.</summary>
    /// <param name="method">The method.</param>
    /// <param name="reason">The reason.</param>
    /// <exception cref="ArgumentNullException">The method is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The reason is empty.</exception>
    public LimeRefusal(Method method, string reason)
    {
        Method = Guard.NotNull(method);
        Reason = Guard.NotBlank(reason);
    }

    /// <summary>The method.</summary>
    public Method Method { get; }

    /// <summary>The reason.</summary>
    public string Reason { get; }

    /// <summary>The method's name and the reason.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => $"{Method.Name}: {Reason}";
}
