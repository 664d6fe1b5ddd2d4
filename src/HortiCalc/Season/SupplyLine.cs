using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;

namespace HortiCalc.Season;

/// <summary>Something the season needs, how much of it, and what to buy. The kinds are a closed set.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(LimeSupply), "lime")]
[JsonDerivedType(typeof(AmendmentSupply), "amendment")]
[JsonDerivedType(typeof(MediumSupply), "medium")]
[JsonDerivedType(typeof(PlantSupply), "plants")]
[JsonDerivedType(typeof(MixSupply), "mix")]
[JsonDerivedType(typeof(NoLime), "no-lime")]
public abstract record SupplyLine : PlanLine
{
    private protected SupplyLine(string place, IReadOnlyList<Method> evidence)
        : base(place, evidence)
    {
    }

    /// <summary>What it is.</summary>
    [JsonIgnore]
    public abstract string Item { get; }

    internal sealed override IReadOnlyList<string> Cells(TextStyle style)
    {
        string amount = Amount(style);
        string inOtherUnits = Amount(style.Other);
        return [Item, amount, inOtherUnits == amount ? "" : inOtherUnits, Bags(style), Note(style)];
    }

    /// <summary>How much of it.</summary>
    private protected abstract string Amount(TextStyle style);

    /// <summary>The whole bags to buy; empty where it is not bought in bags.</summary>
    private protected virtual string Bags(TextStyle style) => "";

    /// <summary>What the amount follows from.</summary>
    private protected abstract string Note(TextStyle style);

    private protected static string BagText(int count, object size, TextStyle style) =>
        $"{QuantityText.Of(count, style)} of {QuantityText.Of(size, style)}";
}
