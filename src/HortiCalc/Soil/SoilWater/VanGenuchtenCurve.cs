using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The curve of van Genuchten 1980: the water that a soil holds against a suction, and, with Mualem's model, how fast it conducts it.</summary>
/// <remarks>
/// <para>Immutable; equal when all members are equal. Suction is a height of water: 100 cm is 9.8 kPa. The exponent m is 1 − 1/n.</para>
/// <para>The equations are exact and return quantities; how well they describe a soil rests with the parameters.</para>
/// </remarks>
/// <example><code>
/// VanGenuchtenCurve curve = VanGenuchtenSoils.Of(SoilTexture.SandyLoam).Curve;
/// VolumeConcentration drained = curve.WaterAt(Length.FromCentimeters(100));
/// WaterRate flow = curve.ConductivityAt(drained);
/// Length back = curve.SuctionAt(drained);   // 1 m
/// </code></example>
public sealed record VanGenuchtenCurve : IFormattable
{
    internal const double MualemExponent = 0.5;

    /// <summary>Holds the parameters of a curve.</summary>
    /// <param name="residual">The water that stays at any suction; 0 % or more.</param>
    /// <param name="saturated">The water at no suction; above the residual, up to 100 %.</param>
    /// <param name="alpha">The reciprocal of a suction near air entry; above zero.</param>
    /// <param name="n">How steeply the pores empty; above 1.</param>
    /// <param name="saturatedConductivity">How fast the soil conducts water when every pore is full, where it is known; above zero.</param>
    /// <param name="poreConnection">The exponent l of Mualem, one half where nothing else is fitted.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public VanGenuchtenCurve(
        VolumeConcentration residual,
        VolumeConcentration saturated,
        ReciprocalLength alpha,
        double n,
        WaterRate? saturatedConductivity = null,
        double poreConnection = MualemExponent)
    {
        double low = Guard.Within(Boundary.VolumeFraction(residual) * 100, 0, 100, "%", nameof(residual));
        double high = Boundary.VolumeFraction(saturated) * 100;
        if (!(high > low && high <= 100))
            throw Guard.Refused(nameof(saturated), high, "%", $"above {Guard.Number(low)} %, the residual water, up to 100 %");
        Guard.Positive(Boundary.PerMetre(alpha), "1/m", nameof(alpha));
        if (!(n > 1 && double.IsFinite(n)))
            throw Guard.Refused(nameof(n), n, "", "greater than 1");
        if (saturatedConductivity is { } rate)
            Guard.Positive(rate.MillimetresPerHour, "mm/h", nameof(saturatedConductivity));
        Residual = HouseUnits.Normalise(residual);
        Saturated = HouseUnits.Normalise(saturated);
        Alpha = HouseUnits.Normalise(alpha);
        N = n;
        SaturatedConductivity = saturatedConductivity;
        PoreConnection = Guard.Finite(poreConnection, "");
    }

    /// <summary>The equations and their source.</summary>
    public static Method Method { get; } = new(
        "van-genuchten-mualem",
        "van Genuchten curve with Mualem's conductivity",
        SoilWaterSources.VanGenuchten,
        new Domain("m is 1 − 1/n; drying soil, without hysteresis"));

    /// <summary>The water that stays at any suction.</summary>
    public VolumeConcentration Residual { get; }

    /// <summary>The water at no suction.</summary>
    public VolumeConcentration Saturated { get; }

    /// <summary>The reciprocal of a suction near air entry.</summary>
    public ReciprocalLength Alpha { get; }

    /// <summary>How steeply the pores empty.</summary>
    public double N { get; }

    /// <summary>How fast the soil conducts water when every pore is full, where it is known.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public WaterRate? SaturatedConductivity { get; }

    /// <summary>The exponent l of Mualem.</summary>
    public double PoreConnection { get; }

    private double M => 1 - 1 / N;

    private double ResidualShare => Boundary.VolumeFraction(Residual);

    private double SaturatedShare => Boundary.VolumeFraction(Saturated);

    /// <summary>The water held against a suction.</summary>
    /// <param name="suction">The suction as a height of water; 0 or more.</param>
    /// <returns>The water by volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The suction is negative or not finite.</exception>
    public VolumeConcentration WaterAt(Length suction)
    {
        double metres = Guard.NotNegative(Boundary.Metres(suction), "m", nameof(suction));
        return VolumeConcentration.FromPercent((ResidualShare + (SaturatedShare - ResidualShare) * Filled(metres)) * 100);
    }

    /// <summary>The suction against which water is held.</summary>
    /// <param name="water">The water by volume; above the residual, up to saturation.</param>
    /// <returns>The suction as a height of water.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The water is not above the residual and up to saturation, or so near the residual that no number holds the suction.</exception>
    public Length SuctionAt(VolumeConcentration water)
    {
        double filled = FilledShare(water);
        double metres = Math.Pow(Math.Pow(filled, -1 / M) - 1, 1 / N) / Boundary.PerMetre(Alpha);
        return double.IsFinite(metres)
            ? Length.FromMeters(metres)
            : throw RefusedWater(Boundary.VolumeFraction(water), nameof(water));
    }

    /// <summary>How much water a soil gives up for a little more suction.</summary>
    /// <param name="suction">The suction as a height of water; 0 or more.</param>
    /// <returns>The water by volume for each metre, positive.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The suction is negative or not finite.</exception>
    public ReciprocalLength CapacityAt(Length suction)
    {
        double metres = Guard.NotNegative(Boundary.Metres(suction), "m", nameof(suction));
        if (metres == 0)
            return ReciprocalLength.FromInverseMeters(0);

        // α m n (αh)ⁿ⁻¹ Se (1 + (αh)ⁿ)⁻¹, with the powers joined so that none overflows at a great suction.
        double scaled = Boundary.PerMetre(Alpha) * metres;
        double power = Math.Pow(scaled, N);
        double emptied = double.IsFinite(power) ? power / (1 + power) : 1;
        return ReciprocalLength.FromInverseMeters((SaturatedShare - ResidualShare) * (N - 1) * Filled(metres) * emptied / metres);
    }

    /// <summary>How fast the soil conducts water that does not fill it, by Mualem's model.</summary>
    /// <param name="water">The water by volume; above the residual, up to saturation.</param>
    /// <returns>The conductivity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The water is not above the residual and up to saturation, or the conductivity there is no number.</exception>
    /// <exception cref="InvalidOperationException">The saturated conductivity is not known.</exception>
    public WaterRate ConductivityAt(VolumeConcentration water)
    {
        WaterRate full = SaturatedConductivity
            ?? throw new InvalidOperationException("The curve has no saturated conductivity; give one to say how fast it conducts.");
        double filled = FilledShare(water);

        // 1 − (1 − x)ᵐ loses its digits where little water is left; the logarithms keep them.
        double drained = -NearZero.ExponentialLessOne(M * NearZero.LogOfOnePlus(-Math.Pow(filled, 1 / M)));
        double rate = full.MillimetresPerHour * Math.Pow(filled, PoreConnection) * drained * drained;
        return double.IsFinite(rate) ? WaterRate.FromMillimetresPerHour(rate) : throw RefusedWater(Boundary.VolumeFraction(water), nameof(water));
    }

    /// <summary>The parameters in invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The parameters as one line of text.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The residual and saturated water, α and n.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        return $"{QuantityText.Of(Residual, style)} to {QuantityText.Of(Saturated, style)}, α {QuantityText.Number(Boundary.PerMetre(Alpha), style)} per m, "
            + $"n {QuantityText.Number(N, style)}";
    }

    private double Filled(double suctionMetres)
    {
        double power = Math.Pow(Boundary.PerMetre(Alpha) * suctionMetres, N);
        return double.IsFinite(power) ? Math.Pow(1 + power, -M) : Math.Pow(Boundary.PerMetre(Alpha) * suctionMetres, -(N - 1));
    }

    /// <summary>The share of the pores that empty at all which is filled, above 0 and up to 1.</summary>
    private double FilledShare(VolumeConcentration water)
    {
        double share = Boundary.VolumeFraction(water);
        double filled = (share - ResidualShare) / (SaturatedShare - ResidualShare);
        return filled > 0 && filled <= 1 + 1e-12 ? Math.Min(filled, 1) : throw RefusedWater(share, nameof(water));
    }

    private ArgumentOutOfRangeException RefusedWater(double share, string parameter) => Guard.Refused(
        parameter, share * 100, "%", $"above {Guard.Number(ResidualShare * 100)} %, the residual water, up to {Guard.Number(SaturatedShare * 100)} %");
}
