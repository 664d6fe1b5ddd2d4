using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A measured share of nitrogen that a material gave up in a time.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record NitrogenRelease
{
    /// <summary>Holds a measurement.</summary>
    /// <param name="material">The material.</param>
    /// <param name="pool">Which nitrogen the share is of.</param>
    /// <param name="time">How long it took; above zero.</param>
    /// <param name="share">The share; from 0 to 100 %.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentException">The material is empty.</exception>
    /// <exception cref="ArgumentNullException">The source is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number lies outside what is said above, or there is no such pool.</exception>
    public NitrogenRelease(string material, NitrogenPool pool, Duration time, Ratio share, Source source)
    {
        Material = Guard.NotBlank(material);
        Pool = Guard.Defined(pool);
        Guard.Positive(Boundary.Days(time), "d", nameof(time));
        Guard.Within(Boundary.Fraction(share) * 100, 0, 100, "%", nameof(share));
        Time = HouseUnits.Normalise(time);
        Share = HouseUnits.Normalise(share);
        Source = Guard.NotNull(source);
    }

    /// <summary>The material.</summary>
    public string Material { get; }

    /// <summary>Which nitrogen the share is of.</summary>
    public NitrogenPool Pool { get; }

    /// <summary>How long it took.</summary>
    public Duration Time { get; }

    /// <summary>The share that was given up.</summary>
    public Ratio Share { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The measurement, in invariant culture.</summary>
    /// <returns>For instance <c>manure compost: 7 % of its organic nitrogen in 84 days [...]</c>.</returns>
    public override string ToString() =>
        $"{Material}: {Guard.Number(Boundary.Fraction(Share) * 100)} % of its {(Pool == NitrogenPool.Organic ? "organic" : "total")} nitrogen in "
        + $"{Guard.Number(Boundary.Days(Time))} days [{Source}]";
}
