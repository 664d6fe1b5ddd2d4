using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>How much water a soil holds, by one method: what plants can take, and the limits where the method prints them.</summary>
/// <remarks>Immutable; equal when all members are equal. Shares are volumes of water in a volume of soil: 10 % is 100 mm in a metre, 1.2 inches in a foot.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record WaterHolding : IFormattable, IDisplayable
{
    /// <summary>Holds the answer of one method.</summary>
    /// <param name="available">The water between field capacity and wilting point.</param>
    /// <param name="fieldCapacity">The water after drainage, where it is printed.</param>
    /// <param name="wiltingPoint">The water at which plants wilt for good, where it is printed.</param>
    /// <exception cref="ArgumentNullException">The available water is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The available water is not from 0 to 100 %.</exception>
    public WaterHolding(
        Estimate<VolumeConcentration> available,
        EstimateRange<VolumeConcentration>? fieldCapacity = null,
        EstimateRange<VolumeConcentration>? wiltingPoint = null)
    {
        Available = Guard.NotNull(available);
        Guard.Within(Boundary.VolumeFraction(available.Value) * 100, 0, 100, "%", nameof(available));
        FieldCapacity = fieldCapacity;
        WiltingPoint = wiltingPoint;
    }

    /// <summary>The water between field capacity and wilting point.</summary>
    public Estimate<VolumeConcentration> Available { get; }

    /// <summary>The water after drainage, where the method prints it; both ends are the same where it prints one value.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public EstimateRange<VolumeConcentration>? FieldCapacity { get; }

    /// <summary>The water at which plants wilt for good, where the method prints it; both ends are the same where it prints one value.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public EstimateRange<VolumeConcentration>? WiltingPoint { get; }

    /// <summary>The depth of available water in a layer of such soil.</summary>
    /// <param name="layer">The thickness; 0 or more.</param>
    /// <returns>The depth of water; a millimetre is a litre a square metre.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The layer is negative or not finite.</exception>
    public Estimate<Length> In(Length layer)
    {
        double metres = Guard.NotNegative(Boundary.Metres(layer), "m", nameof(layer));
        return Available.Select(share => Length.FromMeters(Boundary.VolumeFraction(share) * metres));
    }

    /// <summary>The answer in metric units and invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The answer as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The available water, its range, method and source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => ((IDisplayable)Available).ToDisplay(style);

    private string ToString(TextStyle style) => Available.ToString(style.Format, style.Culture);
}
