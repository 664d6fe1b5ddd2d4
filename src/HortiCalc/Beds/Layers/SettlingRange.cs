using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A published figure of how much loose material settles, shrinks or rots away.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record SettlingRange
{
    /// <summary>Describes a published figure.</summary>
    /// <param name="material">What it is about.</param>
    /// <param name="kind">What is lost or bought on top.</param>
    /// <param name="low">The low end; zero or more.</param>
    /// <param name="high">The high end; not below <paramref name="low"/>.</param>
    /// <param name="over">The time in which it happens; <see langword="null"/> where the source names none.</param>
    /// <param name="source">Where it comes from.</param>
    /// <exception cref="ArgumentException">The material is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The low end is negative, or the high end is below it.</exception>
    public SettlingRange(string material, SettlingKind kind, Ratio low, Ratio high, Duration? over, Source source)
    {
        Material = Guard.NotBlank(material);
        Kind = Guard.Defined(kind);
        double lowPercent = Guard.NotNegative(Boundary.Fraction(low) * 100, "%", nameof(low));
        Guard.AtLeast(Boundary.Fraction(high) * 100, lowPercent, "%", nameof(high));
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
        Over = over is Duration time ? HouseUnits.Normalise(time) : null;
        Source = Guard.NotNull(source);
    }

    /// <summary>What it is about.</summary>
    public string Material { get; }

    /// <summary>What is lost or bought on top.</summary>
    public SettlingKind Kind { get; }

    /// <summary>The low end.</summary>
    public Ratio Low { get; }

    /// <summary>The high end.</summary>
    public Ratio High { get; }

    /// <summary>The time in which it happens; <see langword="null"/> where the source names none.</summary>
    public Duration? Over { get; }

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }

    /// <summary>One line in metric units and invariant culture.</summary>
    /// <returns>For instance <c>topsoil: 20 % bought on top [source]</c>.</returns>
    public override string ToString() =>
        $"{Material}: {PublishedSpan.Text(Low, High, TextStyle.Default)} {KindWords}{(Over is Duration time ? $" in {QuantityText.Of(time, TextStyle.Default)}" : "")} [{Source}]";

    private string KindWords => Kind switch
    {
        SettlingKind.Allowance => "bought on top",
        SettlingKind.VolumeLoss => "of the volume lost",
        SettlingKind.DryingLoss => "of the depth lost on drying",
        _ => "of the mass lost",
    };
}
