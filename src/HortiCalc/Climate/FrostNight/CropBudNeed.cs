using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The share of buds that must live for a full crop, as a source prints it.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record CropBudNeed
{
    /// <summary>Describes what a source prints.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="low">The smallest share, from 0 to 100 %.</param>
    /// <param name="high">The largest share; <see langword="null"/> where the source prints "well over" the smallest.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentNullException">The crop or the source is missing.</exception>
    /// <exception cref="ArgumentException">The crop is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share is out of its range.</exception>
    public CropBudNeed(string crop, Ratio low, Ratio? high, Source source)
    {
        Crop = Guard.NotBlank(crop);
        double lowPercent = Guard.Within(Boundary.Fraction(low) * 100, 0, 100, "%", nameof(low));
        if (high is Ratio largest)
            Guard.Within(Boundary.Fraction(largest) * 100, lowPercent, 100, "%", nameof(high));
        Low = HouseUnits.Normalise(low);
        High = high is Ratio given ? HouseUnits.Normalise(given) : null;
        Source = Guard.NotNull(source);
    }

    /// <summary>The crop.</summary>
    public string Crop { get; }

    /// <summary>The smallest share.</summary>
    public Ratio Low { get; }

    /// <summary>The largest share; <see langword="null"/> where the source prints "well over" the smallest.</summary>
    public Ratio? High { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The need in invariant culture.</summary>
    /// <returns>For instance <c>Apple: 10 % to 15 % of buds for a full crop</c>.</returns>
    public override string ToString()
    {
        string low = QuantityText.Of(Low, TextStyle.Default);
        return $"{Crop}: {(High is Ratio high ? $"{low} to {QuantityText.Of(high, TextStyle.Default)}" : "well over " + low)} of buds for a full crop [{Source}]";
    }
}
