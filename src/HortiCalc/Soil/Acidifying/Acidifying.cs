using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>How much acidifying material lowers the pH of a soil.</summary>
/// <example><code>
/// SoilReport soil = new() { PhInWater = new Ph(6.0), Texture = SoilTexture.Loam };
/// AcidRequirement need = Acidifying.Requirement(soil, new Ph(4.5), AcidifyingMethod.Michigan);
/// Console.WriteLine(need.Over(Area.FromSquareMeters(4.8)));
/// Console.WriteLine(need.Split(AcidLimit.GardenBed));
/// </code></example>
public static class Acidifying
{
    private static readonly Method BeforePhMoves = new(
        "acid-free-carbonate",
        "sulfur that dissolves the free carbonate, before the pH moves",
        AcidSources.FreeCarbonate,
        new Domain("carbonate spread evenly through the depth; sulfur all oxidised, by molar masses"));

    /// <summary>The acidifying material that brings a soil to a target pH.</summary>
    /// <param name="soil">What is known of the soil.</param>
    /// <param name="target">The pH in water wanted.</param>
    /// <param name="method">The method; <see cref="AcidifyingMethod"/> says which to take.</param>
    /// <returns>
    /// The rate with the depth and the material it is for. Zero, with the caution <c>acid.not-needed</c>, where the soil is at or below the
    /// target. Where the report shows free carbonate the caution <c>acid.free-carbonate</c> is added: see <see cref="FreeCarbonate"/>.
    /// </returns>
    /// <exception cref="ArgumentNullException">The report or the method is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The report lacks what the method needs.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The soil or the target is outside what the method was published for.</exception>
    public static AcidRequirement Requirement(SoilReport soil, Ph target, AcidifyingMethod method)
    {
        Guard.NotNull(soil);
        Guard.NotNull(method);
        if (method.Refusal(soil, target) is { } refusal)
            throw refusal;
        Estimate<AreaDensity> rate = AcidifyingMethod.IsAtTarget(soil, target)
            ? new Estimate<AreaDensity>(AreaDensity.Zero, method.Method, cautions: [AcidCautions.NotNeeded])
            : WithCautionsOfDose(method.Rate(soil, target), method.Material);
        return new AcidRequirement(HasCarbonate(soil) ? rate.WithCautions(AcidCautions.FreeCarbonate) : rate, method.Material, method.Depth);
    }

    /// <summary>What every method asks for a soil, side by side in elemental sulfur, and why the others do not answer.</summary>
    /// <param name="soil">What is known of the soil.</param>
    /// <param name="target">The pH in water wanted.</param>
    /// <param name="depth">
    /// The depth to bring the rates to whose source names one, or <see langword="null"/> to leave each at its own; above zero.
    /// </param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentNullException">The report is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The depth is not above zero.</exception>
    /// <example><code>
    /// SoilReport soil = new() { PhInWater = new Ph(6.0), Texture = SoilTexture.SandyLoam };
    /// AcidComparison all = Acidifying.Compare(soil, new Ph(5.0));
    /// Console.WriteLine(all);
    /// </code></example>
    public static AcidComparison Compare(SoilReport soil, Ph target, Length? depth = null)
    {
        Guard.NotNull(soil);
        if (depth is { } asked)
            Guard.Positive(Boundary.Metres(asked), "m", nameof(depth));
        List<AcidRequirement> requirements = [];
        List<AcidRefusal> refusals = [];
        foreach (AcidifyingMethod method in AcidifyingMethod.All)
        {
            if (!method.CanUse(soil, target, out string reason))
            {
                refusals.Add(new AcidRefusal(method, reason));
                continue;
            }

            AcidRequirement need = Requirement(soil, target, method);
            if (method.Material != AcidifyingMaterial.ElementalSulfur)
                need = need.As(AcidifyingMaterial.ElementalSulfur);
            requirements.Add(depth is { } wanted && need.Depth is not null ? need.ForDepth(wanted) : need);
        }

        return new AcidComparison(soil, target, requirements, refusals);
    }

    /// <summary>The calcium carbonate that lies in a layer of soil; exact arithmetic.</summary>
    /// <param name="carbonate">The free calcium carbonate by mass of dry soil, as a laboratory reports it; 0 to 100 %.</param>
    /// <param name="depth">The depth of the layer; above zero.</param>
    /// <param name="bulkDensity">The mass of dry soil per volume; above zero.</param>
    /// <returns>The mass per area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is not from 0 to 100 %, or the depth or the density not above zero.</exception>
    public static AreaDensity CarbonatePerArea(MassFraction carbonate, Length depth, Density bulkDensity)
    {
        double percent = Guard.Within(Boundary.MassFraction(carbonate) * 100, 0, 100, "%", nameof(carbonate));
        double metres = Guard.Positive(Boundary.Metres(depth), "m", nameof(depth));
        double kilogramsPerCubicMetre = Guard.Positive(Boundary.KilogramsPerCubicMetre(bulkDensity), "kg/m³", nameof(bulkDensity));
        return AreaDensity.FromGramsPerSquareMeter(percent / 100 * metres * kilogramsPerCubicMetre * 1000);
    }

    /// <summary>The sulfur that it takes to dissolve the free carbonate of a layer, before its pH can move at all.</summary>
    /// <remarks>
    /// One per cent of lime in the top 8 inches takes over three tons of sulfur per acre, and carbonate in water or subsoil brings it back. The
    /// result says so: with any carbonate the caution <c>acid.free-carbonate</c> advises that it may not be worth it.
    /// </remarks>
    /// <param name="carbonate">The free calcium carbonate by mass of dry soil, as a laboratory reports it; 0 to 100 %.</param>
    /// <param name="depth">The depth of the layer; above zero.</param>
    /// <param name="bulkDensity">The mass of dry soil per volume; above zero.</param>
    /// <returns>The requirement of elemental sulfur; zero, with the caution <c>acid.not-needed</c>, where there is no carbonate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is not from 0 to 100 %, or the depth or the density not above zero.</exception>
    /// <example><code>
    /// AcidRequirement first = Acidifying.FreeCarbonate(
    ///     MassFraction.FromPercent(1), Length.FromCentimeters(20), Density.FromKilogramsPerCubicMeter(1300));
    /// Console.WriteLine(first.Split(AcidLimit.PurdueTurf).Years);   // 18 years on a lawn
    /// </code></example>
    public static AcidRequirement FreeCarbonate(MassFraction carbonate, Length depth, Density bulkDensity)
    {
        double carbonateGramsPerSquareMetre = Boundary.GramsPerSquareMetre(CarbonatePerArea(carbonate, depth, bulkDensity));
        Estimate<AreaDensity> rate = new(
            AreaDensity.FromGramsPerSquareMeter(carbonateGramsPerSquareMetre / AcidifyingMaterial.ElementalSulfur.Fraction), BeforePhMoves);
        IEnumerable<Caution> cautions = carbonateGramsPerSquareMetre == 0
            ? [AcidCautions.NotNeeded]
            : [AcidCautions.FreeCarbonate, AcidCautions.Laboratory, .. AcidCautions.Of(AcidifyingMaterial.ElementalSulfur)];
        return new AcidRequirement(rate.WithCautions(cautions), AcidifyingMaterial.ElementalSulfur, depth);
    }

    /// <summary>
    /// Takes up a recommendation that is already given, by a laboratory's report or a product's label, to bring it to a depth, a material, an area or
    /// a split.
    /// </summary>
    /// <param name="rate">The rate recommended; zero or more.</param>
    /// <param name="material">The material it is recommended of.</param>
    /// <param name="recommendedBy">Who recommends it, for instance the laboratory's name.</param>
    /// <param name="depth">The depth of soil it is for, or <see langword="null"/> where none is said.</param>
    /// <returns>The recommendation as a requirement.</returns>
    /// <exception cref="ArgumentNullException">The material is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The rate is negative, or the depth is not above zero.</exception>
    public static AcidRequirement FromRecommendation(AreaDensity rate, AcidifyingMaterial material, string recommendedBy, Length? depth = null)
    {
        Guard.NotNull(material);
        Guard.NotNegative(Boundary.GramsPerSquareMetre(rate), "g/m²", nameof(rate));
        Method method = new(
            "acid-recommendation",
            "recommendation as given",
            new Source("acid-recommendation", "recommendation of an acidifying material", Guard.NotBlank(recommendedBy), null, null),
            new Domain("the soil it was given for"));
        return new AcidRequirement(WithCautionsOfDose(new Estimate<AreaDensity>(rate, method), material), material, depth);
    }

    private static bool HasCarbonate(SoilReport soil) => soil.FreeCarbonate is { } carbonate && Boundary.MassFraction(carbonate) > 0;

    private static Estimate<AreaDensity> WithCautionsOfDose(Estimate<AreaDensity> rate, AcidifyingMaterial material) =>
        Boundary.GramsPerSquareMetre(rate.Value) == 0 ? rate : rate.WithCautions(AcidCautions.OfEveryDose.Concat(AcidCautions.Of(material)));
}
