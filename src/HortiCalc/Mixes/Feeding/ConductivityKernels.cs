using HortiCalc.Units;

namespace HortiCalc.Mixes;

/// <summary>Conductivity at 25 °C from moles per litre. S cm²/mol times mol/L is mS/cm.</summary>
internal static class ConductivityKernels
{
    /// <summary>F²/RT at 25 °C in s·S/mol, as printed by <see cref="FeedingSources.LimitingConductivity"/>.</summary>
    private const double FaradaySquaredPerThermal = 3.7554e6;

    private const double Celsius = 25;

    // Diffusion coefficients at 25 °C, 1e-9 m²/s: phreeqc.dat.
    private static readonly Dictionary<SolutionIon, double> Diffusion = new()
    {
        [SolutionIon.Ammonium] = 1.98,
        [SolutionIon.Potassium] = 1.96,
        [SolutionIon.Sodium] = 1.33,
        [SolutionIon.Calcium] = 0.793,
        [SolutionIon.Magnesium] = 0.705,
        [SolutionIon.Hydrogen] = 9.31,
        [SolutionIon.Nitrate] = 1.9,
        [SolutionIon.DihydrogenPhosphate] = 0.846,
        [SolutionIon.Sulfate] = 1.07,
        [SolutionIon.Chloride] = 2.03,
        [SolutionIon.Bicarbonate] = 1.18,
        [SolutionIon.Iron] = 0.719,
        [SolutionIon.Manganese] = 0.688,
        [SolutionIon.Zinc] = 0.715,
        [SolutionIon.Copper] = 0.733,
    };

    // µS/cm for a milligram of the ion per litre.
    private static readonly Dictionary<SolutionIon, double> Factors = new()
    {
        [SolutionIon.Calcium] = 2.60,
        [SolutionIon.Magnesium] = 3.82,
        [SolutionIon.Potassium] = 1.84,
        [SolutionIon.Sodium] = 2.13,
        [SolutionIon.Bicarbonate] = 0.716,
        [SolutionIon.Chloride] = 2.14,
        [SolutionIon.Sulfate] = 1.54,
        [SolutionIon.Nitrate] = 1.15,
    };

    // Ion pairs of phreeqc.dat: log K of forming, and the diffusion coefficient where one is printed. With bicarbonate: log K less that of HCO3-.
    private static readonly (SolutionIon Cation, SolutionIon Anion, double LogK, double Diffusion)[] Pairs =
    [
        (SolutionIon.Calcium, SolutionIon.Sulfate, 2.300, 0),
        (SolutionIon.Magnesium, SolutionIon.Sulfate, 2.370, 0),
        (SolutionIon.Potassium, SolutionIon.Sulfate, 0.850, 0.746),
        (SolutionIon.Sodium, SolutionIon.Sulfate, 0.7, 0.618),
        (SolutionIon.Ammonium, SolutionIon.Sulfate, 1.11, 0),
        (SolutionIon.Manganese, SolutionIon.Sulfate, 2.250, 0),
        (SolutionIon.Zinc, SolutionIon.Sulfate, 2.37, 0),
        (SolutionIon.Copper, SolutionIon.Sulfate, 2.310, 0),
        (SolutionIon.Iron, SolutionIon.Sulfate, 2.250, 0),
        (SolutionIon.Calcium, SolutionIon.DihydrogenPhosphate, 1.408, 0),
        (SolutionIon.Magnesium, SolutionIon.DihydrogenPhosphate, 1.513, 0),
        (SolutionIon.Calcium, SolutionIon.Bicarbonate, 11.435 - 10.329, 0.506),
        (SolutionIon.Magnesium, SolutionIon.Bicarbonate, 11.399 - 10.329, 0.478),
        (SolutionIon.Sodium, SolutionIon.Bicarbonate, -0.25, 0),
    ];

    public static double SquareCentimetresPerMole(SolutionIon ion) =>
        Diffusion.TryGetValue(ion, out double coefficient) ? Molar(coefficient, IonFacts.Of(ion).Charge) : 0;

    public static double Limiting(SolutionIons solution) =>
        solution.Concentrations.Sum(ion => SquareCentimetresPerMole(ion.Ion) * ion.MolesPerLitre);

    public static double Corrected(SolutionIons solution)
    {
        Dictionary<SolutionIon, double> total = solution.Concentrations.ToDictionary(ion => ion.Ion, ion => ion.MolesPerLitre);
        (SolutionIon Cation, SolutionIon Anion, double LogK, double Diffusion)[] pairs =
            [.. Pairs.Where(pair => total.ContainsKey(pair.Cation) && total.ContainsKey(pair.Anion))];
        Dictionary<SolutionIon, double> free = new(total);
        double[] paired = new double[pairs.Length];
        double ionicStrength = solution.IonicStrengthMolesPerLitre;

        // What is free follows from what is paired and the other way round; each round brings them nearer, from above.
        for (int round = 0; round < 500; round++)
        {
            double[] constants = [.. pairs.Select(pair => Conditional(pair.Cation, pair.Anion, pair.LogK, ionicStrength))];
            double change = 0;
            foreach (SolutionIon ion in total.Keys)
            {
                double bound = 1;
                for (int i = 0; i < pairs.Length; i++)
                {
                    if (pairs[i].Cation == ion)
                        bound += constants[i] * free[pairs[i].Anion];
                    else if (pairs[i].Anion == ion)
                        bound += constants[i] * free[pairs[i].Cation];
                }

                double now = total[ion] / bound;
                change = Math.Max(change, Math.Abs(now - free[ion]) / total[ion]);
                free[ion] = now;
            }

            for (int i = 0; i < pairs.Length; i++)
                paired[i] = constants[i] * free[pairs[i].Cation] * free[pairs[i].Anion];
            double strength = free.Sum(ion => ion.Value * Math.Pow(IonFacts.Of(ion.Key).Charge, 2)) / 2;
            for (int i = 0; i < pairs.Length; i++)
                strength += paired[i] * Math.Pow(ChargeOf(pairs[i].Cation, pairs[i].Anion), 2) / 2;
            change = Math.Max(change, Math.Abs(strength - ionicStrength));
            ionicStrength = strength;
            if (change < 1e-13)
                break;
        }

        double sum = 0;
        foreach ((SolutionIon ion, double molesPerLitre) in free)
            sum += SquareCentimetresPerMole(ion) * molesPerLitre * Slowed(IonFacts.Of(ion).Charge, ionicStrength);
        for (int i = 0; i < pairs.Length; i++)
        {
            int charge = ChargeOf(pairs[i].Cation, pairs[i].Anion);
            sum += Molar(pairs[i].Diffusion, charge) * paired[i] * Slowed(charge, ionicStrength);
        }

        return sum;
    }

    public static double ByFactors(SolutionIons solution)
    {
        foreach (IonConcentration ion in solution.Concentrations)
        {
            if (!Factors.ContainsKey(ion.Ion))
            {
                throw Guard.Refused(
                    nameof(solution), ion.MolesPerLitre * 1000, $"mmol/L of {IonFacts.Of(ion.Ion).Name}", "none of it: the method prints no factor for it");
            }
        }

        return solution.Concentrations.Sum(ion => Factors[ion.Ion] * ion.MolesPerLitre * IonFacts.Of(ion.Ion).GramsPerMole);
    }

    public static double CationsOverTen(SolutionIons solution) => solution.Cations.MilliequivalentsPerLitre / 10;

    private static int ChargeOf(SolutionIon cation, SolutionIon anion) => IonFacts.Of(cation).Charge + IonFacts.Of(anion).Charge;

    /// <summary>Limiting molar conductivity in S cm²/mol: D z² F²/RT, Nernst and Einstein.</summary>
    private static double Molar(double diffusion, int charge) => diffusion * 1e-9 * charge * charge * FaradaySquaredPerThermal * 1e4;

    /// <summary>γ^α, by which an ion is slowed: α = 0.6/√|z|, and √I/|z| from an ionic strength of 0.36 |z| on, as in PHREEQC's program.</summary>
    private static double Slowed(int charge, double ionicStrength)
    {
        int magnitude = Math.Abs(charge);
        if (magnitude == 0)
            return 0;
        double exponent = ionicStrength < 0.36 * magnitude ? 0.6 / Math.Sqrt(magnitude) : Math.Sqrt(ionicStrength) / magnitude;
        return Math.Min(1, Math.Pow(10, exponent * Activity.LogCoefficient(charge, ionicStrength, Celsius)));
    }

    /// <summary>The constant in concentrations: K times the activity coefficients of cation and anion over that of the pair.</summary>
    private static double Conditional(SolutionIon cation, SolutionIon anion, double logK, double ionicStrength) => Math.Pow(
        10,
        logK
            + Activity.LogCoefficient(IonFacts.Of(cation).Charge, ionicStrength, Celsius)
            + Activity.LogCoefficient(IonFacts.Of(anion).Charge, ionicStrength, Celsius)
            - Activity.LogCoefficient(ChargeOf(cation, anion), ionicStrength, Celsius));
}
