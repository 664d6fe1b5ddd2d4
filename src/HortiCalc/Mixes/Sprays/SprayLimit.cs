using System.Text.Json.Serialization;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>A limit that a source sets to spraying oil, soap or sulfur.</summary>
/// <remarks>Named plants without any other limit are never sprayed. Immutable; equal when all members are equal.</remarks>
public sealed record SprayLimit
{
    /// <summary>Describes a limit.</summary>
    /// <param name="subject">What is sprayed.</param>
    /// <param name="plants">On what; empty for any plant.</param>
    /// <param name="above">Not at or above this temperature of the air, or <see langword="null"/>.</param>
    /// <param name="below">Not below this temperature of the air, or <see langword="null"/>.</param>
    /// <param name="notOnDryPlants">Whether plants short of water must not be sprayed.</param>
    /// <param name="source">Who says so.</param>
    /// <exception cref="ArgumentException">The limit limits nothing: no plants are named and nothing else is set.</exception>
    public SprayLimit(IngredientClass subject, string plants, Temperature? above, Temperature? below, bool notOnDryPlants, Source source)
    {
        Subject = Guard.Defined(subject);
        Plants = Guard.NotNull(plants);
        if (above is Temperature hot)
        {
            Guard.Finite(Boundary.Celsius(hot), "°C", nameof(above));
            Above = HouseUnits.Normalise(hot);
        }

        if (below is Temperature cold)
        {
            Guard.Finite(Boundary.Celsius(cold), "°C", nameof(below));
            Below = HouseUnits.Normalise(cold);
        }

        NotOnDryPlants = notOnDryPlants;
        Source = Guard.NotNull(source);
        if (IsNever && plants.Length == 0)
            throw new ArgumentException("above was null and so were the others; allowed: at least one limit, or plants that are never sprayed.", nameof(above));
    }

    /// <summary>What is sprayed.</summary>
    public IngredientClass Subject { get; }

    /// <summary>On what; empty for any plant.</summary>
    public string Plants { get; }

    /// <summary>Not at or above this temperature of the air.</summary>
    public Temperature? Above { get; }

    /// <summary>Not below this temperature of the air.</summary>
    public Temperature? Below { get; }

    /// <summary>Whether plants short of water must not be sprayed.</summary>
    public bool NotOnDryPlants { get; }

    /// <summary>Whether these plants are never sprayed with it, in any weather.</summary>
    [JsonIgnore]
    public bool IsNever => Above is null && Below is null && !NotOnDryPlants;

    /// <summary>Who says so.</summary>
    public Source Source { get; }

    /// <summary>Whether the limit forbids spraying now.</summary>
    /// <param name="air">The temperature of the air.</param>
    /// <param name="areShortOfWater">Whether the plants are short of water.</param>
    /// <returns><see langword="true"/> where it does.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not finite.</exception>
    public bool Forbids(Temperature air, bool areShortOfWater)
    {
        double celsius = Guard.Finite(Boundary.Celsius(air), "°C", nameof(air));
        return IsNever
            || (Above is Temperature hot && celsius >= Boundary.Celsius(hot) - 1e-9)
            || (Below is Temperature cold && celsius < Boundary.Celsius(cold) - 1e-9)
            || (NotOnDryPlants && areShortOfWater);
    }

    /// <summary>The limit and its source.</summary>
    /// <returns>One line of text, temperatures in °C.</returns>
    public override string ToString()
    {
        string[] parts =
        [
            .. Above is Temperature hot ? (string[])[$"not at or above {Display.QuantityText.Of(hot, Display.TextStyle.Default)}"] : [],
            .. Below is Temperature cold ? (string[])[$"not below {Display.QuantityText.Of(cold, Display.TextStyle.Default)}"] : [],
            .. NotOnDryPlants ? (string[])["not on plants short of water"] : [],
            .. IsNever ? (string[])["never"] : [],
        ];
        string on = Plants.Length == 0 ? "" : $" on {Plants}";
        return $"{Subject}{on}: {string.Join(", ", parts)} [{Source}]";
    }
}
