using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>The plants for a bed or for pots, or the seeds or cuttings to start for them.</summary>
public sealed record PlantSupply : SupplyLine
{
    /// <summary>Describes the plants for a bed or for pots.</summary>
    /// <param name="place">The bed or the pots.</param>
    /// <param name="crop">The crop.</param>
    /// <param name="plants">How many plants there is room for.</param>
    /// <param name="evidence">The methods it rests on; at least one.</param>
    /// <param name="spacing">How far apart they stand, or <see langword="null"/> in pots.</param>
    /// <param name="from">What they are raised from, or <see langword="null"/> where plants are bought or stand already.</param>
    /// <param name="starts">How many seeds or cuttings to start; as many as plants where they are bought.</param>
    /// <param name="success">The share of them that succeeds.</param>
    /// <param name="tooFew">The accepted chance that too few succeed.</param>
    public PlantSupply(
        string place,
        string crop,
        int plants,
        IReadOnlyList<Method> evidence,
        Spacing? spacing = null,
        Propagule? from = null,
        int? starts = null,
        Ratio? success = null,
        Ratio? tooFew = null)
        : base(place, evidence)
    {
        Crop = Guard.NotBlank(crop);
        Plants = Guard.AtLeast(plants, 1);
        Spacing = spacing;
        From = from;
        Starts = starts is int count ? Guard.AtLeast(count, plants, nameof(starts)) : null;
        Success = success is Ratio share ? HouseUnits.Normalise(share) : null;
        TooFew = tooFew is Ratio chance ? HouseUnits.Normalise(chance) : null;
    }

    /// <summary>The crop.</summary>
    public string Crop { get; }

    /// <summary>How many plants there is room for.</summary>
    public int Plants { get; }

    /// <summary>How far apart they stand, or <see langword="null"/> in pots.</summary>
    public Spacing? Spacing { get; }

    /// <summary>What they are raised from, or <see langword="null"/>.</summary>
    public Propagule? From { get; }

    /// <summary>How many seeds or cuttings to start, or <see langword="null"/> where plants are bought or stand already.</summary>
    public int? Starts { get; }

    /// <summary>The share of them that succeeds.</summary>
    public Ratio? Success { get; }

    /// <summary>The accepted chance that too few succeed.</summary>
    public Ratio? TooFew { get; }

    /// <inheritdoc/>
    [JsonIgnore]
    public override string Item => From switch
    {
        Propagule.Seed => $"{Crop}, seeds",
        Propagule.Cutting => $"{Crop}, cuttings",
        _ => $"{Crop}, plants",
    };

    private protected override string Amount(TextStyle style) => QuantityText.Of(Starts ?? Plants, style);

    private protected override string Note(TextStyle style)
    {
        string plants = $"{QuantityText.Of(Plants, style)} {(Plants == 1 ? "plant" : "plants")}";
        string raised = Success is Ratio share ? $"; {QuantityText.Of(share, style)} succeed" : "";
        return $"for {plants}{raised}";
    }
}
