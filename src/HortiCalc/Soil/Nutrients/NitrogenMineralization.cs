using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A curve of mineral nitrogen over time, N₀ (1 − e^(−t/τ)), as fitted to an incubation.</summary>
/// <remarks>Immutable; equal when all members are equal. The time constant τ is one over the printed rate.</remarks>
/// <example><code>
/// NitrogenMineralization garbage = NitrogenReleases.Kinetics[2];
/// Console.WriteLine(garbage.Released(Duration.FromDays(14)));
/// </code></example>
public sealed record NitrogenMineralization
{
    /// <summary>Holds a curve.</summary>
    /// <param name="material">The material that was mixed in.</param>
    /// <param name="potential">What is released in the end, by mass of dry soil; zero or more.</param>
    /// <param name="timeConstant">The time in which all but 1/e of it is released; above zero.</param>
    /// <param name="method">The curve's method, with its source.</param>
    /// <exception cref="ArgumentException">The material is empty.</exception>
    /// <exception cref="ArgumentNullException">The method is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number lies outside what is said above.</exception>
    public NitrogenMineralization(string material, MassFraction potential, Duration timeConstant, Method method)
    {
        Material = Guard.NotBlank(material);
        Guard.NotNegative(Boundary.MassFraction(potential) * 1e6, "mg/kg", nameof(potential));
        Guard.Positive(Boundary.Days(timeConstant), "d", nameof(timeConstant));
        Potential = HouseUnits.Normalise(potential);
        TimeConstant = HouseUnits.Normalise(timeConstant);
        Method = Guard.NotNull(method);
    }

    /// <summary>The material that was mixed in.</summary>
    public string Material { get; }

    /// <summary>What is released in the end, by mass of dry soil.</summary>
    public MassFraction Potential { get; }

    /// <summary>The time in which all but 1/e of it is released.</summary>
    public Duration TimeConstant { get; }

    /// <summary>The curve's method, with its source.</summary>
    public Method Method { get; }

    /// <summary>The mineral nitrogen released up to a time.</summary>
    /// <param name="time">The time since the material was mixed in; zero or more. The published ones were followed for 63 days.</param>
    /// <returns>The nitrogen by mass of dry soil.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative, or longer than the method was published for.</exception>
    public Estimate<MassFraction> Released(Duration time)
    {
        double days = Method.Require(Guard.NotNegative(Boundary.Days(time), "d", nameof(time)), "d", nameof(time));
        double share = -Math.Exp(-days / Boundary.Days(TimeConstant)) + 1;
        return new Estimate<MassFraction>(
            MassFraction.FromMilligramsPerKilogram(Boundary.MassFraction(Potential) * 1e6 * share), Method, cautions: [NutrientCautions.Convention]);
    }

    /// <summary>The curve, in invariant culture.</summary>
    /// <returns>For instance <c>composted kitchen garbage: 22.4 mg/kg, 3.92 days [...]</c>.</returns>
    public override string ToString() =>
        $"{Material}: {Guard.Number(Boundary.MassFraction(Potential) * 1e6)} mg/kg, "
        + $"{Guard.Number(Math.Round(Boundary.Days(TimeConstant), 2, MidpointRounding.AwayFromZero))} days [{Method.Source}]";
}
