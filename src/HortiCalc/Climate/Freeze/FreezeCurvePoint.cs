using System.Globalization;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The chance of a freeze at one day of a curve, with its band of confidence.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record FreezeCurvePoint
{
    /// <summary>Describes a point.</summary>
    /// <param name="date">The day.</param>
    /// <param name="chance">The chance over all seasons, from 0 % to 100 %.</param>
    /// <param name="low">The low end of the band, not above the chance.</param>
    /// <param name="high">The high end of the band, not below the chance.</param>
    /// <exception cref="ArgumentOutOfRangeException">A chance is not from 0 % to 100 %, or outside its band.</exception>
    public FreezeCurvePoint(MonthDay date, Ratio chance, Ratio low, Ratio high)
    {
        Date = date;
        double percent = Guard.Within(Boundary.Fraction(chance) * 100, 0, 100, "%", nameof(chance));
        Guard.Within(Boundary.Fraction(low) * 100, 0, percent, "%", nameof(low));
        Guard.Within(Boundary.Fraction(high) * 100, percent, 100, "%", nameof(high));
        Chance = HouseUnits.Normalise(chance);
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
    }

    /// <summary>The day.</summary>
    public MonthDay Date { get; }

    /// <summary>The chance over all seasons.</summary>
    public Ratio Chance { get; }

    /// <summary>The low end of the band.</summary>
    public Ratio Low { get; }

    /// <summary>The high end of the band.</summary>
    public Ratio High { get; }

    /// <summary>The day, the chance and the band.</summary>
    /// <returns>For instance <c>2 May: 10 % (5 % to 17 %)</c>.</returns>
    public override string ToString() => $"{Date}: {Percent(Chance)} % ({Percent(Low)} % to {Percent(High)} %)";

    private static string Percent(Ratio chance) =>
        Math.Round(Boundary.Fraction(chance) * 100, 1, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture);
}
