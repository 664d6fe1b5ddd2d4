using HortiCalc.Climate;
using HortiCalc.Display;
using HortiCalc.Units;

namespace HortiCalc.Season;

/// <summary>A crop that is ready when the days since planting out have brought a sum of warmth.</summary>
public sealed record HeatToMaturity : Maturity
{
    /// <summary>Describes a crop that is ready after a sum of warmth.</summary>
    /// <param name="sum">Degree days from planting out to the first harvest; more than zero.</param>
    /// <param name="thresholds">The temperatures between which they are counted.</param>
    /// <param name="method">The method that the sum was published with, or <see langword="null"/> for <see cref="DegreeDayMethod.SingleSine"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The sum is not more than zero.</exception>
    /// <exception cref="ArgumentException">The method is not defined with, or without, an upper threshold as given.</exception>
    public HeatToMaturity(ThermalTime sum, DegreeDayThresholds thresholds, DegreeDayMethod? method = null)
    {
        Guard.Positive(sum.CelsiusDays, "°C·d", nameof(sum));
        Sum = sum;
        Thresholds = Guard.NotNull(thresholds);
        Method = method;
        DegreeDayMethod.RequireExtremes(Counting, thresholds, Cutoff);
    }

    /// <summary>Degree days from planting out to the first harvest.</summary>
    public ThermalTime Sum { get; }

    /// <summary>The temperatures between which they are counted.</summary>
    public DegreeDayThresholds Thresholds { get; }

    /// <summary>The method that the sum was published with, or <see langword="null"/> for the single sine.</summary>
    public DegreeDayMethod? Method { get; }

    internal override string Text(TextStyle style) => QuantityText.Of(Sum, style);

    internal DegreeDayMethod Counting => Method ?? DegreeDayMethod.SingleSine;

    internal UpperCutoff Cutoff => Thresholds.Upper is null ? UpperCutoff.None : UpperCutoff.Horizontal;
}
