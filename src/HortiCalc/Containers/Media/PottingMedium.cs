using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>Loose medium for pots, and pots from loose medium. Exact arithmetic on the volumes and the allowance given.</summary>
/// <remarks>
/// Medium is pressed when it is potted and sinks when it is watered, so that pots take more loose medium than they hold.
/// By how much depends on medium and hand (a garden text, the source of the sizes under <c>us-small-pots</c>, has 15 to 20 %),
/// and so the allowance is always the caller's:
/// the loose volume beyond what the pots hold, as a share of what they hold.
/// </remarks>
/// <example><code>
/// Container pot = Container.RoundTapered(Length.FromCentimeters(17), Length.FromCentimeters(12), Length.FromCentimeters(13));
/// Volume medium = PottingMedium.ForPots(
///     pot.FillVolume(headspace: Length.FromCentimeters(1.5)), pots: 40, compactionAllowance: Ratio.FromPercent(15));
/// PotYield yield = PottingMedium.PotsFrom(
///     Volume.FromLiters(70), pot.FillVolume(Length.FromCentimeters(1.5)), Ratio.FromPercent(15));
/// </code></example>
public static class PottingMedium
{
    /// <summary>What to take care of whenever medium is handled.</summary>
    public static IReadOnlyList<Caution> Cautions { get; } = ValueList<Caution>.Of([ContainerCautions.Dust]);

    /// <summary>The loose medium for a number of pots.</summary>
    /// <param name="perPot">What one pot holds when potted: <see cref="Container.FillVolume"/>, or a published size.</param>
    /// <param name="pots">How many pots; zero or more.</param>
    /// <param name="compactionAllowance">The loose volume beyond what the pots hold, as a share of it; zero where none is
    /// wanted.</param>
    /// <returns>The loose volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not greater than zero, or the count or the allowance is
    /// negative.</exception>
    public static Volume ForPots(Volume perPot, int pots, Ratio compactionAllowance) =>
        Volume.FromLiters(LoosePerPotLitres(perPot, compactionAllowance) * Guard.AtLeast(pots, 0, nameof(pots)));

    /// <summary>The loose medium for a number of pots of one shape.</summary>
    /// <param name="pot">The pot.</param>
    /// <param name="headspace">The room left below the brim; less than the height of the pot.</param>
    /// <param name="pots">How many pots; zero or more.</param>
    /// <param name="compactionAllowance">The loose volume beyond what the pots hold, as a share of it; zero where none is
    /// wanted.</param>
    /// <returns>The loose volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The headspace leaves no room for medium, or the count or the allowance is
    /// negative.</exception>
    public static Volume ForPots(Container pot, Length headspace, int pots, Ratio compactionAllowance) =>
        ForPots(Held(pot, headspace), pots, compactionAllowance);

    /// <summary>The whole pots that a loose volume fills.</summary>
    /// <param name="available">The loose medium at hand; zero or more.</param>
    /// <param name="perPot">What one pot holds when potted; greater than zero.</param>
    /// <param name="compactionAllowance">The loose volume beyond what the pots hold, as a share of it; zero where none is
    /// wanted.</param>
    /// <returns>How many pots, and what is left over.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A volume or the allowance is out of its range, or the count is beyond two
    /// thousand million.</exception>
    public static PotYield PotsFrom(Volume available, Volume perPot, Ratio compactionAllowance) =>
        new(available, Volume.FromLiters(LoosePerPotLitres(perPot, compactionAllowance)));

    /// <summary>The whole pots of one shape that a loose volume fills.</summary>
    /// <param name="available">The loose medium at hand; zero or more.</param>
    /// <param name="pot">The pot.</param>
    /// <param name="headspace">The room left below the brim; less than the height of the pot.</param>
    /// <param name="compactionAllowance">The loose volume beyond what the pots hold, as a share of it; zero where none is
    /// wanted.</param>
    /// <returns>How many pots, and what is left over.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A volume, the headspace or the allowance is out of its range, or the count
    /// is beyond two thousand million.</exception>
    public static PotYield PotsFrom(Volume available, Container pot, Length headspace, Ratio compactionAllowance) =>
        PotsFrom(available, Held(pot, headspace), compactionAllowance);

    private static double LoosePerPotLitres(Volume perPot, Ratio compactionAllowance)
    {
        double heldLitres = Guard.Positive(Boundary.Litres(perPot), "L", nameof(perPot));
        double allowancePercent = Guard.NotNegative(Boundary.Fraction(compactionAllowance) * 100, "%", nameof(compactionAllowance));
        return heldLitres * (1 + allowancePercent / 100);
    }

    private static Volume Held(Container pot, Length headspace)
    {
        double heightMetres = Boundary.Metres(Guard.NotNull(pot).Height);
        double headspaceMetres = Boundary.Metres(headspace);
        return headspaceMetres >= 0 && headspaceMetres < heightMetres
            ? pot.FillVolume(headspace)
            : throw Guard.Refused(
                nameof(headspace), headspaceMetres, "m", $"0 m or more, less than the height of the pot, {Guard.Number(heightMetres)} m");
    }
}
