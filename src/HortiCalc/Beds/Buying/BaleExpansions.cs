using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>Published expansions of compressed peat. They differ from 1.1 to 2: try one bale before ordering a pallet.</summary>
public static class BaleExpansions
{
    /// <summary>A university: by 50 to 100 % when fluffed. The usual choice, because it gives a span.</summary>
    public static BaleExpansion Arkansas { get; } = Of(
        1.5, 2, new Source("arkansas-fsa6097", "Greenhouse and nursery media, FSA6097", "University of Arkansas", null, "https://www.scribd.com/document/370621173/FSA-6097"));

    /// <summary>A producer of peat: two to one.</summary>
    public static BaleExpansion Producer { get; } = Of(
        2, 2, new Source("peat-producer-bales", "Peat for a raised bed mix", "peat producer, answers to questions", null, "https://blackgold.bz/tag/bales/"));

    /// <summary>A nursery: a bale of 3.8 cu ft over 50 sq ft one inch deep, which is a tenth more than the label.</summary>
    public static BaleExpansion Nursery { get; } = Coverage(
        3.8, 50, new Source("nursery-louisiana", "Approximate coverage of hard goods", "retail nursery (US, Louisiana)", null, "https://louisianasnursery.com/conversions"));

    /// <summary>An advice page: a bale of 3.8 cu ft over 90 sq ft one inch deep.</summary>
    public static BaleExpansion AdvicePage { get; } = Coverage(
        3.8, 90, new Source("peat-bale-coverage", "How many square feet a bag of peat moss covers", "general advice page", null, "https://tastingbritain.co.uk/how-many-sq-ft-does-a-bag-of-peat-moss-cover/"));

    /// <summary>All of them.</summary>
    public static IReadOnlyList<BaleExpansion> Published { get; } = ValueList<BaleExpansion>.Of([Arkansas, Producer, Nursery, AdvicePage]);

    private static BaleExpansion Of(double low, double high, Source source) =>
        new(Ratio.FromDecimalFractions(low), Ratio.FromDecimalFractions(high), source);

    private static BaleExpansion Coverage(double labelCubicFeet, double squareFeetAtOneInch, Source source)
    {
        Ratio implied = BaleExpansion.Implied(Volume.FromCubicFeet(labelCubicFeet), Area.FromSquareFeet(squareFeetAtOneInch), Length.FromInches(1));
        return new BaleExpansion(implied, implied, source);
    }
}
