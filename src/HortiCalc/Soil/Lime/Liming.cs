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
        Estimate<AreaDensity> rate = LimingMethod.IsAtTarget(soil, target)
            ? new Estimate<AreaDensity>(AreaDensity.Zero, method.Method, cautions: [LimeCautions.NotNeeded])
            : WithCautionsOfDose(method.Rate(soil, target));
        return new LimeRequirement(rate, method.Material, method.Depth);
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

    private static bool IsZero(Estimate<AreaDensity> rate) => Boundary.GramsPerSquareMetre(rate.Value) == 0;
}
