using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>A published form of the leaching requirement: the share of the water that must run through to hold the salt of the soil.</summary>
/// <remarks>
/// Immutable; a closed set: the values are the static members. The forms differ in what the conductivity allowed is of: read it at each.
/// <see cref="Rhoades"/> is the default, because it rests on the crop's threshold, which the tables of tolerance print.
/// </remarks>
public sealed record LeachingMethod
{
    private readonly double allowedFactor;
    private readonly double waterFactor;

    private LeachingMethod(string key, string name, Source source, string conditions, double allowedFactor, double waterFactor)
    {
        Method = new Method(key, name, source, new Domain(conditions));
        this.allowedFactor = allowedFactor;
        this.waterFactor = waterFactor;
    }

    /// <summary>
    /// ECw / (5 ECe − ECw): the conductivity allowed is of the saturated extract, averaged over the root zone: the crop's threshold. Surface
    /// watering and sprinklers. Equation 93 of FAO-56, solved for the fraction.
    /// </summary>
    public static LeachingMethod Rhoades { get; } = new(
        "leaching-rhoades",
        "leaching requirement, ECw / (5 ECe - ECw)",
        SaltSources.LeachingFraction,
        "surface watering and sprinklers; water uptake of 40, 30, 20 and 10 % by quarters of the root zone",
        5,
        -1);

    /// <summary>ECw / ECdw: the conductivity allowed is of the water that drains below the roots; the balance of salt at steady state.</summary>
    public static LeachingMethod SaltBalance { get; } = new(
        "leaching-salt-balance",
        "leaching requirement, ECw / ECdw",
        SaltSources.SaltBalance,
        "steady state; no salt taken up, dissolved or precipitated",
        1,
        0);

    /// <summary>ECw / (2 ECe): the conductivity allowed is of the saturated extract at which the crop yields nothing. Drip and daily watering; from memory.</summary>
    public static LeachingMethod HighFrequency { get; } = new(
        "leaching-high-frequency",
        "leaching requirement, ECw / (2 ECe of no yield)",
        SaltSources.HighFrequency,
        "drip and other watering every day or nearly so",
        2,
        0);

    /// <summary>Every form there is.</summary>
    public static IReadOnlyList<LeachingMethod> All { get; } = ValueList<LeachingMethod>.Of([Rhoades, SaltBalance, HighFrequency]);

    /// <summary>The form's key, name, source and domain.</summary>
    public Method Method { get; }

    /// <summary>Finds a form by its key.</summary>
    /// <param name="key">The key of its method, for instance <c>leaching-rhoades</c>.</param>
    /// <returns>The form.</returns>
    /// <exception cref="ArgumentException">There is no such form, or the key is empty.</exception>
    public static LeachingMethod FromKey(string key) => SoilKeys.Find(All, method => method.Method.Key, key);

    /// <summary>The name and source of the form.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Method.ToString();

    /// <summary>The share, below 1, or the refusal of a water that no leaching makes good.</summary>
    internal double Share(double waterDecisiemens, double allowedDecisiemens)
    {
        double below = allowedFactor * allowedDecisiemens + waterFactor * waterDecisiemens;
        return waterDecisiemens < below
            ? waterDecisiemens / below
            : throw Guard.Refused(
                "water",
                waterDecisiemens,
                "dS/m",
                $"below {Guard.Number(allowedFactor / (1 - waterFactor) * allowedDecisiemens)} dS/m, above which no leaching holds the soil at {Guard.Number(allowedDecisiemens)} dS/m");
    }
}
