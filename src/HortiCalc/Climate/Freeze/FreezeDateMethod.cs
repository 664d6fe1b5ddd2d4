using System.Text.Json.Serialization;

namespace HortiCalc.Climate;

/// <summary>How the dates of past freezes are turned into chances.</summary>
/// <remarks>Immutable; equal when all members are equal. The kinds are a closed set.</remarks>
/// <example><code>
/// FreezeDateMethod asTheNewerNormals = FreezeDateMethod.ResampledYears(seed: 1);
/// FreezeClimateOptions options = new(Hemisphere.Northern, method: asTheNewerNormals);
/// FreezeClimateOptions ranked = new(Hemisphere.Northern, method: FreezeDateMethod.Ranked(PlottingPosition.Weibull));
/// </code></example>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(MixedNormalMethod), "mixed-normal")]
[JsonDerivedType(typeof(RankedDatesMethod), "ranked")]
[JsonDerivedType(typeof(ResampledYearsMethod), "resampled-years")]
public abstract record FreezeDateMethod
{
    private protected FreezeDateMethod()
    {
    }

    /// <summary>
    /// The mixed distribution: the share of seasons with a freeze, and a normal distribution of the dates of those that had one.
    /// The default, because ten to thirty seasons are enough for it and the older national tables are made this way.
    /// </summary>
    public static FreezeDateMethod MixedNormal { get; } = new MixedNormalMethod();

    /// <summary>The dates ranked as they are: no assumption on their spread, and no date rarer than the record holds.</summary>
    /// <param name="position">The plotting position; <see langword="null"/> for <see cref="PlottingPosition.Weibull"/>.</param>
    /// <returns>The method.</returns>
    public static FreezeDateMethod Ranked(PlottingPosition? position = null) => new RankedDatesMethod(position ?? PlottingPosition.Weibull);

    /// <summary>
    /// Years put together at random from months of the record, as the 1981-2010 and 1991-2020 normals of the United States are
    /// made: it reaches chances between those of single seasons without assuming a spread.
    /// </summary>
    /// <param name="seed">The seed; the same one gives the same dates.</param>
    /// <param name="years">How many years, from 1,000 to 100,000; 10,000 in the normals.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The years are not from 1,000 to 100,000.</exception>
    public static FreezeDateMethod ResampledYears(int seed, int years = ResampledYearsMethod.YearsOfTheNormals) => new ResampledYearsMethod(seed, years);
}
