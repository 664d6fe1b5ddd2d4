using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A bed with four right angles in plan that is deeper at one end than at the other.</summary>
/// <remarks>Immutable; equal when all dimensions are equal. The depth changes evenly along <see cref="Length"/>.</remarks>
/// <example><code>
/// SlopingBed bed = new(
///     width: Length.FromMeters(1.2), length: Length.FromMeters(4),
///     depthAtStart: Length.FromCentimeters(20), depthAtEnd: Length.FromCentimeters(50));
/// Volume soil = bed.Volume; // 1680 L
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record SlopingBed : IFormattable, IDisplayable
{
    /// <summary>Makes a bed with two depths.</summary>
    /// <param name="width">Across the slope; greater than zero.</param>
    /// <param name="length">Along the slope, measured level; greater than zero.</param>
    /// <param name="depthAtStart">The depth at one end; zero or more.</param>
    /// <param name="depthAtEnd">The depth at the other end; zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A side is not greater than zero, or a depth is negative.</exception>
    public SlopingBed(Length width, Length length, Length depthAtStart, Length depthAtEnd)
    {
        Width = Dimension.PositiveKept(width, nameof(width));
        Length = Dimension.PositiveKept(length, nameof(length));
        DepthAtStart = Dimension.NotNegativeKept(depthAtStart, nameof(depthAtStart));
        DepthAtEnd = Dimension.NotNegativeKept(depthAtEnd, nameof(depthAtEnd));
    }

    /// <summary>Across the slope.</summary>
    public Length Width { get; }

    /// <summary>Along the slope, measured level.</summary>
    public Length Length { get; }

    /// <summary>The depth at one end.</summary>
    public Length DepthAtStart { get; }

    /// <summary>The depth at the other end.</summary>
    public Length DepthAtEnd { get; }

    /// <summary>The ground it stands on.</summary>
    [JsonIgnore]
    public RectangleBed Ground => Bed.Rectangle(Width, Length);

    /// <summary>The depth in the middle, which is the mean.</summary>
    [JsonIgnore]
    public Length MeanDepth => Length.FromMeters((Boundary.Metres(DepthAtStart) + Boundary.Metres(DepthAtEnd)) / 2);

    /// <summary>What fills it.</summary>
    [JsonIgnore]
    public Volume Volume => Ground.FillVolume(MeanDepth);

    /// <summary>By how much the depth changes per length, as a share.</summary>
    [JsonIgnore]
    public Ratio Slope => Ratio.FromPercent(100 * ChangeMetres / Boundary.Metres(Length));

    /// <summary>The face that slopes: longer than the ground where one of ground and surface is level and the other not.</summary>
    [JsonIgnore]
    public Area SlopingFace => Area.FromSquareMeters(Boundary.Metres(Width) * double.Hypot(Boundary.Metres(Length), ChangeMetres));

    private double ChangeMetres => Math.Abs(Boundary.Metres(DepthAtEnd) - Boundary.Metres(DepthAtStart));

    /// <summary>The bed in metric units and invariant culture.</summary>
    /// <returns>For instance <c>sloping bed 1.2 m by 4 m, 20 cm to 50 cm deep, 1.68 m³</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The bed as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The dimensions and the volume.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(Title(style))
    {
        Rows =
        [
            new DisplayRow("volume", QuantityText.Of(Volume, style)),
            new DisplayRow("slope", QuantityText.Of(Slope, style)),
            new DisplayRow("sloping face", QuantityText.Of(SlopingFace, style)),
        ],
    };

    private string Title(TextStyle style) =>
        $"sloping bed {QuantityText.Of(Width, style)} by {QuantityText.Of(Length, style)},"
        + $" {QuantityText.Of(DepthAtStart, style)} to {QuantityText.Of(DepthAtEnd, style)} deep";

    private string ToString(TextStyle style) => $"{Title(style)}, {QuantityText.Of(Volume, style)}";
}
