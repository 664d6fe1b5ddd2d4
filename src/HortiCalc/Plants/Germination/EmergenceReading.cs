using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Plants;

/// <summary>What a source says of the emergence of a crop at a soil temperature.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record EmergenceReading : IFormattable, IDisplayable
{
    /// <summary>Holds a reading.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="soil">The soil temperature.</param>
    /// <param name="finding">Whether seedlings come up.</param>
    /// <param name="source">Where it was published.</param>
    /// <param name="days">The days; <see langword="null"/> where the finding is another than <see cref="EmergenceFinding.Emerges"/>.</param>
    /// <exception cref="ArgumentNullException">The source is missing.</exception>
    /// <exception cref="ArgumentException">The crop is empty, or days are missing where seedlings come up or given where they do not.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is out of range, or the finding is none of the defined ones.</exception>
    public EmergenceReading(string crop, Temperature soil, EmergenceFinding finding, Source source, Estimate<Duration>? days = null)
    {
        Crop = Guard.NotBlank(crop);
        SeedbedTemperature.Celsius(soil, nameof(soil));
        Soil = HouseUnits.Normalise(soil);
        Finding = Guard.Defined(finding);
        Source = Guard.NotNull(source);
        if (days is null == (finding == EmergenceFinding.Emerges))
            throw new ArgumentException($"days did not suit the finding, {finding}; allowed: days where seedlings come up, else none.", nameof(days));
        Days = days;
    }

    /// <summary>The crop.</summary>
    public string Crop { get; }

    /// <summary>The soil temperature.</summary>
    public Temperature Soil { get; }

    /// <summary>Whether seedlings come up.</summary>
    public EmergenceFinding Finding { get; }

    /// <summary>Where it was published.</summary>
    public Source Source { get; }

    /// <summary>The days; <see langword="null"/> where the finding is another than <see cref="EmergenceFinding.Emerges"/>.</summary>
    public Estimate<Duration>? Days { get; }

    /// <summary>The reading in °C and invariant culture.</summary>
    /// <returns>For instance <c>onion at 15 °C: 7 days [...]</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The reading as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for °C, <c>U</c> for °F.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The crop, the temperature, the finding and the source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(ToString(style))
    {
        Rows =
        [
            .. Days is null ? (DisplayRow[])[] : [new DisplayRow("method", Days.Method.Name), .. Days.Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence))],
            new DisplayRow("source", Source.ToString()),
        ],
    };

    private string ToString(TextStyle style)
    {
        string finding = Days is null ? EmergenceCell.Words(Finding)
            : Days.Range is null ? QuantityText.Of(Days.Value, style)
            : Days.Range.ToString(style);
        return $"{Crop} at {QuantityText.Of(Soil, style)}: {finding} [{Source}]";
    }
}
