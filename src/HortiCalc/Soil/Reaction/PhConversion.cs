using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>A published relation between two ways to read the pH of a soil.</summary>
/// <remarks>
/// <para>Immutable; equal when of the same key. A closed set: the values are the static members.</para>
/// <para>
/// A reading in calcium chloride is lower than one in water, so that a table made for one gives a wrong dose with the other: convert first, or ask the
/// laboratory for the other reading. <see cref="ConyersDavey"/> is the one to choose between them: it is a regression, where the others are averages.
/// </para>
/// <para>The sources print no numeric limits. From pH 3 to 10 is our own, the span of soils that laboratories report.</para>
/// </remarks>
/// <example><code>
/// Ph inCalciumChloride = new(5.4);
/// Estimate&lt;Ph&gt; inWater = PhConversion.ConyersDavey.ConvertBack(inCalciumChloride);   // pH 6
/// SoilReport soil = new() { PhInWater = inWater.Value, Texture = SoilTexture.Loam };
/// </code></example>
public sealed class PhConversion
{
    private const double Lowest = 3;
    private const double Highest = 10;
    private readonly Func<double, double> forward;
    private readonly Func<double, double> back;
    private readonly (double Low, double High)? printedSpan;

    private PhConversion(
        string key,
        string name,
        Source source,
        string conditions,
        (PhSolution Solution, string? Ratio) from,
        (PhSolution Solution, string? Ratio) to,
        Func<double, double> forward,
        Func<double, double> back,
        (double Low, double High)? printedSpan = null)
    {
        Method = new Method(key, name, source, new Domain(conditions, new DomainLimit("reading", Lowest, Highest, "pH")));
        From = from.Solution;
        FromRatio = from.Ratio;
        To = to.Solution;
        ToRatio = to.Ratio;
        this.forward = forward;
        this.back = back;
        this.printedSpan = printedSpan;
    }

    /// <summary>Water to calcium chloride: 1.05 × pH − 0.9, Conyers and Davey 1988. For non-saline soils of New South Wales with a net negative charge.</summary>
    public static PhConversion ConyersDavey { get; } = new(
        "ph-conyers-davey",
        "pH in calcium chloride from pH in water",
        ReactionSources.Conyers1988,
        "non-saline soils with a net negative charge, New South Wales",
        (PhSolution.Water, "1:2.5"),
        (PhSolution.CalciumChloride, "1:2.5"),
        water => 1.05 * water - 0.9,
        chloride => (chloride + 0.9) / 1.05);

    /// <summary>Water to calcium chloride: 0.5 to 0.8 lower, New South Wales; the middle of the span is taken.</summary>
    public static PhConversion NewSouthWalesOffset { get; } = new(
        "ph-nsw-offset",
        "pH in calcium chloride, 0.5 to 0.8 below pH in water",
        ReactionSources.NewSouthWales,
        "an average",
        (PhSolution.Water, "1:5"),
        (PhSolution.CalciumChloride, "1:5"),
        water => water - 0.65,
        chloride => chloride + 0.65,
        (-0.15, 0.15));

    /// <summary>Water to calcium chloride: about 0.7 lower, south-west Victoria.</summary>
    public static PhConversion VictoriaOffset { get; } = new(
        "ph-victoria-offset",
        "pH in calcium chloride, about 0.7 below pH in water",
        ReactionSources.Victoria,
        "soils of south-west Victoria",
        (PhSolution.Water, null),
        (PhSolution.CalciumChloride, null),
        water => water - 0.7,
        chloride => chloride + 0.7);

    /// <summary>Water 1:2.5 to water 1:5: 0.14 + 0.99 × pH, Kabała et al. 2016, 200 Polish soils.</summary>
    public static PhConversion KabalaWater { get; } = new(
        "ph-kabala-water",
        "pH in water 1:5 from 1:2.5",
        ReactionSources.Kabala,
        "200 Polish soils",
        (PhSolution.Water, "1:2.5"),
        (PhSolution.Water, "1:5"),
        ph => 0.14 + 0.99 * ph,
        ph => (ph - 0.14) / 0.99);

    /// <summary>Potassium chloride 1:2.5 to 1:5: 0.09 + 1.00 × pH, Kabała et al. 2016, 200 Polish soils.</summary>
    public static PhConversion KabalaPotassiumChloride { get; } = new(
        "ph-kabala-potassium-chloride",
        "pH in potassium chloride 1:5 from 1:2.5",
        ReactionSources.Kabala,
        "200 Polish soils",
        (PhSolution.PotassiumChloride, "1:2.5"),
        (PhSolution.PotassiumChloride, "1:5"),
        ph => 0.09 + 1.00 * ph,
        ph => (ph - 0.09) / 1.00);

    /// <summary>Potassium chloride 1:2.5 to water 1:5: −1.95 + 11.58 × log₁₀ pH, Kabała et al. 2016, 200 Polish soils.</summary>
    public static PhConversion KabalaPotassiumChlorideToWater { get; } = new(
        "ph-kabala-potassium-chloride-to-water",
        "pH in water 1:5 from pH in potassium chloride 1:2.5",
        ReactionSources.Kabala,
        "200 Polish soils",
        (PhSolution.PotassiumChloride, "1:2.5"),
        (PhSolution.Water, "1:5"),
        ph => -1.95 + 11.58 * Math.Log10(ph),
        ph => Math.Pow(10, (ph + 1.95) / 11.58));

    /// <summary>Water 1:1 to water 1:5: −0.51 + 1.06 × pH, 563 soils of the United States, standard error 0.44.</summary>
    public static PhConversion NrcsWater { get; } = new(
        "ph-nrcs-water",
        "pH in water 1:5 from 1:1",
        ReactionSources.Nrcs,
        "563 soils of the United States; standard error 0.44",
        (PhSolution.Water, "1:1"),
        (PhSolution.Water, "1:5"),
        ph => -0.51 + 1.06 * ph,
        ph => (ph + 0.51) / 1.06);

    /// <summary>Potassium chloride to calcium chloride: 1.339 × pH − 0.051 × pH², about 1300 Polish soils.</summary>
    public static PhConversion PolandChlorides { get; } = new(
        "ph-poland-chlorides",
        "pH in calcium chloride from pH in potassium chloride",
        ReactionSources.Copernicus,
        "about 1300 Polish soils",
        (PhSolution.PotassiumChloride, null),
        (PhSolution.CalciumChloride, null),
        ph => 1.339 * ph - 0.051 * ph * ph,
        ph => (1.339 - Math.Sqrt(Math.Max(0, 1.339 * 1.339 - 4 * 0.051 * ph))) / (2 * 0.051));

    /// <summary>Every relation there is.</summary>
    public static IReadOnlyList<PhConversion> All { get; } = ValueList<PhConversion>.Of(
    [
        ConyersDavey, NewSouthWalesOffset, VictoriaOffset, KabalaWater, KabalaPotassiumChloride, KabalaPotassiumChlorideToWater, NrcsWater, PolandChlorides,
    ]);

    /// <summary>The relation, with its source and what it was published for.</summary>
    public Method Method { get; }

    /// <summary>What the soil is stirred in for the reading that is converted.</summary>
    public PhSolution From { get; }

    /// <summary>Soil to solution of that reading, for instance <c>1:5</c>; <see langword="null"/> where the source does not say.</summary>
    public string? FromRatio { get; }

    /// <summary>What the soil is stirred in for the reading that comes out.</summary>
    public PhSolution To { get; }

    /// <summary>Soil to solution of the reading that comes out; <see langword="null"/> where the source does not say.</summary>
    public string? ToRatio { get; }

    /// <summary>The relation of a key.</summary>
    /// <param name="key">The <see cref="Method.Key"/>, for instance <c>ph-conyers-davey</c>.</param>
    /// <returns>The relation.</returns>
    /// <exception cref="ArgumentException">There is none of that key.</exception>
    public static PhConversion FromKey(string key)
    {
        Guard.NotBlank(key);
        return All.FirstOrDefault(one => one.Method.Key == key)
            ?? throw new ArgumentException($"key was '{key}'; allowed: {string.Join(", ", All.Select(one => one.Method.Key))}.", nameof(key));
    }

    /// <summary>The relations from one solution to another, in the way they were published.</summary>
    /// <param name="from">The solution of the reading at hand.</param>
    /// <param name="to">The solution of the reading wanted.</param>
    /// <returns>The relations; none where nobody published one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A solution is unknown.</exception>
    public static IReadOnlyList<PhConversion> Between(PhSolution from, PhSolution to)
    {
        Guard.Defined(from);
        Guard.Defined(to);
        return ValueList<PhConversion>.Of(All.Where(one => one.From == from && one.To == to));
    }

    /// <summary>Converts a reading in the way the relation was published.</summary>
    /// <param name="reading">The pH as read in <see cref="From"/>; from 3 to 10.</param>
    /// <returns>The pH as it would be read in <see cref="To"/>, with the span where the source prints one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The reading is not from 3 to 10.</exception>
    public Estimate<Ph> Convert(Ph reading) => Answer(forward(Method.Require(reading.Value, "pH", nameof(reading))), []);

    /// <summary>Converts a reading against the way the relation was published.</summary>
    /// <remarks>A regression read backwards is not the regression of the other direction; it is a little too steep. The adjustments say so.</remarks>
    /// <param name="reading">The pH as read in <see cref="To"/>.</param>
    /// <returns>The pH as it would be read in <see cref="From"/>, with the span where the source prints one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The reading, or what it comes to, is not from 3 to 10.</exception>
    public Estimate<Ph> ConvertBack(Ph reading)
    {
        double result = back(Method.Require(reading.Value, "pH", nameof(reading)));
        return result is >= Lowest and <= Highest
            ? Answer(result, [ReactionRules.Backwards])
            : throw Guard.Refused(
                nameof(reading), reading.Value, "pH", $"what comes to a pH from {Guard.Number(Lowest)} to {Guard.Number(Highest)} by '{Method.Name}'");
    }

    /// <summary>Equal when of the same key.</summary>
    /// <param name="obj">The other.</param>
    /// <returns>Whether both are the same relation.</returns>
    public override bool Equals(object? obj) => obj is PhConversion other && other.Method.Key == Method.Key;

    /// <inheritdoc/>
    public override int GetHashCode() => Method.Key.GetHashCode(StringComparison.Ordinal);

    /// <summary>The name and source of the relation.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Method.ToString();

    private Estimate<Ph> Answer(double ph, IReadOnlyList<Method> adjustments) => new(
        new Ph(ph),
        Method,
        printedSpan is { } span ? new EstimateRange<Ph>(new Ph(ph + span.Low), new Ph(ph + span.High), "average range printed by the source") : null,
        adjustments,
        [ReactionCautions.NameTheSolution]);
}
