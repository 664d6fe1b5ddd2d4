using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A bed filled in layers up to a rim: what is there already, what is added from the bottom up, and how much room is left.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. Layers are stacked at their loose depths; one that is worked into the soil below it adds its
/// loose depth all the same.
/// </remarks>
/// <example><code>
/// LayeredBed bed = new(
///     Bed.Rectangle(Length.FromMeters(1.2), Length.FromMeters(2.4)), rim: Length.FromCentimeters(40), existing: Length.FromCentimeters(10),
///     [
///         new BedLayer("topsoil", BulkMaterial.Soil, AmendmentLayer.LooseOnTop(Length.FromCentimeters(20), Ratio.FromPercent(10))),
///         new BedLayer("compost", BulkMaterial.Compost, AmendmentLayer.LooseOnTop(Length.FromCentimeters(8), Ratio.FromPercent(10))),
///     ],
///     BedEdging.Timber);
/// Volume topsoil = bed.ToBuy[0]; // 634 L
/// Length left = bed.BelowRim; // 2 cm
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record LayeredBed : IFormattable, IDisplayable
{
    /// <summary>Describes a bed and its layers.</summary>
    /// <param name="ground">The shape in plan, inside the edging.</param>
    /// <param name="rim">The height of the edging above the ground; zero where there is none.</param>
    /// <param name="existing">The depth of fill that is there already; zero or more.</param>
    /// <param name="layers">What is added, from the bottom up.</param>
    /// <param name="edging">What the edging is made of.</param>
    /// <exception cref="ArgumentOutOfRangeException">A height is negative, or the edging is not one of the defined ones.</exception>
    public LayeredBed(Bed ground, Length rim, Length existing, IReadOnlyList<BedLayer> layers, BedEdging edging)
    {
        Ground = Guard.NotNull(ground);
        Rim = Dimension.NotNegativeKept(rim, nameof(rim));
        Existing = Dimension.NotNegativeKept(existing, nameof(existing));
        Layers = ValueList<BedLayer>.Of(Guard.NotNull(layers));
        Edging = Guard.Defined(edging);
    }

    /// <summary>The shape in plan, inside the edging.</summary>
    public Bed Ground { get; }

    /// <summary>The height of the edging above the ground.</summary>
    public Length Rim { get; }

    /// <summary>The depth of fill that is there already.</summary>
    public Length Existing { get; }

    /// <summary>What is added, from the bottom up.</summary>
    public IReadOnlyList<BedLayer> Layers { get; }

    /// <summary>What the edging is made of.</summary>
    public BedEdging Edging { get; }

    /// <summary>How much of each layer to buy, allowances included, in the order of the layers.</summary>
    [JsonIgnore]
    public IReadOnlyList<Volume> ToBuy => ValueList<Volume>.Of(Layers.Select(layer => layer.Layer.VolumeOver(Ground.Area)));

    /// <summary>How high the fill stands when the last layer is on, before anything settles.</summary>
    [JsonIgnore]
    public Length Height => Length.FromMeters(HeightMetres);

    /// <summary>The room left below the rim; zero where the fill stands above it.</summary>
    [JsonIgnore]
    public Length BelowRim => Length.FromMeters(Math.Max(0, Boundary.Metres(Rim) - HeightMetres));

    /// <summary>How far the fill stands above the rim; zero where it does not.</summary>
    [JsonIgnore]
    public Length AboveRim => Length.FromMeters(Math.Max(0, HeightMetres - Boundary.Metres(Rim)));

    /// <summary>What to take care of with these materials and this edging.</summary>
    [JsonIgnore]
    public IReadOnlyList<Caution> Cautions
    {
        get
        {
            List<Caution> cautions = [];
            if (Edging == BedEdging.TreatedTimber)
                cautions.Add(BedCautions.TreatedTimber);
            if (Layers.Any(layer => layer.Material == BulkMaterial.Soil))
                cautions.Add(BedCautions.ContaminatedFill);
            HashSet<Caution> ofMaterials = [.. Layers.SelectMany(layer => BedCautions.Of(layer.Material))];
            cautions.AddRange(((Caution[])[BedCautions.Salts, BedCautions.Dust]).Where(ofMaterials.Contains));
            return ValueList<Caution>.Of(cautions);
        }
    }

    private double HeightMetres => Boundary.Metres(Existing) + Layers.Sum(layer => Boundary.Metres(layer.Layer.LooseDepth));

    /// <summary>The bed in metric units and invariant culture.</summary>
    /// <returns>For instance <c>rectangle 1.2 m by 2.4 m with 2 layers, 38 cm high, 2 cm below the rim</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The bed as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The shape, the layers and the room left.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(ToString(style))
    {
        Rows =
        [
            .. Layers.Zip(ToBuy, (layer, volume) =>
                new DisplayRow(layer.Name, $"{QuantityText.Of(volume, style)}, {QuantityText.Of(layer.Layer.LooseDepth, style)} deep")),
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
        ],
    };

    private string ToString(TextStyle style)
    {
        string rim = (Boundary.Metres(AboveRim), Boundary.Metres(BelowRim)) switch
        {
            ( > 0, _) => $"{QuantityText.Of(AboveRim, style)} above the rim",
            (_, > 0) => $"{QuantityText.Of(BelowRim, style)} below the rim",
            _ => "level with the rim",
        };
        return $"{Ground.Describe(style)} with {QuantityText.Of(Layers.Count, style)} {(Layers.Count == 1 ? "layer" : "layers")},"
            + $" {QuantityText.Of(Height, style)} high, {rim}";
    }
}
