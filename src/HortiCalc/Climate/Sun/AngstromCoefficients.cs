using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>What part of the radiation above the atmosphere reaches the ground under cloud, and what part sunshine adds.</summary>
/// <remarks>Immutable; equal when all members are equal. Best fitted to the place; <see cref="Fao56"/> where no fit is at hand.</remarks>
/// <example><code>
/// Source station = new("station-fit", "Fit of 2015-2024", "our weather station", 2024, null, SourceKind.Given);
/// AngstromCoefficients local = new(overcast: 0.21, sunshine: 0.53, station);
/// </code></example>
public sealed record AngstromCoefficients : IFormattable
{
    /// <summary>Describes a pair of coefficients.</summary>
    /// <param name="overcast">The part on a day without sunshine, from 0 to 1.</param>
    /// <param name="sunshine">The part that a whole day of sunshine adds, from 0 to 1; with the other not above 1.</param>
    /// <param name="source">Where they come from.</param>
    /// <exception cref="ArgumentOutOfRangeException">A part is not from 0 to 1, or both are above 1 together.</exception>
    /// <exception cref="ArgumentNullException">The source is <see langword="null"/>.</exception>
    public AngstromCoefficients(double overcast, double sunshine, Source source)
    {
        Overcast = Guard.Within(overcast, 0, 1, "");
        Sunshine = Guard.Within(sunshine, 0, 1 - overcast, "");
        Source = Guard.NotNull(source);
    }

    /// <summary>0.25 and 0.50, recommended where none were fitted: FAO Irrigation and Drainage Paper 56, equation 35.</summary>
    public static AngstromCoefficients Fao56 { get; } = new(0.25, 0.50, SunEvidence.Fao56);

    /// <summary>The part on a day without sunshine.</summary>
    public double Overcast { get; }

    /// <summary>The part that a whole day of sunshine adds.</summary>
    public double Sunshine { get; }

    /// <summary>Where they come from.</summary>
    public Source Source { get; }

    internal Method Evidence => new(
        SunEvidence.FromSunshine.Key, SunEvidence.FromSunshine.Name, Source, SunEvidence.FromSunshine.Domain);

    /// <summary>The coefficients in invariant culture.</summary>
    /// <returns>For instance <c>0.25 + 0.5 n/N</c> and the source.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The coefficients as one line of text.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing: there is no unit.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>For instance <c>0.25 + 0.5 n/N</c> and the source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style) =>
        $"{QuantityText.Of(Overcast, style)} + {QuantityText.Of(Sunshine, style)} n/N [{Source}]";
}
