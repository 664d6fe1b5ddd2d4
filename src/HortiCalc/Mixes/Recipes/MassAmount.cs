using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>An amount that is weighed.</summary>
public sealed record MassAmount : MixAmount
{
    /// <summary>Describes an amount.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="low">The low end; 0 or more.</param>
    /// <param name="high">The high end; the same where there is no range.</param>
    /// <exception cref="ArgumentOutOfRangeException">An amount is negative, or the low end is above the high one.</exception>
    public MassAmount(MixIngredient ingredient, Mass low, Mass high)
        : base(ingredient)
    {
        double lowKilograms = Guard.NotNegative(Boundary.Kilograms(low), "kg", nameof(low));
        Guard.AtLeast(Boundary.Kilograms(high), lowKilograms, "kg", nameof(high));
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
    }

    /// <summary>The low end.</summary>
    public Mass Low { get; }

    /// <summary>The high end.</summary>
    public Mass High { get; }

    internal override string Span(TextStyle style) => Span(Low, High, style);
}
