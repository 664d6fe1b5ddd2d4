using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>Where the garden is: its latitude, its soil, and where its weather record comes from.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record Site
{
    /// <summary>Describes where the garden is.</summary>
    /// <param name="name">The name of the place.</param>
    /// <param name="latitude">The latitude, north positive, from -90 to 90°.</param>
    /// <param name="weatherSource">Where the daily temperatures come from.</param>
    /// <param name="soil">What is known of the soil, or <see langword="null"/> where it was not tested.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The latitude is not from -90 to 90°.</exception>
    public Site(string name, Angle latitude, Source weatherSource, SoilReport? soil = null)
    {
        Name = Guard.NotBlank(name);
        Guard.Within(Boundary.Degrees(latitude), -90, 90, "°", nameof(latitude));
        Latitude = HouseUnits.Normalise(latitude);
        WeatherSource = Guard.NotNull(weatherSource);
        Soil = soil;
    }

    /// <summary>The name of the place.</summary>
    public string Name { get; }

    /// <summary>The latitude, north positive.</summary>
    public Angle Latitude { get; }

    /// <summary>Where the daily temperatures come from.</summary>
    public Source WeatherSource { get; }

    /// <summary>What is known of the soil, or <see langword="null"/>.</summary>
    public SoilReport? Soil { get; }

    /// <summary>The place and where it is, in invariant culture.</summary>
    /// <returns>For instance <c>Larkmere Halt, 46.2° north</c>.</returns>
    public override string ToString() =>
        $"{Name}, {QuantityText.Of(Latitude.Abs(), TextStyle.Default)} {(Boundary.Degrees(Latitude) < 0 ? "south" : "north")}";
}
