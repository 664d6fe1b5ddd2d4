using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>What one source says about the cold that a crop stands: a class, the lowest temperature it withstands, or the one that kills it.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record FrostTolerance : IFormattable
{
    /// <summary>Describes a statement; at least one of class and temperatures is given.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="class">The class it is put in.</param>
    /// <param name="withstands">The lowest temperature it is said to withstand.</param>
    /// <param name="killedAt">The temperature it is said to die at.</param>
    /// <param name="source">Where it is stated.</param>
    /// <exception cref="ArgumentNullException">The source is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The crop is empty, or nothing is stated.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The class is none of the defined ones, or a temperature is none of the air.</exception>
    public FrostTolerance(string crop, FrostToleranceClass? @class, Temperature? withstands, Temperature? killedAt, Source source)
    {
        Crop = Guard.NotBlank(crop);
        Class = @class is FrostToleranceClass given ? Guard.Defined(given, nameof(@class)) : null;
        Withstands = Checked(withstands, nameof(withstands));
        KilledAt = Checked(killedAt, nameof(killedAt));
        Source = Guard.NotNull(source);
        if (Class is null && Withstands is null && KilledAt is null)
            throw new ArgumentException("class, withstands and killedAt were all null; allowed: one of them at least.", nameof(@class));
    }

    /// <summary>The crop.</summary>
    public string Crop { get; }

    /// <summary>The class it is put in.</summary>
    public FrostToleranceClass? Class { get; }

    /// <summary>The lowest temperature it is said to withstand.</summary>
    public Temperature? Withstands { get; }

    /// <summary>The temperature it is said to die at, unprotected.</summary>
    public Temperature? KilledAt { get; }

    /// <summary>Where it is stated.</summary>
    public Source Source { get; }

    /// <summary>The statement in metric units and invariant culture.</summary>
    /// <returns>Crop, statement and source.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The statement as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>Crop, statement and source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private static Temperature? Checked(Temperature? temperature, string parameter)
    {
        if (temperature is not Temperature given)
            return null;
        Guard.Within(Boundary.Celsius(given), AirTemperature.LowestCelsius, AirTemperature.HighestCelsius, "°C", parameter);
        return HouseUnits.Normalise(given);
    }

    private string ToString(TextStyle style)
    {
        List<string> said = [];
        if (Class is FrostToleranceClass @class)
        {
            said.Add(@class switch
            {
                FrostToleranceClass.DamagedByLightFrost => "damaged by light frost",
                FrostToleranceClass.WithstandsLightFrost => "withstands light frost",
                _ => "withstands hard frost",
            });
        }

        if (Withstands is Temperature withstands)
            said.Add($"withstands {QuantityText.Of(withstands, style)}");
        if (KilledAt is Temperature killed)
            said.Add($"killed at {QuantityText.Of(killed, style)}");
        return $"{Crop}: {string.Join(", ", said)} [{Source}]";
    }
}
