using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>What the sources print of the root depth of one crop, side by side, and how far they are apart.</summary>
/// <remarks>Immutable; equal when the crop and the rows are. <see cref="RootZones.Compare"/> makes it.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record RootZoneComparison : IFormattable, IDisplayable
{
    /// <summary>Puts rows side by side.</summary>
    /// <param name="crop">The crop asked for.</param>
    /// <param name="rows">What each source prints.</param>
    /// <exception cref="ArgumentNullException">The rows are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The crop is empty.</exception>
    public RootZoneComparison(string crop, IReadOnlyList<CropRootZone> rows)
    {
        Crop = Guard.NotBlank(crop);
        Rows = ValueList<CropRootZone>.Of(Guard.NotNull(rows));
    }

    /// <summary>The crop asked for.</summary>
    public string Crop { get; }

    /// <summary>What each source prints.</summary>
    public IReadOnlyList<CropRootZone> Rows { get; }

    /// <summary>From the lowest low end to the highest high end; <see langword="null"/> where no source has the crop.</summary>
    [JsonIgnore]
    public EstimateRange<Length>? Spread => Rows.Count == 0
        ? null
        : new EstimateRange<Length>(
            Length.FromMeters(Rows.Min(row => Boundary.Metres(row.Low))),
            Length.FromMeters(Rows.Max(row => Boundary.Metres(row.High))),
            "lowest and highest of the sources");

    /// <summary>The depths that every row has; <see langword="null"/> where there is none, or the rows have nothing in common.</summary>
    [JsonIgnore]
    public EstimateRange<Length>? Agreed
    {
        get
        {
            if (Rows.Count == 0)
                return null;
            double low = Rows.Max(row => Boundary.Metres(row.Low));
            double high = Rows.Min(row => Boundary.Metres(row.High));
            return low <= high ? new EstimateRange<Length>(Length.FromMeters(low), Length.FromMeters(high), "in the depth of every source") : null;
        }
    }

    /// <summary>Whether the sources disagree: no depth is in all of their spans.</summary>
    [JsonIgnore]
    public bool Disagree => Rows.Count > 1 && Agreed is null;

    /// <summary>The comparison in metric units and invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The comparison as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The crop, the number of rows, the span and what they agree on.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(ToString(style))
    {
        Rows = [.. Rows.Select(row => new DisplayRow(row.Source.Key, row.ToString(style)))],
    };

    private string ToString(TextStyle style)
    {
        string span = Spread is { } spread ? $", {spread.ToString(style.Format, style.Culture)}" : "";
        string agreed = Agreed is { } common ? $", all have {common.ToString(style.Format, style.Culture)}" : Rows.Count > 1 ? ", without a common depth" : "";
        return $"{Crop}, {QuantityText.Of(Rows.Count, style)} printed{span}{agreed}";
    }
}
