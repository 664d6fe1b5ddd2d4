using System.Text.Json.Serialization;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>A measured point of a retention curve.</summary>
/// <remarks>Immutable; equal when suction and water are.</remarks>
public sealed record RetentionPoint
{
    private const double KilopascalsPerMetre = 9.80665;

    /// <summary>Holds a point.</summary>
    /// <param name="suction">The suction as a height of water; zero or more. 1 kPa is 10.2 cm: <see cref="OfPressure"/>; for pF see <see cref="OfPf"/>.</param>
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

    /// <summary>The suction as a pF, the logarithm of its centimetres of water; <see langword="null"/> at no suction.</summary>
    [JsonIgnore]
    public double? Pf => Boundary.Metres(Suction) > 0 ? Math.Log10(100 * Boundary.Metres(Suction)) : null;

    /// <summary>A point measured against a pressure, with water of 1000 kg/m³ and standard gravity.</summary>
    /// <param name="suction">The suction as a pressure, without its minus sign; zero or more.</param>
    /// <param name="water">The water held, as a share of the volume; from 0 to 100 %.</param>
    /// <returns>The point.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside what is said above.</exception>
    public static RetentionPoint OfPressure(Pressure suction, Ratio water) => new(
        Length.FromMeters(Guard.NotNegative(Boundary.Kilopascals(suction), "kPa", nameof(suction)) / KilopascalsPerMetre), water);

    /// <summary>A point measured at a pF, as sheets of European laboratories have it: the logarithm of the suction in centimetres of water.</summary>
    /// <remarks>Where a sheet takes the logarithm of hectopascals, its suction is 2 % more than this: 1 hPa is 1.02 cm.</remarks>
    /// <param name="pf">The pF; from 0, one centimetre, to 7, dried in the oven. pF 1 is 10 cm, pF 2 is 100 cm.</param>
    /// <param name="water">The water held, as a share of the volume; from 0 to 100 %.</param>
    /// <returns>The point.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside what is said above.</exception>
    /// <example><code>
    /// RetentionPoint[] peat = [RetentionPoint.OfPf(1, Ratio.FromPercent(82)), RetentionPoint.OfPf(1.7, Ratio.FromPercent(50)), RetentionPoint.OfPf(2, Ratio.FromPercent(41))];
    /// Console.WriteLine(peat[2].Suction);   // 1 m
    /// </code></example>
    public static RetentionPoint OfPf(double pf, Ratio water) =>
        new(Length.FromCentimeters(Math.Pow(10, Guard.Within(pf, 0, 7, "", nameof(pf)))), water);

    /// <summary>The point in invariant culture.</summary>
    /// <returns>For instance <c>78.5 % at 0.102 m</c>.</returns>
    public override string ToString() =>
        $"{Guard.Number(Boundary.Fraction(Water) * 100)} % at {Guard.Number(Math.Round(Boundary.Metres(Suction), 4, MidpointRounding.AwayFromZero))} m";
}
