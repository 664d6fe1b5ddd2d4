namespace HortiCalc.Mixes;

/// <summary>Activity coefficients of ions by the equation of Davies.</summary>
internal static class Activity
{
    /// <summary>log γ = −A z² (√I/(1 + √I) − 0.3 I): C. W. Davies, Ion Association, 1962; see <see cref="AlkalinitySources.Davies"/>.</summary>
    public static double LogCoefficient(int charge, double ionicStrengthMolesPerLitre, double celsius)
    {
        double root = Math.Sqrt(ionicStrengthMolesPerLitre);
        return -DebyeHuckelSlope(celsius) * charge * charge * (root / (1 + root) - 0.3 * ionicStrengthMolesPerLitre);
    }

    public static double Coefficient(int charge, double ionicStrengthMolesPerLitre, double celsius) =>
        Math.Pow(10, LogCoefficient(charge, ionicStrengthMolesPerLitre, celsius));

    /// <summary>A = 1.82·10⁶ (ε T)^−1.5, with the permittivity ε of water; 0.51 at 25 °C.</summary>
    public static double DebyeHuckelSlope(double celsius)
    {
        // Permittivity of water from 0 to 100 °C: Malmberg and Maryott, Journal of Research of the National Bureau of Standards 56:1, 1956 (from memory).
        double permittivity = 87.740 - 0.40008 * celsius + 9.398e-4 * celsius * celsius - 1.410e-6 * celsius * celsius * celsius;
        return 1.82e6 * Math.Pow(permittivity * (celsius + 273.15), -1.5);
    }
}
