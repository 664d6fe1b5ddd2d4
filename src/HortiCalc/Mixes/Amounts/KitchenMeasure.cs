using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>A measure that people own: a spoon, a cup, a jug, a syringe, with the parts it can be read to.</summary>
/// <remarks>Immutable; equal when all members are equal. <see cref="KitchenMeasures"/> holds the usual ones.</remarks>
public sealed record KitchenMeasure
{
    /// <summary>Describes a measure.</summary>
    /// <param name="key">A short stable name, for translation and storage.</param>
    /// <param name="name">The name in plain English, for one of it.</param>
    /// <param name="volume">What one holds, level; more than 0.</param>
    /// <param name="parts">Into how many equal parts one can be told: 4 where there are quarters; 1 or more.</param>
    /// <param name="most">How many whole ones are still counted without losing count; 1 or more.</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0, or a count is below 1.</exception>
    public KitchenMeasure(string key, string name, Volume volume, int parts, int most)
    {
        Key = Guard.NotBlank(key);
        Name = Guard.NotBlank(name);
        Guard.Positive(Boundary.Litres(volume) * 1000, "mL", nameof(volume));
        Volume = HouseUnits.Normalise(volume);
        Parts = Guard.AtLeast(parts, 1);
        Most = Guard.AtLeast(most, 1);
    }

    /// <summary>A short stable name.</summary>
    public string Key { get; }

    /// <summary>The name in plain English, for one of it.</summary>
    public string Name { get; }

    /// <summary>What one holds, level.</summary>
    public Volume Volume { get; }

    /// <summary>Into how many equal parts one can be told.</summary>
    public int Parts { get; }

    /// <summary>How many whole ones are still counted.</summary>
    public int Most { get; }

    /// <summary>The name.</summary>
    /// <returns>For instance <c>US tablespoon</c>.</returns>
    public override string ToString() => Name;
}
