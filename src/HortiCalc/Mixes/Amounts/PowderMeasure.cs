using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>What a level measure of a material weighs, as printed.</summary>
public sealed record PowderMeasure
{
    /// <summary>Describes a measure.</summary>
    /// <param name="material">The material.</param>
    /// <param name="measure">The measure in words.</param>
    /// <param name="volume">What the measure holds; more than 0.</param>
    /// <param name="low">The lowest mass printed; more than 0.</param>
    /// <param name="high">The highest mass printed; the same where one is printed.</param>
    /// <param name="source">Where it was seen.</param>
    /// <param name="doubt">Why the figure is doubtful; empty where it is not.</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is not above 0, or low is above high.</exception>
    public PowderMeasure(string material, string measure, Volume volume, Mass low, Mass high, Source source, string doubt = "")
    {
        Material = Guard.NotBlank(material);
        Measure = Guard.NotBlank(measure);
        Guard.Positive(Boundary.Litres(volume), "L", nameof(volume));
        double lowKilograms = Guard.Positive(Boundary.Kilograms(low), "kg", nameof(low));
        Guard.AtLeast(Boundary.Kilograms(high), lowKilograms, "kg", nameof(high));
        Volume = HouseUnits.Normalise(volume);
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
        Source = Guard.NotNull(source);
        Doubt = Guard.NotNull(doubt);
    }

    /// <summary>The material.</summary>
    public string Material { get; }

    /// <summary>The measure in words.</summary>
    public string Measure { get; }

    /// <summary>What the measure holds.</summary>
    public Volume Volume { get; }

    /// <summary>The lowest mass printed.</summary>
    public Mass Low { get; }

    /// <summary>The highest mass printed.</summary>
    public Mass High { get; }

    /// <summary>Where it was seen.</summary>
    public Source Source { get; }

    /// <summary>Why the figure is doubtful; empty where it is not.</summary>
    public string Doubt { get; }

    /// <summary>What a litre weighs, from the middle of the range.</summary>
    [JsonIgnore]
    public Density BulkDensity =>
        Density.FromKilogramsPerCubicMeter((Boundary.Kilograms(Low) + Boundary.Kilograms(High)) / 2 / Boundary.CubicMetres(Volume));

    /// <summary>The measure in metric units and invariant culture.</summary>
    /// <returns>For instance <c>urea, matchbox of 20 mL: 15 g</c>.</returns>
    public override string ToString() => $"{Material}, {Measure} of {QuantityText.Of(Volume, TextStyle.Default)}: {MixAmount.Span(Low, High, TextStyle.Default)}";
}
