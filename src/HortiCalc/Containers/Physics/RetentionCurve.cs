using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>How much water a medium holds against a suction, drying from saturation.</summary>
/// <remarks>
/// <para>Suction is given as the height of a water column: 10.2 cm is 1 kPa. In a drained pot it is the height above the base. Media wet again hold less
/// than on drying (hysteresis), which no curve here knows.</para>
/// <para>Immutable; equal when kind and parameters are. The set of forms is closed; JSON tells them apart by <c>kind</c>.</para>
/// </remarks>
/// <example><code>
/// RetentionCurve sand = new VanGenuchtenRetention(
///     residual: Ratio.FromPercent(1.3), saturated: Ratio.FromPercent(33.7), alpha: ReciprocalLength.FromInverseMeters(20.5), n: 2.92);
/// Console.WriteLine(sand.WaterAt(Length.FromCentimeters(10)));
/// </code></example>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(VanGenuchtenRetention), "van-genuchten")]
[JsonDerivedType(typeof(LogLogisticRetention), "log-logistic")]
public abstract record RetentionCurve : IFormattable
{
    private protected RetentionCurve(Ratio residual, Ratio saturated)
    {
        double low = Guard.Within(Boundary.Fraction(residual) * 100, 0, 100, "%", nameof(residual));
        double high = Boundary.Fraction(saturated) * 100;
        if (!(high > low && high <= 100))
            throw Guard.Refused(nameof(saturated), high, "%", $"above {Guard.Number(low)} %, the residual water, up to 100 %");
        Residual = HouseUnits.Normalise(residual);
        Saturated = HouseUnits.Normalise(saturated);
    }

    /// <summary>The water that no suction draws out, as a share of the volume.</summary>
    public Ratio Residual { get; }

    /// <summary>The water at saturation, as a share of the volume: the pores that fill.</summary>
    public Ratio Saturated { get; }

    /// <summary>The water held against a suction.</summary>
    /// <param name="suction">The suction as a height of water; zero or more.</param>
    /// <returns>The water as a share of the volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The suction is negative.</exception>
    public Ratio WaterAt(Length suction) => Ratio.FromPercent(100 * WaterFraction(Guard.NotNegative(Boundary.Metres(suction), "m", nameof(suction))));

    /// <summary>The suction against which so much water is held: the inverse of <see cref="WaterAt"/>.</summary>
    /// <param name="water">The water as a share of the volume; above <see cref="Residual"/>, up to <see cref="Saturated"/>.</param>
    /// <returns>The suction as a height of water; zero at saturation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The water lies outside what is said above, or so near the residual that the suction has no number.</exception>
    public Length SuctionAt(Ratio water)
    {
        double percent = Boundary.Fraction(water) * 100;
        double filled = (percent / 100 - ResidualFraction) / (SaturatedFraction - ResidualFraction);
        double metres = filled is > 0 and <= 1 ? SuctionMetres(filled) : double.NaN;
        return double.IsFinite(metres)
            ? Length.FromMeters(metres)
            : throw Guard.Refused(
                nameof(water), percent, "%", $"above {Guard.Number(ResidualFraction * 100)} %, the residual water, up to {Guard.Number(SaturatedFraction * 100)} %");
    }

    /// <summary>The water given up between two suctions.</summary>
    /// <param name="from">The lower suction; zero or more.</param>
    /// <param name="to">The higher suction; not below the lower.</param>
    /// <returns>The water as a share of the volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A suction lies outside what is said above.</exception>
    public Ratio WaterBetween(Length from, Length to)
    {
        double low = Guard.NotNegative(Boundary.Metres(from), "m", nameof(from));
        double high = Guard.AtLeast(Boundary.Metres(to), low, "m", nameof(to));
        return Ratio.FromPercent(100 * (WaterFraction(low) - WaterFraction(high)));
    }

    /// <summary>The air where the suction is 10 cm of water, by which laboratories compare media, as a share of the volume.</summary>
    [JsonIgnore]
    public Ratio AirCapacity => WaterBetween(Length.Zero, Length.FromCentimeters(10));

    /// <summary>The water given up from 10 to 50 cm of suction, which plants take without effort, as a share of the volume.</summary>
    [JsonIgnore]
    public Ratio EasilyAvailableWater => WaterBetween(Length.FromCentimeters(10), Length.FromCentimeters(50));

    /// <summary>The water given up from 50 to 100 cm of suction, a reserve for a hot day, as a share of the volume.</summary>
    [JsonIgnore]
    public Ratio WaterBufferingCapacity => WaterBetween(Length.FromCentimeters(50), Length.FromCentimeters(100));

    /// <summary>The curve in invariant culture.</summary>
    /// <returns>One line of text.</returns>
    public sealed override string ToString() => ToString(TextStyle.Default);

    /// <summary>The curve as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing, or <c>U</c>: shares are the same in both.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The form and its parameters.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    internal double ResidualFraction => Boundary.Fraction(Residual);

    internal double SaturatedFraction => Boundary.Fraction(Saturated);

    internal double WaterFraction(double suctionMetres) => ResidualFraction + (SaturatedFraction - ResidualFraction) * Filled(suctionMetres);

    /// <summary>How full the pores between residual and saturation are, from 1 at no suction down to 0.</summary>
    private protected abstract double Filled(double suctionMetres);

    /// <summary>The suction at which the pores are so full; infinite where that has no number.</summary>
    private protected abstract double SuctionMetres(double filled);

    private protected abstract string Form(TextStyle style);

    private string ToString(TextStyle style) => $"{Form(style)}, {QuantityText.Of(Residual, style)} to {QuantityText.Of(Saturated, style)} of the volume";
}
