using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A texture grade as it is felt in the hand in Australia, and the clay that a source prints for it.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. The grades overlap and are not the USDA classes of the same name: a loam has about 25 % of clay.
/// </remarks>
public sealed record AustralianFieldGrade
{
    /// <summary>Holds a grade.</summary>
    /// <param name="name">The grade.</param>
    /// <param name="clayLow">The least clay; 0 % or more.</param>
    /// <param name="clayHigh">The most clay; not below <paramref name="clayLow"/>, 100 % or less.</param>
    /// <param name="printed">The clay as printed.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentNullException">The source is missing.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share is outside its range.</exception>
    public AustralianFieldGrade(string name, MassFraction clayLow, MassFraction clayHigh, string printed, Source source)
    {
        Name = Guard.NotBlank(name);
        double lowPercent = Guard.Within(Boundary.MassFraction(clayLow) * 100, 0, 100, "%", nameof(clayLow));
        Guard.Within(Boundary.MassFraction(clayHigh) * 100, lowPercent, 100, "%", nameof(clayHigh));
        ClayLow = HouseUnits.Normalise(clayLow);
        ClayHigh = HouseUnits.Normalise(clayHigh);
        Printed = Guard.NotBlank(printed);
        Source = Guard.NotNull(source);
    }

    /// <summary>The grade.</summary>
    public string Name { get; }

    /// <summary>The least clay.</summary>
    public MassFraction ClayLow { get; }

    /// <summary>The most clay; the same as the least where the source prints <c>about</c>.</summary>
    public MassFraction ClayHigh { get; }

    /// <summary>The clay as printed.</summary>
    public string Printed { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The grade with its clay.</summary>
    /// <returns>For instance <c>sandy loam: clay 10-20 % [...]</c>.</returns>
    public override string ToString() => $"{Name}: clay {Printed} % [{Source}]";
}
