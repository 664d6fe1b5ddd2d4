using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Season;

/// <summary>Something that is not needed, or cannot be told, and why.</summary>
public sealed record NoSupply : SupplyLine
{
    /// <summary>Says that something is not needed or cannot be told.</summary>
    /// <param name="place">The bed or the pots.</param>
    /// <param name="item">What it is.</param>
    /// <param name="isKnown">Whether it is known that none is needed.</param>
    /// <param name="why">The reason, in a few words.</param>
    /// <param name="evidence">The methods it rests on; at least one.</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    public NoSupply(string place, string item, bool isKnown, string why, IReadOnlyList<Method> evidence)
        : base(place, evidence)
    {
        Item = Guard.NotBlank(item);
        IsKnown = isKnown;
        Why = Guard.NotBlank(why);
    }

    /// <inheritdoc/>
    public override string Item { get; }

    /// <summary>Whether it is known that none is needed.</summary>
    public bool IsKnown { get; }

    /// <summary>The reason, in a few words.</summary>
    public string Why { get; }

    private protected override string Amount(TextStyle style) => IsKnown ? "none" : "not known";

    private protected override string Note(TextStyle style) => Why;
}
