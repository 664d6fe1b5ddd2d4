using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>From a chance in one year to the chance over several, and back.</summary>
/// <remarks>Years are taken as alike and independent of one another.</remarks>
/// <example><code>
/// // Accepting one year in ten, a freeze catches the plants at least once in five years with a chance of 41 %.
/// Ratio once = YearlyChance.AtLeastOnceIn(years: 5, Ratio.FromPercent(10));
/// Ratio yearly = YearlyChance.InOneYear(years: 5, atLeastOnce: once);
/// </code></example>
public static class YearlyChance
{
    /// <summary>The chance that something happens at least once in so many years: 1 - (1 - p)^n.</summary>
    /// <param name="years">How many years, 1 or more.</param>
    /// <param name="inOneYear">The chance in one year, 0 % to 100 %.</param>
    /// <returns>The chance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The years are fewer than 1, or the chance is not from 0 % to 100 %.</exception>
    public static Ratio AtLeastOnceIn(int years, Ratio inOneYear)
    {
        Guard.AtLeast(years, 1);
        double percent = Guard.Within(Boundary.Fraction(inOneYear) * 100, 0, 100, "%", nameof(inOneYear));
        return Ratio.FromPercent(Raised(percent / 100, years) * 100);
    }

    /// <summary>The chance in one year of what happens at least once in so many years with a chance: the inverse of <see cref="AtLeastOnceIn(int, Ratio)"/>.</summary>
    /// <param name="years">How many years, 1 or more.</param>
    /// <param name="atLeastOnce">The chance over those years, 0 % to 100 %.</param>
    /// <returns>The chance in one year.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The years are fewer than 1, or the chance is not from 0 % to 100 %.</exception>
    public static Ratio InOneYear(int years, Ratio atLeastOnce)
    {
        Guard.AtLeast(years, 1);
        double percent = Guard.Within(Boundary.Fraction(atLeastOnce) * 100, 0, 100, "%", nameof(atLeastOnce));
        return Ratio.FromPercent(Raised(percent / 100, 1.0 / years) * 100);
    }

    internal static Estimate<Ratio> AtLeastOnceIn(int years, Estimate<Ratio> inOneYear)
    {
        Guard.AtLeast(years, 1);
        return inOneYear.AdjustedBy(FreezeEvidence.OverYears, chance => Ratio.FromPercent(Raised(Boundary.Fraction(chance), years) * 100));
    }

    // A chance can be a hair above 1 after its way through per cent.
    private static double Raised(double fraction, double power) => fraction >= 1 ? 1 : -double.ExpM1(power * double.LogP1(-fraction));
}
