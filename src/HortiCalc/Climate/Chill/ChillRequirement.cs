using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>How much cold a crop or cultivar needs, by one model and one source.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record ChillRequirement
{
    /// <summary>Describes a requirement.</summary>
    /// <param name="crop">The crop, as the source names it.</param>
    /// <param name="cultivar">The cultivar, or <see langword="null"/> where the source speaks of the crop.</param>
    /// <param name="model">The model that it was measured with.</param>
    /// <param name="low">The requirement, or the low end of its range; 0 where the crop needs no cold.</param>
    /// <param name="high">
    /// The high end of the range: <paramref name="low"/> where there is none, <see langword="null"/> where it is open.
    /// </param>
    /// <param name="source">Where it was published.</param>
    /// <exception cref="ArgumentException">The crop is empty, or the model or the source are missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The low end is negative, or the high end is below it.</exception>
    public ChillRequirement(string crop, string? cultivar, ChillModel model, double low, double? high, Source source)
    {
        Crop = Guard.NotBlank(crop);
        Cultivar = cultivar is null ? null : Guard.NotBlank(cultivar);
        Model = Guard.NotNull(model);
        string unit = HourlyAccumulation.Words(model.Unit);
        Low = Guard.NotNegative(low, unit);
        High = high is double end ? Guard.AtLeast(end, low, unit, nameof(high)) : null;
        Source = Guard.NotNull(source);
    }

    /// <summary>The crop, as the source names it.</summary>
    public string Crop { get; }

    /// <summary>The cultivar, or <see langword="null"/> where the source speaks of the crop.</summary>
    public string? Cultivar { get; }

    /// <summary>The model that it was measured with.</summary>
    public ChillModel Model { get; }

    /// <summary>The requirement, or the low end of its range, in what the model counts.</summary>
    public double Low { get; }

    /// <summary>The high end of the range; <see cref="Low"/> where there is none, <see langword="null"/> where it is open.</summary>
    public double? High { get; }

    /// <summary>Where it was published.</summary>
    public Source Source { get; }

    /// <summary>Whether, and when, a count meets the requirement.</summary>
    /// <param name="chill">A count, by the same model.</param>
    /// <returns>
    /// The hours at which the low and the high end are reached. A count by another model is answered too, with the caution
    /// <c>chill.other-model</c>.
    /// </returns>
    /// <exception cref="ArgumentNullException">The count is <see langword="null"/>.</exception>
    public ChillFulfilment FulfilledBy(HourlyAccumulation chill)
    {
        Guard.NotNull(chill);
        List<Caution> cautions = [.. chill.Cautions, ChillEvidence.RequirementVaries];
        if (chill.Method != Model.Evidence)
            cautions.Add(ChillEvidence.OtherModel);
        return new ChillFulfilment(this, chill.Total, chill.Reached(Low), High is double high ? chill.Reached(high) : null, cautions);
    }

    /// <summary>The requirement in one line.</summary>
    /// <returns>For instance <c>Apricot Canino: 30 to 45 chill portions</c>.</returns>
    public override string ToString() => $"{Crop}{(Cultivar is null ? "" : " " + Cultivar)}: {Amount}";

    private string Amount
    {
        get
        {
            string low = QuantityText.Number(Low, TextStyle.Default);
            string words = HourlyAccumulation.Words(Model.Unit);
            return High is not double high ? $"{low} or more {words}"
                : high == 0 ? "no chill"
                : high == Low ? $"{low} {words}"
                : $"{low} to {QuantityText.Number(high, TextStyle.Default)} {words}";
        }
    }
}
