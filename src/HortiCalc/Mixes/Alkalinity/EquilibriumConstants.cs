namespace HortiCalc.Mixes;

/// <summary>
/// Acid constants at zero ionic strength, as the negative logarithms, at one temperature. Water, carbonate, sulfate and ammonium by the analytic
/// expressions of phreeqc.dat, phosphate and citrate by log K and enthalpy of minteq.v4.dat: <see cref="AlkalinitySources.Constants"/>.
/// </summary>
internal sealed class EquilibriumConstants
{
    private const double JoulesPerMoleKelvin = 8.314462618;
    private const double JoulesPerCalorie = 4.184;
    private const double KelvinAt25 = 298.15;

    private readonly double kelvin;

    public EquilibriumConstants(double celsius)
    {
        Celsius = celsius;
        kelvin = celsius + 273.15;
        Water = -Analytic(-283.971, -0.05069842, 13323.0, 102.24447, -1119669.0);
        SecondCarbonic = Analytic(107.8871, 0.03252849, -5151.79, -38.92561, 563713.9);
        FirstCarbonic = Analytic(464.1965, 0.09344813, -26986.16, -165.75951, 2248628.9) - SecondCarbonic;
        Bisulfate = Analytic(-56.889, 0.006473, 2307.9, 19.8858, 0);
        Ammonium = -Analytic(0.6322, -0.001225, -2835.76, 0, 0);
        CarbonDioxideSolubility = VantHoff(-1.468, -4.776 * JoulesPerCalorie);

        // Each step of the acid is the difference of two sums: log K and enthalpy of binding one, two, three hydrogens.
        ThirdPhosphoric = VantHoff(12.375, -15);
        SecondPhosphoric = VantHoff(19.573 - 12.375, -18 + 15);
        FirstPhosphoric = VantHoff(21.721 - 19.573, -10.1 + 18);
        ThirdCitric = VantHoff(6.396, 3.3472);
        SecondCitric = VantHoff(11.157 - 6.396, 1.297 - 3.3472);
        FirstCitric = VantHoff(14.285 - 11.157, -2.7614 - 1.297);
    }

    public double Celsius { get; }

    public double Water { get; }

    public double FirstCarbonic { get; }

    public double SecondCarbonic { get; }

    public double Bisulfate { get; }

    public double Ammonium { get; }

    public double FirstPhosphoric { get; }

    public double SecondPhosphoric { get; }

    public double ThirdPhosphoric { get; }

    public double FirstCitric { get; }

    public double SecondCitric { get; }

    public double ThirdCitric { get; }

    /// <summary>The logarithm of the solubility of carbon dioxide, mol/L per atmosphere.</summary>
    public double CarbonDioxideSolubility { get; }

    private double Analytic(double a1, double a2, double a3, double a4, double a5) =>
        a1 + a2 * kelvin + a3 / kelvin + a4 * Math.Log10(kelvin) + a5 / (kelvin * kelvin);

    /// <summary>The constant of an association, by its enthalpy in kJ/mol.</summary>
    private double VantHoff(double logK, double kilojoulesPerMole) =>
        logK - kilojoulesPerMole * 1000 / (JoulesPerMoleKelvin * Math.Log(10)) * (1 / kelvin - 1 / KelvinAt25);
}
