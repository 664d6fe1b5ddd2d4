using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A layer of a soil profile and the water that it holds for plants.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
/// <example><code>
/// SoilHorizon topsoil = SoilHorizon.Between(
///     Length.FromCentimeters(30), fieldCapacity: VolumeConcentration.FromPercent(28), wiltingPoint: VolumeConcentration.FromPercent(14));
/// SoilHorizon subsoil = new(Length.FromCentimeters(50), availableWater: VolumeConcentration.FromPercent(10));
/// </code></example>
public sealed record SoilHorizon : IFormattable
{
    /// <summary>Holds a layer.</summary>
    /// <param name="thickness">The thickness; above zero.</param>
    /// <param name="availableWater">The water between field capacity and wilting point, by volume, from 0 to 100 %.</param>
    /// <param name="fieldCapacity">The water after drainage, not below the available water, up to 100 %; needed only to say how far a moist soil is from full.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public SoilHorizon(Length thickness, VolumeConcentration availableWater, VolumeConcentration? fieldCapacity = null)
    {
        Guard.Positive(Boundary.Metres(thickness), "m", nameof(thickness));
        double available = Guard.Within(Boundary.VolumeFraction(availableWater) * 100, 0, 100, "%", nameof(availableWater));
        if (fieldCapacity is { } full)
        {
            Guard.Within(Boundary.VolumeFraction(full) * 100, available, 100, "%", nameof(fieldCapacity));
            FieldCapacity = HouseUnits.Normalise(full);
        }

        Thickness = HouseUnits.Normalise(thickness);
        AvailableWater = HouseUnits.Normalise(availableWater);
    }

    /// <summary>The thickness.</summary>
    public Length Thickness { get; }

    /// <summary>The water between field capacity and wilting point, by volume.</summary>
    public VolumeConcentration AvailableWater { get; }

    /// <summary>The water after drainage, where it is known.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public VolumeConcentration? FieldCapacity { get; }

    /// <summary>The water at which plants wilt for good; <see langword="null"/> where field capacity is not known.</summary>
    [JsonIgnore]
    public VolumeConcentration? WiltingPoint => FieldCapacity is { } full
        ? VolumeConcentration.FromPercent(Math.Max(0, Boundary.VolumeFraction(full) * 100 - Boundary.VolumeFraction(AvailableWater) * 100))
        : null;

    /// <summary>A layer by the water at both ends.</summary>
    /// <param name="thickness">The thickness; above zero.</param>
    /// <param name="fieldCapacity">The water after drainage, up to 100 %.</param>
    /// <param name="wiltingPoint">The water at which plants wilt for good, from 0 % to field capacity.</param>
    /// <returns>The layer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static SoilHorizon Between(Length thickness, VolumeConcentration fieldCapacity, VolumeConcentration wiltingPoint)
    {
        double full = Guard.Within(Boundary.VolumeFraction(fieldCapacity) * 100, 0, 100, "%", nameof(fieldCapacity));
        double dry = Guard.Within(Boundary.VolumeFraction(wiltingPoint) * 100, 0, full, "%", nameof(wiltingPoint));
        return new SoilHorizon(thickness, VolumeConcentration.FromPercent(full - dry), fieldCapacity);
    }

    /// <summary>A layer of a soil whose texture and organic matter were measured.</summary>
    /// <param name="thickness">The thickness; above zero.</param>
    /// <param name="hydraulics">How it holds water; gravel counts.</param>
    /// <returns>The layer.</returns>
    /// <exception cref="ArgumentNullException">The hydraulics are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is not above zero.</exception>
    public static SoilHorizon Of(Length thickness, SoilHydraulics hydraulics)
    {
        Guard.NotNull(hydraulics);
        double fine = 1 - Boundary.VolumeFraction(hydraulics.GravelVolume);
        return Between(
            thickness,
            VolumeConcentration.FromPercent(Boundary.VolumeFraction(hydraulics.FieldCapacity) * fine * 100),
            VolumeConcentration.FromPercent(Boundary.VolumeFraction(hydraulics.WiltingPoint) * fine * 100));
    }

    /// <summary>The layer in metric units and invariant culture.</summary>
    /// <returns>For instance <c>30 cm with 14 % by volume available</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The layer as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The thickness and the available water.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        return $"{QuantityText.Of(Thickness, style)} with {QuantityText.Of(AvailableWater, style)} available";
    }
}
