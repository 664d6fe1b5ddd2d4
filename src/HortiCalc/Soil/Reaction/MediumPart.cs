using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A mass of soil or medium, its pH, and how strongly it holds that pH.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record MediumPart
{
    /// <summary>Describes a part of a mix.</summary>
    /// <param name="dryMass">The dry mass; above zero.</param>
    /// <param name="ph">Its pH, read in the same way for all parts.</param>
    /// <param name="bufferCapacity">
    /// The calcium carbonate that raises the dry mass by one pH unit, as a laboratory reports a lime buffer capacity in mg/kg; above zero, or
    /// <see langword="null"/> where it is not known.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">The mass or the capacity is not above zero.</exception>
    public MediumPart(Mass dryMass, Ph ph, MassFraction? bufferCapacity = null)
    {
        Guard.Positive(Boundary.Kilograms(dryMass), "kg", nameof(dryMass));
        DryMass = HouseUnits.Normalise(dryMass);
        Ph = ph;
        if (bufferCapacity is { } capacity)
        {
            Guard.Positive(Boundary.MassFraction(capacity) * 1_000_000, "mg/kg", nameof(bufferCapacity));
            BufferCapacity = HouseUnits.Normalise(capacity);
        }
    }

    /// <summary>The dry mass.</summary>
    public Mass DryMass { get; }

    /// <summary>Its pH.</summary>
    public Ph Ph { get; }

    /// <summary>The calcium carbonate for one pH unit, by dry mass; <see langword="null"/> where it is not known.</summary>
    public MassFraction? BufferCapacity { get; }

    /// <summary>The part in metric units and invariant culture.</summary>
    /// <returns>For instance <c>10 kg of pH 5.8</c>.</returns>
    public override string ToString() => $"{QuantityText.Of(DryMass, TextStyle.Default)} of {Ph}";
}
