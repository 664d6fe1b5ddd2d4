using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>A method that does not answer for a soil, and why.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record AvailableWaterRefusal
{
    /// <summary>Says why a method does not answer.</summary>
    /// <param name="method">The method.</param>
    /// <param name="reason">Why.</param>
    /// <exception cref="ArgumentNullException">The method is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The reason is empty.</exception>
    public AvailableWaterRefusal(AvailableWaterMethod method, string reason)
    {
        Method = Guard.NotNull(method);
        Reason = Guard.NotBlank(reason);
    }

    /// <summary>The method.</summary>
    public AvailableWaterMethod Method { get; }

    /// <summary>Why it does not answer.</summary>
    public string Reason { get; }

    /// <summary>The method and the reason.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => $"{Method.Method.Name}: {Reason}";
}
