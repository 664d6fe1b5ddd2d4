using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>How water goes into a soil by the model of Green and Ampt: a wet front that suction and gravity draw down.</summary>
/// <remarks>
/// <para>Immutable; equal when all members are equal. The soil is even, its surface level and bare of a crust; water stands on it in a thin film.</para>
/// <para>The equations are exact and return quantities; how well they describe a ground rests with the parameters, which vary tenfold within a texture.</para>
/// </remarks>
/// <example><code>
/// GreenAmpt soil = new(
///     WaterRate.FromCentimetresPerHour(0.05), suction: Length.FromCentimeters(29.22), deficit: VolumeConcentration.FromPercent(23.265));
/// Length into = soil.CumulativeAfter(Duration.FromHours(0.1));    // 2.64 mm
/// Duration? pond = soil.PondingTime(WaterRate.FromCentimetresPerHour(1));
/// </code></example>
public sealed record GreenAmpt : IFormattable
{
    /// <summary>Holds the parameters.</summary>
    /// <param name="conductivity">How fast the wetted soil conducts water; above zero.</param>
    /// <param name="suction">How strongly dry soil draws at the wet front, as a height of water; above zero.</param>
    /// <param name="deficit">The pores that are free for water, by volume; 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public GreenAmpt(WaterRate conductivity, Length suction, VolumeConcentration deficit)
    {
        Guard.Positive(conductivity.MillimetresPerHour, "mm/h", nameof(conductivity));
        Guard.Positive(Boundary.Metres(suction), "m", nameof(suction));
        Guard.Within(Boundary.VolumeFraction(deficit) * 100, 0, 100, "%", nameof(deficit));
        Conductivity = conductivity;
        Suction = HouseUnits.Normalise(suction);
        Deficit = HouseUnits.Normalise(deficit);
    }

    /// <summary>The equations and their source.</summary>
    public static Method Method { get; } = new(
        "green-ampt",
        "infiltration by Green and Ampt",
        SoilWaterSources.GreenAmpt,
        new Domain("even soil, thin film of water, no crust"));

    /// <summary>The time to ponding under steady rain, and its source.</summary>
    public static Method PondingMethod { get; } = new(
        "green-ampt-mein-larson",
        "ponding under steady rain, Mein and Larson",
        SoilWaterSources.MeinLarson,
        new Domain("steady rain on even soil"));

    /// <summary>How fast the wetted soil conducts water.</summary>
    public WaterRate Conductivity { get; }

    /// <summary>How strongly dry soil draws at the wet front, as a height of water.</summary>
    public Length Suction { get; }

    /// <summary>The pores that are free for water, by volume.</summary>
    public VolumeConcentration Deficit { get; }

    // The length that governs: suction times deficit.
    private double PullMillimetres => Boundary.Metres(Suction) * 1000 * Boundary.VolumeFraction(Deficit);

    /// <summary>The water that has gone in under ponded water.</summary>
    /// <param name="time">The time since water stood; 0 or more.</param>
    /// <returns>The depth of water.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative or not finite.</exception>
    public Length CumulativeAfter(Duration time) =>
        Length.FromMeters(CumulativeMillimetres(Guard.NotNegative(Boundary.Days(time), "days", nameof(time)) * 24) / 1000);

    /// <summary>How long ponded water takes to go in.</summary>
    /// <param name="depth">The depth of water; 0 or more.</param>
    /// <returns>The time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is negative or not finite.</exception>
    public Duration TimeFor(Length depth) => Duration.FromDays(Hours(Guard.NotNegative(Boundary.Metres(depth), "m", nameof(depth)) * 1000) / 24);

    /// <summary>How fast the soil can take water in, once some has gone in.</summary>
    /// <param name="cumulative">The water that has gone in; above zero, as no rate bounds the first drop.</param>
    /// <returns>The rate, never below the conductivity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is not above zero.</exception>
    public WaterRate RateAt(Length cumulative)
    {
        double millimetres = Guard.Positive(Boundary.Metres(cumulative), "m", nameof(cumulative)) * 1000;
        return WaterRate.FromMillimetresPerHour(Conductivity.MillimetresPerHour * (1 + PullMillimetres / millimetres));
    }

    /// <summary>When water begins to stand under steady rain or sprinkling.</summary>
    /// <param name="rain">The rate.</param>
    /// <returns>The time from its beginning; <see langword="null"/> where the rate is not above the conductivity, so that water never stands.</returns>
    public Duration? PondingTime(WaterRate rain) => PondingHours(rain) is { } hours ? Duration.FromDays(hours / 24) : null;

    /// <summary>The water that has gone in under steady rain or sprinkling: all of it until water stands, then what the soil takes.</summary>
    /// <param name="rain">The rate.</param>
    /// <param name="time">The time from its beginning; 0 or more.</param>
    /// <returns>The depth of water; the rest of the rain stands or runs off.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative or not finite.</exception>
    public Length InfiltratedUnder(WaterRate rain, Duration time)
    {
        double hours = Guard.NotNegative(Boundary.Days(time), "days", nameof(time)) * 24;
        double fallen = rain.MillimetresPerHour * hours;
        if (PondingHours(rain) is not { } ponding || hours <= ponding)
            return Length.FromMeters(fallen / 1000);

        // As if the water of the ponding time had gone in under a film, in the time that this takes: Mein and Larson's shift of the clock.
        double shift = ponding - Hours(rain.MillimetresPerHour * ponding);
        return Length.FromMeters(Math.Min(fallen, CumulativeMillimetres(hours - shift)) / 1000);
    }

    /// <summary>The parameters in metric units and invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The parameters as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The conductivity, the suction and the deficit.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        return $"{Conductivity.ToString(style.Format, style.Culture)}, suction {QuantityText.Of(Suction, style)}, {QuantityText.Of(Deficit, style)} free";
    }

    /// <summary>F − ψΔθ ln(1 + F/ψΔθ) = K t, for t.</summary>
    private double Hours(double millimetres)
    {
        double pull = PullMillimetres;
        return pull == 0
            ? millimetres / Conductivity.MillimetresPerHour
            : pull * ExcessOverLogarithm(millimetres / pull) / Conductivity.MillimetresPerHour;
    }

    /// <summary>The same for F. It lies between what gravity brings alone and the sum of what gravity and suction would each bring.</summary>
    private double CumulativeMillimetres(double hours)
    {
        double gravity = Conductivity.MillimetresPerHour * hours;
        double pull = PullMillimetres;
        if (pull == 0 || gravity == 0)
            return gravity;
        double scaledTime = gravity / pull;

        // Counted in the root of twice the scaled time, which is what suction alone brings, so that neither early nor late times lose digits.
        double root = Math.Sqrt(2 * scaledTime);
        double low = scaledTime / root;
        return pull * root * Brent.FindRoot(x => ExcessOverLogarithm(root * x) / scaledTime - 1, low, (1 + low) * (1 + 1e-9), 1e-15, 200);
    }

    private double? PondingHours(WaterRate rain)
    {
        double excess = rain.MillimetresPerHour - Conductivity.MillimetresPerHour;
        return excess > 0 ? Conductivity.MillimetresPerHour * PullMillimetres / (rain.MillimetresPerHour * excess) : null;
    }

    /// <summary>x − ln(1 + x), by its series where the two would cancel.</summary>
    private static double ExcessOverLogarithm(double x)
    {
        if (x > 0.01)
            return x - NearZero.LogOfOnePlus(x);
        double term = x * x;
        double sum = 0;
        for (int k = 2; k <= 10; k++, term *= -x)
            sum += term / k;
        return sum;
    }
}
