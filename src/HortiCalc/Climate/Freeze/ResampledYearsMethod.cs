using System.Globalization;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>Years put together from months of the record: see <see cref="FreezeDateMethod.ResampledYears"/>.</summary>
/// <remarks>
/// After the methodology of the 1981-2010 normals of the United States: each month of a year is a run of days from a random year of the
/// record, begun up to 14 days earlier or later, and moved to a monthly mean. The report, as far as it could be read, does not say how
/// that mean is drawn; here it is the mean of that month in another random year of the record, months independent of one another.
/// </remarks>
public sealed record ResampledYearsMethod : FreezeDateMethod
{
    internal const int YearsOfTheNormals = 10_000;

    /// <summary>Chooses the seed and the number of years.</summary>
    /// <param name="seed">The seed; the same one gives the same dates.</param>
    /// <param name="years">How many years, from 1,000 to 100,000.</param>
    /// <exception cref="ArgumentOutOfRangeException">The years are not from 1,000 to 100,000.</exception>
    public ResampledYearsMethod(int seed, int years = YearsOfTheNormals)
    {
        Seed = seed;
        Guard.Within(years, 1_000, 100_000, "years");
        Years = years;
    }

    /// <summary>The seed.</summary>
    public int Seed { get; }

    /// <summary>How many years.</summary>
    public int Years { get; }

    /// <summary>The method.</summary>
    /// <returns>Its name, the years and the seed.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Years} resampled years, seed {Seed}");
}
