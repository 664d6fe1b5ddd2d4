using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>What a car, trailer or barrow may carry.</summary>
/// <remarks>Immutable; equal when all members are equal. The payload is what the papers allow besides driver and passengers.</remarks>
public sealed record Vehicle
{
    /// <summary>Describes a vehicle.</summary>
    /// <param name="payload">The mass it may carry; greater than zero.</param>
    /// <param name="space">The volume it holds; greater than zero; <see langword="null"/> where it does not limit.</param>
    /// <exception cref="ArgumentOutOfRangeException">The payload or the space is not greater than zero.</exception>
    public Vehicle(Mass payload, Volume? space = null)
    {
        Guard.Positive(Boundary.Kilograms(payload), "kg", nameof(payload));
        Payload = HouseUnits.Normalise(payload);
        if (space is Volume volume)
        {
            Guard.Positive(Boundary.Litres(volume), "L", nameof(space));
            Space = HouseUnits.Normalise(volume);
        }
    }

    /// <summary>The mass it may carry.</summary>
    public Mass Payload { get; }

    /// <summary>The volume it holds; <see langword="null"/> where it does not limit.</summary>
    public Volume? Space { get; }

    /// <summary>One line in metric units and invariant culture.</summary>
    /// <returns>For instance <c>400 kg, 900 L</c>.</returns>
    public override string ToString() => Space is Volume space ? $"{QuantityText.Of(Payload, TextStyle.Default)}, {QuantityText.Of(space, TextStyle.Default)}" : $"{QuantityText.Of(Payload, TextStyle.Default)}";
}
