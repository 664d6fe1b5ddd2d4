using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>How a medium lies to one published range.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record MediumFinding
{
    /// <summary>Holds a finding.</summary>
    /// <param name="range">The range.</param>
    /// <param name="value">The medium's share, on the basis of the range; from 0 to 100 %.</param>
    /// <param name="finding">How it lies to the range.</param>
    /// <exception cref="ArgumentNullException">The range is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The share lies outside what is said above, or there is no such finding.</exception>
    public MediumFinding(MediumRange range, Ratio value, RangeFinding finding)
    {
        Range = Guard.NotNull(range);
        Guard.Within(Boundary.Fraction(value) * 100, 0, 100, "%", nameof(value));
        Value = HouseUnits.Normalise(value);
        Finding = Guard.Defined(finding);
    }

    /// <summary>The range.</summary>
    public MediumRange Range { get; }

    /// <summary>The medium's share, on the basis of the range: of the volume or of the pores.</summary>
    public Ratio Value { get; }

    /// <summary>How it lies to the range.</summary>
    public RangeFinding Finding { get; }

    /// <summary>The finding in invariant culture.</summary>
    /// <returns>For instance <c>31 % is above air space, container media: 10 to 25 % of the volume [...]</c>.</returns>
    public override string ToString()
    {
        string place = Finding switch
        {
            RangeFinding.Below => "below",
            RangeFinding.Within => "within",
            _ => "above",
        };
        return $"{Guard.Number(Math.Round(Boundary.Fraction(Value) * 100, 1, MidpointRounding.AwayFromZero))} % is {place} {Range}";
    }
}
