using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A layer of compost, mulch or soil with the meaning of its depth made explicit, left on top or worked in.</summary>
/// <remarks>
/// <para>"Four inches of compost into the top eight" can mean that eight inches of soil take up four of compost, or that
/// compost and soil together are eight inches deep. The first is <see cref="WorkedIntoSoil"/> (a third of the mix is
/// compost), the second <see cref="WorkedToTotalDepth"/> (a half of it is).</para>
/// <para>All depths are loose depths, before anything settles, and shares are by loose volume.</para>
/// <para>Immutable; equal when all members are equal.</para>
/// </remarks>
/// <example><code>
/// Bed bed = Bed.Rectangle(width: Length.FromFeet(4), length: Length.FromFeet(8));
/// AmendmentLayer compost = AmendmentLayer
///     .LooseOnTop(Length.FromInches(3), settlingAllowance: Ratio.FromPercent(10))
///     .WorkedIntoSoil(Length.FromInches(5));
/// Volume toBuy = compost.VolumeOver(bed.Area);
/// Ratio? share = compost.ShareOfMix; // 37.5 %
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record AmendmentLayer : IFormattable, IDisplayable
{
    /// <summary>Describes a layer by its loose depth.</summary>
    /// <param name="looseDepth">The depth as spread; zero or more.</param>
    /// <param name="settlingAllowance">What is bought on top of the net volume because the material settles, as a share of the
    /// net volume; zero or more.</param>
    /// <param name="mixedDepth">The depth of layer and soil together once worked in, or <see langword="null"/> where the layer
    /// stays on top.</param>
    /// <exception cref="ArgumentOutOfRangeException">A depth or the allowance is negative, or the mixed depth is less than the
    /// layer's.</exception>
    [JsonConstructor]
    public AmendmentLayer(Length looseDepth, Ratio settlingAllowance, Length? mixedDepth = null)
    {
        LooseDepth = Dimension.NotNegativeKept(looseDepth, nameof(looseDepth));
        AllowancePercent(settlingAllowance);
        SettlingAllowance = HouseUnits.Normalise(settlingAllowance);
        if (mixedDepth is Length depth)
        {
            Length mixed = Dimension.PositiveKept(depth, nameof(mixedDepth));
            Guard.AtLeast(Boundary.Metres(mixed), Boundary.Metres(LooseDepth), "m", nameof(mixedDepth));
            MixedDepth = mixed;
        }
    }

    /// <summary>The depth as spread, before anything settles.</summary>
    public Length LooseDepth { get; }

    /// <summary>What is bought on top of the net volume because the material settles, as a share of the net volume.</summary>
    public Ratio SettlingAllowance { get; }

    /// <summary>The depth of layer and soil together once worked in; <see langword="null"/> where the layer stays on top.</summary>
    public Length? MixedDepth { get; }

    /// <summary>The share of the mixed depth that is amendment, by loose volume; <see langword="null"/> where the layer stays
    /// on top.</summary>
    [JsonIgnore]
    public Ratio? ShareOfMix => MixedDepth is Length mixed
        ? Ratio.FromPercent(100 * Boundary.Metres(LooseDepth) / Boundary.Metres(mixed))
        : null;

    /// <summary>A layer by the depth at which it is spread, left on top as a mulch is until it is worked in.</summary>
    /// <param name="depth">The loose depth; zero or more.</param>
    /// <param name="settlingAllowance">What is bought on top because the material settles, as a share of the net volume; zero
    /// where none is wanted.</param>
    /// <returns>The layer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth or the allowance is negative.</exception>
    public static AmendmentLayer LooseOnTop(Length depth, Ratio settlingAllowance) => new(depth, settlingAllowance);

    /// <summary>A layer by the share that it shall have of the depth worked, soil and amendment together.</summary>
    /// <param name="share">The share of the mix that is amendment; from 0 to 100 %.</param>
    /// <param name="mixedDepth">The depth of soil and amendment together; greater than zero.</param>
    /// <param name="settlingAllowance">What is bought on top because the material settles, as a share of the net volume; zero
    /// where none is wanted.</param>
    /// <returns>The layer, with the loose depth that gives this share.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0 to 100 %, the depth is not greater than zero, or
    /// the allowance is negative.</exception>
    public static AmendmentLayer ShareOfMixedDepth(Ratio share, Length mixedDepth, Ratio settlingAllowance)
    {
        double fraction = Guard.Within(Boundary.Fraction(share) * 100, 0, 100, "%", nameof(share)) / 100;
        double mixedMetres = Dimension.Positive(mixedDepth, nameof(mixedDepth));
        return new AmendmentLayer(Length.FromMeters(fraction * mixedMetres), settlingAllowance, mixedDepth);
    }

    /// <summary>The layer that a volume makes when it is spread over an area and then settles as allowed for.</summary>
    /// <param name="volume">The volume bought, allowance included; zero or more.</param>
    /// <param name="area">The ground to cover; greater than zero.</param>
    /// <param name="settlingAllowance">The part of the volume that goes into settling, as a share of the net volume.</param>
    /// <returns>The layer for which <see cref="VolumeOver"/> gives the volume back.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume or the allowance is negative, or the area is not greater than
    /// zero.</exception>
    public static AmendmentLayer FromVolume(Volume volume, Area area, Ratio settlingAllowance)
    {
        double looseMetres = Boundary.Metres(Amendment.Depth(volume, area)) / (1 + AllowancePercent(settlingAllowance) / 100);
        return new AmendmentLayer(Length.FromMeters(looseMetres), settlingAllowance);
    }

    /// <summary>The layer worked into a depth of soil that does not include it.</summary>
    /// <param name="soilDepth">The loose depth of soil that takes the layer up; greater than zero.</param>
    /// <returns>The same layer, the mixed depth being layer and soil together.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The soil depth is not greater than zero.</exception>
    public AmendmentLayer WorkedIntoSoil(Length soilDepth) => new(
        LooseDepth,
        SettlingAllowance,
        Length.FromMeters(Boundary.Metres(LooseDepth) + Dimension.Positive(soilDepth, nameof(soilDepth))));

    /// <summary>The layer worked in until layer and soil together have a depth.</summary>
    /// <param name="mixedDepth">The depth of layer and soil together; not less than the layer itself.</param>
    /// <returns>The same layer with this mixed depth.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mixed depth is less than the layer's.</exception>
    public AmendmentLayer WorkedToTotalDepth(Length mixedDepth) => new(LooseDepth, SettlingAllowance, mixedDepth);

    /// <summary>The volume to buy for an area, allowance included.</summary>
    /// <param name="area">The ground to cover; greater than zero.</param>
    /// <returns>Area times loose depth, and the allowance on top.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The area is not greater than zero.</exception>
    public Volume VolumeOver(Area area) =>
        Volume.FromLiters(Boundary.Litres(Amendment.VolumeFor(area, LooseDepth)) * (1 + Boundary.Fraction(SettlingAllowance)));

    /// <summary>The ground that a bought volume covers, allowance taken off.</summary>
    /// <param name="volume">The volume bought; zero or more.</param>
    /// <returns>The area; not defined for a layer without depth.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative.</exception>
    /// <exception cref="InvalidOperationException">The layer has no depth.</exception>
    public Area AreaCoveredBy(Volume volume)
    {
        double litres = Guard.NotNegative(Boundary.Litres(volume), "L", nameof(volume));
        double looseMetres = Boundary.Metres(LooseDepth);
        return looseMetres > 0
            ? Area.FromSquareMeters(litres / (1 + Boundary.Fraction(SettlingAllowance)) / looseMetres / 1000)
            : throw new InvalidOperationException("The layer has a loose depth of 0 m; a volume covers an area only where there is a depth.");
    }

    /// <summary>The layer in metric units and invariant culture.</summary>
    /// <returns>For instance <c>layer 5 cm deep, worked in to 20 cm (25 % of the mix), 10 % added for settling</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The layer as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The depth, what becomes of it, and the allowance.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"layer {QuantityText.Of(LooseDepth, style)} deep")
    {
        Rows =
        [
            new DisplayRow("worked in to", MixedDepth is Length mixed ? QuantityText.Of(mixed, style) : "stays on top"),
            .. ShareOfMix is Ratio share ? [new DisplayRow("share of the mix", QuantityText.Of(share, style))] : (DisplayRow[])[],
            new DisplayRow("added for settling", QuantityText.Of(SettlingAllowance, style)),
        ],
    };

    private static double AllowancePercent(Ratio settlingAllowance) =>
        Guard.NotNegative(Boundary.Fraction(settlingAllowance) * 100, "%", nameof(settlingAllowance));

    private string ToString(TextStyle style)
    {
        string worked = MixedDepth is Length mixed && ShareOfMix is Ratio share
            ? $"worked in to {QuantityText.Of(mixed, style)} ({QuantityText.Of(share, style)} of the mix)"
            : "left on top";
        return $"layer {QuantityText.Of(LooseDepth, style)} deep, {worked}, {QuantityText.Of(SettlingAllowance, style)} added for settling";
    }
}
