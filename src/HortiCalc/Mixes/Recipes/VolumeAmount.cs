using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>An amount measured by volume.</summary>
public sealed record VolumeAmount : MixAmount
{
    /// <summary>Describes an amount.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="low">The low end; 0 or more.</param>
    /// <param name="high">The high end; the same where there is no range.</param>
    /// <exception cref="ArgumentOutOfRangeException">An amount is negative, or the low end is above the high one.</exception>
    public VolumeAmount(MixIngredient ingredient, Volume low, Volume high)
        : base(ingredient)
    {
        double lowLitres = Guard.NotNegative(Boundary.Litres(low), "L", nameof(low));
        Guard.AtLeast(Boundary.Litres(high), lowLitres, "L", nameof(high));
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
    }

    /// <summary>The low end.</summary>
    public Volume Low { get; }

    /// <summary>The high end.</summary>
    public Volume High { get; }

    internal override string Span(TextStyle style) => Span(Low, High, style);
}
