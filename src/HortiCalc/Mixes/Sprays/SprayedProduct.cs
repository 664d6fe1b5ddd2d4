using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>A product that was sprayed, with the two waiting times of its label.</summary>
public sealed record SprayedProduct
{
    /// <summary>Describes a product.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="restrictedEntry">How long nobody may go in without protection; 0 or more.</param>
    /// <param name="daysToHarvest">Days from the last spray to harvest; 0 or more.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A time is negative or not finite.</exception>
    public SprayedProduct(string name, Duration restrictedEntry, int daysToHarvest)
    {
        Name = Guard.NotBlank(name);
        Guard.NotNegative(Boundary.Days(restrictedEntry) * 24, "h", nameof(restrictedEntry));
        RestrictedEntry = HouseUnits.Normalise(restrictedEntry);
        DaysToHarvest = Guard.AtLeast(daysToHarvest, 0);
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>How long nobody may go in without protection.</summary>
    public Duration RestrictedEntry { get; }

    /// <summary>Days from the last spray to harvest.</summary>
    public int DaysToHarvest { get; }

    /// <summary>The product in invariant culture.</summary>
    /// <returns>For instance <c>sulfur: entry after 1 day, days to harvest 1</c>.</returns>
    public override string ToString() =>
        $"{Name}: entry after {QuantityText.Of(RestrictedEntry, TextStyle.Default)}, days to harvest {Guard.Number(DaysToHarvest)}";
}
