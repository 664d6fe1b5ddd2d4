using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A published range of the nutrients in composts of one feedstock.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record CompostNutrients
{
    private CompostNutrients(
        string feedstock, double nitrogenLow, double nitrogenHigh, double phosphorusLow, double phosphorusHigh, double potassiumLow, double potassiumHigh)
        : this(
            feedstock,
            MassFraction.FromPercent(nitrogenLow),
            MassFraction.FromPercent(nitrogenHigh),
            MassFraction.FromPercent(phosphorusLow),
            MassFraction.FromPercent(phosphorusHigh),
            MassFraction.FromPercent(potassiumLow),
            MassFraction.FromPercent(potassiumHigh),
            Norganics)
    {
    }

    /// <summary>Describes the nutrients.</summary>
    /// <param name="feedstock">What the compost was made of.</param>
    /// <param name="nitrogenLow">The least nitrogen.</param>
    /// <param name="nitrogenHigh">The most nitrogen.</param>
    /// <param name="phosphorusLow">The least phosphorus.</param>
    /// <param name="phosphorusHigh">The most phosphorus.</param>
    /// <param name="potassiumLow">The least potassium.</param>
    /// <param name="potassiumHigh">The most potassium.</param>
    /// <param name="source">Where it comes from.</param>
    /// <exception cref="ArgumentException">The feedstock is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share is outside 0 to 100 %, or a high end is below its low one.</exception>
    [System.Text.Json.Serialization.JsonConstructor]
    public CompostNutrients(
        string feedstock,
        MassFraction nitrogenLow,
        MassFraction nitrogenHigh,
        MassFraction phosphorusLow,
        MassFraction phosphorusHigh,
        MassFraction potassiumLow,
        MassFraction potassiumHigh,
        Source source)
    {
        Feedstock = Guard.NotBlank(feedstock);
        (NitrogenLow, NitrogenHigh) = Span(nitrogenLow, nitrogenHigh, nameof(nitrogenLow), nameof(nitrogenHigh));
        (PhosphorusLow, PhosphorusHigh) = Span(phosphorusLow, phosphorusHigh, nameof(phosphorusLow), nameof(phosphorusHigh));
        (PotassiumLow, PotassiumHigh) = Span(potassiumLow, potassiumHigh, nameof(potassiumLow), nameof(potassiumHigh));
        Source = Guard.NotNull(source);
    }

    /// <summary>The published ranges by feedstock.</summary>
    public static IReadOnlyList<CompostNutrients> Published { get; } = ValueList<CompostNutrients>.Of(
    [
        new CompostNutrients("poultry manure", 2, 4, 1, 3, 1, 3),
        new CompostNutrients("feedlot manure", 2, 3, 1, 1.5, 1, 2),
        new CompostNutrients("dairy manure", 1, 2, 0.5, 1.5, 1, 2),
        new CompostNutrients("urban yard waste", 1, 1.5, 0.2, 0.5, 0.5, 1.5),
        new CompostNutrients("crop residue", 1.5, 2.5, 0.2, 0.5, 1, 2),
    ]);

    /// <summary>What the compost was made of.</summary>
    public string Feedstock { get; }

    /// <summary>The least nitrogen.</summary>
    public MassFraction NitrogenLow { get; }

    /// <summary>The most nitrogen.</summary>
    public MassFraction NitrogenHigh { get; }

    /// <summary>The least phosphorus.</summary>
    public MassFraction PhosphorusLow { get; }

    /// <summary>The most phosphorus.</summary>
    public MassFraction PhosphorusHigh { get; }

    /// <summary>The least potassium.</summary>
    public MassFraction PotassiumLow { get; }

    /// <summary>The most potassium.</summary>
    public MassFraction PotassiumHigh { get; }

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }

    /// <summary>One line in metric units and invariant culture.</summary>
    /// <returns>For instance <c>dairy manure: nitrogen 1 % by mass to 2 % by mass, phosphorus 0.5 % by mass to 1.5 % by mass, potassium
    /// 1 % by mass to 2 % by mass [source]</c>.</returns>
    public override string ToString() =>
        $"{Feedstock}: nitrogen {PublishedSpan.Text(NitrogenLow, NitrogenHigh, TextStyle.Default)}, phosphorus"
        + $" {PublishedSpan.Text(PhosphorusLow, PhosphorusHigh, TextStyle.Default)}, potassium"
        + $" {PublishedSpan.Text(PotassiumLow, PotassiumHigh, TextStyle.Default)} [{Source}]";

    private static Source Norganics => new(
        "compost-by-feedstock", "Estimated analysis of compost by feedstock", "soil consultancy (US)", null, "http://norganics.com/index-2/technical-articles/compost-analysis");

    private static (MassFraction Low, MassFraction High) Span(MassFraction low, MassFraction high, string lowParameter, string highParameter)
    {
        double lowPercent = Guard.Within(Boundary.MassFraction(low) * 100, 0, 100, "%", lowParameter);
        Guard.Within(Boundary.MassFraction(high) * 100, lowPercent, 100, "%", highParameter);
        return (HouseUnits.Normalise(low), HouseUnits.Normalise(high));
    }
}
