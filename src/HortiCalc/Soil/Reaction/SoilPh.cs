using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>Arithmetic of pH: the mean of readings, the pH of a blend, of layers, and of a mix of soils or media.</summary>
/// <remarks>
/// A pH is a logarithm, and soil holds its pH against acid, so that no single rule of averaging is right. Each question has its own function here, and
/// a question that the pH alone cannot answer is refused.
/// </remarks>
/// <example><code>
/// Ph[] readings = [new Ph(5.2), new Ph(5.4), new Ph(5.9)];
/// Console.WriteLine(SoilPh.Mean(readings, PhMeanMethod.Solutions));     // pH 5.41
/// Console.WriteLine(SoilPh.Mean(readings, PhMeanMethod.SoilSamples));   // pH 5.5
/// </code></example>
public static class SoilPh
{
    // At 25 °C, in (mol/L)².
    private const double WaterIonProduct = 1e-14;

    private static readonly Method Blend = new(
        "ph-blend",
        "balance of hydrogen and hydroxide ions",
        ReactionSources.WaterProduct,
        new Domain("solutions of strong acids and bases at 25 °C, without alkalinity or other buffers"));

    private static readonly Method LayerMean = new(
        "ph-layers", "mean of layers by thickness", ReactionSources.Layers, new Domain("layers of one soil, read in the same way"));

    private static readonly Method BufferedMix = new(
        "ph-buffered-mix",
        "mean by dry mass and buffer capacity",
        ReactionSources.LinearBuffering,
        new Domain("mineral soils without free carbonate, whose pH moves in a straight line", new DomainLimit("parts", 4.5, 6.5, "pH")));

    /// <summary>The mean of readings, in the way that the caller names.</summary>
    /// <param name="readings">The pH of each; at least one.</param>
    /// <param name="method">Solutions or soil samples.</param>
    /// <returns>
    /// The mean; with two readings or more the range of one standard deviation to either side, which for solutions is not symmetric. Where the
    /// deviation of the activities exceeds their mean it has no upper end, and no range is given.
    /// </returns>
    /// <exception cref="ArgumentNullException">The readings or the method is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">There is no reading.</exception>
    public static Estimate<Ph> Mean(IReadOnlyList<Ph> readings, PhMeanMethod method)
    {
        Guard.NotNull(readings);
        Guard.NotNull(method);
        Ph[] values = [.. readings];
        bool areSolutions = method == PhMeanMethod.Solutions;
        if (values.Length == 0)
            throw new ArgumentException("readings was empty; allowed: one pH or more.", nameof(readings));
        Ph mean = areSolutions ? Ph.MeanOfSolutions(values) : Ph.MeanOfSoilSamples(values);
        return new Estimate<Ph>(mean, method.Method, Deviation(values, areSolutions));
    }

    /// <summary>The pH of a blend of unbuffered solutions, by the balance of hydrogen and hydroxide ions.</summary>
    /// <param name="parts">The solutions; at least one.</param>
    /// <returns>The pH; right only without alkalinity, as its caution says.</returns>
    /// <exception cref="ArgumentNullException">The parts are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">There is no part.</exception>
    /// <example><code>
    /// Estimate&lt;Ph&gt; blend = SoilPh.OfBlend([new SolutionPart(Volume.FromLiters(1), new Ph(3)), new SolutionPart(Volume.FromLiters(9), new Ph(7))]);
    /// Console.WriteLine(blend.Value);   // pH 4
    /// </code></example>
    public static Estimate<Ph> OfBlend(IReadOnlyList<SolutionPart> parts)
    {
        RequireSome(parts);
        double litres = 0;
        double excessMoles = 0;
        foreach (SolutionPart part in parts)
        {
            double volume = Boundary.Litres(part.Volume);
            double hydrogen = Math.Pow(10, -part.Ph.Value);
            litres += volume;
            excessMoles += volume * (hydrogen - WaterIonProduct / hydrogen);
        }

        // The larger root of h² − excess h − Kw = 0, written so that neither sign cancels.
        double excess = excessMoles / litres;
        double root = Math.Sqrt(excess * excess + 4 * WaterIonProduct);
        double mixed = excess >= 0 ? (excess + root) / 2 : 2 * WaterIonProduct / (root - excess);
        double lowest = parts.Min(part => part.Ph.Value);
        double highest = parts.Max(part => part.Ph.Value);
        return new Estimate<Ph>(new Ph(Math.Clamp(-Math.Log10(mixed), lowest, highest)), Blend, cautions: [ReactionCautions.Alkalinity]);
    }

    /// <summary>What one sample through several layers of a soil reads: the mean by thickness.</summary>
    /// <param name="layers">The layers; at least one.</param>
    /// <returns>The mean, with the sourest and the sweetest layer as its range: the mean hides them.</returns>
    /// <exception cref="ArgumentNullException">The layers are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">There is no layer.</exception>
    /// <example><code>
    /// Estimate&lt;Ph&gt; sample = SoilPh.OfLayers(
    ///     [new PhLayer(Length.FromCentimeters(5), new Ph(5.8)), new PhLayer(Length.FromCentimeters(5), new Ph(4.8))]);
    /// Console.WriteLine(sample);   // pH 5.3, from 4.8 to 5.8
    /// </code></example>
    public static Estimate<Ph> OfLayers(IReadOnlyList<PhLayer> layers)
    {
        RequireSome(layers);
        double metres = layers.Sum(layer => Boundary.Metres(layer.Thickness));
        double mean = layers.Sum(layer => Boundary.Metres(layer.Thickness) * layer.Ph.Value) / metres;
        Ph sourest = layers.Min(layer => layer.Ph);
        Ph sweetest = layers.Max(layer => layer.Ph);
        return new Estimate<Ph>(
            new Ph(Math.Clamp(mean, sourest.Value, sweetest.Value)),
            LayerMean,
            new EstimateRange<Ph>(sourest, sweetest, "sourest and sweetest layer"),
            cautions: sourest == sweetest ? [] : [ReactionCautions.LayersHide]);
    }

    /// <summary>The pH of a mix of soils or media whose buffer capacities are known.</summary>
    /// <remarks>
    /// Two media of the same pH give that pH. Of two that differ the pH alone says nothing: a spadeful of clay outweighs a barrow of sand. Without the
    /// buffer capacity of each part the question is refused.
    /// </remarks>
    /// <param name="parts">The soils or media; at least one.</param>
    /// <returns>The mean by dry mass times buffer capacity.</returns>
    /// <exception cref="ArgumentNullException">The parts are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">There is no part.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The pH of a part is not from 4.5 to 6.5, where buffering is a straight line.</exception>
    /// <exception cref="InvalidOperationException">The parts differ and the buffer capacity of one is not known.</exception>
    public static Estimate<Ph> OfMix(IReadOnlyList<MediumPart> parts)
    {
        RequireSome(parts);
        Ph first = parts[0].Ph;
        if (parts.All(part => part.Ph == first))
            return new Estimate<Ph>(first, BufferedMix, cautions: [ReactionCautions.MixAndTest]);
        if (parts.Any(part => part.BufferCapacity is null))
        {
            throw new InvalidOperationException(
                "The pH of a mix cannot be known from the pH of its parts: it depends on how strongly each holds its own. "
                + "Give the buffer capacity of every part, or mix a small batch and test it.");
        }

        double weights = 0;
        double sum = 0;
        foreach (MediumPart part in parts)
        {
            double weight = Boundary.Kilograms(part.DryMass) * Boundary.MassFraction(part.BufferCapacity!.Value);
            weights += weight;
            sum += weight * BufferedMix.Require(part.Ph.Value, "pH", nameof(parts));
        }

        double mixed = Math.Clamp(sum / weights, parts.Min(part => part.Ph.Value), parts.Max(part => part.Ph.Value));
        return new Estimate<Ph>(new Ph(mixed), BufferedMix, cautions: [ReactionCautions.MixAndTest]);
    }

    private static EstimateRange<Ph>? Deviation(Ph[] values, bool areSolutions)
    {
        if (values.Length < 2)
            return null;
        double[] numbers = [.. values.Select(ph => areSolutions ? Math.Pow(10, -ph.Value) : ph.Value)];
        double mean = numbers.Average();
        double deviation = Math.Sqrt(numbers.Sum(number => (number - mean) * (number - mean)) / (numbers.Length - 1));
        const string Meaning = "one standard deviation to either side";
        if (!areSolutions)
            return new EstimateRange<Ph>(new Ph(Math.Max(0, mean - deviation)), new Ph(Math.Min(14, mean + deviation)), Meaning);
        return mean - deviation >= 1e-14
            ? new EstimateRange<Ph>(new Ph(Math.Max(0, -Math.Log10(mean + deviation))), new Ph(Math.Min(14, -Math.Log10(mean - deviation))), Meaning)
            : null;
    }

    private static void RequireSome<T>(IReadOnlyList<T> parts, [System.Runtime.CompilerServices.CallerArgumentExpression(nameof(parts))] string parameter = "")
    {
        ArgumentNullException.ThrowIfNull(parts, parameter);
        if (parts.Count == 0)
            throw new ArgumentException($"{parameter} was empty; allowed: one or more.", parameter);
    }
}
