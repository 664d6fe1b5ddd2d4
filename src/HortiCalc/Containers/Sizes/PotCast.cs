using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>An old English size of pot, named by how many were made of one cast of clay.</summary>
/// <remarks>
/// Old books give rates "for thirty-twos" and the like. As printed in 1878; the twos, 10 inches after the fours of 15, break the order and are likely a misprint: other lists have 16
/// to 18 inches. Immutable; equal when all members are equal.
/// </remarks>
public sealed record PotCast : IFormattable
{
    /// <summary>Describes a size.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="potsPerCast">The pots of one cast; <see langword="null"/> for thumbs.</param>
    /// <param name="diameter">Across the brim; greater than zero.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not greater than zero, or the count is below 1.</exception>
    public PotCast(string name, int? potsPerCast, Length diameter)
    {
        Name = Guard.NotBlank(name);
        PotsPerCast = potsPerCast is { } count ? Guard.AtLeast(count, 1, nameof(potsPerCast)) : null;
        Guard.Positive(Boundary.Metres(diameter), "m", nameof(diameter));
        Diameter = HouseUnits.Normalise(diameter);
    }

    /// <summary>Every size of the list, the smallest first.</summary>
    public static IReadOnlyList<PotCast> All { get; } = ValueList<PotCast>.Of(
    [
        Row("thumbs", null, 2), Row("sixties", 60, 3), Row("forty-eights", 48, 4), Row("thirty-twos", 32, 6), Row("twenty-fours", 24, 8),
        Row("sixteens", 16, 9), Row("twelves", 12, 11), Row("eights", 8, 12), Row("sixes", 6, 13), Row("fours", 4, 15), Row("twos", 2, 10),
    ]);

    /// <summary>Where the list is printed.</summary>
    public static Source Source { get; } = new(
        "flowerpot-casts-1878",
        "Sizes of English Flower Pots",
        "Gardener's Monthly, volume 20",
        1878,
        "https://chestofbooks.com/gardening-horticulture/Gardener-Monthly-V20/Sizes-Of-English-Flower-Pots.html");

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The pots of one cast.</summary>
    public int? PotsPerCast { get; }

    /// <summary>Across the brim.</summary>
    public Length Diameter { get; }

    /// <summary>The size in metric units and invariant culture.</summary>
    /// <returns>For instance <c>thirty-twos: 15.2 cm across</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The size as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The name and the diameter.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) =>
        $"{Name}: {QuantityText.Of(Diameter, TextStyle.Parse(format, formatProvider))} across";

    private static PotCast Row(string name, int? pots, double inches) => new(name, pots, Length.FromInches(inches));
}
