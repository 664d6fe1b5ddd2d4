using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Mixes;
using HortiCalc.Units;

namespace HortiCalc.Season;

/// <summary>The ingredients of a mix.</summary>
public sealed record MixSupply : SupplyLine
{
    /// <summary>Describes the ingredients of a mix.</summary>
    /// <param name="place">What the mix is for.</param>
    /// <param name="batch">The amounts.</param>
    /// <param name="evidence">The methods it rests on; at least one.</param>
    public MixSupply(string place, RecipeBatch batch, IReadOnlyList<Method> evidence)
        : base(place, evidence) => Batch = Guard.NotNull(batch);

    /// <summary>The amounts, with the recipe, its source and its cautions.</summary>
    public RecipeBatch Batch { get; }

    /// <inheritdoc/>
    [JsonIgnore]
    public override string Item => string.Join(", ", Batch.Amounts.Select(amount => amount.Ingredient.Name.Split(" (")[0]));

    private protected override string Amount(TextStyle style) => string.Join(", ", Batch.Amounts.Select(amount => amount.Span(style)));

    private protected override string Note(TextStyle style)
    {
        string contact = Batch.ContactTime is UnitsNet.Duration time ? $"; leave for at least {QuantityText.Of(time, style)}" : "";
        return (Batch.IsUndiluted ? "undiluted" : $"in {Batch.Water.Span(style)} of water") + contact;
    }
}
