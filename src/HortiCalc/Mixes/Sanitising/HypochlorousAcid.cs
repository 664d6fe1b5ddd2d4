using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>How much of the free chlorine in water is hypochlorous acid, the form that kills, by pH.</summary>
/// <remarks>
/// The rest is hypochlorite, which is many times weaker. Published tables disagree: they imply a pKa from 7.40 to 7.60, so that at pH 8 they
/// print from 20 to 28 %. The constant is therefore chosen by value, and the range of the published constants is part of the answer.
/// </remarks>
/// <example><code>
/// Estimate&lt;Ratio&gt; share = HypochlorousAcid.Share(new Ph(7.5), HypochlorousConstant.UsGeologicalSurvey);
/// Console.WriteLine(share.Value.Percent);   // 54
/// </code></example>
public static class HypochlorousAcid
{
    private const double LowestPh = 5;
    private const double HighestPh = 10;
    private const double LowestPrinted = 7.40;
    private const double HighestPrinted = 7.60;
    private const string Meaning = "what the lowest and highest published constants, pKa 7.40 and 7.60, make of it";

    private static readonly Domain Dilute = new("free chlorine in water without ammonia, with little salt", new DomainLimit("pH", LowestPh, HighestPh, ""));

    private static readonly Method Usgs = new(
        "hypochlorous.usgs", "hypochlorous acid by pKa 7.5692 (25 °C)", SanitisingSources.UsgsConstants, Dilute);

    private static readonly Method Textbook = new(
        "hypochlorous.rounded", "hypochlorous acid by pKa 7.50", SanitisingSources.Textbook, Dilute);

    private static readonly Method ByTemperature = new(
        "hypochlorous.morris",
        "hypochlorous acid by Morris's pKa at the temperature of the water",
        SanitisingSources.Morris,
        new Domain(
            "free chlorine in water without ammonia, with little salt",
            new DomainLimit("pH", LowestPh, HighestPh, ""),
            new DomainLimit("water", 5, 35, "°C")));

    /// <summary>The share of hypochlorous acid at 25 °C.</summary>
    /// <param name="pH">From 5 to 10; below, chlorine gas comes off.</param>
    /// <param name="constant">Which published constant.</param>
    /// <returns>100/(1 + 10^(pH - pKa)) %, with what the lowest and highest published constants make of it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pH is outside the domain.</exception>
    public static Estimate<Ratio> Share(Ph pH, HypochlorousConstant constant) => Answer(pH, MethodOf(constant), Pka(constant, 25));

    /// <summary>The share of hypochlorous acid at the temperature of the water, by Morris's constant.</summary>
    /// <param name="pH">From 5 to 10.</param>
    /// <param name="water">The temperature of the water, from 5 to 35 °C.</param>
    /// <returns>The share; cold water has more of it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pH or the temperature is outside the domain.</exception>
    public static Estimate<Ratio> Share(Ph pH, Temperature water)
    {
        double celsius = ByTemperature.Require(Boundary.Celsius(water), "°C", nameof(water));
        return Answer(pH, ByTemperature, Pka(HypochlorousConstant.Morris, celsius));
    }

    /// <summary>The pH at which hypochlorous acid has a share, at 25 °C.</summary>
    /// <param name="share">What pH 10 to 5 give: about 0.4 to 99.7 %.</param>
    /// <param name="constant">Which published constant.</param>
    /// <returns>The pH; half is at the pKa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside what pH 5 to 10 give.</exception>
    public static Estimate<Ph> PhFor(Ratio share, HypochlorousConstant constant)
    {
        Method method = MethodOf(constant);
        double pka = Pka(constant, 25);
        double percent = Guard.Within(
            Boundary.Fraction(share) * 100, Boundary.Fraction(Of(HighestPh, pka)) * 100, Boundary.Fraction(Of(LowestPh, pka)) * 100, "%", nameof(share));
        double logOdds = Math.Log10((100 / percent) - 1);
        return new Estimate<Ph>(
            new Ph(Math.Clamp(pka + logOdds, LowestPh, HighestPh)), method, new EstimateRange<Ph>(new Ph(LowestPrinted + logOdds), new Ph(HighestPrinted + logOdds), Meaning));
    }

    /// <summary>The part of a level of free chlorine that is hypochlorous acid.</summary>
    /// <param name="freeChlorine">Counted as chlorine, Cl₂; 0 or more.</param>
    /// <param name="pH">From 5 to 10.</param>
    /// <param name="constant">Which published constant.</param>
    /// <returns>The level, counted as Cl₂ too: 70.9 mg/L are a millimole.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what is allowed.</exception>
    public static Estimate<MassConcentration> Level(MassConcentration freeChlorine, Ph pH, HypochlorousConstant constant)
    {
        double milligramsPerLitre = Guard.NotNegative(Boundary.MilligramsPerLitre(freeChlorine), "mg/L", nameof(freeChlorine));
        return Share(pH, constant).Select(share => MassConcentration.FromMilligramsPerLiter(milligramsPerLitre * Boundary.Fraction(share)));
    }

    private static Estimate<Ratio> Answer(Ph pH, Method method, double pka)
    {
        double value = method.Require(pH.Value, "", nameof(pH));
        return new Estimate<Ratio>(
            Of(value, pka), method, new EstimateRange<Ratio>(Of(value, LowestPrinted), Of(value, HighestPrinted), Meaning));
    }

    private static Ratio Of(double pH, double pka) => Ratio.FromPercent(100 / (1 + Math.Pow(10, pH - pka)));

    private static Method MethodOf(HypochlorousConstant constant) => Guard.Defined(constant) switch
    {
        HypochlorousConstant.UsGeologicalSurvey => Usgs,
        HypochlorousConstant.Rounded => Textbook,
        _ => ByTemperature,
    };

    private static double Pka(HypochlorousConstant constant, double celsius)
    {
        double kelvin = celsius + Boundary.KelvinAtZeroCelsius;
        return constant switch
        {
            HypochlorousConstant.UsGeologicalSurvey => 7.5692,
            HypochlorousConstant.Rounded => 7.50,
            _ => (3000 / kelvin) - 10.0686 + (0.0253 * kelvin),
        };
    }
}
