using HortiCalc.Evidence;

namespace HortiCalc.Mixes;

/// <summary>A published way from the ions of a solution to its conductivity at 25 °C.</summary>
/// <remarks>
/// They agree in very dilute water and part with strength: at 20 meq/L the sum without correction lies a quarter above the one with it.
/// </remarks>
public sealed record ConductivityMethod
{
    private readonly Func<SolutionIons, double> millisiemensPerCentimetre;

    private ConductivityMethod(string key, string name, Source source, Domain domain, Func<SolutionIons, double> millisiemensPerCentimetre)
    {
        Evidence = new Method(key, name, source, domain);
        this.millisiemensPerCentimetre = millisiemensPerCentimetre;
    }

    /// <summary>
    /// Diffusion coefficients with the correction for activity and with ion pairs of sulfate, phosphate and bicarbonate, as PHREEQC computes it:
    /// Λ = Σ D z² (F²/RT) c γ^α with α = 0.6/√|z|. The default, because it is the only one here that is corrected for the strength of a feed. The
    /// activity is by Davies where PHREEQC has coefficients of its own for each ion. Trace ions without a printed coefficient carry no current.
    /// </summary>
    public static ConductivityMethod DiffusionCoefficients { get; } = new(
        "conductivity.diffusion-coefficients",
        "conductivity from diffusion coefficients with activity and ion pairs",
        FeedingSources.Phreeqc,
        new Domain("waters and feeds at 25 °C", new DomainLimit("ionicStrength", 0, 0.1, "mol/L")),
        ConductivityKernels.Corrected);

    /// <summary>
    /// The sum of the limiting conductivities, Kohlrausch's law of independent migration: right without limit in very dilute water, and the most that
    /// any solution can have.
    /// </summary>
    public static ConductivityMethod InfiniteDilution { get; } = new(
        "conductivity.infinite-dilution",
        "conductivity at infinite dilution",
        FeedingSources.LimitingConductivity,
        new Domain("very dilute water at 25 °C; above that it is an upper bound", new DomainLimit("ionicStrength", 0, 0.001, "mol/L")),
        ConductivityKernels.Limiting);

    /// <summary>
    /// A factor for the mass of each of the eight main ions of natural waters, without correction for strength, as water laboratories check analyses.
    /// </summary>
    public static ConductivityMethod IonFactors { get; } = new(
        "conductivity.ion-factors",
        "conductivity from a factor for each ion",
        FeedingSources.ConductivityFactors,
        new Domain("natural waters at 25 °C whose ions are Ca, Mg, K, Na, HCO3, Cl, SO4 and NO3", new DomainLimit("ionicStrength", 0, 0.05, "mol/L")),
        ConductivityKernels.ByFactors);

    /// <summary>The growers' rule that the cations in meq/L are ten times the conductivity in mS/cm. Up to 30 % too low for simple salts.</summary>
    public static ConductivityMethod CationSum { get; } = new(
        "conductivity.cation-sum",
        "cations in meq/L over ten",
        FeedingSources.CationRule,
        new Domain("mixed feeds of 1 to 5 mS/cm", new DomainLimit("cations", 10, 50, "meq/L")),
        ConductivityKernels.CationsOverTen);

    /// <summary>Every method there is.</summary>
    public static IReadOnlyList<ConductivityMethod> All { get; } =
        ValueList<ConductivityMethod>.Of([DiffusionCoefficients, InfiniteDilution, IonFactors, CationSum]);

    /// <summary>The method's key, name, source and domain.</summary>
    public Method Evidence { get; }

    /// <summary>Finds a method by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>, for instance <c>conductivity.cation-sum</c>.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentException">There is no such method, or the key is empty.</exception>
    public static ConductivityMethod FromKey(string key)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(key);
        return All.FirstOrDefault(method => method.Evidence.Key == key)
            ?? throw new ArgumentException($"{nameof(key)} was '{key}'; allowed: {string.Join(", ", All.Select(method => method.Evidence.Key))}.", nameof(key));
    }

    /// <summary>The method's name.</summary>
    /// <returns>For instance <c>cations in meq/L over ten</c>.</returns>
    public override string ToString() => Evidence.Name;

    internal double MillisiemensPerCentimetre(SolutionIons solution)
    {
        double ionicStrength = solution.IonicStrengthMolesPerLitre;
        double cations = solution.Cations.MilliequivalentsPerLitre;
        Evidence.Require(ionicStrength, "mol/L");
        Evidence.Require(cations, "meq/L");
        return millisiemensPerCentimetre(solution);
    }
}
