using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>How much water a soil holds for plants by every method that answers, why the others do not, and why they differ.</summary>
/// <remarks>Immutable; equal when all members are equal. <see cref="AvailableWater.Compare"/> makes it.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record AvailableWaterComparison : IFormattable, IDisplayable
{
    /// <summary>Puts answers side by side.</summary>
    /// <param name="soil">The soil.</param>
    /// <param name="answers">What the methods give.</param>
    /// <param name="refusals">The methods that do not answer.</param>
    /// <exception cref="ArgumentNullException">A member is <see langword="null"/>.</exception>
    public AvailableWaterComparison(SoilComposition soil, IReadOnlyList<WaterHolding> answers, IReadOnlyList<AvailableWaterRefusal> refusals)
    {
        Soil = Guard.NotNull(soil);
        Answers = ValueList<WaterHolding>.Of(Guard.NotNull(answers));
        Refusals = ValueList<AvailableWaterRefusal>.Of(Guard.NotNull(refusals));
    }

    /// <summary>The soil.</summary>
    public SoilComposition Soil { get; }

    /// <summary>What the methods give.</summary>
    public IReadOnlyList<WaterHolding> Answers { get; }

    /// <summary>The methods that do not answer, and why.</summary>
    public IReadOnlyList<AvailableWaterRefusal> Refusals { get; }

    /// <summary>From the lowest to the highest value; <see langword="null"/> where no method answers.</summary>
    [JsonIgnore]
    public EstimateRange<VolumeConcentration>? Spread
    {
        get
        {
            double[] percents = [.. Answers.Select(answer => Boundary.VolumeFraction(answer.Available.Value) * 100).Order()];
            return percents.Length == 0
                ? null
                : new EstimateRange<VolumeConcentration>(
                    VolumeConcentration.FromPercent(percents[0]), VolumeConcentration.FromPercent(percents[^1]), "lowest and highest of the methods");
        }
    }

    /// <summary>Why the answers differ, one sentence a reason; none for fewer than two answers.</summary>
    [JsonIgnore]
    public IReadOnlyList<string> WhyTheyDiffer => ValueList<string>.Of(Reasons());

    /// <summary>What to take care of.</summary>
    [JsonIgnore]
    public IReadOnlyList<Caution> Cautions => ValueList<Caution>.Of(Answers.SelectMany(answer => answer.Available.Cautions).Distinct());

    /// <summary>The comparison in metric units and invariant culture.</summary>
    /// <returns>One line: the soil, how many methods answer, and the spread.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The comparison as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: the soil, how many methods answer, and the spread.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(ToString(style))
    {
        Rows =
        [
            .. Answers.Select(answer => new DisplayRow(
                answer.Available.Method.Name,
                QuantityText.Of(answer.Available.Value, style)
                + (answer.Available.Range is { } range ? $" ({range.ToString(style.Format, style.Culture)})" : ""))),
            .. WhyTheyDiffer.Select(reason => new DisplayRow("why", reason)),
            .. Refusals.Select(refusal => new DisplayRow("not used", refusal.ToString())),
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
        ],
    };

    private IEnumerable<string> Reasons()
    {
        if (Answers.Count < 2)
            yield break;
        AvailableWaterMethod[] used = [.. AvailableWaterMethod.All.Where(method => Answers.Any(answer => answer.Available.Method == method.Method))];
        double[] full = [.. used.Select(method => method.FullAt).OfType<Pressure>().Select(Boundary.Kilopascals).Distinct().Order()];
        if (full.Length > 1)
            yield return $"They call the soil full at different tensions, from {Guard.Number(full[0])} to {Guard.Number(full[^1])} kPa; "
                + "the wetter end counts water that drains within days.";
        if (used.Any(method => method.FullAt is null))
            yield return "Some do not print the tension at which they call the soil full.";
        if (used.Any(method => method.NeedsParticles) && used.Any(method => !method.NeedsParticles))
            yield return "A table gives one value to a whole class of texture; the regression follows sand, clay and organic matter within it.";
        if (used.Any(method => method.NeedsParticles) && (Soil.Gravel is not null || Soil.Salinity is not null || Soil.Compaction is not null))
            yield return "Only the regression counts gravel, compaction and salts; the tables are of fine earth as it usually lies.";
        if (Answers.Any(answer => answer.Available.Cautions.Contains(SoilWaterCautions.AustralianName)))
            yield return "Australian field textures hold more clay than the USDA classes of the same name.";
        yield return "Each rests on the samples of its own country.";
    }

    private string ToString(TextStyle style)
    {
        string spread = Spread is null ? "" : $", {Spread.ToString(style.Format, style.Culture)}";
        return $"{Soil.ToString(style.Format, style.Culture)}: {QuantityText.Of(Answers.Count, style)} of "
            + $"{QuantityText.Of(Answers.Count + Refusals.Count, style)} methods answer{spread}";
    }
}
