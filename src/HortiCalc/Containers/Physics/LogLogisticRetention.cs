using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>The log-logistic retention curve: 1 / [1 + (h / h₀)^b] between residual and saturated water.</summary>
/// <remarks>
/// A form of four parameters that was found to fit bark media better (Journal of the American Society for Horticultural Science 135, 2010, 563-570). At h₀ half of
/// what can drain has drained.
/// </remarks>
public sealed record LogLogisticRetention : RetentionCurve
{
    /// <summary>Makes a curve.</summary>
    /// <param name="residual">The water that no suction draws out, as a share of the volume.</param>
    /// <param name="saturated">The water at saturation; above the residual, up to 100 %.</param>
    /// <param name="halfSuction">The suction at which half of what can drain has drained; above zero.</param>
    /// <param name="slope">How sharply it drains; above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A parameter lies outside what is said above.</exception>
    public LogLogisticRetention(Ratio residual, Ratio saturated, Length halfSuction, double slope)
        : base(residual, saturated)
    {
        Guard.Positive(Boundary.Metres(halfSuction), "m", nameof(halfSuction));
        HalfSuction = HouseUnits.Normalise(halfSuction);
        Slope = Guard.Positive(slope, "");
    }

    /// <summary>The suction at which half of what can drain has drained.</summary>
    public Length HalfSuction { get; }

    /// <summary>How sharply it drains.</summary>
    public double Slope { get; }

    private protected override double Filled(double suctionMetres) => 1 / (1 + Math.Pow(suctionMetres / Boundary.Metres(HalfSuction), Slope));

    private protected override double SuctionMetres(double filled) => Boundary.Metres(HalfSuction) * Math.Pow(1 / filled - 1, 1 / Slope);

    private protected override string Form(TextStyle style) =>
        $"log-logistic, half drained at {QuantityText.Of(HalfSuction, style)}, slope {QuantityText.Number(Slope, style)}";
}
