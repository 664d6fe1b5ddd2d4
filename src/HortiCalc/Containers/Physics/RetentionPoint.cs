using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>A measured point of a retention curve.</summary>
/// <remarks>Immutable; equal when suction and water are.</remarks>
public sealed record RetentionPoint
{
    private const double KilopascalsPerMetre = 9.80665;

    /// <summary>Holds a point.</summary>
    /// <param name="suction">The suction as a height of water; zero or more. 1 kPa is 10.2 cm: <see cref="OfPressure"/>.</param>
    /// <param name="water">The water held, as a share of the volume; from 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside what is said above.</exception>
    public RetentionPoint(Length suction, Ratio water)
    {
        Guard.NotNegative(Boundary.Metres(suction), "m", nameof(suction));
        Guard.Within(Boundary.Fraction(water) * 100, 0, 100, "%", nameof(water));
        Suction = HouseUnits.Normalise(suction);
        Water = HouseUnits.Normalise(water);
    }

    /// <summary>The suction as a height of water.</summary>
    public Length Suction { get; }

    /// <summary>The water held, as a share of the volume.</summary>
    public Ratio Water { get; }

    /// <summary>A point measured against a pressure, with water of 1000 kg/m³ and standard gravity.</summary>
    /// <param name="suction">The suction as a pressure, without its minus sign; zero or more.</param>
    /// <param name="water">The water held, as a share of the volume; from 0 to 100 %.</param>
    /// <returns>The point.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside what is said above.</exception>
    public static RetentionPoint OfPressure(Pressure suction, Ratio water) => new(
        Length.FromMeters(Guard.NotNegative(Boundary.Kilopascals(suction), "kPa", nameof(suction)) / KilopascalsPerMetre), water);

    /// <summary>The point in invariant culture.</summary>
    /// <returns>For instance <c>78.5 % at 0.102 m</c>.</returns>
    public override string ToString() =>
        $"{Guard.Number(Boundary.Fraction(Water) * 100)} % at {Guard.Number(Math.Round(Boundary.Metres(Suction), 4, MidpointRounding.AwayFromZero))} m";
}
