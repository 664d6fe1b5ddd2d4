using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>From loose to settled depth and back, with the loss as an input. Exact arithmetic.</summary>
/// <remarks>
/// "Ten percent more" and "loses ten percent" are not the same: what loses 10 % of its depth needs 11.1 % more to end full.
/// <see cref="SettlingRanges"/> lists what is published of losses and allowances; they are inputs and not constants.
/// </remarks>
/// <example><code>
/// Length after = Settling.DepthAfter(Length.FromCentimeters(30), loss: Ratio.FromPercent(15)); // 25.5 cm
/// Ratio allowance = Settling.AllowanceFor(Ratio.FromPercent(15)); // 17.6 %
/// Length topUp = Settling.TopUp(Length.FromCentimeters(30), lossPerYear: Ratio.FromPercent(10), years: 3); // 8.13 cm
/// </code></example>
public static class Settling
{
    /// <summary>The depth after a loss.</summary>
    /// <param name="loose">The depth before; zero or more.</param>
    /// <param name="loss">What it loses of its depth; from 0 to 100 %.</param>
    /// <returns>The depth left.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is negative, or the loss is out of range.</exception>
    public static Length DepthAfter(Length loose, Ratio loss) => DepthAfter(loose, loss, 1);

    /// <summary>The depth after the same loss year by year, each of what is left.</summary>
    /// <param name="loose">The depth before; zero or more.</param>
    /// <param name="lossPerYear">What it loses each year of the depth it then has; from 0 to 100 %.</param>
    /// <param name="years">How many years; zero or more.</param>
    /// <returns>The depth left.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth or the years are negative, or the loss is out of range.</exception>
    public static Length DepthAfter(Length loose, Ratio lossPerYear, int years)
    {
        double metres = Dimension.NotNegative(loose, nameof(loose));
        double percent = Guard.Within(Boundary.Fraction(lossPerYear) * 100, 0, 100, "%", nameof(lossPerYear));
        return Length.FromMeters(metres * Math.Pow((100 - percent) / 100, Guard.AtLeast(years, 0)));
    }

    /// <summary>What has to be added on top to have the first depth again.</summary>
    /// <param name="loose">The depth at the beginning; zero or more.</param>
    /// <param name="lossPerYear">What it loses each year of the depth it then has; from 0 to 100 %.</param>
    /// <param name="years">How many years; zero or more.</param>
    /// <returns>The settled depth missing; it is bought with an allowance of its own.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth or the years are negative, or the loss is out of range.</exception>
    public static Length TopUp(Length loose, Ratio lossPerYear, int years) =>
        Length.FromMeters(Boundary.Metres(loose) - Boundary.Metres(DepthAfter(loose, lossPerYear, years)));

    /// <summary>The loose depth that settles to a depth.</summary>
    /// <param name="settled">The depth wanted in the end; zero or more.</param>
    /// <param name="loss">What the loose depth loses; zero or more, below 100 %.</param>
    /// <returns>The loose depth.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is negative, or the loss is out of range.</exception>
    public static Length LooseFor(Length settled, Ratio loss) =>
        Length.FromMeters(Dimension.NotNegative(settled, nameof(settled)) / (1 - LossShare(loss)));

    /// <summary>What to buy on top of a net volume that loses a share of itself.</summary>
    /// <param name="loss">What the loose volume loses; zero or more, below 100 %.</param>
    /// <returns>The allowance, as a share of the net volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The loss is out of range.</exception>
    public static Ratio AllowanceFor(Ratio loss) => Ratio.FromPercent(100 * LossShare(loss) / (1 - LossShare(loss)));

    /// <summary>The loss that an allowance makes up for.</summary>
    /// <param name="allowance">What is bought on top, as a share of the net volume; zero or more.</param>
    /// <returns>The loss, as a share of the loose volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The allowance is negative.</exception>
    public static Ratio LossCoveredBy(Ratio allowance)
    {
        double share = Guard.NotNegative(Boundary.Fraction(allowance) * 100, "%", nameof(allowance)) / 100;
        return Ratio.FromPercent(100 * share / (1 + share));
    }

    private static double LossShare(Ratio loss)
    {
        double percent = Boundary.Fraction(loss) * 100;
        return percent is >= 0 and < 100 ? percent / 100 : throw Guard.Refused(nameof(loss), percent, "%", "0 % or more, below 100 %");
    }
}
