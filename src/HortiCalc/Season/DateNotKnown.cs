using HortiCalc.Display;
using HortiCalc.Units;

namespace HortiCalc.Season;

/// <summary>There is no date, and this is why.</summary>
public sealed record DateNotKnown : DateReason
{
    /// <summary>Says why there is no date.</summary>
    /// <param name="why">A few words in English.</param>
    /// <exception cref="ArgumentException">There are no words.</exception>
    public DateNotKnown(string why) => Why = Guard.NotBlank(why);

    /// <summary>Why there is no date.</summary>
    public string Why { get; }

    internal override string Text(PlanStep step, TextStyle style) => Why;
}
