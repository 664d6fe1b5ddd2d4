using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>How long an acidifying material takes, as one source prints it.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record AcidReactionTime
{
    /// <summary>Holds what a source prints.</summary>
    /// <param name="form">The chemical form.</param>
    /// <param name="until">What has come about by then.</param>
    /// <param name="low">The shortest time.</param>
    /// <param name="high">The longest time; not below the shortest.</param>
    /// <param name="source">Where it was published.</param>
    /// <exception cref="ArgumentException">The text is empty.</exception>
    /// <exception cref="ArgumentNullException">The source is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The form is unknown, or a time negative or the longest below the shortest.</exception>
    public AcidReactionTime(AcidForm form, string until, Duration low, Duration high, Source source)
    {
        Form = Guard.Defined(form);
        Until = Guard.NotBlank(until);
        double lowDays = Guard.NotNegative(Boundary.Days(low), "days", nameof(low));
        Guard.AtLeast(Boundary.Days(high), lowDays, "days", nameof(high));
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
        Source = Guard.NotNull(source);
    }

    /// <summary>The times in print. Cold or dry soil takes longer; sulfur is turned to acid best from 24 to 40 °C.</summary>
    public static IReadOnlyList<AcidReactionTime> Published { get; } = ValueList<AcidReactionTime>.Of(
    [
        new(AcidForm.Sulfur, "before a new test", Duration.FromWeeks(6), Duration.FromWeeks(8), AcidSources.GardenSulfurTime),
        new(AcidForm.Sulfur, "before the full effect shows", Duration.FromDays(365), Duration.FromDays(730), AcidSources.Rodale),
        new(AcidForm.Sulfur, "before the pH shows the change", Duration.FromDays(365), Duration.FromDays(730), AcidSources.GardenServices),
        new(AcidForm.IronSulfate, "it reacts", Duration.Zero, Duration.FromDays(30), AcidSources.Minnesota),
        new(AcidForm.AluminiumSulfate, "before another application", Duration.FromWeeks(3), Duration.FromWeeks(4), AcidSources.AluminiumLabel),
    ]);

    /// <summary>The chemical form.</summary>
    public AcidForm Form { get; }

    /// <summary>What has come about by then.</summary>
    public string Until { get; }

    /// <summary>The shortest time.</summary>
    public Duration Low { get; }

    /// <summary>The longest time.</summary>
    public Duration High { get; }

    /// <summary>Where it was published.</summary>
    public Source Source { get; }

    /// <summary>The form, the time and the source, in invariant culture.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        $"{Form}: {QuantityText.Of(Low, TextStyle.Default)} to {QuantityText.Of(High, TextStyle.Default)} {Until} [{Source}]";
}
