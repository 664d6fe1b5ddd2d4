using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The layers of a soil from the top, and the water that they hold to the depth of roots.</summary>
/// <remarks>
/// Immutable; equal when the horizons are. Depths of water are exact sums: a millimetre is a litre on a square metre. A depth below the last horizon is
/// refused, because nobody said what lies there.
/// </remarks>
/// <example><code>
/// SoilProfile profile = new(
/// [
///     new SoilHorizon(Length.FromCentimeters(30), VolumeConcentration.FromPercent(15)),
///     new SoilHorizon(Length.FromCentimeters(70), VolumeConcentration.FromPercent(10)),
/// ]);
/// Length all = profile.AvailableWater(rootDepth: Length.FromCentimeters(60));                              // 75 mm
/// Length without = profile.ReadilyAvailableWater(Length.FromCentimeters(60), depletion: Ratio.FromPercent(40)); // 30 mm
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record SoilProfile : IFormattable, IDisplayable
{
    private const double Hair = 1e-12;

    /// <summary>Holds the layers.</summary>
    /// <param name="horizons">The layers from the top; at least one.</param>
    /// <exception cref="ArgumentNullException">The layers are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">There is none.</exception>
    public SoilProfile(IReadOnlyList<SoilHorizon> horizons)
    {
        Horizons = ValueList<SoilHorizon>.Of(Guard.NotNull(horizons));
        if (Horizons.Count == 0)
            throw new ArgumentException("horizons was empty; allowed: one layer or more.", nameof(horizons));
    }

    /// <summary>The layers from the top.</summary>
    public IReadOnlyList<SoilHorizon> Horizons { get; }

    /// <summary>How deep the profile is known.</summary>
    [JsonIgnore]
    public Length Depth => Length.FromMeters(DepthMetres);

    private double DepthMetres => Horizons.Sum(horizon => Boundary.Metres(horizon.Thickness));

    /// <summary>The available water from the surface to the depth of roots, when every layer is at field capacity.</summary>
    /// <param name="rootDepth">The depth, from 0 to that of the profile.</param>
    /// <returns>The depth of water.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is negative or below the profile.</exception>
    public Length AvailableWater(Length rootDepth) =>
        Sum(rootDepth, (horizon, _) => Boundary.VolumeFraction(horizon.AvailableWater));

    /// <summary>The water that plants take without loss, when every layer is at field capacity.</summary>
    /// <param name="rootDepth">The depth, from 0 to that of the profile.</param>
    /// <param name="depletion">The share taken without loss, from 0 to 100 %; <see cref="RootZones.DepletionShare"/> has it.</param>
    /// <returns>The depth of water.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is negative or below the profile, or the share is not from 0 to 100 %.</exception>
    public Length ReadilyAvailableWater(Length rootDepth, Ratio depletion)
    {
        double share = Guard.Within(Boundary.Fraction(depletion) * 100, 0, 100, "%", nameof(depletion)) / 100;
        return Length.FromMeters(Boundary.Metres(AvailableWater(rootDepth)) * share);
    }

    /// <summary>The water that fills the root zone again, where a share of the available water is left.</summary>
    /// <param name="rootDepth">The depth, from 0 to that of the profile.</param>
    /// <param name="remaining">The share of the available water that is left, from 0 to 100 %.</param>
    /// <returns>The depth of water to put into the soil; what runs off or drains comes on top.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is negative or below the profile, or the share is not from 0 to 100 %.</exception>
    public Length Refill(Length rootDepth, Ratio remaining)
    {
        double share = Guard.Within(Boundary.Fraction(remaining) * 100, 0, 100, "%", nameof(remaining)) / 100;
        return Length.FromMeters(Boundary.Metres(AvailableWater(rootDepth)) * (1 - share));
    }

    /// <summary>The water that fills the root zone again, where the water in each layer was measured.</summary>
    /// <param name="rootDepth">The depth, from 0 to that of the profile.</param>
    /// <param name="measured">The water by volume in each horizon, from the top; from 0 to 100 %.</param>
    /// <returns>The depth of water. A layer above field capacity asks for none; it does not help the others.</returns>
    /// <exception cref="ArgumentNullException">The measurements are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">There is not one for each horizon.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The depth is negative or below the profile, or a measurement is not from 0 to 100 %.</exception>
    /// <exception cref="InvalidOperationException">A horizon within the depth has no field capacity.</exception>
    public Length RefillTo(Length rootDepth, IReadOnlyList<VolumeConcentration> measured)
    {
        Guard.NotNull(measured);
        if (measured.Count != Horizons.Count)
            throw new ArgumentException($"measured had {Guard.Number(measured.Count)} values; allowed: one for each of {Guard.Number(Horizons.Count)} horizons.", nameof(measured));
        foreach (VolumeConcentration value in measured)
            Guard.Within(Boundary.VolumeFraction(value) * 100, 0, 100, "%", nameof(measured));
        return Sum(rootDepth, (horizon, index) => horizon.FieldCapacity is { } full
            ? Math.Max(0, Boundary.VolumeFraction(full) - Boundary.VolumeFraction(measured[index]))
            : throw new InvalidOperationException($"Horizon {Guard.Number(index + 1)}, {horizon}, has no field capacity; give one to say how far it is from full."));
    }

    /// <summary>The profile in metric units and invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The profile as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The depth and the available water of the whole.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(ToString(style))
    {
        Rows = [.. Horizons.Select((horizon, index) => new DisplayRow($"horizon {Guard.Number(index + 1)}", horizon.ToString(style.Format, style.Culture)))],
    };

    private Length Sum(Length rootDepth, Func<SoilHorizon, int, double> share)
    {
        double depth = Guard.Within(Boundary.Metres(rootDepth), 0, DepthMetres * (1 + Hair), "m", nameof(rootDepth));
        double top = 0;
        double water = 0;
        for (int i = 0; i < Horizons.Count && top < depth; i++)
        {
            double thickness = Boundary.Metres(Horizons[i].Thickness);
            water += Math.Min(thickness, depth - top) * share(Horizons[i], i);
            top += thickness;
        }

        return Length.FromMeters(water);
    }

    private string ToString(TextStyle style) =>
        $"{QuantityText.Of(Depth, style)} of soil holding {QuantityText.Of(AvailableWater(Depth), style)} of available water";
}
