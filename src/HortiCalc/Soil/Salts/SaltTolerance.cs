using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>How a crop bears salt, as one source prints it: the threshold, what each dS/m above it costs, and a rating.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. Held as printed: some sources print ranges, and some a rating alone. The conductivity is of the
/// saturated extract, averaged over the root zone.
/// </remarks>
public sealed record SaltTolerance : IFormattable
{
    /// <summary>Holds what a source prints.</summary>
    /// <param name="crop">The crop in plain English, the same for all sources.</param>
    /// <param name="printedCrop">The crop as the source names it.</param>
    /// <param name="source">Where it was published.</param>
    /// <param name="threshold">The salinity from which yield falls, or the low end of its range; <see langword="null"/> where none is printed.</param>
    /// <param name="thresholdHigh">The high end; <see langword="null"/> where the threshold is one value.</param>
    /// <param name="loss">The yield lost with each dS/m above the threshold, or the low end of its range.</param>
    /// <param name="lossHigh">The high end; <see langword="null"/> where the loss is one value.</param>
    /// <param name="rating">The rating; <see langword="null"/> where the source prints none, or two.</param>
    /// <param name="isEstimate">Whether the source marks the rating as an estimate.</param>
    /// <exception cref="ArgumentException">A text is empty, or there is a threshold without a loss, or the other way round.</exception>
    /// <exception cref="ArgumentNullException">The source is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is negative, a loss not above zero, or a high end below its low one.</exception>
    public SaltTolerance(
        string crop,
        string printedCrop,
        Source source,
        ElectricConductivity? threshold = null,
        ElectricConductivity? thresholdHigh = null,
        Ratio? loss = null,
        Ratio? lossHigh = null,
        SaltRating? rating = null,
        bool isEstimate = false)
    {
        Crop = Guard.NotBlank(crop);
        PrintedCrop = Guard.NotBlank(printedCrop);
        Source = Guard.NotNull(source);
        if (threshold is null != loss is null)
            throw new ArgumentException("loss was given without threshold, or the other way round; allowed: both or neither.", nameof(loss));
        if (threshold is { } from && loss is { } each)
        {
            double low = Salts.Reading(from, nameof(threshold));
            double least = Guard.Positive(Boundary.Fraction(each) * 100, "%", nameof(loss));
            Guard.AtLeast(Boundary.DecisiemensPerMetre(thresholdHigh ?? from), low, "dS/m", nameof(thresholdHigh));
            Guard.AtLeast(Boundary.Fraction(lossHigh ?? each) * 100, least, "%", nameof(lossHigh));
            Threshold = HouseUnits.Normalise(from);
            ThresholdHigh = HouseUnits.Normalise(thresholdHigh ?? from);
            Loss = HouseUnits.Normalise(each);
            LossHigh = HouseUnits.Normalise(lossHigh ?? each);
        }

        Rating = rating is { } known ? Guard.Defined(known, nameof(rating)) : null;
        IsEstimate = isEstimate;
    }

    /// <summary>The crop in plain English, the same for all sources.</summary>
    public string Crop { get; }

    /// <summary>The crop as the source names it.</summary>
    public string PrintedCrop { get; }

    /// <summary>Where it was published.</summary>
    public Source Source { get; }

    /// <summary>The salinity from which yield falls, or the low end of its range; <see langword="null"/> where none is printed.</summary>
    public ElectricConductivity? Threshold { get; }

    /// <summary>The high end of the threshold, equal to <see cref="Threshold"/> where it is one value.</summary>
    public ElectricConductivity? ThresholdHigh { get; }

    /// <summary>The yield lost with each dS/m above the threshold, or the low end of its range; <see langword="null"/> where none is printed.</summary>
    public Ratio? Loss { get; }

    /// <summary>The high end of the loss, equal to <see cref="Loss"/> where it is one value.</summary>
    public Ratio? LossHigh { get; }

    /// <summary>The rating; <see langword="null"/> where the source prints none, or two.</summary>
    public SaltRating? Rating { get; }

    /// <summary>Whether the source marks the rating as an estimate.</summary>
    public bool IsEstimate { get; }

    /// <summary>The yield as a share of that without salt, by the rule of Maas and Hoffman: 100 − b (ECe − a), from 0 to 100 %.</summary>
    /// <param name="saturated">The conductivity of the saturated extract; zero or more.</param>
    /// <returns>The yield; where the source prints ranges, by their middles, with the worst and the best ends as its range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The conductivity is negative.</exception>
    /// <exception cref="InvalidOperationException">The source prints a rating alone.</exception>
    public Estimate<Ratio> RelativeYield(ElectricConductivity saturated)
    {
        double salinity = Salts.Reading(saturated, nameof(saturated));
        (double low, double high, double least, double most) = Figures();
        EstimateRange<Ratio>? range = high > low || most > least
            ? new EstimateRange<Ratio>(
                Ratio.FromPercent(YieldPercent(salinity, low, most)),
                Ratio.FromPercent(YieldPercent(salinity, high, least)),
                "by the printed ends of threshold and loss")
            : null;
        return new Estimate<Ratio>(
            Ratio.FromPercent(YieldPercent(salinity, (low + high) / 2, (least + most) / 2)), SaltMethods.Yield(Source), range, cautions: Cautions());
    }

    /// <summary>The salinity at which a share of the yield is left: the rule backwards.</summary>
    /// <param name="yield">The share wanted; from 0 to 100 %. At 100 % the threshold, at 0 % where yield ends.</param>
    /// <returns>The conductivity of the saturated extract.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share lies outside 0 to 100 %.</exception>
    /// <exception cref="InvalidOperationException">The source prints a rating alone.</exception>
    public Estimate<ElectricConductivity> SalinityAt(Ratio yield)
    {
        double lost = 100 - Guard.Within(Boundary.Fraction(yield) * 100, 0, 100, "%", nameof(yield));
        (double low, double high, double least, double most) = Figures();
        EstimateRange<ElectricConductivity>? range = high > low || most > least
            ? new EstimateRange<ElectricConductivity>(
                ElectricConductivity.FromMillisiemensPerCentimeter(low + lost / most),
                ElectricConductivity.FromMillisiemensPerCentimeter(high + lost / least),
                "by the printed ends of threshold and loss")
            : null;
        return new Estimate<ElectricConductivity>(
            ElectricConductivity.FromMillisiemensPerCentimeter((low + high) / 2 + lost / ((least + most) / 2)),
            SaltMethods.Yield(Source),
            range,
            cautions: Cautions());
    }

    /// <summary>The row in invariant culture.</summary>
    /// <returns>For instance <c>broccoli: from 2.8 dS/m, 9.2 % each dS/m, moderately sensitive [...]</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The row as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing, or <c>U</c>: conductivity is the same in both.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The crop, what is printed, and the source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    internal string ToString(TextStyle style)
    {
        string threshold = Threshold is null ? "" : $" from {Span(Threshold, ThresholdHigh, style)}, {Span(Loss!, LossHigh!, style)} each dS/m";
        string rating = Rating switch
        {
            SaltRating.Sensitive => " sensitive",
            SaltRating.ModeratelySensitive => " moderately sensitive",
            SaltRating.ModeratelyTolerant => " moderately tolerant",
            SaltRating.Tolerant => " tolerant",
            _ => " not rated",
        };
        return $"{Crop}:{threshold}{(threshold.Length > 0 ? "," : "")}{rating}{(IsEstimate ? " by estimate" : "")} [{Source}]";
    }

    private static string Span(object low, object? high, TextStyle style) =>
        low.Equals(high) ? QuantityText.Of(low, style) : $"{QuantityText.Of(low, style)} to {QuantityText.Of(high!, style)}";

    private static double YieldPercent(double salinity, double threshold, double loss) => Math.Clamp(100 - loss * (salinity - threshold), 0, 100);

    private (double Low, double High, double Least, double Most) Figures() => Threshold is { } low
        ? (Boundary.DecisiemensPerMetre(low), Boundary.DecisiemensPerMetre(ThresholdHigh!.Value), Boundary.Fraction(Loss!.Value) * 100, Boundary.Fraction(LossHigh!.Value) * 100)
        : throw new InvalidOperationException($"'{Source.Title}' prints no threshold of {PrintedCrop}, so there is no yield to compute.");

    private Caution[] Cautions() => Source.Kind == SourceKind.FromMemory ? [SaltCautions.Yield, SaltCautions.Remembered] : [SaltCautions.Yield];
}
