using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>When a sum of degree days was reached: the day, and how much of that day it took.</summary>
/// <remarks>
/// Immutable; equal when the date and the part are. The part supposes that the day's degree days come evenly over it: a daily minimum and
/// maximum do not say more.
/// </remarks>
public sealed record TimeReached : IFormattable
{
    /// <summary>Names the time.</summary>
    /// <param name="date">The day on which the sum was reached.</param>
    /// <param name="partOfDay">The part of that day's degree days that it took, from 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">The part is not from 0 to 100 %.</exception>
    public TimeReached(DateOnly date, Ratio partOfDay)
    {
        Date = date;
        PartOfDay = HouseUnits.Normalise(partOfDay);
        Guard.Within(Boundary.Fraction(partOfDay) * 100, 0, 100, "%", nameof(partOfDay));
    }

    /// <summary>The day on which the sum was reached.</summary>
    public DateOnly Date { get; }

    /// <summary>The part of that day's degree days that it took.</summary>
    public Ratio PartOfDay { get; }

    /// <summary>The time in invariant culture.</summary>
    /// <returns>For instance <c>2024-05-17, 40 % into the day</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The time as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones; there is no difference here.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The date and the part of the day.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style) => $"{AirTemperature.Text(Date)}, {QuantityText.Of(PartOfDay, style)} into the day";
}
