using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>The weak acids of waters and feeds: constants by temperature, the forms of carbon, and the pH of known solutions.</summary>
/// <remarks>
/// <para>
/// Constants of the databases phreeqc.dat and minteq.v4.dat of the U.S. Geological Survey, activities by Davies. pH is the activity of hydrogen. Ion
/// pairs of metals with the acids' ions are left out; in hard water they lower a pH by some hundredths.
/// </para>
/// </remarks>
public static class WaterChemistry
{
    // 420 ppm of dry air at sea level, the mean of the year 2023 to two figures (from memory).
    private const double CarbonDioxideAtmospheres = 420e-6;

    private static readonly Method SolutionMethod = new(
        "water.charge-balance",
        "pH at which the charges of a solution cancel",
        AlkalinitySources.Constants,
        new Domain(
            "dilute solutions of salts, carbonates, phosphates, citrates, sulfates and ammonium; activities by Davies, no ion pairs",
            new DomainLimit("temperature", 0, 50, "°C"),
            new DomainLimit("ionicStrength", 0, 0.5, "mol/L")));

    /// <summary>The pKw of water: the negative logarithm of its ion product at zero ionic strength.</summary>
    /// <param name="temperature">From 0 to 50 °C.</param>
    /// <returns>A plain number; 14.00 at 25 °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside 0 to 50 °C.</exception>
    public static double PkOfWater(Temperature temperature) => At(temperature).Water;

    /// <summary>The first pK of carbonic acid, of dissolved carbon dioxide with it, at zero ionic strength.</summary>
    /// <param name="temperature">From 0 to 50 °C.</param>
    /// <returns>A plain number; 6.35 at 25 °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside 0 to 50 °C.</exception>
    public static double FirstPkOfCarbonicAcid(Temperature temperature) => At(temperature).FirstCarbonic;

    /// <summary>The second pK of carbonic acid at zero ionic strength.</summary>
    /// <param name="temperature">From 0 to 50 °C.</param>
    /// <returns>A plain number; 10.33 at 25 °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside 0 to 50 °C.</exception>
    public static double SecondPkOfCarbonicAcid(Temperature temperature) => At(temperature).SecondCarbonic;

    /// <summary>In which forms the inorganic carbon of a water is at a pH.</summary>
    /// <param name="ph">The pH.</param>
    /// <param name="temperature">From 0 to 50 °C.</param>
    /// <param name="ionicStrength">From 0 to 0.5 mol/L.</param>
    /// <returns>The shares; together 100 %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature or the ionic strength is outside what the constants were published for.</exception>
    /// <example><code>
    /// CarbonateShares shares = WaterChemistry.SharesOfCarbon(new Ph(6.5), Temperature.FromDegreesCelsius(25), Molarity.Zero);
    /// double gas = shares.CarbonDioxide.Percent;   // 42: acid to pH 6.5 has turned less than half of the bicarbonate
    /// </code></example>
    public static CarbonateShares SharesOfCarbon(Ph ph, Temperature temperature, Molarity ionicStrength)
    {
        EquilibriumConstants constants = At(temperature);
        double molesPerLitre = SolutionMethod.Require(Boundary.MolesPerLitre(ionicStrength), "mol/L", nameof(ionicStrength));
        Speciation state = new(new WeakTotals(0, 0) { Carbon = 1 }, constants, ph.Value, molesPerLitre);
        return new CarbonateShares(
            Ratio.FromPercent(state.CarbonDioxide * 100), Ratio.FromPercent(state.Bicarbonate * 100), Ratio.FromPercent(state.Carbonate * 100));
    }

    /// <summary>The pH of a solution from what is dissolved in it.</summary>
    /// <param name="solution">
    /// What was dissolved. Bicarbonate counts for all inorganic carbon, dihydrogen phosphate for all phosphate, ammonium, sulfate and citrate likewise; hydrogen
    /// is not asked, it follows from the charges. So 10 mmol/L of phosphate alone is phosphoric acid, and with 20 mmol/L of sodium it is Na₂HPO₄.
    /// </param>
    /// <param name="temperature">From 0 to 50 °C.</param>
    /// <param name="exchange">Whether carbon dioxide stays as dissolved or balances with the air.</param>
    /// <returns>The pH.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The temperature is outside 0 to 50 °C, the solution is stronger than 0.5 mol/L of ionic strength, or its pH lies outside 0 to 14.
    /// </exception>
    /// <example><code>
    /// SolutionIons soda = new(
    ///     new IonConcentration(SolutionIon.Sodium, Molarity.FromMillimolesPerLiter(10)),
    ///     new IonConcentration(SolutionIon.Bicarbonate, Molarity.FromMillimolesPerLiter(10)));
    /// Estimate&lt;Ph&gt; ph = WaterChemistry.PhOf(soda, Temperature.FromDegreesCelsius(25), GasExchange.Closed);   // pH 8.25
    /// </code></example>
    public static Estimate<Ph> PhOf(SolutionIons solution, Temperature temperature, GasExchange exchange)
    {
        Guard.NotNull(solution);
        EquilibriumConstants constants = At(temperature);
        double charge = 0;
        double ionicStrength = 0;
        foreach (IonConcentration ion in solution.Concentrations)
        {
            if (IsWeak(ion.Ion))
                continue;
            int one = IonFacts.Of(ion.Ion).Charge;
            charge += one * ion.MolesPerLitre;
            ionicStrength += one * one * ion.MolesPerLitre / 2;
        }

        WeakTotals totals = new(charge, ionicStrength)
        {
            Carbon = solution.MolesPerLitre(SolutionIon.Bicarbonate),
            Phosphate = solution.MolesPerLitre(SolutionIon.DihydrogenPhosphate),
            Citrate = solution.MolesPerLitre(SolutionIon.DihydrogenCitrate),
            Sulfate = solution.MolesPerLitre(SolutionIon.Sulfate),
            Ammonia = solution.MolesPerLitre(SolutionIon.Ammonium),
            OpenCarbonDioxideMolesPerLitre = Guard.Defined(exchange) == GasExchange.OpenToAir ? CarbonDioxideInAir(constants) : null,
        };
        double ph = Speciation.Balanced(totals, constants).Ph;
        Guard.Between(ph, 0, 14, "pH", nameof(solution));
        return new Estimate<Ph>(new Ph(ph), SolutionMethod);
    }

    internal static double CarbonDioxideInAir(EquilibriumConstants constants) =>
        Math.Pow(10, constants.CarbonDioxideSolubility) * CarbonDioxideAtmospheres;

    private static bool IsWeak(SolutionIon ion) => ion is SolutionIon.Hydrogen or SolutionIon.Bicarbonate or SolutionIon.DihydrogenPhosphate
        or SolutionIon.DihydrogenCitrate or SolutionIon.Sulfate or SolutionIon.Ammonium;

    private static EquilibriumConstants At(Temperature temperature) =>
        new(SolutionMethod.Require(Boundary.Celsius(temperature), "°C", nameof(temperature)));
}
