using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>One row an ion, one column a salt: what a gram per litre of each brings, and what is missing.</summary>
internal sealed class PlanRows
{
    private readonly SolutionIons target;
    private readonly IReadOnlyList<SaltOffer> offers;
    private readonly SolutionIons water;
    private readonly SolutionIon[] ions;
    private readonly double[] scale;

    public PlanRows(SolutionIons target, IReadOnlyList<SaltOffer> offers, SolutionIons water, double shareOfUnwanted)
    {
        this.target = Guard.NotNull(target);
        this.offers = Guard.NotNull(offers);
        this.water = water;
        if (target.Concentrations.Count == 0)
            throw new ArgumentException($"{nameof(target)} names no ion; allowed: one or more.", nameof(target));
        if (offers.Count == 0)
            throw new ArgumentException($"{nameof(offers)} is empty; allowed: one salt or more.", nameof(offers));
        if (offers.Select(offer => offer.Salt.Key).Distinct().Count() < offers.Count)
            throw new ArgumentException($"{nameof(offers)} names a salt twice; allowed: each once.", nameof(offers));

        // Acid is bicarbonate below zero, so the two share a row.
        ions =
        [
            .. IonFacts.All.Select(facts => facts.Ion).Where(ion => ion != SolutionIon.Hydrogen && (target.MolesPerLitre(ion) > 0
                || offers.Any(offer => Brings(offer.Salt, ion) != 0)
                || (ion == SolutionIon.Bicarbonate && water.MolesPerLitre(ion) > 0))),
        ];
        double largest = target.Concentrations.Max(ion => ion.MolesPerLitre * Math.Max(1, Math.Abs(IonFacts.Of(ion.Ion).Charge)));
        double unwanted = Math.Max(largest, (target.Cations + target.Anions).MilliequivalentsPerLitre / 2000) * shareOfUnwanted;
        scale = [.. ions.Select(ion => target.MolesPerLitre(ion) is double wanted and > 0 ? wanted : unwanted)];
    }

    /// <summary>What a gram per litre of each salt brings, over the scale of the ion.</summary>
    public double[,] Scaled()
    {
        double[,] cells = new double[ions.Length, offers.Count];
        for (int i = 0; i < ions.Length; i++)
        {
            for (int j = 0; j < offers.Count; j++)
                cells[i, j] = Brings(offers[j].Salt, ions[i]) / scale[i];
        }

        return cells;
    }

    public double[] ScaledMissing() => [.. ions.Select((ion, i) => Missing(ion) / scale[i])];

    public (double[] Low, double[] High) ScaledLimits(double tolerance)
    {
        double[] low = new double[ions.Length];
        double[] high = new double[ions.Length];
        for (int i = 0; i < ions.Length; i++)
        {
            bool wanted = target.MolesPerLitre(ions[i]) > 0;
            double middle = Missing(ions[i]) / scale[i];
            bool alkalinity = ions[i] == SolutionIon.Bicarbonate;
            low[i] = wanted ? middle - tolerance : alkalinity ? -water.MolesPerLitre(ions[i]) / scale[i] : double.NegativeInfinity;
            high[i] = wanted ? middle + tolerance : double.PositiveInfinity;
        }

        return (low, high);
    }

    public NutrientPlan ToPlan(double[] gramsPerLitre) => new(
        target,
        water,
        [
            .. offers.Select((offer, j) => new SaltAmount(
                offer.Salt, MassConcentration.FromMilligramsPerLiter(gramsPerLitre[j] * 1000), offer.PricePerKilogram)),
        ]);

    private double Missing(SolutionIon ion) => target.MolesPerLitre(ion) - water.MolesPerLitre(ion)
        + (ion == SolutionIon.Bicarbonate ? water.MolesPerLitre(SolutionIon.Hydrogen) : 0);

    private static double Brings(NutrientSalt salt, SolutionIon ion) =>
        salt.MolesPerGram(ion) - (ion == SolutionIon.Bicarbonate ? salt.MolesPerGram(SolutionIon.Hydrogen) : 0);
}
