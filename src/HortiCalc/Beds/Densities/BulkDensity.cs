using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>What a loose volume of a material weighs, with the moisture it was weighed at and where the figure comes
/// from.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. <see cref="BulkDensities"/> holds published ones; one's own, from a label or
/// from weighing a bucket, is made by the constructor. Where the source prints a span, the value used is its middle and the
/// result carries the span.
/// </remarks>
/// <example><code>
/// BulkDensity compost = BulkDensities.Named("massdep-recycling-weights", "finished compost");
/// Estimate&lt;Mass&gt; load = compost.MassOf(Volume.FromCubicMeters(2));
///
/// BulkDensity own = new(
///     "my compost", BulkMaterial.Compost, MoistureState.Moist, Density.FromKilogramsPerCubicMeter(640),
///     new Source("bucket", "a 10 L bucket weighed in the yard", "the grower", 2026, null));
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record BulkDensity : IFormattable, IDisplayable
{
    /// <summary>Describes a bulk density for which the source gives a span.</summary>
    /// <param name="name">The material as the source names it.</param>
    /// <param name="material">The kind of material.</param>
    /// <param name="moisture">How wet it was.</param>
    /// <param name="low">The low end; greater than zero.</param>
    /// <param name="high">The high end; not below <paramref name="low"/>.</param>
    /// <param name="source">Where the figure comes from.</param>
    /// <param name="conditions">What else the source says of it; empty where nothing.</param>
    /// <exception cref="ArgumentOutOfRangeException">A density is not greater than zero, or the high end is below the low
    /// one.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    [JsonConstructor]
    public BulkDensity(
        string name, BulkMaterial material, MoistureState moisture, Density low, Density high, Source source, string conditions = "")
    {
        double lowKilogramsPerCubicMetre = Guard.Positive(Boundary.KilogramsPerCubicMetre(low), "kg/m³", nameof(low));
        Guard.AtLeast(Boundary.KilogramsPerCubicMetre(high), lowKilogramsPerCubicMetre, "kg/m³", nameof(high));
        Name = Guard.NotBlank(name);
        Material = Guard.Defined(material);
        Moisture = Guard.Defined(moisture);
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
        Source = Guard.NotNull(source);
        Conditions = Guard.NotNull(conditions);
    }

    /// <summary>Describes a bulk density given as one figure.</summary>
    /// <param name="name">The material as the source names it.</param>
    /// <param name="material">The kind of material.</param>
    /// <param name="moisture">How wet it was.</param>
    /// <param name="density">The density; greater than zero.</param>
    /// <param name="source">Where the figure comes from: a publication, a label, one's own scales.</param>
    /// <exception cref="ArgumentOutOfRangeException">The density is not greater than zero.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public BulkDensity(string name, BulkMaterial material, MoistureState moisture, Density density, Source source)
        : this(
            name,
            material,
            moisture,
            Density.FromKilogramsPerCubicMeter(Guard.Positive(Boundary.KilogramsPerCubicMetre(density), "kg/m³", nameof(density))),
            density,
            source)
    {
    }

    /// <summary>The material as the source names it.</summary>
    public string Name { get; }

    /// <summary>The kind of material.</summary>
    public BulkMaterial Material { get; }

    /// <summary>How wet it was.</summary>
    public MoistureState Moisture { get; }

    /// <summary>The low end of what the source gives.</summary>
    public Density Low { get; }

    /// <summary>The high end of what the source gives; equal to <see cref="Low"/> where it gives one figure.</summary>
    public Density High { get; }

    /// <summary>Where the figure comes from.</summary>
    public Source Source { get; }

    /// <summary>What else the source says of it; empty where nothing.</summary>
    public string Conditions { get; }

    /// <summary>The density with its evidence: the figure, or the middle of the printed span with the span.</summary>
    /// <returns>The estimate.</returns>
    public Estimate<Density> ToEstimate()
    {
        string state = MoistureWords + (Conditions.Length == 0 ? "" : ", " + Conditions);
        Method method = new(
            "bulk-density." + Source.Key,
            $"bulk density of {Name}, {MoistureWords}{(IsSpan ? ", middle of the printed range" : "")}",
            Source,
            new Domain(state));
        double middleKilogramsPerCubicMetre = (Boundary.KilogramsPerCubicMetre(Low) + Boundary.KilogramsPerCubicMetre(High)) / 2;
        return new Estimate<Density>(
            Density.FromKilogramsPerCubicMeter(middleKilogramsPerCubicMetre),
            method,
            IsSpan ? new EstimateRange<Density>(Low, High, "range printed by the source") : null,
            cautions: Cautions());
    }

    /// <summary>What a volume weighs.</summary>
    /// <param name="volume">The loose volume; zero or more.</param>
    /// <returns>The mass, with the span where the source prints one, and what to take care of.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative.</exception>
    public Estimate<Mass> MassOf(Volume volume)
    {
        double cubicMetres = Guard.NotNegative(Boundary.Litres(volume), "L", nameof(volume)) / 1000;
        Estimate<Mass> mass = ToEstimate().Select(
            density => Mass.FromKilograms(Boundary.KilogramsPerCubicMetre(density) * cubicMetres));
        double mostKilograms = Boundary.KilogramsPerCubicMetre(High) * cubicMetres;
        return mostKilograms >= BedCautions.LiftingGuidelineKilograms ? mass.WithCautions(BedCautions.HeavyLoad) : mass;
    }

    /// <summary>What a layer lays on each area of what carries it: a roof, a balcony, a bench.</summary>
    /// <param name="depth">The depth of the layer; zero or more.</param>
    /// <returns>The mass per area, with the span where the source prints one, and what to take care of. Take a wet density: dry soil does
    /// not stay dry.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is negative.</exception>
    public Estimate<AreaDensity> LoadOf(Length depth)
    {
        double metres = Dimension.NotNegative(depth, nameof(depth));
        return ToEstimate()
            .Select(density => AreaDensity.FromGramsPerSquareMeter(Boundary.KilogramsPerCubicMetre(density) * metres * 1000))
            .WithCautions(BedCautions.StructuralLoad);
    }

    /// <summary>The same material with water added: from a dry density to the weight on the day it is carried.</summary>
    /// <param name="water">The water content by mass; greater than zero.</param>
    /// <param name="basis">What it is a share of.</param>
    /// <param name="moisture">How wet that is called: <see cref="MoistureState.Moist"/> or <see cref="MoistureState.Wet"/>.</param>
    /// <returns>The density, span and source kept, with the water among its conditions.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The water content or the moisture is out of range.</exception>
    /// <exception cref="InvalidOperationException">The density is not a dry one: its own water is not known.</exception>
    public BulkDensity WithWater(Ratio water, MoistureBasis basis, MoistureState moisture)
    {
        double percent = Guard.Positive(Boundary.Fraction(water) * 100, "%", nameof(water));
        if (Guard.Defined(moisture) is MoistureState.Dry or MoistureState.AsDelivered)
            throw new ArgumentOutOfRangeException(nameof(moisture), $"moisture was {moisture}; allowed: Moist, Wet.");
        if (Moisture != MoistureState.Dry)
            throw new InvalidOperationException($"The density of {Name} is of {MoistureWords} material; water can be added to a dry density only.");
        string conditions = $"water {Guard.Number(percent)} % of the {(basis == MoistureBasis.OfDryMass ? "dry" : "wet")} mass";
        return new BulkDensity(
            Name,
            Material,
            moisture,
            WaterContent.WetDensity(Low, water, basis),
            WaterContent.WetDensity(High, water, basis),
            Source,
            Conditions.Length == 0 ? conditions : Conditions + ", " + conditions);
    }

    /// <summary>How much room a mass takes when loose.</summary>
    /// <param name="mass">The mass; zero or more.</param>
    /// <returns>The volume, with the span where the source prints one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is negative.</exception>
    public Estimate<Volume> VolumeOf(Mass mass)
    {
        double kilograms = Guard.NotNegative(Boundary.Kilograms(mass), "kg", nameof(mass));
        return ToEstimate().Select(density => Volume.FromLiters(kilograms / Boundary.KilogramsPerCubicMetre(density) * 1000));
    }

    /// <summary>The density in metric units and invariant culture.</summary>
    /// <returns>For instance <c>finished compost, as delivered: 801 kg/m³ [source]</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The density as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>Material, moisture, density and source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"{Name}, {MoistureWords}: {Figure(style)}")
    {
        Rows =
        [
            .. Conditions.Length == 0 ? (DisplayRow[])[] : [new DisplayRow("conditions", Conditions)],
            new DisplayRow("source", Source.ToString()),
        ],
    };

    private bool IsSpan => Boundary.KilogramsPerCubicMetre(Low) < Boundary.KilogramsPerCubicMetre(High);

    private string MoistureWords => Moisture switch
    {
        MoistureState.Dry => "dry",
        MoistureState.Moist => "moist",
        MoistureState.Wet => "wet",
        _ => "as delivered",
    };

    private string Figure(TextStyle style) => PublishedSpan.Text(Low, High, style);

    private string ToString(TextStyle style) => $"{Name}, {MoistureWords}: {Figure(style)} [{Source}]";

    private List<Caution> Cautions()
    {
        List<Caution> cautions = [];
        if (Moisture != MoistureState.Wet)
            cautions.Add(BedCautions.WeightOfWater);
        cautions.AddRange(BedCautions.Of(Material));
        return cautions;
    }
}
