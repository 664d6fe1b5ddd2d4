using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>How much water a pot takes. Exact arithmetic on the shares given.</summary>
/// <example><code>
/// Volume pot = Volume.FromLiters(2);
/// Volume toFill = PotWatering.ToCapacity(pot, present: Ratio.FromPercent(30), capacity: Ratio.FromPercent(55));   // 0.5 L
/// Volume toLeach = PotWatering.WithLeaching(toFill, leaching: Ratio.FromPercent(20));                           // 0.625 L
/// Console.WriteLine($"{toFill} {toLeach}");
/// </code></example>
public static class PotWatering
{
    /// <summary>The water that brings a medium to container capacity.</summary>
    /// <param name="medium">The volume of the medium; above zero.</param>
    /// <param name="present">The water in it now, as a share of the volume; from 0 to 100 %.</param>
    /// <param name="capacity">Container capacity in this container, as <see cref="DrainedMedium.ContainerCapacity"/> gives it; from 0 to 100 %.</param>
    /// <returns>The water; zero where there is enough. A medium of peat that has dried out sheds water at first and must be given it slowly.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside what is said above.</exception>
    public static Volume ToCapacity(Volume medium, Ratio present, Ratio capacity)
    {
        double litres = Guard.Positive(Boundary.Litres(medium), "L", nameof(medium));
        double now = Guard.Within(Boundary.Fraction(present) * 100, 0, 100, "%", nameof(present));
        double wanted = Guard.Within(Boundary.Fraction(capacity) * 100, 0, 100, "%", nameof(capacity));
        return Volume.FromLiters(litres * Math.Max(0, wanted - now) / 100);
    }

    /// <summary>The water to give so that a share of it runs through and carries salt away: what stays, divided by the rest.</summary>
    /// <param name="stays">The water that the medium is to keep; zero or more.</param>
    /// <param name="leaching">The share of what is given that is to run out; from 0 to below 100 %.</param>
    /// <returns>The water to give.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside what is said above.</exception>
    public static Volume WithLeaching(Volume stays, Ratio leaching)
    {
        double litres = Guard.NotNegative(Boundary.Litres(stays), "L", nameof(stays));
        double share = Boundary.Fraction(leaching);
        return share is >= 0 and < 1
            ? Volume.FromLiters(litres / (1 - share))
            : throw Guard.Refused(nameof(leaching), share * 100, "%", "from 0 to below 100 %");
    }

    /// <summary>The share that ran out of a watering.</summary>
    /// <param name="given">The water given; above zero.</param>
    /// <param name="drained">The water that ran out; from zero to what was given.</param>
    /// <returns>The leaching fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside what is said above.</exception>
    public static Ratio LeachingFraction(Volume given, Volume drained)
    {
        double litres = Guard.Positive(Boundary.Litres(given), "L", nameof(given));
        return Ratio.FromPercent(100 * Guard.Within(Boundary.Litres(drained), 0, litres, "L", nameof(drained)) / litres);
    }

    /// <summary>The share of a medium that the water of a watering fills: what was given and did not run out.</summary>
    /// <remarks>Of a dry medium that was soaked through it is container capacity. Far less of a pot that was dry shows that the water ran past a medium that sheds it.</remarks>
    /// <param name="medium">The volume of the medium; above zero.</param>
    /// <param name="given">The water given; zero or more.</param>
    /// <param name="drained">The water that ran out; from zero to what was given.</param>
    /// <returns>The water that stayed, as a share of the volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside what is said above, or more stayed than the medium has room for.</exception>
    public static Ratio Retained(Volume medium, Volume given, Volume drained)
    {
        double litres = Guard.Positive(Boundary.Litres(medium), "L", nameof(medium));
        double givenLitres = Guard.NotNegative(Boundary.Litres(given), "L", nameof(given));
        double drainedLitres = Guard.Within(Boundary.Litres(drained), 0, givenLitres, "L", nameof(drained));
        return givenLitres - drainedLitres <= litres
            ? Ratio.FromPercent(100 * (givenLitres - drainedLitres) / litres)
            : throw Guard.Refused(
                nameof(drained), drainedLitres, "L", $"from {Guard.Number(givenLitres - litres)} to {Guard.Number(givenLitres)} L, or more stays than the medium has room for");
    }
}
