using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>How much of the nitrogen in compost or manure becomes available, and when.</summary>
/// <remarks>
/// Three published ways: the kinetics of an incubation for the first weeks, a rule of halves for the years, and the budget of organic,
/// ammonium and nitrate nitrogen that extension services use for manure. <see cref="NitrogenShares"/> shows how far measurements differ:
/// by a factor of forty.
/// </remarks>
/// <example><code>
/// AreaDensity total = AreaDensity.FromGramsPerSquareMeter(60);
/// Estimate&lt;AreaDensity&gt; month = CompostNitrogen.After(total, Duration.FromDays(30), CompostReleases.KitchenGarbage); // 23.2 g/m²
/// Estimate&lt;AreaDensity&gt; secondYear = CompostNitrogen.InYear(total, 2); // 3.75 g/m² (3 to 4.5)
/// MassFraction available = CompostNitrogen.PlantAvailable(
///     organic: MassFraction.FromPercent(0.65), ammonium: MassFraction.FromPercent(0.4), nitrate: MassFraction.Zero,
///     mineralised: Ratio.FromPercent(25), ammoniumKept: Ratio.FromPercent(66));
/// </code></example>
public static class CompostNitrogen
{
    private static readonly Method Halving = new(
        "compost-nitrogen-halving",
        "a tenth to a seventh of the total nitrogen in the first year, half as much in each year after",
        CompostSources.Course,
        new Domain("mature compost", new DomainLimit("year", 1, double.PositiveInfinity, "")));

    /// <summary>The nitrogen released up to a time, by the kinetics of an incubation.</summary>
    /// <param name="total">The total nitrogen given with the compost; zero or more.</param>
    /// <param name="time">How long it has lain in moist, warm soil; from zero to the length of the incubation.</param>
    /// <param name="release">The kinetics: one of <see cref="CompostReleases"/>, or one's own.</param>
    /// <returns>The nitrogen: the share printed for the whole incubation, spread over time as its rate constant says.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The nitrogen is negative, or the time is outside the incubation.</exception>
    public static Estimate<AreaDensity> After(AreaDensity total, Duration time, CompostRelease release)
    {
        Guard.NotNull(release);
        double grams = Guard.NotNegative(Boundary.GramsPerSquareMetre(total), "g/m²", nameof(total));
        Method method = new(
            "compost-nitrogen-first-order." + release.Material.Replace(' ', '-'),
            $"first-order release of nitrogen from {release.Material}",
            release.Source,
            new Domain("incubated in moist soil at a steady temperature", new DomainLimit("time", 0, Boundary.Days(release.Incubation), "days")));
        double days = method.Require(Boundary.Days(time), "days", nameof(time));
        double share = Boundary.Fraction(release.Share) * release.Progress(days) / release.Progress(Boundary.Days(release.Incubation));
        return new Estimate<AreaDensity>(AreaDensity.FromGramsPerSquareMeter(grams * share), method);
    }

    /// <summary>The nitrogen released in one year after the compost was given, by the rule of halves.</summary>
    /// <param name="total">The total nitrogen given with the compost; zero or more.</param>
    /// <param name="year">Which year: 1 is the first after it was given.</param>
    /// <returns>The middle of the printed range, with the range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The nitrogen is negative, or the year is before the first.</exception>
    public static Estimate<AreaDensity> InYear(AreaDensity total, int year)
    {
        double grams = Guard.NotNegative(Boundary.GramsPerSquareMetre(total), "g/m²", nameof(total));
        double halved = grams * Math.Pow(0.5, Guard.AtLeast(year, 1) - 1);
        return new Estimate<AreaDensity>(
            AreaDensity.FromGramsPerSquareMeter(0.125 * halved),
            Halving,
            new EstimateRange<AreaDensity>(
                AreaDensity.FromGramsPerSquareMeter(0.1 * halved), AreaDensity.FromGramsPerSquareMeter(0.15 * halved), "range printed by the source"));
    }

    /// <summary>The plant-available nitrogen of manure or compost in the first year, from its three forms. Exact arithmetic on given
    /// shares.</summary>
    /// <param name="organic">The organic nitrogen: total less ammonium and nitrate; from 0 to 100 %.</param>
    /// <param name="ammonium">The ammonium nitrogen; from 0 to 100 %.</param>
    /// <param name="nitrate">The nitrate nitrogen; from 0 to 100 %.</param>
    /// <param name="mineralised">The share of the organic nitrogen that becomes available; from 0 to 100 %.</param>
    /// <param name="ammoniumKept">The share of the ammonium that does not escape into the air; from 0 to 100 %.</param>
    /// <returns>The available nitrogen, on the basis of the forms given.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A share is out of range.</exception>
    public static MassFraction PlantAvailable(MassFraction organic, MassFraction ammonium, MassFraction nitrate, Ratio mineralised, Ratio ammoniumKept)
    {
        double organicPercent = Guard.Within(Boundary.MassFraction(organic) * 100, 0, 100, "%", nameof(organic));
        double ammoniumPercent = Guard.Within(Boundary.MassFraction(ammonium) * 100, 0, 100, "%", nameof(ammonium));
        double nitratePercent = Guard.Within(Boundary.MassFraction(nitrate) * 100, 0, 100, "%", nameof(nitrate));
        double mineralisedPercent = Guard.Within(Boundary.Fraction(mineralised) * 100, 0, 100, "%", nameof(mineralised));
        double keptPercent = Guard.Within(Boundary.Fraction(ammoniumKept) * 100, 0, 100, "%", nameof(ammoniumKept));
        return MassFraction.FromPercent(organicPercent * mineralisedPercent / 100 + ammoniumPercent * keptPercent / 100 + nitratePercent);
    }
}
