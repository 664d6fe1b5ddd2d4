using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The lime for one soil by every method that its report allows, for one depth and in one material.</summary>
/// <remarks>Immutable; equal when all members are equal. <see cref="Liming.Compare"/> makes it.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record LimeComparison : IFormattable, IDisplayable
{
    /// <summary>Makes a comparison.</summary>
    /// <param name="target">The pH in water wanted.</param>
    /// <param name="depth">The depth of soil; above zero.</param>
    /// <param name="material">The material of every answer.</param>
    /// <param name="answers">What the methods give; each in the material, and for the depth or without one.</param>
    /// <param name="refusals">The methods that give no answer.</param>
    /// <exception cref="ArgumentNullException">A member is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">An answer is in another material or for another depth.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The depth is not above zero.</exception>
    public LimeComparison(
        Ph target, Length depth, LimingMaterial material, IReadOnlyList<LimeRequirement> answers, IReadOnlyList<LimeRefusal> refusals)
    {
        Target = target;
        Guard.Positive(Boundary.Metres(depth), "m", nameof(depth));
        Depth = HouseUnits.Normalise(depth);
        Material = Guard.NotNull(material);
        Answers = ValueList<LimeRequirement>.Of(Guard.NotNull(answers));
        Refusals = ValueList<LimeRefusal>.Of(Guard.NotNull(refusals));
        foreach (LimeRequirement answer in Answers)
        {
            if (answer.Material != Material || (answer.Depth is { } its && Boundary.Metres(its) != Boundary.Metres(Depth)))
                throw new ArgumentException($"answers has '{answer}'; allowed: answers in the same material and for the same depth.", nameof(answers));
        }
    }

    /// <summary>The pH in water wanted.</summary>
    public Ph Target { get; }

    /// <summary>The depth of soil.</summary>
    public Length Depth { get; }

    /// <summary>The material of every answer.</summary>
    public LimingMaterial Material { get; }

    /// <summary>What the methods give. One without a depth is as its source prints it, which says none.</summary>
    public IReadOnlyList<LimeRequirement> Answers { get; }

    /// <summary>The methods that give no answer, with the reason.</summary>
    public IReadOnlyList<LimeRefusal> Refusals { get; }

    /// <summary>
    /// The lowest and the highest rate, of the answers for the depth where there is one, else of all; <see langword="null"/> where there is no
    /// answer.
    /// </summary>
    [JsonIgnore]
    public EstimateRange<AreaDensity>? Spread
    {
        get
        {
            LimeRequirement[] forDepth = [.. Answers.Where(answer => answer.Depth is not null)];
            IReadOnlyList<LimeRequirement> compared = forDepth.Length > 0 ? forDepth : Answers;
            double[] grams = [.. compared.Select(answer => Boundary.GramsPerSquareMetre(answer.Rate.Value))];
            string meaning = forDepth.Length > 0 ? "methods brought to one depth" : "methods whose sources give no depth";
            return grams.Length == 0
                ? null
                : new EstimateRange<AreaDensity>(AreaDensity.FromGramsPerSquareMeter(grams.Min()), AreaDensity.FromGramsPerSquareMeter(grams.Max()), meaning);
        }
    }

    /// <summary>Why the answers differ, one sentence a reason; none for fewer than two answers.</summary>
    [JsonIgnore]
    public IReadOnlyList<string> WhyTheyDiffer => ValueList<string>.Of(Reasons());

    /// <summary>What to take care of.</summary>
    [JsonIgnore]
    public IReadOnlyList<Caution> Cautions => ValueList<Caution>.Of(
        [.. Answers.SelectMany(answer => answer.Rate.Cautions).Distinct(), .. Answers.Count > 1 ? [LimeCautions.Laboratory] : (Caution[])[]]);

    /// <summary>The comparison in metric units and invariant culture.</summary>
    /// <returns>One line: the span, the number of answers and of methods without one.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The comparison as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: the span, the number of answers and of methods without one.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(ToString(style))
    {
        Rows =
        [
            .. Answers.Select(answer => new DisplayRow(
                answer.Rate.Method.Name, QuantityText.Of(answer.Rate.Value, style) + (answer.Depth is null ? ", depth not given" : ""))),
            .. WhyTheyDiffer.Select(reason => new DisplayRow("why", reason)),
            .. Refusals.Select(refusal => new DisplayRow("not used", refusal.ToString())),
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
        ],
    };

    private IEnumerable<string> Reasons()
    {
        if (Answers.Count < 2)
            yield break;
        yield return "They measure different things: pH and texture, a buffer, exchangeable acidity, or the cations; only some see what the lime must neutralise.";
        if (Answers.Any(answer => answer.Depth is null))
            yield return "Some sources do not say which depth their rates are for, so these could not be brought to yours.";
        if (Answers.Any(answer => answer.Depth is not null))
            yield return "Sources assume depths from 10 to 20 cm; these answers were brought to yours in proportion.";
        yield return "Some rates are of pure or fully effective lime, others of ground limestone as it is sold, whose coarse part reacts late or never.";
        if (LimingMethod.All.Where(method => !method.AimsAtPh).Any(method => Answers.Any(answer => answer.Rate.Method == method.Method)))
            yield return "Some aim at a saturation of bases or of aluminium, not at the target pH.";
        yield return "Each was fitted to the soils and crops of its region.";
    }

    private string ToString(TextStyle style)
    {
        string refusals = Refusals.Count == 0 ? "" : $", {Guard.Number(Refusals.Count)} methods not used";
        return Spread is not { } spread
            ? $"no method answers{refusals}"
            : $"{spread.ToString(style.Format, style.Culture)} of {Material.Name} for {QuantityText.Of(Depth, style)} of soil to {Target}: "
                + $"{Guard.Number(Answers.Count)} methods ({spread.Meaning}){refusals}";
    }
}
