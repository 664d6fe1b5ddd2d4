using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>The retention curve of van Genuchten: [1 + (α h)ⁿ]^−m between residual and saturated water, with m = 1 − 1/n.</summary>
/// <remarks>M. Th. van Genuchten, A closed-form equation for predicting the hydraulic conductivity of unsaturated soils, Soil Science Society of America Journal 44, 1980.</remarks>
public sealed record VanGenuchtenRetention : RetentionCurve
{
    /// <summary>Makes a curve.</summary>
    /// <param name="residual">The water that no suction draws out, as a share of the volume.</param>
    /// <param name="saturated">The water at saturation; above the residual, up to 100 %.</param>
    /// <param name="alpha">One over the suction near which the pores begin to drain; above zero.</param>
    /// <param name="n">How evenly wide the pores are; greater than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A parameter lies outside what is said above.</exception>
    public VanGenuchtenRetention(Ratio residual, Ratio saturated, ReciprocalLength alpha, double n)
        : base(residual, saturated)
    {
        Guard.Positive(Boundary.PerMetre(alpha), "1/m", nameof(alpha));
        if (!(n > 1 && double.IsFinite(n)))
            throw Guard.Refused(nameof(n), n, "", "greater than 1");
        Alpha = HouseUnits.Normalise(alpha);
        N = n;
    }

    /// <summary>One over the suction near which the pores begin to drain.</summary>
    public ReciprocalLength Alpha { get; }

    /// <summary>How evenly wide the pores are: the greater, the more sharply they drain.</summary>
    public double N { get; }

    private protected override double Filled(double suctionMetres)
    {
        // Where the power has no number the curve has long become its tail, (α h)^−(n − 1).
        double scaled = Boundary.PerMetre(Alpha) * suctionMetres;
        double power = Math.Pow(scaled, N);
        return double.IsFinite(power) ? Math.Pow(1 + power, 1 / N - 1) : Math.Pow(scaled, 1 - N);
    }

    private protected override double SuctionMetres(double filled) =>
        Math.Pow(Math.Pow(filled, N / (1 - N)) - 1, 1 / N) / Boundary.PerMetre(Alpha);

    private protected override string Form(TextStyle style) =>
        $"van Genuchten, α {QuantityText.Number(Boundary.PerMetre(Alpha), style)} per m, n {QuantityText.Number(N, style)}";
}
