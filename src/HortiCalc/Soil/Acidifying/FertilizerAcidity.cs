using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>How much lime makes good the acid that a fertiliser leaves in the soil, as one source prints it.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. The printed figures are a convention: about half of what full nitrification would give, because plants
/// take up part of the nitrogen as nitrate. A fertiliser that leaves the soil less acid has a negative acidity.
/// </remarks>
/// <example><code>
/// FertilizerAcidity urea = FertilizerAcidities.Named("cornell-nrcca-po-37", "Urea");
/// Estimate&lt;AreaDensity&gt; lime = urea.LimeFor(AreaDensity.FromPoundsPerAcre(150));   // 150 lb of nitrogen: 270 lb of calcium carbonate
/// Console.WriteLine(lime.ToString("U", null));
/// </code></example>
public sealed record FertilizerAcidity
{
    /// <summary>Holds what a source prints.</summary>
    /// <param name="material">The fertiliser as the source names it.</param>
    /// <param name="basis">What the acidity is counted by.</param>
    /// <param name="carbonate">The calcium carbonate that makes it good, per mass of the basis; negative where the fertiliser itself works as lime.</param>
    /// <param name="source">Where it was published.</param>
    /// <param name="nitrogen">The nitrogen in the fertiliser by mass, or <see langword="null"/> where none is printed; above zero.</param>
    /// <param name="doubt">Why the print is not to be trusted; <see langword="null"/> where nothing speaks against it.</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentNullException">The source is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The basis is unknown, the carbonate not from -1000 to 1000 %, or the nitrogen not above 0 and up to 100 %.</exception>
    public FertilizerAcidity(
        string material, AcidityBasis basis, Ratio carbonate, Source source, MassFraction? nitrogen = null, string? doubt = null)
    {
        Material = Guard.NotBlank(material);
        Basis = Guard.Defined(basis);
        Guard.Within(Boundary.Fraction(carbonate) * 100, -1000, 1000, "%", nameof(carbonate));
        Carbonate = HouseUnits.Normalise(carbonate);
        Source = Guard.NotNull(source);
        if (nitrogen is { } share)
        {
            double percent = Boundary.MassFraction(share) * 100;
            if (!(percent > 0 && percent <= 100))
                throw Guard.Refused(nameof(nitrogen), percent, "%", "above 0 and up to 100 %");
            Nitrogen = HouseUnits.Normalise(share);
        }

        Doubt = doubt is null ? null : Guard.NotBlank(doubt);
    }

    /// <summary>The fertiliser as the source names it.</summary>
    public string Material { get; }

    /// <summary>What the acidity is counted by.</summary>
    public AcidityBasis Basis { get; }

    /// <summary>The calcium carbonate that makes it good, per mass of the basis; negative where the fertiliser itself works as lime.</summary>
    public Ratio Carbonate { get; }

    /// <summary>Where it was published.</summary>
    public Source Source { get; }

    /// <summary>The nitrogen in the fertiliser by mass, or <see langword="null"/> where none is printed.</summary>
    public MassFraction? Nitrogen { get; }

    /// <summary>Why the print is not to be trusted; <see langword="null"/> where nothing speaks against it.</summary>
    public string? Doubt { get; }

    /// <summary>The calcium carbonate that makes good an amount of the fertiliser, or of its nitrogen, as <see cref="Basis"/> says.</summary>
    /// <param name="amount">The fertiliser or the nitrogen; zero or more.</param>
    /// <returns>The mass of pure calcium carbonate; negative where the fertiliser itself works as lime.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative.</exception>
    public Estimate<Mass> LimeFor(Mass amount) => new(
        Mass.FromKilograms(Guard.NotNegative(Boundary.Kilograms(amount), "kg", nameof(amount)) * Boundary.Fraction(Carbonate)), Method);

    /// <summary>The calcium carbonate that makes good a rate of the fertiliser, or of its nitrogen, as <see cref="Basis"/> says.</summary>
    /// <param name="rate">The fertiliser or the nitrogen per area; zero or more.</param>
    /// <returns>The mass of pure calcium carbonate per area; negative where the fertiliser itself works as lime.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The rate is negative.</exception>
    public Estimate<AreaDensity> LimeFor(AreaDensity rate) => new(
        AreaDensity.FromGramsPerSquareMeter(
            Guard.NotNegative(Boundary.GramsPerSquareMetre(rate), "g/m²", nameof(rate)) * Boundary.Fraction(Carbonate)), Method);

    /// <summary>The same acidity counted by the other basis, by the nitrogen in the fertiliser.</summary>
    /// <param name="basis">What to count by.</param>
    /// <returns>The acidity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The basis is unknown.</exception>
    /// <exception cref="InvalidOperationException"><see cref="Nitrogen"/> is <see langword="null"/>: nothing joins the two.</exception>
    public FertilizerAcidity By(AcidityBasis basis)
    {
        Guard.Defined(basis);
        if (basis == Basis)
            return this;
        if (Nitrogen is not { } share)
            throw new InvalidOperationException($"The source prints no nitrogen for {Material}, which joins its mass and its nitrogen.");
        double nitrogen = Boundary.MassFraction(share);
        double carbonate = Boundary.Fraction(Carbonate) * (basis == AcidityBasis.Material ? nitrogen : 1 / nitrogen);
        return new FertilizerAcidity(Material, basis, Ratio.FromDecimalFractions(carbonate), Source, Nitrogen, Doubt);
    }

    /// <summary>The fertiliser, its acidity and the source, in invariant culture.</summary>
    /// <returns>For instance <c>Urea: 1.8 of calcium carbonate for 1 of nitrogen [...]</c>.</returns>
    public override string ToString()
    {
        string basis = Basis == AcidityBasis.Nitrogen ? "nitrogen" : "fertiliser";
        string doubt = Doubt is null ? "" : $"; doubtful: {Doubt}";
        return $"{Material}: {Guard.Number(Math.Round(Boundary.Fraction(Carbonate), 4, MidpointRounding.AwayFromZero))} of calcium carbonate for 1 of {basis}{doubt} [{Source}]";
    }

    private Method Method => new(
        "acid-fertiliser",
        "lime that makes good the acidity of a fertiliser",
        Source,
        new Domain("by the convention of fertiliser tables, over years"));
}
