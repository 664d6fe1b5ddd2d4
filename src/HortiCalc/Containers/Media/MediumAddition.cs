using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>Lime or fertiliser that a source mixes into a volume of medium.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
/// <example><code>
/// MediumAddition lime = MediumAdditions.All.First(addition => addition.Material == "ground limestone or chalk");
/// Console.WriteLine(lime.For(Volume.FromLiters(80)));   // 48 g
/// </code></example>
public sealed record MediumAddition
{
    /// <summary>Holds a rate.</summary>
    /// <param name="mix">The mix that it is for.</param>
    /// <param name="material">What is added.</param>
    /// <param name="rate">Its mass by volume of medium; greater than zero.</param>
    /// <param name="rateHigh">The high end of a printed range, or <see langword="null"/>; not below the low one.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentNullException">The source is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A rate lies outside what is said above.</exception>
    public MediumAddition(string mix, string material, Density rate, Density? rateHigh, Source source)
    {
        Mix = Guard.NotBlank(mix);
        Material = Guard.NotBlank(material);
        double low = Guard.Positive(Boundary.KilogramsPerCubicMetre(rate), "kg/m³", nameof(rate));
        Rate = HouseUnits.Normalise(rate);
        if (rateHigh is { } high)
        {
            Guard.AtLeast(Boundary.KilogramsPerCubicMetre(high), low, "kg/m³", nameof(rateHigh));
            RateHigh = HouseUnits.Normalise(high);
        }

        Source = Guard.NotNull(source);
    }

    /// <summary>The mix that it is for.</summary>
    public string Mix { get; }

    /// <summary>What is added.</summary>
    public string Material { get; }

    /// <summary>Its mass by volume of medium.</summary>
    public Density Rate { get; }

    /// <summary>The high end of a printed range.</summary>
    public Density? RateHigh { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The mass for a volume of medium.</summary>
    /// <param name="medium">The volume; zero or more.</param>
    /// <returns>The mass, with the printed range where there is one: its low end is the value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative.</exception>
    public Estimate<Mass> For(Volume medium)
    {
        double cubicMetres = Guard.NotNegative(Boundary.Litres(medium), "L", nameof(medium)) / 1000;
        Mass low = Mass.FromKilograms(Boundary.KilogramsPerCubicMetre(Rate) * cubicMetres);
        return new Estimate<Mass>(
            low,
            new Method("medium-addition", $"{Material} for {Mix}", Source, new Domain("the mix that the source means")),
            RateHigh is { } high
                ? new EstimateRange<Mass>(low, Mass.FromKilograms(Boundary.KilogramsPerCubicMetre(high) * cubicMetres), "as printed")
                : null,
            cautions: [ContainerCautions.Additions]);
    }

    /// <summary>The rate in metric units and invariant culture.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString()
    {
        string high = RateHigh is { } most ? $" to {Guard.Number(Math.Round(Boundary.KilogramsPerCubicMetre(most), 2, MidpointRounding.AwayFromZero))}" : "";
        return $"{Mix}: {Guard.Number(Math.Round(Boundary.KilogramsPerCubicMetre(Rate), 2, MidpointRounding.AwayFromZero))}{high} kg/m³ of {Material} [{Source}]";
    }
}
