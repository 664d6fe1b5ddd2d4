using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>How fast a compost gives up nitrogen: first-order kinetics as an incubation has them.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. N(t) = N₀ (1 - exp(-k t)). The incubations were at a steady 25 °C or so in moist, sieved soil:
/// the field is slower.
/// </remarks>
public sealed record CompostRelease
{
    /// <summary>Describes a release.</summary>
    /// <param name="material">The compost.</param>
    /// <param name="pool">N₀, the nitrogen that can become available, per dry soil, at the dose of the incubation; greater than zero.</param>
    /// <param name="perDay">The rate constant k, for each day; greater than zero.</param>
    /// <param name="share">The share of total nitrogen released in the end of the incubation; greater than zero, up to 100 %.</param>
    /// <param name="incubation">How long that was; greater than zero.</param>
    /// <param name="source">Where it comes from.</param>
    /// <exception cref="ArgumentException">The material is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public CompostRelease(string material, MassFraction pool, double perDay, Ratio share, Duration incubation, Source source)
    {
        Material = Guard.NotBlank(material);
        Guard.Positive(Boundary.MassFraction(pool) * 1e6, "mg/kg", nameof(pool));
        PerDay = Guard.Positive(perDay, "per day", nameof(perDay));
        double percent = Boundary.Fraction(share) * 100;
        if (percent is not (> 0 and <= 100))
            throw Guard.Refused(nameof(share), percent, "%", "greater than 0 %, up to 100 %");
        Guard.Positive(Boundary.Days(incubation), "days", nameof(incubation));
        Pool = HouseUnits.Normalise(pool);
        Share = HouseUnits.Normalise(share);
        Incubation = HouseUnits.Normalise(incubation);
        Source = Guard.NotNull(source);
    }

    /// <summary>The compost.</summary>
    public string Material { get; }

    /// <summary>The nitrogen that can become available, per dry soil, at the dose of the incubation.</summary>
    public MassFraction Pool { get; }

    /// <summary>The rate constant, for each day.</summary>
    public double PerDay { get; }

    /// <summary>The share of total nitrogen released in the end of the incubation.</summary>
    public Ratio Share { get; }

    /// <summary>How long that was.</summary>
    public Duration Incubation { get; }

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }

    /// <summary>One line in metric units and invariant culture.</summary>
    /// <returns>For instance <c>composted tea leaves: 5.25 % of the nitrogen in 63 days [source]</c>.</returns>
    public override string ToString() => $"{Material}: {QuantityText.Of(Share, TextStyle.Default)} of the nitrogen in {QuantityText.Of(Incubation, TextStyle.Default)} [{Source}]";

    internal double Progress(double days) => 1 - Math.Exp(-PerDay * days);
}
