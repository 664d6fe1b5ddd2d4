using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>The whole pots that a volume of loose medium fills.</summary>
/// <remarks>
/// Immutable; equal when both volumes are equal. A volume that falls short of a whole number of pots only by the noise of
/// arithmetic (a part in 10⁹) fills that number.
/// </remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record PotYield : IFormattable, IDisplayable
{
    /// <summary>Counts the whole pots that a volume of loose medium fills.</summary>
    /// <param name="available">The loose medium at hand; zero or more.</param>
    /// <param name="mediumPerPot">The loose medium that one pot takes, allowance included; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A volume is out of its range, or the count is beyond two thousand
    /// million.</exception>
    public PotYield(Volume available, Volume mediumPerPot)
    {
        Guard.NotNegative(Boundary.Litres(available), "L", nameof(available));
        Guard.Positive(Boundary.Litres(mediumPerPot), "L", nameof(mediumPerPot));
        Available = HouseUnits.Normalise(available);
        MediumPerPot = HouseUnits.Normalise(mediumPerPot);
        double availableLitres = Boundary.Litres(Available);
        double perPotLitres = Boundary.Litres(MediumPerPot);
        Pots = WholeCount.Within(availableLitres / perPotLitres, "pots", nameof(available));
        LeftOver = Volume.FromLiters(WholeCount.Rest(availableLitres, Pots * perPotLitres));
    }

    /// <summary>The loose medium at hand.</summary>
    public Volume Available { get; }

    /// <summary>The loose medium that one pot takes, allowance included.</summary>
    public Volume MediumPerPot { get; }

    /// <summary>How many whole pots it fills.</summary>
    public int Pots { get; }

    /// <summary>The loose medium left over.</summary>
    public Volume LeftOver { get; }

    /// <summary>The yield in metric units and invariant culture.</summary>
    /// <returns>For instance <c>28 pots of 2.43 L from 70 L, 1.96 L left over</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The yield as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The count, what a pot takes, what was at hand and what is left over.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"{QuantityText.Of(Pots, style)} {(Pots == 1 ? "pot" : "pots")}")
    {
        Rows =
        [
            new DisplayRow("loose medium", QuantityText.Of(Available, style)),
            new DisplayRow("for one pot", QuantityText.Of(MediumPerPot, style)),
            new DisplayRow("left over", QuantityText.Of(LeftOver, style)),
        ],
    };

    private string ToString(TextStyle style) =>
        $"{QuantityText.Of(Pots, style)} {(Pots == 1 ? "pot" : "pots")} of {QuantityText.Of(MediumPerPot, style)}"
        + $" from {QuantityText.Of(Available, style)}, {QuantityText.Of(LeftOver, style)} left over";
}
