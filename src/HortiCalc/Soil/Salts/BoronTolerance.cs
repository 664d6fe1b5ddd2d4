using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>How a crop bears boron in the soil water, as a list prints it.</summary>
/// <remarks>Immutable; equal when all members are equal. The room between too little boron and too much is narrow.</remarks>
public sealed record BoronTolerance : IFormattable
{
    /// <summary>Holds what a list prints.</summary>
    /// <param name="crop">The crop as the list names it.</param>
    /// <param name="botanical">Its botanical name.</param>
    /// <param name="group">Its class.</param>
    /// <param name="source">Where it was published.</param>
    /// <param name="threshold">The content from which the plant suffers, or the low end of its range; zero where only an upper bound is printed.</param>
    /// <param name="thresholdHigh">The high end, or the threshold again.</param>
    /// <param name="loss">The yield lost with each mg/L above the threshold; <see langword="null"/> where none is printed.</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentNullException">The source is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such class, a threshold is negative or below its low end, or the loss not above zero.</exception>
    public BoronTolerance(
        string crop,
        string botanical,
        BoronClass group,
        Source source,
        MassConcentration threshold,
        MassConcentration thresholdHigh,
        Ratio? loss = null)
    {
        Crop = Guard.NotBlank(crop);
        Botanical = Guard.NotBlank(botanical);
        Group = Guard.Defined(group);
        Source = Guard.NotNull(source);
        double low = Guard.NotNegative(Boundary.MilligramsPerLitre(threshold), "mg/L", nameof(threshold));
        Guard.AtLeast(Boundary.MilligramsPerLitre(thresholdHigh), low, "mg/L", nameof(thresholdHigh));
        Threshold = HouseUnits.Normalise(threshold);
        ThresholdHigh = HouseUnits.Normalise(thresholdHigh);
        if (loss is { } each)
        {
            Guard.Positive(Boundary.Fraction(each) * 100, "%", nameof(loss));
            Loss = HouseUnits.Normalise(each);
        }
    }

    /// <summary>The crop as the list names it.</summary>
    public string Crop { get; }

    /// <summary>Its botanical name.</summary>
    public string Botanical { get; }

    /// <summary>Its class.</summary>
    public BoronClass Group { get; }

    /// <summary>Where it was published.</summary>
    public Source Source { get; }

    /// <summary>The content from which the plant suffers, or the low end of its range; zero where only an upper bound is printed.</summary>
    public MassConcentration Threshold { get; }

    /// <summary>The high end of the threshold.</summary>
    public MassConcentration ThresholdHigh { get; }

    /// <summary>The yield lost with each mg/L above the threshold; <see langword="null"/> where none is printed.</summary>
    public Ratio? Loss { get; }

    /// <summary>The yield as a share of that without boron in excess, from 0 to 100 %.</summary>
    /// <param name="boron">The boron in the soil water; zero or more.</param>
    /// <returns>The yield by the middle of the threshold, with its ends as the range where there are two.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The content is negative.</exception>
    /// <exception cref="InvalidOperationException">The list prints no loss.</exception>
    public Estimate<Ratio> RelativeYield(MassConcentration boron)
    {
        double content = Guard.NotNegative(Boundary.MilligramsPerLitre(boron), "mg/L", nameof(boron));
        double loss = Loss is { } each
            ? Boundary.Fraction(each) * 100
            : throw new InvalidOperationException($"'{Source.Title}' prints no loss of yield of {Crop}.");
        double low = Boundary.MilligramsPerLitre(Threshold);
        double high = Boundary.MilligramsPerLitre(ThresholdHigh);
        Ratio Yield(double threshold) => Ratio.FromPercent(Math.Clamp(100 - loss * (content - threshold), 0, 100));
        return new Estimate<Ratio>(
            Yield((low + high) / 2),
            SaltMethods.BoronYield(Source),
            high > low ? new EstimateRange<Ratio>(Yield(low), Yield(high), "by the printed ends of the threshold") : null,
            cautions: Source.Kind == SourceKind.FromMemory
                ? [SaltCautions.Boron, SaltCautions.BoronListsDiffer, SaltCautions.Remembered]
                : [SaltCautions.Boron, SaltCautions.BoronListsDiffer]);
    }

    /// <summary>The row in invariant culture.</summary>
    /// <returns>For instance <c>Carrot: 1 mg/L to 2 mg/L [...]</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The row as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing, or <c>U</c>: the unit is the same in both.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The crop, its threshold, its loss where there is one, and the source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style)
    {
        string threshold = Boundary.MilligramsPerLitre(Threshold) == Boundary.MilligramsPerLitre(ThresholdHigh)
            ? QuantityText.Of(Threshold, style)
            : $"{QuantityText.Of(Threshold, style)} to {QuantityText.Of(ThresholdHigh, style)}";
        string loss = Loss is { } each ? $", {QuantityText.Of(each, style)} each mg/L" : "";
        return $"{Crop}: {threshold}{loss} [{Source}]";
    }
}
