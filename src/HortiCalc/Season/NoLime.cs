using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Season;

/// <summary>That no lime is planned for a bed, and why.</summary>
public sealed record NoLime : SupplyLine
{
    /// <summary>Says that no lime is planned for a bed.</summary>
    /// <param name="place">The bed.</param>
    /// <param name="crop">The crop.</param>
    /// <param name="reason">Why none is planned.</param>
    /// <param name="lowestPh">The lowest soil pH that suits the crop.</param>
    /// <param name="highestPh">The highest soil pH that suits the crop.</param>
    /// <param name="evidence">The methods it rests on; at least one.</param>
    /// <param name="soilPh">The pH of the soil, or <see langword="null"/> where it was not tested.</param>
    public NoLime(string place, string crop, NoLimeReason reason, Ph lowestPh, Ph highestPh, IReadOnlyList<Method> evidence, Ph? soilPh = null)
        : base(place, evidence)
    {
        Crop = Guard.NotBlank(crop);
        Reason = Guard.Defined(reason);
        LowestPh = lowestPh;
        HighestPh = highestPh;
        SoilPh = soilPh;
    }

    /// <summary>The crop.</summary>
    public string Crop { get; }

    /// <summary>Why none is planned.</summary>
    public NoLimeReason Reason { get; }

    /// <summary>The lowest soil pH that suits the crop.</summary>
    public Ph LowestPh { get; }

    /// <summary>The highest soil pH that suits the crop.</summary>
    public Ph HighestPh { get; }

    /// <summary>The pH of the soil, or <see langword="null"/> where it was not tested.</summary>
    public Ph? SoilPh { get; }

    /// <inheritdoc/>
    [JsonIgnore]
    public override string Item => "lime";

    private protected override string Amount(TextStyle style) =>
        Reason is NoLimeReason.SoilSuits or NoLimeReason.SoilAboveRange ? "none" : "not known";

    private protected override string Note(TextStyle style)
    {
        string soil = SoilPh is Ph ph ? $"soil pH {QuantityText.Of(ph.Value, style)}" : "soil";
        string range = $"{Crop} ({QuantityText.Of(LowestPh.Value, style)} to {QuantityText.Of(HighestPh.Value, style)})";
        return Reason switch
        {
            NoLimeReason.SoilSuits => $"{soil} suits {range}",
            NoLimeReason.SoilAboveRange => $"{soil} is above what suits {range}",
            NoLimeReason.NotTested => "the soil was not tested",
            _ => $"{soil} is below what suits {range}; no published method here covers it",
        };
    }
}
