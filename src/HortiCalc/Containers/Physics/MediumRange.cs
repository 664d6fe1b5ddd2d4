using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>A range that a source recommends or found, with what its shares are of.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record MediumRange
{
    /// <summary>Holds a range.</summary>
    /// <param name="property">What it is of.</param>
    /// <param name="conditions">Which media, in a few words.</param>
    /// <param name="low">The low end; from 0 to 100 %.</param>
    /// <param name="high">The high end, or <see langword="null"/> where the source prints a least alone; not below the low end.</param>
    /// <param name="basis">What the shares are of.</param>
    /// <param name="meaning">Whether it is wanted or was found.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentException">The conditions are empty.</exception>
    /// <exception cref="ArgumentNullException">The source is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An enumeration has no such value, or an end lies outside what is said above.</exception>
    public MediumRange(MediumProperty property, string conditions, Ratio low, Ratio? high, ShareBasis basis, RangeMeaning meaning, Source source)
    {
        Property = Guard.Defined(property);
        Conditions = Guard.NotBlank(conditions);
        double least = Guard.Within(Boundary.Fraction(low) * 100, 0, 100, "%", nameof(low));
        Low = HouseUnits.Normalise(low);
        if (high is { } most)
        {
            Guard.Within(Boundary.Fraction(most) * 100, least, 100, "%", nameof(high));
            High = HouseUnits.Normalise(most);
        }

        Basis = Guard.Defined(basis);
        Meaning = Guard.Defined(meaning);
        Source = Guard.NotNull(source);
    }

    /// <summary>What it is of.</summary>
    public MediumProperty Property { get; }

    /// <summary>Which media, in a few words.</summary>
    public string Conditions { get; }

    /// <summary>The low end.</summary>
    public Ratio Low { get; }

    /// <summary>The high end; <see langword="null"/> where the source prints a least alone.</summary>
    public Ratio? High { get; }

    /// <summary>What the shares are of.</summary>
    public ShareBasis Basis { get; }

    /// <summary>Whether it is wanted or was found.</summary>
    public RangeMeaning Meaning { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>How a medium lies to the range, whatever its basis.</summary>
    /// <param name="ofVolume">The property of the medium, as a share of its volume; from 0 to 100 %.</param>
    /// <param name="totalPorosity">All its pores, as a share of its volume; not below the property, and above zero.</param>
    /// <returns>Below, within or above.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A share lies outside what is said above.</exception>
    public RangeFinding Judge(Ratio ofVolume, Ratio totalPorosity) => Find(ofVolume, totalPorosity).Finding;

    internal MediumFinding Find(Ratio ofVolume, Ratio totalPorosity)
    {
        double share = Guard.Within(Boundary.Fraction(ofVolume) * 100, 0, 100, "%", nameof(ofVolume));
        double pores = Guard.Within(Guard.Positive(Boundary.Fraction(totalPorosity) * 100, "%", nameof(totalPorosity)), share, 100, "%", nameof(totalPorosity));
        double onBasis = Basis == ShareBasis.OfPores ? 100 * share / pores : share;
        RangeFinding finding = onBasis < Boundary.Fraction(Low) * 100 ? RangeFinding.Below
            : High is { } high && onBasis > Boundary.Fraction(high) * 100 ? RangeFinding.Above
            : RangeFinding.Within;
        return new MediumFinding(this, Ratio.FromPercent(onBasis), finding);
    }

    /// <summary>The range in invariant culture.</summary>
    /// <returns>For instance <c>air space, most mixes: 10 to 30 % of the volume [...]</c>.</returns>
    public override string ToString()
    {
        string share = Guard.Number(Boundary.Fraction(Low) * 100)
            + (High is { } most ? $" to {Guard.Number(Boundary.Fraction(most) * 100)} %" : " % or more");
        string words = Property switch
        {
            MediumProperty.TotalPorosity => "total porosity",
            MediumProperty.AirSpace => "air space",
            MediumProperty.ContainerCapacity => "container capacity",
            MediumProperty.EasilyAvailableWater => "easily available water",
            MediumProperty.WaterBufferingCapacity => "water buffering capacity",
            _ => "available water",
        };
        return $"{words}, {Conditions}: {share} of the {(Basis == ShareBasis.OfPores ? "pores" : "volume")} [{Source}]";
    }
}
