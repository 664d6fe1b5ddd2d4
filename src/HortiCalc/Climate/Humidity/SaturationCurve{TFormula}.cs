using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>A saturation curve by one form of formula, so that the kernels are compiled for it.</summary>
internal sealed class SaturationCurve<TFormula>(Method evidence, TFormula formula) : SaturationCurve(evidence)
    where TFormula : struct, ISaturationFormula
{
    public override double Kilopascals(double celsius) => formula.Kilopascals(new SingleLane(celsius)).First;

    public override double Celsius(double kilopascals) => formula.Celsius(new SingleLane(kilopascals)).First;

    public override double SlopeKilopascalsPerCelsius(double celsius) => formula.SlopeKilopascalsPerCelsius(celsius);

    public override bool Run(
        HumiditySeries series, ReadOnlySpan<double> first, ReadOnlySpan<double> second, HumidityScale scale, Span<double> destination) =>
        HumidityKernels.Run(series, formula, first, second, scale with { Lowest = LowestCelsius, Highest = HighestCelsius }, destination);
}
