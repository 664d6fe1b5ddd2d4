using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>One column of a published table of freeze dates: a chance, and the date printed for it.</summary>
/// <remarks>Immutable; equal when both are equal.</remarks>
public sealed record TabulatedFreezeDate
{
    /// <summary>Takes a date from a table.</summary>
    /// <param name="chance">The chance: in spring of a freeze on the date or later, in autumn on the date or earlier. Above 0 % and below 100 %.</param>
    /// <param name="date">The date, or <see langword="null"/> where the table prints none, because too few seasons have a freeze.</param>
    /// <exception cref="ArgumentOutOfRangeException">The chance is not above 0 % and below 100 %.</exception>
    public TabulatedFreezeDate(Ratio chance, MonthDay? date)
    {
        Guard.Between(Boundary.Fraction(chance) * 100, 0, 100, "%", nameof(chance));
        Chance = HouseUnits.Normalise(chance);
        Date = date;
    }

    /// <summary>The chance.</summary>
    public Ratio Chance { get; }

    /// <summary>The date; <see langword="null"/> where the table prints none.</summary>
    public MonthDay? Date { get; }

    /// <summary>The chance and the date.</summary>
    /// <returns>For instance <c>10 %: 10 May</c>.</returns>
    public override string ToString() => $"{QuantityText.Of(Chance, TextStyle.Default)}: {Date?.ToString() ?? "none"}";
}
