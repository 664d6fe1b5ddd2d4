using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>A class of nursery containers of the United States: the volumes that may be sold under a number.</summary>
/// <remarks>
/// The classes of the American Standard for Nursery Stock, ANSI Z60.1, as far as a page that quotes them prints them: the larger and the smaller classes were not seen. A number is no
/// gallon, and between the classes lie volumes that no number fits. Immutable; equal when all members are equal.
/// </remarks>
/// <example><code>
/// Container pot = Container.RoundTapered(Length.FromInches(6.5), Length.FromInches(5), Length.FromInches(6.5));
/// NurseryClass? sold = NurseryClass.Of(pot.BrimVolume);
/// Console.WriteLine(sold?.Name);   // #1
/// </code></example>
public sealed record NurseryClass : IFormattable
{
    /// <summary>Describes a class.</summary>
    /// <param name="name">Its name: <c>#1</c>.</param>
    /// <param name="low">The least volume of the class; greater than zero.</param>
    /// <param name="high">The greatest volume of the class; not below the least.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A volume lies outside what is said above.</exception>
    public NurseryClass(string name, Volume low, Volume high)
    {
        Name = Guard.NotBlank(name);
        double leastLitres = Guard.Positive(Boundary.Litres(low), "L", nameof(low));
        Guard.AtLeast(Boundary.Litres(high), leastLitres, "L", nameof(high));
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
    }

    /// <summary>The classes seen in print, the smallest first.</summary>
    public static IReadOnlyList<NurseryClass> All { get; } = ValueList<NurseryClass>.Of([Row("#1", 152, 251), Row("#2", 320, 474), Row("#3", 628, 742), Row("#5", 785, 1242)]);

    /// <summary>Where they were seen.</summary>
    public static Source Source { get; } = new(
        "ansi-container-classes",
        "Plant pot sizes, quoting ANSI Z60.1 of 2004",
        "landscape contractor (US)",
        null,
        "https://ozarksoutdoorsolutions.com/services/plant-pot-sizes-2");

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The least volume of the class.</summary>
    public Volume Low { get; }

    /// <summary>The greatest volume of the class.</summary>
    public Volume High { get; }

    /// <summary>The class that a measured volume falls into.</summary>
    /// <param name="volume">What the container holds to the brim; greater than zero.</param>
    /// <returns>The class; <see langword="null"/> where the volume lies in none of those seen.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not greater than zero.</exception>
    public static NurseryClass? Of(Volume volume)
    {
        double litres = Guard.Positive(Boundary.Litres(volume), "L", nameof(volume));
        return All.FirstOrDefault(one => litres >= Boundary.Litres(one.Low) && litres <= Boundary.Litres(one.High));
    }

    /// <summary>The class in metric units and invariant culture.</summary>
    /// <returns>For instance <c>#1: 2.49 L to 4.11 L</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The class as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The name and the two ends.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        return $"{Name}: {QuantityText.Of(Low, style)} to {QuantityText.Of(High, style)}";
    }

    private static NurseryClass Row(string name, double lowCubicInches, double highCubicInches) =>
        new(name, Volume.FromCubicInches(lowCubicInches), Volume.FromCubicInches(highCubicInches));
}
