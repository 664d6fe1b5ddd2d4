using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>How much lime raises the pH of a soil.</summary>
/// <example><code>
/// SoilReport soil = new() { PhInWater = new Ph(5.4), Texture = SoilTexture.SandyLoam };
/// LimeRequirement need = Liming.Requirement(soil, new Ph(6.5), LimingMethod.UkGardenTexture);
/// Estimate&lt;Mass&gt; dose = need.As(LimingMaterial.Dolomite).Over(Area.FromSquareMeters(4.8));
/// Console.WriteLine(dose);
/// </code></example>
public static class Liming
{
    /// <summary>The lime that brings a soil to a target pH.</summary>
    /// <param name="soil">What is known of the soil.</param>
    /// <param name="target">The pH in water wanted.</param>
    /// <param name="method">The method; <see cref="LimingMethod"/> says which to take.</param>
    /// <returns>
    /// The rate with the depth and the material it is for. Zero, with the caution <c>lime.not-needed</c>, where the soil is at or above
    /// the target.
    /// </returns>
    /// <exception cref="ArgumentNullException">The report or the method is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The report lacks what the method needs.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The soil or the target is outside what the method was published for.</exception>
    public static LimeRequirement Requirement(SoilReport soil, Ph target, LimingMethod method)
    {
        Guard.NotNull(soil);
        Guard.NotNull(method);
        if (method.Refusal(soil, target) is { } refusal)
            throw refusal;
        Estimate<AreaDensity> rate = method.IsAtTarget(soil, target)
            ? new Estimate<AreaDensity>(AreaDensity.Zero, method.Method, cautions: [method.AimsAtPh ? LimeCautions.NotNeeded : LimeCautions.Saturated])
            : WithCautionsOfDose(method.Rate(soil, target));
        return new LimeRequirement(rate.WithCautions(Overliming(rate, soil, method)), method.Material, method.Depth);
    }

    /// <summary>The lime that brings a soil to a target pH by every method that the report allows, for one depth and in one material.</summary>
    /// <remarks>
    /// A method whose source gives no depth is answered as published, with the caution <c>lime.depth-unknown</c>; the span is that of the others
    /// where at least one has a depth.
    /// </remarks>
    /// <param name="soil">What is known of the soil.</param>
    /// <param name="target">The pH in water wanted.</param>
    /// <param name="depth">The depth that the lime is worked into; above zero.</param>
    /// <param name="material">The material at hand; <see langword="null"/> for ground limestone.</param>
    /// <param name="methods">The methods; <see langword="null"/> for <see cref="LimingMethod.All"/>.</param>
    /// <returns>The answers, the methods that give none with the reason, and why they differ.</returns>
    /// <exception cref="ArgumentNullException">The report is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The depth is not above zero.</exception>
    /// <example><code>
    /// SoilReport soil = new() { PhInWater = new Ph(5.6), Texture = SoilTexture.SiltLoam, SikoraBufferPh = new Ph(6.3) };
    /// LimeComparison comparison = Liming.Compare(soil, new Ph(6.4), Length.FromCentimeters(20));
    /// foreach (LimeRequirement answer in comparison.Answers)
    ///     Console.WriteLine(answer);
    /// foreach (LimeRefusal refusal in comparison.Refusals)
    ///     Console.WriteLine(refusal);
    /// </code></example>
    public static LimeComparison Compare(
        SoilReport soil, Ph target, Length depth, LimingMaterial? material = null, IReadOnlyList<LimingMethod>? methods = null)
    {
        Guard.NotNull(soil);
        Guard.Positive(Boundary.Metres(depth), "m", nameof(depth));
        LimingMaterial wanted = material ?? LimingMaterial.GroundLimestone;
        List<LimeRequirement> answers = [];
        List<LimeRefusal> refusals = [];
        foreach (LimingMethod method in methods ?? LimingMethod.All)
        {
            if (method.CanUse(soil, target, out string reason))
            {
                LimeRequirement answer = Requirement(soil, target, method);
                answers.Add((answer.Depth is null ? answer.WithUnknownDepth() : answer.ForDepth(depth)).As(wanted));
            }
            else
            {
                refusals.Add(new LimeRefusal(method.Method, reason));
            }
        }

        return new LimeComparison(target, depth, wanted, answers, refusals);
    }

    /// <summary>
    /// Takes up a recommendation that is already given, by a laboratory's report or a product's label, to bring it to a depth, a
    /// material, an area or a split.
    /// </summary>
    /// <param name="rate">The rate recommended; zero or more.</param>
    /// <param name="material">The material it is recommended of, with its calcium carbonate equivalent.</param>
    /// <param name="recommendedBy">Who recommends it, for instance the laboratory's name.</param>
    /// <param name="depth">The depth of soil it is for, or <see langword="null"/> where none is said.</param>
    /// <returns>The recommendation as a lime requirement.</returns>
    /// <exception cref="ArgumentNullException">The material is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The rate is negative, or the depth is not above zero.</exception>
    /// <example><code>
    /// AreaDensity recommended = Mass.FromPounds(15) / Area.FromSquareFeet(100);
    /// LimeRequirement need = Liming.FromRecommendation(recommended, LimingMaterial.GroundLimestone, "county laboratory");
    /// Console.WriteLine(need.Split(LimeSplit.PennStateGarden).Count);
    /// </code></example>
    public static LimeRequirement FromRecommendation(AreaDensity rate, LimingMaterial material, string recommendedBy, Length? depth = null)
    {
        Guard.NotNull(material);
        Guard.NotNegative(Boundary.GramsPerSquareMetre(rate), "g/m²", nameof(rate));
        Method method = new(
            "lime-recommendation",
            "recommendation as given",
            new Source("lime-recommendation", "lime recommendation", Guard.NotBlank(recommendedBy), null, null),
            new Domain("the soil it was given for"));
        Estimate<AreaDensity> given = new(rate, method);
        return new LimeRequirement(WithCautionsOfDose(given).WithCautions(MaterialCautions(given, material)), material, depth);
    }

    internal static IEnumerable<Caution> MaterialCautions(Estimate<AreaDensity> rate, LimingMaterial material) =>
        IsZero(rate) ? [] : LimeCautions.Of(material);

    private static Estimate<AreaDensity> WithCautionsOfDose(Estimate<AreaDensity> rate) =>
        IsZero(rate) ? rate : rate.WithCautions(LimeCautions.OfEveryDose);

    /// <summary>More lime than the potential acidity of the layer can take up overlimes it.</summary>
    private static IEnumerable<Caution> Overliming(Estimate<AreaDensity> rate, SoilReport soil, LimingMethod method)
    {
        if (soil.Cations?.PotentialAcidity is not { } acidity)
            return [];

        // One centimole per litre over 20 cm is 100 g of calcium carbonate per square metre.
        double depthMetres = method.Depth is { } depth ? Boundary.Metres(depth) : 0.2;
        double mostGramsPerSquareMetre = acidity.CentimolesPerLitre * 100 * depthMetres / 0.2;
        return Boundary.GramsPerSquareMetre(rate.Value) * method.Material.Fraction > mostGramsPerSquareMetre * (1 + 1e-9) ? [LimeCautions.Overliming] : [];
    }

    private static bool IsZero(Estimate<AreaDensity> rate) => Boundary.GramsPerSquareMetre(rate.Value) == 0;
}
