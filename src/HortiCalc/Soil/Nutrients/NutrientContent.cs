using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>How much of a nutrient a product holds, as the element.</summary>
/// <remarks>Immutable; equal when nutrient and share are.</remarks>
public sealed record NutrientContent
{
    /// <summary>Holds a content.</summary>
    /// <param name="nutrient">The nutrient.</param>
    /// <param name="share">Its share by mass, as the element; above 0 and up to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such nutrient, or the share lies outside what is said above.</exception>
    public NutrientContent(Nutrient nutrient, MassFraction share)
    {
        Nutrient = Guard.Defined(nutrient);
        double percent = Boundary.MassFraction(share) * 100;
        if (!(percent > 0 && percent <= 100))
            throw Guard.Refused(nameof(share), percent, "%", "above 0 and up to 100 %");
        Share = HouseUnits.Normalise(share);
    }

    /// <summary>The nutrient.</summary>
    public Nutrient Nutrient { get; }

    /// <summary>Its share by mass, as the element.</summary>
    public MassFraction Share { get; }

    /// <summary>The nutrient and its share, in invariant culture.</summary>
    /// <returns>For instance <c>Nitrogen 46 %</c>.</returns>
    public override string ToString() => $"{Nutrient} {Guard.Number(Boundary.MassFraction(Share) * 100)} %";
}
