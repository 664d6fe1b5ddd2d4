using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The temperature of the medium that kills the roots of a plant in a pot, as a source states it.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record RootKilling : IFormattable
{
    /// <summary>Describes a statement.</summary>
    /// <param name="plant">The plant or the group of plants.</param>
    /// <param name="age">How old the roots are.</param>
    /// <param name="lowest">The lower end of the stated temperatures.</param>
    /// <param name="highest">The upper end; the same where one is stated.</param>
    /// <param name="note">What else is said; empty where nothing.</param>
    /// <param name="source">Where it is stated.</param>
    /// <exception cref="ArgumentNullException">The note or the source is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The plant is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is none of the air, or the ends are in the wrong order.</exception>
    public RootKilling(string plant, RootAge age, Temperature lowest, Temperature highest, string note, Source source)
    {
        Plant = Guard.NotBlank(plant);
        Age = Guard.Defined(age);
        double lowestCelsius = Guard.Within(
            Boundary.Celsius(lowest), AirTemperature.LowestCelsius, AirTemperature.HighestCelsius, "°C", nameof(lowest));
        Guard.Within(Boundary.Celsius(highest), lowestCelsius, AirTemperature.HighestCelsius, "°C", nameof(highest));
        Lowest = HouseUnits.Normalise(lowest);
        Highest = HouseUnits.Normalise(highest);
        Note = Guard.NotNull(note);
        Source = Guard.NotNull(source);
    }

    /// <summary>The plant or the group of plants.</summary>
    public string Plant { get; }

    /// <summary>How old the roots are.</summary>
    public RootAge Age { get; }

    /// <summary>The lower end of the stated temperatures.</summary>
    public Temperature Lowest { get; }

    /// <summary>The upper end, below which care is due.</summary>
    public Temperature Highest { get; }

    /// <summary>What else is said.</summary>
    public string Note { get; }

    /// <summary>Where it is stated.</summary>
    public Source Source { get; }

    /// <summary>The statement in metric units and invariant culture.</summary>
    /// <returns>Plant, age, temperature and source.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The statement as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>Plant, age, temperature and source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style)
    {
        string temperature = Boundary.Celsius(Lowest) == Boundary.Celsius(Highest) ? QuantityText.Of(Highest, style) : $"{QuantityText.Of(Lowest, style)} to {QuantityText.Of(Highest, style)}";
        string age = Age switch
        {
            RootAge.Young => "young roots",
            RootAge.Mature => "mature roots",
            _ => "roots",
        };
        return $"{Plant}: {age} killed at {temperature}{(Note.Length == 0 ? "" : $"; {Note}")} [{Source}]";
    }
}
